// A log in the charts: every reading where it belongs, gaps left out, axes that hold it; and the chart of its fit.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { SVGTemplateResult } from 'lit'
import { beforeAll, expect, it } from 'vitest'
import { type Fit, fitWarmUp } from '../../../sim/identify/fit.ts'
import { type Log, readLog } from '../../../sim/identify/log.ts'
import { assemble } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { currentChart } from '../../../ui/plot/currentChart.ts'
import { readingPoints } from '../../../ui/plot/layers/points.ts'
import type { Shown } from '../../../ui/plot/shown.ts'
import { speedChart } from '../../../ui/plot/speedChart.ts'
import { temperatureChart } from '../../../ui/plot/temperatureChart.ts'
import { type View, viewOf } from '../../../ui/plot/view.ts'
import { warmUpChart } from '../../../ui/plot/warmUpChart.ts'
import { root } from '../../house/tree.ts'
import { demo, jobOf } from '../../jobs.ts'

const units = { system: 'us', temperature: '°C' } as const
let log: Log
let fit: Fit
let view: View
let plain: View
beforeAll(() => {
  const found = readLog(readFileSync(join(root, 'scenarios/appleMillWarmUp.csv'), 'utf8'))
  if (!found.ok) throw new Error(found.wrong)
  log = found.log
  const job = jobOf(demo('appleMill'))
  const fitted = fitWarmUp(log, job.parts)
  if (!fitted.ok) throw new Error(fitted.wrong)
  fit = fitted
  const ratio = assemble(job.parts).ratio
  const shown: Shown[] = [
    { id: 'a', name: 'As found', series: 'A', active: true, trace: finish(run(job)).trace, job, ratio },
  ]
  const asked = { shown, units, from: 0, to: 3600, width: 1256, k: 1 }
  plain = viewOf(asked)!
  view = viewOf({ ...asked, log })!
})

/** How often a text stands in a drawing, through all its parts. */
function count(drawing: unknown, text: string): number {
  if (Array.isArray(drawing)) return drawing.reduce((sum: number, each) => sum + count(each, text), 0)
  if (typeof drawing !== 'object' || drawing === null || !('strings' in drawing)) return 0
  const { strings, values } = drawing as SVGTemplateResult
  return strings.filter((part) => part.includes(text)).length + count(values, text)
}

it('draws a ring for each reading in the window, in all three charts, and none without a log', () => {
  const within = [...log.time].filter((t) => t <= 3600).length
  expect(within).toBeGreaterThan(30)
  for (const chart of [speedChart, currentChart, temperatureChart]) {
    expect(count(chart(view).still, '<circle'), chart.name).toBe(within)
    expect(count(chart(plain).still, '<circle'), chart.name).toBe(0)
  }
  expect(temperatureChart(view).hint).toContain('rings: can as logged')
  expect(temperatureChart(plain).hint).not.toContain('rings')
})

it('speeds of the motor stand at the spindle’s height', () => {
  const row = [...log.speed].findIndex((speed) => speed > 0)
  const { scales } = speedChart(view)
  const points = readingPoints(log.time, log.speed, scales, (speed) => speed / view.active.ratio)
  expect(points[row][1]).toBeCloseTo(scales.y(log.speed[row] / view.active.ratio), 6)
})

it('an axis holds what was logged, however far over the prediction', () => {
  const hot = { ...log, frameC: log.frameC.map((value) => value + 200), amps: log.amps.map((i) => 10 * i) }
  const over = { ...view, log: hot }
  for (const [chart, column] of [
    [temperatureChart, hot.frameC],
    [currentChart, hot.amps],
  ] as const) {
    const { scales } = chart(over)
    expect(scales.y(Math.max(...column.filter((value) => !Number.isNaN(value))))).toBeGreaterThanOrEqual(
      scales.box.top - 1e-6,
    )
  }
})

it('leaves out gaps and what cannot be told apart', () => {
  const { scales } = temperatureChart(view)
  const at = Float64Array.from([0, 60, 120, 121, 9e9])
  const column = Float64Array.from([20, Number.NaN, 30, 31, 40])
  expect(readingPoints(at, column, scales).map(([, y]) => y)).toEqual([scales.y(20), scales.y(30)])
})

it('the fit’s chart says, tabulates and draws what was read and what was fitted', () => {
  const chart = warmUpChart({ log, fit, units, width: 700, k: 1 })!
  const hottest = Math.max(...log.frameC.filter((value) => !Number.isNaN(value)))
  expect(chart.words).toContain(`Warm-up of 1:14:00: the can was read up to ${hottest.toFixed(0)} °C`)
  const { head, rows } = chart.table()
  expect(head).toHaveLength(5)
  expect(rows).toHaveLength(log.rows)
  expect(rows[30].slice(1, 3)).toEqual([log.frameC[30].toFixed(0), fit.frameC[30].toFixed(0)])
  // Once on the curve and once among the misses.
  expect(count(chart.drawn, '<circle')).toBe(2 * log.rows)
  expect(count(chart.drawn, '<rect')).toBe(
    2 * fit.windingReadC.filter((value) => !Number.isNaN(value)).length,
  )
})

it('there is no chart where there is no room', () => {
  expect(warmUpChart({ log, fit, units, width: 120, k: 1 })).toBeNull()
  expect(warmUpChart({ log, fit, units, width: 300, k: 1.25 })).not.toBeNull()
})
