// What is read of a text, for tests of reading and of refusing.
import { type Dimension, parseQuantity } from '../../../sim/quantity.ts'

/** The value and unit read, or the refusal's sentences, so that a failure says what was said. */
export const read = (text: string, dimension: Dimension, assume?: string) => {
  const parsed = parseQuantity(text, dimension, assume)
  return parsed.ok ? [parsed.value, parsed.unit] : `${parsed.wrong} ${parsed.wouldDo}`
}

/** The refusal. Throws where the text was read. */
export const refused = (text: string, dimension: Dimension, assume?: string) => {
  const parsed = parseQuantity(text, dimension, assume)
  if (parsed.ok) throw new Error(`“${text}” was read as ${parsed.value} in ${parsed.unit}`)
  return parsed
}
