// Small systems with known answers, and the loop that takes a stepper across them.
import type { Stepper } from '../../../sim/solve/stepper.ts'
import type { Failure, System, Tolerance } from '../../../sim/solve/system.ts'

type Rates = (t: number, y: Float64Array, out: Float64Array) => void

/** A system of typical size 1 in every state. */
export function system(size: number, rates: Rates, more: Partial<System> = {}): System {
  return { size, rates, autonomous: true, typical: new Float64Array(size).fill(1), ...more }
}

/** The same tolerance for every state, absolute and relative. */
export function tolerance(size: number, relative: number, absolute = relative): Tolerance {
  return { relative, absolute: new Float64Array(size).fill(absolute) }
}

/** Steps to tEnd; null or why not. `each` sees the stepper after every step. */
export function across(stepper: Stepper, tEnd: number, each = () => {}): Failure | null {
  while (stepper.t < tEnd) {
    const why = stepper.step(tEnd)
    if (why) return why
    each()
  }
  return null
}

/** y'' = −y from (1, 0): y = (cos t, −sin t). */
export const oscillator = system(2, (_, y, out) => {
  out[0] = y[1]
  out[1] = -y[0]
})

/** y' = y²: from 1 it has its pole at t = 1. */
export const pole = system(1, (_, y, out) => {
  out[0] = y[0] * y[0]
})

/** A pendulum driven so that it swings as 2 sin t: nonlinear, coupled, and the time comes in by itself. */
export const pendulum = system(
  2,
  (t, y, out) => {
    out[0] = y[1]
    out[1] = -Math.sin(y[0]) + Math.sin(2 * Math.sin(t)) - 2 * Math.sin(t)
  },
  { autonomous: false },
)
export const pendulumAt = (t: number) => Float64Array.of(2 * Math.sin(t), 2 * Math.cos(t))

/** y' = cos(t) y²: 1/y + sin t is constant on every solution, so each step has its own exact end. */
export const hyperbola = system(
  1,
  (t, y, out) => {
    out[0] = Math.cos(t) * y[0] * y[0]
  },
  { autonomous: false },
)

/** y' = λ (y − cos t) − sin t, which has y = cos t (Prothero & Robinson's problem). */
export const follower = (lambda: number) =>
  system(
    1,
    (t, y, out) => {
      out[0] = lambda * (y[0] - Math.cos(t)) - Math.sin(t)
    },
    { autonomous: false },
  )

/** A ball in free fall g: height and speed. */
export const ball = (g: number) =>
  system(2, (_, y, out) => {
    out[0] = y[1]
    out[1] = -g
  })
