// Steps of the pulleys: added to and taken from the job itself, so that every variant has the same list.
import { MOST_STEPS } from '../../sim/parts/belt.ts'
import { fromUnit, parseQuantity, toUnit } from '../../sim/quantity.ts'
import { inputAt, type Scenario, withChange } from '../../sim/scenario.ts'
import type { Entry, State } from '../store.ts'

const STEPS = 'belt.steps'
const IN_USE = 'belt.step'
/** A further step's driving pulley is so much larger than the one before; both together stay the same. */
const LARGER = 1.25

/** The further steps as they stand. */
const steps = ({ belt }: Scenario): readonly unknown[] => (Array.isArray(belt?.steps) ? belt.steps : [])

const lengthAt = (scenario: Scenario, path: string): number | null => {
  const parsed = parseQuantity(inputAt(scenario, path)?.text ?? '', 'length')
  return parsed.ok ? parsed.value : null
}

/** The pair before the one to be added: the last further one, or the pulleys themselves. */
function lastPair(scenario: Scenario): readonly [number, number] | null {
  const count = steps(scenario).length
  const driver = inputAt(scenario, 'belt.jackshaftSmall')?.text ? 'jackshaftSmall' : 'motorPulley'
  const [driving, driven] =
    count > 0
      ? [
          lengthAt(scenario, `${STEPS}.${count - 1}.driving`),
          lengthAt(scenario, `${STEPS}.${count - 1}.driven`),
        ]
      : [lengthAt(scenario, `belt.${driver}`), lengthAt(scenario, 'belt.machinePulley')]
  return driving === null || driven === null ? null : [driving, driven]
}

/** Adds a step whose diameters add up to those of the one before: so one belt fits both, or nearly. */
export function addBeltStep(state: State): State {
  const count = steps(state.scenario).length
  const before = lastPair(state.scenario)
  if (count >= MOST_STEPS - 1 || !before) return state
  const [unit, least] = state.settings.units.system === 'us' ? (['in', 0.25] as const) : (['mm', 5] as const)
  const rounded = (size: number) => Math.max(least, Math.round(toUnit(size, unit) / least) * least)
  const driving = rounded(before[0] * LARGER)
  const driven = rounded(before[0] + before[1] - fromUnit(driving, unit))
  const pair = { driving: `${driving} ${unit}`, driven: `${driven} ${unit}` }
  return { ...state, undo: null, scenario: withChange(state.scenario, `${STEPS}.${count}`, pair) }
}

/** Which step is in use once a further one, by its number from 1, is gone; null: the first. */
function stepAfter(text: string | null, gone: number): string | null {
  const step = Number(text)
  if (text === null || step === gone) return null
  return step > gone ? String(step - 1) : text
}

function moved(changes: Entry['changes'], removed: number): Entry['changes'] {
  return Object.fromEntries(
    Object.entries(changes).flatMap(([path, text]): (readonly [string, string | null])[] => {
      if (path === IN_USE) {
        const step = stepAfter(text, removed + 2)
        return step === null && text !== null ? [] : [[path, step]]
      }
      const found = /^belt\.steps\.(\d+)(.*)$/.exec(path)
      const index = Number(found?.[1])
      if (!found || index < removed) return [[path, text]]
      return index === removed ? [] : [[`${STEPS}.${index - 1}${found[2]}`, text]]
    }),
  )
}

/** Takes a further step out, by its place in their list; steps in use follow the pulleys they mean. */
export function removeBeltStep(state: State, index: number): State {
  const { scenario } = state
  if (!(index in steps(scenario))) return state
  const using = inputAt(scenario, IN_USE)
  const kept = withChange(scenario, `${STEPS}.${index}`, null)
  const next = using?.usual === false ? withChange(kept, IN_USE, stepAfter(using.text, index + 2)) : kept
  return {
    ...state,
    undo: 'Step of the pulleys removed.',
    scenario: steps(next).length === 0 ? withChange(next, STEPS, null) : next,
    variants: state.variants.map((entry) => ({ ...entry, changes: moved(entry.changes, index) })),
  }
}
