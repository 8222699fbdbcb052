// Inputs that no field table knows: a slip of the pen would otherwise be passed over in silence.
import type { GenericSchema } from 'valibot'
import { fieldOf } from './field.ts'
import { nearest } from './nearest.ts'
import type { Problem } from './problem.ts'
import { keysOf } from './reading.ts'
import { entriesOf, givenAt, itemOf, ofNoKind, ScenarioFields, schemaAt } from './scenario.ts'

/** What is wrong where a text, a number or a list stands in place of a group. */
export const NO_GROUP = {
  wrong: 'This must be a group of inputs.',
  wouldDo: 'It begins with { and names each input. See the examples.',
}

/** A name longer than this is cut in a path. */
const LONGEST_NAME = 60

/** Every name in a scenario that is no input's, with the one that was likely meant; `most` at the most. */
export function unknownInputs(scenario: unknown, most: number): Problem[] {
  const found: Problem[] = []
  const visit = (schema: GenericSchema, value: unknown, path: string) => {
    if (found.length >= most || typeof value !== 'object' || value === null) return
    const item = itemOf(schema)
    if (item && Array.isArray(value))
      return value.forEach((each, index) => {
        visit(item, each, `${path}${index}.`)
      })
    const field = fieldOf(schema)
    const entries = entriesOf(schema, value)
    const known = field ? keysOf(field) : Object.keys(entries ?? {})
    if (known.length === 0) return
    if (Array.isArray(value)) {
      // An empty list would pass for a group in which everything is left out.
      found.push({ path: path.slice(0, -1), ...NO_GROUP })
      return
    }
    if (ofNoKind(schema, value)) return
    for (const [key, each] of Object.entries(value)) {
      const here = `${path}${key.slice(0, LONGEST_NAME)}`
      if (entries && known.includes(key)) visit(entries[key], each, `${here}.`)
      else if (!known.includes(key) && !key.startsWith('$'))
        found.push({
          path: here,
          wrong: 'No input has this name.',
          wouldDo: elsewhere(here) ?? meant(key, known),
        })
    }
  }
  visit(ScenarioFields, scenario, '')
  return found.slice(0, most)
}

/** Where an input stands that a command has in this place; null: nowhere. */
const elsewhere = (path: string): string | null =>
  /\.cut\.spindle$/.test(path) ? 'How fast the spindle turns is the step’s own "speed".' : null

/** What a path that names no input may have meant. */
export function suggest(path: string, scenario: unknown): string {
  const at = path.lastIndexOf('.')
  const over = path.slice(0, Math.max(at, 0))
  const parent = at < 0 ? ScenarioFields : schemaAt(over, scenario)
  const given = at < 0 ? scenario : givenAt(scenario, over)
  return meant(path.slice(at + 1), Object.keys((parent && entriesOf(parent, given)) ?? {}))
}

function meant(name: string, known: readonly string[]): string {
  if (known.length === 0) return 'See the examples for the names.'
  const guess = nearest(name, known)
  return guess ? `Did you mean "${guess}"?` : `Known here: ${known.join(', ')}.`
}
