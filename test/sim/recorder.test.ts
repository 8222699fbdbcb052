// The recorder: exact while the rows fit; beyond that, buckets that lose no extreme and never reach across an edge.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Recorder, recorder } from '../../sim/recorder.ts'
import { CHANNELS, SUMS } from '../../sim/trace.ts'

interface Pushed {
  readonly t: number
  readonly channels: Float64Array
  readonly sums: Float64Array
}

/** A row of made-up readings. Two channels carry the stretch's number and its negative: see `straddles`. */
function rowAt(t: number, stretch: number, wobble: number): Pushed {
  const channels = Float64Array.from(CHANNELS, (_, c) => Math.sin(t * (c + 1) + wobble) * (c + 1))
  channels[0] = stretch
  channels[1] = -stretch
  return { t, channels, sums: Float64Array.from(SUMS, (_, s) => t * (s + 1)) }
}

function fill(book: Recorder, rows: readonly Pushed[], edges: ReadonlySet<number>) {
  rows.forEach(({ t, channels, sums }, index) => {
    if (edges.has(index)) book.edge()
    book.push(t, channels, sums)
  })
  return book.finish()
}

/** Rows over `seconds` in stretches that begin at the edges. */
function rowsOf(count: number, seconds: number, edges: ReadonlySet<number>): Pushed[] {
  let stretch = 0
  return Array.from({ length: count }, (_, index) => {
    if (edges.has(index)) stretch++
    // At an edge two rows stand at one time.
    const step = edges.has(index) ? index - 1 : index
    return rowAt((Math.max(0, step) * seconds) / count, stretch, index)
  })
}

type Kept = ReturnType<Recorder['finish']>
const columnsOf = ({ columns }: Kept) => [...CHANNELS, ...SUMS].map((name) => columns[name])
const valuesOf = ({ channels, sums }: Pushed) => [...channels, ...sums]

const extremes = (columns: readonly ArrayLike<number>[]) =>
  columns.map((column) => [Math.min(...Array.from(column)), Math.max(...Array.from(column))])

/** A bucket across an edge holds least and most of two stretches: then the two marked channels no longer agree. */
const straddles = ({ columns }: Kept): boolean =>
  columns[CHANNELS[0]].some((stretch, row) => stretch !== -columns[CHANNELS[1]][row])

const monotone = (time: Float64Array) => time.every((t, row) => row === 0 || t >= time[row - 1])

describe('under the cap', () => {
  it('keeps every row as it was pushed', () => {
    const rows = rowsOf(99, 50, new Set([20, 60]))
    const kept = fill(recorder(50, 100), rows, new Set([20, 60]))
    expect(kept.bucket).toBe(0)
    expect([...kept.time]).toEqual(rows.map(({ t }) => t))
    columnsOf(kept).forEach((column, c) => {
      expect([...column]).toEqual(rows.map((row) => valuesOf(row)[c]))
    })
  })

  it('keeps a hundred thousand rows without being told how many come', () => {
    const rows = rowsOf(100_000, 1000, new Set())
    const kept = fill(recorder(1000), rows, new Set())
    expect(kept.time).toHaveLength(100_000)
    expect(kept.bucket).toBe(0)
    expect(kept.columns[SUMS[2]][99_999]).toBe(rows[99_999].sums[2])
  })

  it('a run without rows has none', () => {
    expect(recorder(10).finish().time).toHaveLength(0)
  })
})

describe('over the cap', () => {
  const drawn = fc.record({
    most: fc.integer({ min: 64, max: 300 }),
    count: fc.integer({ min: 64, max: 1500 }),
    edges: fc.uniqueArray(fc.integer({ min: 1, max: 1500 }), { maxLength: 6 }),
  })

  it('loses no extreme of any column, keeps time in order, keeps to the cap, and never reaches across an edge', () => {
    let bucketed = 0
    fc.assert(
      fc.property(drawn, ({ most, count, edges }) => {
        const at = new Set(edges)
        const rows = rowsOf(count, 500, at)
        const kept = fill(recorder(500, most), rows, at)
        expect(kept.time.length).toBeLessThanOrEqual(most)
        expect(monotone(kept.time)).toBe(true)
        expect(kept.time[0]).toBe(rows[0].t)
        expect(kept.time.at(-1)).toBe(rows.at(-1)!.t)
        expect(straddles(kept)).toBe(false)
        const pushed = rows.map(valuesOf)
        expect(extremes(columnsOf(kept))).toEqual(
          extremes(pushed[0].map((_, c) => pushed.map((row) => row[c]))),
        )
        if (kept.bucket > 0) bucketed++
      }),
      { seed: 17, numRuns: 80 },
    )
    // Most draws outgrow the cap, or the property says nothing.
    expect(bucketed).toBeGreaterThan(40)
  })

  it('holds every pushed value between the least and the most of its moment', () => {
    const rows = rowsOf(5000, 100, new Set([1234]))
    const kept = fill(recorder(100, 200), rows, new Set([1234]))
    expect(kept.bucket).toBeGreaterThan(0)
    const { time, columns } = kept
    const amps = columns.current
    const channel = CHANNELS.indexOf('current')
    let outside = 0
    let looked = 0
    for (const { t, channels } of rows) {
      // All kept rows within a bucket's width of the moment: the pair that holds it is among them.
      let [least, most] = [Infinity, -Infinity]
      for (let row = 0; row < time.length; row++) {
        if (Math.abs(time[row] - t) > kept.bucket) continue
        least = Math.min(least, amps[row])
        most = Math.max(most, amps[row])
      }
      looked++
      if (channels[channel] < least || channels[channel] > most) outside++
    }
    expect(looked).toBe(5000)
    expect(outside).toBe(0)
  })

  it('buckets are no wider than they say', () => {
    const rows = rowsOf(5000, 100, new Set())
    const { time, bucket } = fill(recorder(100, 200), rows, new Set())
    // Rows come in pairs, first and last moment of a bucket.
    for (let row = 0; row + 1 < time.length; row += 2)
      expect(time[row + 1] - time[row]).toBeLessThanOrEqual(bucket * (1 + 1e-12))
    expect(time.length).toBeGreaterThanOrEqual(50)
  })

  it('an edge told twice counts once, and those after it still hold', () => {
    const book = recorder(100, 64)
    const rows = rowsOf(1000, 100, new Set([10, 30]))
    rows.forEach(({ t, channels, sums }, index) => {
      if (index === 10) book.edge()
      if (index === 10 || index === 30) book.edge()
      book.push(t, channels, sums)
    })
    expect(straddles(book.finish())).toBe(false)
  })

  it('with more edges than rows that fit, keeps to the cap all the same', () => {
    const edges = new Set(Array.from({ length: 900 }, (_, index) => index + 1))
    const kept = fill(recorder(100, 64), rowsOf(1000, 100, edges), edges)
    expect(kept.time.length).toBeLessThanOrEqual(64)
    expect(monotone(kept.time)).toBe(true)
    expect(kept.time.at(-1)).toBe(99.9)
  })
})
