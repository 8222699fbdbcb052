// What the reader of the old motor refuses, and where it says so.
import { expect, it } from 'vitest'
import type { GivenRival } from '../../../sim/rival/fields.ts'
import { readRival } from '../../../sim/rival/read.ts'
import { induction, oldMotor, refused } from './old.ts'

const AC = { power: '1 hp', speed: '1725 rpm' }

it('power and speed must be given, and names must be known', () => {
  expect(refused({})).toEqual({
    power: 'Power on its plate is missing.',
    speed: 'Speed on its plate is missing.',
  })
  expect(refused({ ...AC, servicefactor: '1.2' })).toEqual({ servicefactor: 'No input has this name.' })
  expect(refused({ ...AC, power: '1 horse' })).toHaveProperty('power')
  expect(refused({ ...AC, kind: 'steam' })).toHaveProperty('kind')
})

it('what would do: the name that is near, or all of them; the range of what is missing', () => {
  const wouldDo = (given: object) => {
    const reading = readRival(given as GivenRival)
    return reading.ok ? [] : reading.problems.map((problem) => problem.wouldDo)
  }
  expect(wouldDo({ ...AC, sped: '1725 rpm' })).toEqual(['Did you mean "speed"?'])
  expect(wouldDo({ ...AC, xxxxxxxx: '1' })[0]).toMatch(/^Known here: volts, .*, kind, mains, .*\.$/)
  expect(wouldDo({ ...AC, power: undefined })).toEqual(['Between 20 W and 15 kW.'])
  expect(wouldDo({ ...AC, steps: [5] })).toEqual(['A list of steps, each with two pulleys.'])
})

it('a speed that no loaded AC motor has', () => {
  expect(refused({ ...AC, speed: '1800 rpm' }).speed).toMatch(/^No motor of the mains/)
  expect(refused({ ...AC, mains: '50 Hz' }).speed).toMatch(/^No motor of the mains/)
  expect(oldMotor({ ...AC, kind: 'DC', speed: '1800 rpm' }).kind).toBe('DC')
})

it('a step needs two pulleys, or a speed alone', () => {
  const steps = [{ motorPulley: '3 in', machinePulley: '9 in' }, { motorPulley: '3 in' }, {}]
  expect(Object.keys(refused({ ...AC, steps }))).toEqual(['steps.1', 'steps.2'])
  expect(refused({ ...AC, steps: [{ motorPulley: '3 in', spindle: '50 rpm' }] })).toEqual({
    'steps.0': 'Pulleys and a speed are given.',
  })
  expect(refused({ ...AC, steps: [{ motorPulley: '3 in', machinePulley: '9 cats' }] })).toHaveProperty([
    'steps.0.machinePulley',
  ])
  expect(refused({ ...AC, steps: 'none' })).toHaveProperty('steps')
  expect(refused({ ...AC, steps: Array(13).fill(steps[0]) }).steps).toBe('More than 12 steps.')
})

it('a DC plate that cannot be is refused where it is wrong', () => {
  const problems = refused({ kind: 'DC', power: '2 hp', speed: '4000 rpm', volts: '12 V', amps: '2 A' })
  expect(Object.keys(problems).length).toBeGreaterThan(0)
  expect(Object.keys(problems).every((path) => !path.startsWith('plate.'))).toBe(true)
})

it('pulleys or a speed come to the same step', () => {
  const [a] = induction({ ...AC, steps: [{ motorPulley: '3 in', machinePulley: '9 in' }] }).steps
  const [b] = induction({ ...AC, steps: [{ spindle: '575 rpm' }] }).steps
  expect(a.ratio).toBeCloseTo(b.ratio, 12)
  expect([a.efficiency, b.efficiency]).toEqual([0.95, 0.95])
})
