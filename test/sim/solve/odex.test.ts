// The second opinion: closed forms, its dense output, what restarting at every step costs, how it gives up.
import { describe, expect, it } from 'vitest'
import { extrapolation } from '../../../sim/solve/odex.ts'
import { Solver } from '../../../sim/solve/odexLibrary.js'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import type { System } from '../../../sim/solve/system.ts'
import { across, follower, oscillator, pendulum, pendulumAt, pole, system, tolerance } from './problems.ts'

function begun(problem: System, y0: number[], relative: number, limits = {}) {
  const stepper = extrapolation(problem, tolerance(problem.size, relative), limits)
  stepper.start(0, Float64Array.from(y0), 0.1)
  return stepper
}

describe('extrapolation', () => {
  it('agrees with closed forms at step ends and within the steps', () => {
    for (const relative of [1e-4, 1e-6, 1e-9]) {
      const stepper = begun(pendulum, [...pendulumAt(0)], relative)
      let worst = 0
      across(stepper, 20, () => {
        for (const s of [0, 0.1, 0.3, 0.5, 0.7, 0.9, 1]) {
          const t = stepper.tOld + s * (stepper.t - stepper.tOld)
          const exact = pendulumAt(t)
          worst = Math.max(worst, Math.abs(stepper.value(0, t) - exact[0]))
          worst = Math.max(worst, Math.abs(stepper.slope(0, t) - exact[1]))
        }
      })
      expect(worst).toBeLessThan(60 * relative)
      expect(stepper.effort.steps).toBeLessThan(40)
    }
  })

  it('gives the ends of a step exactly, all states at once', () => {
    const stepper = begun(oscillator, [1, 0], 1e-6)
    const out = new Float64Array(2)
    const before = Float64Array.of(1, 0)
    across(stepper, 20, () => {
      stepper.interpolate(stepper.tOld, out)
      expect(out).toEqual(before)
      stepper.interpolate(stepper.t, out)
      expect(out).toEqual(stepper.y)
      before.set(stepper.y)
    })
  })

  it('agrees with the stiff stepper where both can go', () => {
    const ends = [extrapolation, rosenbrock].map((method) => {
      const stepper = method(follower(-300), tolerance(1, 1e-8))
      stepper.start(0, Float64Array.of(3), 0.01)
      expect(across(stepper, 5)).toBe(null)
      return { y: stepper.y[0], calls: stepper.effort.rates }
    })
    expect(Math.abs(ends[0].y - Math.cos(5))).toBeLessThan(1e-7)
    expect(Math.abs(ends[0].y - ends[1].y)).toBeLessThan(1e-7)
  })

  it('costs at most a sixth more calls than one long solve of the package', () => {
    for (const [problem, y0, relative] of [
      [oscillator, [1, 0], 1e-5],
      [pendulum, [...pendulumAt(0)], 1e-5],
      [pendulum, [...pendulumAt(0)], 1e-8],
      [follower(-500), [1], 1e-4],
    ] as [System, number[], number][]) {
      const stepper = begun(problem, y0, relative)
      across(stepper, 40)
      let calls = 0
      const solver = new Solver(y0.length)
      solver.relativeTolerance = solver.absoluteTolerance = relative
      solver.denseOutput = true
      solver.initialStepSize = 0.1
      const out = new Float64Array(y0.length)
      solver.solve(
        (t, y) => {
          calls++
          problem.rates(t, Float64Array.from(y), out)
          return Array.from(out)
        },
        0,
        y0,
        40,
        () => true,
      )
      expect(stepper.effort.rates / calls).toBeLessThan(7 / 6)
    }
  })

  it('lands exactly, however short the way, and never passes', () => {
    const stepper = begun(oscillator, [1, 0], 1e-6)
    let tEnd = 0
    for (let k = 0; k < 60; k++) {
      tEnd += 10 ** (-9 + (k % 10))
      while (stepper.t < tEnd) {
        expect(stepper.step(tEnd)).toBe(null)
        expect(stepper.t).toBeLessThanOrEqual(tEnd)
      }
      expect(stepper.t).toBe(tEnd)
    }
    expect(Math.abs(stepper.y[0] - Math.cos(tEnd))).toBeLessThan(1e-4)
    expect(() => stepper.step(tEnd)).toThrow(RangeError)
    // Here t + (tEnd − t) is not tEnd in floating point.
    const still = begun(oscillator, [0, 0], 1e-4)
    still.start(2 ** -53, still.y, 2)
    still.step(1 + 2 ** -52)
    expect(still.t).toBe(1 + 2 ** -52)
  })

  it('leaves no sliver', () => {
    const sizes = (tEnd: number) => {
      const stepper = begun(oscillator, [1, 0], 1e-4)
      const taken: number[] = []
      across(stepper, tEnd, () => taken.push(stepper.t - stepper.tOld))
      return taken
    }
    expect(sizes(0.1009)).toEqual([0.1009])
    expect(sizes(0.15)[0]).toBe(0.075)
    expect(sizes(0.3)[0]).toBe(0.1)
  })

  it('keeps its stride across a short stop', () => {
    const stepper = begun(oscillator, [1, 0], 1e-4)
    across(stepper, 20)
    const stride = stepper.nextStep
    across(stepper, 20 + stride / 1000)
    expect(stepper.nextStep).toBe(stride)
  })

  it('sets off from exact rest', () => {
    // Nothing moves at t = 0, so the package has no scale to go by there: y = (t − sin t, 1 − cos t).
    const driven = system(
      2,
      (t, y, out) => {
        out[0] = y[1]
        out[1] = t - y[0]
      },
      { autonomous: false },
    )
    const stepper = begun(driven, [0, 0], 1e-8)
    expect(across(stepper, 10)).toBe(null)
    expect(Math.abs(stepper.y[0] - (10 - Math.sin(10)))).toBeLessThan(1e-6)
    expect(stepper.effort.steps).toBeLessThan(60)
  })
})

