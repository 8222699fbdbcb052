// The time column of a log, in seconds from its first reading: plain numbers in some unit, or times by the clock.
import { fromUnit } from '../quantity.ts'
import { type Clock, clockIn, numberIn } from './logCells.ts'

const DAY = 86_400
/** A log whose times would span less than this in seconds is in minutes, and so on: warm-ups take that long. s */
const SHORTEST = 600
/** Elapsed minutes start low; a clock on the wall that starts below this hour was read in the night. */
const FIRST_HOUR = 5

/** Seconds, row by row, NaN where a cell has no time; and how they were read, where that was not plain. */
export function secondsIn(
  cells: readonly string[],
  unit: string | null,
  header: string,
  comma: boolean,
): { seconds: Float64Array; notes: string[] } {
  const clocks = cells.map((cell) => (cell.includes(':') ? clockIn(cell) : null))
  const first = clocks.find((clock) => clock !== null)
  return first ? byClock(cells, clocks, first, header) : plainTimes(cells, unit, comma)
}

function byClock(cells: readonly string[], clocks: readonly (Clock | null)[], first: Clock, header: string) {
  const pairs = first[2] === null
  const hours =
    /hh?:mm/i.test(header) ||
    (!/mm?:ss/i.test(header) &&
      first[0] >= FIRST_HOUR &&
      clocks.every((clock) => clock === null || clock[0] < 24))
  const example = cells[clocks.indexOf(first)].trim()
  const notes = pairs
    ? [`Times such as “${example}” are read as ${hours ? 'hours and minutes' : 'minutes and seconds'}.`]
    : []
  let days = 0
  let last = -Infinity
  const seconds = Float64Array.from(clocks, (clock) => {
    if (clock === null) return Number.NaN
    const [a, b, c] = clock
    let at = c !== null || hours ? 3600 * a + 60 * b + (c ?? 0) : 60 * a + b
    // Past midnight the clock starts again.
    if (at + days < last - DAY / 2) days += DAY
    at += days
    last = Math.max(last, at)
    return at
  })
  return { seconds, notes }
}

function plainTimes(cells: readonly string[], unit: string | null, comma: boolean) {
  const numbers = cells.map((cell) => numberIn(cell, comma)?.value ?? Number.NaN)
  let symbol = unit
  const notes: string[] = []
  if (symbol === null) {
    const known = numbers.filter((value) => !Number.isNaN(value))
    const span = known.reduce((most, t) => Math.max(most, t), -Infinity) - (known[0] ?? 0)
    symbol = span >= SHORTEST ? 's' : 60 * span >= SHORTEST ? 'min' : 'h'
    notes.push(`The time column names no unit: read as ${symbol}.`)
  }
  const named = symbol
  const seconds = Float64Array.from(numbers, (value) => fromUnit(value, named))
  return { seconds: seconds.map((t) => (Number.isFinite(t) ? t : Number.NaN)), notes }
}
