// Surges bunched for many quick runs: fewer and longer, as much of the step as before; left alone where that would tell.
import { expect, it } from 'vitest'
import { meanTorque } from '../../../../sim/duty.ts'
import { bunched } from '../../../../sim/studies/sure/bunched.ts'
import { type Changes, job } from '../../../jobs.ts'

const SURGE = 'duty.phases.2.surge'
const surges = (changes: Changes = {}) => {
  const whole = job(changes)
  return [whole.duty.phases[2], bunched(whole).duty.phases[2]]
}

it('the mill’s surges, 3 s in 12, come seldom and longer; torque and mean stay', () => {
  const [was, is] = surges()
  expect(is.surge!.every).toBeGreaterThan(3 * was.surge!.every)
  expect(is.surge!.torque).toBe(was.surge!.torque)
  expect(is.surge!.lasts / is.surge!.every).toBeCloseTo(0.25, 12)
  expect(meanTorque(is)).toBeCloseTo(meanTorque(was), 12)
})

it.each<[string, Changes]>([
  ['as seldom as they would be bunched', { [`${SURGE}.every`]: '4 min', [`${SURGE}.lasts`]: '5 s' }],
  ['that the drive does not hold', { [`${SURGE}.torque`]: '30 N·m' }],
])('surges %s stay as they are', (_, changes) => {
  const [was, is] = surges(changes)
  expect(is).toEqual(was)
})

it('a last surge cut short by its step counts for what it lasts', () => {
  // 305 s in 12 s: 25 whole ones and one of 5 s, of which 3 s surge.
  const [was, is] = surges({ 'duty.phases.2.lasts': '302 s', 'duty.repeatFor': '1 h' })
  expect(was.seconds).toBe(302)
  const inSurge = (302 / is.surge!.every) * is.surge!.lasts
  expect(inSurge).toBeCloseTo(25 * 3 + 2, 9)
})
