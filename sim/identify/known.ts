// What is known of a motor: each number with its 8-in-10 band, where it came from, and how.
import { USUAL } from './assume.ts'
import { type Basis, doubtsOf } from './doubts.ts'
import { identify, type Motor, type MotorNumber, type MotorReadings } from './motor.ts'
import { type Origin, origins } from './origins.ts'
import { SANE } from './thermal.ts'

export interface Known extends Origin {
  /** SI. */
  readonly value: number
  /** The value lies between these 8 times in 10. */
  readonly low: number
  readonly high: number
}

export type KnownMotor = Readonly<Record<MotorNumber, Known>>

/** True where every number is finite and none is below nothing; resistance and constant are more than nothing. */
export const sound = (motor: Motor | null): motor is Motor =>
  motor !== null &&
  Object.values(motor.numbers).every((value) => Number.isFinite(value) && value >= 0) &&
  motor.numbers.resistance > 0 &&
  motor.numbers.constant > 0

/**
 * The motor with the band of each number: every doubt is taken to both ends of its own band by itself, and what it
 * does to a number is added up in squares, up and down apart. Null where the readings make no motor.
 */
export function know(readings: MotorReadings): { motor: Motor; known: KnownMotor } | null {
  const basis: Basis = { readings, assume: USUAL }
  const motor = identify(readings, USUAL)
  if (!sound(motor)) return null
  const moved = doubtsOf(readings).map((doubt) =>
    [-1, 1].map((where) => {
      const { readings, assume } = doubt.at(basis, where)
      return identify(readings, assume)?.numbers
    }),
  )
  const origin = origins(readings, motor)
  const known = Object.fromEntries(
    (Object.keys(motor.numbers) as MotorNumber[]).map((name): [MotorNumber, Known] => {
      const value = motor.numbers[name]
      const band = value > 0 ? bandAbout : bandFromNothing
      const ends = moved.map((pair) => pair.map((numbers) => numbers?.[name] ?? Number.NaN))
      const { low, high } = band(value, ends)
      const { down, up } = SCALED.has(name) && readings.given[name] === undefined ? clampDoubt(motor) : NONE
      return [
        name,
        { value, low: Math.min(low, value * down), high: Math.max(high, value * up), ...origin[name] },
      ]
    }),
  ) as KnownMotor
  return { motor, known }
}

/** Numbers that follow the thermal scale. */
export const SCALED: ReadonlySet<MotorNumber> = new Set<MotorNumber>([
  'windingToFrame',
  'windingToAir',
  'windingToFanAir',
  'frameToAir',
  'frameToFanAir',
])
const NONE = { down: 1, up: 1 }

/** A scale that was held to what is sane may as well be what the rating asks, or anything sane: factors on it. */
export function clampDoubt({ thermal: { asked, used, usual } }: Motor): { down: number; up: number } {
  if (Math.abs(asked / used - 1) < 1e-6) return NONE
  const reach = [asked, usual * SANE.low, usual * SANE.high].map((scale) => scale / used)
  return { down: Math.min(...reach), up: Math.max(...reach) }
}

/** Furthest one doubt may push a number: a factor of ten. Further, the readings say nothing about it. */
const FARTHEST = Math.log(10)

interface Band {
  readonly low: number
  readonly high: number
}

/** The band about a value above nothing, from where each doubt moves it to: a factor, so that it stays above nothing. */
function bandAbout(value: number, ends: readonly (readonly number[])[]): Band {
  let [up, down] = [0, 0]
  for (const pair of ends) {
    const shifts = pair.map((end) =>
      end > 0 ? Math.min(Math.max(Math.log(end / value), -FARTHEST), FARTHEST) : -FARTHEST,
    )
    up += Math.max(0, ...shifts) ** 2
    down += Math.min(0, ...shifts) ** 2
  }
  return { low: value * Math.exp(-Math.sqrt(down)), high: value * Math.exp(Math.sqrt(up)) }
}

/** The band of a number that came out as nothing. */
function bandFromNothing(_: number, ends: readonly (readonly number[])[]): Band {
  const squares = ends.map((pair) => Math.max(0, ...pair.filter(Number.isFinite)) ** 2)
  return { low: 0, high: Math.sqrt(squares.reduce((sum, square) => sum + square, 0)) }
}
