// The grid in words: axes by name, cells in the reader's units, least and most, and what fails marked.
import { expect, it } from 'vitest'
import type { FigureName } from '../../../sim/studies/figures.ts'
import { FIGURE_NAMES } from '../../../sim/studies/figures.ts'
import type { GridPoint, GridSpec, Trouble } from '../../../sim/studies/grid.ts'
import {
  axisNumber,
  axisWords,
  cellSentence,
  cellWords,
  crossingName,
  figureWords,
  gridLines,
  gridSentence,
  valueWords,
} from '../../../sim/say/grid.ts'
import { scenario } from '../../jobs.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

const given = scenario()
const spec: GridSpec = {
  study: 'grid',
  scenario: given,
  x: { path: 'belt.machinePulley', texts: ['8 in', '10 in'] },
  y: { path: 'heat.cooling', texts: ['none', 'blower'] },
}
const none = Object.fromEntries(FIGURE_NAMES.map((name) => [name, null])) as Record<FigureName, number | null>
const point = (values: Partial<typeof none>, trouble: Trouble | null = null): GridPoint => ({
  ok: true,
  figures: { ...none, ...values },
  trouble,
})
const points: readonly GridPoint[] = [
  point({ firstOpening: 1400, slowest: 30, hottestWinding: 150 }),
  point({ firstOpening: 5000, slowest: 31, hottestWinding: 140 }),
  point({ hottestWinding: 90, slowest: 0.01 }, 'stalls'),
  { ok: false, problem: { path: 'heat.air', wrong: 'Too cold.', wouldDo: 'Warm up.' } },
]
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ')

it('names axes, a step by its name, choices by their words', () => {
  expect(axisWords(given, 'belt.machinePulley')).toBe('Machine pulley')
  expect(axisWords(given, 'duty.phases.1.lasts')).toMatch(/^Lasts, \w/)
  expect(plain(valueWords(given, 'belt.machinePulley', '8 in'))).toBe('8 in')
  expect(valueWords(given, 'heat.cooling', 'blower')).toContain('blower')
  expect(plain(crossingName(given, { 'belt.machinePulley': '8 in', 'heat.air': '30 °C' }))).toBe(
    'Machine pulley 8 in, air around the motor 30 °C',
  )
})

it('what is no longer there keeps its path or its text; a step without a name has its number', () => {
  // The step names no cut any more.
  expect(axisWords(given, 'duty.phases.1.cut.depth')).toBe('duty.phases.1.cut.depth, rest')
  expect(axisWords(given, 'heat.nothing')).toBe('heat.nothing')
  expect(axisWords(scenario({ 'duty.phases.1.name': ' ' }), 'duty.phases.1.lasts')).toBe('Lasts, step 2')
  expect(valueWords(given, 'heat.cooling', 'breeze')).toBe('breeze')
  expect(crossingName(given, { 'heat.nothing': null })).toBe('heat.nothing ')
})

it('places an axis by number, and a choice nowhere', () => {
  expect(axisNumber(given, 'heat.air', '104 °F')).toBeCloseTo(40, 9)
  expect(axisNumber(given, 'heat.air', 'hot')).toBeNull()
  expect(axisNumber(given, 'heat.cooling', 'none')).toBeNull()
})

it('says what a figure is in, where it is in anything', () => {
  expect(figureWords('classMargin', US)).toBe('Left to the class limit, °C')
  expect(figureWords('classMargin', FAHRENHEIT)).toBe('Left to the class limit, °F')
  expect(figureWords('firstOpening', US)).toBe('Cutoff first opens at, min:s')
  expect(figureWords('timesOpen', US)).toBe('Times the cutoff opens')
  expect(plain(cellSentence('hottestWinding', points[0], FAHRENHEIT))).toBe('302 °F')
})

it('writes cells in the reader’s units, and words where there is no number', () => {
  expect(cellWords('firstOpening', points[0], US)).toBe('23:20')
  expect(cellWords('firstOpening', points[2], US)).toBe('stalls')
  expect(cellWords('firstOpening', point({}), US)).toBe('never')
  expect(cellWords('slowest', points[0], US)).toBe('286')
  expect(cellWords('slowest', points[2], US)).toBe('0†')
  expect(cellWords('slowest', point({}), US)).toBe('—')
  expect(cellWords('firstOpening', points[3], US)).toBe('—')
  expect(plain(cellSentence('firstOpening', points[0], US))).toBe('23 min 20 s')
  expect(cellSentence('firstOpening', points[2], US)).toBe('never; the spindle stops')
  expect(cellSentence('firstOpening', points[3], US)).toBe('no job: Too cold.')
  expect(figureWords('hottestWinding', METRIC)).toBe('Hottest winding, °C')
})

it('says least and most, how many have none, and what fails', () => {
  expect(plain(gridSentence(spec, points, 'firstOpening', US))).toBe(
    'Cutoff first opens at: least 23 min 20 s at 8 in and No fan: open frame, fan or flywheel removed; most 1 h 23 min at 10 in and No fan: open frame, fan or flywheel removed. In 1 of 4: never. In 1 (†) the spindle stops or the winding burns out. For 1 there is no job.',
  )
  expect(gridSentence(spec, [point({}), point({}), undefined, undefined], 'firstOpening', US)).toBe(
    'Cutoff first opens at: never in all of them.',
  )
  expect(gridSentence(spec, [points[3]], 'firstOpening', US)).toBe('There is no job at any of them.')
  const same = [point({ peakAmps: 5 }), point({ peakAmps: 5 })]
  expect(plain(gridSentence(spec, same, 'peakAmps', US))).toContain('5.0 A at 8 in')
})

it('lays a table out: x across, y down, columns in line', () => {
  const lines = gridLines('The job', spec, points, 'firstOpening', US)
  expect(lines[0]).toBe('The job')
  const table = lines.slice(-3)
  expect(table[1]).toMatch(/^No fan.* 23:20 +1:23:20$/)
  expect(table[2]).toMatch(/^Separate blower.* stalls +—$/)
  expect(new Set(table.map((line) => line.length)).size).toBe(1)
})
