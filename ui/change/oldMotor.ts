// The old motor as typed on the page: kept while the page is open, saved with no job.
import { type Field, fieldOf } from '../../sim/field.ts'
import type { Problem } from '../../sim/problem.ts'
import { type GivenRival, MOST_STEPS, RivalFields, StepFields } from '../../sim/rival/fields.ts'
import { readRival, type RivalReading } from '../../sim/rival/read.ts'
import type { Input } from '../../sim/scenario.ts'
import type { State } from '../store.ts'
import { NO_STEP } from './noOldMotor.ts'

/** One step of its pulleys. */
export interface OldStep {
  readonly motorPulley: string
  readonly machinePulley: string
}

/** Texts by name; '' where a field is left open. At least one step. */
export interface OldMotor {
  readonly kind: string
  readonly power: string
  readonly speed: string
  readonly steps: readonly OldStep[]
}

/** Paths of the old motor's fields begin so; the rest is that of its reader. */
const UNDER = 'rival.'

export type PlateName = 'kind' | 'power' | 'speed'
const PLATE: Readonly<Record<PlateName, Field | null>> = {
  kind: fieldOf(RivalFields.entries.kind),
  power: fieldOf(RivalFields.entries.power),
  speed: fieldOf(RivalFields.entries.speed),
}
const PULLEYS: Readonly<Record<keyof OldStep, Field | null>> = {
  motorPulley: fieldOf(StepFields.entries.motorPulley),
  machinePulley: fieldOf(StepFields.entries.machinePulley),
}

const inputOf = (field: Field | null, path: string, text: string): Input | null =>
  field && { path: UNDER + path, field, text, usual: false, source: null, low: null, high: null }

/** A field of the old motor's plate, to be shown like any other. */
export const oldInput = (old: OldMotor, name: PlateName): Input | null =>
  inputOf(PLATE[name], name, old[name])

/** A pulley of one of its steps, named by the step where there are several. */
export function oldPulley(old: OldMotor, step: number, name: keyof OldStep): Input | null {
  const field = PULLEYS[name]
  const label = old.steps.length > 1 ? `${field?.label}, step ${step + 1}` : field?.label
  return inputOf(field && { ...field, label: label ?? '' }, `steps.${step}.${name}`, old.steps[step][name])
}

/** The problem of a field, if it has one; what is amiss with a step as a whole stands at its last pulley. */
export const oldProblem = (problems: readonly Problem[], { path }: Input): Problem | null => {
  const own = path.slice(UNDER.length)
  const step = own.endsWith('.machinePulley') ? own.slice(0, own.lastIndexOf('.')) : null
  return problems.find((problem) => problem.path === own || problem.path === step) ?? null
}

/** The state with a field of the old motor changed; null where the path is none of its. */
export function editOld(state: State, path: string, text: string | null): State | null {
  if (!path.startsWith(UNDER)) return null
  const { old } = state
  const [name, step, pulley] = path.slice(UNDER.length).split('.')
  const index = Number(step)
  const now = text ?? ''
  if (name === 'steps' && index in old.steps && Object.hasOwn(PULLEYS, pulley ?? ''))
    return withSteps(state, old.steps.with(index, { ...old.steps[index], [pulley]: now }))
  return step === undefined && Object.hasOwn(PLATE, name) ? { ...state, old: { ...old, [name]: now } } : null
}

const withSteps = (state: State, steps: readonly OldStep[]): State => ({
  ...state,
  old: { ...state.old, steps },
})

/** One more pair of pulleys, both still open. */
export const addOldStep = (state: State): State =>
  state.old.steps.length < MOST_STEPS ? withSteps(state, [...state.old.steps, NO_STEP]) : state

/** Takes a step away; the last one stays. */
export const removeOldStep = (state: State, index: number): State =>
  state.old.steps.length > 1 && index in state.old.steps
    ? withSteps(state, state.old.steps.toSpliced(index, 1))
    : state

/** True where one more step may be added. */
export const takesStep = ({ steps }: OldMotor): boolean => steps.length < MOST_STEPS

/** The old motor as read; null while its plate is not told. Without pulleys it is geared as this drive would be. */
export function readOld({ kind, power, speed, steps }: OldMotor): RivalReading | null {
  if (power === '' || speed === '') return null
  const given = steps.map(({ motorPulley, machinePulley }) => ({
    ...(motorPulley === '' ? {} : { motorPulley }),
    ...(machinePulley === '' ? {} : { machinePulley }),
  }))
  // A step that is still empty is none: the numbers of the others stay their own.
  const last = given.findLastIndex((step) => Object.keys(step).length > 0)
  return readRival({ kind: kind as GivenRival['kind'], power, speed, steps: given.slice(0, last + 1) })
}
