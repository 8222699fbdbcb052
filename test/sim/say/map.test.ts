// The map in words: what ends it and when, what limits it, and a table of round speeds and torques.
import { expect, it } from 'vitest'
import {
  classWords,
  endWords,
  limitWords,
  markWords,
  neverSentence,
  plainWords,
  pointWords,
} from '../../../sim/say/map.ts'
import { clockTime } from '../../../sim/say/number.ts'
import { mapLines, mapTable } from '../../../sim/say/mapReport.ts'
import { finish } from '../../../sim/run.ts'
import { heatMap, mapPoint, mapSpec } from '../../../sim/studies/map.ts'
import type { MapPoint } from '../../../sim/studies/map/warming.ts'
import { points } from '../../../sim/studies/points.ts'
import type { Job } from '../../../sim/job.ts'
import { jobs } from '../studies/heldRuns.ts'
import { METRIC as metric, US as us } from './units.ts'

const [mill] = jobs
const mapOf = (job: Job) => {
  const spec = mapSpec(job, { speeds: 3, torques: 3 })
  return heatMap(job, spec, finish(points<'map'>(spec)))
}
const map = mapOf(mill)
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', '')
const point = (part: Partial<MapPoint>): MapPoint => ({
  seconds: 1530,
  ends: 'opens',
  classAt: Infinity,
  speed: 36,
  limit: 'none',
  limitedAt: Infinity,
  settled: null,
  ...part,
})

it('says what ends it', () => {
  const said = (part: Partial<MapPoint>) => plain(endWords(point(part), map))
  expect(said({})).toBe('the cutoff opens in 25 min 30 s')
  expect(said({ seconds: Infinity, ends: null })).toBe('the cutoff never opens')
  expect(said({ seconds: 95, ends: 'burns' })).toBe(
    'the winding burns out in 1 min 40 s, and nothing stops it',
  )
  expect(said({ seconds: 0 })).toBe('the cutoff is open already')
  expect(endWords(point({ seconds: Infinity, ends: null }), { fitted: false })).toBe(
    'the winding keeps its class for good',
  )
})

it('says what keeps it from its speed, from the start or later', () => {
  const said = (part: Partial<MapPoint>) => plain(limitWords(point({ ...part, speed: 30 }), us))
  expect(said({})).toBe('')
  expect(said({ limit: 'stall' })).toBe('it stands: more than the controller’s current limit holds')
  expect(said({ limit: 'current' })).toBe('the current limit holds it at 286 rpm')
  expect(said({ limit: 'slip' })).toBe('the belt slips')
  expect(said({ limit: 'voltage' })).toBe('the volts give only 286 rpm')
  expect(said({ limitedAt: 0 })).toBe('the current limit keeps it from its speed')
  expect(said({ limit: 'voltage', limitedAt: 600 })).toBe(
    'the volts give only 286 rpm; the current limit takes its speed at 10 min',
  )
  expect(said({ ends: null, limitedAt: 600 })).toBe('')
})

it('says where the winding passes its class first, and what keeps it from its speed', () => {
  expect(plain(classWords(point({ classAt: 600 })))).toBe(
    'the winding passes its class before that, at 10 min',
  )
  expect(plain(classWords(point({ classAt: 600, seconds: Infinity, ends: null })))).toBe(
    'the winding passes its class after 10 min',
  )
  expect(classWords(point({ classAt: 600, ends: 'class' }))).toBe('')
  expect(limitWords(point({ limit: 'stall', limitedAt: 0 }), us)).toMatch(/^it stands/)
  expect(plain(limitWords(point({ limitedAt: 90 }), us))).toBe(
    'the current limit takes its speed at 1 min 30 s',
  )
  expect(plain(limitWords(point({ limit: 'voltage', speed: 100 }), us))).toBe('the volts give only 955 rpm')
  expect(limitWords(point({}), us)).toBe('')
})

