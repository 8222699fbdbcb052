// The rows of a skipped turn: those of the turn before it and of the one after, mixed, and moved to its own heat.
import { CHANNELS, type Columns, SUMS, type Trace } from '../trace.ts'
import { fadings, type Gap, offAt, type Skipped } from './gap.ts'
import { HEAT } from './turn.ts'

const NAMES = [...CHANNELS, ...SUMS]

/** Columns of `trace` read at other times (s, ascending; two at a jump), straight between its rows. */
function readAt(trace: Trace, times: Float64Array): Columns {
  const { time, columns } = trace
  const read = Object.fromEntries(NAMES.map((name) => [name, new Float64Array(times.length)])) as Columns
  let before = 0
  let same = 0
  times.forEach((t, row) => {
    same = row > 0 && times[row - 1] === t ? same + 1 : 0
    while (before + 1 < time.length && time[before + 1] < t) before++
    let at = time[before] === t ? before : Math.min(before + 1, time.length - 1)
    // Of two rows at a jump the first is read for the first, the second for the second.
    for (let n = 0; n < same && time[at + 1] === t; n++) at++
    const share = time[at] > t && at > before ? (t - time[before]) / (time[at] - time[before]) : 1
    const from = share < 1 ? before : at
    for (const name of NAMES)
      read[name][row] = columns[name][from] + share * (columns[name][at] - columns[name][from])
  })
  return read
}

export interface Blend {
  /** s of the turn. */
  readonly time: Float64Array
  /** Fills a row of a skipped turn: channels, and sums from the turn's start. */
  row(row: number, turn: Skipped, channels: Float64Array, sums: Float64Array): void
}

/** The skipped turns of a gap, row by row. */
export function blend(gap: Gap): Blend {
  const { time, columns } = gap.from.trace
  const after = readAt(gap.to.trace, time)
  const x = NAMES.map((name) => columns[name])
  const y = NAMES.map((name) => after[name])
  const seconds = time[time.length - 1]
  const fading = [...time].map((t) => fadings(gap, t / seconds))
  const last = fadings(gap, 1)
  const { windingShare } = gap.model
  const more = new Float64Array(HEAT)
  const hot = CHANNELS.indexOf('windingC')
  return {
    time,
    row(row, turn, channels, sums) {
      const { share } = turn
      const count = channels.length
      for (let c = 0; c < count; c++) channels[c] = x[c][row] + share * (y[c][row] - x[c][row])
      for (let c = count; c < x.length; c++) sums[c - count] = x[c][row] + share * (y[c][row] - x[c][row])
      offAt(turn, fading[row], last, windingShare, more)
      for (let h = 0; h < more.length; h++) channels[hot + h] += more[h]
    },
  }
}
