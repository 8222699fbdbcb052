// A fitted warm-up in words: every sentence for what the log settled, all of it, some of it, none of it.
import { expect, it } from 'vitest'
import type { Fit } from '../../../sim/identify/fit.ts'
import { HEAT_NUMBERS } from '../../../sim/identify/heatPath.ts'
import { fitLines, heatInputs, hottestWords, missWords, settledWords } from '../../../sim/say/fit.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

/** A fit of made-up numbers: two of them, settled or not. */
const fitted = (settled: readonly [boolean, boolean], changes: Partial<Fit> = {}): Fit => ({
  ...({
    numbers: {
      windingCapacity: { value: 412.3, low: 350, high: 480, settled: settled[0] },
      windingToFrame: { value: 1.2345, low: 1, high: 1.5, settled: settled[1] },
    },
    frameMiss: 0.42,
    windingMiss: null,
    frameC: Float64Array.of(20, 71.6, 64),
    windingC: Float64Array.of(20, 98.2, 75),
    notes: [],
    next: [],
  } as unknown as Fit),
  ...changes,
})

it('names what the log settled and what not', () => {
  expect(settledWords(fitted([true, true]))).toBe('The log settles every number.')
  expect(settledWords(fitted([false, false]))).toMatch(
    /^The log settles only the whole of what the motor stores/,
  )
  expect(settledWords(fitted([true, false]))).toMatch(
    /^The log settles .*winding.*\. In their usual proportion stay .*\.$/,
  )
})

it('says how far the curve misses, in kelvin or in °F', () => {
  expect(plain(missWords(fitted([true, true]), METRIC))).toBe(
    'The curve misses the can by 0.4 K (root mean square).',
  )
  // 0.42 K · 1.8 = 0.756 °F
  expect(plain(missWords(fitted([true, true]), FAHRENHEIT))).toBe(
    'The curve misses the can by 0.8 °F (root mean square).',
  )
  expect(plain(missWords(fitted([true, true], { windingMiss: 1.26 }), US))).toBe(
    'The curve misses the can by 0.4 K and the winding by 1.3 K (root mean square).',
  )
  expect(plain(missWords(fitted([true, true], { frameMiss: null, windingMiss: 1.26 }), US))).toBe(
    'The curve misses the winding by 1.3 K (root mean square).',
  )
})

it('a line a number, in their order, with value, band and whether it is settled', () => {
  const lines = fitLines(fitted([true, false]), METRIC)
  expect(lines.map(({ name }) => name)).toEqual(
    HEAT_NUMBERS.filter((name) => name === 'windingCapacity' || name === 'windingToFrame'),
  )
  const winding = lines.find(({ name }) => name === 'windingCapacity')!
  expect(plain(winding.value)).toBe('412 J/K')
  expect(plain(winding.band)).toMatch(/350.*480/)
  expect(lines.map(({ settled }) => settled).sort()).toEqual([
    'kept in the usual proportion',
    'settled by the log',
  ])
})

it('tells the hottest, and writes lines for the job file', () => {
  expect(plain(hottestWords(fitted([true, true]), METRIC))).toBe(
    'On the curve the winding came to 98 °C and the frame to 72 °C.',
  )
  // 98.2 °C = 208.8 °F, 71.6 °C = 160.9 °F
  expect(plain(hottestWords(fitted([true, true]), FAHRENHEIT))).toBe(
    'On the curve the winding came to 209 °F and the frame to 161 °F.',
  )
  const inputs = heatInputs(fitted([true, false]), `${'x'.repeat(120)}.csv`)
  expect(inputs.windingCapacity).toEqual({
    value: '412 J/K',
    source: `measured: fitted to ${'x'.repeat(96)}.csv`,
    low: '350 J/K',
    high: '480 J/K',
  })
  expect(inputs.windingToFrame.source).toMatch(/, in the usual proportion$/)
  expect(inputs.windingToFrame.value).toBe('1.23 W/K')
})
