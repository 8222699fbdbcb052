// From seconds and SI values to pixels: the box of a chart, its scales and its round ticks.
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import { grouped } from '../../sim/say/number.ts'
import { even } from './scale.ts'

/** Edges of a plot, px. */
export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** Seconds → px, the column's SI unit → px, and the box they fill. */
export interface Scales {
  readonly x: (t: number) => number
  readonly y: (value: number) => number
  readonly box: Box
}

/** A tick of the value axis: where, SI, and its text in the reader's unit. */
export interface Tick {
  readonly value: number
  readonly text: string
}

/** A value axis: lowest and highest value, SI, and its ticks. */
export interface Axis {
  readonly low: number
  readonly high: number
  readonly ticks: readonly Tick[]
}

const MOST_TICKS = 5
const ROUND = [1, 2, 4, 5, 10]

/** Smallest of 1, 2, 4, 5 × 10ⁿ of which [low, high] holds at most `most` multiples. */
export function roundStep(low: number, high: number, most = MOST_TICKS): number {
  const size = 10 ** Math.floor(Math.log10((high - low) / most))
  const multiples = (step: number) => Math.floor(high / step + 1e-9) - Math.ceil(low / step - 1e-9) + 1
  for (const factor of [...ROUND, 20]) if (multiples(factor * size) <= most) return factor * size
  return 40 * size
}

/**
 * An axis from `low` (SI) to a little over `high` (SI), with 3 to 5 round ticks in a unit. Where `low` itself is not
 * round, it is a tick too, if the next one leaves it room.
 */
export function valueAxis(low: number, high: number, unit: string): Axis {
  const bottom = toUnit(low, unit)
  const wanted = bottom + (Math.max(toUnit(high, unit), bottom + 1e-6) - bottom) * 1.03
  const round = Math.abs(bottom) < 1e-9
  const most = round ? MOST_TICKS : MOST_TICKS - 1
  const step = roundStep(bottom, wanted, most)
  // The frame may end between ticks: in quarters of a step, unless that made a tick too many.
  const quarters = Math.ceil(wanted / (step / 4) - 1e-9) * (step / 4)
  const top = roundStep(bottom, quarters, most) > step ? wanted : quarters
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const ticks: Tick[] = []
  for (let n = Math.ceil(bottom / step - 1e-9); n * step <= top + step * 1e-9; n++)
    ticks.push({ value: fromUnit(n * step, unit), text: grouped(n * step, decimals) })
  if (ticks.length > 0 && (toUnit(ticks[0].value, unit) - bottom) / step >= 0.25)
    ticks.unshift({ value: low, text: grouped(Math.round(bottom), 0) })
  return { low, high: fromUnit(top, unit), ticks }
}

/** Lowest value of a temperature axis, °C: 20, or the ten below the coldest. */
export const temperatureFloor = (coldestC: number): number =>
  Math.min(20, Math.floor((coldestC + 1e-6) / 10) * 10)

/** The scales of a chart that shows [from, to] s over an axis. */
export function scalesFor(box: Box, from: number, to: number, axis: Axis): Scales {
  return {
    x: even([from, to], [box.left, box.right]),
    y: even([axis.low, axis.high], [box.bottom, box.top]),
    box,
  }
}
