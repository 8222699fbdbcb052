// How fast everything gets when the controller gives all it has and nothing is cut: a lost speed signal, a shorted device, a thrown belt.
import { ratio } from '../parts/belt.ts'
import type { Parts } from '../plant.ts'

export interface Runaway {
  /** Motor and spindle, rad/s. */
  readonly motor: number
  readonly spindle: number
  /** Rims of the machine pulley, and of the flywheel where its diameter is known, m/s. */
  readonly pulleyRim: number
  readonly flywheelRim: number | null
}

/** Speed of the flywheel's rim with the motor at a speed (rad/s); null where there is none, or its diameter (m) is not known. m/s */
export const flywheelRim = ({ rotor }: Parts, motor: number, diameter: number | undefined): number | null =>
  diameter === undefined || rotor.flywheel <= 0 ? null : (motor * diameter) / 2

/** Supplies of fewer volts come through a transformer or a switched supply, V (common practice). */
const LOW_VOLTS = 60

/** Speeds with all the volts there are and nothing to do: (V − Vb)/k, cold, when the magnets are strongest and it is slowest: a lower bound. */
export function runaway(parts: Parts, flywheelDiameter: number | undefined): Runaway {
  const { supply, winding, belt } = parts
  // A shorted device passes all that is rectified; of a low supply that is its own volts, behind a transformer.
  const offLine = supply.kind !== 'battery' && supply.volts > LOW_VOLTS
  const volts = offLine ? Math.max(supply.volts, Math.SQRT2 * supply.lineVolts) : supply.volts
  const motor = Math.max(0, volts - winding.brushDrop) / winding.constant
  const spindle = motor / ratio(belt)
  return {
    motor,
    spindle,
    pulleyRim: (spindle * belt.machinePulley) / 2,
    flywheelRim: flywheelRim(parts, motor, flywheelDiameter),
  }
}

/** Rim speed that ordinary cast-iron pulleys and flywheels are held to, m/s (Machinery's Handbook, from memory). */
export const CAST_RIM = 33

/** A rotor is not tried at more than this share over its plate's speed (common practice). */
export const TRIED = 1.25
