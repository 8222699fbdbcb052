// The heat scale and the ribbon's stretches: named stops, straight between them, one colour for near equals.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { HEAT_STOPS_C, heatColour } from '../../../ui/plot/heat.ts'
import { stretches } from '../../../ui/plot/layers/ribbon.ts'
import { root } from '../../house/tree.ts'

it('names the stops, mixes between, holds the ends', () => {
  expect(heatColour(-10)).toBe('var(--heat-20)')
  expect(heatColour(20)).toBe('var(--heat-20)')
  expect(heatColour(75)).toBe('color-mix(in srgb, var(--heat-90) 50.0%, var(--heat-60))')
  expect(heatColour(120)).toBe('color-mix(in srgb, var(--heat-120) 100.0%, var(--heat-90))')
  expect(heatColour(400)).toBe('var(--heat-160)')
  expect(heatColour(Number.NaN)).toBe('var(--heat-20)')
})

it('has every stop as a token in both themes, lightness running one way', () => {
  const css = readFileSync(join(root, 'ui/tokens.css'), 'utf8')
  const light = (hex: string) => {
    const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16))
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const ramps = HEAT_STOPS_C.map((stop) =>
    [...css.matchAll(new RegExp(`--heat-${stop}: (#[0-9a-f]{6})`, 'g'))].map(([, hex]) => light(hex)),
  )
  expect(ramps.map(({ length }) => length)).toEqual([2, 2, 2, 2, 2])
  for (let n = 1; n < ramps.length; n++) {
    expect(ramps[n][0]).toBeLessThan(ramps[n - 1][0])
    expect(ramps[n][1]).toBeGreaterThan(ramps[n - 1][1])
  }
})

it('joins neighbours of nearly one temperature', () => {
  expect(stretches([20.2, 20.6, 21.4, 30, 30], 100)).toEqual([
    { left: 100, right: 102, temperatureC: 20 },
    { left: 102, right: 103, temperatureC: 22 },
    { left: 103, right: 105, temperatureC: 30 },
  ])
  expect(stretches([], 0)).toEqual([])
})
