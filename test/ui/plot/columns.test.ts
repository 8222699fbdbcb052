// Reduction of a trace: exact on small data, no bucket across an edge, nothing lost at the pixel.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Duty } from '../../../sim/duty.ts'
import { columnMost, means, outline, phaseEdges, pieces, rowsFor } from '../../../ui/plot/columns.ts'

const f = (...values: number[]) => Float64Array.from(values)

it('takes the rows of a window and one beyond on each side, jumps whole', () => {
  const time = f(0, 1, 2, 2, 3, 4, 5)
  expect(rowsFor(time, 2, 3.5)).toEqual([2, 5])
  expect(rowsFor(time, 1.5, 3)).toEqual([1, 5])
  expect(rowsFor(time, -1, 99)).toEqual([0, 6])
})

it('cuts where the controller goes on or off and where a ramp ends', () => {
  const time = f(0, 1, 1, 2, 3, 4, 5, 5, 6)
  const asked = f(0, 0, 0, 10, 20, 20, 20, 0, 0)
  expect(pieces({ time, columns: { asked } }, 0, 6, [])).toEqual([
    { kind: 'off', first: 0, last: 2 },
    { kind: 'ramp', first: 3, last: 4 },
    { kind: 'steady', first: 5, last: 6 },
    { kind: 'off', first: 7, last: 8 },
  ])
})

it('cuts at phase edges: at the second of two rows, or the first row after', () => {
  const time = f(0, 1, 2, 2, 3, 4, 5)
  const asked = f(9, 9, 9, 9, 9, 9, 9)
  const cut = pieces({ time, columns: { asked } }, 0, 5, [2, 3.5])
  expect(cut.map(({ first, last }) => [first, last])).toEqual([
    [0, 2],
    [3, 4],
    [5, 6],
  ])
  // An edge that differs by the rounding of a sum is the same edge.
  expect(pieces({ time, columns: { asked } }, 0, 5, [2 + 1e-12])[1]?.first).toBe(3)
  expect(pieces({ time, columns: { asked } }, 0, 5, [2 - 1e-12])[1]?.first).toBe(3)
})

it('begins the first piece at its true beginning, whatever the window', () => {
  const time = Float64Array.from({ length: 100 }, (_, n) => n)
  const asked = Float64Array.from({ length: 100 }, (_, n) => (n < 20 ? 0 : 5))
  expect(pieces({ time, columns: { asked } }, 70, 90, [])[0]).toMatchObject({ first: 21, last: 91 })
  expect(pieces({ time, columns: { asked } }, 70, 90, [40])[0]).toMatchObject({ first: 41, last: 91 })
})

it('gives exact means with least and most, and a last stretch that is whole', () => {
  const time = f(0, 1, 1, 2, 2, 3, 3, 4, 4, 4.3)
  const column = f(0, 0, 6, 6, 0, 0, 6, 6, 0, 0)
  const { line, band } = means(time, column, { kind: 'steady', first: 0, last: 9 }, 2)
  // Whole cycles of 2 s average 3; the tail of 0.3 s joins the second stretch, averaged from 2.3 to 4.3.
  expect(line.t).toEqual([0, 1, 3.3, 4.3])
  expect(line.value.map((value) => Number(value.toFixed(9)))).toEqual([3, 3, 3, 3])
  expect(band).toEqual({ t: [0, 2, 2, 4.3], least: [0, 0, 0, 0], most: [6, 6, 6, 6] })
})

it('takes the mean from the running sum where there is one', () => {
  const { line } = means(f(0, 10, 20), f(0, 8, 0), { kind: 'steady', first: 0, last: 2 }, 20, f(0, 30, 60))
  expect(line.value).toEqual([3, 3, 3])
})

it('keeps means between least and most, and least and most those of the rows', () => {
  const rows = fc.array(
    fc.record({ dt: fc.double({ min: 0, max: 5, noNaN: true }), v: fc.integer({ min: -50, max: 50 }) }),
    {
      minLength: 2,
      maxLength: 60,
    },
  )
  fc.assert(
    fc.property(rows, fc.double({ min: 0.5, max: 40, noNaN: true }), (list, span) => {
      let t = 0
      const time = Float64Array.from(list, ({ dt }) => (t += dt))
      const column = Float64Array.from(list, ({ v }) => v)
      const { line, band } = means(time, column, { kind: 'steady', first: 0, last: list.length - 1 }, span)
      const low = Math.min(...column)
      const high = Math.max(...column)
      for (const value of line.value) {
        expect(value).toBeGreaterThanOrEqual(low - 1e-9)
        expect(value).toBeLessThanOrEqual(high + 1e-9)
      }
      if (band.t.length > 0) expect([Math.min(...band.least), Math.max(...band.most)]).toEqual([low, high])
    }),
  )
})

it('never lets a bucket reach across an edge of the controller', () => {
  const cycle = 17
  const time = Float64Array.from({ length: 2001 }, (_, n) => n / 5)
  const asked = time.map((t) => (t % cycle < 9 ? 100 : 0))
  const value = asked.map((speed) => (speed > 0 ? 50 : 0))
  for (const piece of pieces({ time, columns: { asked } }, 30, 300, [])) {
    const { band } = means(time, value, piece, 15)
    const expected = piece.kind === 'off' ? 0 : 50
    for (const bound of [...band.least, ...band.most]) expect(bound).toBe(expected)
  }
})

it('draws every row where they fit, and keeps the extremes where they do not', () => {
  const time = Float64Array.from({ length: 1000 }, (_, n) => n)
  const column = time.map((t) => (t === 437 ? 90 : t === 612 ? -80 : t % 7))
  expect(outline(time, column, 0, 999, 0.5).t).toHaveLength(1000)
  const coarse = outline(time, column, 0, 999, 50)
  expect(coarse.t.length).toBeLessThan(100)
  expect(coarse.t[coarse.value.indexOf(90)]).toBe(437)
  expect(coarse.t[coarse.value.indexOf(-80)]).toBe(612)
  expect([coarse.t[0], coarse.t.at(-1)]).toEqual([0, 999])
  expect([...coarse.t].sort((a, b) => a - b)).toEqual([...coarse.t])
})

it('knows the phase edges of a window, without phases too short to see', () => {
  const phase = (seconds: number) =>
    ({ name: '', seconds, speed: 1, cut: { kind: 'torque', torque: 0 }, surge: null }) as const
  const duty: Duty = { phases: [phase(60), phase(2), phase(38)], seconds: 1000, startC: 20 }
  expect(phaseEdges(duty, 0, 200, 10)).toEqual([0, 60, 62, 100, 160, 162, 200])
  expect(phaseEdges(duty, 150, 170, 10)).toEqual([160, 162])
  expect(phaseEdges(duty, 0, 200, 50)).toEqual([0, 60, 100, 160])
  expect(phaseEdges(duty, 0, 1e6, 200)).toEqual([])
})

it('finds the greatest value of each column of pixels and stops with the trace', () => {
  const time = f(0, 10, 20, 30)
  const column = f(0, 100, 0, 60)
  expect(columnMost(time, column, 0, 40, 4)).toEqual([50, 100, 30])
  expect(columnMost(time, column, 0, 30, 6).map(Math.round)).toEqual([25, 75, 100, 25, 15, 45])
})
