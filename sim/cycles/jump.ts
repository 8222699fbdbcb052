// How far to jump: no farther than the last landing promises, and never past a turn that comes near to opening.
import type { Job } from '../job.ts'
import { DESTROYED_C } from '../run.ts'
import { type Model, walk } from './model.ts'
import { heatOf, type Turn } from './turn.ts'

/** Turns of a first jump; how much longer the next may be, and how much shorter after a miss. */
export const FIRST_JUMP = 2
const MOST_GROWTH = 5
const LEAST_GROWTH = 0.2
const SAFETY = 0.8

/** The factor to the next jump by the error of the last, K: that grows as the cube of the jump. */
export function growth(error: number, tolerance: number): number {
  const factor = SAFETY * Math.cbrt(tolerance / Math.max(error, 1e-9))
  return Math.min(MOST_GROWTH, Math.max(LEAST_GROWTH, factor))
}

/** A turn that comes this near to opening the cutoff, or to the end of the winding, is not skipped. K */
const NEAR = 0.3

/** Says of a turn's highest temperatures (winding, frame, switch; °C) whether it must not be skipped. */
export function guard({ parts }: Job): (peaks: Float64Array) => boolean {
  const opensAt = parts.cutoff.fitted === 'none' ? Infinity : parts.cutoff.opensAt
  return ([windingC, , switchC]) => switchC > opensAt - NEAR || windingC > DESTROYED_C - NEAR
}

/** How many of the next turns, `most` at the most, come before the first that must not be skipped. */
export function room(
  model: Model,
  { start, peaks }: Turn,
  risky: (peaks: Float64Array) => boolean,
  most: number,
): number {
  let safe = 0
  // Peaks go with the start; a little too high where the start counts for less by then.
  const heat = heatOf(start.states)
  const likely = new Float64Array(peaks.length)
  walk(model, most, null, (n, z) => {
    for (let h = 0; h < likely.length; h++) likely[h] = peaks[h] + z[h] - heat[h]
    if (risky(likely)) return false
    safe = n
    return true
  })
  return safe
}
