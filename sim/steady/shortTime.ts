// Short-time torque: the most a cut may ask for a while, from cold.
import type { Heat } from '../parts/heat.ts'
import { senseRate } from '../parts/cutoff.ts'
import type { Parts } from '../plant.ts'
import { advance, type Crossing } from '../solve/advance.ts'
import { rosenbrock } from '../solve/rosenbrock.ts'
import { leftOver } from './balance.ts'
import {
  ampsFor,
  cutFrom,
  excess,
  type HeldAt,
  heldAt,
  largest,
  type Most,
  type Reached,
  worst,
} from './most.ts'
import { lumpiness } from './operating.ts'

const TOLERANCE = { relative: 1e-7, absolute: Float64Array.of(1e-5, 1e-5, 1e-5) }
const TYPICAL = Float64Array.of(50, 50, 50)
const FIRST_STEP = 1
/** Nothing is asked about a motor hotter than this. °C */
const BURNT_C = 500
const burnt: Crossing = { state: 0, level: BURNT_C, direction: 1 }

/** Amps and temperatures after `seconds` of a held torque from `fromC`; a winding past 500 °C stays there. */
function after(held: HeldAt, torque: number, seconds: number, fromC: number): Reached {
  const { plant, motor, air } = held
  const { winding, rotor, heat, cutoff } = plant
  const stepper = rosenbrock(
    {
      size: 3,
      typical: TYPICAL,
      autonomous: true,
      rates: (_, y, out) => {
        const amps = ampsFor(held, torque, y[1])
        const running = { speed: motor, amps, formFactorSquared: lumpiness(plant, amps, motor) }
        const [w, f] = leftOver(winding, rotor, heat, air, heat.air, running, y[0], y[1])
        out[0] = w / heat.windingCapacity
        out[1] = f / heat.frameCapacity
        out[2] = senseRate(cutoff, y[0], y[1], y[2])
      },
    },
    TOLERANCE,
  )
  stepper.start(0, Float64Array.of(fromC, fromC, fromC), Math.min(FIRST_STEP, seconds))
  while (stepper.t < seconds) {
    const { kind } = advance(stepper, seconds, [burnt])
    // Where no step succeeds any more the magnets have lost their flux.
    if (kind === 'crossing' || kind === 'failed')
      return {
        amps: ampsFor(held, torque, stepper.y[1]),
        windingC: BURNT_C,
        frameC: stepper.y[1],
        switchC: stepper.y[2],
      }
  }
  const [windingC, frameC, switchC] = stepper.y
  return { amps: ampsFor(held, torque, frameC), windingC, frameC, switchC }
}

/**
 * Largest torque of a cut, N·m at the spindle, that can be held for `seconds` at spindle speed `speed` (rad/s) by a
 * motor that starts as cold as the air: winding at its class limit at most, cutoff short of opening, within amps,
 * volts and belt; with another cooling if one is named. From cold every temperature only rises, so the end decides.
 * Source: PHYSICS.md §6.
 */
export function shortTimeTorque(
  parts: Parts,
  speed: number,
  seconds: number,
  cooling?: Heat['cooling'],
): Most {
  const held = heldAt(parts, speed, cooling)
  const { air } = held.plant.heat
  const high = Math.max(1e-9, cutFrom(held, parts.controller.currentLimit, air))
  // Heat is worst at the end; volts may be short at the start, when the magnets are strongest.
  const cold = (each: number): Reached => ({
    amps: ampsFor(held, each, air),
    windingC: air,
    frameC: air,
    switchC: air,
  })
  const { x: torque, limit } = largest((each) => {
    const start = worst(excess(held, each, cold(each)))
    const end = worst(excess(held, each, after(held, each, seconds, air)))
    return end[1] >= start[1] ? end : start
  }, high)
  return { ...after(held, torque, seconds, air), torque, limit }
}
