// How far each input of a job may be off: by its own bounds, as measured, as is usual where nobody said, and not at all.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../../sim/identify/assume.ts'
import { read } from '../../../../sim/read.ts'
import { givenAt, type ReadScenario } from '../../../../sim/scenario.ts'
import type { Doubt } from '../../../../sim/studies/sure/doubt.ts'
import type { Draft } from '../../../../sim/studies/sure/draft.ts'
import { cutDoubts, inputDoubts, tableDoubts } from '../../../../sim/studies/sure/inputs.ts'
import { type Changes, type Demo, scenario } from '../../../jobs.ts'

/** The doubts of a job with changes, and the draft they are doubts of. */
function doubtsOf(changes: Changes, name?: Demo): { doubts: readonly Doubt[]; draft: Draft } {
  const whole = scenario(changes, name)
  const reading = read(whole)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  const { fields, cuts } = reading
  return {
    doubts: [...cutDoubts(cuts), ...inputDoubts(whole, fields), ...tableDoubts(fields)],
    draft: { fields, cuts, assume: USUAL, scale: 0 },
  }
}

/** What stands at a path with the input of that name low, as it is and high; null where there is no doubt about it. */
function endsOf(changes: Changes, name: string, path = name): readonly number[] | null {
  const { doubts, draft } = doubtsOf(changes)
  const doubt = doubts.find((each) => each.name === name)
  const at = (fields: ReadScenario) => Number((givenAt(fields, path) as number).toFixed(4))
  return doubt ? [-1, 0, 1].map((where) => at(doubt.at(draft, where).fields)) : null
}

const AIR = 'heat.air'
describe('an input', () => {
  it.each<[string, Changes, string, readonly number[] | null]>([
    ['nobody measured', { [AIR]: '25 °C' }, AIR, [20, 25, 30]],
    ['said to be measured', { [AIR]: { value: '25 °C', source: 'measured at noon' } }, AIR, [24, 25, 26]],
    [
      'said to be measured, in capitals',
      { [AIR]: { value: '25 °C', source: 'Measured' } },
      AIR,
      [24, 25, 26],
    ],
    [
      'only said to be as others measured it',
      { [AIR]: { value: '25 °C', source: 'not measured' } },
      AIR,
      [20, 25, 30],
    ],
    ['with both bounds', { [AIR]: { value: '25 °C', low: '10 °C', high: '28 °C' } }, AIR, [10, 25, 28]],
    ['with a low bound alone', { [AIR]: { value: '25 °C', low: '10 °C' } }, AIR, [10, 25, 25]],
    ['with a high bound alone', { [AIR]: { value: '25 °C', high: '28 °C' } }, AIR, [25, 25, 28]],
    ['with itself for bounds', { [AIR]: { value: '25 °C', low: '25 °C', high: '25 °C' } }, AIR, null],
    ['of no rule and no bounds', {}, 'belt.centreDistance', null],
    ['that is nothing', { 'machine.drag': '0 N·m' }, 'machine.drag', null],
    ['near the end of its range', { [AIR]: '68 °C' }, AIR, [63, 68, 70]],
    ['stir of a bare motor, left out', {}, 'heat.stir', [0.1, 0.2, 0.3]],
    ['stir of a bare motor, given', { 'heat.stir': '0.2' }, 'heat.stir', null],
    ['stir where a fan blows', { 'heat.cooling': 'shaft fan' }, 'heat.stir', null],
    ['how air follows a fan', { 'heat.cooling': 'shaft fan' }, 'heat.fanExponent', [0.6, 0.8, 0.9]],
    ['how air follows a rotor with a blower', { 'heat.cooling': 'blower' }, 'heat.fanExponent', null],
    ['a blower’s air, left out', { 'heat.cooling': 'blower' }, 'heat.airflow', [0.7, 1, 1.3]],
    ['a blower’s air where there is none', {}, 'heat.airflow', null],
  ])('%s', (_, changes, path, ends) => {
    expect(endsOf(changes, path)).toEqual(ends)
  })

  it('torque loses or gains 15 %, its surge 30 %; what a belt loses, half as much again', () => {
    const cut = { 'duty.phases.2.torque': '4 N·m', 'duty.phases.2.surge.torque': '2 N·m' }
    expect(endsOf(cut, 'duty.phases.2.torque')).toEqual([3.4, 4, 4.6])
    expect(endsOf(cut, 'duty.phases.2.surge.torque')).toEqual([1.4, 2, 2.6])
    expect(endsOf({ 'belt.efficiency': '94 %' }, 'belt.efficiency')).toEqual([0.91, 0.94, 0.96])
  })
})

