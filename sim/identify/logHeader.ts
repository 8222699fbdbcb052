// The header of a log: which column is what, by the names people use, and in which unit.
import type { Dimension } from '../quantity.ts'
import { tidy, unitNamed } from '../quantity/spelling.ts'

/** What a column may hold. */
export type Kind = 'time' | 'frame' | 'winding' | 'ohms' | 'air' | 'amps' | 'speed' | 'volts'

export interface Column {
  readonly kind: Kind
  readonly place: number
  /** As the file spells it. */
  readonly name: string
  /** Symbol of the unit it names; null where it names none. */
  readonly unit: string | null
}

export const DIMENSIONS: Readonly<Record<Kind, Dimension>> = {
  time: 'time',
  frame: 'temperature',
  winding: 'temperature',
  ohms: 'resistance',
  air: 'temperature',
  amps: 'current',
  speed: 'angular speed',
  volts: 'voltage',
}

/** Words that name a kind whatever else stands beside them, the surer ones first. */
const NAMES: readonly (readonly [Kind, RegExp])[] = [
  ['time', /^(time|timestamp|elapsed|clock|zeit|uhrzeit)$/],
  ['air', /^(air|ambient|room|shop|workshop|surroundings|luft)$/],
  ['speed', /^(rpm|speed|revs?|drehzahl)$/],
  ['amps', /^(amps?|amperes?|current|strom)$/],
  ['volts', /^(volts?|voltage|spannung)$/],
  ['ohms', /^(ohms?|resistance|widerstand)$/],
  ['winding', /^(windings?|armature|rotor|coil|copper|wicklung)$/],
  ['frame', /^(can|case|casing|frame|body|housing|shell|yoke|surface|outside|probe|thermocouple|gehäuse)$/],
  ['frame', /^(temp|temperature|temperatur|motor)\d*$/],
  ['frame', /^(t|tc)\d$/],
]
/** Letters and units that stand for a kind when they are all there is. */
const LETTERS: readonly (readonly [Kind, RegExp])[] = [
  ['speed', /^(n|rev\/min|r\/min|1\/min)$/],
  ['amps', /^(i|a)$/],
  ['volts', /^(u|v)$/],
  ['ohms', /^(r|ω)$/],
  ['frame', /^(°c|°f|c|f|degc|degf)$/],
  ['time', /^(s|secs?|seconds?|min|mins|minutes?|h|hrs?|hours?)$/],
]
/** Columns that must not be taken for another: the spindle's speed is not the motor's. */
const OTHERS = /^(spindle|date|datum|note|notes|remarks?|count|no|humidity|setpoint|asked)$/

const words = (text: string): string[] => text.split(/[^\p{L}\p{N}°/]+/u).filter((word) => word !== '')

/** The unit a header names for a dimension: in brackets, behind a comma, as its last word or as the whole. */
function unitIn(text: string, dimension: Dimension): string | null {
  const inside = /[([{]([^)\]}]*)[)\]}]/.exec(text)?.[1]
  const parts = [inside, text.split(/[,;]/).at(-1), text.split(/ in | /).at(-1), words(text).at(-1), text]
  for (const part of parts) {
    const found = part === undefined || part.trim() === '' ? undefined : unitNamed(part.trim(), dimension)
    if (found) return found.symbol
  }
  return null
}

/** What a header cell names, or null. */
export function kindOf(header: string): { kind: Kind; unit: string | null } | null {
  const text = tidy(header.replace(/^[#\s]+/, '').replaceAll('_', ' ')).toLowerCase()
  const named = words(text.replace(/[([{][^)\]}]*[)\]}]/g, ' '))
  const all = words(text)
  if (named.some((word) => OTHERS.test(word))) return null
  const find = (table: typeof NAMES, among: readonly string[]) =>
    table.find(([, pattern]) => among.some((word) => pattern.test(word)))?.[0]
  const temperature = unitIn(text, 'temperature')
  let kind = find(NAMES, named) ?? null
  // "t" is the time, unless it is in degrees.
  if (kind === null && named[0] === 't') kind = temperature === null ? 'time' : 'frame'
  kind ??= find(LETTERS, named) ?? find(NAMES, all) ?? find(LETTERS, all) ?? null
  if (kind === null) return null
  // A winding is read in ohms, unless it says degrees.
  const warmth = temperature !== null || all.some((word) => /^temp/.test(word))
  if (kind === 'winding' && !warmth) kind = 'ohms'
  if (kind === 'ohms' && temperature !== null && unitIn(text, 'resistance') === null) kind = 'winding'
  return { kind, unit: unitIn(text, DIMENSIONS[kind]) }
}

/** The columns a row of cells names, the first of each kind; `twice`: names of further ones. */
export function columnsIn(cells: readonly string[]): { columns: Column[]; twice: string[] } {
  const columns: Column[] = []
  const twice: string[] = []
  cells.forEach((name, place) => {
    // Names are short: a sentence or a number is none.
    if (name.length > 60 || name.trim() === '') return
    let found = kindOf(name)
    if (!found) return
    // A second "t" beside the time is the temperature.
    if (found.kind === 'time' && /^\W*t\W*$/i.test(name) && columns.some(({ kind }) => kind === 'time'))
      found = { kind: 'frame', unit: null }
    const { kind: same } = found
    if (columns.some(({ kind }) => kind === same)) twice.push(name.trim())
    else columns.push({ ...found, place, name: name.trim() })
  })
  return { columns, twice }
}
