// A field shows what was typed in the unit it was typed in, converts for other units, and stores what a person meant.
import { expect, it } from 'vitest'
import type { QuantityField } from '../../sim/field.ts'
import { parseQuantity } from '../../sim/quantity.ts'
import { inputsOf } from '../../sim/scenario.ts'
import type { Units } from '../../sim/say/units.ts'
import { GROUPS, stationOf } from '../../ui/edit/groups.ts'
import { fieldText, storedText } from '../../ui/edit/shownText.ts'
import { example } from './demo.ts'

const us: Units = { system: 'us', temperature: '°F' }
const metric: Units = { system: 'metric', temperature: '°C' }
const of = (dimension: QuantityField['dimension']): QuantityField => ({
  kind: 'quantity',
  label: 'x',
  dimension,
  low: '0',
  high: '1',
})

it.each([
  ['length', '2 1/2 in', us, '2 1/2', 'in'],
  ['length', '2.50 in', us, '2.50', 'in'],
  ['length', '2 1/2 in', metric, '63.5', 'mm'],
  ['length', '5 ft 3 in', us, '63', 'in'],
  ['temperature', '120 °C', us, '248', '°F'],
  ['temperature', '-40 °C', us, '-40', '°F'],
  ['power', '1.6 hp', metric, '1193', 'W'],
  ['time', '3 h', us, '3', 'h'],
  ['time', '3 h', metric, '3', 'h'],
  ['motor constant', '26.2 V/krpm', us, '26.2', 'V/krpm'],
  ['share', '95 %', us, '95', '%'],
  ['number', '1.05', us, '1.05', ''],
  ['torque', 'quite a lot', us, 'quite a lot', ''],
  ['torque', '', us, '', 'lbf·ft'],
] as const)('%s "%s"', (dimension, stored, units, text, unit) => {
  expect(fieldText(of(dimension), stored, units)).toEqual({ text, unit })
})

it.each([
  ['3', 'in', '3 in'],
  ['63 mm', 'in', '63 mm'],
  ['2 1/2', 'in', '2 1/2 in'],
  ['40,000', 'rpm', '40,000 rpm'],
  ['0.9', '%', '0.9 %'],
  ['90 %', '%', '90 %'],
  ['5 ft 3', 'in', '5 ft 3 in'],
  ['1:30', 'min', '1:30'],
  ['1.05', '', '1.05'],
  ['  ', 'in', null],
  ['wide', 'in', 'wide'],
] as const)('typed "%s" beside %s', (typed, unit, stored) => {
  expect(storedText(typed, unit)).toBe(stored)
})

it('every number of every example shows in both systems and, stored again as shown, comes back within its digits', () => {
  let seen = 0
  for (const name of ['appleMill', 'bowlLathe', 'bandSaw'])
    for (const { field, text } of inputsOf(example(name)))
      for (const units of [us, metric])
        if (field.kind === 'quantity' && text !== '') {
          const shown = fieldText(field, text, units)
          const back = parseQuantity(storedText(shown.text, shown.unit) ?? '', field.dimension)
          const meant = parseQuantity(text, field.dimension)
          if (!back.ok || !meant.ok) throw new Error(`${field.label}: ${text} → ${shown.text} ${shown.unit}`)
          expect(Math.abs(back.value - meant.value)).toBeLessThanOrEqual(
            Math.max(1e-3 * Math.abs(meant.value), 1e-12),
          )
          seen++
        }
  expect(seen).toBeGreaterThan(200)
})

it('every input stands at a station, under one of its headings', () => {
  const outside = /^(format|name|about|variants)/
  const named = Object.entries(GROUPS).flatMap(([station, groups]) =>
    groups.flatMap(({ paths }) => paths.map((path) => ({ station, path }))),
  )
  for (const { path } of inputsOf(example('appleMill'))) {
    if (outside.test(path)) continue
    const station = stationOf(path)
    expect(station, path).not.toBeNull()
    const shown = named.some((each) => each.station === station && `${path}.`.startsWith(`${each.path}.`))
    expect(shown || path.startsWith('duty.'), path).toBe(true)
  }
})