it('tells a point and the job’s step in both units', () => {
  const speed = (350 * Math.PI) / 30
  const found = mapPoint(mill.parts, 'none', speed, 8)
  expect(plain(pointWords(found, speed, 8, map, metric))).toMatch(
    /^350 rpm, 8\.0 N·m: the cutoff opens in 1\d min/,
  )
  expect(plain(pointWords(found, speed, 8, map, us))).toMatch(/^350 rpm, 5\.9 lbf·ft: /)
  expect(plain(markWords(map, map.panels[0], 0, us))).toMatch(
    /^Milling without a pause: the cutoff opens in 25 min \d0 s; the winding passes its class before that, at 12 min/,
  )
  // With the fan a hundredth of the torque decides: no time is given.
  expect(map.panels[1].edges).toEqual([true])
  expect(plain(markWords(map, map.panels[1], 0, us))).toContain('just on the edge')
  expect(plain(neverSentence(map, map.panels[1], us))).toMatch(
    /^With the shaft fan the cutoff never opens up to \d\.\d lbf·ft at 112 rpm, /,
  )
  expect(plainWords(map)).toContain('dashed red line')
})

it('with no cutoff it says what the minutes count to', () => {
  const bare = mapOf({ ...mill, parts: { ...mill.parts, cutoff: { ...mill.parts.cutoff, fitted: 'none' } } })
  expect(plainWords(bare)).toMatch(/^No cutoff is fitted/)
  expect(plain(markWords(bare, bare.panels[0], 0, us))).toContain('the winding passes its class in 12 min')
  expect(mapLines('Mill', bare, us)[1]).toMatch(/^Minutes until the winding passes its class, /)
})

it('just on the edge, and where the winding keeps its class all the way, in the words of each', () => {
  const edge = { ...map.panels[0], edges: [true] }
  expect(plain(markWords(map, edge, 0, us))).toContain(
    'just on the edge: the cutoff opens after hours, or never',
  )
  expect(plain(markWords({ ...map, fitted: false }, edge, 0, us))).toContain(
    'just on the edge: the winding passes its class after hours, or never',
  )
  const cool = map.panels.map((panel) => ({
    ...panel,
    columns: panel.columns.map((column) => ({ ...column, cool: column.never })),
  }))
  expect(plainWords({ ...map, panels: cool })).toBe('Plain: as long as you like.')
})

it('the table marks a belt that slips and volts that run short', () => {
  const belt = { ...mill.parts.belt, section: 'A', carries: 5, carriesAt: 0 } as const
  const slipping = { ...mill, parts: { ...mill.parts, belt } }
  const short = { ...mill, parts: { ...mill.parts, supply: { ...mill.parts.supply, volts: 60 } } }
  const cells = (job: Job) => {
    const found = mapOf(job)
    return mapTable(found, found.panels[0], metric).rows.flatMap(([, ...row]) => row)
  }
  const marked = (job: Job, mark: string) => cells(job).filter((cell) => cell.endsWith(mark)).length
  expect(marked(mill, 's')).toBe(0)
  expect(marked(slipping, 's')).toBeGreaterThan(0)
  expect(marked(short, 'v')).toBeGreaterThan(marked(mill, 'v'))
})

it('the table has round speeds across and round torques down, and marks what stands', () => {
  const { head, rows } = mapTable(map, map.panels[0], metric)
  expect(head.map(plain)).toEqual(['N·m', '200 rpm', '400 rpm', '600 rpm', '800 rpm', '1000 rpm'])
  expect(rows.map(([torque]) => Number(torque))).toEqual([16, 14, 12, 10, 8, 6, 4, 2, 0])
  expect(rows.at(-1)?.slice(1)).toEqual(['never', 'never', 'never', 'never', 'never'])
  expect(rows[0].slice(1).every((text) => text.endsWith('!'))).toBe(true)
  const found = mapPoint(mill.parts, 'none', (400 * Math.PI) / 30, 8)
  expect(rows[4][2]).toBe(`${clockTime(found.seconds)}*`)
})
