// A scenario's motor: given numbers stand, open ones come from plate and bench, and no NaN ever reaches the plant.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allGiven, MOTOR_PATHS } from '../../sim/fill.ts'
import { USUAL } from '../../sim/identify/assume.ts'
import { identify, type MotorNumber } from '../../sim/identify/motor.ts'
import { read } from '../../sim/read.ts'
import { givenAt, type Scenario, withChange } from '../../sim/scenario.ts'
import { DEMOS, demo, jobOf, scenario } from '../jobs.ts'
import { anyBench, anyPlate } from './identify/anyMotor.ts'
import { APPLE_MILL } from './identify/motors.ts'

const PATHS = Object.entries(MOTOR_PATHS) as [MotorNumber, string][]
const change = (whole: Scenario, changes: Readonly<Record<string, unknown>>) =>
  Object.entries(changes).reduce((before, [path, value]) => withChange(before, path, value), whole)
const motorOf = (whole: Scenario) => {
  const reading = read(whole)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.motor
}

describe.each(DEMOS)('%s', (name) => {
  it('has the identified numbers where its own stay open', () => {
    const { parts } = jobOf(demo(name))
    const motor = identify(motorOf(demo(name)), USUAL)!
    for (const [number, path] of PATHS) {
      expect(givenAt(parts, path), path).toBe(motor.numbers[number])
      expect(givenAt(parts, path), path).toBeGreaterThanOrEqual(0)
    }
  })

  it('given every number, stands by them whatever the plate says', () => {
    const given = scenario({}, name)
    expect(allGiven(motorOf(given))).toBe(true)
    const { parts } = jobOf(given)
    const other = jobOf(change(given, { plate: { volts: '48 V', amps: '99 A', power: '7 hp' } })).parts
    expect(other.winding).toEqual(parts.winding)
    expect(other.rotor).toEqual(parts.rotor)
    expect(other.heat).toEqual(parts.heat)
    expect(jobOf(change(given, { plate: {} })).parts.winding).toEqual(parts.winding)
  })
})

it('every number of the motor has its place among the inputs', () => {
  const whole = scenario()
  for (const [, path] of PATHS) expect(givenAt(whole, path), path).toBeDefined()
  expect(new Set(PATHS.map(([, path]) => path)).size).toBe(15)
})

const mill = change(demo('appleMill'), { plate: APPLE_MILL })

it('one given number wins, and what follows is worked out with it', () => {
  const open = jobOf(mill).parts.winding
  const { winding } = jobOf(change(mill, { 'winding.resistance': '1.1 Ω' })).parts
  expect(winding.resistance).toBe(1.1)
  // 118.5 V less 13 A through 1.1 Ω at 75 °C, over 4000 rpm, magnets at 50 °C.
  expect(winding.constant).toBeCloseTo((118.5 - 1.1 * (310 / 255) * 13) / ((400 * Math.PI) / 3) / 0.94, 12)
  expect(open.constant).toBeLessThan(winding.constant)
})

it('a bench reading moves the job', () => {
  const bench = { spin: [{ speed: '1000 rpm', volts: '25 V' }] }
  const { winding } = jobOf(change(mill, { bench })).parts
  expect(winding.constant).toBeCloseTo(25 / ((1000 * Math.PI) / 30), 12)
})

it('a scenario without a plate says what it takes', () => {
  const reading = read(change(demo('appleMill'), { plate: {} }))
  expect(reading).toMatchObject({
    ok: false,
    problems: [{ path: 'plate.power', wouldDo: 'Two of volts, amps and power make a motor.' }],
  })
})

it('what is given is kept apart from what is open', () => {
  expect(motorOf(demo('appleMill')).given).toEqual({ flywheel: 0 })
})

/** Places of numbers that are not finite. */
function unfinished(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => unfinished(inner, `${path}.${key}`))
}

it('any plate and bench, with numbers given or not, is a job of finite numbers or problems', () => {
  let [jobs, refused] = [0, 0]
  const open = fc.subarray(PATHS.map(([, path]) => path))
  fc.assert(
    fc.property(fc.constantFrom(...DEMOS), anyPlate, anyBench, open, (name, plate, bench, left) => {
      const whole = change(scenario({}, name), {
        plate: JSON.parse(JSON.stringify(plate)),
        bench: JSON.parse(JSON.stringify(bench)),
        ...Object.fromEntries(left.map((path) => [path, null])),
      })
      const reading = read(whole)
      if (!reading.ok) {
        refused++
        expect(reading.problems.length).toBeGreaterThan(0)
        for (const { path } of reading.problems) expect(path).toMatch(/^(plate|bench|winding)\./)
        return
      }
      jobs++
      expect(unfinished(reading.job)).toEqual([])
      for (const { wrong, wouldDo } of reading.notes)
        expect(`${wrong} ${wouldDo}`).not.toMatch(/NaN|Infinity|undefined/)
    }),
    { seed: 1618, numRuns: 300 },
  )
  expect(jobs).toBeGreaterThan(50)
  expect(refused).toBeGreaterThan(50)
})
