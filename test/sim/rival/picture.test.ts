// The curves beside the old motor: which are drawn, how far they reach, and the comparison that goes with them.
import { describe, expect, it } from 'vitest'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { compare } from '../../../sim/rival/compare.ts'
import { againstOld } from '../../../sim/rival/picture.ts'
import { finish } from '../../../sim/run.ts'
import { topSpeed } from '../../../sim/steady/operating.ts'
import { type Changes, job } from '../../jobs.ts'
import { direct, induction } from './old.ts'

const AC = { power: '3/4 hp', speed: '1725 rpm' }
const steps = [{ spindle: '350 rpm' }, { spindle: '900 rpm' }]
const drawn = (changes: Changes = {}, rival: Parameters<typeof againstOld>[1] = null) =>
  finish(againstOld(job(changes), rival))

it('alone: this motor with every cooling but a blower, for seconds, and nothing to compare it with', () => {
  const { comparison, allDay, old, seconds, fastest } = drawn()
  expect([comparison, old]).toEqual([null, []])
  expect(allDay.map(({ cooling }) => cooling)).toEqual(['shaft fan', 'none'])
  expect(seconds.speed.at(-1)).toBeCloseTo(Math.min(fastest, topSpeed(job().parts)), 9)
})

it('a blower is drawn where it is what the motor has', () => {
  const { allDay } = drawn({ 'heat.cooling': 'blower' })
  expect(allDay.map(({ cooling }) => cooling)).toEqual(['shaft fan', 'none', 'blower'])
})

it('beside an induction motor: a curve for each of its steps, and the comparison', () => {
  const rival = induction({ ...AC, steps })
  const { comparison, old } = drawn({}, rival)
  expect(comparison).toEqual(compare(job(), rival))
  expect(old).toHaveLength(2)
  // Each ends where the field of its step turns.
  expect(old.map(({ speed }) => Math.round(toUnit(speed.at(-1)!, 'rpm')))).toEqual([365, 939])
})

it('beside a DC motor: its torques are compared, and no curve is drawn of it', () => {
  const { comparison, old } = drawn({}, direct({ ...AC, volts: '90 V', steps }))
  expect(comparison!.met).toHaveLength(2)
  expect(old).toEqual([])
})

describe('the speeds', () => {
  const rpm = (changes: Changes, rival: Parameters<typeof againstOld>[1] = null) =>
    drawn(changes, rival).fastest / fromUnit(1, 'rpm')
  const top = toUnit(topSpeed(job().parts), 'rpm')
  it('reach this motor’s top, a tenth past the old one’s fastest, and three times what is known at the most', () => {
    expect(rpm({})).toBeCloseTo(Math.min(top, 3 * 350), 6)
    expect(rpm({}, induction({ ...AC, steps }))).toBeCloseTo(Math.max(top, 990), 6)
    expect(rpm({}, induction(AC))).toBeCloseTo(1.1 * 1725, 6)
  })
})
