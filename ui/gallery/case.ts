// What a picture of the gallery is: an address, a heading, and how it is drawn in the reader's units.
import type { TemplateResult } from 'lit'
import type { Units } from '../../sim/say/units.ts'
import type { Work } from '../study/work.ts'

export interface Case {
  /** Its address on the page: small letters and hyphens. */
  readonly id: string
  readonly title: string
  draw(units: Units): TemplateResult
}

export interface Group {
  readonly title: string
  readonly cases: readonly Case[]
}

const NONE = { wanted: true, working: null, result: null, key: '', halted: null, why: null }

/** How a study may stand: not begun, under way (without or with an older result), stopped, come to nothing, there. */
export const work = {
  empty: NONE,
  working: { ...NONE, working: { t: 3, of: 8 } },
  again: <T>(result: T): Work<T> => ({ ...NONE, result, working: { t: 3, of: 8 } }),
  stopped: { ...NONE, halted: 'this' },
  stale: <T>(result: T): Work<T> => ({ ...NONE, result, halted: 'this' }),
  failed: { ...NONE, why: 'a value needs a look' },
  done: <T>(result: T): Work<T> => ({ ...NONE, result }),
} as const
