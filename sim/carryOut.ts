// A job carried out the quicker way: by turns where the duty repeats often, else directly; trace and figures.
import { exactTurns, type Part } from './cycles/exact.ts'
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
  /** null: every turn was run. */
  readonly skipping: Skipping | null
}

/** What was run where turns were skipped. */
export interface Skipping {
  /** Numbers of the turns that were run, from 0. */
  readonly computed: readonly number[]
  /** From here on all was run, s; null: nothing was left. */
  readonly directFrom: number | null
  /** Length of a turn, s. */
  readonly seconds: number
  /** Turns the whole job has, the last perhaps cut short. */
  readonly of: number
}

export interface CarryOptions {
  /** Every turn is run, however often the duty repeats. */
  readonly direct?: boolean
  /** Skipped turns in this part are run too, where it holds few, so that its rows are exact. */
  readonly close?: Part
}

/** A duty that repeats no more often is run directly. */
const OFTEN = 10

const repeatsOf = ({ duty }: Job): number => duty.seconds / cycleSeconds(duty)

/** True where a job is carried out by turns: who asks for more than the usual accuracy gets every one of them. */
const byTurns = (job: Job): boolean => {
  const repeats = repeatsOf(job)
  return job.accuracy === 'default' && repeats > OFTEN && repeats < Infinity
}

/** The figures alone, without the rows between the turns that are run. */
export function* figuresOf(job: Job, direct = false): Generator<Progress, Figures> {
  if (direct || !byTurns(job)) return judge(job, (yield* run(job)).trace)
  return judgeCycles(job, yield* cycles(job))
}

/** When the cutoff first opens, s; null: never. Nothing is run beyond it. */
export function* openingOf(job: Job, direct = false): Generator<Progress, number | null> {
  const marks =
    direct || !byTurns(job)
      ? (yield* run(job, { toFirstOpening: true })).trace.marks
      : (yield* cycles(job, { toFirstOpening: true })).switching
  return marks.find(({ kind }) => kind === 'opens')?.t ?? null
}

/** Carries out a job. Yields progress; never throws on a job the reader lets through. */
export function* carryOut(
  job: Job,
  { direct = false, close }: CarryOptions = {},
): Generator<Progress, Outcome> {
  if (direct || !byTurns(job)) {
    const { trace } = yield* run(job)
    return { trace, figures: judge(job, trace), skipping: null }
  }
  const made = yield* cycles(job)
  const { computed, tail } = made
  if (computed.length === 0) return { trace: tail!, figures: judge(job, tail!), skipping: null }
  return {
    trace: yield* wholeTrace(job, made, close && (yield* exactTurns(job, made, close))),
    figures: judgeCycles(job, made),
    skipping: computed.some(({ before }) => before)
      ? {
          computed: computed.map(({ n }) => n),
          seconds: made.seconds,
          directFrom: tail ? (computed.at(-1)!.n + 1) * made.seconds : null,
          of: Math.ceil(repeatsOf(job) * (1 - 1e-12)),
        }
      : null,
  }
}
