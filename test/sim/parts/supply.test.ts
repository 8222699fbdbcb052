// The supply against hand calculation: its ceiling, how lumpy its current is, and what it draws.
import { describe, expect, it } from 'vitest'
import { ceiling, formFactorSquared, type Supply, supplyAmps } from '../../../sim/parts/supply.ts'

const supply: Supply = { kind: 'pwm', volts: 120, resistance: 0.5, lineVolts: 120, breaker: 15 }

describe('ceiling', () => {
  it('sinks with the current: 120 V − 0.5 Ω × 10 A', () => {
    expect(ceiling(supply, 0)).toBe(120)
    expect(ceiling(supply, 10)).toBe(115)
  })
  it('never turns round', () => {
    expect(ceiling(supply, 1000)).toBe(0)
  })
})

describe('form factor', () => {
  it.each([
    ['battery', 1],
    ['pwm', 1.05],
    ['phase control with choke', 1.07],
  ] as const)('of %s is %d, whatever the current and speed', (kind, factor) => {
    for (const [i, w] of [
      [0, 0],
      [1, 400],
      [20, 50],
    ])
      expect(formFactorSquared({ ...supply, kind }, { amps: 10, speed: 400 }, i, w)).toBeCloseTo(
        factor ** 2,
        12,
      )
  })

  it('is the printed one where one is printed', () => {
    expect(formFactorSquared({ ...supply, formFactor: 1.3 }, null, 5, 100)).toBeCloseTo(1.69, 12)
    expect(
      formFactorSquared({ ...supply, kind: 'phase control', formFactor: 1.3 }, null, 5, 100),
    ).toBeCloseTo(1.69, 12)
  })
})

describe('phase control without a choke', () => {
  const lumpy: Supply = { ...supply, kind: 'phase control' }
  const plate = { amps: 10, speed: 400 }
  const at = (i: number, w: number) => formFactorSquared(lumpy, plate, i, w)
  // By hand, from FF² = 1 + (FFp² − 1)(Ip/max(i, Ip/5))^0.7 min(1, 1.1 ω/(ω + 0.07 ωp)), FFp = 1.42.
  const extra = 1.42 ** 2 - 1

  it('gives the plate form factor at plate amps and speed: 1.1/1.07 there is cut to 1', () => {
    expect(at(10, 400)).toBeCloseTo(2.0164, 12)
    expect(at(10, 4000)).toBeCloseTo(2.0164, 12)
  })
  it('is lumpier when light: half the amps, 2^0.7 = 1.6245 of the extra heat', () => {
    expect(at(5, 400)).toBeCloseTo(1 + extra * 1.624504792712471, 12)
    expect(at(20, 400)).toBeCloseTo(1 + extra / 1.624504792712471, 12)
  })
  it('stops growing at a fifth of plate amps: 5^0.7 = 3.0852', () => {
    expect(at(2, 400)).toBeCloseTo(1 + extra * 3.085169313600048, 12)
    expect(at(0, 400)).toBe(at(2, 400))
  })
  it('is less lumpy when slow: 0.55 of the extra at 7 % of plate speed', () => {
    expect(at(10, 28)).toBeCloseTo(1 + extra * 0.55, 12)
    expect(at(10, 0)).toBe(1)
    expect(at(10, -3)).toBe(1)
  })
  it('reaches the whole where 1.1 ω = ω + 0.07 ωp, at 70 % of plate speed, without a jump', () => {
    expect(at(10, 280)).toBeCloseTo(2.0164, 12)
    expect(at(10, 279)).toBeLessThan(2.0164)
    expect(at(10, 279)).toBeGreaterThan(2.015)
  })
})

describe('amps drawn', () => {
  it('from a battery are power over its volts', () => {
    expect(supplyAmps({ ...supply, kind: 'battery', volts: 24 }, 240, 17, 1)).toBe(10)
  })
  it('at the outlet of a chopper are P/(0.95 · 0.65 · Vline): 741 W at 120 V is 10 A', () => {
    expect(supplyAmps(supply, 741, 17, 1.05)).toBeCloseTo(10, 12)
    expect(supplyAmps({ ...supply, lineVolts: 240 }, 741, 17, 1.05)).toBeCloseTo(5, 12)
  })
  it.each(['phase control', 'phase control with choke'] as const)(
    'of %s are the motor’s own, as lumpy as they are',
    (kind) => {
      expect(supplyAmps({ ...supply, kind }, 741, 5, 1.42)).toBeCloseTo(7.1, 12)
    },
  )
  it('are none while the motor gives power back', () => {
    expect(supplyAmps(supply, -50, 1, 1)).toBe(0)
    expect(supplyAmps({ ...supply, kind: 'battery' }, -50, 1, 1)).toBe(0)
  })
})
