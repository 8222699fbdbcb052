// What a reading leaves: closed forms of normal doubts, through one meter and through three that tell of each other.
import { describe, expect, it } from 'vitest'
import { bandOf } from '../../../../sim/studies/sure/band.ts'
import { learned, placesOf, rankAt, valueAt } from '../../../../sim/studies/sure/learned.ts'
import { EIGHT_IN_TEN, normalAt } from '../../../../sim/studies/sure/normal.ts'
import { even } from '../../../../sim/studies/sure/sequence.ts'

const N = 4096
const doubt = (dimension: number) => Array.from({ length: N }, (_, n) => normalAt(even(n, dimension, 9)))
const [a, b, c] = [doubt(0), doubt(1), doubt(2)]
const meter = (deviation: number) => deviation * EIGHT_IN_TEN
const rising = (values: readonly number[]) => placesOf(values.length, (m, n) => values[m] - values[n])

describe('a normal doubt read by a meter', () => {
  // Deviation 1 read by a meter of deviation ½ as r: the mean moves to r · 1/(1 + ¼), the deviation to √(¼/(1 + ¼)).
  it.each([
    [0, 0],
    [1, 0.8],
    [-0.5, -0.4],
  ])('read as %d moves to %d', (reading, moved) => {
    const { middle, spread } = learned(
      rising(a).of,
      a.map((value) => [value]),
      [reading],
      [meter(0.5)],
    )
    expect(middle).toBeCloseTo(moved, 2)
    expect(spread).toBeCloseTo(Math.sqrt(0.2), 2)
  })

  it('leaves the other doubts whole', () => {
    // 12 a + 5 b, of deviation 13; a is left with √0.2.
    const values = a.map((value, n) => 12 * value + 5 * b[n])
    const { middle, spread } = learned(
      rising(values).of,
      a.map((value) => [value]),
      [0],
      [meter(0.5)],
    )
    expect(middle).toBeCloseTo(0, 2)
    expect(spread).toBeCloseTo(Math.hypot(12 * Math.sqrt(0.2), 5) / 13, 2)
  })

  it('tells nothing of what does not hang on it', () => {
    const { middle, spread } = learned(
      rising(b).of,
      a.map((value) => [value]),
      [2],
      [meter(0.5)],
    )
    expect(middle).toBeCloseTo(0, 2)
    expect(spread).toBeGreaterThan(0.999)
  })
})

it('of one sample alone, and from a meter that never errs and always reads the same, nothing is learned', () => {
  expect(learned(placesOf(1, () => 0).of, [[1]], [2], [0.1])).toEqual({ middle: 0, spread: 1 })
  expect(learned([-1, 1], [[5], [5]], [5], [0])).toEqual({ middle: 0, spread: 1 })
})

it('three readings that tell of each other: what Gauss’s normal equations leave', () => {
  // Of v = a + b + c, read are a + b, b + c and a, each by a meter of deviation 1. By hand: the doubts' information is
  // I + Σ gᵢgᵢᵀ = [[3 1 0] [1 3 1] [0 1 2]]; its inverse is [[5 −2 1] [−2 6 −3] [1 −3 8]] / 13, which adds up to 11/13, of 3.
  const values = a.map((value, n) => value + b[n] + c[n])
  const tells = a.map((value, n) => [value + b[n], b[n] + c[n], value])
  const { spread } = learned(rising(values).of, tells, [0, 0, 0], [1, 1, 1].map(meter))
  expect(spread).toBeCloseTo(Math.sqrt(11 / 13 / 3), 2)
})

describe('places and values', () => {
  const values = [5, Infinity, 1, 9, Infinity]
  const places = placesOf(5, (m, n) => (values[m] === values[n] ? 0 : values[m] < values[n] ? -1 : 1))
  const sorted = values.toSorted((x, y) => (x < y ? -1 : x > y ? 1 : 0))

  it('the order is the rank, never last', () => {
    expect(places.of[2]).toBe(normalAt(0.1))
    expect(places.of[0]).toBe(normalAt(0.3))
    expect(places.of[3]).toBe(normalAt(0.5))
    expect(places.of[1] + places.of[4]).toBe(normalAt(0.7) + normalAt(0.9))
  })

  it('a place between two has a value between them, one far out the last', () => {
    expect(valueAt(sorted, rankAt(places, places.of[0]))).toBe(5)
    expect(valueAt(sorted, rankAt(places, (places.of[0] + places.of[3]) / 2))).toBeCloseTo(7, 12)
    expect(valueAt(sorted, rankAt(places, -9))).toBe(1)
    expect(valueAt(sorted, rankAt(places, 9))).toBe(Infinity)
    // Half way to never is never; a little less is not.
    const edge = places.inOrder[3]
    expect(valueAt(sorted, rankAt(places, 0.6 * edge))).toBe(Infinity)
    expect(valueAt(sorted, rankAt(places, 0.4 * edge))).toBe(9)
  })

  it('nothing learned leaves the band of today', () => {
    const many = Array.from({ length: 200 }, (_, n) => n + 1)
    const ranks = rising(many)
    const [low, high] = [-1, 1].map((side) => valueAt(many, rankAt(ranks, side * EIGHT_IN_TEN)))
    // A band's ends are values that are there: the 20th and the 180th; these lie half a rank on.
    expect(low).toBeCloseTo(20.5, 1)
    expect(high).toBeCloseTo(180.5, 1)
    expect(bandOf(many)).toEqual({ low: 20, mid: 100, high: 180 })
  })
})
