// How well the heat put into a logged motor is known: the band written beside an input, the bench's, the plate's, the usual.
import { expect, it } from 'vitest'
import { heatDoubtOf } from '../../sim/heatDoubt.ts'
import { read } from '../../sim/read.ts'
import { type Scenario, withChange } from '../../sim/scenario.ts'
import { demo, scenario } from '../jobs.ts'

function doubt(whole: Scenario) {
  const reading = read(whole)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return heatDoubtOf(whole, reading.motor, reading.job.parts.supply)
}

it('a written band comes first: half of its logarithm', () => {
  expect(doubt(scenario()).resistance).toBeCloseTo(Math.log(1.6 / 0.9) / 2, 12)
})

it('a band down to nothing, or with one end only, has no logarithm: the next best is taken', () => {
  const friction = (band: object) =>
    doubt(scenario({ 'rotor.dryFriction': { value: '0.1 N·m', ...band } })).friction
  const usual = friction({})
  expect(friction({ low: '0 N·m', high: '0.2 N·m' })).toBe(usual)
  expect(friction({ high: '0.2 N·m' })).toBe(usual)
  expect(friction({ low: '0.05 N·m', high: '0.2 N·m' })).toBeCloseTo(Math.log(4) / 2, 12)
})

it('a number given without one is as good as a meter', () => {
  expect(doubt(scenario({ 'winding.resistance': '1.25 Ω' })).resistance).toBe(0.03)
})

it('of a motor from its plate the ohms are poorly known; ohms read on the bench narrow them', () => {
  const plate = doubt(demo('appleMill'))
  const bench = doubt(withChange(demo('appleMill'), 'bench', { ohms: ['1.2 Ω', '1.22 Ω', '1.21 Ω'] }))
  expect(plate.resistance).toBeGreaterThan(0.25)
  expect(bench.resistance).toBeLessThan(0.05)
})

it('a form factor that was not given adds its band to the amps’', () => {
  const given = doubt(demo('appleMill')).amps
  const open = doubt(withChange(demo('appleMill'), 'supply.formFactor', null)).amps
  expect(given).toBe(0.04)
  expect(open).toBeCloseTo(Math.hypot(0.04, Math.log(1.05) / 2), 12)
})
