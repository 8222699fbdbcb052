// The motor's numbers of a scenario: as given where they are, identified from plate and bench where they stay open.
import { USUAL } from './identify/assume.ts'
import { complaints } from './identify/complaints.ts'
import { sound } from './identify/known.ts'
import { identify, type MotorNumber, type MotorNumbers, type MotorReadings } from './identify/motor.ts'
import type { Heat } from './parts/heat.ts'
import type { Rotor } from './parts/rotor.ts'
import type { Winding } from './parts/winding.ts'
import type { Problem } from './problem.ts'
import { givenAt, type ReadScenario } from './scenario.ts'

/** Where each number stands in a scenario. */
export const MOTOR_PATHS: Readonly<Record<MotorNumber, string>> = {
  resistance: 'winding.resistance',
  constant: 'winding.constant',
  brushDrop: 'winding.brushDrop',
  dryFriction: 'rotor.dryFriction',
  windage: 'rotor.windage',
  inertia: 'rotor.inertia',
  flywheel: 'rotor.flywheel',
  windingCapacity: 'heat.windingCapacity',
  frameCapacity: 'heat.frameCapacity',
  windingToFrame: 'heat.windingToFrame',
  windingToAir: 'heat.windingToAir',
  windingToFanAir: 'heat.windingToFanAir',
  frameToAir: 'heat.frameToAir',
  frameToFanAir: 'heat.frameToFanAir',
  fanSpeed: 'heat.fanSpeed',
}

/** Everything a scenario says of its motor. */
export function readingsOf(read: ReadScenario): MotorReadings {
  const { plate, bench, winding, heat } = read
  const given: { -readonly [N in MotorNumber]?: number } = {}
  for (const [name, path] of Object.entries(MOTOR_PATHS) as [MotorNumber, string][]) {
    const value = givenAt(read, path)
    if (typeof value === 'number') given[name] = value
  }
  return { plate, bench, magnets: winding.magnets, insulation: winding.insulation, heat, given }
}

export interface FilledMotor {
  readonly winding: Winding
  readonly rotor: Rotor
  readonly heat: Heat
}

/** True where a scenario gives every number itself, and plate and bench are only kept. */
export const allGiven = ({ given }: MotorReadings): boolean =>
  Object.keys(given).length === Object.keys(MOTOR_PATHS).length

/** Winding, rotor and heat with every number, or why there is no such motor. */
export function fill(read: ReadScenario, readings: MotorReadings): FilledMotor | readonly Problem[] {
  let numbers: MotorNumbers
  if (allGiven(readings)) numbers = readings.given as MotorNumbers
  else {
    const motor = identify(readings, USUAL)
    if (!sound(motor)) return complaints(readings)
    numbers = motor.numbers
  }
  return filledWith(read, numbers)
}

/** The motor of a scenario with these numbers. */
export function filledWith(read: ReadScenario, numbers: MotorNumbers): FilledMotor {
  const { resistance, constant, brushDrop, dryFriction, windage, inertia, flywheel, ...heat } = numbers
  return {
    winding: { ...read.winding, resistance, constant, brushDrop },
    rotor: { ...read.rotor, inertia, flywheel, dryFriction, windage },
    heat: { ...read.heat, ...heat },
  }
}
