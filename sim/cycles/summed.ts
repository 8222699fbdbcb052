// What a run by turns comes to: for how many each turn stands, the peaks on the way, and what switched.
import type { At, Effort, Ending, Mark, Peaks, Trace } from '../trace.ts'
import { type Gap, skipped } from './gap.ts'
import type { Turn } from './turn.ts'

/** A turn that was run: its number from 0, and the skipped ones before it. Its own time begins at 0. */
export interface Stop {
  readonly n: number
  readonly turn: Turn
  readonly before: Gap | null
}

interface Computed extends Stop {
  /** When it began, s of the job. */
  readonly t: number
  /** For how many turns it stands in sums over the job: itself, and its share in its skipped neighbours. */
  readonly weight: number
}

export interface CycleRun {
  /** Length of a turn, s. */
  readonly seconds: number
  /** The turns that were run, in order. */
  readonly computed: readonly Computed[]
  /** The rest of the job, run directly, in the job's time; its sums start from nothing. Null: nothing was left. */
  readonly tail: Trace | null
  /** How far the run got, s, and how it ended there. */
  readonly reached: number
  readonly ending: Ending
  /** Openings and reclosings: all lie in the tail. */
  readonly switching: readonly Mark[]
  readonly peaks: Peaks
  readonly effort: Effort
}

const HOT = ['windingC', 'frameC', 'switchC'] as const

/** Adds up a run by turns and its tail; without one the turns reach to the job's end, s. */
export function summed(
  seconds: number,
  stops: readonly Stop[],
  tail: Trace | null,
  effort: Effort,
  end: number,
): CycleRun {
  const weights = stops.map(() => 1)
  const peaks: Record<(typeof HOT)[number], At> = {
    windingC: { value: -Infinity, t: 0 },
    frameC: { value: -Infinity, t: 0 },
    switchC: { value: -Infinity, t: 0 },
  }
  const raise = (found: (name: (typeof HOT)[number], index: number) => At) => {
    HOT.forEach((name, index) => {
      const at = found(name, index)
      if (at.value > peaks[name].value) peaks[name] = at
    })
  }
  stops.forEach(({ n, turn, before }, index) => {
    const own = turn.trace.peaks
    if (before)
      skipped(before, ({ turn: number, share, peaks: high }) => {
        weights[index] += share
        weights[index - 1] += 1 - share
        const t = (n - before.turns + number) * seconds
        if (high.some((value, h) => value > peaks[HOT[h]].value))
          raise((name, h) => ({ value: high[h], t: t + own[name].t }))
        return true
      })
    raise((name) => ({ value: own[name].value, t: n * seconds + own[name].t }))
  })
  if (tail) raise((name) => tail.peaks[name])
  return {
    seconds,
    computed: stops.map((stop, index) => ({ ...stop, t: stop.n * seconds, weight: weights[index] })),
    tail,
    reached: tail ? (tail.time.at(-1) ?? 0) : end,
    ending: tail?.ending ?? { kind: 'finished' },
    switching: (tail?.marks ?? []).filter(({ kind }) => kind === 'opens' || kind === 'recloses'),
    peaks,
    effort,
  }
}
