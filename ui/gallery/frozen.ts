// Data as it lies in the gallery's files: JSON with what JSON cannot say (columns, infinity), and back again.

/** Digits kept of a number: more than any picture shows. */
const DIGITS = 6

const INFINITE = { '∞': Infinity, '-∞': -Infinity, '?': Number.NaN } as const
type Unsaid = keyof typeof INFINITE
const isUnsaid = (text: string): text is Unsaid => text in INFINITE

function number(value: number): number | { readonly number: Unsaid } {
  if (Number.isNaN(value)) return { number: '?' }
  if (!Number.isFinite(value)) return { number: value > 0 ? '∞' : '-∞' }
  return Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS))
}

/** Plain data made ready for JSON.stringify. */
export function freeze(value: unknown): unknown {
  if (typeof value === 'number') return number(value)
  if (value instanceof Float64Array) return { column: [...value].map(number) }
  if (Array.isArray(value)) return value.map(freeze)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => (each === undefined ? [] : [[key, freeze(each)]])),
  )
}

/** What was frozen, as it was but for the digits. */
export function thaw(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(thaw)
  if (value === null || typeof value !== 'object') return value
  const all = value as Readonly<Record<string, unknown>>
  const keys = Object.keys(all)
  if (keys.length === 1 && typeof all.number === 'string' && isUnsaid(all.number)) return INFINITE[all.number]
  if (keys.length === 1 && Array.isArray(all.column))
    return Float64Array.from(all.column.map(thaw) as number[])
  return Object.fromEntries(Object.entries(all).map(([key, each]) => [key, thaw(each)]))
}
