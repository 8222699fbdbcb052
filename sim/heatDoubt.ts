// How well the heat put into a logged motor is known: clamp, ohms and friction, by where the job has them from.
import { FORM_FACTORS } from './handbook/formFactor.ts'
import { type HeatDoubt, USUAL_DOUBT } from './identify/heatUnknowns.ts'
import { know } from './identify/known.ts'
import type { MotorReadings } from './identify/motor.ts'
import type { Supply } from './parts/supply.ts'
import { readQuantity } from './reading.ts'
import { inputAt } from './scenario.ts'

const half = (low: number, high: number): number => Math.log(high / low) / 2

/** Half of the band written beside an input, as a logarithm; null where none is. */
function written(scenario: unknown, path: string): number | null {
  const input = inputAt(scenario, path)
  if (input?.field.kind !== 'quantity' || input.low === null || input.high === null) return null
  const low = readQuantity(input.field, input.low)
  const high = readQuantity(input.field, input.high)
  return low.ok && high.ok && low.value > 0 ? half(low.value, high.value) : null
}

/** The doubt: bands written in the scenario first, then those that plate and bench leave, else the usual. */
export function heatDoubtOf(scenario: unknown, motor: MotorReadings, supply: Supply): HeatDoubt {
  const known = know(motor)?.known
  const doubt = (path: string, name: 'resistance' | 'dryFriction', usual: number): number => {
    const own = written(scenario, path)
    if (own !== null) return own
    const found = known?.[name]
    return found && found.from !== 'given' && found.low > 0 ? half(found.low, found.high) : usual
  }
  const lumpy = FORM_FACTORS[supply.kind]
  return {
    // Heat follows the form factor as it follows the amps.
    amps: Math.hypot(USUAL_DOUBT.amps, supply.formFactor === undefined ? half(lumpy.low, lumpy.high) : 0),
    resistance: doubt('winding.resistance', 'resistance', USUAL_DOUBT.resistance),
    friction: doubt('rotor.dryFriction', 'dryFriction', USUAL_DOUBT.friction),
  }
}
