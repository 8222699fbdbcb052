// What is known of the turn's map near one start: a straight part, and a bend along the way the heat is going.
import { HEAT } from './turn.ts'

/** From temperatures z (°C) at a turn's start to those at its end, near z = at. */
export interface Model {
  readonly at: Float64Array
  /** What a turn from there adds, K. */
  readonly gain: Float64Array
  /** Mean slope of the map over the last `back` K of the way here, row-major. */
  readonly slope: Float64Array
  readonly back: number
  /** Second derivative of the map along the way, K/K²; and the way, a unit vector. */
  readonly bend: Float64Array
  readonly way: Float64Array
  /** Share of the winding in what the switch listens to. */
  readonly windingShare: number
}

/** Nearer than this the noise of the steps outweighs what two turns could tell of a slope. K */
const TELLING = 0.3

/** The switch only listens: what a turn does to winding and frame, and how it bends, depends on those two. */
const DRIVING = 2

/** Distance from a to b that drives the map, K. */
export function reach(a: Float64Array, b: Float64Array): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1])
}

/** The end of a turn that starts at z, by the model. `out` may be z. */
export function foresee(model: Model, z: Float64Array, out: Float64Array): void {
  const { at, gain, slope, back, bend, way } = model
  const d0 = z[0] - at[0]
  const d1 = z[1] - at[1]
  const d2 = z[2] - at[2]
  const forward = way[0] * d0 + way[1] * d1
  // The slope holds for the middle of the way behind; from there the bend has been at work.
  const bent = (forward * (forward + back)) / 2
  for (let h = 0; h < out.length; h++)
    out[h] =
      at[h] + gain[h] + slope[3 * h] * d0 + slope[3 * h + 1] * d1 + slope[3 * h + 2] * d2 + bend[h] * bent
}

/** How far a real turn from z, ending at `end`, ended above the model: K. */
export function defectOf(model: Model, z: Float64Array, end: Float64Array): Float64Array {
  const foreseen = new Float64Array(HEAT)
  foresee(model, z, foreseen)
  return foreseen.map((value, h) => end[h] - value)
}

/** The model with its bend set by a real turn from z that ended at `end`; still about its own start. */
export function bentTo(model: Model, z: Float64Array, end: Float64Array): Model {
  const far = reach(model.at, z)
  if (far < TELLING) return model
  const way = wayTo(model, z)
  const straight = defectOf({ ...model, bend: new Float64Array(HEAT) }, z, end)
  return { ...model, way, bend: straight.map((miss) => (2 * miss) / (far * (far + model.back))) }
}

/** The model about the start z, from a real turn there that ended at `end`. */
export function movedTo(model: Model, z: Float64Array, end: Float64Array): Model {
  const gain = end.map((value, h) => value - z[h])
  const at = z.slice()
  const far = reach(model.at, z)
  if (far < TELLING) return { ...model, at, gain }
  const { way, bend } = bentTo(model, z, end)
  const straight = defectOf({ ...model, bend: new Float64Array(HEAT) }, z, end)
  // The secant through both turns (Broyden's rank-one change).
  const slope = model.slope.slice()
  for (let h = 0; h < HEAT; h++)
    for (let k = 0; k < DRIVING; k++) slope[h * HEAT + k] += (straight[h] * way[k]) / far
  return { ...model, at, gain, slope, back: far, bend, way }
}

function wayTo({ at }: Model, z: Float64Array): Float64Array {
  const far = reach(at, z)
  return z.map((value, h) => (h < DRIVING ? (value - at[h]) / far : 0))
}

/** What is added along a walk: a defect found `far` K away, growing as the square of the way. */
export interface Defect {
  readonly value: Float64Array
  readonly far: number
}

/**
 * Walks turn after turn of the model from its start, and tells each: its number from 1, and its temperatures (one
 * live buffer). Stops after `turns`, or where `visit` answers false. Returns the last temperatures. A walk goes on
 * where another one ended, after turn `done` at temperatures `at`.
 */
export function walk(
  model: Model,
  turns: number,
  defect: Defect | null,
  visit: (turn: number, z: Float64Array) => boolean = () => true,
  done = 0,
  at = model.at,
): Float64Array {
  const z = at.slice()
  for (let n = done + 1; n <= turns; n++) {
    // No more than was found: a way back and forth, or one of no length, must not feed on itself.
    const weight = defect ? Math.min(1, reach(model.at, z) / Math.max(defect.far, 1e-9)) ** 2 : 0
    foresee(model, z, z)
    if (defect) for (let h = 0; h < z.length; h++) z[h] += weight * defect.value[h]
    if (!visit(n, z)) break
  }
  return z
}
