// Times and temperatures within their bands, rounded to the doubt.
import { expect, it } from 'vitest'
import { failWords, whenWords } from '../../../../sim/say/sure.ts'
import { heatBand, heatWords, timeBand, timeWords } from '../../../../sim/say/sure/bands.ts'
import { FAHRENHEIT, METRIC, US, visible } from '../units.ts'
import { LASTS, OPENS } from './sures.ts'

it('bands of times, rounded to their width', () => {
  const of = (low: number | null, high: number | null) => visible(timeBand({ low, high }))
  expect([
    of(900, 2340),
    of(1429, 9596),
    of(2400, null),
    of(null, null),
    of(1417, 1417),
    of(20, 45),
    of(5, 400),
    of(3500, 5900),
  ]).toMatchInlineSnapshot(`
    [
      "15 to 39~min",
      "20~min to 2~h 40~min",
      "40~min to never",
      "never",
      "23~min 40~s",
      "20~s to 45~s",
      "10~s to 6~min 40~s",
      "60 to 100~min",
    ]
  `)
})

it('a time within its band: the end that is never is left out, and no band is none', () => {
  const of = (t: number, low: number | null, high: number | null) => {
    const { when, likely } = timeWords(t, { low, mid: t, high })
    return visible(`${when} | ${likely}`)
  }
  expect([of(2400, 900, null), of(900, 900, null), of(1417, null, null)]).toMatchInlineSnapshot(`
    [
      "40~min | likely not before 15~min",
      "15~min | likely not before 15~min",
      "23~min 40~s | ",
    ]
  `)
  expect(
    whenWords({
      ...OPENS,
      given: { fate: 'lasts', t: null },
      t: { low: 900, mid: 2400, high: null },
    })?.replaceAll('\u00a0', ' '),
  ).toBe('40 min into the job, likely not before 15 min')
  expect(whenWords(LASTS)).toBeNull()
  expect(failWords({ ...LASTS, fails: null })).toBe('it lasts')
})

it('bands of temperatures', () => {
  const band = { low: 66.4, mid: 76, high: 90.6 }
  const none = { low: 76, mid: 76, high: 76.2 }
  expect(
    [US, METRIC, FAHRENHEIT].flatMap((units) => [
      visible(heatBand(band, units)),
      visible(heatWords(76, band, units)),
      visible(heatBand(none, units)),
      visible(heatWords(76, none, units)),
    ]),
  ).toMatchInlineSnapshot(`
    [
      "66 to 91~°C",
      "76~°C, likely between 66 and 91",
      "76~°C",
      "76~°C",
      "66 to 91~°C",
      "76~°C, likely between 66 and 91",
      "76~°C",
      "76~°C",
      "152 to 195~°F",
      "169~°F, likely between 152 and 195",
      "169~°F",
      "169~°F",
    ]
  `)
  expect(heatBand({ low: null, high: null }, US)).toBe('–')
})
