// Undo and redo: what the job was before each change, the newest last.
import type { State } from '../store.ts'

/** What undo goes back to. */
export type Moment = Pick<State, 'slot' | 'scenario' | 'variants' | 'chosen' | 'drafts'>

export interface History {
  readonly past: readonly Moment[]
  readonly future: readonly Moment[]
  /** What the newest change was part of: further changes of one drag are one step. */
  readonly during: string | null
}

export const NO_HISTORY: History = { past: [], future: [], during: null }

/** Steps that are kept. */
export const MOST_STEPS = 100

const momentOf = ({ slot, scenario, variants, chosen, drafts }: State): Moment => ({
  slot,
  scenario,
  variants,
  chosen,
  drafts,
})

/** The state after a change, with what was before it noted; unchanged where the job is the same. */
export function noted(before: State, after: State, during: string | null = null): State {
  const same =
    before.scenario === after.scenario && before.variants === after.variants && before.drafts === after.drafts
  if (same) return after
  const { past, during: last } = before.history
  const goesOn = during !== null && during === last
  return {
    ...after,
    history: {
      past: goesOn ? past : [...past, momentOf(before)].slice(-MOST_STEPS),
      future: [],
      during,
    },
  }
}

/** One step back; the same state where there is none. */
export function undo(state: State): State {
  const { past, future } = state.history
  const to = past.at(-1)
  if (!to) return state
  const history = { past: past.slice(0, -1), future: [...future, momentOf(state)], during: null }
  return { ...state, ...to, undo: null, history }
}

/** One step forward again. */
export function redo(state: State): State {
  const { past, future } = state.history
  const to = future.at(-1)
  if (!to) return state
  const history = { past: [...past, momentOf(state)], future: future.slice(0, -1), during: null }
  return { ...state, ...to, undo: null, history }
}
