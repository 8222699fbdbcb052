// Readouts at the scrubber: one row a variant, its line sample and its value, in the gutter.
import { type SVGTemplateResult, svg } from 'lit'
import type { Series } from '../shown.ts'

/** A row of readouts. */
export interface Reading {
  readonly series: Series
  readonly active: boolean
  readonly text: string
}

/** A short piece of a variant's line, starting at (x, y) px. */
export const lineSample = (
  series: Series,
  active: boolean,
  x: number,
  y: number,
  length = 18,
): SVGTemplateResult =>
  svg`<line class="line ${series} ${active ? 'heavy' : 'series'}" x1=${x} x2=${x + length} y1=${y} y2=${y} />`

/** A heading and one row a variant, standing on `bottom` (px): what the charts read at the scrubber. */
export function readoutMark(
  heading: string,
  readings: readonly Reading[],
  { x, right, row, bottom }: { x: number; right: number; row: number; bottom: number },
): SVGTemplateResult {
  const at = (n: number) => bottom - (readings.length - n - 0.5) * row
  return svg`
    <text class="label quiet" x=${x} y=${at(-1)} dy="0.34em">${heading}</text>
    ${readings.map(
      ({ series, active, text }, n) => svg`
        ${lineSample(series, active, x, at(n))}
        <text class="label strong ${series}" x=${right} y=${at(n)} dy="0.34em" text-anchor="end">${text}</text>`,
    )}`
}
