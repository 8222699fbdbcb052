// A laboratory: plants stripped to the equations of a problem, and the product's own rates to look at them with.
import { expect } from 'vitest'
import type { Cut } from '../../../sim/parts/machine.ts'
import {
  assemble,
  evaluate,
  FLOW,
  type Mode,
  type Parts,
  type Plant,
  readings,
  STATE,
  STATES,
} from '../../../sim/plant.ts'

/** Changes to a plant, part by part. */
export type Changes = { readonly [K in keyof Parts]?: Partial<Parts[K]> }

/** So much that it never changes: an inertia, a heat capacity, a limit. */
export const ENDLESS = 1e30

/**
 * Everything textbooks leave out is left out: no friction, brush drop, drag, ripple, limit, cutoff or belt loss, no
 * heat lost, temperatures held by endless heat capacity. At 20 °C resistance and constant are as given.
 */
const bare: Parts = {
  supply: { kind: 'battery', volts: 100, resistance: 0, formFactor: 1, lineVolts: 120, breaker: 15 },
  lumpy: null,
  controller: { holds: 'fixed voltage', compensation: 0, currentLimit: ENDLESS, ramp: 1e12, response: 0.1 },
  winding: {
    resistance: 1,
    inductance: 0.005,
    constant: 0.3,
    magnets: 'ferrite',
    brushDrop: 0,
    insulation: 'B',
  },
  rotor: { inertia: 0.005, flywheel: 0, dryFriction: 0, windage: 0 },
  belt: { motorPulley: 1, machinePulley: 1, efficiency: 1 },
  machine: { kind: 'other', inertia: 0, drag: 0, windage: 0, acceptedSag: 0.2 },
  heat: {
    cooling: 'none',
    air: 20,
    airflow: 1,
    airPath: 1,
    stir: 0,
    windingCapacity: ENDLESS,
    frameCapacity: ENDLESS,
    windingToFrame: 0,
    windingToAir: 0,
    windingToFanAir: 0,
    frameToAir: 0,
    frameToFanAir: 0,
    fanSpeed: 400,
    fanExponent: 0.8,
    frictionShare: 0.5,
    brushShare: 0.5,
  },
  cutoff: { fitted: 'none', opensAt: 120, reclosesAt: 80, place: 'brush end', windingShare: 1, lag: 1e-6 },
}

/** The bare parts with changes. */
export const partsWith = (changes: Changes): Parts => ({
  supply: { ...bare.supply, ...changes.supply },
  lumpy: (changes.lumpy as Parts['lumpy'] | undefined) ?? bare.lumpy,
  controller: { ...bare.controller, ...changes.controller },
  winding: { ...bare.winding, ...changes.winding },
  rotor: { ...bare.rotor, ...changes.rotor },
  belt: { ...bare.belt, ...changes.belt },
  machine: { ...bare.machine, ...changes.machine },
  heat: { ...bare.heat, ...changes.heat },
  cutoff: { ...bare.cutoff, ...changes.cutoff },
})

export const plantWith = (changes: Changes): Plant => assemble(partsWith(changes))

/** A state, the cut and surge at the spindle; what is left out is 0, temperatures 20 °C. */
export interface At {
  readonly i?: number
  readonly w?: number
  readonly windingC?: number
  readonly frameC?: number
  readonly cut?: Cut
}

/** The controller wishing for more volts than there are. */
export const flatOutMode = (cut: Cut = { kind: 'torque', torque: 0 }): Mode => {
  return { on: true, asked: ENDLESS, slope: 0, target: ENDLESS, cut, surge: 0 }
}

/** What `evaluate` says of a state with the controller flat out: rates and flows. */
export function look(plant: Plant, at: At) {
  const y = new Float64Array(STATES)
  y[STATE.current] = at.i ?? 0
  y[STATE.speed] = at.w ?? 0
  y[STATE.windingC] = at.windingC ?? 20
  y[STATE.frameC] = at.frameC ?? 20
  const rates = new Float64Array(STATES)
  const read = readings()
  evaluate(plant, flatOutMode(at.cut), 0, y, rates, read)
  const flow = (name: keyof typeof FLOW) => read.flows[FLOW[name]]
  return {
    currentRate: rates[STATE.current],
    speedRate: rates[STATE.speed],
    windingRate: rates[STATE.windingC],
    frameRate: rates[STATE.frameC],
    /** Torque that speeds the motor up, N·m. */
    spare: rates[STATE.speed] * plant.inertia,
    flow,
  }
}

/** Where f changes sign between a and b: by halving, to the last digit. Throws where it does not. */
export function zero(f: (x: number) => number, a: number, b: number): number {
  const sign = Math.sign(f(a))
  if (sign === 0) return a
  if (sign === Math.sign(f(b))) throw new Error(`no zero between ${a} and ${b}: ${f(a)}, ${f(b)}`)
  for (;;) {
    const middle = (a + b) / 2
    if (middle === a || middle === b) return middle
    if (Math.sign(f(middle)) === sign) a = middle
    else b = middle
  }
}

/** Where f is highest between a and b, having one hill there: by golden section, to 1e-6 of the span. */
export function highest(f: (x: number) => number, a: number, b: number): number {
  const end = 1e-6 * (b - a)
  while (b - a > end) {
    const [p, q] = [a + 0.382 * (b - a), b - 0.382 * (b - a)]
    if (f(p) < f(q)) a = p
    else b = q
  }
  return (a + b) / 2
}

/** Current that neither rises nor falls at this speed. A */
export const currentAt = (plant: Plant, at: At, most = 1e4): number =>
  zero((i) => look(plant, { ...at, i }).currentRate, 0, most)

/** The running point where current and speed both stay: A, rad/s at the motor. */
export function settled(plant: Plant, at: At = {}, fastest = 2000): { i: number; w: number } {
  const i = (w: number) => currentAt(plant, { ...at, w })
  // Faster than its voltage allows a motor takes no current here: the drive cannot brake.
  const w = zero((speed) => look(plant, { ...at, w: speed, i: i(speed) }).speedRate, 1, fastest)
  return { i: i(w), w }
}

/** Expects a value to lie within a relative distance of the wanted one. */
export function near(value: number, wanted: number, relative: number): void {
  expect(Math.abs(value / wanted - 1), `${value} against ${wanted}`).toBeLessThanOrEqual(relative)
}
