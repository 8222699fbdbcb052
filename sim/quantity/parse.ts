// Text a person wrote → a quantity in SI, or one sentence saying what is wrong and one saying what would do.
import { type Read, readNumber } from './number.ts'
import { elsewhere, nearest, sizeOf, tidy, unitNamed } from './spelling.ts'
import { type Dimension, toSi, type Unit } from './unit.ts'
import { table } from './units.ts'

export type Parsed =
  | {
      readonly ok: true
      /** SI; a temperature in °C; a share as a fraction of 1. */
      readonly value: number
      /** Symbol of the unit it was written in: the smallest one of "5 ft 3 in". */
      readonly unit: string
    }
  | {
      readonly ok: false
      readonly wrong: string
      readonly wouldDo: string
      /** Ready texts that would be read, for a button each. */
      readonly offers?: readonly string[]
    }

type Refusal = Extract<Parsed, { ok: false }>

const longest = 100
/** Where people add a large unit and a small one: 2 min 30 s, 5 ft 3 in, 5 lb 3 oz. */
const chained: readonly Dimension[] = ['time', 'length', 'mass']

/**
 * Reads a text as a quantity of one dimension.
 * `assume` is the unit (of that dimension) taken when the text has none; without it a bare number is refused,
 * except for shares and plain numbers. Any text is answered, none throws; an `assume` of another dimension does.
 */
export function parseQuantity(text: string, dimension: Dimension, assume?: string): Parsed {
  const assumed = assume === undefined ? undefined : unitNamed(tidy(assume), dimension)
  if (assume !== undefined && !assumed) throw new Error(`“${assume}” is not a unit of ${dimension}`)
  if (text.length > longest) return no('This text is too long for a quantity.', like(dimension))
  const written = tidy(text)
  if (written === '') return no('Nothing is written here.', like(dimension))
  if (written.includes(':')) return withColon(written, dimension)

  const sign = written.startsWith('-') ? -1 : 1
  let rest = written.replace(/^[+-] ?/, '')
  let sum = 0
  let before: Unit | undefined
  for (;;) {
    const read = readNumber(rest)
    if (read.kind === 'two ways') return twoWays(written, read, dimension, assumed)
    if (read.kind === 'garbled')
      return no(`The number in ${quoted(written)} cannot be read.`, like(dimension))
    if (read.kind === 'none') return no(`${quoted(written)} does not begin with a number.`, like(dimension))

    // All that is left is tried as one unit first, so that the digits of "V/1000 rpm" are not taken for a number.
    const bare = read.rest === '' && before === undefined
    const last = bare && assumed ? assumed : unitNamed(read.rest, dimension)
    const link = last ? undefined : linkIn(read.rest, dimension)
    const unit = last ?? link?.unit
    if (!unit) return refuseUnit(written, read.rest, dimension, before !== undefined)
    if (before && sizeOf(unit) >= sizeOf(before))
      return no(`The units in ${quoted(written)} do not go from large to small.`, like(dimension))
    sum += toSi(sign * read.value, unit)
    if (!link) return checked(written, sum, unit, dimension)
    before = unit
    rest = link.rest
  }
}

/** The unit before a further number, and what follows it: ft and "3 in" from "ft 3 in", "ft-3 in" or "ft, 3 in". */
function linkIn(text: string, dimension: Dimension): { unit: Unit; rest: string } | undefined {
  if (!chained.includes(dimension)) return undefined
  const found = /^([^\d.,+]*[^\d.,+ -]-?),? ?(?=\.?\d)/.exec(text)
  const unit = found ? unitNamed(found[1]!, dimension) : undefined
  return found && unit ? { unit, rest: text.slice(found[0].length) } : undefined
}

/** The last look: a number that can be held, and no share of thirty where 30 % was meant. */
function checked(written: string, value: number, unit: Unit, dimension: Dimension): Parsed {
  if (!Number.isFinite(value)) return no(`${quoted(written)} gives no usable number.`, like(dimension))
  if (dimension === 'share' && unit.symbol === '' && Math.abs(value) > 1)
    return no(`${quoted(written)} is more than the whole.`, `Write ${written} % if that is meant.`, [
      `${written} %`,
    ])
  return { ok: true, value, unit: unit.symbol }
}

