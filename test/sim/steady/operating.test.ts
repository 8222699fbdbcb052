// Operating points: the sag oracle, long runs of the plant in every limit, and facts of the trade.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../../sim/job.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { assemble, STATE } from '../../../sim/plant.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { finish, run } from '../../../sim/run.ts'
import { driveAt } from '../../../sim/steady/drive.ts'
import { cutFrom, heldAt } from '../../../sim/steady/most.ts'
import { operatingPoint, topSpeed } from '../../../sim/steady/operating.ts'
import { oracle } from '../../checks/files.ts'
import { type Changes, job } from '../../jobs.ts'
import { near, partsWith, plantWith } from '../physics/lab.ts'
import { copper } from '../physics/trial.ts'

type Numbers = Record<string, number>
const rpm = (speed: number) => toUnit(speed, 'rpm')

describe.each([1, 4])('O07: speed sag through %d : 1', (reduction) => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O07')
  const { resistance, moved } = copper(0.00393, inputs.R)
  const plant = plantWith({
    supply: { volts: inputs.V },
    winding: { resistance, constant: inputs.k },
    rotor: { dryFriction: inputs.Tf },
    belt: { machinePulley: reduction },
  })
  const at = (torque: number, windingC: number, frameC: number) =>
    driveAt(plant, Infinity, torque * reduction, windingC + moved, frameC)

  it('cold and hot: speeds, amps, and at the spindle the same share', () => {
    const idle = at(0, 20, 20)
    const cutting = at(2, 20, 20)
    near(rpm(idle.motor), answers.n_T0, 1e-9)
    near(rpm(cutting.motor), answers.n_T2Nm, 1e-9)
    near(cutting.amps, answers.I_at_2Nm_A, 1e-9)
    near(100 * (1 - cutting.spindle / idle.spindle), answers.sag_percent, 1e-9)
    near(idle.spindle * reduction, idle.motor, 1e-12)
    const hot = at(2, inputs.winding_temp_C, 20 + inputs.magnet_temp_rise_K)
    near(rpm(hot.motor), answers.hot_n_T2, 1e-9)
  })
  it('well past its stall torque it stands; under it, it still turns', () => {
    expect(at(answers.T_stall_Nm * 1.1, 20, 20).limit).toBe('stall')
    expect(at(answers.T_stall_Nm * 0.9, 20, 20).limit).toBe('voltage')
  })
})

/** A job that holds one speed and torque for a day and a quarter. */
const holding = (speed: string, torque: string, changes: Changes): Job => ({
  ...job({
    'cutoff.fitted': 'none',
    'heat.cooling': 'shaft fan',
    duty: { phases: [{ name: 'held', lasts: '30 h', speed, torque }], repeatFor: '30 h' },
    ...changes,
  }),
  accuracy: 'precise',
})
const LATE = 30 * 3600 - 1

