// The scrubber's line: the moment looked at, through a chart.
import { type SVGTemplateResult, svg } from 'lit'
import type { Scales } from '../scales.ts'

/** The line at time t (s); nothing where t lies outside the plot. Drops `beyond` px under the plot. */
export function scrubberMark(t: number, { x, box }: Scales, beyond = 0): SVGTemplateResult {
  const at = x(t)
  if (at < box.left - 0.5 || at > box.right + 0.5) return svg``
  return svg`<line class="scrubber" x1=${at} x2=${at} y1=${box.top} y2=${box.bottom + beyond} />`
}
