// All-day torque: its oracle, runs of the plant on both sides of it, and how it follows speed and cooling.
import { describe, expect, it } from 'vitest'
import { slipCapacity } from '../../../sim/belting/slip.ts'
import type { Heat } from '../../../sim/parts/heat.ts'
import { assemble, type Parts, STATE } from '../../../sim/plant.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish, run } from '../../../sim/run.ts'
import { settle } from '../../../sim/steady.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { lowestAllDay } from '../../../sim/steady/lowest.ts'
import { operatingPoint, topSpeed } from '../../../sim/steady/operating.ts'
import { oracle } from '../../checks/files.ts'
import { job } from '../../jobs.ts'
import { near, partsWith } from '../physics/lab.ts'

type Numbers = Record<string, number>
const rpm = (speed: number) => fromUnit(speed, 'rpm')

it('O06: the torque that just holds the winding at its limit, friction at the housing, magnets as warm as it', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O06')
  const { Rwh, Rha, Tmax, Ta, R20, alpha20, k20, kb_per_K, T_friction, P_rot_W } = inputs
  expect(kb_per_K).toBe(-0.002)
  const parts = partsWith({
    supply: { volts: 1000 },
    // Our copper has the same resistance at the limit, where it is asked.
    winding: {
      resistance: (R20 * (1 + alpha20 * (Tmax - 20)) * 255) / (235 + Tmax),
      constant: k20,
      insulation: 'H',
    },
    rotor: { dryFriction: T_friction },
    heat: { air: Ta, windingToFrame: 1 / Rwh, frameToAir: 1 / Rha, frictionShare: 0 },
    controller: { currentLimit: 100 },
    // The limit is no class's own: a switch that feels the winding alone stands for it.
    cutoff: { fitted: 'self-reset', opensAt: Tmax, windingShare: 1 },
  })
  const most = allDayTorque(parts, P_rot_W / T_friction)
  expect(most.limit).toBe('switch')
  near(most.torque, answers.T_cont_Nm, 1e-9)
  near(most.amps, answers.I_cont_A, 1e-9)
  near(most.frameC, answers.T_housing_C, 1e-9)
  const class165 = allDayTorque(
    { ...parts, cutoff: { ...parts.cutoff, fitted: 'none' } },
    P_rot_W / T_friction,
  )
  expect(class165.limit).toBe('winding')
  near(class165.windingC, 165, 1e-9)
})

const COOLINGS: readonly Heat['cooling'][] = [
  'shaft fan',
  'blower',
  'none',
  'enclosed',
  'enclosed, outer fan',
]

describe.each(COOLINGS)('%s', (cooling) => {
  const { parts } = job({ 'heat.cooling': cooling, 'controller.holds': 'speed feedback' })
  it('at the torque the winding or the switch is at its limit, a thousandth more is over it', () => {
    for (const speed of [150, 250, 350].map(rpm)) {
      const most = allDayTorque(parts, speed)
      const at = (torque: number) => operatingPoint(parts, speed, torque).warm
      const room = (warm: ReturnType<typeof at>) =>
        warm === null ? -1 : Math.min(120 - warm.windingC, parts.cutoff.opensAt - warm.switchC)
      expect(['winding', 'switch']).toContain(most.limit)
      expect(most.torque).toBeGreaterThan(0.5)
      near(at(most.torque)!.windingC, most.windingC, 1e-6)
      expect(Math.abs(room(at(most.torque)))).toBeLessThan(1e-4)
      expect(room(at(most.torque * 1.001))).toBeLessThan(0)
      expect(room(at(most.torque * 0.999))).toBeGreaterThan(0)
    }
  })
})

it('a run of thirty hours at the all-day torque ends at the class limit', () => {
  const make = (torque: number) =>
    job({
      'cutoff.fitted': 'none',
      'controller.holds': 'speed feedback',
      'heat.cooling': 'shaft fan',
      duty: {
        phases: [{ name: 'held', lasts: '30 h', speed: '350 rpm', torque: `${torque} N·m` }],
        repeatFor: '30 h',
      },
    })
  const { torque } = allDayTorque(make(1).parts, rpm(350))
  const [end] = finish(run({ ...make(torque), accuracy: 'precise' }, { samples: [30 * 3600 - 1] })).samples
  expect(Math.abs(end[STATE.windingC] - 120)).toBeLessThan(0.05)
})

