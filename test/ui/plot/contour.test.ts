// Rings around what stands above a level against those of d3-contour, side by side, on seeded surfaces.
import { contours } from 'd3'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { ringsAbove } from '../../../ui/plot/contour.ts'

type Ring = readonly (readonly number[])[]
const name = ([x, y]: readonly number[]) => `${x.toFixed(9)},${y.toFixed(9)}`
/** Every side of every ring, with its sense; the order of rings and where each begins say nothing. */
const sides = (rings: readonly Ring[]): string[] =>
  rings
    .flatMap((ring) => ring.map((point, n) => `${name(point)} ${name(ring[(n + 1) % ring.length])}`))
    .sort()
const theirs = (values: readonly number[], nx: number, ny: number, level: number): Ring[] =>
  contours()
    .size([nx, ny])
    .contour([...values], level)
    .coordinates.flatMap((polygon) => polygon.map((ring) => ring.slice(0, -1)))

it('runs where d3’s run, islands and holes, to the edges', () => {
  const surface = fc.tuple(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 2, max: 9 })).chain(([nx, ny]) =>
    fc.record({
      nx: fc.constant(nx),
      ny: fc.constant(ny),
      values: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
        minLength: nx * ny,
        maxLength: nx * ny,
      }),
    }),
  )
  let holes = 0
  fc.assert(
    fc.property(surface, fc.double({ min: 0.1, max: 0.9, noNaN: true }), ({ values, nx, ny }, level) => {
      // Not at a sample itself, where a ring touches its neighbour and d3 may not tell whose hole is whose.
      fc.pre(values.every((value) => Math.abs(value - level) > 1e-6))
      const [ours, d3s] = [ringsAbove(values, nx, ny, level), theirs(values, nx, ny, level)]
      expect(sides(ours)).toEqual(sides(d3s))
      if (ours.length > 1) holes++
    }),
    { seed: 1, numRuns: 1000 },
  )
  expect(holes).toBeGreaterThan(100)
})

it('finds nothing above the highest, and the whole grid above the lowest', () => {
  expect(ringsAbove([1, 2, 3, 4], 2, 2, 5)).toEqual([])
  expect(sides(ringsAbove([1, 2, 3, 4], 2, 2, 0))).toEqual(sides(theirs([1, 2, 3, 4], 2, 2, 0)))
})