describe('giving up', () => {
  it('says where the rates stop being numbers, and does not loop', () => {
    const broken = (from: number) =>
      system(
        1,
        (t, _, out) => {
          out[0] = t < from ? 1 : Number.NaN
        },
        { autonomous: false },
      )
    const stepper = begun(broken(0.5), [0], 1e-4)
    expect(across(stepper, 1)).toBe('not finite')
    expect(Math.abs(stepper.t - 0.5)).toBeLessThan(1e-10)
    const nothing = begun(broken(-1), [0], 1e-4)
    expect(across(nothing, 1)).toBe('not finite')
    expect(nothing.effort.rates).toBeLessThan(100)
    // One call and one rejection for each sixth part of the step before.
    expect(nothing.effort.rejected).toBe(nothing.effort.rates)
  })

  it('stops at the pole of y′ = y² with a step too small', () => {
    const stepper = begun(pole, [1], 1e-6)
    expect(across(stepper, 2)).toBe('step too small')
    expect(Math.abs(stepper.t - 1)).toBeLessThan(1e-5)
  })

  it('stops at its limit of steps, and at 200 calls for each of them', () => {
    const stepper = begun(oscillator, [1, 0], 1e-6, { steps: 20 })
    expect(across(stepper, 1e6)).toBe('too many steps')
    expect(stepper.effort.steps).toBe(20)
    // Rates that look random at every scale it tries: hundreds of calls without one accepted step.
    const noise = system(
      1,
      (t, y, out) => {
        out[0] = 1e9 * Math.sin(1e12 * t + 1e9 * y[0])
      },
      { autonomous: false },
    )
    const lost = begun(noise, [1], 1e-6, { steps: 3 })
    expect(across(lost, 1)).toBe('too many steps')
    expect(lost.effort).toMatchObject({ steps: 0, rates: 600 })
  })

  it('lets through what the rates throw, and goes on afterwards', () => {
    let bug = true
    const stepper = begun(
      system(1, (_, y, out) => {
        if (bug) throw new Error('a bug of the caller')
        out[0] = -y[0]
      }),
      [1],
      1e-6,
    )
    expect(() => stepper.step(1)).toThrow('a bug of the caller')
    bug = false
    expect(across(stepper, 1)).toBe(null)
    expect(Math.abs(stepper.y[0] - Math.exp(-1))).toBeLessThan(1e-6)
  })
})
