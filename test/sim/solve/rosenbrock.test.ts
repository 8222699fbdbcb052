// The stiff stepper: accuracy against closed forms and published values, and what it costs.
import { describe, expect, it } from 'vitest'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import type { System } from '../../../sim/solve/system.ts'
import { begun } from './begun.ts'
import { across, follower, hyperbola, oscillator, pendulum, pendulumAt, tolerance } from './problems.ts'
import { published } from './published.ts'

describe('accuracy', () => {
  it.each(published)(
    '$name: within five tolerances of the published end',
    ({ problem, y0, tEnd, reference }) => {
      for (const relative of [1e-4, 1e-7]) {
        // A smallest value of 1e-13 wants an absolute tolerance well below it.
        const absolute = relative * Math.min(...reference.map(Math.abs), 1) * 0.1
        const stepper = rosenbrock(problem, tolerance(y0.length, relative, absolute))
        stepper.start(0, Float64Array.from(y0), 1e-5)
        expect(across(stepper, tEnd)).toBe(null)
        expect(stepper.t).toBe(tEnd)
        for (const [i, value] of reference.entries()) {
          expect(Math.abs(stepper.y[i] / value - 1)).toBeLessThan(5 * relative)
        }
      }
    },
  )

  it('follows y′ = −1e8 (y − cos t) − sin t without small steps, from a start far off', () => {
    const stepper = begun(follower(-1e8), [2], 1e-6)
    const errors: number[] = []
    expect(across(stepper, 100, () => errors.push(Math.abs(stepper.y[0] - Math.cos(stepper.t))))).toBe(null)
    expect(Math.max(...errors)).toBeLessThan(1e-6)
    expect(stepper.effort.steps).toBeLessThan(20)
  })

  it('keeps the true error of every step below twice the tolerance, and below a tenth of a fine one', () => {
    for (const [relative, bound] of [
      [1e-3, 2],
      [1e-5, 0.1],
      [1e-7, 0.1],
    ]) {
      const curve = begun(hyperbola, [0.6], relative)
      let y = 0.6
      let worst = 0
      across(curve, 50, () => {
        const exact = 1 / (1 / y + Math.sin(curve.tOld) - Math.sin(curve.t))
        worst = Math.max(
          worst,
          Math.abs(curve.y[0] - exact) / (relative + relative * Math.max(y, curve.y[0])),
        )
        y = curve.y[0]
      })
      expect(worst).toBeLessThan(bound)
      // An estimate that never came near the truth would be no estimate.
      expect(worst).toBeGreaterThan(bound / 5)
    }
  })

  it('reads the state at any time: ends exact, between them by a cubic', () => {
    const stepper = begun(pendulum, [...pendulumAt(0)], 1e-6)
    const out = new Float64Array(2)
    const before = Float64Array.from(stepper.y)
    let worst = 0
    across(stepper, 10, () => {
      stepper.interpolate(stepper.tOld, out)
      expect(out).toEqual(before)
      stepper.interpolate(stepper.t, out)
      expect(out).toEqual(stepper.y)
      before.set(stepper.y)
      for (const s of [0.2, 0.5, 0.8]) {
        const t = stepper.tOld + s * (stepper.t - stepper.tOld)
        worst = Math.max(worst, Math.abs(stepper.value(0, t) - pendulumAt(t)[0]))
        worst = Math.max(worst, Math.abs(stepper.slope(0, t) - pendulumAt(t)[1]) / 10)
      }
    })
    expect(worst).toBeLessThan(2e-5)
  })
})

describe('effort', () => {
  it('takes as many steps as the tolerance is worth, and counts every call', () => {
    // Deterministic; bands of 10 % leave room for other roundings.
    const steps = { Robertson: 410, 'Van der Pol, 1/ε = 1e6': 1133, HIRES: 184 } as Record<string, number>
    for (const { name, problem, y0, tEnd } of published) {
      let calls = 0
      const counted: System = {
        ...problem,
        rates(t, y, out) {
          calls++
          problem.rates(t, y, out)
        },
      }
      const absolute = name === 'Robertson' ? 1e-12 : 1e-8
      const stepper = rosenbrock(counted, tolerance(y0.length, 1e-6, absolute))
      stepper.start(0, Float64Array.from(y0), 1e-5)
      across(stepper, tEnd)
      const { effort } = stepper
      expect(Math.abs(effort.steps / steps[name] - 1), name).toBeLessThan(0.1)
      expect(effort.rejected, name).toBeLessThan(20)
      expect(effort.rates).toBe(calls)
      // One Jacobian a step, kept through rejections; five stages an attempt.
      expect(effort.jacobians).toBe(effort.steps)
      expect(effort.factorizations).toBe(effort.steps + effort.rejected)
      const linearization = 1 + (problem.jacobian ? 0 : problem.size)
      expect(calls).toBe(linearization * effort.jacobians + 5 * effort.factorizations)
    }
  })

  it('spends one call more a step where time comes in, and asks anew at every step', () => {
    let driven = false
    const stepper = begun(
      {
        ...oscillator,
        get autonomous() {
          return !driven
        },
      },
      [1, 0],
      1e-5,
    )
    across(stepper, 5)
    const { steps, rates, rejected } = stepper.effort
    expect(rates).toBe(steps * 3 + 5 * (steps + rejected))
    driven = true
    across(stepper, 10)
    const more = stepper.effort
    expect(more.rates - rates).toBe(
      (more.steps - steps) * 4 + 5 * (more.steps + more.rejected - steps - rejected),
    )
  })

  it('needs four times the steps for a 256th of the tolerance: order 4 in the estimate', () => {
    const steps = [1e-4, 1e-4 / 256].map((relative) => {
      const stepper = begun(oscillator, [1, 0], relative)
      across(stepper, 200)
      return stepper.effort.steps
    })
    expect(Math.abs(steps[1] / steps[0] - 4)).toBeLessThan(0.1)
  })
})
