// The old motor as typed on the page: kept while the page is open, saved with no job.
import { type Field, fieldOf } from '../../sim/field.ts'
import type { Problem } from '../../sim/problem.ts'
import { type GivenRival, RivalFields, StepFields } from '../../sim/rival/fields.ts'
import { readRival, type RivalReading } from '../../sim/rival/read.ts'
import type { Input } from '../../sim/scenario.ts'
import type { State } from '../store.ts'

/** Texts by name; '' where a field is left open. */
export interface OldMotor {
  readonly kind: string
  readonly power: string
  readonly speed: string
  readonly motorPulley: string
  readonly machinePulley: string
}

export const NO_OLD_MOTOR: OldMotor = {
  kind: 'single-phase',
  power: '',
  speed: '',
  motorPulley: '',
  machinePulley: '',
}

/** Paths of the old motor's fields begin so; the rest is its name. */
const UNDER = 'rival.'

const FIELDS: Readonly<Record<keyof OldMotor, Field | null>> = {
  kind: fieldOf(RivalFields.entries.kind),
  power: fieldOf(RivalFields.entries.power),
  speed: fieldOf(RivalFields.entries.speed),
  motorPulley: fieldOf(StepFields.entries.motorPulley),
  machinePulley: fieldOf(StepFields.entries.machinePulley),
}
const OLD_NAMES = Object.keys(FIELDS) as (keyof OldMotor)[]

/** A field of the old motor, to be shown like any other. */
export function oldInput(old: OldMotor, name: keyof OldMotor): Input | null {
  const field = FIELDS[name]
  return (
    field && { path: UNDER + name, field, text: old[name], usual: false, source: null, low: null, high: null }
  )
}

/** The problem of a field, if it has one. */
export const oldProblem = (problems: readonly Problem[], name: keyof OldMotor): Problem | null =>
  problems.find(({ path }) => path.split('.').at(-1) === name) ??
  (name === 'machinePulley' ? (problems.find(({ path }) => path.startsWith('steps')) ?? null) : null)

/** The state with a field of the old motor changed; null where the path is none of its. */
export function editOld(state: State, path: string, text: string | null): State | null {
  const name = OLD_NAMES.find((each) => path === UNDER + each)
  if (!name) return null
  return { ...state, old: { ...state.old, [name]: text ?? '' } }
}

/** The old motor as read; null while its plate is not told. Without pulleys it is geared as this drive would be. */
export function readOld({ kind, power, speed, motorPulley, machinePulley }: OldMotor): RivalReading | null {
  if (power === '' || speed === '') return null
  const pulleys = {
    ...(motorPulley === '' ? {} : { motorPulley }),
    ...(machinePulley === '' ? {} : { machinePulley }),
  }
  return readRival({
    kind: kind as GivenRival['kind'],
    power,
    speed,
    steps: Object.keys(pulleys).length > 0 ? [pulleys] : [],
  })
}
