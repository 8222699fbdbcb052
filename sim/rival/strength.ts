// What a motor pulls at the spindle at one speed, over and above the machine's own drag: all day, for minutes, for seconds.
import type { Heat } from '../parts/heat.ts'
import { idleTorque, type Machine } from '../parts/machine.ts'
import type { Parts } from '../plant.ts'
import { allDayTorque } from '../steady/allDay.ts'
import type { TorqueLimit } from '../steady/most.ts'
import { shortTimeTorque } from '../steady/shortTime.ts'
import { inductionTorque } from './kloss.ts'
import type { Direct, Induction, Rival, Step } from './rival.ts'

/** Minutes and seconds, as the comparison means them, s: for so long a DC motor holds it from cold. */
export const MINUTES = 5 * 60
export const SECONDS = 10

/** Torques of the cut, N·m at the spindle. */
export interface Strength {
  readonly allDay: number
  readonly minutes: number
  readonly seconds: number
}

/** Spindle speed at which a machine is taken to start, rad/s: dry drag fades out below, and stands in full against a start. */
const STARTING = 3

type Cooling = Heat['cooling']

/** Coolings that a motor may be given: an open one or a closed one. */
const COOLINGS = {
  open: ['shaft fan', 'blower', 'none'],
  closed: ['enclosed, outer fan', 'enclosed'],
} as const satisfies Readonly<Record<string, readonly Cooling[]>>

export const coolingsOf = (cooling: Cooling): readonly Cooling[] =>
  cooling === 'enclosed' || cooling === 'enclosed, outer fan' ? COOLINGS.closed : COOLINGS.open

/**
 * Strength of a DC drive at spindle speed `speed`, rad/s, and what its seconds are limited by. Near top speed a warm
 * motor may do more than a cold one, as weaker magnets let it run faster: what it holds all day counts for less too.
 */
export function driveStrength(parts: Parts, speed: number): Strength & { readonly limit: TorqueLimit } {
  const allDay = allDayTorque(parts, speed).torque
  const seconds = shortTimeTorque(parts, speed, SECONDS)
  return {
    allDay,
    minutes: Math.max(allDay, shortTimeTorque(parts, speed, MINUTES).torque),
    seconds: Math.max(allDay, seconds.torque),
    limit: seconds.limit,
  }
}

/** The rival's parts on one of its steps: its motor, with the job's machine and air. */
export const onStep = ({ parts }: Direct, { ratio, efficiency }: Step, job: Parts): Parts => ({
  ...parts,
  belt: { motorPulley: 1, machinePulley: ratio, efficiency },
  machine: job.machine,
  heat: { ...parts.heat, air: job.heat.air },
})

/** Torque at the shaft, N·m, as torque of the cut on a step at spindle speed `speed`, rad/s; never under nothing. */
const atSpindle = (torque: number, { ratio, efficiency }: Step, machine: Machine, speed: number): number =>
  Math.max(0, torque * ratio * efficiency - idleTorque(machine, speed))

/**
 * Strength of an induction motor on a step: full load all day, service factor for minutes, breakdown for seconds (when
 * it has slowed down to it, and it stalls beyond).
 */
function inductionStrength(motor: Induction, step: Step, machine: Machine): Strength {
  const speed = motor.speed / step.ratio
  const cut = (torque: number) => atSpindle(torque, step, machine, speed)
  return {
    allDay: cut(motor.fullLoad),
    minutes: cut(Math.min(motor.breakdown, motor.serviceFactor * motor.fullLoad)),
    seconds: cut(motor.breakdown),
  }
}

/** Strength of the rival on one of its steps, at the spindle speed its plate speed gives there. */
export const rivalStrength = (rival: Rival, step: Step, job: Parts): Strength =>
  rival.kind === 'DC'
    ? driveStrength(onStep(rival, step, job), rival.speed / step.ratio)
    : inductionStrength(rival, step, job.machine)

/** Torque of this drive at the start, N·m: what frees a jammed machine, its own drag overcome. */
export const driveStart = (parts: Parts): number => shortTimeTorque(parts, STARTING, SECONDS).torque

/** The same of the rival on a step. */
export const rivalStart = (rival: Rival, step: Step, job: Parts): number =>
  rival.kind === 'DC'
    ? driveStart(onStep(rival, step, job))
    : atSpindle(rival.locked, step, job.machine, STARTING)

/** A torque at the spindle by spindle speed: rad/s and N·m. */
export interface Curve {
  readonly speed: Float64Array
  readonly torque: Float64Array
}

/** At standstill the drag of a start counts. */
const moving = (speed: number): number => Math.max(STARTING, speed)

/** A curve at `points` speeds from standstill to `fastest`. */
function curve(fastest: number, points: number, torque: (speed: number) => number): Curve {
  const speed = Float64Array.from({ length: points }, (_, n) => (fastest * n) / (points - 1))
  return { speed, torque: speed.map(torque) }
}

/** The old induction motor's torque of the cut on a step, from standstill to the speed of its field. */
export const rivalCurve = (motor: Induction, step: Step, machine: Machine, points = 121): Curve =>
  curve(motor.synchronous / step.ratio, points, (speed) =>
    atSpindle(inductionTorque(motor, speed * step.ratio), step, machine, moving(speed)),
  )

/** This motor all day with a cooling, by spindle speed up to `fastest`, rad/s. */
export const allDayCurve = (parts: Parts, cooling: Cooling, fastest: number, points = 61): Curve =>
  curve(fastest, points, (speed) => allDayTorque(parts, moving(speed), cooling).torque)

/** This motor for seconds, by spindle speed up to `fastest`, rad/s: its current limit, then its volts. */
export const secondsCurve = (parts: Parts, fastest: number, points = 61): Curve =>
  curve(fastest, points, (speed) =>
    Math.max(
      allDayTorque(parts, moving(speed)).torque,
      shortTimeTorque(parts, moving(speed), SECONDS).torque,
    ),
  )
