// What a solver is given: rates of change, the accuracy wanted, and counters of what it cost.

/** dy/dt = f(t, y) of `size` states. */
export interface System {
  readonly size: number
  /** Writes the rates (state units per second) at time t (s) and state y. May throw: it passes through. */
  rates(t: number, y: Float64Array, out: Float64Array): void
  /** True where the rates do not depend on t: saves a call a step. May be a getter, read at every step. */
  readonly autonomous: boolean
  /** A typical size of each state: the floor of the difference steps. All above zero. */
  readonly typical: Float64Array
  /** The analytic Jacobian, row-major: out[i * size + j] = ∂f_i/∂y_j. Differences are taken without it. */
  jacobian?(t: number, y: Float64Array, out: Float64Array): void
}

/** A step is good if the RMS over states of error / (absolute + relative · |y|) is at most 1. */
export interface Tolerance {
  readonly relative: number
  readonly absolute: Float64Array
}

/** What a stepper has spent since it was made. */
export interface Effort {
  /** Accepted steps. */
  steps: number
  rejected: number
  /** Calls of `rates`, those for differences included. */
  rates: number
  jacobians: number
  factorizations: number
}

/** Why a stepper cannot go on. */
export type Failure = 'too many steps' | 'not finite' | 'step too small'

/** Accepted steps after which a run gives up. */
export const mostSteps = 2e6

/** The smallest step (s) worth trying at time t (s). */
export function smallestStep(t: number): number {
  return 1e-12 * Math.max(1, Math.abs(t))
}

export function noEffort(): Effort {
  return { steps: 0, rejected: 0, rates: 0, jacobians: 0, factorizations: 0 }
}
