// Reading an input: what a text means for a field, or what is wrong with it and what would do.
import { type Dimension, parseQuantity, toUnit } from './quantity.ts'

/** A number with a unit, between two bounds that are texts themselves. */
export interface QuantityField {
  readonly kind: 'quantity'
  readonly label: string
  readonly dimension: Dimension
  readonly low: string
  readonly high: string
  /** What lies below the low bound or above the high one, to finish the sentence "… is". */
  readonly below?: string
  readonly above?: string
  readonly help?: string
}

/** One of a few words. */
export interface ChoiceField {
  readonly kind: 'choice'
  readonly label: string
  /** Value in the file → words on the page. */
  readonly options: Readonly<Record<string, string>>
  readonly help?: string
}

/** Free words, shown as text and never as anything else. */
export interface TextField {
  readonly kind: 'text'
  readonly label: string
  readonly longest: number
  readonly help?: string
}

export type Field = QuantityField | ChoiceField | TextField

/** What a text means for a field: a value, or what is wrong and what would do. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false
      readonly wrong: string
      readonly wouldDo: string
      readonly offers?: readonly string[]
    }

/** Longest source text kept beside a value. */
const SOURCE_LENGTH = 300

/** What an input may hold when it is written out: only a quantity lies between bounds. */
export const keysOf = (field: Field): readonly string[] =>
  field.kind === 'quantity'
    ? ['value', 'source', 'low', 'high']
    : field.kind === 'choice'
      ? ['value', 'source']
      : []

/** The text itself, whether or not a source stands beside it. */
export const textOf = (given: unknown): unknown =>
  typeof given === 'object' && given !== null && 'value' in given ? given.value : given

/** A number short enough for a sentence, in the unit it was written in. */
const brief = (value: number, unit: string): string =>
  `${Number(toUnit(value, unit).toPrecision(4))} ${unit}`.trim()

const bounds = new WeakMap<QuantityField, { low: number; high: number; unit: string }>()

/** The bounds of a field in SI, and the unit they were declared in. */
export function boundsOf(field: QuantityField): { low: number; high: number; unit: string } {
  let known = bounds.get(field)
  if (!known) {
    const low = parseQuantity(field.low, field.dimension)
    const high = parseQuantity(field.high, field.dimension)
    if (!low.ok || !high.ok) throw new Error(`The bounds of “${field.label}” do not parse.`)
    known = { low: low.value, high: high.value, unit: high.unit }
    bounds.set(field, known)
  }
  return known
}

/** A decimal point in the wrong place is the likeliest slip: the same digits, a power of ten away, inside the bounds. */
function slipped(value: number, unit: string, low: number, high: number): string[] {
  return [0.1, 10, 0.01, 100, 0.001, 1000]
    .map((factor) => value * factor)
    .filter((other) => other >= low && other <= high)
    .slice(0, 1)
    .map((other) => brief(other, unit))
}

/** Reads a text for a quantity field: SI value within its bounds, or what is wrong. */
export function readQuantity(field: QuantityField, text: unknown): Reading<number> {
  const { low, high } = boundsOf(field)
  const between = `Between ${field.low} and ${field.high} is sensible.`
  if (typeof text !== 'string')
    return {
      ok: false,
      wrong: `${field.label} must be a text with a unit.`,
      wouldDo: `For example "${field.high}". ${between}`,
    }
  const parsed = parseQuantity(text, field.dimension)
  if (!parsed.ok) return { ok: false, wrong: parsed.wrong, wouldDo: parsed.wouldDo, offers: parsed.offers }
  const { value } = parsed
  // A bound met to the last digits but one counts as met: 0.25 written in another unit may land a hair outside.
  const slack = 1e-12 * Math.max(Math.abs(low), Math.abs(high))
  if (value >= low - slack && value <= high + slack) return { ok: true, value }
  const side =
    value < low ? (field.below ?? 'less than this can be') : (field.above ?? 'more than this can be')
  const offers = slipped(value, parsed.unit, low, high)
  const meant = offers.length > 0 ? ` Did you mean ${offers[0]}?` : ''
  return {
    ok: false,
    wrong: `${brief(value, parsed.unit)} is ${side}.`,
    wouldDo: `${between}${meant}`,
    offers,
  }
}

/** Reads a choice: one of the declared words, or the list of them. */
function readChoice(field: ChoiceField, text: unknown): Reading<string> {
  if (typeof text === 'string' && Object.hasOwn(field.options, text)) return { ok: true, value: text }
  const all = Object.keys(field.options)
  return {
    ok: false,
    wrong: `${field.label} cannot be ${typeof text === 'string' ? `"${text.slice(0, 60)}"` : 'that'}.`,
    wouldDo: `One of: ${all.map((word) => `"${word}"`).join(', ')}.`,
    offers: all,
  }
}

/** Reads free words, within their length. */
function readText(field: TextField, text: unknown): Reading<string> {
  if (typeof text !== 'string')
    return {
      ok: false,
      wrong: `${field.label} must be a text.`,
      wouldDo: `Up to ${field.longest} characters.`,
    }
  if (text.length > field.longest)
    return {
      ok: false,
      wrong: `${field.label} is ${text.length} characters long.`,
      wouldDo: `Up to ${field.longest} characters.`,
    }
  return { ok: true, value: text }
}

/** Reads any field. */
export function readField(field: Field, text: unknown): Reading<number | string> {
  if (field.kind === 'quantity') return readQuantity(field, text)
  return field.kind === 'choice' ? readChoice(field, text) : readText(field, text)
}

/** Reads an input as it stands: a text, or a value written out with its source and bounds, which must make sense too. */
export function readInput(field: Field, given: unknown): Reading<number | string> {
  const reading = readField(field, textOf(given))
  if (!reading.ok || typeof given !== 'object' || given === null) return reading
  const { source, low, high } = given as Readonly<Record<string, unknown>>
  if (source !== undefined && (typeof source !== 'string' || source.length > SOURCE_LENGTH))
    return {
      ok: false,
      wrong: 'Where it comes from must be a text.',
      wouldDo: `Up to ${SOURCE_LENGTH} characters.`,
    }
  if (field.kind !== 'quantity') return reading
  return (
    boundAmiss(field, reading.value as number, 'low', low) ??
    boundAmiss(field, reading.value as number, 'high', high) ??
    reading
  )
}

/** What is wrong with the low or high bound written beside a value, if anything. */
function boundAmiss(
  field: QuantityField,
  value: number,
  name: 'low' | 'high',
  text: unknown,
): Reading<number> | null {
  if (text === undefined) return null
  const bound = readQuantity(field, text)
  if (!bound.ok) return { ...bound, wrong: `The ${name} bound beside it: ${bound.wrong}` }
  const beyond = name === 'low' ? bound.value - value : value - bound.value
  if (beyond <= 1e-12 * Math.abs(value)) return null
  return {
    ok: false,
    wrong: `The ${name} bound beside it, ${text}, is on the wrong side of the value.`,
    wouldDo: 'Low, value and high stand in this order.',
  }
}
