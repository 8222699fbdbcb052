// The band of the surges: from least to most, under its mean line.
import { type SVGTemplateResult, svg } from 'lit'
import type { Spread } from '../columns.ts'
import { areaPath } from '../path.ts'
import type { Scales } from '../scales.ts'
import type { Series } from '../shown.ts'

/** The bands of a variant. */
export function bandMark(bands: readonly Spread[], { x, y }: Scales, series: Series): SVGTemplateResult {
  const d = bands.map(({ t, least, most }) => {
    const line = (values: readonly number[]) => t.map((time, n) => [x(time), y(values[n])] as const)
    return areaPath(line(most), line(least))
  })
  return svg`<path class="band ${series}" d=${d.join('')} />`
}
