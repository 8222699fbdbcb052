// The stiff stepper at the ends of a segment: lands on them, starts afresh anywhere, and says why it gives up.
import { describe, expect, it } from 'vitest'
import { begun } from './begun.ts'
import { across, hyperbola, oscillator, pendulum, pendulumAt, pole, system } from './problems.ts'

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
    const stepper = begun(pole, [1], 1e-6)
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