describe('a long run ends where the operating point says', () => {
  it.each<[limit: string, speed: string, torque: string, changes: Changes]>([
    ['none', '350 rpm', '5 N·m', {}],
    ['none', '350 rpm', '5 N·m', { 'controller.holds': 'fixed voltage' }],
    ['none', '350 rpm', '5 N·m', { 'controller.holds': 'speed feedback', 'heat.cooling': 'blower' }],
    ['voltage', '1300 rpm', '3 N·m', { 'supply.resistance': '0.5 Ω' }],
    ['voltage', '1300 rpm', '3 N·m', { 'controller.holds': 'speed feedback' }],
    ['current', '350 rpm', '1 N·m', { 'controller.currentLimit': '3 A', 'machine.windage': '0.1 N·m·s/rad' }],
    ['none', '350 rpm', '2 N·m', { 'supply.kind': 'phase control', 'supply.formFactor': '1.42' }],
    ['none', '350 rpm', '5 N·m', { 'belt.section': 'A', 'belt.carries': '9 N·m' }],
    ['slip', '350 rpm', '9 N·m', { 'belt.section': 'A', 'belt.carries': '5 N·m' }],
  ])('%s: %s, %s, %o', (limit, speed, torque, changes) => {
    const one = holding(speed, torque, changes)
    const point = operatingPoint(
      one.parts,
      fromUnit(Number.parseFloat(speed), 'rpm'),
      Number.parseFloat(torque),
    )
    const { samples } = finish(run(one, { samples: [LATE] }))
    const [end] = samples
    expect(point.limit).toBe(limit)
    expect(Math.abs(end[STATE.windingC] - point.warm!.windingC)).toBeLessThan(0.05)
    expect(Math.abs(end[STATE.frameC] - point.warm!.frameC)).toBeLessThan(0.05)
    expect(Math.abs(end[STATE.switchC] - point.warm!.switchC)).toBeLessThan(0.05)
    near(end[STATE.current], point.amps, 5e-4)
    near(end[STATE.speed], point.motor, 5e-4)
    const spindle = end.length > STATE.spindle ? end[STATE.spindle] : end[STATE.speed] / ratio(one.parts.belt)
    expect(Math.abs(spindle - point.speed)).toBeLessThan(5e-4 * point.speed + 1e-3)
    expect(point.warm!.windingC).toBeGreaterThan(one.parts.heat.air + 5)
  })
  it('stall: it stands at the current limit', () => {
    const changes = { 'controller.currentLimit': '3 A', 'heat.cooling': 'blower' }
    const one = holding('350 rpm', '9 N·m', changes)
    const point = operatingPoint(one.parts, fromUnit(350, 'rpm'), 9)
    const [end] = finish(run(one, { samples: [LATE] })).samples
    expect([point.limit, point.amps]).toEqual(['stall', 3])
    expect(Math.abs(end[STATE.windingC] - point.warm!.windingC)).toBeLessThan(0.05)
    near(end[STATE.speed], point.motor, 1e-3)
  })
  it('runaway: nothing settles, and the run burns out', () => {
    const one = holding('350 rpm', '9 N·m', { 'heat.cooling': 'none' })
    expect(operatingPoint(one.parts, fromUnit(350, 'rpm'), 9).warm).toBeNull()
    expect(finish(run(one)).trace.ending.kind).toBe('destroyed')
  })
  it('asked for nothing it stands still and cold', () => {
    const { parts } = job()
    const { speed, amps, limit, warm } = operatingPoint(parts, 0, 5)
    expect([speed, amps, limit]).toEqual([0, 0, 'none'])
    near(warm!.windingC, parts.heat.air, 1e-9)
  })
})

it('two stages of 3 and 5 settle where one of 15 does', () => {
  const two = job({}, 'bandSaw').parts
  const { jackshaftLarge: _large, jackshaftSmall: _small, ...belt } = two.belt
  const one = { ...two, belt: { ...belt, machinePulley: 15 * belt.motorPulley } }
  expect(assemble(two).ratio).toBeCloseTo(15, 12)
  const wanted = operatingPoint(one, 4, 10)
  const found = operatingPoint(two, 4, 10)
  near(found.amps, wanted.amps, 1e-9)
  near(found.warm!.windingC, wanted.warm!.windingC, 1e-9)
  near(topSpeed(two), topSpeed(one), 1e-12)
})

describe('twice the reduction, same cut, cold (common practice, no source)', () => {
  it.each([
    ['appleMill', 350, 5],
    ['bowlLathe', 600, 6],
    ['bandSaw', 38, 12],
  ] as const)(
    'halves the load’s share of the amps and quarters its copper heat: %s',
    (name, speed, torque) => {
      const { parts } = job({ 'controller.holds': 'speed feedback' }, name)
      const share = (times: number) => {
        const belt = { ...parts.belt, machinePulley: times * parts.belt.machinePulley }
        const plant = assemble({ ...parts, belt })
        const at = (cut: number) => driveAt(plant, fromUnit(speed, 'rpm') * plant.ratio, cut, 20, 20)
        expect(at(torque).limit).toBe('none')
        return at(torque).amps - at(0).amps
      }
      const { resistance } = parts.winding
      near(share(2) / share(1), 0.5, 1e-9)
      near((resistance * share(2) ** 2) / (resistance * share(1) ** 2), 0.25, 1e-9)
    },
  )
})

