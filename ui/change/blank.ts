// A job of which nothing is known yet: what it still lacks, thing by thing, until it can be answered.
import type { Problem } from '../../sim/problem.ts'
import type { Station } from '../../sim/say/stations.ts'
import { inputAt, type Scenario } from '../../sim/scenario.ts'
import { stationOf } from '../edit/groups.ts'
import { chosenOf, type State } from '../store.ts'

/** The empty sheet: every input that has no usual value stands open. */
export const BLANK: Scenario = {
  format: 1,
  name: 'Untitled job',
  supply: { volts: '' },
  controller: { currentLimit: '' },
  belt: { motorPulley: '', machinePulley: '' },
  duty: {
    phases: [
      { name: 'work', lasts: '', speed: '', torque: '' },
      { name: 'rest', lasts: '' },
    ],
    repeatFor: '',
  },
}

const textAt = (scenario: Scenario, path: string): string => inputAt(scenario, path)?.text ?? ''

/** Two of these make a motor. */
const OF_THE_PLATE = ['plate.volts', 'plate.amps', 'plate.power'] as const

const lacksPlate = (scenario: Scenario): boolean =>
  OF_THE_PLATE.filter((path) => textAt(scenario, path) !== '').length < 2 &&
  textAt(scenario, 'winding.constant') === ''

/**
 * Paths of what a job without any answer still lacks; null where it lacks nothing, or was answered before: then what is
 * empty is amiss, and told as such.
 */
export function lacks(state: State): readonly string[] | null {
  const reading = state.readings.get(chosenOf(state).id)
  if (state.results.size > 0 || reading?.ok !== false) return null
  const { scenario } = state
  const empty = reading.problems.map(({ path }) => path).filter((path) => textAt(scenario, path) === '')
  if (empty.length === 0) return null
  return lacksPlate(scenario) ? ['plate.power', ...empty.filter((path) => !path.startsWith('plate'))] : empty
}

/** Of the problems of the chosen job those that are amiss: what nobody has written yet is not. */
export function amiss(state: State, problems: readonly Problem[]): readonly Problem[] {
  const open = lacks(state)
  return open ? problems.filter(({ path }) => textAt(state.scenario, path) !== '') : problems
}

/** Whether a job that lacks these has all that is asked at a station. */
export const isGiven = (lacking: readonly string[], station: Station): boolean =>
  lacking.every((path) => stationOf(path) !== station)
