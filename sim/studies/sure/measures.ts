// What could be measured: what each measurement would read of a job, and how closely a meter reads it.
import { meanTorque } from '../../duty.ts'
import type { Job } from '../../job.ts'
import { airAt, fullFan } from '../../parts/heat.ts'
import { idleTorque } from '../../parts/machine.ts'
import { friction } from '../../parts/rotor.ts'
import { assemble } from '../../plant.ts'
import type { Made } from './draft.ts'

export type MeasureKind =
  | 'current'
  | 'warm-up'
  | 'ohms'
  | 'held'
  | 'spin'
  | 'running'
  | 'coast'
  | 'mass'
  | 'opens at'
  | 'air'

export interface Measure {
  /** One of a kind; the current is one for each step of the duty. */
  readonly name: string
  readonly kind: MeasureKind
  /** The step of the duty it belongs to, from 0; null: none. */
  readonly phase: number | null
  /** What it would read, in units in which a meter is off by as much everywhere; null: there is nothing to read. */
  readonly tells: (made: Made) => readonly number[] | null
  /** How far off the meter is for a job, 8 in 10. */
  readonly meter: (made: Made) => readonly number[]
  /** The first of what it tells as it reads, SI: A, Ω, °C … */
  readonly reads: (tells: readonly number[]) => number
}

/** Spreads of meters, 8 in 10, as in sim/identify/doubts (common practice, no source). */
const METER = 0.02
const CLAMP = 0.04
const STOPWATCH = 0.05
const SCALES = 0.03
const PROBES = 0.05
/** Heat numbers by a warm-up log: what fits of invented logs leave (test/sim/identify/warmUpCampaign). */
const FITTED = 0.1
const THERMOMETER = { opens: 2, air: 1 }
const BRUSHES = 0.2

const log = (...values: readonly number[]): readonly number[] | null =>
  values.every((value) => value > 0 && Number.isFinite(value)) ? values.map(Math.log) : null
const first = ([value]: readonly number[]) => value
const power = ([value]: readonly number[]) => Math.exp(value)

/** Mean amps in a step, motor warm but its magnets cold: what a clamp would show, to the share that does not matter here. */
function amps({ job: { parts, duty }, numbers }: Made, phase: number): number {
  const { ratio } = assemble(parts)
  const { speed } = duty.phases[phase]
  const spindle = meanTorque(duty.phases[phase]) + idleTorque(parts.machine, speed)
  return (spindle / (ratio * parts.belt.efficiency) + friction(parts.rotor, speed * ratio)) / numbers.constant
}

/** Conductance from frame and winding to the air at a motor speed, W/K. */
function toAir({ parts: { heat } }: Job, speed: number): number {
  const air = { windingToAir: 0, frameToAir: 0 }
  airAt(heat, fullFan(heat), speed, air)
  return air.windingToAir + air.frameToAir
}

const one = (
  kind: MeasureKind,
  tells: Measure['tells'],
  meter: Measure['meter'],
  reads: Measure['reads'] = power,
): Measure => ({ name: kind, kind, phase: null, tells, meter, reads })

const MOTOR: readonly Measure[] = [
  one(
    'warm-up',
    ({ job, numbers }) =>
      log(
        numbers.windingCapacity + numbers.frameCapacity,
        numbers.windingToFrame,
        toAir(job, numbers.fanSpeed / 2),
      ),
    () => [FITTED, FITTED, FITTED],
  ),
  one(
    'ohms',
    ({ numbers }) => log(numbers.resistance),
    ({ numbers }) => [Math.hypot(METER, PROBES / numbers.resistance)],
  ),
  one(
    'held',
    ({ numbers }) => {
      const ohms = log(numbers.resistance)
      return ohms && [...ohms, numbers.brushDrop]
    },
    () => [Math.hypot(METER, CLAMP), BRUSHES],
  ),
  one(
    'spin',
    ({ numbers }) => log(numbers.constant),
    () => [METER],
  ),
  one(
    'running',
    ({ job, numbers }) => log(friction(job.parts.rotor, numbers.fanSpeed) / numbers.constant),
    () => [CLAMP],
  ),
  one(
    'coast',
    ({ numbers }) => log(numbers.inertia + numbers.flywheel),
    () => [STOPWATCH],
  ),
  one(
    'mass',
    ({ mass }) => (mass === null ? null : log(mass)),
    () => [SCALES],
  ),
]

const ROUND: readonly Measure[] = [
  one(
    'air',
    ({ job }) => [job.parts.heat.air],
    () => [THERMOMETER.air],
    first,
  ),
  one(
    'opens at',
    ({ job: { parts } }) => (parts.cutoff.fitted === 'none' ? null : [parts.cutoff.opensAt]),
    () => [THERMOMETER.opens],
    first,
  ),
]

/** Steps whose current is worth reading at the most. */
const MOST_STEPS = 4

/** Everything that could be measured for a job. */
export function measuresOf({ duty }: Job): readonly Measure[] {
  const cuts = duty.phases.flatMap((phase, index) =>
    phase.speed > 0 && meanTorque(phase) > 0 ? [index] : [],
  )
  const effort = (index: number) =>
    meanTorque(duty.phases[index]) * duty.phases[index].speed * duty.phases[index].seconds
  const hardest = cuts.toSorted((a, b) => effort(b) - effort(a)).slice(0, MOST_STEPS)
  return [
    ...hardest.map(
      (phase): Measure => ({
        name: `current ${phase}`,
        kind: 'current',
        phase,
        tells: (made) => log(amps(made, phase)),
        meter: () => [CLAMP],
        reads: power,
      }),
    ),
    ...MOTOR,
    ...ROUND,
  ]
}
