// Steady questions, without time stepping: where a motor settles at a held speed and torque.
import { type Air, airAt, fullFan, type Heat } from './parts/heat.ts'
import { friction, type Rotor } from './parts/rotor.ts'
import { constantAt, resistanceAt, type Winding } from './parts/winding.ts'

/** What is held: motor speed (rad/s), torque at the motor's shaft (N·m), form factor, air (°C). */
export interface Held {
  readonly speed: number
  readonly torque: number
  readonly formFactor: number
  readonly air: number
}

export interface Settled {
  readonly windingC: number
  readonly frameC: number
  readonly amps: number
}

/** Current that holds the torque with the frame at a temperature, A. */
const ampsAt = (winding: Winding, rotor: Rotor, { torque, speed }: Held, frameC: number): number =>
  (torque + friction(rotor, speed)) / constantAt(winding, frameC)

/** Heat left over in winding and frame, W, by their temperatures: PHYSICS.md §1's balances. */
export function heatLeft(
  winding: Winding,
  rotor: Rotor,
  heat: Heat,
  held: Held,
): (windingC: number, frameC: number) => readonly [winding: number, frame: number] {
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  airAt(heat, fullFan(heat), held.speed, air)
  const frictionHeat = friction(rotor, held.speed) * held.speed
  return (windingC, frameC) => {
    const i = ampsAt(winding, rotor, held, frameC)
    const brushHeat = winding.brushDrop * Math.abs(i)
    const copper = held.formFactor ** 2 * resistanceAt(winding, windingC) * i * i
    const inward = heat.windingToFrame * (windingC - frameC)
    return [
      copper +
        heat.frictionShare * frictionHeat +
        heat.brushShare * brushHeat -
        inward -
        air.windingToAir * (windingC - held.air),
      (1 - heat.frictionShare) * frictionHeat +
        (1 - heat.brushShare) * brushHeat +
        inward -
        air.frameToAir * (frameC - held.air),
    ]
  }
}

/** Above this nothing settles any more: the winding has run away. °C */
const RUNAWAY_C = 400
/** Newton's rounds at most, until the temperatures move by no more than this, K. */
const ROUNDS = 60
const CLOSE = 1e-6
/** Temperature step of the differences, K. */
const STEP = 1e-4

/**
 * Temperatures at which heat in equals heat out, from a motor as cold as the air. Null where copper heat grows
 * faster than it is carried away, or nothing settles under 400 °C.
 */
export function settle(winding: Winding, rotor: Rotor, heat: Heat, held: Held): Settled | null {
  const left = heatLeft(winding, rotor, heat, held)
  // From the cold side: at held speed the balances are cooperative, so Newton climbs to the lowest root or runs off.
  let windingC = held.air
  let frameC = held.air
  for (let n = 0; n < ROUNDS; n++) {
    const [w, f] = left(windingC, frameC)
    const [ww, fw] = left(windingC + STEP, frameC)
    const [wf, ff] = left(windingC, frameC + STEP)
    const a = (ww - w) / STEP
    const b = (wf - w) / STEP
    const c = (fw - f) / STEP
    const d = (ff - f) / STEP
    const det = a * d - b * c
    // A stable balance has a falling winding term and a positive determinant.
    if (!(det > 0) || !(a < 0)) return null
    const dw = (-w * d + b * f) / det
    const df = (-a * f + c * w) / det
    windingC += dw
    frameC += df
    if (!(windingC < RUNAWAY_C) || !(frameC < RUNAWAY_C)) return null
    if (Math.abs(dw) + Math.abs(df) < CLOSE)
      return { windingC, frameC, amps: ampsAt(winding, rotor, held, frameC) }
  }
  return null
}