it('with a fan on the shaft it grows with speed, with a blower it does not, and none is worst', () => {
  const { parts } = job({ 'cutoff.fitted': 'none' })
  const at = (speed: number, cooling: Heat['cooling']) => allDayTorque(parts, rpm(speed), cooling).torque
  expect(at(500, 'shaft fan')).toBeGreaterThan(1.2 * at(150, 'shaft fan'))
  expect(at(500, 'blower')).toBeLessThan(at(150, 'blower'))
  for (const speed of [150, 350, 700]) expect(at(speed, 'none')).toBeLessThan(at(speed, 'shaft fan'))
})

describe('what else limits it', () => {
  const { parts } = job({ 'heat.cooling': 'blower', 'machine.drag': '0 N·m' })
  it('amps', () => {
    const weak: Parts = { ...parts, controller: { ...parts.controller, currentLimit: 3 } }
    const most = allDayTorque(weak, rpm(300))
    expect(most.limit).toBe('current')
    near(most.amps, 3, 1e-9)
  })
  it('volts: near the top speed, and nothing well above it', () => {
    const top = topSpeed(parts)
    const most = allDayTorque(parts, 1.05 * top)
    expect(most.limit).toBe('voltage')
    // Warm magnets are weaker: so it does get a little over the cold top speed.
    expect(most.torque).toBeGreaterThan(0)
    const { speed, limit } = operatingPoint(parts, 2 * top, most.torque)
    expect(limit).toBe('voltage')
    near(speed, 1.05 * top, 1e-6)
    expect(allDayTorque(parts, 1.5 * top)).toMatchObject({ torque: 0, limit: 'voltage' })
  })
  it('the belt: where it slips', () => {
    const belted: Parts = { ...parts, belt: { ...parts.belt, section: 'A', carries: 2, carriesAt: 0 } }
    const { limit, torque } = allDayTorque(belted, rpm(100))
    expect(limit).toBe('belt')
    const { slip, ratio } = assemble(belted)
    near(torque, slipCapacity(slip!, rpm(100) * ratio), 1e-9)
    // It carries 2 N·m standing still; little lifts off at this speed.
    near(torque, 2, 0.03)
  })
  it('a cold winding is no help where its torque has a top: held torque past it runs away', () => {
    const hot = partsWith({
      supply: { volts: 1000 },
      winding: { resistance: 1, constant: 0.3, insulation: 'H' },
      controller: { currentLimit: 1000 },
      heat: { air: 25, windingToFrame: 50, frameToAir: 0.5 },
      cutoff: { fitted: 'none' },
    })
    const most = allDayTorque(hot, 100)
    expect(most.limit).toBe('runaway')
    expect(most.windingC).toBeLessThan(165)
    const held = (torque: number) =>
      settle(hot.winding, hot.rotor, hot.heat, { speed: 100, torque, formFactor: 1, air: 25 })
    expect(held(most.torque * 0.9999)).not.toBeNull()
    expect(held(most.torque * 1.0001)).toBeNull()
  })
})

describe('the lowest speed that holds a torque all day', () => {
  const { parts } = job({ 'heat.cooling': 'shaft fan' })
  const top = topSpeed(parts)
  it('holds it there, and not a little slower', () => {
    const torque = 1.1 * allDayTorque(parts, rpm(150)).torque
    const lowest = lowestAllDay(parts, torque, top)!
    expect(lowest).toBeGreaterThan(rpm(150))
    near(allDayTorque(parts, lowest).torque, torque, 1e-4)
    expect(allDayTorque(parts, 0.98 * lowest).torque).toBeLessThan(torque)
  })
  it('is 0 for next to nothing, and none for too much', () => {
    expect(lowestAllDay(parts, 0.01, top)).toBe(0)
    expect(lowestAllDay(parts, 100, top)).toBeNull()
  })
})
