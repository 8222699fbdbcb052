// Two plates side by side: what their horsepower hides, on the same pulley and geared to the same speed.
import { plateTorque } from './rival.ts'

/** Power, W, and speed, rad/s, as printed. */
export interface PlateOf {
  readonly power: number
  readonly speed: number
}

export interface Plates {
  /** Torque of each at its own shaft, N·m. */
  readonly torque: number
  readonly otherTorque: number
  /** Turns of the faster for one of the slower that bring both to the slower's speed; at least 1. */
  readonly ratio: number
  /** Which is the faster: its torque there is `geared`, N·m, less belt losses. */
  readonly faster: 'one' | 'other'
  readonly geared: number
}

/** Two plates compared. Torque times speed is power, so geared to the same speed power decides, and only there. */
export function besides(one: PlateOf, other: PlateOf, efficiency = 1): Plates {
  const torque = plateTorque(one.power, one.speed)
  const otherTorque = plateTorque(other.power, other.speed)
  const faster = one.speed >= other.speed ? 'one' : 'other'
  const ratio = Math.max(one.speed, other.speed) / Math.min(one.speed, other.speed)
  return {
    torque,
    otherTorque,
    ratio,
    faster,
    geared: (faster === 'one' ? torque : otherTorque) * ratio * efficiency,
  }
}

/** Torque at the spindle of a plate's motor through pulleys: N·m. */
export const geared = (plate: PlateOf, ratio: number, efficiency: number): number =>
  plateTorque(plate.power, plate.speed) * ratio * efficiency
