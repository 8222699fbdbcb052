// What is known of a motor, worked out when asked for and kept: it is some 30 ms of work, and many fields ask.
import { type KnownMotor, know } from '../../sim/identify/known.ts'
import type { Motor, MotorNumber, MotorReadings } from '../../sim/identify/motor.ts'
import { MOTOR_PATHS } from '../../sim/fill.ts'
import { bandWords, MOTOR_NUMBERS, originWords } from '../../sim/say/motor.ts'
import { brief, NBSP } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import { toUnit } from '../../sim/quantity.ts'
import type { ReadingPath } from './readings.ts'

export type Knowledge = { readonly motor: Motor; readonly known: KnownMotor } | null

/** Most readings remembered. */
const MOST = 40
const kept = new Map<string, Knowledge>()

/** What readings tell of a motor; null where they make none. Equal readings are worked out once. */
export function knownOf(readings: MotorReadings): Knowledge {
  const key = JSON.stringify(readings)
  const found = kept.get(key)
  if (found !== undefined) return found
  const made = know(readings)
  if (kept.size >= MOST) kept.delete(kept.keys().next().value ?? '')
  kept.set(key, made)
  return made
}

/** True where it takes no work to say. */
export const isKnown = (readings: MotorReadings): boolean => kept.has(JSON.stringify(readings))

/** The same motor without one kind of reading, or without its flywheel's mass. */
export function without(
  { bench, ...rest }: MotorReadings,
  path: ReadingPath | 'bench.flywheelMass',
): MotorReadings {
  const key = path.slice('bench.'.length)
  return { ...rest, bench: { ...bench, [key]: key === 'flywheelMass' ? undefined : [] } }
}

const NAMES = new Map(Object.entries(MOTOR_PATHS).map(([name, path]) => [path, name as MotorNumber]))

/** The motor number that stands at a path; null for other inputs. */
export const motorNumberAt = (path: string): MotorNumber | null => NAMES.get(path) ?? null

/** Number in the unit it is shown in: "1.25". */
export function numberText(value: number, name: MotorNumber, units: Units): string {
  return brief(toUnit(value, unitFor(MOTOR_NUMBERS[name].dimension, units)))
}

/** "1.25 Ω, likely 0.837 to 1.79 Ω"; without the band where there is no doubt. */
export function valueWords({ known }: NonNullable<Knowledge>, name: MotorNumber, units: Units): string {
  const one = known[name]
  const unit = unitFor(MOTOR_NUMBERS[name].dimension, units)
  const value = `${numberText(one.value, name, units)}${unit === '' ? '' : NBSP + unit}`
  return one.low === one.high
    ? value
    : `${value}, likely ${bandWords(one, MOTOR_NUMBERS[name].dimension, units)}`
}

/** Under the field of a number that stays open: where it is from, and its band. */
export function openWords({ known }: NonNullable<Knowledge>, name: MotorNumber, units: Units): string {
  const one = known[name]
  const band = one.low === one.high ? '' : ` Likely ${bandWords(one, MOTOR_NUMBERS[name].dimension, units)}.`
  return `${originWords(one)}${band}`
}