describe('JOB.md (f), the drive', () => {
  it('k 0.163, R 13.2 at 200 rpm: 2.4 A, 35 V, 76 W of copper heat; through 10 : 1, 0.27 A, 38 V, 10 W', () => {
    const speed = fromUnit(200, 'rpm')
    const at = (reduction: number, efficiency: number) => {
      const plant = plantWith({
        supply: { volts: 100 },
        controller: { holds: 'speed feedback' },
        winding: { resistance: 13.2, constant: 0.163 },
        belt: { machinePulley: reduction, efficiency },
      })
      const { amps, motor } = driveAt(plant, speed * reduction, 0.163 * 2.4, 20, 20)
      const volts = 13.2 * amps + 0.163 * motor
      return { amps, volts, copper: 13.2 * amps ** 2, taken: volts * amps }
    }
    const direct = at(1, 1)
    near(direct.amps, 2.4, 1e-9)
    expect([Math.round(direct.volts), Math.round(direct.copper)]).toEqual([35, 76])
    const geared = at(10, 0.9)
    expect(geared.amps.toFixed(2)).toBe('0.27')
    expect([Math.round(geared.volts), Math.round(geared.taken)]).toEqual([38, 10])
  })

  /** Top speed of a motor that turns so fast at full volts, through a reduction. */
  const top = (motor: number, reduction: number) =>
    topSpeed(
      partsWith({
        supply: { volts: fromUnit(motor, 'rpm') },
        winding: { constant: 1 },
        belt: { machinePulley: reduction },
      }),
    )
  const road = (motor: number, reduction: number, wheel: number, unit: 'mph' | 'km/h') =>
    (top(motor, reduction) * (fromUnit(wheel, 'in') / 2) * 3600) / (unit === 'mph' ? 1609.344 : 1000)
  it.each([
    [6000, 60 / 14, 20, 'mph', 83.3],
    [6000, 9, 20, 'mph', 39.7],
    [2500, 60 / 15, 12.5, 'mph', 23.2],
    [2500, 25, 12.5, 'km/h', 6.0],
    [(2600 * 36) / 24, 55 / 11, 10, 'mph', 23.2],
  ] as const)('%d rpm through %d : 1 on %d in wheels in %s', (motor, reduction, wheel, unit, wanted) => {
    expect(road(motor, reduction, wheel, unit).toFixed(1)).toBe(wanted.toFixed(1))
  })

  it.each([
    [1, 6000, 1, 1.19],
    [1 / 3, 1725, 1, 1.38],
    [1, 6000, 3.5, 4.15],
    [1 / 3, 1720, 1, 1.38],
    [1, 3450, 2, 4.13],
  ])('%d hp at %d rpm through %d : 1', (hp, speed, reduction, wanted) => {
    const motor = fromUnit(speed, 'rpm')
    const held = heldAt(
      partsWith({ winding: { constant: 0.2 }, belt: { machinePulley: reduction } }),
      motor / reduction,
    )
    const amps = fromUnit(hp, 'hp') / motor / 0.2
    expect(Math.abs(cutFrom(held, amps, 20) - wanted)).toBeLessThan(0.01)
  })
})

it('a belt that lifts off with the knob fully up has its top speed below that', () => {
  const given = job({
    'belt.section': 'B',
    'belt.motorPulley': '5 in',
    'belt.machinePulley': '25 in',
    'belt.centreDistance': '36 in',
  })
  // Fast for its tension: at full volts the strands pull with nothing.
  const { parts } = given
  const slack = { ...parts, belt: { ...parts.belt, carries: 3, carriesAt: undefined } }
  const plant = assemble(slack)
  const at = (motor: number) => driveAt(plant, motor, 0, parts.heat.air, parts.heat.air).spindle
  const full = driveAt(plant, Infinity, 0, parts.heat.air, parts.heat.air)
  expect(full.limit).toBe('slip')
  const top = topSpeed(slack)
  expect(top).toBeGreaterThan(1.05 * full.spindle)
  // No knob gives more, by plain looking.
  const looked = Array.from({ length: 4000 }, (_, n) => at(((n + 1) / 4000) * full.motor))
  const best = Math.max(...looked)
  expect(top).toBeGreaterThan(best * (1 - 1e-3))
  expect(top).toBeLessThan(best * (1 + 1e-3))
  // One that grips has it fully up.
  near(topSpeed(parts), driveAt(assemble(parts), Infinity, 0, parts.heat.air, parts.heat.air).spindle, 1e-12)
})
