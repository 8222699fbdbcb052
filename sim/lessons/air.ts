// How much of the heat the air carries from the winding at one motor speed, against another.
import { airAt, fullFan, type Heat } from '../parts/heat.ts'

/** Conductance from the winding to the air at a motor speed, rad/s. W/K */
function carriedAt(heat: Heat, motor: number): number {
  const air = { windingToAir: 0, frameToAir: 0 }
  airAt(heat, fullFan(heat), motor, air)
  return air.windingToAir
}

/** Heat carried at a motor speed (rad/s), against full speed with the cooling of `full`. */
export const carriedShare = (heat: Heat, motor: number, full = heat): number =>
  carriedAt(heat, motor) / carriedAt(full, full.fanSpeed)
