// The colours of the sheet, from its tokens: text stands out, lines are told apart by everyone, heat reads without colour.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '../house/tree.ts'
import { BLIND, contrast, distance, lab, linear, seen, VISIONS } from './colour.ts'

const css = readFileSync(join(root, 'ui/tokens.css'), 'utf8')
const dark = css.indexOf('[data-theme="dark"]')

/** Name → "#rrggbb" of every colour set in a piece of the style sheet. */
const coloursIn = (text: string): Record<string, string> =>
  Object.fromEntries(
    [...text.matchAll(/--([a-z0-9-]+): (#[0-9a-f]{6});/g)].map(([, name, hex]) => [name, hex]),
  )
const THEMES = {
  light: coloursIn(css.slice(0, dark)),
  dark: coloursIn(css.slice(dark)),
} as const

/** What is written in which colour, on what. */
const WRITTEN: readonly (readonly [ground: string, texts: readonly string[]])[] = [
  ['paper', ['ink', 'ink2', 'ink3', 'act', 'bad', 'ok', 'series-a', 'series-b', 'series-c', 'series-d']],
  ['raise', ['ink', 'ink2', 'ink3', 'act', 'bad', 'ok']],
  ['bench', ['ink', 'ink2', 'act']],
  ['act-soft', ['ink', 'ink2', 'act', 'bad']],
  ['bad-soft', ['ink', 'ink2', 'act', 'bad']],
  ['act', ['act-ink']],
]
/** Lines and edges that something depends on: on paper, and through a tinted stretch of a chart. */
const SERIES = ['series-a', 'series-b', 'series-c', 'series-d']
const DRAWN: readonly (readonly [ground: string, lines: readonly string[]])[] = [
  ['paper', ['ink3', 'act', 'bad', 'ok', 'focus', 'hatch', ...SERIES]],
  ['act-soft', ['act', 'bad', ...SERIES]],
]
/** Hairlines that nothing depends on: rows and grids are told apart by their place too. */
const FAINT = ['rule', 'grid']
const HEAT = ['heat-20', 'heat-60', 'heat-90', 'heat-120', 'heat-160']

/** Least contrast of text, and of what is drawn: WCAG 2.2, 1.4.3 and 1.4.11. */
const TEXT = 4.5
const LINE = 3
/** Colours this far apart are told apart beside each other on thin lines (our own choice; 2.3 can just be seen). */
const APART = 20

describe.each(Object.entries(THEMES))('%s', (_theme, colours) => {
  it('every colour has its part', () => {
    const used = [...WRITTEN, ...DRAWN].flatMap(([ground, marks]) => [ground, ...marks])
    const parts = [...used, ...FAINT, ...HEAT]
    expect(Object.keys(colours).sort()).toEqual([...new Set(parts)].sort())
  })

  it.each(WRITTEN)('text on %s has contrast', (ground, texts) => {
    const pale = texts.map((text) => [text, contrast(colours[text], colours[ground])] as const)
    expect(pale.filter(([, ratio]) => !(ratio >= TEXT))).toEqual([])
  })

  it.each(DRAWN)('lines on %s have contrast', (ground, lines) => {
    const pale = lines.map((line) => [line, contrast(colours[line], colours[ground])] as const)
    expect(pale.filter(([, ratio]) => !(ratio >= LINE))).toEqual([])
  })

  it.each(VISIONS)('lines of one dash are told apart by colour: %s', (vision) => {
    const lines = [
      ['series-a', 'solid'],
      ['series-b', 'solid'],
      ['series-c', dash('series-c')],
      ['series-d', dash('series-d')],
      ['bad', 'solid'],
    ] as const
    const alike = lines.flatMap(([one, its], n) =>
      lines.slice(n + 1).flatMap(([other, others]) => {
        const away = distance(seen(colours[one], vision), seen(colours[other], vision))
        return its === others && !(away >= APART) ? [`${one} and ${other}: ${away.toFixed(1)}`] : []
      }),
    )
    expect(alike).toEqual([])
  })

  it.each(VISIONS)('heat gets darker, or brighter, all the way: %s', (vision) => {
    const lights = HEAT.map((stop) => lab(seen(colours[stop], vision))[0])
    const steps = lights.slice(1).map((light, n) => Math.sign(light - lights[n]))
    expect(new Set(steps).size, lights.map((light) => light.toFixed(0)).join(' ')).toBe(1)
  })
})

/** Dash of a series' lines, as the tokens and the charts' styles have it. */
function dash(series: 'series-c' | 'series-d'): string {
  const marks = readFileSync(join(root, 'ui/plot/markStyles.ts'), 'utf8')
  expect(marks).toContain(`stroke-dasharray: var(--dash-${series})`)
  const found = new RegExp(`--dash-${series}: ([0-9. ]+);`).exec(css)?.[1]
  expect(found).toBeTruthy()
  return found!
}

describe('the measure itself', () => {
  it('contrast: black on white is 21, #777777 on white 4.48 (the usual example of just too pale, from memory)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10)
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
    expect(contrast('#ffffff', '#777777')).toBe(contrast('#777777', '#ffffff'))
  })

  it('lightness: white 100, black 0, middle grey #777777 50 (CIE 15)', () => {
    expect(lab(linear('#ffffff'))[0]).toBeCloseTo(100, 6)
    expect(lab(linear('#000000'))[0]).toBeCloseTo(0, 6)
    expect(lab(linear('#777777'))[0]).toBeCloseTo(50, 0)
    for (const part of lab(linear('#808080')).slice(1)) expect(Math.abs(part)).toBeLessThan(0.1)
  })

  it('the colour-blind see greys as they are, and a red and a green of one lightness nearly alike', () => {
    for (const matrix of Object.values(BLIND))
      for (const row of matrix) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5)
    const [red, green] = ['#b85c2e', '#7a7a2e']
    for (const vision of ['protanopia', 'deuteranopia'] as const)
      expect(distance(seen(red, vision), seen(green, vision))).toBeLessThan(
        distance(linear(red), linear(green)) / 2,
      )
  })
})
