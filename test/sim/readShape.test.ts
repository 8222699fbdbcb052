// What is no group, no list, missing, too many or of a name that no input has is told by its path.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import type { Scenario } from '../../sim/scenario.ts'
import { scenario } from '../jobs.ts'
import { areTold, pathsOf, problemOf } from './problems.ts'

areTold([
  ['no steps', { 'duty.phases': [] }, 'duty.phases', /at least one step/, /1 to 10000/],
  [
    'steps that are no list',
    { 'duty.phases': 'milling' },
    'duty.phases',
    /needs a list of steps/,
    /1 to 10000/,
  ],
  [
    'a step that is no group',
    { 'duty.phases.1': 'rest' },
    'duty.phases.1',
    /must be a group/,
    /begins with \{/,
  ],
  ['a list for a group', { machine: [] }, 'machine', /must be a group/, /begins with \{/],
  ['a text for a group', { belt: '4 : 1' }, 'belt', /must be a group/, /begins with \{/],
  ['a missing group', { belt: null }, 'belt', /part of the job is missing/, /examples/],
  [
    'a missing input',
    { 'belt.motorPulley': null },
    'belt.motorPulley',
    /Motor pulley is missing/,
    /Between 5 mm and 3 m/,
  ],
  ['a name that is no text', { name: 5 }, 'name', /must be a text/, /80/],
  ['a name that is too long', { name: 'x'.repeat(81) }, 'name', /81 characters/, /80/],
  [
    'a surge without its length',
    { 'duty.phases.2.surge.lasts': null },
    'duty.phases.2.surge.lasts',
    /It lasts is missing/,
    /0.01 s/,
  ],
  ['variants that are no list', { variants: {} }, 'variants', /must be a list/, /examples/],
  ['a variant that is no group', { variants: [null] }, 'variants.0', /must be a group/, /begins with/],
  [
    'a change that is no text',
    { variants: [{ name: 'a', changes: { 'supply.volts': 5 } }] },
    'variants.0.changes.supply.volts',
    /a text, or null/,
    /examples/,
  ],
  [
    'too many variants',
    { variants: Array(25).fill({ name: 'a', changes: {} }) },
    'variants',
    /More than 24/,
    /examples/,
  ],
])

it.each([
  ['belt', 'motorPuley', 'Did you mean "motorPulley"?'],
  ['', 'windng', 'Did you mean "winding"?'],
  ['duty.phases.0', 'Speed', 'Did you mean "speed"?'],
  ['heat', 'qqqqqqqq', /^Known here: cooling, air, /],
])('a name that no input of "%s" has, %s, is told: %s', (group, key, meant) => {
  const broken = structuredClone(scenario()) as unknown as Record<string, unknown>
  const at = group
    .split('.')
    .reduce<Record<string, unknown>>(
      (value, part) => (part === '' ? value : (value[part] as Record<string, unknown>)),
      broken,
    )
  at[key] = '1 m'
  const reading = read(broken as unknown as Scenario)
  if (reading.ok) throw new Error('was read')
  expect(reading.problems).toEqual([
    {
      path: group === '' ? key : `${group}.${key}`,
      wrong: 'No input has this name.',
      wouldDo: expect.anything(),
    },
  ])
  expect(reading.problems[0].wouldDo).toMatch(meant)
})

it('a name in a value written out is told too, and a choice has no bounds', () => {
  expect(problemOf({ 'heat.air': { value: '25 °C', sorce: 'x' } })).toMatchObject({
    path: 'heat.air.sorce',
    wouldDo: 'Did you mean "source"?',
  })
  expect(pathsOf({ 'heat.cooling': { value: 'none', low: 'shaft fan' } })).toEqual(['heat.cooling.low'])
})

it('100 000 steps are refused as too many, whatever is in them', () => {
  const steps = Array(100_000).fill({ name: 'a', lasts: '1 s' })
  expect(problemOf({ 'duty.phases': steps })).toEqual({
    path: 'duty.phases',
    wrong: '100000 steps are more than one cycle can hold.',
    wouldDo: 'Up to 10000.',
  })
  expect(pathsOf({ 'duty.phases': Array(100_000).fill(5), 'supply.volts': 'x' })).toEqual([
    'duty.phases',
    'supply.volts',
  ])
})
