// The driver's single move: one step towards an edge, stopped short where a watched state crosses a level.
import { root } from './root.ts'
import type { Stepper } from './stepper.ts'
import type { Failure } from './system.ts'

/** y[state] crosses `level` upwards (1) or downwards (−1). */
export interface Crossing {
  readonly state: number
  readonly level: number
  readonly direction: 1 | -1
}

/**
 * What a move came to. 'step': accepted, the edge is ahead. 'edge': the stepper stands exactly at tEnd.
 * 'crossing': watch[index] was crossed at t with state y, a copy with y[state] = level; the stepper has gone
 * past it, so go on with start(t, y, …). 'failed': the stepper has not moved.
 */
export type Move =
  | { readonly kind: 'step' }
  | { readonly kind: 'edge' }
  | { readonly kind: 'crossing'; readonly index: number; readonly t: number; readonly y: Float64Array }
  | { readonly kind: 'failed'; readonly why: Failure }

const step: Move = { kind: 'step' }
const edge: Move = { kind: 'edge' }

/** Crossing times are found to this fraction of the step. */
const precision = 1e-12

/**
 * Takes one step towards tEnd (s) and reports the earliest crossing within it. A state crosses when it was
 * short of the level before and is at it or beyond after: one that starts at the level does not cross it.
 */
export function advance(stepper: Stepper, tEnd: number, watch: readonly Crossing[]): Move {
  if (stepper.t >= tEnd) return edge
  const why = stepper.step(tEnd)
  if (why) return { kind: 'failed', why }
  let first = Infinity
  let index = -1
  for (let w = 0; w < watch.length; w++) {
    const t = firstCrossing(stepper, watch[w])
    if (t < first) {
      first = t
      index = w
    }
  }
  if (index < 0) return stepper.t === tEnd ? edge : step
  const y = new Float64Array(stepper.y.length)
  stepper.interpolate(first, y)
  y[watch[index].state] = watch[index].level
  return { kind: 'crossing', index, t: first, y }
}

/** The first crossing in the last step, or Infinity: piece by piece between turning points. */
function firstCrossing(stepper: Stepper, crossing: Crossing): number {
  const { tOld, t } = stepper
  const { state } = crossing
  const slope = stepper.slope(state, tOld)
  const middle = (tOld + t) / 2
  const slopeMiddle = stepper.slope(state, middle)
  const slopeEnd = stepper.slope(state, t)
  let from = tOld
  if (slope > 0 !== slopeMiddle > 0) {
    const turn = turningPoint(stepper, state, tOld, middle, slope, slopeMiddle)
    const found = crossingIn(stepper, crossing, from, turn)
    if (found < Infinity) return found
    from = turn
  }
  if (slopeMiddle > 0 !== slopeEnd > 0) {
    const turn = turningPoint(stepper, state, middle, t, slopeMiddle, slopeEnd)
    const found = crossingIn(stepper, crossing, from, turn)
    if (found < Infinity) return found
    from = turn
  }
  return crossingIn(stepper, crossing, from, t)
}

/** Where the state turns between a and b, its slopes there being sa and sb of opposite sign. */
function turningPoint(stepper: Stepper, state: number, a: number, b: number, sa: number, sb: number): number {
  return root((at) => stepper.slope(state, at), a, b, sa, sb, precision * (b - a))
}

/** The crossing in a piece without turning points, or Infinity. */
function crossingIn(stepper: Stepper, crossing: Crossing, a: number, b: number): number {
  const { state, level, direction } = crossing
  const before = direction * (stepper.value(state, a) - level)
  const after = direction * (stepper.value(state, b) - level)
  if (!(before < 0 && after >= 0)) return Infinity
  const beyond = (at: number) => direction * (stepper.value(state, at) - level)
  return root(beyond, a, b, before, after, precision * (stepper.t - stepper.tOld))
}
