// Levers of the belt: other pulleys that are sold, within what volts and belt allow.
import { STOCK_PULLEYS } from '../handbook/beltSections.ts'
import { type Belt, onStepOf, ratio } from '../parts/belt.ts'
import { writeQuantity } from '../quantity.ts'
import { lastStage, settled, twoStage } from '../studies/ratio/change.ts'
import { twoStagesWithin } from '../studies/ratio/jackshaft.ts'
import { beltFaults } from '../drive/limits.ts'
import { CAST_RIM, flywheelRim } from '../drive/runaway.ts'
import type { Case } from './case.ts'
import type { Pulled } from './levers.ts'

/** Of the speed that the volts allow, or a rim, a job is given this much at most. */
const IN_HAND = 0.95
/** How much more reduction is looked for first, and what more at least is worth a pulley. */
const MORE = 1.4
const WORTH = 1.1

/** "4.8 : 1" */
const ratioName = (n: number): string => `Ratio ${Number(n.toFixed(1))} : 1`

/** The largest ratio at which the volts still give every speed asked. */
const reach = ({ now, ratio: n, fastest }: Case): number =>
  fastest > 0 ? (IN_HAND * n * now.topSpeed) / fastest : n

/** Nothing that the belt did not object to before. */
function allowed(one: Case, belt: Belt): boolean {
  const before = beltFaults(one.job.parts.belt, one.motorSpeed, one.work.mean).map(({ kind }) => kind)
  return beltFaults(belt, one.fastest * ratio(belt), one.work.mean).every(({ kind }) => before.includes(kind))
}

/** Last pulleys that are sold, with the ratios they make, ascending. */
function lastPulleys(one: Case): readonly { readonly size: number; readonly n: number }[] {
  const { belt } = one.job.parts
  return STOCK_PULLEYS.map((size) => ({ size, n: (one.ratio * size) / belt.machinePulley })).filter(
    ({ size }) => allowed(one, { ...belt, machinePulley: size }),
  )
}

const pulled = (one: Case, { size, n }: { size: number; n: number }): Pulled => ({
  name: ratioName(n),
  changes: { ...settled(one.job.parts.belt), 'belt.machinePulley': writeQuantity(size, 'in') },
})

/** Ratios above the present one that reach every speed, ascending. */
const larger = (one: Case) => lastPulleys(one).filter(({ n }) => n >= WORTH * one.ratio && n <= reach(one))

/** A pulley for about 1.4 times the reduction. */
export function moreReduction(one: Case): Pulled | null {
  const [first, ...rest] = larger(one)
  if (!first) return null
  return pulled(
    one,
    rest.reduce((best, each) => (each.n <= MORE * one.ratio ? each : best), first),
  )
}

/** The step of the pulleys with the most reduction that the volts allow: nothing to buy. */
export function anotherStep(one: Case): Pulled | null {
  const { belt } = one.job.parts
  const steps = (belt.pairs ?? []).map((pair, index) => ({ n: ratio(onStepOf(belt, pair)), step: index + 1 }))
  const [best] = steps.filter(({ n }) => n >= WORTH * one.ratio && n <= reach(one)).sort((a, b) => b.n - a.n)
  return best
    ? { name: `Step ${best.step} of the pulleys`, changes: { 'belt.step': String(best.step) } }
    : null
}

/** The largest reduction that one stage and the volts allow. */
export function mostReduction(one: Case): Pulled | null {
  const most = larger(one).at(-1)
  return most ? pulled(one, most) : null
}

/** Two stages for about twice the reduction, where one pulley does not give it. */
export function jackshaft(one: Case): Pulled | null {
  const { belt } = one.job.parts
  const low = Math.max(1.6 * one.ratio, larger(one).at(-1)?.n ?? 0)
  const high = Math.min(reach(one), 4 * one.ratio)
  if (!(high > low)) return null
  const middle = { low: Math.sqrt(low * high) * 0.9, high: Math.sqrt(low * high) * 1.1 }
  const best = twoStagesWithin(belt, middle).find(({ pulleys: [motorPulley, large, small, machinePulley] }) =>
    allowed(one, {
      ...belt,
      motorPulley,
      jackshaftLarge: large,
      jackshaftSmall: small,
      machinePulley,
      centreDistance: undefined,
    }),
  )
  return best
    ? {
        name: `Jackshaft, ${ratioName(best.ratio).toLowerCase()}`,
        changes: { ...settled(belt), ...twoStage(belt, best.pulleys) },
      }
    : null
}

/** The largest pulley that still reaches every speed asked, and turns motor and flywheel no faster than they stand. */
export function lessReduction(one: Case): Pulled | null {
  const { plateSpeed, fastest, ratio: n } = one
  const rim = flywheelRim(one.job.parts, 1, one.motor.bench.flywheelDiameter)
  // Idling, a controller that makes up for sag turns it a little faster than asked.
  const stands = Math.min(plateSpeed ?? Infinity, rim === null ? Infinity : (IN_HAND * CAST_RIM) / rim)
  const most = Math.min(reach(one), stands / fastest)
  const smaller = lastPulleys(one).filter((each) => each.n <= most && each.n < n / 1.02)
  const best = smaller.at(-1)
  return best ? pulled(one, best) : null
}

/** Half the reduction: to show what it would cost. */
export function halfReduction(one: Case): Pulled | null {
  const smaller = lastPulleys(one).filter(({ n }) => n <= 0.56 * one.ratio && n >= 0.4 * one.ratio)
  const best = smaller.at(-1)
  return best ? pulled(one, best) : null
}

/** Both pulleys of the last stage a third larger or more, about the same ratio: more wrap, less pull. */
export function widerPulleys(one: Case): Pulled | null {
  const { belt } = one.job.parts
  const driving = belt.jackshaftSmall ?? belt.motorPulley
  const wide = STOCK_PULLEYS.find((size) => size >= 1.33 * driving)
  const wanted = wide && (wide * belt.machinePulley) / driving
  const driven = wanted && STOCK_PULLEYS.find((size) => Math.abs(size / wanted - 1) < 0.06)
  if (!wide || !driven) return null
  const room = belt.centreDistance
  const changes = lastStage(
    belt,
    wide,
    driven,
    room === undefined ? null : Math.max(room, (wide + driven) * 0.75),
  )
  return { name: 'Wider pulleys', changes: { ...settled(belt), ...changes } }
}
