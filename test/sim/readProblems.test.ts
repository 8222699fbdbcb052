// A value that cannot be read or taken is told by its path, what is wrong and what would do.
import { expect, it } from 'vitest'
import { areTold, pathsOf, problemOf, problemsOf } from './problems.ts'

areTold([
  [
    'an unknown unit',
    { 'supply.volts': '12 furlongs' },
    'supply.volts',
    /"furlongs" is not a unit of voltage/,
    /V or mV/,
  ],
  [
    'a wrong dimension',
    { 'supply.volts': '12 A' },
    'supply.volts',
    /is a current; a voltage is wanted/,
    /90 V/,
  ],
  ['no unit', { 'supply.volts': '12' }, 'supply.volts', /has no unit/, /12 V/],
  ['NaN', { 'supply.volts': 'NaN V' }, 'supply.volts', /"NaN V" does not begin with a number/, /90 V/],
  ['nothing', { 'supply.volts': '' }, 'supply.volts', /Nothing is written/, /90 V/],
  [
    'a number',
    { 'supply.volts': 120 },
    'supply.volts',
    /must be a text with a unit/,
    /Between 1 V and 400 V/,
  ],
  [
    'a negative resistance',
    { 'winding.resistance': '-1 Ω' },
    'winding.resistance',
    /-1 Ω is less than any winding/,
    /0\.001 Ω/,
  ],
  [
    'no resistance',
    { 'winding.resistance': '0 Ω' },
    'winding.resistance',
    /touch the probes together/,
    /0\.001 Ω/,
  ],
  [
    'a speed no brush stands',
    { 'plate.speed': '40000 rpm' },
    'plate.speed',
    /more than brushes stand/,
    /Did you mean 4000 rpm/,
  ],
  [
    'a negative time',
    { 'duty.phases.0.lasts': '-1 s' },
    'duty.phases.0.lasts',
    /less than no time/,
    /Between 0 s/,
  ],
  [
    'an input without its value',
    { 'belt.motorPulley': {} },
    'belt.motorPulley',
    /Motor pulley must be a text with a unit/,
    /Between 5 mm and 3 m is sensible/,
  ],
  [
    'a word that is no choice',
    { 'heat.cooling': 'big fan' },
    'heat.cooling',
    /Cooling cannot be "big fan"/,
    /"shaft fan"/,
  ],
  [
    'a low bound that is garbage',
    { 'heat.air': { value: '25 °C', low: 'cold' } },
    'heat.air',
    /low bound beside it: "cold"/,
    /°C/,
  ],
  [
    'a low bound over the value',
    { 'heat.air': { value: '25 °C', low: '30 °C' } },
    'heat.air',
    /30 °C, is on the wrong side/,
    /in this order/,
  ],
  [
    'a high bound under the value',
    { 'heat.air': { value: '25 °C', high: '20 °C' } },
    'heat.air',
    /20 °C, is on the wrong side/,
    /in this order/,
  ],
  [
    'a source that is no text',
    { 'heat.air': { value: '25 °C', source: 5 } },
    'heat.air',
    /Where it comes from/,
    /300/,
  ],
])

it('one comma and three digits are refused with both readings offered', () => {
  expect(problemOf({ 'plate.speed': '4,000 rpm' })).toEqual({
    path: 'plate.speed',
    wrong: '"4,000" can be read two ways.',
    wouldDo: 'Write 4000 or 4.000.',
    offers: ['4000 rpm', '4.000 rpm'],
  })
})

it('five mistakes give those five paths', () => {
  const paths = pathsOf({
    'supply.volts': '12 furlongs',
    'winding.resistance': '-1 Ω',
    'cutoff.reclosesAt': '118 °C',
    'duty.phases.1.lasts': 'NaN s',
    'belt.machinePulley': null,
  })
  expect([...paths].sort()).toEqual([
    'belt.machinePulley',
    'cutoff.reclosesAt',
    'duty.phases.1.lasts',
    'supply.volts',
    'winding.resistance',
  ])
})

it('no file gets more than fifty problems', () => {
  expect(problemsOf({ 'duty.phases': Array(2000).fill({ name: 'a', lasts: 'x' }) })).toHaveLength(50)
})
