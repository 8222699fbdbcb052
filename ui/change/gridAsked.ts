// A grid as somebody asked for it on the page, in texts.
import type { FigureName } from '../../sim/studies/figures.ts'

/** An input and the range it goes through as typed; '' for a choice. */
export interface AxisAsked {
  readonly path: string
  readonly range: string
}
export interface GridAsked {
  readonly x: AxisAsked
  readonly y: AxisAsked
  readonly figure: FigureName
}
