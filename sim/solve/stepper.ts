// What every method looks like to the driver: take a step, read any moment within it.
import type { Effort, Failure } from './system.ts'

export interface Stepper {
  /**
   * Begins a segment at time t (s) and state y (copied): inputs may have jumped, so no history is kept.
   * firstStep (s, above 0) is a hint.
   */
  start(t: number, y: Float64Array, firstStep: number): void
  /**
   * One accepted step from t, ending at or before tEnd; null if fine, else why not, with t and y unmoved.
   * Throws where tEnd is not after t, and what the system's rates throw.
   */
  step(tEnd: number): Failure | null
  /** Where the last step began, and where it ended (s). */
  readonly tOld: number
  readonly t: number
  /** The state at t: one live buffer, overwritten by the next step. */
  readonly y: Float64Array
  /** One state at a time within the last step, its ends included. */
  value(state: number, t: number): number
  /** The time derivative of `value`. */
  slope(state: number, t: number): number
  /** All states at a time within the last step. */
  interpolate(t: number, out: Float64Array): void
  readonly effort: Readonly<Effort>
  /** The step (s) the controller would try next: a hint for the next segment's firstStep. */
  readonly nextStep: number
}

export interface Limits {
  /** Accepted steps after which `step` answers 'too many steps'. */
  readonly steps?: number
}
