// Changes to inputs: to the job while it is shown as found, else to the chosen variant alone.
import { inputAt, type Scenario, withChange, withVariant } from '../../sim/scenario.ts'
import { AS_FOUND, chosenOf, type Entry, type State } from '../store.ts'

/** The job with the chosen variant's changes in it: what the fields show. */
export const asked = (state: Pick<State, 'scenario' | 'variants' | 'chosen'>): Scenario =>
  withVariant(state.scenario, chosenOf(state))

/** Text of an input that stands in the scenario; null where it is left out. */
export function given(scenario: Scenario, path: string): string | null {
  const input = inputAt(scenario, path)
  return input && !input.usual ? input.text : null
}

/** A variant's changes with one more, kept only where it differs from the job as found. */
export function amended(
  scenario: Scenario,
  changes: Entry['changes'],
  path: string,
  text: string | null,
): Entry['changes'] {
  const { [path]: _, ...rest } = changes
  return text === given(scenario, path) ? rest : { ...rest, [path]: text }
}

/** Changes inputs of what is chosen. Returns the same state where nothing differs. */
export function edit(state: State, texts: Readonly<Record<string, string | null>>): State {
  const now = asked(state)
  const news = Object.entries(texts).filter(([path, text]) => given(now, path) !== text)
  if (news.length === 0) return state
  if (state.chosen === AS_FOUND)
    return {
      ...state,
      undo: null,
      scenario: news.reduce((scenario, [path, text]) => withChange(scenario, path, text), state.scenario),
    }
  const variants = state.variants.map((entry) =>
    entry.id === state.chosen
      ? {
          ...entry,
          changes: news.reduce(
            (changes, [path, text]) => amended(state.scenario, changes, path, text),
            entry.changes,
          ),
        }
      : entry,
  )
  return { ...state, undo: null, variants }
}

const SURGE = { torque: '2 N·m', every: '10 s', lasts: '2 s' } as const

/** Gives a step surges, or takes them away. */
export function changeSurge(state: State, index: number, on: boolean): State {
  const path = `duty.phases.${index}.surge`
  const texts = Object.entries(SURGE).map(([key, text]) => [`${path}.${key}`, on ? text : null])
  const changed = edit(state, Object.fromEntries(texts))
  if (on) return changed
  // A surge with nothing in it is no surge: the group goes too.
  if (state.chosen === AS_FOUND) return { ...changed, scenario: withChange(changed.scenario, path, null) }
  const variants = changed.variants.map((entry) =>
    entry.id === state.chosen
      ? {
          ...entry,
          changes: {
            ...Object.fromEntries(
              Object.entries(entry.changes).filter(([key]) => !key.startsWith(`${path}.`)),
            ),
            [path]: null,
          },
        }
      : entry,
  )
  return { ...changed, variants }
}
