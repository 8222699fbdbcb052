// Field tables: an input is declared once, and reader, form, schema and range tests all read that declaration.
import * as v from 'valibot'
import { type Dimension, parseQuantity, toUnit, unitsOf } from './quantity.ts'

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

/** A value with where it came from, and the bounds it lies between 8 times in 10. */
const detailed = v.object({
  value: v.string(),
  source: v.optional(v.string()),
  low: v.optional(v.string()),
  high: v.optional(v.string()),
})

/** What an input may hold when it is written out: only a quantity lies between bounds. */
export const keysOf = (field: Field): readonly string[] =>
  field.kind === 'quantity' ? ['value', 'source', 'low', 'high'] : field.kind === 'choice' ? ['value', 'source'] : []

const written = v.union([v.string(), detailed], 'This must be a text such as "12 V".')
type Written = v.InferOutput<typeof written>

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
  const { low, high, unit } = boundsOf(field)
  const between = `Between ${brief(low, unit)} and ${brief(high, unit)} is sensible.`
  if (typeof text !== 'string')
    return {
      ok: false,
      wrong: `${field.label} must be a text with a unit.`,
      wouldDo: `For example "${brief(high, unit)}". ${between}`,
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
export function readChoice(field: ChoiceField, text: unknown): Reading<string> {
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
export function readText(field: TextField, text: unknown): Reading<string> {
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

/** An input as it stands: a text, or a value with its source and bounds, which must make sense too. */
function readInput<T extends number | string>(given: unknown, reads: (text: unknown) => Reading<T>): Reading<T> {
  const reading = reads(textOf(given))
  if (!reading.ok || typeof given !== 'object' || given === null) return reading
  const { source, low, high } = given as Readonly<Record<string, unknown>>
  if (source !== undefined && (typeof source !== 'string' || source.length > SOURCE_LENGTH))
    return {
      ok: false,
      wrong: 'Where it comes from must be a text.',
      wouldDo: `Up to ${SOURCE_LENGTH} characters.`,
    }
  for (const [name, text] of [
    ['low', low],
    ['high', high],
  ] as const) {
    if (text === undefined) continue
    const bound = reads(text)
    if (!bound.ok) return { ...bound, wrong: `Its ${name} bound: ${bound.wrong}` }
    const [least, most] = name === 'low' ? [bound.value, reading.value] : [reading.value, bound.value]
    if (least > most)
      return {
        ok: false,
        wrong: `Its ${name} bound, ${text}, is on the wrong side of the value.`,
        wouldDo: 'The value lies between its low and its high bound.',
      }
  }
  return reading
}

/** A quantity input: text with a unit in the file, a number in SI in the job. */
export const quantity = (field: Omit<QuantityField, 'kind'>) => {
  const full: QuantityField = { kind: 'quantity', ...field }
  return v.pipe(
    written,
    v.metadata({ field: full }),
    v.rawTransform<Written, number>(({ dataset, addIssue, NEVER }) => {
      const reading = readQuantity(full, textOf(dataset.value))
      if (reading.ok) return reading.value
      addIssue({ message: reading.wrong })
      return NEVER
    }),
  )
}

/** A quantity with the value it takes when left out. */
export const quantityOr = (usual: string, field: Omit<QuantityField, 'kind'>) =>
  v.optional(quantity(field), usual)

/** A choice input with the word it takes when left out. */
export const choiceOr = <const O extends Record<string, string>>(
  usual: keyof O & string,
  field: { label: string; options: O; help?: string },
) => {
  const full: ChoiceField = { kind: 'choice', ...field }
  return v.optional(
    v.pipe(
      written,
      v.metadata({ field: full }),
      v.rawTransform<Written, keyof O & string>(({ dataset, addIssue, NEVER }) => {
        const reading = readChoice(full, textOf(dataset.value))
        if (reading.ok) return reading.value as keyof O & string
        addIssue({ message: reading.wrong })
        return NEVER
      }),
    ),
    usual,
  )
}

/** A free text input. */
export const words = (field: Omit<TextField, 'kind'>) => {
  const full: TextField = { kind: 'text', ...field }
  return v.pipe(
    v.string(`${field.label} must be a text.`),
    v.maxLength(field.longest),
    v.metadata({ field: full }),
  )
}

type AnySchema = v.GenericSchema

/** The schema inside optional wrappers. */
export function unwrap(schema: AnySchema): AnySchema {
  let inner = schema
  while ('wrapped' in inner) inner = inner.wrapped as AnySchema
  return inner
}

/** The declaration of an input, or null for a group. */
export function fieldOf(schema: AnySchema): Field | null {
  const found = v.getMetadata(unwrap(schema) as never) as { field?: Field }
  return found.field ?? null
}

/** The text an input takes when it is left out, or null where it must be given or may stay open. */
export function usualOf(schema: AnySchema): string | null {
  const usual = 'default' in schema ? schema.default : undefined
  return typeof usual === 'string' ? usual : null
}

/** True where an input may be left out. */
export const mayBeLeftOut = (schema: AnySchema): boolean => 'wrapped' in schema

/** The first unit listed for a dimension: the one to show when nothing else is asked. */
export const plainUnit = (dimension: Dimension): string => unitsOf(dimension)[0] as string
