// A photograph of the page: how it is opened, what brings it into its state, and which part is taken.
import type { Page } from 'playwright-core'
import type { View } from '../page.ts'

export interface Shot {
  readonly name: string
  readonly view: View
  /** What brings the page into the state; then a part of it, or the whole sheet, is photographed. */
  act?(page: Page): Promise<unknown>
  readonly part?: string
  /** Nothing is opened: the empty sheet. */
  readonly empty?: boolean
  /** Only what the window shows, from its top. */
  readonly window?: boolean
}

export const desktop = { width: 1440, height: 900 }
export const tablet = { width: 900, height: 1200 }
export const phone = { width: 390, height: 844 }
