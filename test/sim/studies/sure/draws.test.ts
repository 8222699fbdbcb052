// The draws: every dimension even by itself, another by another seed; normal places as printed; a closed-form band.
import { describe, expect, it } from 'vitest'
import { bandOf } from '../../../../sim/studies/sure/band.ts'
import { EIGHT_IN_TEN, normalAt } from '../../../../sim/studies/sure/normal.ts'
import { even, plain } from '../../../../sim/studies/sure/sequence.ts'

describe('the even sequence', () => {
  // Sobol's property A in one dimension: 2^k points, one in each of 2^k equal cells; a digital shift keeps it.
  it.each(Array.from({ length: 32 }, (_, dimension) => dimension))(
    'puts one of 256 points in each of 256 cells of dimension %i',
    (dimension) => {
      for (const seed of [1, 2, 77]) {
        const cells = new Set(
          Array.from({ length: 256 }, (_, n) => Math.floor(256 * even(n, dimension, seed))),
        )
        expect(cells.size).toBe(256)
      }
    },
  )

  it('is another one for another seed, and plain numbers are not even', () => {
    expect(even(3, 4, 1)).not.toBe(even(3, 4, 2))
    expect(
      new Set(Array.from({ length: 256 }, (_, n) => Math.floor(256 * plain(n, 0, 1)))).size,
    ).toBeLessThan(220)
  })
})

it('past the dimensions that are filled evenly come plain numbers, each by itself', () => {
  expect(even(3, 31, 1)).not.toBe(plain(3, 31, 1))
  expect(even(3, 32, 1)).toBe(plain(3, 32, 1))
  expect(even(3, 33, 1)).not.toBe(even(3, 32, 1))
})

// Quantiles of the standard normal distribution, as printed in every table (NIST/SEMATECH e-Handbook, 1.3.6.7.1).
it.each([
  [0.5, 0],
  [0.9, 1.2815515655446004],
  [0.975, 1.959963984540054],
  [0.99, 2.3263478740408408],
  [0.001, -3.090232306167813],
])('normal place under which %f lies', (p, z) => {
  expect(normalAt(p)).toBeCloseTo(z, 8)
})

it('of no values there is no band', () => {
  expect(bandOf([])).toEqual({ low: Number.NaN, mid: Number.NaN, high: Number.NaN })
})

it('a linear answer to normal doubts has the band that squares add up to', () => {
  const slopes = [3, -4, 12]
  const values = Array.from({ length: 4096 }, (_, n) =>
    slopes.reduce((sum, slope, k) => sum + slope * normalAt(even(n, k, 5)), 0),
  )
  const { low, mid, high } = bandOf(values)
  // √(3² + 4² + 12²) = 13.
  expect(Math.abs(mid)).toBeLessThan(0.15)
  expect(high / (13 * EIGHT_IN_TEN)).toBeCloseTo(1, 1.7)
  expect(low / (-13 * EIGHT_IN_TEN)).toBeCloseTo(1, 1.7)
})
