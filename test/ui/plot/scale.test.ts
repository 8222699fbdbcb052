// Scales against those of d3-scale, on seeded axes and values.
import { scaleLinear, scaleLog } from 'd3'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { byRatio, even, evenWithin, type Scale } from '../../../ui/plot/scale.ts'

const number = fc.double({ min: -1e4, max: 1e4, noNaN: true })
const length = fc.double({ min: 1e-3, max: 1e4, noNaN: true })
const ends = fc.tuple(number, number)
const ascending = fc.tuple(number, length).map(([low, more]) => [low, low + more] as const)

/** d3 turns a pair that descends about and so rounds otherwise: to 1e-9 of the ends, which is no part of a pixel. */
const near = (ours: number, theirs: number, of: readonly [number, number]) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(of[0]) + Math.abs(of[1])))

function same(
  ours: Scale,
  theirs: { (value: number): number; invert(place: number): number },
  value: number,
) {
  expect(ours(value)).toBe(theirs(value))
  return { ours: ours.at(ours(value)), theirs: theirs.invert(theirs(value)) }
}

it('an even axis is as d3’s, to the bit; and back', () => {
  fc.assert(
    fc.property(ascending, ends, number, (values, px, value) => {
      const { ours, theirs } = same(even(values, px), scaleLinear(values, px), value)
      if (Math.abs(px[1] - px[0]) > 1) near(ours, theirs, [...values])
    }),
    { seed: 1, numRuns: 1000 },
  )
})

it('kept within its values it is d3’s clamped one', () => {
  fc.assert(
    fc.property(ascending, ends, number, number, (values, px, value, place) => {
      const [ours, theirs] = [evenWithin(values, px), scaleLinear(values, px).clamp(true)]
      expect(ours(value)).toBe(theirs(value))
      expect(ours.at(place)).toBeGreaterThanOrEqual(values[0])
      expect(ours.at(place)).toBeLessThanOrEqual(values[1])
      if (Math.abs(px[1] - px[0]) > 1) near(ours.at(place), theirs.invert(place), [...values])
    }),
    { seed: 2, numRuns: 1000 },
  )
})

it('by ratio it is d3’s logarithmic one', () => {
  fc.assert(
    fc.property(
      length,
      fc.double({ min: 1.01, max: 1e4, noNaN: true }),
      ends,
      length,
      (low, by, px, value) => {
        const values = [low, low * by] as const
        const { ours, theirs } = same(byRatio(values, px), scaleLog(values, px), value)
        if (Math.abs(px[1] - px[0]) > 1) near(ours / value, theirs / value, [1, 1])
      },
    ),
    { seed: 3, numRuns: 1000 },
  )
})

it('puts all in the middle of an axis of no length, as d3 does', () => {
  expect(even([3, 3], [10, 20])(7)).toBe(15)
  expect(scaleLinear([3, 3], [10, 20])(7)).toBe(15)
})
