// The scale bar: a round length in the reader's units that is neither too short nor too long.
import { NBSP } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'

export interface ScaleBar {
  /** px */
  readonly length: number
  readonly text: string
}

const INCH = 0.0254
const LENGTHS = {
  us: [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 192].map(
    (inches) => [inches * INCH, `${inches}${NBSP}in`] as const,
  ),
  metric: [
    ...[5, 10, 20, 50, 100, 200, 300, 500].map((mm) => [mm / 1000, `${mm}${NBSP}mm`] as const),
    ...[1, 2, 5].map((m) => [m, `${m}${NBSP}m`] as const),
  ],
} as const

/** The longest round length within `most` px; scale in px to a metre. */
export function scaleBar(scale: number, most: number, { system }: Units): ScaleBar {
  const lengths = LENGTHS[system]
  const [metres, text] = lengths.findLast(([each]) => each * scale <= most) ?? lengths[0]
  return { length: metres * scale, text }
}
