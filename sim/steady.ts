// Steady questions, without time stepping: where a motor settles at a held speed and torque.
import type { Heat } from './parts/heat.ts'
import { type Air, airAt, fullFan } from './parts/heat.ts'
import { friction, type Rotor } from './parts/rotor.ts'
import { brushVolts, constantAt, resistanceAt, type Winding } from './parts/winding.ts'

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

/** Above this nothing settles any more: the winding has run away. °C */
const RUNAWAY_C = 400
/** Newton's steps until the balance is met to the last digits. */
const TRIES = 60
const CLOSE = 1e-9

const air: Air = { windingToAir: 0, frameToAir: 0 }

/**
 * Temperatures at which heat in equals heat out, from PHYSICS.md §1's winding and frame balances at rest:
 * current i = (T + friction)/k(frame). Null where copper heat grows faster than it is carried away.
 */
export function settle(winding: Winding, rotor: Rotor, heat: Heat, held: Held): Settled | null {
  const { speed, torque } = held
  airAt(heat, fullFan(heat), speed, air)
  const { windingToAir, frameToAir } = air
  const lost = friction(rotor, speed)
  const frictionHeat = lost * speed
  const amps = (frameC: number) => (torque + lost) / constantAt(winding, frameC)

  /** Heat left over in winding and frame, W. */
  const balance = (windingC: number, frameC: number): readonly [number, number] => {
    const i = amps(frameC)
    const brushes = Math.abs(brushVolts(winding, i) * i)
    const copper = held.formFactor ** 2 * resistanceAt(winding, windingC) * i * i
    const inward = heat.windingToFrame * (windingC - frameC)
    return [
      copper +
        heat.frictionShare * frictionHeat +
        heat.brushShare * brushes -
        inward -
        windingToAir * (windingC - held.air),
      (1 - heat.frictionShare) * frictionHeat +
        (1 - heat.brushShare) * brushes +
        inward -
        frameToAir * (frameC - held.air),
    ]
  }

  // From the cold side: at held speed the balances are cooperative, so Newton climbs to the lowest root or runs off.
  let windingC = held.air
  let frameC = held.air
  for (let n = 0; n < TRIES; n++) {
    const [w, f] = balance(windingC, frameC)
    const step = 1e-4
    const [ww, fw] = balance(windingC + step, frameC)
    const [wf, ff] = balance(windingC, frameC + step)
    const a = (ww - w) / step
    const b = (wf - w) / step
    const c = (fw - f) / step
    const d = (ff - f) / step
    const det = a * d - b * c
    // A stable balance has a falling winding term and a positive determinant.
    if (!(det > 0) || !(a < 0)) return null
    const dw = (-w * d + b * f) / det
    const df = (-a * f + c * w) / det
    windingC += dw
    frameC += df
    if (!(windingC < RUNAWAY_C) || !(frameC < RUNAWAY_C)) return null
    if (Math.abs(dw) + Math.abs(df) < CLOSE) return { windingC, frameC, amps: amps(frameC) }
  }
  return null
}
