// Proposals: pulleys that are sold, each tried turn for turn on the user's duty, and a variant for each.
import type { Job } from '../../job.ts'
import { toUnit } from '../../quantity.ts'
import type { Progress } from '../../run.ts'
import type { Scenario, Variant } from '../../scenario.ts'
import { type Changes, jobWith } from './change.ts'
import { type TwoStages, twoStagesWithin } from './jackshaft.ts'
import { type Pair, pairsWithin, type Range } from './pairs.ts'
import { type Trial, trial } from './trial.ts'

/** Pulleys that do the job, with what they come to and the variant that uses them. */
export type Proposal<T> = T & { readonly trial: Trial; readonly variant: Variant }

const sizes = (pulleys: readonly number[]): string =>
  pulleys.map((size) => Number(toUnit(size, 'in').toPrecision(3))).join(' and ')

export interface Wanted {
  /** As many as are shown; and as are tried to find them. */
  readonly most: number
  readonly attempts: number
}

/** The first of the candidates that do the job when every turn of it is run, and break no limit of the belt. */
function* confirmed<T extends { readonly changes: Changes }>(
  scenario: Scenario,
  candidates: readonly T[],
  name: (candidate: T) => string,
  { most, attempts }: Wanted,
  told: <R>(work: Generator<Progress, R>) => Generator<Progress, R>,
): Generator<Progress, Proposal<T>[]> {
  const found: Proposal<T>[] = []
  let tries = 0
  for (const candidate of candidates) {
    if (found.length === most || tries === attempts) break
    const job: Job | null = jobWith(scenario, candidate.changes)
    if (!job) continue
    tries++
    const result: Trial = yield* told(trial(job, true))
    if (result.faults.length > 0 || result.beltFaults.length > 0) continue
    found.push({
      ...candidate,
      trial: result,
      variant: { name: name(candidate), changes: candidate.changes },
    })
  }
  return found
}

/** Pairs of stock pulleys for the last stage. */
export const pairProposals = (
  scenario: Scenario,
  job: Job,
  range: Range,
  wanted: Wanted,
  told: <R>(work: Generator<Progress, R>) => Generator<Progress, R>,
): Generator<Progress, Proposal<Pair>[]> =>
  confirmed(
    scenario,
    pairsWithin(job.parts.belt, range),
    ({ driving, driven }) => `Pulleys ${sizes([driving, driven])} in`,
    wanted,
    told,
  )

/** Two stages through a jackshaft. */
export const twoStageProposals = (
  scenario: Scenario,
  job: Job,
  range: Range,
  wanted: Wanted,
  told: <R>(work: Generator<Progress, R>) => Generator<Progress, R>,
): Generator<Progress, Proposal<TwoStages>[]> =>
  confirmed(
    scenario,
    twoStagesWithin(job.parts.belt, range),
    ({ pulleys: [motor, large, small, machine] }) =>
      `Jackshaft, ${sizes([motor, large])}, then ${sizes([small, machine])} in`,
    wanted,
    told,
  )
