// Old motors for tests, read from texts as a person gives them.
import type { GivenRival } from '../../../sim/rival/fields.ts'
import { readRival } from '../../../sim/rival/read.ts'
import type { Direct, Induction } from '../../../sim/rival/rival.ts'

/** The old motor, induction unless it says DC. Throws where it is refused. */
export function oldMotor(given: GivenRival) {
  const reading = readRival(given)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.rival
}

export const induction = (given: GivenRival): Induction => oldMotor(given) as Induction
export const direct = (given: GivenRival): Direct => oldMotor({ ...given, kind: 'DC' }) as Direct

/** Wrong, path by path. */
export const refused = (given: unknown): Readonly<Record<string, string>> => {
  const reading = readRival(given as GivenRival)
  if (reading.ok) throw new Error('it was taken')
  return Object.fromEntries(reading.problems.map(({ path, wrong }) => [path, wrong]))
}
