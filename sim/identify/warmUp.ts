// A warm-up from cold at a held speed and torque: how hot the winding is after a while.
import { type Air, airAt, fullFan, type Heat } from '../parts/heat.ts'
import { friction, type Rotor } from '../parts/rotor.ts'
import { constantAt, resistanceAt, type Winding } from '../parts/winding.ts'
import type { Held } from '../steady.ts'

/** The fourth-order rule takes at least so many steps, and none longer than a share of the winding's own time. */
const STEPS = 400
const SHARE = 0.2
/** Nothing is asked about a motor hotter than this. °C */
const BURNT_C = 500

/** Average winding temperature after `seconds` from the air's temperature, °C. Two-node heat of PHYSICS.md §1. */
export function warmUp(winding: Winding, rotor: Rotor, heat: Heat, held: Held, seconds: number): number {
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  airAt(heat, fullFan(heat), held.speed, air)
  const lost = friction(rotor, held.speed)
  const frictionHeat = lost * held.speed
  const rates = (w: number, f: number): [number, number] => {
    const i = (held.torque + lost) / constantAt(winding, f)
    const copper = held.formFactor ** 2 * resistanceAt(winding, w) * i * i
    const brushes = winding.brushDrop * Math.abs(i)
    const inward = heat.windingToFrame * (w - f)
    return [
      (copper +
        heat.frictionShare * frictionHeat +
        heat.brushShare * brushes -
        inward -
        air.windingToAir * (w - held.air)) /
        heat.windingCapacity,
      ((1 - heat.frictionShare) * frictionHeat +
        (1 - heat.brushShare) * brushes +
        inward -
        air.frameToAir * (f - held.air)) /
        heat.frameCapacity,
    ]
  }
  const own = heat.windingCapacity / (heat.windingToFrame + air.windingToAir)
  const steps = Math.ceil(Math.max(STEPS, seconds / (SHARE * own)))
  const h = seconds / steps
  let w = held.air
  let f = held.air
  for (let n = 0; n < steps && w < BURNT_C; n++) {
    const [w1, f1] = rates(w, f)
    const [w2, f2] = rates(w + (h / 2) * w1, f + (h / 2) * f1)
    const [w3, f3] = rates(w + (h / 2) * w2, f + (h / 2) * f2)
    const [w4, f4] = rates(w + h * w3, f + h * f3)
    w += (h / 6) * (w1 + 2 * w2 + 2 * w3 + w4)
    f += (h / 6) * (f1 + 2 * f2 + 2 * f3 + f4)
  }
  return w
}
