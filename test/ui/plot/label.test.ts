// Labels: clear of each other and of lines, inside the plot, left out rather than overprinted.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { crosses, placeLabels, pushApart, type Rect } from '../../../ui/plot/label.ts'

const bounds: Rect = { x: 0, y: 0, width: 300, height: 200 }
const at = (x: number, y: number) => [x, y] as const
const label = (...spots: (readonly [number, number])[]) => ({ text: 'a', width: 40, height: 16, spots })

it('sees a segment that touches a rectangle, also one that passes through with both ends outside', () => {
  const box: Rect = { x: 10, y: 10, width: 10, height: 10 }
  expect(crosses(at(0, 0), at(30, 30), box)).toBe(true)
  expect(crosses(at(15, 15), at(16, 16), box)).toBe(true)
  expect(crosses(at(0, 15), at(30, 15), box)).toBe(true)
  expect(crosses(at(0, 25), at(25, 50), box)).toBe(false)
  expect(crosses(at(0, 9), at(30, 9), box)).toBe(false)
  expect(crosses(at(0, 18), at(11, 30), box)).toBe(false)
})

it('takes the first spot that is clear of lines', () => {
  const line = [at(0, 50), at(150, 50), at(300, 50)]
  const [place] = placeLabels([label(at(100, 45), at(100, 60))], [], [line], bounds)
  expect(place).toEqual({ x: 100, y: 60, width: 40, height: 16 })
})

it('crosses the fewest lines where none is clear', () => {
  const lines = [
    [at(0, 50), at(300, 50)],
    [at(0, 54), at(300, 54)],
    [at(0, 104), at(300, 104)],
  ]
  const [place] = placeLabels([label(at(100, 45), at(100, 100))], [], lines, bounds)
  expect(place?.y).toBe(100)
})

it('keeps off earlier labels and taken places, and leaves out what has no room', () => {
  const spots = [at(10, 10), at(20, 12), at(280, 10)]
  expect(placeLabels([label(...spots), label(...spots)], [], [], bounds)).toEqual([
    { x: 10, y: 10, width: 40, height: 16 },
    undefined,
  ])
  expect(placeLabels([label(at(10, 10))], [{ x: 0, y: 0, width: 15, height: 15 }], [], bounds)).toEqual([
    undefined,
  ])
})

it('pushes gutter labels apart, in order, within their range', () => {
  expect(pushApart([10, 12, 60], 18, 0, 100)).toEqual([10, 28, 60])
  expect(pushApart([95, 96], 18, 0, 100)).toEqual([73, 91])
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { minLength: 1, maxLength: 10 }),
      (wishes) => {
        const placed = pushApart(wishes, 18, 0, 200)
        const sorted = [...placed].sort((a, b) => a - b)
        for (let n = 1; n < sorted.length; n++) expect(sorted[n] - sorted[n - 1]).toBeGreaterThan(18 - 1e-9)
        expect(sorted[0]).toBeGreaterThan(9 - 1e-9)
        expect(sorted.at(-1)).toBeLessThan(191 + 1e-9)
      },
    ),
  )
})

it('overlaps evenly where there is no room for all', () => {
  expect(pushApart([5, 5, 5], 18, 0, 38)).toEqual([9, 19, 29])
})
