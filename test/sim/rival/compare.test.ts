// Both motors at the spindle: through the old pulleys, less the machine's drag, on each step; and curves for the chart.
import { describe, expect, it } from 'vitest'
import { fromUnit } from '../../../sim/quantity.ts'
import { against, compare } from '../../../sim/rival/compare.ts'
import { allDayCurve, rivalCurve, secondsCurve } from '../../../sim/rival/strength.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { job } from '../../jobs.ts'
import { near } from '../physics/lab.ts'
import { direct, induction, oldMotor } from './old.ts'

const plain = { 'machine.drag': '0 N·m', 'machine.windage': '0 N·m·s/rad' }
const rpm = (speed: number) => fromUnit(speed, 'rpm')

describe('an induction motor through its pulleys', () => {
  const old = oldMotor({
    power: '3/4 hp',
    speed: '1725 rpm',
    beltEfficiency: '90 %',
    steps: [
      { motorPulley: '3 in', machinePulley: '9 in' },
      { motorPulley: '4 in', machinePulley: '8 in' },
      { spindle: '350 rpm' },
    ],
  })
  const { met } = compare(job(plain), old)
  it('speed falls and torque grows by the ratio, on each step; the belt takes its part', () => {
    expect(met).toHaveLength(3)
    ;[3, 2, 1725 / 350].forEach((ratio, n) => {
      near(met[n].speed, rpm(1725) / ratio, 1e-12)
      // By hand: 5252 hp/rpm = 2.2835 lbf·ft at the shaft.
      near(
        met[n].old.allDay,
        fromUnit((550 * 60 * 0.75) / (2 * Math.PI * 1725), 'lbf·ft') * ratio * 0.9,
        1e-12,
      )
    })
  })
  it('service factor for minutes, breakdown for seconds, locked rotor standing', () => {
    const { old: there } = met[0]
    near(there.minutes / there.allDay, 1.25, 1e-12)
    near(there.seconds, fromUnit(58 / 16, 'lbf·ft') * 3 * 0.9, 1e-12)
    near(there.start, fromUnit(119 / 16, 'lbf·ft') * 3 * 0.9, 1e-12)
  })
  it('the machine’s drag is taken off both', () => {
    const { met: dragged } = compare(job({ ...plain, 'machine.drag': '0.7 N·m' }), old)
    near(met[0].old.allDay - dragged[0].old.allDay, 0.7, 1e-9)
    near(met[0].motor.seconds - dragged[0].motor.seconds, 0.7, 1e-3)
  })
  it('straight on the spindle where no pulleys are given, with nothing lost', () => {
    const [one] = compare(job(plain), oldMotor({ power: '3/4 hp', speed: '1725 rpm' })).met
    near(one.speed, rpm(1725), 1e-12)
    near(one.old.allDay, fromUnit(0.75, 'hp') / rpm(1725), 1e-12)
  })
})

describe('this motor', () => {
  it('all day with each cooling it may be given, and as it stands', () => {
    const open = job({})
    const [one] = compare(
      open,
      oldMotor({ power: '3/4 hp', speed: '1725 rpm', steps: [{ spindle: '350 rpm' }] }),
    ).met
    expect(one.allDay.map(({ cooling }) => cooling)).toEqual(['shaft fan', 'blower', 'none'])
    for (const { cooling, torque } of one.allDay) {
      const bare = { ...open.parts, heat: { ...open.parts.heat, cooling } }
      near(torque, allDayTorque(bare, rpm(350)).torque, 1e-9)
    }
    const stands = one.allDay.find(({ cooling }) => cooling === open.parts.heat.cooling)!
    expect(one.motor.allDay).toBe(stands.torque)
    expect(one.motor.allDay).toBeLessThan(one.motor.minutes)
    expect(one.motor.minutes).toBeLessThan(one.motor.seconds)
    expect(one.motor.duty!).toBeGreaterThan(one.motor.allDay)
  })
  it('a closed one with a fan outside or none', () => {
    const [one] = compare(
      job({ 'heat.cooling': 'enclosed' }),
      oldMotor({ power: '1 hp', speed: '1725 rpm' }),
    ).met
    expect(one.allDay.map(({ cooling }) => cooling)).toEqual(['enclosed, outer fan', 'enclosed'])
  })
})

