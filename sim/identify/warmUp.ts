// A warm-up from cold at a held speed and torque: how hot the winding is after a while.
import type { Heat } from '../parts/heat.ts'
import type { Rotor } from '../parts/rotor.ts'
import type { Winding } from '../parts/winding.ts'
import { advance, type Crossing } from '../solve/advance.ts'
import { rosenbrock } from '../solve/rosenbrock.ts'
import { type Held, heatLeft } from '../steady.ts'

const TOLERANCE = { relative: 1e-6, absolute: Float64Array.of(1e-4, 1e-4) }
const FIRST_STEP = 1
/** Nothing is asked about a motor hotter than this. °C */
const BURNT_C = 500
const burnt: Crossing = { state: 0, level: BURNT_C, direction: 1 }

/** Average winding temperature after `seconds` from the air's temperature, °C; 500 °C where it would pass that. */
export function warmUp(winding: Winding, rotor: Rotor, heat: Heat, held: Held, seconds: number): number {
  const watts = heatLeft(winding, rotor, heat, held)
  const stepper = rosenbrock(
    {
      size: 2,
      typical: Float64Array.of(50, 50),
      autonomous: true,
      rates: (_, y, out) => {
        const [w, f] = watts(y[0], y[1])
        out[0] = w / heat.windingCapacity
        out[1] = f / heat.frameCapacity
      },
    },
    TOLERANCE,
  )
  stepper.start(0, Float64Array.of(held.air, held.air), FIRST_STEP)
  while (stepper.t < seconds) {
    const { kind } = advance(stepper, seconds, [burnt])
    // Where no step succeeds any more the magnets have lost their flux.
    if (kind === 'crossing' || kind === 'failed') return BURNT_C
  }
  return stepper.y[0]
}
