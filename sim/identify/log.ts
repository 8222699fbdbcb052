// A warm-up log: a table as people keep it, read into columns in SI.
import { dsvFormat } from 'd3'
import { fromUnit } from '../quantity.ts'
import { unitNamed } from '../quantity/spelling.ts'
import { markIn, numberIn } from './logCells.ts'
import { type Column, columnsIn, DIMENSIONS, type Kind } from './logHeader.ts'
import { secondsIn } from './logTimes.ts'

/** A log in columns of one length: s from the first row, °C, Ω, A, rad/s, V; NaN where a cell is empty. */
export interface Log {
  readonly rows: number
  readonly time: Float64Array
  readonly frameC: Float64Array
  /** Winding temperature where it was read as such, and winding resistance. */
  readonly windingC: Float64Array
  readonly ohms: Float64Array
  readonly airC: Float64Array
  readonly amps: Float64Array
  readonly speed: Float64Array
  readonly volts: Float64Array
  /** Where the frame temperature was taken, as the header has it; '' where there is none. */
  readonly place: string
}

export interface NoLog {
  readonly ok: false
  readonly wrong: string
  readonly wouldDo: string
}
export type ReadLog = { readonly ok: true; readonly log: Log; readonly notes: readonly string[] } | NoLog

/** Most characters, rows looked at for the header, fewest readings that make a log. */
const LARGEST = 5_000_000
const TOP = 40
const FEWEST = 6
const DELIMITERS = [';', '\t', ','] as const
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
const NEEDS =
  'The first line names the columns, for example: time (min), can (°C), amps, rpm. Winding ohms may stand beside the can or in its place.'

