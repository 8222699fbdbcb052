// A ready-made duty: the job's hardest cut put into a duty type, in place of the steps there are.
import { timesOf } from '../../sim/duty/patterns.ts'
import { DUTY_TYPES } from '../../sim/handbook/dutyTypes.ts'
import { hardestPhase } from '../../sim/judge.ts'
import { writeQuantity } from '../../sim/quantity.ts'
import { givenAt, withChange } from '../../sim/scenario.ts'
import { AS_FOUND, type Entry, type State } from '../store.ts'

const STEPS = 'duty.phases'

/** The state with the steps of a duty type (by its name); the same one where the job does not read or has no such type. */
export function usePattern(state: State, name: string): State {
  const type = DUTY_TYPES.find((each) => each.name === name)
  const reading = state.readings.get(AS_FOUND)
  if (!type || !reading?.ok) return state
  const kept = hardestPhase(reading.job.duty.phases)
  const cut = givenAt(state.scenario, `${STEPS}.${kept}`)
  if (typeof cut !== 'object' || cut === null) return state
  const { work, rest, repeatFor } = timesOf(type)
  const minutes = (seconds: number) => writeQuantity(seconds, 'min')
  const source = `ready-made: ${name}`
  const steps = [
    { ...cut, lasts: { value: minutes(work), source } },
    ...(rest > 0 ? [{ name: 'rest', lasts: { value: minutes(rest), source } }] : []),
  ]
  return {
    ...state,
    undo: `Steps replaced by ${name}.`,
    scenario: withChange(withChange(state.scenario, STEPS, steps), 'duty.repeatFor', {
      value: minutes(repeatFor),
      source,
    }),
    variants: state.variants.map((entry) => ({ ...entry, changes: moved(entry.changes, kept) })),
  }
}

/** Changes of a variant that still have a place: what the cut is, not how long the steps take. */
const moved = (changes: Entry['changes'], kept: number): Entry['changes'] =>
  Object.fromEntries(
    Object.entries(changes).flatMap(([path, text]) => {
      if (path === 'duty.repeatFor') return []
      const step = /^duty\.phases\.(\d+)\.(.*)$/.exec(path)
      if (!step) return [[path, text]]
      return Number(step[1]) === kept && step[2] !== 'lasts' ? [[`${STEPS}.0.${step[2]}`, text]] : []
    }),
  )
