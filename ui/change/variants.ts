// Variants: chosen, copied, tried, renamed, removed.
import { AS_FOUND, chosenOf, type Entry, entriesOf, type State } from '../store.ts'
import { amended } from './inputs.ts'

/** Most variants beside the job as found. */
export const MOST_VARIANTS = 24
const LONGEST_NAME = 60

export const choose = (state: State, id: string): State =>
  id !== state.chosen && entriesOf(state).some((entry) => entry.id === id) ? { ...state, chosen: id } : state

/** A name no other variant has. */
function free(state: State, wanted: string): string {
  const taken = new Set(entriesOf(state).map(({ name }) => name))
  const short = wanted.trim().slice(0, LONGEST_NAME - 4) || 'Variant'
  if (!taken.has(short)) return short
  for (let n = 2; ; n++) if (!taken.has(`${short} ${n}`)) return `${short} ${n}`
}

/** Equal for changes that come to the same, in whatever order they were made. */
const written = (changes: Entry['changes']): string => JSON.stringify(Object.entries(changes).sort())

/** The chosen variant with further changes: the one that is that already, or else a new one; chosen. */
export function tryOut(state: State, name: string, changes: Entry['changes']): State {
  const wanted = written(further(state, changes))
  const same = entriesOf(state).find((entry) => written(entry.changes) === wanted)
  return same ? choose(state, same.id) : add(state, name, changes)
}

const further = (state: State, changes: Entry['changes']): Entry['changes'] =>
  Object.entries(changes).reduce(
    (all, [path, text]) => amended(state.scenario, all, path, text),
    chosenOf(state).changes,
  )

function add(state: State, name: string, changes: Entry['changes']): State {
  if (state.variants.length >= MOST_VARIANTS)
    return {
      ...state,
      notice: { words: `${MOST_VARIANTS} variants are the most. Remove one first.`, problems: [] },
    }
  const id = `variant ${state.made + 1}`
  const entry: Entry = {
    id,
    name: free(state, name),
    changes: further(state, changes),
  }
  return {
    ...state,
    made: state.made + 1,
    undo: `“${entry.name}” added.`,
    variants: [...state.variants, entry],
    chosen: id,
  }
}

/** A variant just like the chosen one, to be changed. */
export const copy = (state: State): State => add(state, `Copy of ${chosenOf(state).name}`, {})

/** Removes a variant; the one before it is chosen if it was. The job as found stays. */
export function remove(state: State, id: string): State {
  const at = state.variants.findIndex((entry) => entry.id === id)
  if (at < 0) return state
  const before = state.variants[at - 1]?.id ?? AS_FOUND
  return {
    ...state,
    undo: `“${state.variants[at].name}” removed.`,
    variants: state.variants.filter((entry) => entry.id !== id),
    chosen: state.chosen === id ? before : state.chosen,
  }
}

export function rename(state: State, id: string, name: string): State {
  const wanted = name.trim().slice(0, LONGEST_NAME)
  if (wanted === '' || !state.variants.some((entry) => entry.id === id && entry.name !== wanted)) return state
  return {
    ...state,
    variants: state.variants.map((entry) => (entry.id === id ? { ...entry, name: wanted } : entry)),
  }
}
