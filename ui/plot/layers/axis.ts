// Axes: grid, ticks of the value at the left, ticks of time at the foot.
import { type SVGTemplateResult, svg } from 'lit'
import type { Axis, Scales } from '../scales.ts'
import type { TimeTick } from '../time.ts'

/** Grid lines and base line, drawn before all data. */
export function gridMark({ x, y, box }: Scales, axis: Axis, times: readonly TimeTick[]): SVGTemplateResult {
  return svg`
    <g class="grid">
      ${axis.ticks.map(({ value }) => svg`<line x1=${box.left} x2=${box.right} y1=${y(value)} y2=${y(value)} />`)}
      ${times.map(({ t }) => svg`<line x1=${x(t)} x2=${x(t)} y1=${box.top} y2=${box.bottom} />`)}
    </g>
    <line class="base" x1=${box.left} x2=${box.right} y1=${box.bottom} y2=${box.bottom} />`
}

/** Numbers at the left. */
export const valueTicks = ({ y, box }: Scales, axis: Axis): SVGTemplateResult => svg`
  ${axis.ticks.map(
    ({ value, text }) => svg`
      <text class="tick" x=${box.left - 8} y=${y(value)} dy="0.34em" text-anchor="end">${text}</text>`,
  )}`

/** Times at the foot; the last one does not reach past the plot. */
export function timeTickMarks(
  { x, box }: Scales,
  times: readonly TimeTick[],
  drop: number,
): SVGTemplateResult {
  return svg`
    ${times.map(({ t, text }) => {
      const at = x(t)
      const anchor = at > box.right - 8 ? 'end' : 'middle'
      return svg`
        <line class="base" x1=${at} x2=${at} y1=${box.bottom} y2=${box.bottom + 5} />
        <text class="tick" x=${anchor === 'end' ? box.right + 4 : at} y=${box.bottom + drop} text-anchor=${anchor}>${text}</text>`
    })}`
}
