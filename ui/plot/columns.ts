// A trace cut to what a screen can show: pieces between edges, means with least and most, and outlines by the pixel.
import { type Duty, phaseSeconds } from '../../sim/duty.ts'
import { rowAt } from '../../sim/trace.ts'

/** Points of a line: times in s and values in the column's unit. */
export interface Points {
  readonly t: readonly number[]
  readonly value: readonly number[]
}

/** Least and most over stretches of time. */
export interface Spread {
  readonly t: readonly number[]
  readonly least: readonly number[]
  readonly most: readonly number[]
}

/** Rows first to last (inclusive) throughout which the controller is off, ramping or steady. */
export interface Piece {
  readonly kind: 'off' | 'ramp' | 'steady'
  readonly first: number
  readonly last: number
}

/** First and last row needed to draw [from, to], s: one beyond on each side where there is one. */
export function rowsFor(time: Float64Array, from: number, to: number): readonly [number, number] {
  let first = rowAt(time, from)
  // Rows at one and the same time belong together: the jump between them is drawn.
  while (first > 0 && time[first - 1] === time[first]) first--
  return [first, Math.min(time.length - 1, rowAt(time, to) + 1)]
}

/**
 * Times (s, ascending) within [from, to] at which a phase begins or ends that lasts at least `least` s.
 * Shorter phases are surges to the eye: they go into the band.
 */
export function phaseEdges(duty: Duty, from: number, to: number, least: number): number[] {
  const lengths = duty.phases.map(phaseSeconds)
  const cycle = lengths.reduce((sum, length) => sum + length, 0)
  const edges: number[] = []
  if (cycle < least) return edges
  for (let start = Math.floor(from / cycle) * cycle; start < to; start += cycle) {
    let t = start
    for (const length of lengths) {
      if (length >= least)
        for (const edge of [t, t + length])
          if (edge >= from && edge <= to && edge !== edges.at(-1)) edges.push(edge)
      t += length
    }
  }
  return edges
}

/** Two times this near are the same edge, s: the run adds up phases in another order than we do. */
const SAME = 1e-6

/**
 * The window's rows in pieces, cut where the controller goes on or off, where a ramp ends and at the given edges
 * (s, ascending; those before the window too). The first piece reaches back to its true beginning, so that buckets
 * stand still while the window moves.
 */
export function pieces(
  { time, columns: { asked } }: { time: Float64Array; columns: { asked: Float64Array } },
  from: number,
  to: number,
  edges: readonly number[],
): Piece[] {
  if (time.length === 0) return []
  const kind = (row: number): Piece['kind'] =>
    asked[row] <= 0 ? 'off' : row > 0 && asked[row] !== asked[row - 1] ? 'ramp' : 'steady'
  // The second of two rows at an edge opens the piece, or else the first row after it.
  const opens = (row: number, edge: number) =>
    row === 0 || time[row] > edge + SAME || (time[row] > edge - SAME && time[row - 1] > edge - SAME)
  const [start, end] = rowsFor(time, from, to)
  const floor = edges.findLast((edge) => edge <= from) ?? Number.NEGATIVE_INFINITY
  let first = start
  while (first > 0 && kind(first - 1) === kind(first) && opens(first - 1, floor)) first--

  const found: Piece[] = []
  let now = kind(first)
  let next = 0
  const skip = (row: number) => {
    while (next < edges.length && edges[next] <= time[row] + SAME) next++
  }
  skip(first)
  for (let row = first + 1; row <= end; row++) {
    const here = kind(row)
    if (here === now && !(next < edges.length && opens(row, edges[next]))) continue
    skip(row)
    found.push({ kind: now, first, last: row - 1 })
    first = row
    now = here
  }
  found.push({ kind: now, first, last: end })
  return found
}

