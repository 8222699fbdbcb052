// The trace of a run by turns: turns that were run row for row, those between filled in.
import type { Job } from '../job.ts'
import { FLOWS } from '../plant.ts'
import { MOST_ROWS, recorder } from '../recorder.ts'
import type { Progress } from '../run.ts'
import { CHANNELS, type Checkpoint, SUMS, type Trace } from '../trace.ts'
import { watched } from '../watch.ts'
import { blend } from './blend.ts'
import { type Gap, type Skipped, skipped, visiting } from './gap.ts'
import type { CycleRun } from './summed.ts'
import { inJob, withHeat } from './turn.ts'

/**
 * The whole trace. Where its rows would not fit anyway, a bunch of skipped turns is one pair of rows, their least and
 * their most: those of its first and its last turn, since what lies between runs from the one to the other.
 * Yields now and then. Any turn's exact rows: `run` from `startOf` that turn; those in `exact`, by number, take the place of the mixture.
 */
export function* wholeTrace(
  job: Job,
  run: CycleRun,
  exact: ReadonlyMap<number, Trace> = new Map(),
): Generator<Progress, Trace> {
  const { computed, tail, seconds } = run
  const book = recorder(run.reached)
  const sums = new Float64Array(FLOWS)
  const channels = new Float64Array(CHANNELS.length)
  const own = new Float64Array(FLOWS)
  const total = new Float64Array(FLOWS)
  const checkpoints: Checkpoint[] = []
  const over = (count: (gap: Gap) => number) =>
    computed.reduce((n, { before }) => n + (before ? count(before) : 0), 0)
  const coarse = over((gap) => (gap.turns - 1) * gap.from.trace.time.length) > MOST_ROWS
  /** Turns that are one pair of rows. */
  const bunch = Math.ceil((2 * over(({ turns }) => turns)) / MOST_ROWS)
  let driven = false

  const push = (t: number, next: number) => {
    // Going on or off is an edge: something is asked on one side of it only.
    if (driven !== channels[0] > 0 || (!driven && next > 0)) {
      book.edge()
      driven = channels[0] > 0 || next > 0
    }
    for (let f = 0; f < sums.length; f++) total[f] = sums[f] + own[f]
    book.push(t, channels, total)
  }

  const add = () => {
    for (let f = 0; f < sums.length; f++) sums[f] += own[f]
  }
  const rows = ({ time, columns }: Trace, t: number) => {
    const seen = CHANNELS.map((name) => columns[name])
    const summed = SUMS.map((name) => columns[name])
    for (let row = 0; row < time.length; row++) {
      for (let c = 0; c < seen.length; c++) channels[c] = seen[c][row]
      for (let f = 0; f < sums.length; f++) own[f] = summed[f][row]
      push(t + time[row], columns.asked[row + 1] ?? 0)
    }
    add()
  }

  const between = function* (gap: Gap, first: number): Generator<Progress, void> {
    const { time, row } = blend(gap)
    const { asked } = gap.from.trace.columns
    const least = channels.slice()
    const most = channels.slice()
    const before = sums.slice()
    /** Turns of the bunch so far, and where it began. */
    let held = 0
    let start = 0
    const close = (t: number) => {
      if (held === 0) return
      book.push(start, least, before)
      book.push(t, most, sums)
      held = 0
    }
    const turns = visiting(gap, (turn: Skipped) => {
      const t = (first + turn.turn) * seconds
      const known = exact.get(first + turn.turn)
      if (known) {
        close(t)
        rows(known, 0)
        return true
      }
      if (!coarse) {
        for (let r = 0; r < time.length; r++) {
          row(r, turn, channels, own)
          push(t + time[r], asked[r + 1] ?? 0)
        }
        add()
        return true
      }
      if (held === 0) {
        start = t
        before.set(sums)
        least.fill(Infinity)
        most.fill(-Infinity)
      }
      held++
      const isLast = held === bunch || turn.turn === gap.turns - 1
      // Of a turn in the middle its sums alone: they stand in its last row.
      for (let r = held === 1 || isLast ? 0 : time.length - 1; r < time.length; r++) {
        row(r, turn, channels, own)
        for (let c = 0; c < channels.length; c++) {
          least[c] = Math.min(least[c], channels[c])
          most[c] = Math.max(most[c], channels[c])
        }
      }
      add()
      if (isLast) close(t + seconds)
      return true
    })
    // All of it is run; what is left is writing it down.
    while (!turns.next().done) yield { t: job.duty.seconds, of: job.duty.seconds }
  }

  for (const { n, t, turn, before } of computed) {
    if (before) yield* between(before, n - before.turns)
    checkpoints.push({ ...inJob(turn.start, n, t), sums: sums.slice() })
    rows(turn.trace, t)
  }
  if (tail) {
    const start = sums.slice()
    rows(tail, 0)
    const shift = (point: Checkpoint) => ({ ...point, sums: point.sums.map((sum, f) => sum + start[f]) })
    checkpoints.push(...tail.checkpoints.map(shift))
  }
  const { time, columns, bucket } = book.finish()
  return {
    time,
    columns,
    bucket: coarse ? Math.max(bucket, bunch * seconds) : bucket,
    peaks: run.peaks,
    ...watched(job, time, columns, run.switching),
    ending: run.ending,
    effort: run.effort,
    checkpoints,
  }
}

/** Start of turn n, in the job's time; its sums are nothing. Null for a turn of the tail. */
export function startOf({ computed, seconds }: CycleRun, n: number): Checkpoint | null {
  const next = computed.find((stop) => stop.n >= n)
  if (!next) return null
  if (next.n === n || !next.before) return inJob(next.turn.start, n, n * seconds)
  const { before } = next
  const wanted = n - (next.n - before.turns)
  let heat = new Float64Array(0)
  skipped(before, (turn) => {
    if (turn.turn === wanted) heat = turn.heat.slice()
    return turn.turn < wanted
  })
  return inJob(withHeat(before.from.end, heat), n, n * seconds)
}
