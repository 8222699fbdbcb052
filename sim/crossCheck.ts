// The second opinion: the start of a job run by two unrelated methods, and the largest differences between them.
import { cycleSeconds, phaseSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { STATE } from './plant.ts'
import { type Method, type Progress, type Run, type RunOptions, run } from './run.ts'
import type { At, Effort, Ending } from './trace.ts'

/** States that are compared: rad/s at the motor, A, °C. */
export const COMPARED = ['speed', 'current', 'windingC', 'frameC', 'switchC'] as const
export type Compared = (typeof COMPARED)[number]

/** How one method fared. */
export interface Opinion {
  readonly method: Method
  readonly accuracy: Job['accuracy']
  /** How far it got, s, and why it ended there. */
  readonly reached: number
  readonly ending: Ending
  /** First opening of the cutoff, s; null: none as far as it got. */
  readonly opening: number | null
  readonly effort: Effort
}

export interface CrossCheck {
  /** What the product shows: its own method at the job's accuracy. */
  readonly shown: Opinion
  /** The other method, at the "reference" accuracy. */
  readonly second: Opinion
  /** Number of moments compared, and the last of them, s. */
  readonly moments: number
  readonly until: number
  /** Largest difference of each state over the moments, and when (s): rad/s, A, K. NaN where one has no number. */
  readonly differences: Readonly<Record<Compared, At>>
  /** Difference of the first openings, s; null unless both open. */
  readonly openingDifference: number | null
}

/** A run with the method and the accuracy that made it. */
export interface Made extends Run {
  readonly method: Method
  readonly accuracy: Job['accuracy']
}

/** Moments spread over the time compared; and ends of phases among the moments, at the most. */
const SPREAD = 400
const ENDS = 400
/** How much longer the second method may go on to find what ended the first: share of its time, and s. */
const LONGER = 0.05
const LONGER_SECONDS = 10

/**
 * Runs the job up to its first opening, its end, or `until` (s), by both methods, and compares the states at the
 * same moments. The product's method runs as the user sees it, so that the differences are those of the shown
 * answer; the other runs at "reference", so that none of them are its own. It takes some fifty times longer.
 * Yields the second method's progress. Never throws on a job the reader lets through.
 */
export function* crossCheck(job: Job, { until }: { until?: number } = {}): Generator<Progress, CrossCheck> {
  // Once to learn where it ends, and again, at a fiftieth of the whole cost, with moments fitted to that.
  const end = reached(yield* silently(run(job, { toFirstOpening: true, until })))
  const samples = momentsOf(job, end)
  const options: RunOptions = { toFirstOpening: true, samples }
  const shown = yield* silently(run(job, { ...options, until }))
  const second = yield* run(
    { ...job, accuracy: 'reference' },
    {
      ...options,
      method: 'extrapolation',
      until: Math.min(until ?? Infinity, end * (1 + LONGER) + LONGER_SECONDS),
    },
  )
  return compare(
    samples,
    { ...shown, method: 'rosenbrock', accuracy: job.accuracy },
    { ...second, method: 'extrapolation', accuracy: 'reference' },
  )
}

/** Compares two runs that were asked to sample the same moments (s), as far as both got. */
export function compare(moments: readonly number[], shown: Made, second: Made): CrossCheck {
  const count = Math.min(shown.samples.length, second.samples.length)
  const largest = (name: Compared): At => {
    let found: At = { value: 0, t: 0 }
    for (let m = 0; m < count && !Number.isNaN(found.value); m++) {
      const value = Math.abs(shown.samples[m][STATE[name]] - second.samples[m][STATE[name]])
      if (!(value <= found.value)) found = { value, t: moments[m] }
    }
    return found
  }
  const a = opinion(shown)
  const b = opinion(second)
  return {
    shown: a,
    second: b,
    moments: count,
    until: count > 0 ? moments[count - 1] : 0,
    differences: {
      speed: largest('speed'),
      current: largest('current'),
      windingC: largest('windingC'),
      frameC: largest('frameC'),
      switchC: largest('switchC'),
    },
    openingDifference: a.opening === null || b.opening === null ? null : Math.abs(a.opening - b.opening),
  }
}

/** The moments to compare up to `end` (s), ascending: spread evenly, never in step with the cycle; and phase ends. */
export function momentsOf(job: Job, end: number): number[] {
  const ends = phaseEnds(job, end)
  const chosen =
    ends.length <= ENDS ? ends : spread(ENDS).map((share) => ends[Math.floor(share * ends.length)])
  const all = [...spread(SPREAD).map((share) => share * end), ...chosen, end]
  return [...new Set(all)].sort((a, b) => a - b)
}

/** One number in each of `count` equal pieces of 0 … 1; its place in the piece moves on by the golden ratio. */
const spread = (count: number): number[] =>
  Array.from({ length: count }, (_, n) => (n + ((n * 0.618033988749895) % 1)) / count)

/** When phases end, up to `end`: there speed and current are about to jump. */
function phaseEnds({ duty }: Job, end: number): number[] {
  const cycle = cycleSeconds(duty)
  const found: number[] = []
  for (let n = 0; cycle > 0 && n * cycle < end; n++) {
    let t = n * cycle
    for (const phase of duty.phases) {
      t += phaseSeconds(phase)
      if (t <= end) found.push(t)
    }
  }
  return found
}

const opinion = (made: Made): Opinion => ({
  method: made.method,
  accuracy: made.accuracy,
  reached: reached(made),
  ending: made.trace.ending,
  opening: made.trace.marks.find((mark) => mark.kind === 'opens')?.t ?? null,
  effort: made.trace.effort,
})

const reached = ({ trace }: Run): number => trace.time.at(-1) ?? 0

/** Lets the caller breathe without telling of a progress that would start over. */
function* silently(work: Generator<Progress, Run>): Generator<Progress, Run> {
  for (;;) {
    const next = work.next()
    if (next.done) return next.value
    yield { t: 0, of: next.value.of }
  }
}
