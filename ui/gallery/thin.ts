// A trace with the rows left out that no picture would miss: those that lie straight between their neighbours.
import { CHANNELS, type Columns, SUMS, type Trace } from '../../sim/trace.ts'

/** How far a value may be off, as a share of its column's range. */
const OFF = 0.012
/** The only column that adds up which a picture reads. */
const SUMMED = 'charge'
const KEPT = [...CHANNELS, SUMMED] as const

/** Rows of a jump, or of a drive that starts or stops, stay whatever lies beside them. */
const isEdge = ({ time, columns: { asked, target } }: Trace, row: number): boolean =>
  row === 0 ||
  row === time.length - 1 ||
  [row - 1, row + 1].some(
    (beside) =>
      time[beside] === time[row] || asked[beside] > 0 !== asked[row] > 0 || target[beside] !== target[row],
  )

/** The thinned trace. Columns that no picture reads are left empty, and it cannot be taken up again. */
export function thin(trace: Trace): Trace {
  const { time, columns } = trace
  const ranges = KEPT.map((name) => {
    const column = columns[name]
    return (
      column.reduce((a, b) => Math.max(a, b), -Infinity) - column.reduce((a, b) => Math.min(a, b), Infinity)
    )
  })
  /** Whether every row between two lies straight between them. */
  const straight = (from: number, to: number): boolean =>
    KEPT.every((name, n) => {
      const column = columns[name]
      for (let row = from + 1; row < to; row++) {
        const share = (time[row] - time[from]) / (time[to] - time[from])
        const there = column[from] + share * (column[to] - column[from])
        if (Math.abs(there - column[row]) > OFF * ranges[n]) return false
      }
      return true
    })
  const rows = [0]
  for (let row = 1; row < time.length; row++) {
    const from = rows[rows.length - 1]
    if (row - from > 1 && !straight(from, row)) rows.push(row - 1)
    if (isEdge(trace, row) && rows[rows.length - 1] !== row) rows.push(row)
  }
  const cut = (column: Float64Array) => Float64Array.from(rows, (row) => column[row])
  /** With no more decimals than show. */
  const short = (name: (typeof KEPT)[number], n: number) => {
    if (name === SUMMED) return cut(columns[name])
    const step = 10 ** Math.floor(Math.log10(OFF * ranges[n] || 1) - 0.5)
    return cut(columns[name]).map((value) => Math.round(value / step) * step)
  }
  const none = new Float64Array(0)
  return {
    ...trace,
    time: cut(time),
    columns: {
      ...Object.fromEntries(SUMS.map((name) => [name, none])),
      ...Object.fromEntries(KEPT.map((name, n) => [name, short(name, n)])),
    } as unknown as Columns,
    checkpoints: [],
  }
}
