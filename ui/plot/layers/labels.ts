// Labels in a chart: text with a halo of paper, where label.ts found room for it; and texts in the right gutter.
import { type SVGTemplateResult, svg } from 'lit'
import { pushApart, type Rect } from '../label.ts'

/** A label's text and look: 'bad' for limits, 'strong' for events and names, a series letter for a variant. */
export interface LabelText {
  readonly text: string
  readonly look: string
}

/** Labels at the places found for them; those without a place are left out. */
export const labelMarks = (
  labels: readonly LabelText[],
  places: readonly (Rect | undefined)[],
): SVGTemplateResult =>
  svg`${labels.map(({ text, look }, n) => {
    const place = places[n]
    return place
      ? svg`<text class="label ${look}" x=${place.x} y=${place.y + place.height / 2} dy="0.34em">${text}</text>`
      : svg``
  })}`

/** A text beside the plot at the height (px) it speaks of. */
export interface GutterText extends LabelText {
  readonly at: number
}

/** Texts in the right gutter, pushed apart where they would touch, between top and bottom (px). */
export function gutterMarks(
  texts: readonly GutterText[],
  x: number,
  row: number,
  top: number,
  bottom: number,
): SVGTemplateResult {
  const middles = pushApart(
    texts.map(({ at }) => at),
    row,
    top,
    bottom,
  )
  return svg`${texts.map(
    ({ text, look }, n) => svg`<text class="label ${look}" x=${x} y=${middles[n]} dy="0.34em">${text}</text>`,
  )}`
}
