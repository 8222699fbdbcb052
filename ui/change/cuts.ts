// What the work of a step takes: nothing, a torque, a power, a fan's torque, or a cut worked out from the work itself.
import type { CutName } from '../../sim/cuts/index.ts'
import { phaseCut } from '../../sim/phaseCuts.ts'
import { parseQuantity, toUnit, writeQuantity } from '../../sim/quantity.ts'
import { givenAt, inputAt, inputsOf, type Scenario, withChange } from '../../sim/scenario.ts'
import type { CutKind } from '../events.ts'
import { AS_FOUND, type Entry, type State } from '../store.ts'
import { FIRST_CUTS } from './firstCuts.ts'
import { amended, asked, edit, given } from './inputs.ts'

const NUMBERS = ['torque', 'power', 'fanTorque'] as const
const FIRST = { torque: '5 N·m', power: '200 W', fanTorque: '5 N·m' } as const

const stepAt = (index: number): string => `duty.phases.${index}`

/** Value of an input in SI, or null. */
function valueAt(scenario: Scenario, path: string): number | null {
  const input = inputAt(scenario, path)
  if (input?.field.kind !== 'quantity') return null
  const parsed = parseQuantity(input.text, input.field.dimension)
  return parsed.ok ? parsed.value : null
}

/** The cut a step names, worked out; null where it names none, or one that does not read. */
function worked(scenario: Scenario, index: number) {
  const found = phaseCut(scenario, index)
  return found && 'kind' in found ? found : null
}

/** Torque of a step at its asked speed, N·m; null where none is known. */
function torqueOf(scenario: Scenario, index: number): number | null {
  const step = stepAt(index)
  const speed = valueAt(scenario, `${step}.speed`) ?? 0
  const power = valueAt(scenario, `${step}.power`)
  return (
    worked(scenario, index)?.torque ??
    valueAt(scenario, `${step}.torque`) ??
    valueAt(scenario, `${step}.fanTorque`) ??
    (power !== null && speed > 0 ? power / speed : null)
  )
}

/** A number to three digits, as a text. */
const rough = (value: number, unit: string): string => writeQuantity(Number(value.toPrecision(3)), unit)

const turning = (speed: number): string => `${Number(toUnit(speed, 'rpm').toPrecision(4))} rpm`

/** Turns a step's cut into another kind, of the same torque at the asked speed where one is known. */
export function changeCut(state: State, index: number, cut: CutKind): State {
  if (cut === 'cut') return changeWork(state, index, 'turning')
  const scenario = asked(state)
  const step = stepAt(index)
  const named = worked(scenario, index)
  const speed = named?.speed ?? valueAt(scenario, `${step}.speed`) ?? 0
  const torque = torqueOf(scenario, index)
  const text = (kind: (typeof NUMBERS)[number]): string => {
    if (torque === null || (kind === 'power' && speed === 0)) return FIRST[kind]
    return rough(kind === 'power' ? torque * speed : torque, kind === 'power' ? 'W' : 'N·m')
  }
  const turns = given(scenario, `${step}.speed`)
  return edit(withCut(state, index, null), {
    // The speed that followed from the cut's surface stays when the cut goes.
    ...(named && turns === null ? { [`${step}.speed`]: turning(speed) } : {}),
    ...Object.fromEntries(
      NUMBERS.map((kind) => [
        `${step}.${kind}`,
        kind === cut ? (given(scenario, `${step}.${kind}`) ?? text(kind)) : null,
      ]),
    ),
  })
}

/** Has a step name a cut of this kind, with an example of its inputs; at the step's own speed where it has one. */
export function changeWork(state: State, index: number, work: CutName): State {
  const scenario = asked(state)
  const step = stepAt(index)
  if (givenAt(scenario, `${step}.cut.kind`) === work) return state
  const { texts, surface, spindle } = FIRST_CUTS[work]
  const turns = (valueAt(scenario, `${step}.speed`) ?? 0) > 0
  const named = withCut(state, index, {
    kind: work,
    ...texts,
    ...(surface !== undefined && !turns ? { speed: surface } : {}),
  })
  return edit(named, {
    ...(turns ? {} : { [`${step}.speed`]: spindle ?? null }),
    ...Object.fromEntries(NUMBERS.map((kind) => [`${step}.${kind}`, null])),
  })
}

/** The state with the named cut of a step replaced; null: it names none. */
function withCut(state: State, index: number, cut: Readonly<Record<string, string>> | null): State {
  const path = `${stepAt(index)}.cut`
  if (state.chosen === AS_FOUND) {
    if (cut === null && givenAt(state.scenario, path) === undefined) return state
    return { ...state, scenario: withChange(state.scenario, path, cut) }
  }
  const changes = (before: Entry['changes']) =>
    differences(
      state.scenario,
      Object.fromEntries(
        Object.entries(before).filter(([each]) => each !== path && !each.startsWith(`${path}.`)),
      ),
      path,
      cut,
    )
  return {
    ...state,
    variants: state.variants.map((entry) =>
      entry.id === state.chosen ? { ...entry, changes: changes(entry.changes) } : entry,
    ),
  }
}

/** A variant's changes with those that make the cut at a path of the job as found into another. */
function differences(
  scenario: Scenario,
  rest: Entry['changes'],
  path: string,
  cut: Readonly<Record<string, string>> | null,
): Entry['changes'] {
  const found = givenAt(scenario, path) !== undefined
  if (cut === null) return found ? { ...rest, [path]: null } : rest
  const texts = Object.entries(cut).map(([key, text]): [string, string | null] => [`${path}.${key}`, text])
  if (givenAt(scenario, `${path}.kind`) !== cut.kind)
    return { ...rest, ...(found ? { [path]: null } : {}), ...Object.fromEntries(texts) }
  const open = inputsOf(scenario, path)
    .map((input): [string, string | null] => [input.path, null])
    .filter(([each]) => !Object.hasOwn(cut, each.slice(path.length + 1)))
  return [...texts, ...open].reduce((changes, [each, text]) => amended(scenario, changes, each, text), rest)
}

/** An edit with what goes with it: of a step's spindle speed and its cut's surface speed one is given, the newer. */
export function withOtherSpeed(
  state: State,
  path: string,
  text: string | null,
): Readonly<Record<string, string | null>> {
  const found = /^(duty\.phases\.\d+)\.(cut\.speed|speed)$/.exec(path)
  const other = found && `${found[1]}.${found[2] === 'speed' ? 'cut.speed' : 'speed'}`
  const both = other && text !== null && given(asked(state), `${found[1]}.cut.kind`) !== null
  return both ? { [path]: text, [other]: null } : { [path]: text }
}
