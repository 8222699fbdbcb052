// Reads the inputs of a cut, as texts, and works it out; or every problem with the input it is at.
import * as v from 'valibot'
import { fieldOf, mayBeLeftOut } from '../field.ts'
import { nearest } from '../nearest.ts'
import type { Problem } from '../problem.ts'
import { readInput, textOf } from '../reading.ts'
import type { Worked } from './answer.ts'
import { type CutName, CUTS } from './index.ts'

/** The inputs of a kind of cut, by name. */
export const inputsOf = (name: CutName): Readonly<Record<string, v.GenericSchema>> =>
  (CUTS[name].fields as unknown as { readonly entries: Record<string, v.GenericSchema> }).entries

const unknown = (key: string, known: readonly string[]): Problem => {
  const guess = nearest(key, known)
  return {
    path: key,
    wrong: 'No input has this name.',
    wouldDo: guess ? `Did you mean "${guess}"?` : `Known here: ${known.join(', ')}.`,
  }
}

/** What is wrong with an input as it stands, if anything. */
function amiss(path: string, schema: v.GenericSchema, given: unknown): Problem[] {
  const field = fieldOf(schema)
  if (!field) return []
  if (textOf(given) === undefined) {
    if (mayBeLeftOut(schema)) return []
    const wouldDo = field.kind === 'quantity' ? `Between ${field.low} and ${field.high}.` : 'Give one.'
    return [{ path, wrong: `${field.label} is missing.`, wouldDo }]
  }
  const reading = readInput(field, given)
  if (reading.ok) return []
  return [{ path, wrong: reading.wrong, wouldDo: reading.wouldDo, offers: reading.offers }]
}

/** A cut from its inputs as texts. Inputs left out take their usual values. */
export function readCut(name: CutName, given: Readonly<Record<string, unknown>>): Worked {
  const inputs = inputsOf(name)
  const known = Object.keys(inputs)
  const problems = [
    ...Object.keys(given)
      .filter((key) => !known.includes(key))
      .map((key) => unknown(key, known)),
    ...known.flatMap((key) => amiss(key, inputs[key], given[key])),
  ]
  if (problems.length > 0) return { ok: false, problems, asked: null }
  return CUTS[name].work(v.parse(CUTS[name].fields, given) as never)
}
