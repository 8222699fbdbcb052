// The ratio study: which reductions do the user's own job, what sets the edges, and which pulleys to buy.
import type { Job } from '../job.ts'
import { ratio } from '../parts/belt.ts'
import { read, type Refused } from '../read.ts'
import type { Progress } from '../run.ts'
import type { Scenario, Variant } from '../scenario.ts'
import { withVariant } from '../scenario.ts'
import { topSpeed } from '../steady/operating.ts'
import { isToothed, jobWith, lastPulley } from './ratio/change.ts'
import { beltFaults, type BeltLimit, STEEPEST } from './ratio/limits.ts'
import type { Pair } from './ratio/pairs.ts'
import { pairProposals, type Proposal, twoStageProposals } from './ratio/proposals.ts'
import type { TwoStages } from './ratio/jackshaft.ts'
import { type Asked, askedOf, type Fault, type Trial, trial } from './ratio/trial.ts'
import { type Tried, type Window, windowOf } from './ratio/window.ts'

export interface RatioOptions {
  /** The drive as it is with this variant. */
  readonly variant?: Variant
  /** Ratios on the grid, and where it begins and ends; left out: around the present one, past what volts allow. */
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

export type Why = Fault | BeltLimit

export interface RatioStudy {
  readonly ok: true
  readonly asked: Asked
  readonly present: RatioPoint
  /** Every ratio tried, ascending: the grid, and what sharpened the edges. */
  readonly points: readonly RatioPoint[]
  /** Ratios that do the job, whatever belt they would need; and those that this drive's last stage can be given. */
  readonly duty: Window<Fault> | null
  readonly window: Window<Why> | null
  readonly pairs: readonly Proposal<Pair>[]
  /** Where one stage cannot. */
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
/** While the lowest ratio works, so many more are tried under it. */
const MORE_UNDER = 8
/** Halvings in search of a window narrower than the grid. */
const SEEKS = 7
/** Looks at the belt's own limits within the window. */
const LOOKS = 200
/** Diameters a pulley may have, m (the field's own range). */
const LEAST_PULLEY = 0.005
const LARGEST_PULLEY = 3
/** Runs an edge usually takes, for the progress told. */
const USUAL_EDGES = 12

/** Limits of the belt that the last pulley decides; the others stand as they are at every ratio. */
const DECIDED: readonly BeltLimit[] = ['touch', 'wrap', 'small driven', 'rim']

const spread = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, n) => low * (high / low) ** (n / (count - 1)))

const untried = (asked: number): Tried<Fault> => ({ ratio: asked, why: ['unfinished'] })

/**
 * Studies the reduction of a scenario's job by changing its last pulley: runs of the whole duty over a grid of ratios,
 * edges sharpened by further runs, proposals run turn for turn. Yields progress in seconds of all its jobs. Refuses
 * what the reader refuses.
 */
