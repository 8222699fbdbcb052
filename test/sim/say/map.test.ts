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

it('the table has round speeds across and round torques down, and marks what stands', () => {
  const { head, rows } = mapTable(map, map.panels[0], metric)
  expect(head.map(plain)).toEqual(['N·m', '200 rpm', '400 rpm', '600 rpm', '800 rpm', '1000 rpm'])
  expect(rows.map(([torque]) => Number(torque))).toEqual([16, 14, 12, 10, 8, 6, 4, 2, 0])
  expect(rows.at(-1)?.slice(1)).toEqual(['never', 'never', 'never', 'never', 'never'])
  expect(rows[0].slice(1).every((text) => text.endsWith('!'))).toBe(true)
  const found = mapPoint(mill.parts, 'none', (400 * Math.PI) / 30, 8)
  expect(rows[4][2]).toBe(`${clockTime(found.seconds)}*`)
})
