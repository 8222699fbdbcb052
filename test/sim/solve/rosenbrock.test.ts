// The stiff stepper: accuracy against closed forms and published values, what it costs, how it gives up.
import { describe, expect, it } from 'vitest'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import type { System } from '../../../sim/solve/system.ts'
import {
  across,
  follower,
  hyperbola,
  oscillator,
  pendulum,
  pendulumAt,
  system,
  tolerance,
} from './problems.ts'
import { published } from './published.ts'

function begun(problem: System, y0: number[], relative: number, firstStep = 0.1, limits = {}) {
  const stepper = rosenbrock(problem, tolerance(problem.size, relative), limits)
  stepper.start(0, Float64Array.from(y0), firstStep)
  return stepper
}

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

describe('landing', () => {
  it('ends exactly at tEnd and never past it', () => {
    const stepper = begun(pendulum, [...pendulumAt(0)], 1e-4)
    let tEnd = 0
    for (let k = 0; k < 200; k++) {
      tEnd += 0.01 + 0.37 * Math.abs(Math.sin(k))
      across(stepper, tEnd, () => expect(stepper.t).toBeLessThanOrEqual(tEnd))
      expect(stepper.t).toBe(tEnd)
    }
    // Here t + (tEnd − t) is not tEnd in floating point.
    const still = begun(oscillator, [0, 0], 1e-4)
    still.start(2 ** -53, still.y, 2)
    still.step(1 + 2 ** -52)
    expect(still.t).toBe(1 + 2 ** -52)
  })

  it('leaves no sliver: stretches to an end just ahead, halves the way to one less than two steps off', () => {
    const sizes = (tEnd: number) => {
      const stepper = begun(oscillator, [1, 0], 1e-2, 0.1)
      const taken: number[] = []
      across(stepper, tEnd, () => taken.push(stepper.t - stepper.tOld))
      return taken
    }
    expect(sizes(0.1009)).toEqual([0.1009])
    expect(sizes(0.15)).toEqual([0.075, 0.075])
    expect(sizes(0.3)[0]).toBe(0.1)
  })

  it('does not grow right after a rejection', () => {
    const stepper = begun(hyperbola, [0.6], 1e-3)
    let rejected = 0
    across(stepper, 50, () => {
      const size = stepper.t - stepper.tOld
      if (stepper.effort.rejected > rejected) expect(stepper.nextStep).toBeLessThan(size * (1 + 1e-12))
      rejected = stepper.effort.rejected
    })
    expect(rejected).toBeGreaterThan(10)
  })

  it('keeps its stride across a short stop, and offers it to the next segment', () => {
    const stepper = begun(oscillator, [1, 0], 1e-4)
    across(stepper, 20)
    const stride = stepper.nextStep
    across(stepper, 20 + stride / 1000)
    expect(stepper.nextStep).toBe(stride)
  })

  it('takes a segment of any length above zero, down to a rounding of the time', () => {
    for (const firstStep of [1e-3, 1e-15]) {
      const short = begun(oscillator, [1, 0], 1e-4, firstStep)
      expect(short.step(1e-15)).toBe(null)
      expect(short.t).toBe(1e-15)
    }
    const stepper = begun(oscillator, [1, 0], 1e-4)
    across(stepper, 1e-15)
    expect(() => stepper.step(1e-15)).toThrow(RangeError)
  })

  it('starts afresh anywhere, from a copy, without a memory', () => {
    const fresh = begun(oscillator, [Math.cos(7), -Math.sin(7)], 1e-7)
    const used = begun(oscillator, [0, 0], 1e-7, 1)
    across(used, 1000) // by long strides
    const y0 = Float64Array.from(fresh.y)
    for (const stepper of [fresh, used]) {
      stepper.start(7, y0, 0.1)
      expect([stepper.t, stepper.tOld]).toEqual([7, 7])
      expect(across(stepper, 8)).toBe(null)
      expect(Math.abs(stepper.y[0] - Math.cos(8))).toBeLessThan(1e-6)
    }
    expect(y0).toEqual(Float64Array.of(Math.cos(7), -Math.sin(7)))
    expect(used.y).toEqual(fresh.y)
    expect(used.nextStep).toBe(fresh.nextStep)
  })
})

describe('giving up', () => {
  const broken = (from: number) =>
    system(
      1,
      (t, _, out) => {
        out[0] = t < from ? 1 : Number.NaN
      },
      { autonomous: false },
    )

  it('says where the rates stop being numbers', () => {
    const stepper = begun(broken(0.5), [0], 1e-4)
    expect(across(stepper, 1)).toBe('not finite')
    expect(stepper.t).toBeLessThanOrEqual(0.5)
    expect(stepper.t).toBeGreaterThan(0.5 - 1e-10)
    expect(Math.abs(stepper.y[0] - stepper.t)).toBeLessThan(1e-12)
    expect(across(begun(broken(-1), [0], 1e-4), 1)).toBe('not finite')
  })

  it('gets past a look at values that are not finite, if shorter steps avoid them', () => {
    // y′ = −y³ from 1: a first step of 1e100 overflows in the stages.
    const stepper = begun(
      system(1, (_, y, out) => {
        out[0] = -(y[0] ** 3)
      }),
      [1],
      1e-6,
      1e300,
    )
    expect(across(stepper, 1e3)).toBe(null)
    expect(Math.abs(stepper.y[0] * Math.sqrt(2001) - 1)).toBeLessThan(1e-5)
  })

  it('stops at the pole of y′ = y² with a step too small', () => {
    const stepper = begun(
      system(1, (_, y, out) => {
        out[0] = y[0] * y[0]
      }),
      [1],
      1e-6,
    )
    expect(across(stepper, 2)).toBe('step too small')
    expect(Math.abs(stepper.t - 1)).toBeLessThan(1e-6)
  })

  it('stops at its limit of steps, over all segments', () => {
    const stepper = begun(oscillator, [1, 0], 1e-6, 0.1, { steps: 30 })
    expect(across(stepper, 1)).toBe(null)
    stepper.start(0, Float64Array.of(1, 0), 0.1)
    expect(across(stepper, 1e6)).toBe('too many steps')
    expect(stepper.effort.steps).toBe(30)
  })

  it('lets through what the rates throw', () => {
    const stepper = begun(
      system(1, () => {
        throw new Error('a bug of the caller')
      }),
      [1],
      1e-6,
    )
    expect(() => stepper.step(1)).toThrow('a bug of the caller')
  })
})
