// The heat balance of winding and frame at one way of running, and the temperatures at which it is struck.
import type { Air, Heat } from '../parts/heat.ts'
import { friction, type Rotor } from '../parts/rotor.ts'
import { resistanceAt, type Winding } from '../parts/winding.ts'

/** How the motor runs: speed rad/s at the motor, mean amps, and copper heat over that of steady amps. */
export interface Running {
  readonly speed: number
  readonly amps: number
  readonly formFactorSquared: number
}

/** Heat left over in winding and frame, W. */
export type Left = readonly [winding: number, frame: number]

/** What stays over of the heat at two temperatures, °C, in air of `airC`, W, written into `out`: PHYSICS.md §1's balances. */
export function leftOver(
  winding: Winding,
  rotor: Rotor,
  heat: Heat,
  air: Air,
  airC: number,
  { speed, amps, formFactorSquared }: Running,
  windingC: number,
  frameC: number,
  out: [winding: number, frame: number] = [0, 0],
): Left {
  const frictionHeat = friction(rotor, speed) * speed
  const brushHeat = winding.brushDrop * Math.abs(amps)
  const copper = formFactorSquared * resistanceAt(winding, windingC) * amps * amps
  const inward = heat.windingToFrame * (windingC - frameC)
  out[0] =
    copper +
    heat.frictionShare * frictionHeat +
    heat.brushShare * brushHeat -
    inward -
    air.windingToAir * (windingC - airC)
  out[1] =
    (1 - heat.frictionShare) * frictionHeat +
    (1 - heat.brushShare) * brushHeat +
    inward -
    air.frameToAir * (frameC - airC)
  return out
}

/** Above this nothing settles any more: the winding has run away. °C */
const RUNAWAY_C = 400
/** Newton's rounds at most, until the temperatures move by no more than this, K. */
const ROUNDS = 60
const CLOSE = 1e-6
/** After so many rounds it is going to and fro about a bend, and takes half of each step. */
const PATIENT = 20
/** Temperature step of the differences, K. */
const STEP = 1e-4

/**
 * Temperatures, °C, at which nothing stays over, climbing from `fromC`. Null where heat grows faster than it is
 * carried away, or nothing settles under 400 °C.
 */
export function balance(
  left: (windingC: number, frameC: number) => Left,
  fromC: number,
): { windingC: number; frameC: number } | null {
  // From the cold side: at held speed the balances are cooperative, so Newton climbs to the lowest root or runs off.
  let windingC = fromC
  let frameC = fromC
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
    const part = n < PATIENT ? 1 : 0.5
    const dw = (part * (-w * d + b * f)) / det
    const df = (part * (-a * f + c * w)) / det
    windingC += dw
    frameC += df
    if (!(windingC < RUNAWAY_C) || !(frameC < RUNAWAY_C)) return null
    if (Math.abs(dw) + Math.abs(df) < CLOSE) return { windingC, frameC }
  }
  return null
}