describe('the cutoff', () => {
  it('opens within 5 K of its print, and never less than 5 K over where it recloses', () => {
    const close = { 'cutoff.opensAt': '120 °C', 'cutoff.reclosesAt': '113 °C' }
    expect(endsOf(close, 'cutoff.opensAt')).toEqual([115, 120, 125])
    expect(endsOf(close, 'cutoff.opensAt', 'cutoff.reclosesAt')).toEqual([110, 113, 113])
    expect(endsOf(close, 'cutoff.reclosesAt')).toEqual([98, 113, 115])
  })

  it('feels what its place feels, half as much again or two thirds; as told where that is said', () => {
    expect(endsOf({ 'cutoff.place': 'shell' }, 'cutoff.windingShare')).toEqual([0.0667, 0.1, 0.15])
    expect(endsOf({ 'cutoff.place': 'shell' }, 'cutoff.lag')).toEqual([56.25, 90, 144])
    const told = { 'cutoff.windingShare': '30 %', 'cutoff.lag': '45 s' }
    expect(endsOf(told, 'cutoff.windingShare')).toBeNull()
    expect(endsOf(told, 'cutoff.lag')).toBeNull()
  })

  it.each<[string, Changes]>([
    ['none', { 'cutoff.fitted': 'none' }],
    ['not connected', { 'cutoff.leads': 'not connected' }],
  ])('%s: nothing about it is in doubt', (_, changes) => {
    expect(doubtsOf(changes).doubts.filter(({ name }) => name.startsWith('cutoff'))).toEqual([])
    expect(doubtsOf({}).doubts.filter(({ name }) => name.startsWith('cutoff'))).not.toEqual([])
  })
})

it('the form factor of the kind of supply, where the file does not give it and the kind has a band', () => {
  const kind = (value: string) => ({ 'supply.kind': value, 'supply.formFactor': null })
  expect(endsOf(kind('phase control with choke'), 'supply.formFactor', 'supply.formFactor')).toEqual([
    1.05, 1.07, 1.1,
  ])
  expect(endsOf(kind('battery'), 'supply.formFactor')).toBeNull()
  expect(endsOf({ 'supply.kind': 'phase control with choke' }, 'supply.formFactor')).toBeNull()
})

describe('a cut that a step names', () => {
  const turning = {
    kind: 'turning',
    material: 'plain carbon HB 160-180',
    depth: '1 mm',
    feed: '0.1 mm',
    diameter: '50 mm',
  }
  const clay = { kind: 'clay' }
  const step = (cut: unknown) => ({ name: 'x', lasts: '5 min', speed: '191 rpm', cut })

  it('is as heavy as the ends of its handbook row, torque and power alike, and leaves other cuts alone', () => {
    const { doubts, draft } = doubtsOf({ 'duty.phases.1': step(turning), 'duty.phases.0': step(clay) })
    const doubt = doubts.find(({ name }) => name === 'duty.phases.1.cut')!
    const [other, mine] = draft.cuts
    for (const [where, torque] of [
      [-1, mine.low],
      [0, mine.torque],
      [1, mine.high],
    ]) {
      const [left, moved] = doubt.at(draft, where).cuts
      expect(left).toBe(other)
      expect(moved.torque).toBeCloseTo(torque, 9)
      expect(moved.power / moved.torque).toBeCloseTo(mine.power / mine.torque, 9)
    }
    expect(mine.high).toBeGreaterThan(1.1 * mine.low)
  })

  it('given as a number by its maker has no doubt of a handbook row', () => {
    const force = { kind: 'force', force: '50 N', radius: '100 mm' }
    const { doubts, draft } = doubtsOf({ 'duty.phases.1': step(force) })
    expect(draft.cuts[0].low).toBe(draft.cuts[0].high)
    expect(doubts.some(({ name }) => name.endsWith('.cut'))).toBe(false)
  })
})
