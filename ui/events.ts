// What the page can be asked for: one union, sent up from wherever a person clicks or types.
import type { CutName } from '../sim/cuts/index.ts'
import type { LessonName } from '../sim/lessons.ts'
import type { Scenario } from '../sim/scenario.ts'
import type { Station } from '../sim/say/stations.ts'
import type { Units } from '../sim/say/units.ts'
import type { FigureName } from '../sim/studies/figures.ts'
import type { AxisAsked } from './change/gridAsked.ts'
import type { ReadingPath } from './edit/readings.ts'
import type { Size, Theme } from './settings.ts'
import type { StudyName } from './study/work.ts'

/** Kinds of cut a step can have. */
export type CutKind = 'none' | 'torque' | 'power' | 'fanTorque' | 'cut'

/** Something a person asks of the page. Paths are those of the scenario; ids are those of the store's variants. */
export type Wish =
  | {
      readonly kind: 'edit'
      readonly path: string
      readonly text: string | null /** Names a drag: its changes are undone as one. */
      readonly during?: string
    }
  | { readonly kind: 'add step' }
  /** The hardest cut put into a ready-made duty, by its name. */
  | { readonly kind: 'duty pattern'; readonly type: string }
  | { readonly kind: 'remove step'; readonly index: number }
  | { readonly kind: 'cut kind'; readonly index: number; readonly cut: CutKind }
  | { readonly kind: 'work'; readonly index: number; readonly work: CutName }
  | { readonly kind: 'surge'; readonly index: number; readonly on: boolean }
  | { readonly kind: 'add belt step' }
  | { readonly kind: 'remove belt step'; readonly index: number }
  | { readonly kind: 'add old step' }
  | { readonly kind: 'remove old step'; readonly index: number }
  | { readonly kind: 'add reading'; readonly of: ReadingPath }
  | { readonly kind: 'remove reading'; readonly of: ReadingPath; readonly index: number }
  | { readonly kind: 'choose'; readonly id: string }
  | { readonly kind: 'copy' }
  | { readonly kind: 'remove'; readonly id: string }
  | { readonly kind: 'rename'; readonly id: string; readonly name: string }
  | { readonly kind: 'try'; readonly name: string; readonly changes: Readonly<Record<string, string | null>> }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  | { readonly kind: 'forget undo' }
  | { readonly kind: 'open station'; readonly station: Station | null }
  | { readonly kind: 'go to field'; readonly path: string }
  | { readonly kind: 'units'; readonly units: Units }
  | { readonly kind: 'theme'; readonly theme: Theme }
  | { readonly kind: 'size'; readonly size: Size }
  | { readonly kind: 'moment'; readonly t: number }
  | { readonly kind: 'window'; readonly from: number; readonly to: number }
  | { readonly kind: 'job'; readonly scenario: Scenario }
  | { readonly kind: 'open file'; readonly file: File }
  | { readonly kind: 'open log'; readonly file: File }
  | { readonly kind: 'example log' }
  | { readonly kind: 'held speed'; readonly text: string }
  | { readonly kind: 'fit again' }
  | { readonly kind: 'show log'; readonly on: boolean }
  | { readonly kind: 'forget log' }
  | { readonly kind: 'use heat' }
  | { readonly kind: 'tick'; readonly name: string; readonly on: boolean }
  | { readonly kind: 'open lesson'; readonly name: LessonName }
  | { readonly kind: 'close lesson' }
  | { readonly kind: 'save' }
  | { readonly kind: 'print' }
  | { readonly kind: 'copy link' }
  | { readonly kind: 'open link'; readonly hash: string }
  | { readonly kind: 'open kept'; readonly slot: string }
  | { readonly kind: 'throw away'; readonly slot: string }
  | { readonly kind: 'dismiss' }
  | { readonly kind: 'cancel' }
  | { readonly kind: 'again' }
  | { readonly kind: 'check' }
  | { readonly kind: 'cancel check' }
  | {
      readonly kind: 'grid'
      readonly x?: Partial<AxisAsked>
      readonly y?: Partial<AxisAsked>
      readonly figure?: FigureName
    }
  /** The step whose work and rest is looked at. */
  | { readonly kind: 'limits cut'; readonly phase: string }
  | { readonly kind: 'want study'; readonly study: StudyName }
  | { readonly kind: 'stop study'; readonly study: StudyName }

declare global {
  interface HTMLElementEventMap {
    wish: CustomEvent<Wish>
  }
}

/** Sends a wish up to the page, out of every shadow tree. */
export function wish(from: EventTarget, detail: Wish): void {
  from.dispatchEvent(new CustomEvent('wish', { detail, bubbles: true, composed: true }))
}
