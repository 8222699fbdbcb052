// A cut as a step of the duty names it: a kind and its inputs. The spindle's speed is that of the step.
import * as v from 'valibot'
import type { ChoiceField } from '../field.ts'
import { type CutName, CUTS } from './index.ts'
import { inputsOf } from './read.ts'

/** The kind and its inputs as written. */
export interface GivenCut {
  readonly kind: CutName
  readonly [input: string]: unknown
}
/** As read: quantities in SI, choices as words. */
export interface ReadCut {
  readonly kind: CutName
  readonly [input: string]: string | number | undefined
}

const NAMES = Object.keys(CUTS) as CutName[]

const KIND: ChoiceField = {
  kind: 'choice',
  label: 'Kind of work',
  options: Object.fromEntries(NAMES.map((name) => [name, CUTS[name].label])),
}

/** Inputs of a kind that a step names itself. */
export function namedInputs(name: CutName): Readonly<Record<string, v.GenericSchema>> {
  const { spindle: _, ...own } = inputsOf(name)
  return own
}

/** The kind, and the inputs that go with it. `only`: of all kinds this one. */
export const NamedCutFields = v.variant(
  'kind',
  NAMES.map((name) =>
    v.object({
      kind: v.pipe(v.literal(name), v.metadata({ field: KIND, only: name })),
      ...namedInputs(name),
    }),
  ) as never,
  'The kind of work must be one of those known.',
) as unknown as v.GenericSchema<GivenCut, ReadCut>
