// The charts on reference runs: what they read, say and tabulate agrees with the trace; surges do not sway the mean.
import { beforeAll, expect, it } from 'vitest'
import { type ReferenceFile, referenceJob } from '../../../scenarios/referenceRuns.ts'
import type { Duty } from '../../../sim/duty.ts'
import { finish, run } from '../../../sim/run.ts'
import { valueAt } from '../../../sim/trace.ts'
import { currentChart } from '../../../ui/plot/currentChart.ts'
import { dutySteps } from '../../../ui/plot/dutyChart.ts'
import { exact, meanSeconds, surging } from '../../../ui/plot/reduce.ts'
import { ribbons, shortened } from '../../../ui/plot/ribbons.ts'
import { fitting, type Shown } from '../../../ui/plot/shown.ts'
import { speedChart } from '../../../ui/plot/speedChart.ts'
import { temperatureChart } from '../../../ui/plot/temperatureChart.ts'
import { type View, viewOf } from '../../../ui/plot/view.ts'
import runs from '../../checks/runs.json'

const { base, runs: references } = runs as unknown as ReferenceFile
const shownAs = (name: string, series: Shown['series'], active: boolean): Shown => {
  const job = referenceJob(base, references.find((reference) => reference.name === name)!, 'default')
  return { id: name, name, series, active, trace: finish(run(job)).trace, job, ratio: 3 }
}
let shown: Shown[]
let view: View
beforeAll(() => {
  shown = [shownAs('shaft-fan', 'A', false), shownAs('fan-lost', 'B', true)]
  view = viewOf({ shown, units: { system: 'us', temperature: '°F' }, from: 0, to: 2700, width: 1256, k: 1 })!
})

it('reads the moment in the reader’s unit, and nothing after a run’s end', () => {
  const spindle = (valueAt(shown[1].trace, 'speed', 625) / 3) * (30 / Math.PI)
  expect(speedChart(view).readings(625)[1]).toEqual({
    series: 'B',
    active: true,
    text: (Math.round(spindle / 10) * 10).toString().replace('1', '1\u202f'),
  })
  const fahrenheit = valueAt(shown[0].trace, 'switchC', 625) * 1.8 + 32
  expect(temperatureChart(view).readings(625)[0].text).toBe(fahrenheit.toFixed(0))
  expect(
    currentChart(view)
      .readings(3000)
      .map(({ text }) => text),
  ).toEqual([valueAt(shown[0].trace, 'current', 3000).toFixed(1), '—'])
})

it('tabulates a row a minute', () => {
  const { head, rows } = temperatureChart(view).table()
  expect(head).toHaveLength(5)
  expect(rows).toHaveLength(46)
  expect(rows[20].slice(0, 2)).toEqual([
    '20:00',
    (valueAt(shown[1].trace, 'windingC', 1200) * 1.8 + 32).toFixed(0),
  ])
})

it('says when the cutoff opens and recloses', () => {
  const said = temperatureChart(view).words
  expect(said).toContain('the cutoff opens at 20:40, 31:20, 41:40 and recloses at 25:30 and 37:10')
  expect(said).toContain('shaft-fan: at most')
  expect(ribbons(view).words).toMatch(/fan-lost: stopped 3 times by the cutoff.*/)
  expect(ribbons(view).table().rows).toHaveLength(4)
})

it('draws no mean across the controller’s edges: off is off, steady is steady', () => {
  const variant = shown[1]
  const { bands } = surging(variant.trace, variant.job.duty, 'speed', view)
  const first = bands.find(({ t }) => t[0] > 60 && t[0] < 70)!
  expect(Math.min(...first.least)).toBeGreaterThan(370)
  expect(bands.every(({ t }) => t.every((time, n) => n === 0 || time >= t[n - 1]))).toBe(true)
})

it('draws every row when zoomed in, and few when not', () => {
  const { trace } = shown[1]
  const near = exact(trace, 'current', { from: 600, to: 610, perPixel: 1e-7 })
  const inside = [...trace.time].filter((t) => t >= 600 && t <= 610)
  expect(near.t.filter((t) => t >= 600 && t <= 610)).toEqual(inside)
  expect(exact(trace, 'current', view).t.length).toBeLessThan(4 * 1100)
})

const surgingDuty = (every: number): Duty => ({
  seconds: 600,
  startC: 20,
  phases: [
    {
      name: 'mill',
      seconds: 60,
      speed: 30,
      cut: { kind: 'torque', torque: 4 },
      surge: { torque: 6, every, lasts: 2 },
    },
    { name: 'off', seconds: 40, speed: 0, cut: { kind: 'torque', torque: 4 }, surge: null },
  ],
})

it('averages over whole surges near 15 s', () => {
  expect([12, 7, 4, 25, 200].map((every) => meanSeconds(surgingDuty(every), 1))).toEqual([12, 14, 16, 25, 15])
  expect(meanSeconds(surgingDuty(12), 60)).toBe(120)
})

it('steps through the duty with its surges, off at rest, as one block where they are too close', () => {
  const { base: cuts, surges } = dutySteps(surgingDuty(20), 0, 160, 1)
  expect(cuts.map(({ from, until, torque }) => [from, until, Math.round(torque)])).toEqual([
    [0, 60, 4],
    [60, 100, 0],
    [100, 160, 4],
  ])
  expect(surges.map(({ from, until }) => [from, until])).toEqual([
    [0, 2],
    [20, 22],
    [40, 42],
    [100, 102],
    [120, 122],
    [140, 142],
  ])
  expect(surges[0].torque).toBeCloseTo(10, 9)
  expect(dutySteps(surgingDuty(20), 0, 160, 30).surges).toHaveLength(2)
  expect(dutySteps(surgingDuty(20), 0, 600, 200).base).toEqual([
    { from: 0, until: 600, torque: expect.closeTo(4, 9) },
  ])
})

it('keeps the active variant among those drawn', () => {
  const four = ['A', 'B', 'C', 'D'].map((id) => ({ id, active: id === 'D' }) as Shown)
  expect(fitting(four, 3).map(({ id }) => id)).toEqual(['A', 'B', 'D'])
  expect(fitting(four, 2).map(({ id }) => id)).toEqual(['A', 'D'])
  expect(fitting([], 3)).toEqual([])
  expect(viewOf({ shown: [], units: view.units, from: 0, to: 1, width: 900, k: 1 })).toBeUndefined()
  expect(viewOf({ shown, units: view.units, from: 0, to: 1, width: 0, k: 1 })).toBeUndefined()
})

it('shortens a name to its room', () => {
  expect(shortened('As found', 200, 13)).toBe('As found')
  expect(shortened('With shaft fan and a larger pulley', 100, 13)).toBe('With shaft fa…')
})
