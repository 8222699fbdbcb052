// Paths against those of d3-shape, on seeded points.
import { area, line } from 'd3'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { areaPath, linePath } from '../../../ui/plot/path.ts'

type Point = readonly [number, number]
const px = fc.double({ min: -2000, max: 2000, noNaN: true })
const point: fc.Arbitrary<Point> = fc.tuple(px, px)

it('a line is as d3’s, with gaps, with a point alone, without any', () => {
  const theirs = line<Point | null>(
    (each) => each?.[0] ?? 0,
    (each) => each?.[1] ?? 0,
  )
    .defined((each) => each !== null)
    .digits(1)
  fc.assert(
    fc.property(fc.array(fc.option(point, { freq: 3 }), { maxLength: 12 }), (points) => {
      expect(linePath(points)).toBe(theirs(points) ?? '')
    }),
    { seed: 1, numRuns: 1000, examples: [[[]], [[[1, 2]]], [[null, [1.25, 2], null]]] },
  )
  expect(
    linePath([
      [0, 1.26],
      [2, -0.04],
    ]),
  ).toBe('M0,1.3L2,0')
})

it('an area is as d3’s', () => {
  const theirs = area<readonly [number, number, number]>(
    ([x]) => x,
    ([, low]) => low,
    ([, , high]) => high,
  ).digits(1)
  fc.assert(
    fc.property(fc.array(fc.tuple(px, px, px), { maxLength: 12 }), (points) => {
      const ours = areaPath(
        points.map(([x, , high]) => [x, high]),
        points.map(([x, low]) => [x, low]),
      )
      expect(ours).toBe(theirs(points) ?? '')
    }),
    { seed: 2, numRuns: 1000, examples: [[[]], [[[1, 2, 3]]]] },
  )
})
