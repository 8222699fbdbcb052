// A ribbon: the whole job as one bar, coloured by the switch's temperature, hatched where the cutoff stops it.
import { type SVGTemplateResult, svg } from 'lit'
import { heatColour } from '../heat.ts'

/** A stretch of one colour: px from left to right, °C. */
export interface Stretch {
  readonly left: number
  readonly right: number
  readonly temperatureC: number
}

/** Neighbours closer than this are one colour, K. */
const STEP_C = 2

/** Stretches of nearly one temperature, from one temperature a pixel column (°C), the first at `left` px. */
export function stretches(columns: readonly number[], left: number): Stretch[] {
  const found: Stretch[] = []
  let start = 0
  const shade = (value: number) => Math.round(value / STEP_C) * STEP_C
  for (let n = 1; n <= columns.length; n++) {
    if (n < columns.length && shade(columns[n]) === shade(columns[start])) continue
    found.push({ left: left + start, right: left + n, temperatureC: shade(columns[start]) })
    start = n
  }
  return found
}

/** The bar with its stops, in px; `right` is where the job ends, the colours may end earlier. */
export function ribbonMark(
  colours: readonly Stretch[],
  stops: readonly (readonly [number, number])[],
  { left, right, top, height }: { left: number; right: number; top: number; height: number },
): SVGTemplateResult {
  return svg`
    ${colours.map(
      (stretch) => svg`
        <rect x=${stretch.left} y=${top} height=${height} width=${Math.min(right, stretch.right + 0.5) - stretch.left}
          style="fill: ${heatColour(stretch.temperatureC)}" />`,
    )}
    ${stops.map(
      ([from, until]) => svg`
        <rect class="stop" x=${from} y=${top} width=${Math.max(1, until - from)} height=${height} />
        <rect class="hatched framed" x=${from} y=${top} width=${Math.max(1, until - from)} height=${height} />`,
    )}
    <rect class="frame" x=${left} y=${top} width=${right - left} height=${height} />`
}
