// One view of the charts: which variants, which part of the job, in which units, and how wide all of it is.
import type { Trace } from '../../sim/trace.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Log } from '../../sim/identify/log.ts'
import { firstFrom, type Polyline, type Rect, type Wanted } from './label.ts'
import type { Span } from './reduce.ts'
import type { Axis, Box, Scales } from './scales.ts'
import { scalesFor } from './scales.ts'
import { activeOf, fitting, MOST, type Shown } from './shown.ts'
import { type TimeTick, timeTicks } from './time.ts'

/** Under this width (px) the charts take their phone form. */
const NARROW = 760
/** Type size and row height, px before enlarging. */
const TYPE = 13
const ROW = 18
/** Room beside the plot, px before enlarging. */
const GUTTERS = { wide: { left: 48, right: 172 }, narrow: { left: 40, right: 12 } } as const
/** Least distance of time ticks, px before enlarging. */
export const TICK_ROOM = 96
/** Room above the plot, and under it with and without times. */
const TOP = 9
const FOOT = { times: 30, plain: 6 } as const

export interface View extends Span {
  readonly variants: readonly Shown[]
  readonly active: Shown
  readonly units: Units
  readonly narrow: boolean
  /** Width of the whole element and edges of the plot, px. */
  readonly width: number
  readonly left: number
  readonly right: number
  /** Size of type and height of a row, px; how much text is enlarged. */
  readonly type: number
  readonly row: number
  readonly k: number
  /** Length of the job, s. */
  readonly end: number
  readonly times: readonly TimeTick[]
  /** A logged run to lay over the prediction, from the job's start. */
  readonly log: Log | null
}

export interface Asked {
  readonly shown: readonly Shown[]
  readonly units: Units
  readonly from: number
  readonly to: number
  readonly width: number
  readonly k: number
  readonly log?: Log | null
}

/** Length of the longest of the jobs, s. */
export const jobEnd = (shown: readonly Shown[]): number =>
  shown.reduce((longest, { job }) => Math.max(longest, job.duty.seconds), 0)

/** The view, or undefined where there is nothing to draw or no room for it. */
export function viewOf({ shown, units, from, to, width, k, log = null }: Asked): View | undefined {
  const narrow = width < NARROW
  const variants = fitting(shown, narrow ? MOST.narrow : MOST.wide)
  const active = activeOf(variants)
  const gutters = narrow ? GUTTERS.narrow : GUTTERS.wide
  const left = Math.round(gutters.left * k)
  const right = Math.round(width - gutters.right * (narrow ? 1 : k))
  if (active === undefined || right - left < 50 || !(to > from)) return undefined
  const times = timeTicks(from, to, Math.max(2, (right - left) / (TICK_ROOM * k)))
  return {
    ...{ variants, active, units, from, to, narrow, width, left, right, k, times, log },
    type: TYPE * k,
    row: ROW * k,
    end: jobEnd(shown),
    perPixel: (to - from) / (right - left),
  }
}

/** Box of a plot of a height (px before enlarging), and the height of its svg. */
export function boxOf(view: View, height: number, times: boolean): { box: Box; height: number } {
  const bottom = TOP + Math.round(height * view.k)
  const foot = times ? FOOT.times * view.k : FOOT.plain
  return { box: { left: view.left, right: view.right, top: TOP, bottom }, height: bottom + foot }
}

/** Scales of a chart of this view. */
export const scalesIn = (view: View, box: Box, axis: Axis): Scales => scalesFor(box, view.from, view.to, axis)

/** A box as a rectangle for labels to stay in. */
export const within = ({ left, right, top, bottom }: Box): Rect => ({
  x: left,
  y: top,
  width: right - left,
  height: bottom - top,
})

/** Height (px) of a line at x, straight between points; undefined where it has none. */
export function heightAt(line: Polyline, x: number): number | undefined {
  const after = firstFrom(line, x)
  if (after === line.length) return undefined
  const [x1, y1] = line[after]
  const [x0, y0] = line[Math.max(0, after - 1)]
  if (x < x0) return undefined
  return x1 > x0 ? y0 + ((y1 - y0) * (x - x0)) / (x1 - x0) : y1
}

/**
 * Spots for a label along a line, under and over it at steps through the plot; none where another line runs between
 * them, which the label would then seem to name.
 */
export function alongLine(
  line: Polyline,
  others: readonly Polyline[],
  box: Box,
  { width, height }: Pick<Wanted, 'width' | 'height'>,
): Wanted['spots'] {
  const spots: [number, number][] = []
  for (const away of [3, 9, 15])
    for (let share = 0.05; share < 0.96; share += 0.03) {
      const x = box.left + share * (box.right - box.left)
      const y = heightAt(line, x)
      if (y === undefined) continue
      const heights = others.map((other) => heightAt(other, x) ?? Number.NaN)
      const reach = away + height / 2
      if (!heights.some((other) => other > y && other < y + reach)) spots.push([x - width / 2, y + away])
      if (!heights.some((other) => other < y && other > y - reach))
        spots.push([x - width / 2, y - height - away])
    }
  return spots
}

interface Greatest {
  readonly speed: number
  readonly current: number
}

const known = new WeakMap<Trace, Greatest>()

/** Greatest motor speed, asked or got (rad/s), and current (A) of a whole trace. */
export function greatestOf(trace: Trace): Greatest {
  const found = known.get(trace)
  if (found) return found
  const most = (column: Float64Array) => column.reduce((so, value) => Math.max(so, value), 0)
  const { speed, asked, current } = trace.columns
  const greatest = { speed: Math.max(most(speed), most(asked)), current: most(current) }
  known.set(trace, greatest)
  return greatest
}
