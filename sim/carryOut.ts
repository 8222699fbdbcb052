// A job carried out the quicker way: by turns where the duty repeats often, else directly; trace and figures.
import { wholeTrace } from './cycles/whole.ts'
import { cycles } from './cycles.ts'
import { cycleSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { type Figures, judge } from './judge.ts'
import { judgeCycles } from './judgeCycles.ts'
import { type Progress, run } from './run.ts'
import type { Trace } from './trace.ts'

export interface Outcome {
  readonly trace: Trace
  readonly figures: Figures
  readonly skipping: Skipping | null
}

/** What was run where turns were skipped. */
interface Skipping {
  /** Numbers of the turns that were run, from 0. */
  readonly computed: readonly number[]
  /** From here on all was run, s; null: nothing was left. */
  readonly directFrom: number | null
  /** Turns the whole job has, the last perhaps cut short. */
  readonly of: number
}

/** A duty that repeats no more often is run directly. */
const OFTEN = 10

/** Carries out a job. Yields progress; never throws on a job the reader lets through. */
export function* carryOut(job: Job): Generator<Progress, Outcome> {
  const repeats = job.duty.seconds / cycleSeconds(job.duty)
  if (!(repeats > OFTEN && repeats < Infinity)) {
    const { trace } = yield* run(job)
    return { trace, figures: judge(job, trace), skipping: null }
  }
  const made = yield* cycles(job)
  const { computed, tail } = made
  if (computed.length === 0) return { trace: tail!, figures: judge(job, tail!), skipping: null }
  return {
    trace: wholeTrace(job, made),
    figures: judgeCycles(job, made),
    skipping: {
      computed: computed.map(({ n }) => n),
      directFrom: tail ? (computed.at(-1)!.n + 1) * made.seconds : null,
      of: Math.ceil(repeats * (1 - 1e-12)),
    },
  }
}
