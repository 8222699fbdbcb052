// A line over time: the series' colour and dash, in the weight of its role.
import { type SVGTemplateResult, svg } from 'lit'
import type { Points } from '../columns.ts'
import type { Polyline } from '../label.ts'
import { linePath } from '../path.ts'
import type { Scales } from '../scales.ts'
import type { Series } from '../shown.ts'

/** Heavy: the active variant. Series: any other. Thin, dots, asked: winding, frame and asked value of the active one. */
export type Weight = 'heavy' | 'series' | 'thin' | 'dots' | 'asked'

/** The points of a line in px. */
export const polyline = ({ t, value }: Points, { x, y }: Scales): Polyline =>
  t.map((time, n) => [x(time), y(value[n])] as const)

/** A line through points (px, from `polyline`). */
export function lineMark(points: Polyline, series: Series, weight: Weight): SVGTemplateResult {
  return svg`<path class="line ${series} ${weight}" d=${linePath(points)} />`
}