it('stronger, weaker, or as strong within 5 per cent', () => {
  expect([against(2, 1), against(1, 2), against(1.04, 1), against(0.96, 1)].map(({ is }) => is)).toEqual([
    'stronger',
    'weaker',
    'even',
    'even',
  ])
  expect(against(1, 4).share).toBe(0.25)
  expect(against(1, 0)).toEqual({ share: Infinity, is: 'stronger' })
  expect(against(0, 0).is).toBe('even')
})

describe('another DC motor', () => {
  const plate = {
    power: '1.6 hp',
    speed: '4000 rpm',
    volts: '120 V',
    amps: '13 A',
    duty: 'continuous',
  } as const
  const steps = [{ motorPulley: '2.5 in', machinePulley: '10 in' }]
  it('an equal one on equal pulleys is equal in everything but its controller', () => {
    const rival = direct({ ...plate, steps })
    const twin = { ...job({}), parts: { ...rival.parts, machine: job({}).parts.machine } }
    const mine = { ...twin.parts, belt: { motorPulley: 1, machinePulley: 4, efficiency: 0.95 } }
    const [one] = compare({ ...twin, parts: mine }, rival).met
    for (const claim of ['allDay', 'minutes', 'seconds', 'start'] as const)
      near(one.against[claim].share, 1, 1e-9)
    near(one.motor.duty!, one.old.duty!, 1e-9)
  })
  it('holds all day what its plate says, printed CONT, in 40 °C air', () => {
    const rival = direct({ ...plate, steps })
    const [one] = compare(job({ ...plain, 'heat.air': '40 °C' }), rival).met
    near(one.old.allDay, (fromUnit(1.6, 'hp') / rpm(4000)) * 4 * 0.95, 0.01)
  })
  it('wound for other volts, its brushes taking the same share of them, it is as strong', () => {
    // 1.5 V of 72 V and 1 V of 48 V.
    const [high] = compare(job(plain), direct({ ...plate, volts: '72 V', amps: '20 A', steps })).met
    const [low] = compare(job(plain), direct({ ...plate, volts: '48 V', amps: '30 A', steps })).met
    for (const claim of ['allDay', 'minutes', 'seconds', 'start'] as const)
      near(low.old[claim], high.old[claim], 1e-6)
  })
  it('of two with equal horsepower the faster needs more reduction for the same torque at the same speed', () => {
    const at = (speed: string) =>
      direct({ ...plate, speed, amps: undefined, steps: [{ spindle: '400 rpm' }] })
    const [fast] = compare(job(plain), at('6000 rpm')).met
    const [slow] = compare(job(plain), at('2500 rpm')).met
    near(fast.step.ratio / slow.step.ratio, 6000 / 2500, 1e-12)
    near(fast.old.allDay, slow.old.allDay, 0.03)
  })
})

describe('curves', () => {
  const old = induction({ power: '3/4 hp', speed: '1725 rpm', steps: [{ spindle: '350 rpm' }] })
  it('the old motor: locked at standstill, full load at plate speed, nothing from the speed of its field', () => {
    const { parts } = job(plain)
    const [step] = old.steps
    const { speed, torque } = rivalCurve(old, step, parts.machine)
    expect(speed).toHaveLength(torque.length)
    near(torque[0], old.locked * step.ratio * step.efficiency, 1e-12)
    expect(torque.at(-1)).toBe(0)
    near(speed.at(-1)!, old.synchronous / step.ratio, 1e-12)
    expect(Math.max(...torque)).toBeGreaterThan(1.6 * old.fullLoad * step.ratio * step.efficiency)
  })
  it('this one: under its seconds at every speed, and less without a fan than with', () => {
    const { parts } = job({})
    const top = rpm(1100)
    const [fan, bare] = (['shaft fan', 'none'] as const).map((cooling) => allDayCurve(parts, cooling, top, 9))
    const seconds = secondsCurve({ ...parts, heat: { ...parts.heat, cooling: 'shaft fan' } }, top, 9)
    for (let n = 1; n < 9; n++) {
      expect(bare.torque[n]).toBeLessThanOrEqual(fan.torque[n])
      expect(fan.torque[n]).toBeLessThanOrEqual(seconds.torque[n] * (1 + 1e-9))
    }
    expect(fan.torque[5]).toBeGreaterThan(1.2 * bare.torque[5])
  })
})
