// The ratio study: which reductions do the user's own job, what sets the edges, and which pulleys to buy.
import type { Job } from '../job.ts'
import { ratio } from '../parts/belt.ts'
import { read, type Refused } from '../read.ts'
import type { Progress } from '../run.ts'
import { type Scenario, type Variant, withVariant } from '../scenario.ts'
import { topSpeed } from '../steady/operating.ts'
import { asTight, isToothed, jobWith, lastPulley, settled } from './ratio/change.ts'
import { fitting, type Why } from './ratio/fits.ts'
import { tryGrid } from './ratio/grid.ts'
import type { TwoStages } from './ratio/jackshaft.ts'
import type { Pair } from './ratio/pairs.ts'
import { type Offer, pairProposals, type Proposal, twoStageProposals, wellInside } from './ratio/proposals.ts'
import { type StepTrial, tryTheSteps } from './ratio/steps.ts'
import { type Asked, askedOf, type Fault, type Trial, trial } from './ratio/trial.ts'
import { type Tried, type Window, windowOf } from './ratio/window.ts'

export interface RatioOptions {
  /** The drive as it is with this variant. */
  readonly variant?: Variant
  /** Ratios on the grid, 2 or more, and where it begins and ends; else around the present one, to past what volts allow. */
  readonly points?: number
  readonly low?: number
  readonly high?: number
  /** How sharp an edge is wanted, a share of the ratio. */
  readonly close?: number
  /** Pairs, and drives of two stages, to propose. */
  readonly proposals?: number
}

/** A ratio tried by changing the last pulley, m. */
export interface RatioPoint extends Trial {
  readonly machinePulley: number
}

export interface RatioStudy {
  readonly ok: true
  readonly asked: Asked
  readonly present: RatioPoint
  /** Every ratio tried, ascending: the grid, and what sharpened the edges. */
  readonly points: readonly RatioPoint[]
  /** Ratios that do the job, whatever belt they would need; and those that this drive's last stage can be given. */
  readonly duty: Window<Fault> | null
  readonly window: Window<Why> | null
  /** The steps its pulleys have, each run turn for turn; none where they have one each. */
  readonly steps: readonly StepTrial[]
  readonly pairs: readonly Proposal<Pair>[]
  /** Where one stage cannot, or only just. */
  readonly twoStages: readonly Proposal<TwoStages>[]
  /** Toothed belts: their pulleys come by teeth, so the nearest is meant. */
  readonly toothed: boolean
}

const POINTS = 13
const CLOSE = 0.005
const PROPOSALS = 4
/** How far the grid reaches: under the present ratio, over the one that volts end at, and over the present one. */
const UNDER = 4
const OVER_REACH = 1.25
const LEAST_OVER = 1.5
const MOST_OVER = 12
/** Diameters a pulley may have, m (its field's own range). */
const LEAST_PULLEY = 0.005
const LARGEST_PULLEY = 3
/** Runs that edges usually take, for the progress told. */
const USUAL_EDGES = 12

/**
 * Studies the reduction of a scenario's job by changing its last pulley: the whole duty over a grid of ratios, edges
 * sharpened by more of the same, proposals run turn for turn. Yields progress in seconds of all its jobs together.
 * Refuses what the reader refuses.
 */
export function* ratioStudy(
  scenario: Scenario,
  options: RatioOptions = {},
): Generator<Progress, RatioStudy | Refused> {
  const { variant } = options
  const asIs = variant ? withVariant(scenario, variant) : scenario
  const reading = read(asIs)
  if (!reading.ok) return reading
  const { job } = reading
  // What is tried changes pulleys: step and length of the belt it has now do not go with them.
  const settles = settled(job.parts.belt)
  const whole = withVariant(asIs, { name: 'settled', changes: settles })
  const { belt } = (jobWith(whole, {}) ?? job).parts
  const { seconds } = job.duty
  const asked = askedOf(job)
  const now = ratio(belt)
  const close = options.close ?? CLOSE
  const count = Math.max(2, options.points ?? POINTS)
  const most = options.proposals ?? PROPOSALS

  let runs = 0
  const expected = count + USUAL_EDGES + most
  /** Lets the caller breathe. */
  const told = function* <T>(work: Generator<Progress, T>): Generator<Progress, T> {
    let part = 0
    for (;;) {
      const next = work.next()
      if (next.done) {
        runs++
        return next.value
      }
      // A trial may take a second run: it goes on from there.
      part = Math.max(part, Math.min(1, next.value.t / seconds))
      yield { t: (runs + part) * seconds, of: Math.max(expected, runs + 1) * seconds }
    }
  }

  const points: RatioPoint[] = []
  const attempt = function* (wanted: number): Generator<Progress, Tried<Fault>> {
    const machinePulley = (belt.machinePulley * wanted) / now
    const there: Job | null = jobWith(whole, asTight(whole, belt, lastPulley(machinePulley)))
    if (!there) return { ratio: wanted, why: ['unfinished'] }
    const result: Trial = yield* told(trial(there))
    points.push({ ...result, machinePulley })
    return { ratio: wanted, why: result.faults }
  }

  const reach = asked.fastest > 0 ? (now * topSpeed(job.parts)) / asked.fastest : now
  const least = (now * LEAST_PULLEY) / belt.machinePulley
  const largest = (now * LARGEST_PULLEY) / belt.machinePulley
  const low = Math.max(least, options.low ?? Math.min(now, reach) / UNDER)
  const beyond = Math.min(Math.max(OVER_REACH * reach, LEAST_OVER * now), MOST_OVER * now)
  const high = Math.min(largest, options.high ?? beyond)
  const grid = { low, high, count, now, least: options.low === undefined ? least : low }
  const tried = yield* tryGrid(grid, attempt)

  const duty = yield* windowOf(tried, now, close, attempt)
  const window = duty && (yield* fitting(belt, duty, now, asked.fastest, close / 10))
  const base: Variant = { name: 'base', changes: { ...variant?.changes, ...settles } }
  const offer: Offer = { scenario: whole, base, belt, most, told }
  const steps = yield* tryTheSteps(asIs, variant, job.parts.belt, told)
  const pairs = window ? yield* pairProposals(offer, window) : []
  const twoStages =
    duty && !pairs.some(({ ratio: each }) => wellInside(each, duty))
      ? yield* twoStageProposals(offer, duty)
      : []

  points.sort((a, b) => a.ratio - b.ratio)
  const away = (point: RatioPoint) => Math.abs(Math.log(point.ratio / now))
  const present = points.reduce((a, b) => (away(b) < away(a) ? b : a))
  const toothed = isToothed(belt)
  return { ok: true, asked, present, points, duty, window, steps, pairs, twoStages, toothed }
}
