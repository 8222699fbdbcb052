// Readings over a prediction: a ring each, thinned to what can be told apart.
import { type SVGTemplateResult, svg } from 'lit'
import type { Polyline } from '../label.ts'
import type { Scales } from '../scales.ts'

/** Rings closer than this (px) cannot be told apart; radius of one, px. */
const APART = 4
const RADIUS = 2.6

/** Readings of a column as points in px, without gaps (NaN) and beyond the plot; `of` SI → SI of the axis. */
export function readingPoints(
  time: Float64Array,
  column: Float64Array,
  { x, y, box }: Scales,
  of: (value: number) => number = (value) => value,
): Polyline {
  const points: [number, number][] = []
  let last = Number.NEGATIVE_INFINITY
  for (let row = 0; row < time.length; row++) {
    const at = x(time[row])
    if (Number.isNaN(column[row]) || at < box.left - 1 || at > box.right + 1 || at - last < APART) continue
    points.push([at, y(of(column[row]))])
    last = at
  }
  return points
}

/** Rings at points (px); `look`: 'winding' for squares. */
export const pointsMark = (points: Polyline, look: 'frame' | 'winding' = 'frame'): SVGTemplateResult =>
  svg`<g class="logged">${points.map(([x, y]) =>
    look === 'frame'
      ? svg`<circle cx=${x.toFixed(1)} cy=${y.toFixed(1)} r=${RADIUS} />`
      : svg`<rect x=${(x - RADIUS).toFixed(1)} y=${(y - RADIUS).toFixed(1)} width=${2 * RADIUS} height=${2 * RADIUS} />`,
  )}</g>`

/** Greatest value of a column of readings; −∞ where there is none. */
export const mostRead = (column: Float64Array): number =>
  column.reduce(
    (most, value) => (Number.isNaN(value) ? most : Math.max(most, value)),
    Number.NEGATIVE_INFINITY,
  )
