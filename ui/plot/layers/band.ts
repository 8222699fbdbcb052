// The band of the surges: from least to most, under its mean line.
import { area } from 'd3'
import { type SVGTemplateResult, svg } from 'lit'
import type { Spread } from '../columns.ts'
import type { Scales } from '../scales.ts'
import type { Series } from '../shown.ts'

/** The bands of a variant. */
export function bandMark(bands: readonly Spread[], { x, y }: Scales, series: Series): SVGTemplateResult {
  const shape = area<readonly [number, number, number]>(
    ([t]) => x(t),
    ([, least]) => y(least),
    ([, , most]) => y(most),
  ).digits(1)
  const d = bands.map(
    ({ t, least, most }) => shape(t.map((time, n) => [time, least[n], most[n]] as const)) ?? '',
  )
  return svg`<path class="band ${series}" d=${d.join('')} />`
}
