// Facts of the trade, common practice, no source: what anyone who fits motors to machines expects to come out.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import { cutTorque } from '../../../sim/parts/machine.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'
import { currentAt, look, near, plantWith, zero } from './lab.ts'

const power = (hp: number) => ({ kind: 'power', power: fromUnit(hp, 'hp'), fullAbove: 1 }) as const
const pounds = (hp: number, rpm: number) => toUnit(cutTorque(power(hp), 0, fromUnit(rpm, 'rpm')), 'lbf·ft')

it.each([
  [1.5, 4000],
  [2, 1750],
  [0.9, 350],
])('torque in lbf·ft is hp × 5252 / rpm: %d hp at %d rpm', (hp, rpm) => {
  // To the last figure of 5252.
  near(pounds(hp, rpm), (hp * 5252) / rpm, 0.5 / 5252)
})

it('the same horsepower at twice the speed is half the torque', () => {
  near(pounds(2, 1750) / pounds(2, 3500), 2, 1e-12)
})

describe('torque per amp', () => {
  const plant = plantWith({ winding: { constant: 0.27 } })
  const perAmp = (i: number, w: number) => look(plant, { i, w }).spare / i

  it('does not change with speed, nor with amps', () => {
    for (const w of [5, 100, 250, 400]) for (const i of [1, 8, 20]) near(perAmp(i, w), 0.27, 1e-12)
  })

  it('so horsepower falls with speed when the amps are the same', () => {
    const horsepower = (w: number) => perAmp(10, w) * 10 * w
    near(horsepower(100) / horsepower(400), 0.25, 1e-12)
  })
})

describe('a reduction', () => {
  /** Torque at the spindle that just holds the motor at this speed and current. */
  const carried = (ratio: number, i: number, w: number) => {
    const plant = plantWith({ belt: { machinePulley: ratio } })
    return zero((torque) => look(plant, { i, w, cut: { kind: 'torque', torque } }).spare, 0, 1e4)
  }

  it.each([2, 4, 5.6])('of %d multiplies torque by as much', (ratio) => {
    near(carried(ratio, 10, 300) / carried(1, 10, 300), ratio, 1e-9)
  })
})

it('motor top speed over spindle top speed is the ratio that leaves no torque unused', () => {
  const amps = 15
  const spindle = fromUnit(600, 'rpm')
  const volts = 120
  const winding = { resistance: 1, constant: 0.27 }
  const top = (volts - amps * winding.resistance) / winding.constant
  /** Torque at the spindle's top speed with the amps the motor may take and can get there. */
  const available = (ratio: number) => {
    const plant = plantWith({
      supply: { volts },
      controller: { currentLimit: amps },
      winding,
      belt: { machinePulley: ratio },
    })
    const w = spindle * ratio
    if (look(plant, { w }).currentRate <= 0) return 0 // too fast for its volts
    const i = currentAt(plant, { w })
    return zero((torque) => look(plant, { i, w, cut: { kind: 'torque', torque } }).spare, 0, 1e4)
  }
  const best = top / spindle
  for (const share of [0.3, 0.6, 0.9, 0.99, 1.01, 1.05, 1.1, 1.3])
    expect(available(best * share), `${share} of it`).toBeLessThan(available(best))
  near(available(best), amps * winding.constant * best, 1e-9)
})

describe('a plate with a continuous rating below its peak', () => {
  // Plant of runs.json, limit lifted; the cut in N·m at the spindle. Continuous is what settles under the class limit.
  const reference = references.runs.find(({ name }) => name === 'shaft-fan')!
  const passed = (torque: number) => {
    const phases = [{ seconds: 4 * 3600, speed: 380, load: { kind: 'torque' as const, value: torque } }]
    const plant = { Imax: 60, Vmax: 200, Topen: 250 }
    const job = referenceJob(references.base, { ...reference, seconds: 4 * 3600, plant, phases }, 'default')
    const { trace } = finish(run(job))
    return trace.marks.find(({ kind }) => kind === 'class passed')?.t ?? Infinity
  }
  const continuous = 8

  it('runs all day at the one, and overheats in time at the other', () => {
    expect(passed(continuous)).toBe(Infinity)
    const peak = passed(continuous * 1.67)
    const higher = passed(continuous * 2)
    expect(peak).toBeGreaterThan(60)
    expect(peak).toBeLessThan(3600)
    expect(higher).toBeLessThan(peak)
  })
})
