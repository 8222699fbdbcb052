// What a zone needs to know of the chosen variant: its name, its answer, and whether that answer is still good.
import type { Series } from '../plot/shown.ts'
import type { Sure } from '../../sim/studies/sure.ts'
import { entriesOf, type Result, type State } from '../store.ts'

const SERIES: readonly Series[] = ['A', 'B', 'C', 'D']

/** Line style of a variant by its place: the job as found, then the first, second and every later variant. */
export const seriesOf = (state: Pick<State, 'variants'>, id: string): Series =>
  SERIES[
    Math.min(
      3,
      Math.max(
        0,
        entriesOf(state).findIndex((entry) => entry.id === id),
      ),
    )
  ]

/** The chosen variant's answer, ready for the zones. */
export interface ShownJob {
  readonly name: string
  readonly result: Result
  /** The answer belongs to inputs that have changed since. */
  readonly previous: boolean
  /** How sure it is, once that is known. */
  readonly sure: Sure | null
}
