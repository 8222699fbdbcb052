// What the report is made from: the chosen variant's answer with all that stands beside it, taken from the state once.
import type { Advice } from '../../../sim/advise.ts'
import type { Accepted } from '../../../sim/read.ts'
import type { Scenario } from '../../../sim/scenario.ts'
import type { Units } from '../../../sim/say/units.ts'
import type { LimitsStudy } from '../../../sim/studies/limits.ts'
import type { Sure } from '../../../sim/studies/sure.ts'
import type { Shown } from '../../plot/shown.ts'
import { chosenOf, type State } from '../../store.ts'
import { isStale } from '../../studies.ts'
import { linesOf, shownJob } from '../../view.ts'
import type { ShownJob } from '../shownJob.ts'
import { type Column, columns, type VariantRow, variantRows } from '../variantRows.ts'
import { type InputGroup, inputGroups } from './inputs.ts'

export interface Report {
  readonly name: string
  readonly variant: string
  readonly units: Units
  readonly shown: ShownJob
  readonly reading: Accepted
  /** The job's text, as the variant on show has it. */
  readonly scenario: Scenario
  readonly inputs: readonly InputGroup[]
  readonly lines: readonly Shown[]
  readonly columns: readonly Column[]
  readonly rows: readonly VariantRow[]
  /** Null where it is not there, or of other inputs. */
  readonly advice: Advice | null
  readonly limits: LimitsStudy | null
  readonly sure: Sure | null
  readonly ticked: readonly string[]
}

/** What a report rests on. */
export const restsOn = (state: State): readonly unknown[] => [
  state.scenario,
  state.variants,
  state.chosen,
  state.results,
  state.readings,
  state.asked,
  state.slow,
  state.stopped,
  state.settings.units,
  state.studies.advice.result,
  state.studies.limits.result,
  state.studies.sure.result,
  state.ticked,
]

/** The report of the variant on show; null until it has an answer. Its inputs are those the answer was worked out from. */
export function reportOf(state: State): Report | null {
  const shown = shownJob(state)
  if (!shown) return null
  const { units } = state.settings
  const { result } = shown
  const current = <T>(name: 'advice' | 'limits', found: T | null): T | null =>
    shown.previous || isStale(state, name) ? null : found
  return {
    name: state.scenario.name || 'A job',
    variant: chosenOf(state).name,
    units,
    shown,
    reading: result.reading,
    scenario: result.text,
    inputs: inputGroups(result.text, result.reading.motor, units),
    lines: linesOf(state),
    columns: columns(state),
    rows: variantRows(state),
    advice: current('advice', state.studies.advice.result),
    limits: current('limits', state.studies.limits.result),
    sure: shown.sure,
    ticked: state.ticked,
  }
}
