// Levers: the changes that advice may try, each by paths of the scenario, where the job has a use for it.
import { usualBreaker } from './breakers.ts'
import type { Case } from './case.ts'
import { writeQuantity } from '../quantity.ts'
import type { Changes } from './finding.ts'
import {
  anotherStep,
  halfReduction,
  jackshaft,
  lessReduction,
  moreReduction,
  mostReduction,
  widerPulleys,
} from './pulleys.ts'
import { longerRest, shorterWork } from './rests.ts'
import { tightened } from './tension.ts'

/** A change with the name of its variant. */
export interface Pulled {
  readonly name: string
  readonly changes: Changes
}
export type Lever = (one: Case) => Pulled | null

/** Times plate amps that a current limit is usually set to (common practice, no source). */
const USUAL_LIMIT = 1.5
/** And at most, for a motor that stalls (common practice, no source). */
const MOST_LIMIT = 2

const cooling =
  (from: readonly string[], to: string, name: string): Lever =>
  ({ job }) =>
    from.includes(job.parts.heat.cooling) ? { name, changes: { 'heat.cooling': to } } : null

const amps = (value: number): string => `${Number(value.toPrecision(3))} A`

const limit =
  (times: number, up: boolean): Lever =>
  ({ job }) => {
    const { plate, parts } = job
    if (plate.amps === undefined) return null
    const to = times * plate.amps
    if (up ? to <= parts.controller.currentLimit : to >= parts.controller.currentLimit) return null
    return { name: `Current limit ${amps(to)}`, changes: { 'controller.currentLimit': amps(to) } }
  }

const plateVolts: Lever = ({ job }) => {
  const { volts } = job.plate
  if (volts === undefined) return null
  const text = `${Number(volts.toPrecision(4))} V`
  return { name: `Supply of ${text}`, changes: { 'supply.volts': text } }
}

/** The flywheel taken off the shaft; the cooling stays as it is, so its fan has to stay. */
const noFlywheel: Lever = ({ job }) =>
  job.parts.rotor.flywheel > 0
    ? { name: 'Without the flywheel', changes: { 'rotor.flywheel': '0 kg·m²' } }
    : null

/** Two of them at once, each where the job has a use for both. */
const both =
  (one: Lever, other: Lever): Lever =>
  (each) => {
    const [a, b] = [one(each), other(each)]
    return a && b ? { name: `${a.name}, ${lower(b.name)}`, changes: { ...a.changes, ...b.changes } } : null
  }
const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1)

/** Every step that is faster than the speed printed on the wheel, at that speed. */
const wheelSpeed: Lever = ({ job }) => {
  const printed = job.parts.machine.wheelSpeed
  if (printed === undefined) return null
  const text = writeQuantity(printed, 'rpm')
  const steps = job.duty.phases.flatMap(({ speed }, index) => (speed > printed ? [index] : []))
  return {
    name: `At the wheel’s ${text}`,
    changes: Object.fromEntries(steps.map((index) => [`duty.phases.${index}.speed`, text])),
  }
}

const breaker: Lever = ({ job, now }) => {
  const size = usualBreaker(job.parts.supply.lineVolts, now.outletAmps)
  return size === null
    ? null
    : { name: `With a breaker of ${size} A`, changes: { 'supply.breaker': `${size} A` } }
}

const supplyKind =
  (kind: string, name: string): Lever =>
  () => ({ name, changes: { 'supply.kind': kind, 'supply.formFactor': null } })

export const LEVERS = {
  'shaft fan': cooling(['none'], 'shaft fan', 'With the shaft fan'),
  blower: cooling(['none', 'shaft fan'], 'blower', 'With a blower'),
  'outer fan': cooling(['enclosed'], 'enclosed, outer fan', 'With an outer fan'),
  clean: ({ job }) =>
    job.parts.heat.airPath < 1 ? { name: 'Cleaned', changes: { 'heat.airPath': '100 %' } } : null,
  'another step': anotherStep,
  'more reduction': moreReduction,
  'most reduction': mostReduction,
  jackshaft,
  'less reduction': lessReduction,
  'half the reduction': halfReduction,
  'tighter belt': tightened,
  'wider pulleys': widerPulleys,
  choke: (one) =>
    supplyKind(
      'phase control with choke',
      one.job.parts.supply.kind === 'phase control' ? 'With a choke' : 'With a phase controller and choke',
    )(one),
  'chopped DC': supplyKind('pwm', 'On chopped DC'),
  'plate volts': plateVolts,
  'plate volts, no flywheel': both(plateVolts, noFlywheel),
  'no flywheel': noFlywheel,
  'wheel speed': wheelSpeed,
  'usual breaker': breaker,
  compensation: ({ job: { parts } }) =>
    parts.controller.holds === 'sag compensation' && parts.controller.compensation === 0.8
      ? null
      : {
          name: 'Sag compensation 80 %',
          changes: { 'controller.holds': 'sag compensation', 'controller.compensation': '80 %' },
        },
  feedback: ({ job: { parts } }) =>
    parts.controller.holds === 'speed feedback'
      ? null
      : { name: 'With speed feedback', changes: { 'controller.holds': 'speed feedback' } },
  'lower limit': limit(USUAL_LIMIT, false),
  'higher limit': limit(MOST_LIMIT, true),
  wired: () => ({ name: 'Cutoff wired', changes: { 'cutoff.leads': 'no-volt release' } }),
  'fit a cutoff': () => ({
    name: 'With a cutoff',
    changes: { 'cutoff.fitted': 'manual reset', 'cutoff.leads': 'no-volt release' },
  }),
  release: () => ({ name: 'With a no-volt release', changes: { 'cutoff.leads': 'no-volt release' } }),
  earth: () => ({ name: 'Earthed', changes: { 'supply.earth': 'yes' } }),
  'longer rest': longerRest,
  'shorter work': shorterWork,
} as const satisfies Readonly<Record<string, Lever>>
export type LeverName = keyof typeof LEVERS
