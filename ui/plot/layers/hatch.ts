// Hatching: stopped by the cutoff, and nothing else.
import { type SVGTemplateResult, svg } from 'lit'
import type { Scales } from '../scales.ts'

/** The pattern that hatched shapes of the same svg are filled with. */
export const hatchPattern = svg`
  <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <line class="hatch-line" x1="0" y1="0" x2="0" y2="7" />
  </pattern>`

/** Bands through the plot over stretches of time, [from, until] in s. */
export const hatchMark = (
  spells: readonly (readonly [number, number])[],
  { x, box }: Scales,
): SVGTemplateResult =>
  svg`${spells.map(([from, until]) => {
    const left = Math.max(box.left, x(from))
    const width = Math.min(box.right, x(until)) - left
    return width > 0
      ? svg`<rect class="hatched" x=${left} y=${box.top} width=${width} height=${box.bottom - box.top} />`
      : svg``
  })}`
