// The bearing a small motor's shaft runs in, and the pull it stands: for a note, not for a rating.
import type { Sourced } from './source.ts'

/** A bearing: its dynamic load rating, N, the load that 9 in 10 stand for a million turns. */
export interface Bearing extends Sourced {
  readonly name: string
  readonly bore: number
  readonly rating: number
}

/** What motors of this size usually have at the pulley's end (common practice); nobody has looked at yours. */
export const USUAL_BEARING: Bearing = {
  name: '6203',
  bore: 0.017,
  rating: 9560,
  source: 'ball bearing 6203, C = 9.56 kN: makers’ tables (others give up to 9.95 kN)',
  standing: 'read',
}

/** Hours that a machine used now and then ought to last, h (common practice). */
export const BEARING_HOURS = 10_000
/** A pull outside the bearing loads it with more than the pull: the lever over the span (from memory). */
const OVERHANG = 1.3

/**
 * Greatest pull on the end of a shaft, N, at a speed (rad/s) for a life in hours: L10 = (C/P)³ million turns
 * (ISO 281, as quoted in makers' guides).
 */
export function greatestShaftPull({ rating }: Bearing, speed: number, hours = BEARING_HOURS): number {
  const millions = (hours * 3600 * speed) / (2 * Math.PI) / 1e6
  return rating / Math.cbrt(millions) / OVERHANG
}
