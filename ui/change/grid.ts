// The grid as asked on the page: two inputs with the ranges they go through, and the figure looked at.
import { cycleSeconds, type Duty } from '../../sim/duty.ts'
import { hardestPhase } from '../../sim/judge.ts'
import type { Problem } from '../../sim/problem.ts'
import { fromUnit, parseQuantity, toUnit } from '../../sim/quantity.ts'
import { boundsOf } from '../../sim/reading.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import { type Input, inputAt, inputsOf, type Scenario, withVariant } from '../../sim/scenario.ts'
import type { FigureName } from '../../sim/studies/figures.ts'
import { type Axis, axisOf, mayBeAxis } from '../../sim/studies/grid/axis.ts'
import { chosenOf, type State } from '../store.ts'
import type { AxisAsked, GridAsked } from './gridAsked.ts'

/** Values along and down: what a phone has room for. */
export const COUNTS = { x: 6, y: 5 } as const

/** How far around the present value a range is first drawn: a share of it; of a temperature, K. */
const UNDER = 0.6
const OVER = 1.6
const AROUND = 15

/** Of what stands at nothing, so much of its range is gone through: a tenth. */
const TENTH = 0.1

/** An end of a range nobody has chosen, in a unit: two digits are enough, where they stay between the bounds. */
function short(value: number, unit: string, { low, high }: { low: number; high: number }): string {
  const exact = toUnit(value, unit)
  const digits = [2, 3, 4, 6].find((count) => {
    const back = fromUnit(Number(exact.toPrecision(count)), unit)
    return back >= low && back <= high
  })
  return String(digits ? Number(exact.toPrecision(digits)) : exact)
}

/** A range around what stands there, in the reader's units; '' where there is no telling. */
export function rangeAround({ field, text }: Input, units: Units): string {
  if (field.kind !== 'quantity') return ''
  const parsed = parseQuantity(text, field.dimension)
  if (!parsed.ok) return ''
  const bounds = boundsOf(field)
  const { low, high } = bounds
  const unit = field.dimension === 'time' ? parsed.unit : unitFor(field.dimension, units)
  const { value } = parsed
  const [from, to] =
    field.dimension === 'temperature'
      ? [value - AROUND, value + AROUND]
      : value > 0
        ? [value * UNDER, value * OVER]
        : [low, low + TENTH * (high - low)]
  const [first, last] = [Math.max(low, from), Math.min(high, to)]
  return `${short(first, unit, bounds)}..${short(last, unit, bounds)} ${unit}`.trim()
}

/** The inputs that can be an axis, as the chosen variant has them: those that hold something. */
export const axisInputs = (scenario: Scenario): readonly Input[] =>
  inputsOf(scenario).filter((input) => mayBeAxis(input) && input.text !== '')

/** The chosen variant as text. */
export const chosenText = (state: State): Scenario => withVariant(state.scenario, chosenOf(state))

/** The grid asked for; before anybody has chosen, the pulley against the cut, or against the air where no torque is given. */
export function gridOf(state: State): GridAsked {
  if (state.grid) return state.grid
  const { units } = state.settings
  const scenario = chosenText(state)
  const reading = state.readings.get(chosenOf(state).id)
  const around = (path: string): AxisAsked => {
    const input = inputAt(scenario, path)
    return { path, range: input ? rangeAround(input, units) : '' }
  }
  const torque = reading?.ok ? torquePath(scenario, reading.job.duty) : null
  return { x: around('belt.machinePulley'), y: around(torque ?? 'heat.air'), figure: 'firstOpening' }
}

function torquePath(scenario: Scenario, duty: Duty): string | null {
  if (cycleSeconds(duty) <= 0) return null
  const path = `duty.phases.${hardestPhase(duty.phases)}.torque`
  return inputAt(scenario, path)?.text ? path : null
}

/** An axis as asked, read; or what is amiss with it. */
export const axisRead = (scenario: Scenario, { path, range }: AxisAsked, name: 'x' | 'y'): Axis | Problem =>
  axisOf(scenario, path, range.trim() === '' ? null : range, COUNTS[name])

/** The state with part of the grid chosen; another input starts with a range around what it has. */
export function changeGrid(
  state: State,
  part: { readonly [N in 'x' | 'y']?: Partial<AxisAsked> } & { readonly figure?: FigureName },
): State {
  const now = gridOf(state)
  const axis = (name: 'x' | 'y'): AxisAsked => {
    const change = part[name]
    if (!change) return now[name]
    if (change.path === undefined || change.path === now[name].path) return { ...now[name], ...change }
    const input = inputAt(chosenText(state), change.path)
    return { path: change.path, range: input ? rangeAround(input, state.settings.units) : '' }
  }
  return { ...state, grid: { x: axis('x'), y: axis('y'), figure: part.figure ?? now.figure } }
}
