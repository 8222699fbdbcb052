// A warm-up log: a table as people keep it, read into columns in SI.
import { dsvFormat } from 'd3'
import { harmless } from '../harmless.ts'
import { type Column, columnsIn } from './logHeader.ts'
import { blanksAsOff, type Columns, count, usableRows } from './logRows.ts'
import { columnsOf } from './logTable.ts'

/** A log in columns of one length: s from the first row, °C, Ω, A, rad/s, V; NaN where a cell is empty. */
export interface Log extends Columns {
  readonly rows: number
  /** Where the frame temperature was taken, as the header has it; '' where there is none. */
  readonly place: string
}

export interface NoLog {
  readonly ok: false
  readonly wrong: string
  readonly wouldDo: string
}
export type ReadLog = { readonly ok: true; readonly log: Log; readonly notes: readonly string[] } | NoLog

/** Most characters of a log: look at a file's size before reading it. */
const LARGEST_LOG = 5_000_000
/** Lines looked at for the header, characters of a line, fewest readings that make a log. */
const TOP = 40
const LINE = 400
const FEWEST = 6
const DELIMITERS = [';', '\t', ','] as const
const NEEDS =
  'The first line names the columns, for example: time (min), can (°C), amps, rpm. Winding ohms may stand beside the can or in its place.'

const refuse = (wrong: string, wouldDo: string): NoLog => ({ ok: false, wrong, wouldDo })

/** Why a log of so many characters is not read; null where it is. */
export const tooLarge = (characters: number): NoLog | null =>
  characters > LARGEST_LOG
    ? refuse(
        `The log holds ${Math.round(characters / 1e6)} million characters.`,
        `${LARGEST_LOG / 1e6} million at most. A reading every half minute is plenty.`,
      )
    : null

/**
 * Reads a table of comma-, semicolon- or tab-separated values, decimal comma or point, °C or °F, under the header
 * names people use. Rows without a time, amps or any temperature are left out and counted in the notes.
 */
export function readLog(text: string): ReadLog {
  const large = tooLarge(text.length)
  if (large) return large
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what gives a binary file away.
  if (/^PK\u0003|[\u0000-\u0008\u000e-\u001a]|\ufffd{2}/.test(text.slice(0, 20_000)))
    return refuse('This is a binary file, not text.', 'Save the spreadsheet as CSV, and give that.')
  const plain = harmless(text.replace(/^\ufeff/, ''))
  if (plain.trim() === '') return refuse('The log is empty.', NEEDS)
  const header = headerOf(plain)
  const kinds = header.columns.map(({ kind }) => kind)
  if (kinds.length === 0) return refuse('No line of the log names its columns.', NEEDS)
  if (!kinds.includes('time')) return refuse('The log has no column for the time.', NEEDS)
  if (!kinds.some((kind) => kind === 'frame' || kind === 'winding' || kind === 'ohms'))
    return refuse('The log has neither can temperature nor winding ohms.', NEEDS)
  return logOf(
    dsvFormat(header.delimiter)
      .parseRows(plain)
      .slice(header.row + 1),
    header,
  )
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
    .slice(0, LINE * TOP)
    .split(/\r?\n|\r/)
    .slice(0, TOP)
    .join('\n')
  let best: Header = { delimiter: ',', row: 0, columns: [], twice: [] }
  for (const delimiter of DELIMITERS)
    dsvFormat(delimiter)
      .parseRows(top)
      .forEach((cells, row) => {
        const header = columnsIn(cells)
        if (header.columns.length > best.columns.length) best = { delimiter, row, ...header }
      })
  return best
}

function logOf(body: readonly string[][], { columns: named, twice, delimiter }: Header): ReadLog {
  const read = columnsOf(body, named, delimiter)
  const switched = blanksAsOff(read.columns)
  const usable = usableRows(switched.columns)
  const notes = [...read.notes, ...switched.notes, ...usable.notes]
  if (twice.length > 0)
    notes.push(`Columns that name the same as another are left aside: ${twice.join(', ')}.`)
  const { rows } = usable
  if (rows === null)
    return refuse('The times go back and forth.', 'They must run forward: one log of one warm-up.')
  if (rows.length < FEWEST)
    return refuse(
      `The log has ${count(rows.length, 'usable row')}.`,
      `At least ${FEWEST}; a reading a minute over the warm-up and the cooling-off is best.`,
    )
  const take = (column: Float64Array) => Float64Array.from(rows, (at) => column[at])
  const start = switched.columns.time[rows[0]]
  const columns = Object.fromEntries(
    Object.entries(switched.columns).map(([name, column]) => [name, take(column)]),
  ) as unknown as Columns
  return {
    ok: true,
    notes,
    log: {
      ...columns,
      time: columns.time.map((t) => t - start),
      rows: rows.length,
      place: named.find(({ kind }) => kind === 'frame')?.name ?? '',
    },
  }
}
