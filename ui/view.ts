// From the state to what the zones are given: the answer on show, the form, the lines to draw.
import { assemble } from '../sim/plant.ts'
import { drafted } from './change/bench.ts'
import { amiss, lacks } from './change/blank.ts'
import { asked } from './change/inputs.ts'
import type { FormState } from './edit/field.ts'
import type { Shown } from './plot/shown.ts'
import { chosenOf, entriesOf, isCurrent, type State } from './store.ts'
import { isStaleBy } from './study/keeper.ts'
import { sureKeeper } from './study/sure.ts'
import { type ShownJob, seriesOf } from './zone/shownJob.ts'

/** The chosen variant's newest answer; null until there is one. */
export function shownJob(state: State): ShownJob | null {
  const { id, name } = chosenOf(state)
  const result = state.results.get(id)
  if (!result) return null
  // While work is quick no sign is shown: the old answer is simply followed by the new one.
  const late = state.slow || state.stopped !== null || state.readings.get(id)?.ok === false
  const current = isCurrent(state, id)
  const sure = current && !isStaleBy(sureKeeper, state, 'sure') ? state.studies.sure.result : null
  return { name, result, previous: late && !current, sure }
}

/** What the stations' forms stand on. */
export function formOf(state: State): FormState {
  const chosen = chosenOf(state)
  const reading = state.readings.get(chosen.id)
  return {
    asked: drafted(asked(state), state.drafts),
    found: state.scenario,
    variant: chosen.id === entriesOf(state)[0].id ? null : chosen.name,
    problems: reading?.ok === false ? amiss(state, reading.problems) : [],
    lacking: lacks(state),
    notes: reading?.ok ? reading.notes : [],
    motor: reading?.ok ? reading.motor : null,
    units: state.settings.units,
  }
}

/** Others drawn beside the chosen variant. */
const OTHERS = 2

/** The lines to draw: the chosen variant and the first two others that have an answer. */
export function linesOf(state: State): readonly Shown[] {
  const chosen = chosenOf(state).id
  const ready = entriesOf(state).filter(({ id }) => state.results.has(id))
  const others = ready.filter(({ id }) => id !== chosen).slice(0, OTHERS)
  return ready
    .filter((entry) => entry.id === chosen || others.includes(entry))
    .flatMap(({ id, name }) => {
      const result = state.results.get(id)
      if (!result) return []
      const { job, trace } = result
      return {
        id,
        name,
        series: seriesOf(state, id),
        active: id === chosen,
        trace,
        job,
        ratio: assemble(job.parts).ratio,
      }
    })
}

/** A function of the state that is worked out anew only when one of the things it rests on is another. */
export function remembered<T>(
  on: (state: State) => readonly unknown[],
  make: (state: State) => T,
): (state: State) => T {
  let last: { keys: readonly unknown[]; value: T } | null = null
  return (state) => {
    const keys = on(state)
    if (!last || keys.some((key, index) => key !== last?.keys[index])) last = { keys, value: make(state) }
    return last.value
  }
}
