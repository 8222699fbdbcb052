// A bare rectifier bridge on a motor: at light load it charges towards the peak, and the motor runs away upwards.
import { friction } from '../parts/rotor.ts'
import type { Parts } from '../plant.ts'
import { root } from '../solve/root.ts'

/** Mean volts of a full-wave rectified sine over its rms value: 2√2/π (closed form). */
export const BRIDGE_MEAN = (2 * Math.SQRT2) / Math.PI

/**
 * Back-EMF over peak volts at which a full-wave bridge feeds a mean current through resistance alone, where the
 * current is not continuous: I R/Vp = (2 cos α − (π − 2α) sin α)/π with sin α = E/Vp (closed form: the sine above E,
 * averaged over a half wave). `drop`: mean current × resistance over peak volts.
 */
export function bridgeEmf(drop: number): number {
  const spare = (alpha: number) =>
    (2 * Math.cos(alpha) - (Math.PI - 2 * alpha) * Math.sin(alpha)) / Math.PI - drop
  // At α = 0 the motor stands, and the mean is that of the sine itself.
  if (spare(0) <= 0) return 0
  const alpha = root(spare, 0, Math.PI / 2, spare(0), -drop, 1e-12)
  return Math.sin(alpha)
}

/** Speed of a motor off a bare bridge with nothing to do but turn itself, rad/s: cold, when its magnets are strongest. */
export function bridgeIdle({ supply, winding, rotor }: Pick<Parts, 'supply' | 'winding' | 'rotor'>): number {
  const peak = Math.SQRT2 * supply.lineVolts
  const amps = friction(rotor, peak / winding.constant) / winding.constant
  return (peak * bridgeEmf((amps * winding.resistance) / peak)) / winding.constant
}
