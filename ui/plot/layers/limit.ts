// A limit: a level line through the whole plot, solid where it stops the job, dash-dotted where it does not.
import { type SVGTemplateResult, svg } from 'lit'
import type { Scales } from '../scales.ts'

/** Hard: stops the job. Warning: harms it. Other: good to know. */
export type Hardness = 'hard' | 'warning' | 'other'

/** A limit line at a value (SI). Nothing where the value is beyond the axis. */
export function limitMark(value: number, { y, box }: Scales, hardness: Hardness): SVGTemplateResult {
  const at = y(value)
  if (at < box.top) return svg``
  return svg`<line class="limit ${hardness}" x1=${box.left} x2=${box.right} y1=${at} y2=${at} />`
}
