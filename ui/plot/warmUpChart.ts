// A warm-up and its fit: the readings, the curves laid through them, and by how much they miss.
import { svg, type SVGTemplateResult } from 'lit'
import type { Fit } from '../../sim/identify/fit.ts'
import type { Log } from '../../sim/identify/log.ts'
import { clockTime, grouped, show } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Table } from './chart.ts'
import { gridMark, timeTickMarks, valueTicks } from './layers/axis.ts'
import { gutterMarks, type GutterText } from './layers/labels.ts'
import { lineMark, polyline } from './layers/line.ts'
import { mostRead, pointsMark, readingPoints } from './layers/points.ts'
import { type Axis, type Box, type Scales, scalesFor, temperatureFloor, valueAxis } from './scales.ts'
import { timeTicks } from './time.ts'
import { TICK_ROOM } from './view.ts'

/** Heights of the two plots and what lies between, px before enlarging. */
const HEIGHTS = { curve: 240, misses: 60 } as const
const TOP = 9
const BETWEEN = 34
const FOOT = 30
/** Room beside the plot, px before enlarging. */
const GUTTERS = { left: 44, right: 118 } as const
const NARROW = { left: 40, right: 74 } as const
const ROW = 18

export interface WarmUp {
  readonly log: Log
  readonly fit: Fit
  readonly units: Units
  readonly width: number
  readonly k: number
}

export interface WarmUpChart {
  readonly height: number
  readonly drawn: SVGTemplateResult
  /** The chart in a sentence. */
  readonly words: string
  readonly table: () => Table
}

const known = (column: Float64Array): boolean => !column.every(Number.isNaN)

/** Lowest and highest of the misses, K, alike to both sides and at least ±1. */
function missAxis({ frameMisses, windingMisses }: Fit, units: Units): Axis {
  const factor = units.temperature === '°F' ? 1.8 : 1
  const most = [...frameMisses, ...windingMisses].reduce((top, miss) => Math.max(top, Math.abs(miss) || 0), 0)
  const step = [1, 2, 5, 10, 20, 50, 100].find((one) => one >= most * factor) ?? 200
  const ticks = [-step, 0, step].map((value) => ({
    value: value / factor,
    text: value > 0 ? `+${value}` : grouped(value, 0),
  }))
  return { low: -step / factor, high: step / factor, ticks }
}

/** The chart; null where there is no room for it. */
export function warmUpChart({ log, fit, units, width, k }: WarmUp): WarmUpChart | null {
  const gutters = width < 560 ? NARROW : GUTTERS
  const left = Math.round(gutters.left * k)
  const right = Math.round(width - gutters.right * k)
  const end = log.time[log.rows - 1]
  if (right - left < 80 || !(end > 0)) return null
  const times = timeTicks(0, end, Math.max(4, (right - left) / (TICK_ROOM * k)))
  const coldest = [fit.frameC[0], ...log.frameC].reduce((low, value) =>
    Number.isNaN(value) ? low : Math.min(low, value),
  )
  const hottest = Math.max(...[fit.windingC, fit.frameC, log.frameC, fit.windingReadC].map(mostRead))
  const axis = valueAxis(temperatureFloor(coldest), hottest, units.temperature)
  const upper: Box = { left, right, top: TOP, bottom: TOP + HEIGHTS.curve * k }
  const lower: Box = {
    left,
    right,
    top: upper.bottom + BETWEEN * k,
    bottom: upper.bottom + (BETWEEN + HEIGHTS.misses) * k,
  }
  const scales = scalesFor(upper, 0, end, axis)
  const off = missAxis(fit, units)
  const below = scalesFor(lower, 0, end, off)
  const curve = (column: Float64Array) => polyline({ t: [...fit.time], value: [...column] }, scales)
  const lastY = (column: Float64Array, of: Scales) => of.y(column[column.length - 1])
  const names: GutterText[] = [
    ...(known(fit.frameC) ? [{ text: 'can, fitted', look: 'strong', at: lastY(fit.frameC, scales) }] : []),
    { text: 'winding, fitted', look: '', at: lastY(fit.windingC, scales) },
  ]
  const short = gutters === NARROW
  const degrees = (value: number) => show(value, 'temperature', units).number
  const kelvin = (value: number) =>
    Number.isNaN(value) ? '–' : grouped(value * (units.temperature === '°F' ? 1.8 : 1), 1)
  return {
    height: lower.bottom + FOOT * k,
    words: `Warm-up of ${clockTime(end)}: ${
      known(log.frameC)
        ? `the can was read up to ${degrees(mostRead(log.frameC))} ${units.temperature}; `
        : ''
    }the fitted winding comes to ${degrees(mostRead(fit.windingC))} ${units.temperature}.`,
    table: () => ({
      head: [
        'Time',
        `Can, read, ${units.temperature}`,
        `Can, fitted, ${units.temperature}`,
        `Winding, fitted, ${units.temperature}`,
        `Missed by, ${units.temperature === '°F' ? '°F' : 'K'}`,
      ],
      rows: rowsOf(log.rows).map((row) => [
        clockTime(log.time[row]),
        Number.isNaN(log.frameC[row]) ? '–' : degrees(log.frameC[row]),
        degrees(fit.frameC[row]),
        degrees(fit.windingC[row]),
        kelvin(fit.frameMisses[row]),
      ]),
    }),
    drawn: svg`
      ${gridMark(scales, axis, times)}
      ${valueTicks(scales, axis)}
      ${lineMark(curve(fit.windingC), 'A', 'thin')}
      ${lineMark(curve(fit.frameC), 'A', 'heavy')}
      ${pointsMark(readingPoints(fit.time, fit.windingReadC, scales), 'winding')}
      ${pointsMark(readingPoints(fit.time, log.frameC, scales))}
      ${gutterMarks(
        names.map((name) => (short ? { ...name, text: name.text.replace(', fitted', '') } : name)),
        right + 8,
        ROW * k,
        upper.top,
        upper.bottom,
      )}
      <text class="tick" x=${left} y=${lower.top - 10 * k}>Readings less curve, ${units.temperature === '°F' ? '°F' : 'K'}</text>
      ${gridMark(below, off, times)}
      ${valueTicks(below, off)}
      ${timeTickMarks(below, times, 20 * k)}
      <line class="limit other" x1=${left} x2=${right} y1=${below.y(0)} y2=${below.y(0)} />
      ${pointsMark(readingPoints(fit.time, fit.windingMisses, below), 'winding')}
      ${pointsMark(readingPoints(fit.time, fit.frameMisses, below))}`,
  }
}

/** Most rows of the table. */
const MOST_ROWS = 120
const rowsOf = (count: number): number[] => {
  const step = Math.ceil(count / MOST_ROWS)
  return Array.from({ length: Math.ceil(count / step) }, (_, n) => n * step)
}
