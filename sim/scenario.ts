// The scenario: the job as a person writes it. What it may hold, declared from the parts' field tables.
import * as v from 'valibot'
import { DutyFields } from './duty.ts'
import { type Field, fieldOf, unwrap, usualOf, words } from './field.ts'
import { BeltFields } from './parts/belt.ts'
import { BenchFields } from './parts/bench.ts'
import { ControllerFields } from './parts/controller.ts'
import { CutoffFields } from './parts/cutoff.ts'
import { HeatFields } from './parts/heat.ts'
import { MachineFields } from './parts/machine.ts'
import { PlateFields } from './parts/plate.ts'
import { RotorFields } from './parts/rotor.ts'
import { SupplyFields } from './parts/supply.ts'
import { WindingFields } from './parts/winding.ts'
import { textOf } from './reading.ts'

/** The newest format this reader knows. */
export const FORMAT = 1

/** A name and changes by path, still text; null takes an input back to its usual value. */
const VariantFields = v.object({
  name: words({ label: 'Name of the variant', longest: 60 }),
  changes: v.record(
    v.string(),
    v.nullable(v.string('A change is a text, or null for the usual value.')),
    'Changes must be a group: paths and their texts.',
  ),
})
export type Variant = v.InferOutput<typeof VariantFields>

/** Most variants one scenario may carry. */
const MOST_VARIANTS = 24

export const ScenarioFields = v.object({
  format: v.literal(FORMAT, `The format this version reads is the number ${FORMAT}.`),
  name: words({ label: 'Name of the job', longest: 80 }),
  about: v.optional(words({ label: 'About the job', longest: 2000 })),
  plate: v.optional(PlateFields, {}),
  bench: v.optional(BenchFields, {}),
  supply: SupplyFields,
  controller: ControllerFields,
  winding: v.optional(WindingFields, {}),
  rotor: v.optional(RotorFields, {}),
  belt: BeltFields,
  machine: v.optional(MachineFields, {}),
  heat: v.optional(HeatFields, {}),
  cutoff: v.optional(CutoffFields, {}),
  duty: DutyFields,
  variants: v.optional(
    v.pipe(
      v.array(VariantFields, 'Variants must be a list.'),
      v.maxLength(MOST_VARIANTS, `More than ${MOST_VARIANTS} variants.`),
    ),
    [],
  ),
})

/** The scenario as written, and as read. */
export type Scenario = v.InferInput<typeof ScenarioFields>
export type ReadScenario = v.InferOutput<typeof ScenarioFields>

/** One input as it stands in a scenario. */
export interface Input {
  readonly path: string
  readonly field: Field
  /** The text given, or the usual one; '' where it is left open. */
  readonly text: string
  /** True where the scenario leaves it out and the usual value is taken. */
  readonly usual: boolean
  readonly source: string | null
  /** The value lies between these 8 times in 10, where said. */
  readonly low: string | null
  readonly high: string | null
}

type Schema = v.GenericSchema

type Entries = Readonly<Record<string, Schema>>

/** A group whose inputs go by its kind. */
interface Kinds {
  readonly key: string
  readonly options: readonly { readonly entries: Entries }[]
}

/**
 * The parts of a group of inputs, by name; null for a single input. `given` is the group as written: the parts of a
 * group that comes in kinds go by it, and without a kind there is that alone.
 */
export function entriesOf(schema: Schema, given?: unknown): Entries | null {
  const inner = unwrap(schema)
  if ('entries' in inner) return inner.entries as Entries
  if (!inKinds(inner)) return null
  return ofKind(inner, given)?.entries ?? { [inner.key]: inner.options[0].entries[inner.key] }
}

const inKinds = (inner: Schema): inner is Schema & Kinds => inner.type === 'variant'

const ofKind = ({ key, options }: Kinds, given: unknown) => {
  const kind = property(given, key)
  return options.find(({ entries }) => 'literal' in entries[key] && entries[key].literal === kind)
}

/** True for a group that comes in kinds, and is of none of them: what its parts are nobody can tell. */
export function ofNoKind(schema: Schema, given: unknown): boolean {
  const inner = unwrap(schema)
  return inKinds(inner) && ofKind(inner, given) === undefined
}

/** The schema of a list's items, or null. A list with limits keeps its array inside a pipe, which carries `item` too. */
export function itemOf(schema: Schema): Schema | null {
  const inner = unwrap(schema)
  return 'item' in inner ? (inner.item as Schema) : null
}

/**
 * The schema at a path such as "duty.phases.0.lasts" of a scenario, or null where there is no such input. Without the
 * scenario, groups that come in kinds hold their kind alone.
 */
