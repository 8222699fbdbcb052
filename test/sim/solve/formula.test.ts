// The bare step of Rodas4: its order, its error estimate, its stability, its dense output, its derivatives.
import { describe, expect, it } from 'vitest'
import { formula } from '../../../sim/solve/formula.ts'
import { noEffort, type System } from '../../../sim/solve/system.ts'
import { follower, oscillator, pendulum, pendulumAt, system } from './problems.ts'

const distance = (a: Float64Array, b: Float64Array) => Math.max(...a.map((x, i) => Math.abs(x - b[i])))

/** n equal steps over 10 s: errors at the end, within the steps, and of the embedded solution in one step. */
function fixedSteps(problem: System, exact: (t: number) => Float64Array, n: number) {
  const { linearize, attempt, value, y1, error } = formula(problem, noEffort())
  const h = 10 / n
  let y = exact(0)
  let within = 0
  let estimate = 0
  for (let k = 0; k < n; k++) {
    linearize(k * h, y, h)
    attempt(h)
    for (const s of [0.25, 0.5, 0.75]) {
      within = Math.max(
        within,
        distance(
          y1.map((_, i) => value(i, s)),
          exact((k + s) * h),
        ),
      )
    }
    estimate = Math.max(estimate, ...error.map(Math.abs))
    y = y1.slice()
  }
  return { end: distance(y, exact(10)), within, estimate }
}

/** How fast something falls from each entry to the next, in powers of the halved step. */
const orders = (values: number[]) => values.slice(1).map((x, i) => Math.log2(values[i] / x))

describe('one step of Rodas4', () => {
  it('is of order 4, on a nonlinear problem with time in it and on a linear one', () => {
    const driven = [50, 100, 200, 400].map((n) => fixedSteps(pendulum, pendulumAt, n).end)
    for (const order of orders(driven)) expect(Math.abs(order - 4)).toBeLessThan(0.1)
    const circle = (t: number) => Float64Array.of(Math.cos(t), -Math.sin(t))
    const linear = [50, 100, 200, 400].map((n) => fixedSteps(oscillator, circle, n).end)
    for (const order of orders(linear)) expect(Math.abs(order - 4)).toBeLessThan(0.02)
  })

  it('estimates an error, and interpolates, with order 3: both fall as h⁴ a step', () => {
    const runs = [100, 200, 400].map((n) => fixedSteps(pendulum, pendulumAt, n))
    for (const order of orders(runs.map((run) => run.estimate))) expect(Math.abs(order - 4)).toBeLessThan(0.1)
    for (const order of orders(runs.map((run) => run.within))) expect(Math.abs(order - 4)).toBeLessThan(0.1)
  })

  it('damps what is infinitely stiff in one step: L-stable', () => {
    // y' = −1e8 (y − cos t) − sin t, started 1 off: what is left of that is R(−1e7), of the order of 1e-7 here.
    const { linearize, attempt, y1 } = formula(follower(-1e8), noEffort())
    linearize(0, Float64Array.of(2), 0.1)
    attempt(0.1)
    expect(Math.abs(y1[0] - Math.cos(0.1))).toBeLessThan(1e-5)
  })

  it('is exact on cubics of time, inside the step too', () => {
    const cubic = (t: number) => 5 - 4 * t + 3 * t ** 2 - 2 * t ** 3
    const problem = system(
      1,
      (t, _, out) => {
        out[0] = -4 + 6 * t - 6 * t ** 2
      },
      { autonomous: false },
    )
    const { linearize, attempt, value, slope } = formula(problem, noEffort())
    linearize(1, Float64Array.of(cubic(1)), 2)
    attempt(2)
    for (const s of [0, 0.2, 0.5, 0.9, 1]) {
      expect(Math.abs(value(0, s) - cubic(1 + 2 * s))).toBeLessThan(1e-5)
      expect(Math.abs(slope(0, s) / 2 - (-4 + 6 * (1 + 2 * s) - 6 * (1 + 2 * s) ** 2))).toBeLessThan(1e-5)
    }
  })
})

describe('derivatives by differences', () => {
  // A step with a wrong Jacobian loses order; a right one agrees with the analytic step to the differences' error.
  const analytic: System = {
    ...pendulum,
    jacobian(_, y, out) {
      out.set([0, 1, -Math.cos(y[0]), 0])
    },
  }
  const stepOf = (problem: System, y: Float64Array, typical = 1) => {
    const { linearize, attempt, y1 } = formula(
      { ...problem, typical: new Float64Array(2).fill(typical) },
      noEffort(),
    )
    linearize(3, y, 0.1)
    attempt(0.1)
    return y1
  }

  it('give the step of the analytic Jacobian', () => {
    expect(distance(stepOf(pendulum, pendulumAt(3)), stepOf(analytic, pendulumAt(3)))).toBeLessThan(1e-9)
  })

  it('stand on the typical size where a state is zero: a floor far too low drowns in rounding', () => {
    const zero = new Float64Array(2)
    expect(distance(stepOf(pendulum, zero), stepOf(analytic, zero))).toBeLessThan(1e-12)
    expect(distance(stepOf(pendulum, zero, 1e-12), stepOf(analytic, zero))).toBeGreaterThan(1e-8)
  })
})