/** The integral of a piece from its start to any time in it, and its value there; asked with ascending or descending times. */
function integral(time: Float64Array, column: Float64Array, { first, last }: Piece, sum?: Float64Array) {
  const area = new Float64Array(last - first + 1)
  for (let row = first + 1; row <= last; row++)
    area[row - first] = sum
      ? sum[row] - sum[first]
      : area[row - 1 - first] + ((column[row - 1] + column[row]) / 2) * (time[row] - time[row - 1])
  return (t: number) => {
    const row = Math.min(last, Math.max(first, rowAt(time, t)))
    if (row === last || t <= time[row]) return { area: area[row - first], value: column[row] }
    const step = time[row + 1] - time[row]
    const value = column[row] + ((column[row + 1] - column[row]) * (t - time[row])) / step
    const part = sum
      ? ((sum[row + 1] - sum[row]) * (t - time[row])) / step
      : ((column[row] + value) / 2) * (t - time[row])
    return { area: area[row - first] + part, value }
  }
}

/**
 * Means over `span` s within a piece, each at the middle of its stretch, with least and most. The mean comes from the
 * running sum where one is given. A last stretch under half a span joins the one before; its mean is that of the last
 * whole span, so that no surge is cut. The ends of the piece carry the mean beside them.
 */
export function means(
  time: Float64Array,
  column: Float64Array,
  piece: Piece,
  span: number,
  sum?: Float64Array,
): { line: Points; band: Spread } {
  const { first, last } = piece
  const start = time[first]
  const end = time[last]
  const t: number[] = []
  const value: number[] = []
  const edges: number[] = []
  const least: number[] = []
  const most: number[] = []
  const read = integral(time, column, piece, sum)
  const count = end > start ? Math.max(1, Math.round((end - start) / span)) : 0
  let row = first
  for (let n = 0; n < count; n++) {
    const from = start + n * span
    const to = n === count - 1 ? end : from + span
    let low = Math.min(read(from).value, read(to).value)
    let high = Math.max(read(from).value, read(to).value)
    for (; row <= last && time[row] <= to; row++) {
      if (column[row] < low) low = column[row]
      if (column[row] > high) high = column[row]
    }
    edges.push(from, to)
    least.push(low, low)
    most.push(high, high)
    const since = n === count - 1 ? Math.max(start, end - span) : from
    t.push((since + to) / 2)
    value.push((read(to).area - read(since).area) / (to - since))
  }
  if (count === 0) return { line: { t: [start], value: [column[last]] }, band: { t: edges, least, most } }
  return {
    line: { t: [start, ...t, end], value: [value[0], ...value, value[value.length - 1]] },
    band: { t: edges, least, most },
  }
}

/** Rows first to last as a line: exact where they fit, else first, least, most and last of each `width` seconds. */
export function outline(
  time: Float64Array,
  column: Float64Array,
  first: number,
  last: number,
  width: number,
): Points {
  const t: number[] = []
  const value: number[] = []
  const add = (row: number) => {
    t.push(time[row])
    value.push(column[row])
  }
  for (let row = first; row <= last; row++) {
    const start = row
    let low = row
    let high = row
    while (row < last && time[row + 1] - time[start] <= width) {
      row++
      if (column[row] < column[low]) low = row
      if (column[row] > column[high]) high = row
    }
    const kept = [start, Math.min(low, high), Math.max(low, high), row]
    kept.forEach((candidate, index) => {
      if (index === 0 || candidate !== kept[index - 1]) add(candidate)
    })
  }
  return { t, value }
}

/**
 * Greatest value of a column in each of `count` equal stretches of [from, to], s; shorter where the trace ends.
 * A stretch without a row takes the value straight between its neighbours.
 */
export function columnMost(
  time: Float64Array,
  column: Float64Array,
  from: number,
  to: number,
  count: number,
): number[] {
  const most: number[] = []
  const width = (to - from) / count
  const end = time[time.length - 1] ?? Number.NEGATIVE_INFINITY
  let row = rowAt(time, from)
  for (let n = 0; n < count && from + n * width < end; n++) {
    const middle = Math.min(end, from + (n + 0.5) * width)
    const stop = from + (n + 1) * width
    const before = rowAt(time, middle)
    const after = Math.min(before + 1, time.length - 1)
    const share = time[after] > time[before] ? (middle - time[before]) / (time[after] - time[before]) : 0
    let greatest = column[before] + share * (column[after] - column[before])
    for (; row < time.length && time[row] < stop; row++)
      if (time[row] >= stop - width && column[row] > greatest) greatest = column[row]
    most.push(greatest)
  }
  return most
}
