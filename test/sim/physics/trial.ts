// Trials: a stripped plant followed through time, finely by the product's stepper or in a run of the product.
import { expect } from 'vitest'
import { clock } from '../../../sim/clock.ts'
import type { Phase } from '../../../sim/duty.ts'
import type { Job } from '../../../sim/job.ts'
import type { Cut } from '../../../sim/parts/machine.ts'
import { ABSOLUTE, evaluate, FLOWS, type Plant, STATE, STATES, TYPICAL } from '../../../sim/plant.ts'
import { finish, type Run, run } from '../../../sim/run.ts'
import { advance, type Crossing } from '../../../sim/solve/advance.ts'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import { type Changes, ENDLESS, flatOutMode, partsWith } from './lab.ts'

/** A motor held still at a current, all its states at one temperature: °C. */
export const holding = (i: number, startC: number) => Float64Array.of(i, 0, 0, startC, startC, startC)

/** A motor held still at a current by its limit: a winding with known heat. */
export const held = (i: number, more: Changes): Changes => ({
  ...more,
  supply: { volts: 1e4 },
  controller: { currentLimit: i },
  rotor: { inertia: ENDLESS },
  winding: { inductance: 1, ...more.winding },
})

/**
 * Copper of a coefficient α at 20 °C. Ours has the zero point of IEC 60034-1, 235 K below 0 °C; both are straight
 * lines, so a thermometer moved by 1/α − 255 K and a resistance of 255 α R20 make them the same one.
 */
export const copper = (alpha: number, R20: number) => ({
  resistance: 255 * alpha * R20,
  moved: 1 / alpha - 255,
})

/** Copper of no resistance to speak of: the heat then comes from the brushes, and knows no temperature. */
export const NO_COPPER = 1e-12

/** A level that a state rises through. */
export const rising = (state: number, level: number): Crossing => ({ state, level, direction: 1 })

/**
 * The plant flat out from a state, through the product's rates, stepper and event location, at a tolerance of 1e-10:
 * states at the asked times (s, ascending), and where `watch` is crossed (s; NaN if it is not before the last time).
 */
export function follow(
  plant: Plant,
  from: Float64Array,
  times: readonly number[],
  watch: readonly Crossing[] = [],
) {
  const mode = flatOutMode()
  const stepper = rosenbrock(
    {
      size: STATES,
      typical: TYPICAL,
      autonomous: true,
      rates: (t, y, out) => evaluate(plant, mode, t, y, out),
    },
    { relative: 1e-10, absolute: ABSOLUTE.map((size) => size * 1e-8) },
  )
  stepper.start(0, from, 1e-4)
  const states: Float64Array[] = []
  for (const time of times) {
    while (stepper.t < time) {
      const move = advance(stepper, time, watch)
      if (move.kind === 'failed') throw new Error(move.why)
      if (move.kind === 'crossing') return { states, crossed: move.t }
    }
    states.push(stepper.y.slice())
  }
  return { states, crossed: Number.NaN }
}

/** Phase that asks for more volts than there are. */
export const flatOut = (seconds: number, cut: Cut = { kind: 'torque', torque: 0 }): Phase => ({
  name: '',
  seconds,
  speed: ENDLESS,
  cut,
  surge: null,
})

export interface Trial {
  readonly changes: Changes
  readonly phases: readonly Phase[]
  readonly seconds: number
  readonly startC?: number
  readonly samples?: readonly number[]
  /** Current already flowing at the start, A. */
  readonly flowing?: number
}

/** Runs a trial through the product, at the "precise" tolerance. */
export function runTrial(trial: Trial): Run {
  const startC = trial.startC ?? 20
  const from = trial.flowing !== undefined && {
    t: 0,
    states: holding(trial.flowing, startC),
    sums: new Float64Array(FLOWS),
    clock: clock(),
    asked: ENDLESS,
    on: true,
    open: false,
  }
  const job: Job = {
    parts: partsWith(trial.changes),
    plate: {},
    duty: { phases: trial.phases, seconds: trial.seconds, startC },
    accuracy: 'precise',
  }
  return finish(run(job, { samples: trial.samples ?? [], ...(from && { from }) }))
}

/** Time of the first mark of a kind, s; NaN if there is none. */
export const timeOf = ({ trace }: Run, kind: 'opens' | 'recloses'): number =>
  trace.marks.find((mark) => mark.kind === kind)?.t ?? Number.NaN

/** Expects states to lie within the "precise" tolerance of the wanted ones: 1e-5 relative and a tenth of ABSOLUTE. */
export function precisely(
  states: Float64Array,
  wanted: Readonly<Partial<Record<keyof typeof STATE, number>>>,
): void {
  for (const [name, value] of Object.entries(wanted)) {
    const state = STATE[name as keyof typeof STATE]
    const allowed = ABSOLUTE[state] / 10 + 1e-5 * Math.abs(value)
    expect(Math.abs(states[state] - value), `${name} ${states[state]} against ${value}`).toBeLessThanOrEqual(
      allowed,
    )
  }
}
