// The assumptions of the report: every input that has a value, once, in the reader's units, with where it came from.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { inputsOf, type Scenario, withChange } from '../../sim/scenario.ts'
import type { Units } from '../../sim/say/units.ts'
import { inputGroups, originCounts } from '../../ui/zone/report/inputs.ts'
import { example } from './demo.ts'

const US: Units = { system: 'us', temperature: '°F' }
const METRIC: Units = { system: 'metric', temperature: '°C' }

const groupsOf = (scenario: Scenario, units = METRIC) => {
  const reading = read(scenario)
  if (!reading.ok) throw new Error('the job does not read')
  return inputGroups(scenario, reading.motor, units)
}
const rowOf = (scenario: Scenario, label: string, units = METRIC) =>
  groupsOf(scenario, units)
    .flatMap(({ rows }) => rows)
    .find((row) => row.label === label)

it.each(['appleMill', 'bandSaw', 'bowlLathe'])('%s: no input that has a value is left out', (name) => {
  const scenario = example(name)
  const told = groupsOf(scenario)
    .flatMap(({ rows }) => rows)
    .map(({ label }) => label)
  const single = inputsOf(scenario).filter(
    ({ path, text }) => text !== '' && path.includes('.') && !/\.\d+\./.test(path),
  )
  expect(single.length).toBeGreaterThan(40)
  for (const { field } of single) expect(told).toContain(field.label)
  for (const { name: step } of scenario.duty.phases) expect(told).toContain(step)
  expect(new Set(told).size).toBe(told.length)
})

it('tells what was given, read off the plate, measured, usual and worked out', () => {
  const mill = example('appleMill')
  expect(rowOf(mill, 'Plate power')).toMatchObject({ from: 'plate', source: 'invented', doubt: '' })
  expect(rowOf(mill, 'Current limit')).toMatchObject({ from: 'given', value: '18\u00a0A' })
  expect(rowOf(mill, 'Sag you accept in the cut')).toMatchObject({ from: 'usual', value: '20\u00a0%' })
  expect(rowOf(mill, 'Rotor inertia')).toMatchObject({ from: 'worked out', source: 'Estimated: its mass.' })
  expect(rowOf(mill, 'Rotor inertia')?.doubt).toMatch(/ to .*kg·m²$/)
  expect(rowOf(mill, 'Insulation class')?.value).toBe('B')
  const measured = withChange(mill, 'bench.ohms', ['1.1 ohm'])
  expect(rowOf(measured, 'Winding resistance, cold')?.from).toBe('measured')
  expect(rowOf(measured, 'Ohms between the motor leads')?.from).toBe('measured')
  const run = withChange(mill, 'bench.running', [{ volts: '120 V', amps: '1.1 A' }])
  expect(rowOf(run, 'Running free, 1')?.value).toMatch(/120.V.*1\.1.A/)
})

it('is told in the reader’s units, with the doubt that was given', () => {
  const mill = example('appleMill')
  expect(rowOf(mill, 'Motor pulley', US)?.value).toBe('2.5\u00a0in')
  expect(rowOf(mill, 'Motor pulley')?.value).toBe('63.5\u00a0mm')
  expect(rowOf(mill, 'Opens at', US)?.value).toBe('248\u00a0°F')
  const doubted = withChange(mill, 'heat.air', { value: '25 °C', low: '15 °C', high: '35 °C' } as never)
  expect(rowOf(doubted, 'Air around the motor', US)?.doubt).toBe('59\u00a0°F to 95\u00a0°F')
})

it('a step of the duty is one line under its own name', () => {
  const row = rowOf(example('appleMill'), 'milling')
  expect(row?.value).toMatch(/^5\u00a0min, 350\u00a0rpm, torque of the cut .*N·m/)
})

it('counts add up', () => {
  const groups = groupsOf(example('appleMill'))
  const counts = originCounts(groups)
  expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(
    groups.reduce((sum, { rows }) => sum + rows.length, 0),
  )
  expect(counts.measured).toBe(0)
})
