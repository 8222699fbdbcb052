// All-day torque: the most a cut may ask at one speed for good, as heat, volts, amps and belt allow.
import type { Heat } from '../parts/heat.ts'
import { friction } from '../parts/rotor.ts'
import { resistanceAt } from '../parts/winding.ts'
import type { Parts } from '../plant.ts'
import { root } from '../solve/root.ts'
import { cutFrom, excess, type HeldAt, heldAt, largest, type Most, type Reached, worst } from './most.ts'
import { feltC, lumpiness } from './operating.ts'

/** Where a held current settles: both balances are straight lines in the temperatures. Null: it runs away. */
function settledAt({ plant, motor, air }: HeldAt, amps: number): Reached | null {
  const { winding, rotor, heat, cutoff } = plant
  const square = lumpiness(plant, amps, motor) * amps * amps
  const atZero = resistanceAt(winding, 0)
  const perKelvin = resistanceAt(winding, 1) - atZero
  const frictionHeat = friction(rotor, motor) * motor
  const brushHeat = winding.brushDrop * amps
  const toFrame = heat.windingToFrame
  const away = toFrame + air.frameToAir
  const frameHeat =
    (1 - heat.frictionShare) * frictionHeat + (1 - heat.brushShare) * brushHeat + air.frameToAir * heat.air
  const windingHeat =
    square * atZero +
    heat.frictionShare * frictionHeat +
    heat.brushShare * brushHeat +
    air.windingToAir * heat.air
  const carried = air.windingToAir + toFrame - square * perKelvin - (toFrame * toFrame) / away
  if (!(carried > 0)) return null
  const windingC = (windingHeat + (toFrame * frameHeat) / away) / carried
  const frameC = (frameHeat + toFrame * windingC) / away
  return { amps, windingC, frameC, switchC: feltC(cutoff, windingC, frameC) }
}

/** A winding that has run away is over by this much, K, whatever else. */
const RUNAWAY = 1e6
/** Share of the current over which its torque's slope is taken. */
const STEP = 1e-5

/**
 * Largest torque of a cut, N·m at the spindle, that can be held for good at spindle speed `speed` (rad/s): the steady
 * winding at its class limit at most, the cutoff short of opening, within amps, volts and belt; with another cooling
 * if one is named. Source: PHYSICS.md §6; the frame's warmth weakens the magnets.
 */
export function allDayTorque(parts: Parts, speed: number, cooling?: Heat['cooling']): Most {
  const held = heldAt(parts, speed, cooling)
  const torque = (amps: number): number => {
    const reached = settledAt(held, amps)
    return reached ? cutFrom(held, amps, reached.frameC) : Number.NEGATIVE_INFINITY
  }
  const found = largest((amps) => {
    const reached = settledAt(held, amps)
    if (!reached) return ['winding', RUNAWAY]
    return worst(excess(held, cutFrom(held, amps, reached.frameC), reached))
  }, parts.controller.currentLimit)
  let amps = found.x
  let limit = found.limit
  // Past the top of its torque a hotter motor needs more amps than it gains by: held torque runs away there.
  const slope = (i: number) => torque(i) - torque(i * (1 - STEP))
  if (amps > 0 && slope(amps) < 0) {
    const low = amps * 1e-3
    amps = root(slope, low, amps, slope(low), slope(amps), 1e-9 * amps)
    limit = 'runaway'
  }
  const reached = settledAt(held, amps)!
  const most = cutFrom(held, amps, reached.frameC)
  return { ...reached, torque: Math.max(0, most), limit }
}