export function schemaAt(path: string, scenario?: unknown): Schema | null {
  let schema: Schema = ScenarioFields
  let given = scenario
  for (const key of path.split('.')) {
    const entries = entriesOf(schema, given)
    const item = itemOf(schema)
    if (entries && Object.hasOwn(entries, key)) schema = entries[key]
    else if (item && /^\d{1,6}$/.test(key)) schema = item
    else return null
    given = property(given, key)
  }
  return schema
}

const property = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined

/** What stands at a path of a scenario. */
export const givenAt = (scenario: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((value, key) => property(value, key), scenario)

const textIn = (given: unknown, key: string): string | null => {
  const found = property(given, key)
  return typeof found === 'string' ? found : null
}

/** An input as it stands; null where the path names none. */
export function inputAt(scenario: unknown, path: string): Input | null {
  const schema = schemaAt(path, scenario)
  const field = schema && fieldOf(schema)
  return field ? inputOf(scenario, path, schema, field) : null
}

function inputOf(scenario: unknown, path: string, schema: Schema, field: Field): Input {
  const given = givenAt(scenario, path)
  const text = textOf(given)
  return {
    path,
    field,
    text: typeof text === 'string' ? text : (usualOf(schema) ?? ''),
    usual: given === undefined,
    source: textIn(given, 'source'),
    low: textIn(given, 'low'),
    high: textIn(given, 'high'),
  }
}

/** Every input of a scenario, in the order of the field tables; `under`: only below this path. */
export function inputsOf(scenario: unknown, under = ''): Input[] {
  const found: Input[] = []
  const visit = (schema: Schema, path: string) => {
    const field = fieldOf(schema)
    if (field) {
      found.push(inputOf(scenario, path, schema, field))
      return
    }
    const below = (key: string) => (path === '' ? key : `${path}.${key}`)
    const item = itemOf(schema)
    const list = givenAt(scenario, path)
    // A group that comes in kinds has no inputs before it has one.
    if (list === undefined && ofNoKind(schema, list)) return
    if (item && Array.isArray(list)) for (const index of list.keys()) visit(item, below(String(index)))
    for (const [key, entry] of Object.entries(entriesOf(schema, list) ?? {})) visit(entry, below(key))
  }
  const start = under === '' ? ScenarioFields : schemaAt(under, scenario)
  if (start) visit(start, under)
  return found
}

/**
 * A scenario with one input changed: a text, a whole group or list, or null to take it out. The given one stays as it
 * was. Groups and lists that are not there come into being; a list takes one item at its end. Paths that name no input
 * change nothing.
 */
export function withChange(scenario: Scenario, path: string, value: unknown): Scenario {
  if (schemaAt(path, scenario) === null) return scenario
  const change = (schema: Schema, target: unknown, keys: readonly string[]): unknown => {
    const [key, ...rest] = keys
    if (key === undefined) return value
    const takesOut = rest.length === 0 && value === null
    const item = itemOf(schema)
    if (item) {
      const copy: unknown[] = Array.isArray(target) ? target.slice() : []
      const index = Number(key)
      if (index > copy.length || (takesOut && index === copy.length)) return target
      if (takesOut) copy.splice(index, 1)
      else copy[index] = change(item, copy[index], rest)
      return copy
    }
    const group = typeof target === 'object' && target !== null && !Array.isArray(target)
    const copy: Record<string, unknown> = group ? { ...target } : {}
    const inner = entriesOf(schema, target)?.[key]
    const next = takesOut || !inner ? undefined : change(inner, property(copy, key), rest)
    if (next === undefined) delete copy[key]
    else copy[key] = next
    return copy
  }
  return change(ScenarioFields, scenario, path.split('.')) as Scenario
}

/** The variants of a scenario that can be used; what is amiss with the others, the reader tells. */
export function variantsOf(scenario: unknown): readonly Variant[] {
  const given = givenAt(scenario, 'variants')
  return Array.isArray(given) ? given.filter((each) => v.is(VariantFields, each)) : []
}

/**
 * Of a cut, what is taken out goes first, then its kind, then what the new kind holds: whatever the order in the file.
 * Everything else keeps its place.
 */
const turn = ([path, text]: readonly [string, string | null]): number =>
  !/^duty\.phases\.\d+\.cut\b/.test(path) ? 2 : text === null ? 0 : path.endsWith('.kind') ? 1 : 2

/** A scenario with a variant's changes put in. */
export const withVariant = (scenario: Scenario, variant: Variant): Scenario =>
  Object.entries(variant.changes)
    .sort((one, other) => turn(one) - turn(other))
    .reduce((changed, [path, text]) => withChange(changed, path, text), scenario)