/** "4 : 1" is the number 4; "1:30" as a time is refused, since it may be minutes or hours. */
function withColon(written: string, dimension: Dimension): Parsed {
  const parts = written.split(':').map((part) => part.trim())
  if (dimension === 'number' && parts.length === 2) {
    const [a, b] = parts.map(readNumber)
    if (a!.kind === 'number' && b!.kind === 'number' && a!.rest + b!.rest === '')
      return checked(written, a!.value / b!.value, table.number.units[0]!, dimension)
  }
  if (dimension === 'time' && parts.every((part) => /^\d{1,4}$/.test(part))) {
    const [a, b, c] = parts
    if (parts.length === 2)
      return no(
        `${quoted(written)} could be minutes or hours.`,
        `Write ${a} min ${b} s or ${a} h ${b} min.`,
        [`${a} min ${b} s`, `${a} h ${b} min`],
      )
    if (parts.length === 3)
      return no(`${quoted(written)} is written like a clock.`, `Write ${a} h ${b} min ${c} s.`, [
        `${a} h ${b} min ${c} s`,
      ])
  }
  return no(`${quoted(written)} cannot be read.`, like(dimension))
}

/** One comma before three digits: thousands to some, decimals to others. */
function twoWays(
  written: string,
  { run, readings }: Extract<Read, { kind: 'two ways' }>,
  dimension: Dimension,
  assumed: Unit | undefined,
): Refusal {
  const unit = assumed && /\d$/.test(written) ? ` ${assumed.symbol}` : ''
  const offers = readings.map((reading) => written.replace(run, reading) + unit)
  return no(
    `"${run}" can be read two ways.`,
    `Write ${readings[0]} or ${readings[1]}.`,
    readable(offers, dimension),
  )
}

/** What stands behind the number is no unit of this dimension: says which of the ways to go wrong it is. */
function refuseUnit(written: string, rest: string, dimension: Dimension, later: boolean): Refusal {
  const { name, units, examples } = table[dimension]
  const kind = name.slice(name.indexOf(' ') + 1)
  if (unitNamed(rest, 'number')) {
    if (later) return no(`The last number in ${quoted(written)} has no unit.`, like(dimension))
    const offers = readable(
      examples.map((example) => written + example.slice(example.indexOf(' '))),
      dimension,
    )
    const wouldDo = offers.length > 0 ? `Write ${offers.join(' or ')}.` : like(dimension)
    return no(`${quoted(written)} has no unit.`, wouldDo, offers)
  }
  const other = later ? undefined : elsewhere(rest)
  if (other) return no(`${quoted(written)} is ${other.name}; ${name} is wanted.`, like(dimension))
  if (/^[+-]? ?[\d.,/]/.test(rest))
    return no(`${quoted(written)} holds more than one number.`, like(dimension))
  if (dimension === 'number') return no(`${quoted(written)} is more than a plain number.`, like(dimension))

  const symbols = units.map(({ symbol }) => symbol).filter((symbol) => symbol !== '')
  const all = [symbols.slice(0, -1).join(', '), symbols.at(-1)].filter((part) => part !== '').join(' or ')
  const near = nearest(rest, dimension)
  const head = written.slice(0, written.length - rest.length).trim()
  const offers = readable(near ? [`${head} ${near.symbol}`] : [], dimension)
  const meant = offers.length > 0 ? ` Did you mean ${offers[0]}?` : ''
  return no(`${quoted(rest)} is not a unit of ${kind}.`, `Units that would do: ${all}.${meant}`, offers)
}

/** Nothing is offered that would be refused in its turn. */
const readable = (offers: readonly string[], dimension: Dimension) =>
  offers.filter((offer) => parseQuantity(offer, dimension).ok)

const like = (dimension: Dimension): string => `For example ${table[dimension].examples.join(' or ')}.`

const quoted = (text: string): string => {
  const letters = [...text]
  return `"${letters.length > 40 ? `${letters.slice(0, 40).join('')}…` : text}"`
}

const no = (wrong: string, wouldDo: string, offers: readonly string[] = []): Refusal =>
  offers.length > 0 ? { ok: false, wrong, wouldDo, offers } : { ok: false, wrong, wouldDo }
