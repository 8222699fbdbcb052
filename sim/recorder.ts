// Keeps the rows of a run: exact while they fit, then least-and-most buckets of growing width.
import { CHANNELS, type Columns, SUMS } from './trace.ts'

/** Most rows a trace may hold. */
export const MOST_ROWS = 400_000

const WIDTH = 1 + CHANNELS.length + SUMS.length

export interface Recorder {
  /** Adds a row: time (s), channels and sums in the order of CHANNELS and SUMS. */
  push(t: number, channels: Float64Array, sums: Float64Array): void
  /** Tells that the controller went on or off here: no bucket may reach across. */
  edge(): void
  finish(): { time: Float64Array; columns: Columns; bucket: number }
}

/** A recorder for a run of `seconds`; `most` rows at the most. */
export function recorder(seconds: number, most = MOST_ROWS): Recorder {
  let rows = 0
  let capacity = 256
  let table = Array.from({ length: WIDTH }, () => new Float64Array(capacity))
  let width = 0 // s; 0: exact
  const edges: number[] = []
  // The open bucket: first time, last time, least and most of every column.
  let filled = 0
  let first = 0
  let last = 0
  const least = new Float64Array(WIDTH)
  const greatest = new Float64Array(WIDTH)
  const row = new Float64Array(WIDTH)

  const grow = () => {
    capacity = Math.min(most + 2, capacity * 2)
    table = table.map((column) => {
      const larger = new Float64Array(capacity)
      larger.set(column)
      return larger
    })
  }

  const append = (values: Float64Array) => {
    if (rows === capacity) grow()
    for (let c = 0; c < WIDTH; c++) table[c][rows] = values[c]
    rows++
  }

  const close = () => {
    if (filled === 0) return
    least[0] = first
    greatest[0] = last
    append(least)
    if (filled > 1) append(greatest)
    filled = 0
  }

  const gather = (values: Float64Array) => {
    const t = values[0]
    if (filled > 0 && t - first > width) close()
    if (filled === 0) {
      first = t
      least.set(values)
      greatest.set(values)
    } else {
      for (let c = 1; c < WIDTH; c++) {
        const value = values[c]
        if (value < least[c]) least[c] = value
        if (value > greatest[c]) greatest[c] = value
      }
    }
    last = t
    filled++
  }

  /** Pours all rows into wider buckets, half as many rows or fewer. */
  const widen = () => {
    width = width === 0 ? (8 * seconds) / most : 2 * width
    const old = table
    const count = rows
    const kept = edges.splice(0)
    table = old.map(() => new Float64Array(capacity))
    rows = 0
    let next = 0
    for (let r = 0; r < count; r++) {
      // Edges alone may outnumber the rows that fit: then, and only then, buckets reach across them.
      if (kept[next] === r) {
        if (kept.length < most / 8) {
          close()
          edges.push(rows)
        }
        while (kept[next] === r) next++
      }
      for (let c = 0; c < WIDTH; c++) row[c] = old[c][r]
      gather(row)
    }
    close()
  }

  return {
    push(t, channels, sums) {
      row[0] = t
      row.set(channels, 1)
      row.set(sums, 1 + CHANNELS.length)
      if (width > 0) gather(row)
      else append(row)
      while (rows >= most) widen()
    },
    edge() {
      if (width > 0) {
        if (edges.length >= most / 8) return
        close()
      }
      edges.push(rows)
    },
    finish() {
      close()
      const cut = table.map((column) => column.slice(0, rows))
      const entries = [...CHANNELS, ...SUMS].map((name, c) => [name, cut[c + 1]] as const)
      return { time: cut[0], columns: Object.fromEntries(entries) as Columns, bucket: width }
    },
  }
}