export function* ratioStudy(
  scenario: Scenario,
  options: RatioOptions = {},
): Generator<Progress, RatioStudy | Refused> {
  const whole = options.variant ? withVariant(scenario, options.variant) : scenario
  const reading = read(whole)
  if (!reading.ok) return reading
  const { job } = reading
  const { belt } = job.parts
  const asked = askedOf(job)
  const now = ratio(belt)
  const close = options.close ?? CLOSE
  const most = options.proposals ?? PROPOSALS
  const count = options.points ?? POINTS
  const { seconds } = job.duty

  let runs = 0
  const expected = count + 1 + USUAL_EDGES + 2 * most
  /** Lets the caller breathe, in seconds of all the jobs together. */
  const told = function* <T>(work: Generator<Progress, T>): Generator<Progress, T> {
    for (;;) {
      const next = work.next()
      if (next.done) {
        runs++
        return next.value
      }
      const part = Math.min(1, next.value.t / seconds)
      yield { t: (runs + part) * seconds, of: Math.max(expected, runs + 1) * seconds }
    }
  }

  const points: RatioPoint[] = []
  const pulleyFor = (wanted: number): number => (belt.machinePulley * wanted) / now
  const attempt = function* (wanted: number): Generator<Progress, Tried<Fault>> {
    const machinePulley = pulleyFor(wanted)
    const there: Job | null = jobWith(whole, lastPulley(machinePulley))
    if (!there) return untried(wanted)
    const result: Trial = yield* told(trial(there))
    points.push({ ...result, machinePulley })
    points.sort((a, b) => a.ratio - b.ratio)
    return { ratio: wanted, why: result.faults }
  }

  // The grid: down to a quarter of the present ratio, up to where the volts end.
  const reach = asked.fastest > 0 ? (now * topSpeed(job.parts)) / asked.fastest : now
  const inPulleys = (wanted: number): number =>
    Math.min(
      Math.max(wanted, now * (LEAST_PULLEY / belt.machinePulley)),
      now * (LARGEST_PULLEY / belt.machinePulley),
    )
  const low = inPulleys(options.low ?? Math.min(now, reach) / UNDER)
  const high = inPulleys(
    options.high ?? Math.min(Math.max(OVER_REACH * reach, LEAST_OVER * now), MOST_OVER * now),
  )
  const tried: Tried<Fault>[] = []
  const wanted = [...spread(low, high, count), now].filter(
    (each, index, all) => index === all.length - 1 || Math.abs(Math.log(each / now)) > close,
  )
  for (const each of wanted.sort((a, b) => a - b)) tried.push(yield* attempt(each))
  const step = (high / low) ** (1 / (count - 1))
  if (options.low === undefined)
    for (let n = 0; n < MORE_UNDER && tried[0].why.length === 0; n++) {
      const under: number = inPulleys(tried[0].ratio / step)
      if (under >= tried[0].ratio) break
      tried.unshift(yield* attempt(under))
    }

  // None works: one may, between the last that fails for other reasons and the first that volts forbid.
  if (tried.every(({ why }) => why.length > 0)) {
    const beyond = tried.findIndex(({ why }) => why.includes('reach'))
    if (beyond > 0) {
      let under = tried[beyond - 1]
      let over = tried[beyond]
      for (let n = 0; n < SEEKS; n++) {
        const middle: Tried<Fault> = yield* attempt(Math.sqrt(under.ratio * over.ratio))
        tried.push(middle)
        if (middle.why.length === 0) break
        if (middle.why.includes('reach')) over = middle
        else under = middle
      }
      tried.sort((a, b) => a.ratio - b.ratio)
    }
  }

  const duty = yield* windowOf(tried, now, close, attempt)
  const window = duty && (yield* clipped(job, duty, now, close))
  const range = window && { low: window.low.ratio, high: window.high.ratio }
  const toDo = { most, attempts: 2 * most }
  const pairs = range ? yield* pairProposals(whole, job, range, toDo, told) : []
  const steep = !range || range.low > STEEPEST || pairs.length === 0
  const twoStages =
    duty && steep && pairs.length === 0
      ? yield* twoStageProposals(whole, job, { low: duty.low.ratio, high: duty.high.ratio }, toDo, told)
      : []
  const nearest = points.reduce((a, b) =>
    Math.abs(Math.log(b.ratio / now)) < Math.abs(Math.log(a.ratio / now)) ? b : a,
  )
  return {
    ok: true,
    asked,
    present: nearest,
    points,
    duty,
    window,
    pairs,
    twoStages,
    toothed: isToothed(belt),
  }
}

/** A window within what the belt's last stage can be given: nothing has to be run for that. */
function* clipped(
  job: Job,
  duty: Window<Fault>,
  now: number,
  close: number,
): Generator<Progress, Window<Why> | null> {
  const { belt } = job.parts
  const { fastest } = askedOf(job)
  const look = (each: number): Tried<Why> => ({
    ratio: each,
    why: beltFaults({ ...belt, machinePulley: (belt.machinePulley * each) / now }, fastest * each)
      .map(({ kind }) => kind)
      .filter((kind) => DECIDED.includes(kind)),
  })
  const looks = spread(duty.low.ratio, duty.high.ratio, LOOKS).map(look)
  // biome-ignore lint/correctness/useYield: a window's attempts may run; these need not.
  const found = yield* windowOf<Why>(looks, now, close / 10, function* (each) {
    return look(each)
  })
  return (
    found && {
      low: found.low.beyond === null ? duty.low : found.low,
      high: found.high.beyond === null ? duty.high : found.high,
    }
  )
}
