// Bracketed roots against known ones, with the number of looks they cost.
import { describe, expect, it } from 'vitest'
import { root } from '../../../sim/solve/root.ts'

function find(f: (x: number) => number, a: number, b: number, tolerance = 1e-12) {
  let looks = 0
  const counted = (x: number) => {
    looks++
    return f(x)
  }
  const x = root(counted, a, b, f(a), f(b), tolerance)
  return { x, looks }
}

describe('root', () => {
  it('finds known roots', () => {
    // cos x = x: 0.73908513321516064…, the Dottie number (from memory).
    expect(Math.abs(find((x) => x - Math.cos(x), 0, 1).x - 0.7390851332151607)).toBeLessThan(1e-12)
    // x³ − 2x − 5: 2.09455148154232659…, Wallis's example for Newton's method (from memory).
    expect(Math.abs(find((x) => x ** 3 - 2 * x - 5, 2, 3).x - 2.0945514815423265)).toBeLessThan(1e-12)
    expect(Math.abs(find((x) => Math.exp(-x) - 0.5, 0, 10).x - Math.LN2)).toBeLessThan(1e-12)
  })

  it('beats bisection by far on smooth functions and never loses to it by more than one look', () => {
    expect(find((x) => x - Math.cos(x), 0, 1).looks).toBeLessThanOrEqual(9)
    expect(find((x) => Math.exp(-x) - 0.5, 0, 10).looks).toBeLessThanOrEqual(13)
    const bisection = Math.ceil(Math.log2(1e12))
    for (const f of [
      (x: number) => (x - 0.3) ** 9,
      (x: number) => Math.sign(x - 0.7) * Math.abs(x - 0.7) ** 0.05,
      (x: number) => (x < 0.123 ? -1 : 1),
      (x: number) => Math.atan(1e9 * (x - 0.999)),
    ])
      expect(find(f, 0, 1).looks).toBeLessThanOrEqual(bisection + 1)
  })

  it('ends just past the root, on the side of b', () => {
    for (const [f, at] of [
      [(x: number) => (x - 0.3) ** 3, 0.3],
      [(x: number) => 0.3 - x, 0.3],
      [(x: number) => (x < 0.123 ? -1 : 1), 0.123],
    ] as const) {
      const { x } = find(f, 0, 1)
      expect(f(x) * f(1)).toBeGreaterThanOrEqual(0)
      expect(x - at).toBeGreaterThanOrEqual(-1e-16)
      expect(x - at).toBeLessThan(1e-12)
    }
    expect(find((x) => x, -1, 0).x).toBe(0)
  })

  it('stops at the resolution of large numbers, asked for more', () => {
    const { x, looks } = find((t) => t - 1e6 - 1 / 3, 1e6, 1e6 + 1, 1e-30)
    expect(Math.abs(x - 1e6 - 1 / 3)).toBeLessThan(1e-9)
    expect(looks).toBeLessThan(60)
  })
})
