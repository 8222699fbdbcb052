// The body of a log's table into columns in SI: units of the header or the cell, decimal comma or point.
import { fromUnit } from '../quantity.ts'
import { unitNamed } from '../quantity/spelling.ts'
import { markIn, numberIn } from './logCells.ts'
import { type Column, DIMENSIONS, type Kind } from './logHeader.ts'
import type { Columns } from './logRows.ts'
import { secondsIn } from './logTimes.ts'

/** Units of columns that name none. */
const USUAL = {
  frame: '°C',
  winding: '°C',
  air: '°C',
  ohms: 'Ω',
  amps: 'A',
  speed: 'rpm',
  volts: 'V',
} as const
type Read = keyof typeof USUAL
const NAMES = {
  frameC: 'frame',
  windingC: 'winding',
  ohms: 'ohms',
  airC: 'air',
  amps: 'amps',
  speed: 'speed',
  volts: 'volts',
} as const satisfies Record<string, Read>

const bare = (cell: string): string => cell.trim().replace(/^[([]|[)\]]$/g, '')

/** Columns with the units of a line under the names, if the first line of the body is one: no numbers, some unit. */
function withUnits(columns: readonly Column[], cells: readonly string[]): Column[] | null {
  const units = columns.map(
    ({ kind, place }) => unitNamed(bare(cells[place] ?? ''), DIMENSIONS[kind])?.symbol ?? null,
  )
  if (cells.some((cell) => /\d/.test(cell)) || units.every((unit) => unit === null || unit === ''))
    return null
  return columns.map((column, n) => ({ ...column, unit: units[n] ?? column.unit }))
}

/** True for decimal commas: by cells that can be read one way only, else by the semicolons that go with them. */
function decimalComma(cells: readonly string[], delimiter: string): boolean {
  const marks = cells.map(markIn)
  const commas = marks.filter((mark) => mark === 'comma').length
  const points = marks.filter((mark) => mark === 'point').length
  return commas === points ? delimiter === ';' : commas > points
}

/** The columns, rows without any text left out; how they were read where that was not plain is in the notes. */
export function columnsOf(
  body: readonly string[][],
  named: readonly Column[],
  delimiter: string,
): { columns: Columns; notes: string[] } {
  const given = body[0] ? withUnits(named, body[0]) : null
  const known = given ?? named
  const rows = body.slice(given ? 1 : 0).filter((cells) => cells.some((cell) => cell.trim() !== ''))
  const cellsOf = ({ place }: Column): string[] => rows.map((cells) => cells[place] ?? '')
  const comma = decimalComma(known.flatMap(cellsOf), delimiter)
  const find = (kind: Kind) => known.find((column) => column.kind === kind)
  const time = find('time')
  const times = time
    ? secondsIn(cellsOf(time), time.unit, time.name, comma)
    : { seconds: new Float64Array(rows.length).fill(Number.NaN), notes: [] }
  const notes = [...times.notes]
  const values = (kind: Read): Float64Array => {
    const column = find(kind)
    if (!column) return new Float64Array(rows.length).fill(Number.NaN)
    let named = column.unit !== null
    const found = Float64Array.from(cellsOf(column), (text) => {
      const cell = numberIn(text, comma)
      if (cell === null) return Number.NaN
      const own = cell.unit === '' ? undefined : unitNamed(cell.unit, DIMENSIONS[kind])
      named ||= own !== undefined
      const value = fromUnit(cell.value, own?.symbol ?? column.unit ?? USUAL[kind])
      return Number.isFinite(value) ? value : Number.NaN
    })
    if (!named && DIMENSIONS[kind] === 'temperature')
      notes.push(`“${column.name}” names no unit: read as °C.`)
    return found
  }
  const read = Object.fromEntries(
    Object.entries(NAMES).map(([name, kind]) => [name, values(kind)]),
  ) as unknown as Omit<Columns, 'time'>
  return { columns: { time: times.seconds, ...read }, notes }
}
