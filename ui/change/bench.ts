// Bench readings, typed a value at a time and counted once they are whole. They are the motor's: every variant has them.
import { givenAt, inputAt, type Scenario, withChange } from '../../sim/scenario.ts'
import {
  type Drafts,
  isWhole,
  itemOf,
  READINGS,
  type ReadingPath,
  readingAt,
  type Row,
  rowOf,
} from '../edit/readings.ts'
import type { State } from '../store.ts'

const rowsIn = (scenario: Scenario, kind: ReadingPath): readonly Row[] => {
  const list = givenAt(scenario, kind)
  return Array.isArray(list) ? list.map((item) => rowOf(kind, item)) : []
}

/** A scenario with the drafts in it, for the fields to show. */
export const drafted = (scenario: Scenario, drafts: Drafts): Scenario =>
  (Object.entries(drafts) as [ReadingPath, readonly Row[]][]).reduce(
    (all, [kind, rows]) =>
      rows.length === 0
        ? all
        : withChange(
            all,
            kind,
            [...rowsIn(all, kind), ...rows].map((row) => itemOf(kind, row)),
          ),
    scenario,
  )

/** The chosen variant without words of its own on a part of the job that is now every variant's. */
const letGo = (state: State, path: string): State['variants'] =>
  state.variants.some(({ id, changes }) => id === state.chosen && under(changes, path).length > 0)
    ? state.variants.map((entry) =>
        entry.id === state.chosen
          ? {
              ...entry,
              changes: Object.fromEntries(
                Object.entries(entry.changes).filter(([key]) => !isUnder(key, path)),
              ),
            }
          : entry,
      )
    : state.variants
const isUnder = (key: string, path: string): boolean => `${key}.`.startsWith(`${path}.`)
const under = (changes: object, path: string): string[] =>
  Object.keys(changes).filter((key) => isUnder(key, path))

/** Readings of a kind as they now stand, whole ones and drafts apart. */
function put(state: State, kind: ReadingPath, whole: readonly Row[], drafts: readonly Row[]): State {
  const list = whole.length > 0 ? whole.map((row) => itemOf(kind, row)) : null
  const same = JSON.stringify(whole) === JSON.stringify(rowsIn(state.scenario, kind))
  return {
    ...state,
    undo: null,
    drafts: { ...state.drafts, [kind]: drafts },
    scenario: same ? state.scenario : withChange(state.scenario, kind, list),
    variants: letGo(state, kind),
  }
}

/** A reading, or another input of the bench, changed; null where the path is none of the bench's. */
export function editBench(state: State, path: string, text: string | null): State | null {
  const place = readingAt(path)
  if (!place) {
    const input = path.startsWith('bench.') ? inputAt(state.scenario, path) : null
    if (!input) return null
    const variants = letGo(state, path)
    if ((input.usual ? null : input.text) === text && variants === state.variants) return state
    return { ...state, undo: null, variants, scenario: withChange(state.scenario, path, text) }
  }
  const { kind, index, key } = place
  const whole = [...rowsIn(state.scenario, kind)]
  const drafts = [...(state.drafts[kind] ?? [])]
  const before = whole[index] ?? drafts[index - whole.length] ?? {}
  if ((before[key] ?? null) === text) return state
  const { [key]: _, ...rest } = before
  const row: Row = text === null ? rest : { ...rest, [key]: text }
  const complete = isWhole(kind, row)
  const empty = Object.keys(row).length === 0
  if (index < whole.length) {
    if (complete) whole[index] = row
    else {
      whole.splice(index, 1)
      if (!empty) drafts.unshift(row)
    }
  } else {
    const at = index - whole.length
    while (drafts.length <= at) drafts.push({})
    drafts[at] = row
    if (complete) {
      drafts.splice(at, 1)
      whole.push(row)
    }
  }
  return put(state, kind, whole, drafts)
}

/** One more reading to fill in. */
export function addReading(state: State, kind: ReadingPath): State {
  const whole = rowsIn(state.scenario, kind)
  const drafts = [...(state.drafts[kind] ?? [])]
  // Those that are shown before anything is typed are there already.
  while (whole.length + drafts.length < READINGS[kind].least) drafts.push({})
  return put(state, kind, whole, [...drafts, {}])
}

/** Takes a reading away. */
export function removeReading(state: State, kind: ReadingPath, index: number): State {
  const whole = rowsIn(state.scenario, kind)
  const drafts = state.drafts[kind] ?? []
  return put(
    state,
    kind,
    whole.filter((_, at) => at !== index),
    drafts.filter((_, at) => at !== index - whole.length),
  )
}
