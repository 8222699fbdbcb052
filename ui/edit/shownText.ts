// A quantity as its field shows it: the text as typed where its unit is the one shown, else converted.
import { parseQuantity, toUnit } from '../../sim/quantity.ts'
import { unitFor, type Units } from '../../sim/say/units.ts'
import type { QuantityField } from '../../sim/field.ts'

export interface FieldText {
  readonly text: string
  /** Unit beside it; '' where the text carries its own or needs none. */
  readonly unit: string
}

const US: Units = { system: 'us', temperature: '°F' }
const METRIC: Units = { system: 'metric', temperature: '°C' }
const DIGITS = 4

/** A stored text for its field, in the reader's unit or in `always`. Text that cannot be read is shown as it is. */
export function fieldText(
  { dimension }: QuantityField,
  stored: string,
  units: Units,
  always = '',
): FieldText {
  const wanted = always || unitFor(dimension, units)
  if (stored.trim() === '') return { text: '', unit: wanted }
  const parsed = parseQuantity(stored, dimension)
  if (!parsed.ok) return { text: stored, unit: '' }
  // Minutes, ohms and the like belong to neither system: they stay in the unit they were written in.
  const free = always === '' && unitFor(dimension, US) === unitFor(dimension, METRIC)
  const unit = free ? parsed.unit : wanted
  if (parsed.unit === unit) {
    const bare = stored.trim().replace(/\s*[^\d.,]*$/, '')
    const again = parseQuantity(bare, dimension, unit)
    if (again.ok && again.value === parsed.value) return { text: bare, unit }
  }
  return { text: String(Number(toUnit(parsed.value, unit).toPrecision(DIGITS))), unit }
}

/**
 * What to store for a typed text: as typed where it has its unit, with the shown unit where it is bare.
 * Null for an empty one: the input is left open.
 */
export function storedText(typed: string, unit: string): string | null {
  const text = typed.trim()
  if (text === '') return null
  const bare = /\d\.?$/.test(text) && !text.includes(':')
  return bare && unit !== '' ? `${text} ${unit}` : text
}
