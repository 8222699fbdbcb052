// Running up from rest: how long it takes, and how warm it makes a cold motor, at one go where it is soon over.
import { senseRate } from '../../parts/cutoff.ts'
import { constantAt, resistanceAt } from '../../parts/winding.ts'
import type { Plant } from '../../plant.ts'
import type { Left } from '../../steady/balance.ts'

/** Where it leads. */
export interface RanUp {
  readonly seconds: number
  readonly windingC: number
  readonly frameC: number
  readonly switchC: number
}

/** A run-up that takes longer than this has to be followed, s. */
const SOON = 12
/** Speed whose friction heat is the mean of a steady run-up's, as a share of the last: between a half and 1/√3. */
const MEAN_SPEED = 0.55

/**
 * The run-up to motor speed `w` (rad/s) against a torque at the shaft (N·m, the motor's own friction in it) with
 * `inertia` (kg·m²) on the shaft: steady acceleration by the ramp, or by what amps there are. Before it moves the
 * volts must drive the amps, which rise with the ramp. Null: it takes long, or never gets there.
 */
export function runUp(
  plant: Plant,
  w: number,
  atShaft: number,
  inertia: number,
  left: (motor: number, amps: number, windingC: number, frameC: number) => Left,
): RanUp | null {
  const { controller, winding, heat, cutoff } = plant
  const coldC = heat.air
  const constant = constantAt(winding, coldC)
  const { ramp, currentLimit, holds, compensation } = controller
  const amps = Math.min(currentLimit, (atShaft + inertia * ramp) / constant)
  const acceleration = (constant * amps - atShaft) / inertia
  if (!(acceleration > 0)) return null
  const made = holds === 'sag compensation' ? compensation * winding.resistance : 0
  const lost = holds === 'speed feedback' ? 0 : Math.max(0, resistanceAt(winding, coldC) - made) * amps
  const still = lost / (winding.constant * ramp)
  const moving = w / acceleration
  if (!(still + moving < SOON)) return null
  // Amps that rise evenly heat by a third of what the last of them do.
  const heated = moving + still / 3
  const [windingHeat, frameHeat] = left(MEAN_SPEED * w, amps, coldC, coldC)
  const windingC = coldC + (windingHeat / heat.windingCapacity) * heated
  const frameC = coldC + (frameHeat / heat.frameCapacity) * heated
  const half = senseRate(cutoff, (windingC + coldC) / 2, (frameC + coldC) / 2, coldC)
  return { seconds: still + moving, windingC, frameC, switchC: coldC + half * heated }
}
