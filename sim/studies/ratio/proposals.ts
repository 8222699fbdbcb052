// Proposals: pulleys that are sold, each tried turn for turn on the user's duty, and a variant for each.
import type { Job } from '../../job.ts'
import type { Belt } from '../../parts/belt.ts'
import { toUnit } from '../../quantity.ts'
import type { Progress } from '../../run.ts'
import type { Scenario, Variant } from '../../scenario.ts'
import { asTight, type Changes, jobWith } from './change.ts'
import { type TwoStages, twoStagesWithin } from './jackshaft.ts'
import { type Pair, pairsWithin, type Range } from './pairs.ts'
import { type Trial, trial } from './trial.ts'
import type { Window } from './window.ts'

/** Pulleys that do the job, with what they come to and the variant that uses them. */
export type Proposal<T> = T & { readonly trial: Trial; readonly variant: Variant }

/** What proposals are made for: the scenario as it stands, the variant it stands with, and its belt. */
export interface Offer {
  readonly scenario: Scenario
  readonly base: Variant | undefined
  readonly belt: Belt
  /** As many as are wanted. */
  readonly most: number
  readonly told: <T>(work: Generator<Progress, T>) => Generator<Progress, T>
}

/** Candidates tried for each one wanted. */
const TRIES = 2
/** A ratio further than this from every edge is well inside, a share. */
const INSIDE = 0.1

const rangeOf = ({ low, high }: Window<unknown>): Range => ({ low: low.ratio, high: high.ratio })

/** True where a ratio keeps its distance from the edges that were found. */
export function wellInside(ratio: number, { low, high }: Window<unknown>): boolean {
  const above = low.beyond === null || ratio > low.ratio * (1 + INSIDE)
  return above && (high.beyond === null || ratio < high.ratio / (1 + INSIDE))
}

const sizes = (pulleys: readonly number[]): string =>
  pulleys.map((size) => Number(toUnit(size, 'in').toPrecision(3))).join(' and ')

/** The first of the candidates that do the job when every turn of it is run, and break no limit of the belt. */
function* confirmed<T extends { readonly changes: Changes }>(
  { scenario, base, belt, most, told }: Offer,
  candidates: readonly T[],
  name: (candidate: T) => string,
): Generator<Progress, Proposal<T>[]> {
  const found: Proposal<T>[] = []
  let tries = 0
  for (const candidate of candidates) {
    if (found.length >= most || tries >= TRIES * most) break
    const changes = asTight(scenario, belt, candidate.changes)
    const job: Job | null = jobWith(scenario, changes)
    if (!job) continue
    tries++
    const result: Trial = yield* told(trial(job, true))
    if (result.faults.length > 0 || result.beltFaults.length > 0) continue
    const variant = { name: name(candidate), changes: { ...base?.changes, ...changes } }
    found.push({ ...candidate, trial: result, variant })
  }
  return found
}

/** Pairs of stock pulleys for the last stage. */
export const pairProposals = (offer: Offer, window: Window<unknown>): Generator<Progress, Proposal<Pair>[]> =>
  confirmed(
    offer,
    pairsWithin(offer.belt, rangeOf(window)),
    ({ driving, driven }) => `Pulleys ${sizes([driving, driven])} in`,
  )

/** Two stages through a jackshaft. */
export const twoStageProposals = (
  offer: Offer,
  window: Window<unknown>,
): Generator<Progress, Proposal<TwoStages>[]> =>
  confirmed(
    offer,
    twoStagesWithin(offer.belt, rangeOf(window)),
    ({ pulleys: [motor, large, small, machine] }) =>
      `Jackshaft, ${sizes([motor, large])}, then ${sizes([small, machine])} in`,
  )
