// Steps of the duty: added to and taken from the job itself, so that every variant has the same list.
import { MOST_PHASES } from '../../sim/duty.ts'
import { withChange } from '../../sim/scenario.ts'
import type { Entry, State } from '../store.ts'

const STEPS = 'duty.phases'

/** The steps as they stand; none where the job has no list of them. */
const steps = (state: State): readonly unknown[] => {
  const { phases } = state.scenario.duty ?? {}
  return Array.isArray(phases) ? phases : []
}

/** Adds a minute of rest at the end of the cycle. */
export function addStep(state: State): State {
  const count = steps(state).length
  if (count >= MOST_PHASES) return state
  const scenario = withChange(state.scenario, `${STEPS}.${count}`, { name: 'rest', lasts: '1 min' })
  return { ...state, undo: null, scenario }
}

/** Takes a step out; changes of variants follow the steps they belong to. The last step stays. */
export function removeStep(state: State, index: number): State {
  if (steps(state).length < 2 || !(index in steps(state))) return state
  return {
    ...state,
    undo: 'Step removed.',
    scenario: withChange(state.scenario, `${STEPS}.${index}`, null),
    variants: state.variants.map((entry) => ({ ...entry, changes: moved(entry.changes, index) })),
  }
}

function moved(changes: Entry['changes'], removed: number): Entry['changes'] {
  return Object.fromEntries(
    Object.entries(changes).flatMap(([path, text]) => {
      const found = /^duty\.phases\.(\d+)(.*)$/.exec(path)
      const index = Number(found?.[1])
      if (!found || index < removed) return [[path, text]]
      return index === removed ? [] : [[`${STEPS}.${index - 1}${found[2]}`, text]]
    }),
  )
}
