// The controller against hand calculation: what it wishes for, its gains, and the current it will not pass.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Controller, gains, limitedRate, wish } from '../../../sim/parts/controller.ts'

const controller: Controller = {
  holds: 'fixed voltage',
  compensation: 0.8,
  currentLimit: 18,
  ramp: 94,
  response: 0.1,
}
const none = { proportional: 0, integral: 0 }

describe('wish', () => {
  it('at fixed voltage is the cold motor constant times the asked speed', () => {
    expect(wish(controller, none, 400, 350, 10, 7, 0.25, 0.8, 1.5)).toBe(100)
  })
  it('with sag compensation adds the brushes and 80 % of R i: 100 + 1.5 + 0.8 · 0.8 · 10', () => {
    const sag = { ...controller, holds: 'sag compensation' } as const
    expect(wish(sag, none, 400, 350, 10, 7, 0.25, 0.8, 1.5)).toBeCloseTo(107.9, 12)
  })
  it('with speed feedback adds Kp e and the integrator: 100 + 0.4 · 50 + 7', () => {
    const feedback = { ...controller, holds: 'speed feedback' } as const
    expect(wish(feedback, { proportional: 0.4, integral: 2.5 }, 400, 350, 10, 7, 0.25, 0.8, 1.5)).toBeCloseTo(
      127,
      12,
    )
  })
})

describe('gains', () => {
  it('close the loop in the response time: τm = R J/k² = 0.16 s, so Kp = k τm/τcl = 0.4, Ki = k/τcl = 2.5', () => {
    const { proportional, integral } = gains(controller, 1, 0.25, 0.01)
    expect(proportional).toBeCloseTo(0.4, 12)
    expect(integral).toBeCloseTo(2.5, 12)
  })
})

describe('limited rate', () => {
  // Limiter's time constant 2 ms: the current closes on its bound as if through a first-order lag.
  it('lets a rate alone that leads nowhere', () => {
    expect(limitedRate(controller, true, 100, 10)).toBe(100)
    expect(limitedRate(controller, true, -100, 10)).toBe(-100)
  })
  it('rises no quicker than (Imax − i)/2 ms, and falls no quicker than i/2 ms', () => {
    expect(limitedRate(controller, true, 1e9, 10)).toBeCloseTo(4000, 9)
    expect(limitedRate(controller, true, -1e9, 10)).toBeCloseTo(-5000, 9)
  })
  it('off, lets the current die away in 2 ms whatever the volts would do', () => {
    for (const free of [-1e9, 0, 1e9]) expect(limitedRate(controller, false, free, 10)).toBeCloseTo(-5000, 9)
  })
  it('never leads out of 0 … Imax: the drive cannot brake, nor pass more than its limit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.boolean(), (free, on) => {
        expect(limitedRate(controller, on, free, 0)).toBeGreaterThanOrEqual(0)
        expect(limitedRate(controller, on, free, 18)).toBeLessThanOrEqual(0)
      }),
      { seed: 7, numRuns: 500 },
    )
  })
})