const refuse = (wrong: string, wouldDo: string): NoLog => ({ ok: false, wrong, wouldDo })
const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`

/**
 * Reads a table of comma-, semicolon- or tab-separated values, decimal comma or point, °C or °F, under the header
 * names people use. Rows without a time, amps or any temperature are left out and counted in the notes.
 */
export function readLog(text: string): ReadLog {
  if (text.length > LARGEST)
    return refuse(
      `The log holds ${Math.round(text.length / 1e6)} million characters.`,
      `${LARGEST / 1e6} million at most. A reading every half minute is plenty.`,
    )
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what gives a binary file away.
  if (/^PK\u0003|[\u0000-\u0008\u000e-\u001a]|\ufffd{2}/.test(text.slice(0, 20_000)))
    return refuse('This is a binary file, not text.', 'Save the spreadsheet as CSV, and give that.')
  if (text.trim() === '') return refuse('The log is empty.', NEEDS)
  const found = headerOf(text)
  const kinds = found.columns.map(({ kind }) => kind)
  const warmth = (['frame', 'winding', 'ohms'] as const).filter((kind) => kinds.includes(kind))
  if (kinds.length === 0) return refuse('No line of the log names its columns.', NEEDS)
  if (!kinds.includes('time')) return refuse('The log has no column for the time.', NEEDS)
  if (warmth.length === 0) return refuse('The log has neither can temperature nor winding ohms.', NEEDS)
  return columns(dsvFormat(found.delimiter).parseRows(text.replace(/^\ufeff/, '')), found)
}

interface Header {
  readonly delimiter: string
  readonly row: number
  readonly columns: readonly Column[]
  readonly twice: readonly string[]
}

/** The delimiter and the line under which most columns have a name. */
function headerOf(text: string): Header {
  const top = text
    .replace(/^\ufeff/, '')
    .slice(0, 400 * TOP)
    .split(/\r?\n|\r/)
    .slice(0, TOP)
  let best: Header = { delimiter: ',', row: 0, columns: [], twice: [] }
  for (const delimiter of DELIMITERS)
    dsvFormat(delimiter)
      .parseRows(top.join('\n'))
      .forEach((cells, row) => {
        const header = columnsIn(cells)
        if (header.columns.length > best.columns.length) best = { delimiter, row, ...header }
      })
  return best
}

/** A line of units under the names: no numbers, and some unit. */
const isUnits = (cells: readonly string[], columns: readonly Column[]): boolean =>
  cells.every((cell) => !/\d/.test(cell)) &&
  columns.some(({ kind, place }) => unitNamed(bare(cells[place] ?? ''), DIMENSIONS[kind]) !== undefined)
const bare = (cell: string): string => cell.trim().replace(/^[([]|[)\]]$/g, '')

/** True for decimal commas: by cells that can be read one way only, else by the semicolons that go with them. */
function decimalComma(cells: readonly string[], delimiter: string): boolean {
  const marks = cells.map(markIn)
  const commas = marks.filter((mark) => mark === 'comma').length
  const points = marks.filter((mark) => mark === 'point').length
  return commas === points ? delimiter === ';' : commas > points
}

function columns(table: readonly string[][], { delimiter, row, columns: named, twice }: Header): ReadLog {
  const notes: string[] = []
  let body = table.slice(row + 1)
  let known = named
  if (body[0] && isUnits(body[0], named)) {
    const units = body[0]
    known = named.map((column) => ({
      ...column,
      unit: unitNamed(bare(units[column.place] ?? ''), DIMENSIONS[column.kind])?.symbol ?? column.unit,
    }))
    body = body.slice(1)
  }
  body = body.filter((cells) => cells.some((cell) => cell.trim() !== ''))
  const used = known.flatMap(({ place }) => body.map((cells) => cells[place] ?? ''))
  const comma = decimalComma(used, delimiter)
  const time = known.find(({ kind }) => kind === 'time') as Column
  const times = secondsIn(
    body.map((cells) => cells[time.place] ?? ''),
    time.unit,
    time.name,
    comma,
  )
  notes.push(...times.notes)
  const has = (kind: Kind): boolean => known.some((column) => column.kind === kind)
  const values = (kind: Exclude<Kind, 'time'>): Float64Array => {
    const column = known.find((one) => one.kind === kind)
    if (!column) return new Float64Array(body.length).fill(Number.NaN)
    if (column.unit === null && DIMENSIONS[kind] === 'temperature' && kind === 'frame')
      notes.push(`“${column.name}” names no unit: read as °C.`)
    return Float64Array.from(body, (cells) => {
      const cell = numberIn(cells[column.place] ?? '', comma)
      if (cell === null) return Number.NaN
      const own = cell.unit === '' ? undefined : unitNamed(cell.unit, DIMENSIONS[kind])
      return fromUnit(cell.value, own?.symbol ?? column.unit ?? USUAL[kind])
    })
  }
  const raw = {
    time: times.seconds,
    frameC: values('frame'),
    windingC: values('winding'),
    ohms: values('ohms'),
    airC: values('air'),
    amps: values('amps'),
    speed: values('speed'),
    volts: values('volts'),
  }
  if (twice.length > 0)
    notes.push(`Columns that name the same as another are left aside: ${twice.join(', ')}.`)
  const kept = keep(raw, has('amps'), notes)
  if (typeof kept === 'string') return refuse(kept, 'Times must run forward, in one log of one warm-up.')
  if (kept.length < FEWEST)
    return refuse(
      `The log has ${count(kept.length, 'usable row')}.`,
      `At least ${FEWEST}; a reading a minute over the warm-up and the cooling-off is best.`,
    )
  const start = raw.time[kept[0]]
  const take = (column: Float64Array) => Float64Array.from(kept, (at) => column[at])
  return {
    ok: true,
    notes,
    log: {
      rows: kept.length,
      time: take(raw.time).map((t) => t - start),
      frameC: take(raw.frameC),
      windingC: take(raw.windingC),
      ohms: take(raw.ohms),
      airC: take(raw.airC),
      amps: take(raw.amps),
      speed: take(raw.speed),
      volts: take(raw.volts),
      place: known.find(({ kind }) => kind === 'frame')?.name ?? '',
    },
  }
}

type Raw = Record<'time' | 'frameC' | 'windingC' | 'ohms' | 'airC' | 'amps' | 'speed' | 'volts', Float64Array>

/** Places of the rows that can be used, or why the times cannot; what was left out goes to the notes. */
function keep(raw: Raw, ampsLogged: boolean, notes: string[]): number[] | string {
  const { time, frameC, windingC, ohms, amps, speed } = raw
  const rows = time.length
  const warm = (at: number) => [frameC[at], windingC[at], ohms[at]].some((value) => !Number.isNaN(value))
  // Amps left blank from some row to the end, and where the shaft stands: switched off.
  let end = rows
  while (end > 0 && Number.isNaN(amps[end - 1])) end--
  if (ampsLogged && end > 0 && end < rows) {
    notes.push(`Amps are blank in the last ${count(rows - end, 'row')}: taken as switched off.`)
    amps.fill(0, end)
    for (let at = end; at < rows; at++) if (Number.isNaN(speed[at])) speed[at] = 0
  }
  for (let at = 0; at < rows; at++) if (Number.isNaN(amps[at]) && speed[at] === 0) amps[at] = 0
  const kept: number[] = []
  const back: number[] = []
  let gaps = 0
  for (let at = 0; at < rows; at++) {
    if (Number.isNaN(time[at]) || !warm(at) || (ampsLogged && Number.isNaN(amps[at]))) gaps++
    else if (kept.length > 0 && time[at] < time[kept[kept.length - 1]]) back.push(at)
    else kept.push(at)
  }
  if (gaps > 0) notes.push(`${count(gaps, 'row')} with gaps ${gaps === 1 ? 'is' : 'are'} left out.`)
  if (back.length === 0) return kept
  if (back.length > kept.length / 4)
    return `The times go back and forth: ${back.length} of ${kept.length + back.length} rows lie before the row above.`
  notes.push(
    `The time goes back at reading ${back[0] + 1}: ${count(back.length, 'row')} out of order ${back.length === 1 ? 'is' : 'are'} left out.`,
  )
  return kept
}
