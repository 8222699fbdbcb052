// A whole job taken up: the page's state for it, and the moment it opens on.
import type { Scenario, Variant } from '../../sim/scenario.ts'
import { NO_OLD_MOTOR } from './noOldMotor.ts'
import { NO_HISTORY } from '../keep/history.ts'
import { freshSlot } from '../keep/shelf.ts'
import { AS_FOUND, type Entry, type Result, type State } from '../store.ts'
import { forgotten, NO_WORKS } from '../study/work.ts'

/** Variants of a scenario from a file that nobody has checked yet: those that are shaped like one. */
function variantsIn(scenario: Scenario): readonly Variant[] {
  const list: unknown = scenario.variants
  return Array.isArray(list)
    ? list.filter(
        (each): each is Variant =>
          typeof each?.name === 'string' && typeof each.changes === 'object' && each.changes !== null,
      )
    : []
}

/** The state with another job in it, everything else about the reader kept. */
export function takeUp(state: Pick<State, 'settings' | 'made'>, whole: Scenario): State {
  const { variants: _, ...scenario } = whole
  const made = state.made
  const variants = variantsIn(whole).map(
    ({ name, changes }, index): Entry => ({ id: `variant ${made + index + 1}`, name, changes }),
  )
  return {
    slot: freshSlot(),
    scenario,
    variants,
    chosen: AS_FOUND,
    drafts: {},
    logged: null,
    made: made + variants.length,
    readings: new Map(),
    asked: new Map(),
    results: new Map(),
    working: new Map(),
    example: null,
    slow: false,
    stopped: null,
    check: null,
    studies: NO_WORKS,
    old: NO_OLD_MOTOR,
    grid: null,
    history: NO_HISTORY,
    shelf: [],
    ticked: [],
    lesson: null,
    undo: null,
    notice: null,
    station: null,
    target: null,
    settings: state.settings,
    moment: 0,
    window: [0, 0],
  }
}

/** Another job in place of the one on the page, which undo brings back. */
export const replaced = (state: State, whole: Scenario): State => ({
  ...takeUp(state, whole),
  // The old motor is the reader's, not the job's.
  old: state.old,
  studies: forgotten(state.studies),
  undo: `“${String(whole.name).slice(0, 60)}” opened.`,
  history: state.history,
  shelf: state.shelf,
  example: state.example,
})

/** The scenario to save: the job with its variants. */
export const toSave = ({ scenario, variants }: Pick<State, 'scenario' | 'variants'>): Scenario => ({
  ...scenario,
  variants: variants.map(({ name, changes }) => ({ name, changes: { ...changes } })),
})

/** Longest part of a job that is shown at first, s. */
const HOUR = 3600
/** The scrubber waits this long before an opening, s: there it is hottest, and still running. */
const BEFORE = 10

/**
 * The state with its moment and window fitting a result: kept where they lie within the job, else the eve of the first
 * opening, or the hottest moment, and the hour around it.
 */
export function withView(state: State, { figures }: Result, fresh: boolean): State {
  const { seconds, firstOpening, hottestSwitchC } = figures
  const [from, to] = state.window
  if (!fresh && to <= seconds && to > from && state.moment <= seconds) return state
  const moment = Math.min(
    seconds,
    Math.max(0, firstOpening && firstOpening.t > 1 ? firstOpening.t - BEFORE : hottestSwitchC.t),
  )
  const width = Math.min(HOUR, seconds)
  const start = moment <= width ? 0 : Math.min(moment - width * 0.75, seconds - width)
  return { ...state, moment, window: [start, start + width] }
}
