// The torque a motor stands through a duty: against the steady answers at its ends, and against whole runs of the plant.
import { describe, expect, it } from 'vitest'
import { classLimitC } from '../../../sim/handbook/insulation.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { cuts, dutyTorque } from '../../../sim/rival/duty.ts'
import { finish, run } from '../../../sim/run.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { shortTimeTorque } from '../../../sim/steady/shortTime.ts'
import { type Changes, job } from '../../jobs.ts'
import { near } from '../physics/lab.ts'

const SPEED = fromUnit(350, 'rpm')
const duty = (work: string, rest: string, repeatFor: string, torque = '1 N·m') => ({
  phases: [
    { name: 'work', lasts: work, speed: '350 rpm', torque },
    { name: 'rest', lasts: rest },
  ],
  repeatFor,
})
const most = (changes: Parameters<typeof job>[0]) => {
  const { parts, duty } = job(changes)
  return dutyTorque(parts, duty, SPEED)!
}

it('without rest and for ever it is the all-day torque', () => {
  const { parts } = job({})
  near(most({ duty: duty('10 min', '0 s', '20 h') }), allDayTorque(parts, SPEED).torque, 2e-3)
})

it('one spell from cold is the short-time torque', () => {
  const { parts } = job({})
  near(most({ duty: duty('6 min', '0 s', '6 min') }), shortTimeTorque(parts, SPEED, 360).torque, 5e-4)
})

it('rest is worth torque, more rest more, up to what amps allow', () => {
  const torques = ['0 s', '2 min', '8 min', '60 min'].map((rest) =>
    most({ duty: duty('5 min', rest, '12 h') }),
  )
  torques.slice(1).forEach((torque, n) => {
    expect(torque).toBeGreaterThan(1.05 * torques[n])
  })
  const { parts } = job({})
  expect(torques[3]).toBeLessThanOrEqual(1.0001 * shortTimeTorque(parts, SPEED, 300).torque)
})

it('a job that ends with or in its first work never comes to its rest; seconds of it are what amps allow', () => {
  const { parts } = job({})
  near(most({ duty: duty('5 min', '3 min', '5 min') }), shortTimeTorque(parts, SPEED, 300).torque, 5e-4)
  near(most({ duty: duty('5 min', '3 min', '4 min') }), shortTimeTorque(parts, SPEED, 240).torque, 5e-4)
  near(most({ duty: duty('1 s', '1 h', '1 s') }), shortTimeTorque(parts, SPEED, 1).torque, 1e-3)
  expect(shortTimeTorque(parts, SPEED, 1).limit).toBe('current')
})

it('a step cuts by torque, power or a fan’s torque, or by its surges alone; at no speed it cuts nothing', () => {
  const cutsOf = (step: Changes) =>
    cuts(job({ 'duty.phases': [{ name: 'x', lasts: '1 min', speed: '350 rpm', ...step }] }).duty.phases[0])
  expect(
    [{ torque: '1 N·m' }, { power: '10 W' }, { fanTorque: '1 N·m' }].map((step) => [
      cutsOf(step),
      cutsOf({
        ...step,
        ...Object.fromEntries(Object.keys(step).map((key) => [key, key === 'power' ? '0 W' : '0 N·m'])),
      }),
    ]),
  ).toEqual([
    [true, false],
    [true, false],
    [true, false],
  ])
  expect(cutsOf({ surge: { torque: '2 N·m', every: '10 s', lasts: '1 s' } })).toBe(true)
  expect(cutsOf({ torque: '1 N·m', speed: '0 rpm' })).toBe(false)
})

describe('whole runs of the plant with 3 % less and 3 % more, on either side of the limit', () => {
  it.each([
    ['winding', { 'cutoff.fitted': 'none' }],
    ['switch', { 'cutoff.opensAt': '85 °C', 'cutoff.reclosesAt': '60 °C' }],
  ])('%s', (limit, changes) => {
    const torque = most({ ...changes, duty: duty('5 min', '3 min', '6 h') })
    const peaks = (share: number) => {
      // Speed feedback holds the speed that the question holds.
      const one = job({
        'controller.holds': 'speed feedback',
        ...changes,
        duty: duty('5 min', '3 min', '6 h', `${share * torque} N·m`),
      })
      const { trace } = finish(run(one))
      return {
        winding:
          trace.columns.windingC.reduce((a, b) => Math.max(a, b)) - classLimitC(one.parts.winding.insulation),
        opens: trace.marks.some(({ kind }) => kind === 'opens'),
      }
    }
    const [less, more] = [peaks(0.97), peaks(1.03)]
    if (limit === 'winding') expect([less.winding < 0, more.winding > 0]).toEqual([true, true])
    else expect([less.opens, more.opens]).toEqual([false, true])
  })
})

it('nothing where nothing is cut; none where the motor cannot turn so fast', () => {
  const { parts, duty } = job({
    duty: { phases: [{ name: 'idle', lasts: '1 h', speed: '350 rpm' }], repeatFor: '1 h' },
  })
  expect(dutyTorque(parts, duty, SPEED)).toBeNull()
  const cutting = job({})
  expect(dutyTorque(cutting.parts, cutting.duty, fromUnit(5000, 'rpm'))).toBe(0)
})
