// Field tables: an input is declared once, and reader, form, schema and range tests all read that declaration.
import * as v from 'valibot'
import { type ChoiceField, type Field, type QuantityField, readInput, type TextField } from './reading.ts'

export type { ChoiceField, Field, QuantityField, TextField } from './reading.ts'

/** A value with where it came from, and the bounds it lies between 8 times in 10. */
const detailed = v.object({
  value: v.string(),
  source: v.optional(v.string()),
  low: v.optional(v.string()),
  high: v.optional(v.string()),
})

const written = v.union([v.string(), detailed], 'This must be a text such as "12 V".')
type Written = v.InferOutput<typeof written>

/** A quantity input: text with a unit in the file, a number in SI in the job. */
export const quantity = (field: Omit<QuantityField, 'kind'>) => {
  const full: QuantityField = { kind: 'quantity', ...field }
  return v.pipe(
    written,
    v.metadata({ field: full }),
    v.rawTransform<Written, number>(({ dataset, addIssue, NEVER }) => {
      const reading = readInput(full, dataset.value)
      if (reading.ok) return reading.value as number
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
        const reading = readInput(full, dataset.value)
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

/** A part with inputs that may stay open in the file, and are known in the job. */
export type Filled<T, K extends keyof T> = Omit<T, K> & { readonly [P in K]-?: NonNullable<T[P]> }
