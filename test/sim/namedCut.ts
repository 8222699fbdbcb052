// The first example job with a step that names its cut, for tests of reading it.
import { read } from '../../sim/read.ts'
import type { Variant } from '../../sim/scenario.ts'
import { type Changes, scenario } from '../jobs.ts'

export const AT = 'duty.phases.1'
export const TURNING = {
  kind: 'turning',
  material: 'plain carbon HB 160-180',
  depth: '1 mm',
  feed: '0.1 mm',
  diameter: '50 mm',
}
/** The first example job with a cut in its second step, which rests otherwise. */
export const whole = (cut: unknown, changes: Changes = {}) =>
  scenario({ [AT]: { name: 'turning', lasts: '5 min', cut }, ...changes })
export const readWith = (cut: unknown, changes: Changes = {}, variant?: Variant) => {
  const reading = read(whole(cut, changes), variant)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading
}
export const problemsWith = (cut: unknown, changes: Changes = {}, variant?: Variant) => {
  const reading = read(whole(cut, changes), variant)
  return reading.ok ? [] : reading.problems.map(({ path, wrong }) => `${path}: ${wrong}`)
}
export const SPEED = { [`${AT}.speed`]: '191 rpm' }
