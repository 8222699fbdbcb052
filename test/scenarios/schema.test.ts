// The schema of a job file is the one the field tables give, and the demonstrations keep to it.
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { isCurrent, jobSchema, SCHEMA_FILE } from '../../scenarios/schema.ts'
import { fieldOf, usualOf } from '../../sim/field.ts'
import { inputsOf, schemaAt } from '../../sim/scenario.ts'
import { EXAMPLES } from '../sim/cuts/ask.ts'
import { DEMOS, demo, scenario } from '../jobs.ts'

interface Node {
  readonly [key: string]: unknown
  readonly properties?: Readonly<Record<string, Node>>
  readonly patternProperties?: Readonly<Record<string, Node>>
  readonly additionalProperties?: boolean | Node
  readonly required?: readonly string[]
  readonly items?: Node
  readonly anyOf?: readonly Node[]
  readonly oneOf?: readonly Node[]
  readonly $ref?: string
}
const written = readFileSync(SCHEMA_FILE, 'utf8')
const root = JSON.parse(written) as Node & { $defs: Record<string, Node> }

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const typeOf = (value: unknown) => (value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value)

/** Where a value does not keep to a schema: the words of JSON Schema that this one uses, and no others. */
function faults(node: Node, value: unknown, path = ''): string[] {
  if (node.$ref) return faults(root.$defs[node.$ref.replace('#/$defs/', '')], value, path)
  if (node.anyOf) {
    const tries = node.anyOf.map((each) => faults(each, value, path))
    return tries.some((found) => found.length === 0) ? [] : [`${path}: none of ${node.anyOf.length}`]
  }
  if (node.oneOf) {
    const tries = node.oneOf.map((each) => faults(each, value, path))
    const fit = tries.filter((found) => found.length === 0).length
    return fit === 1 ? [] : [`${path}: ${fit} of ${node.oneOf.length} kinds`]
  }
  const found: string[] = []
  if ('const' in node && node.const !== value) found.push(`${path}: not ${node.const}`)
  if (Array.isArray(node.enum) && !node.enum.includes(value)) found.push(`${path}: not one of ${node.enum}`)
  if (node.type !== undefined && node.type !== typeOf(value)) return [...found, `${path}: no ${node.type}`]
  if (typeof node.maxLength === 'number' && String(value).length > node.maxLength)
    found.push(`${path}: too long`)
  if (Array.isArray(value)) {
    if (Number(node.minItems ?? 0) > value.length || Number(node.maxItems ?? Infinity) < value.length)
      found.push(`${path}: too many or few`)
    if (node.items)
      for (const [index, each] of value.entries()) found.push(...faults(node.items, each, `${path}.${index}`))
  }
  if (!isGroup(value)) return found
  for (const key of node.required ?? []) if (!(key in value)) found.push(`${path}.${key}: missing`)
  for (const [key, each] of Object.entries(value)) {
    const { properties = {}, patternProperties = {}, additionalProperties } = node
    const known =
      properties[key] ??
      Object.entries(patternProperties).find(([pattern]) => new RegExp(pattern).test(key))?.[1]
    if (known) found.push(...faults(known, each, `${path}.${key}`))
    else if (additionalProperties === false) found.push(`${path}.${key}: unknown`)
    else if (typeof additionalProperties === 'object')
      found.push(...faults(additionalProperties, each, `${path}.${key}`))
  }
  return found
}

describe('scenarios/schema.json', () => {
  it('is current: `npm run schema` would write the same', () => {
    expect(isCurrent(written)).toBe(true)
    expect(`${JSON.stringify(jobSchema(), null, 2)}\n`).toBe(written)
    expect(isCurrent(written.replace('"Most volts to the motor"', '"Volts"'))).toBe(false)
  })

  it('uses no word that the check below does not know', () => {
    const words = new Set<string>()
    const visit = (node: unknown, naming: boolean) => {
      if (Array.isArray(node)) for (const each of node) visit(each, false)
      if (!isGroup(node)) return
      for (const [key, each] of Object.entries(node)) {
        if (!naming) words.add(key)
        if (!['examples', 'enum', 'default', 'const'].includes(key))
          visit(each, !naming && ['properties', 'patternProperties', '$defs'].includes(key))
      }
    }
    visit(root, false)
    const known = ['$schema', '$defs', '$ref', 'title', 'description', 'examples', 'default', 'propertyNames']
    const checked = [
      'type',
      'const',
      'enum',
      'anyOf',
      'oneOf',
      'properties',
      'patternProperties',
      'additionalProperties',
      'required',
      'items',
      'maxLength',
      'minItems',
      'maxItems',
    ]
    expect([...words].filter((word) => ![...known, ...checked].includes(word))).toEqual([])
  })

  it('describes every input that the tables declare: label, range, words, usual value', () => {
    const paths = inputsOf(scenario()).map(({ path }) => path)
    for (const path of paths) {
      const field = fieldOf(schemaAt(path)!)!
      const node = path.split('.').reduce<Node>((at, key) => (at.items ?? at.properties?.[key])!, root)
      expect(node, path).toMatchObject({ title: field.label })
      if (field.help !== undefined) expect(node.description).toContain(field.help)
      const usual = usualOf(schemaAt(path)!)
      if (usual !== null) expect(node.default, path).toBe(usual)
      if (field.kind === 'quantity') {
        expect(node.description).toContain(`Between ${field.low} and ${field.high}.`)
        expect(node).toMatchObject({ $ref: '#/$defs/quantity', examples: [field.low, field.high] })
      }
      if (field.kind === 'choice') expect(node.anyOf?.[0]).toEqual({ enum: Object.keys(field.options) })
    }
    expect(paths.length).toBeGreaterThan(60)
  })
})

describe('a cut that a step names', () => {
  const faultsOf = (cut: unknown) =>
    faults(root, scenario({ 'duty.phases.0.torque': null, 'duty.phases.0.cut': cut }))
  it.each(Object.entries(EXAMPLES))(
    '%s keeps to it, and not under another name',
    (kind, { spindle, ...texts }) => {
      expect(faultsOf({ kind, ...texts })).toEqual([])
      expect(faultsOf({ kind: `${kind}s`, ...texts })).toEqual(['.duty.phases.0.cut: 0 of 15 kinds'])
      // The spindle turns as the step says.
      expect(faultsOf({ kind, ...texts, spindle })).toHaveLength(1)
    },
  )
})

describe('the demonstrations', () => {
  it.each(DEMOS)('%s keeps to it', (name) => {
    expect(faults(root, demo(name))).toEqual([])
  })

  it.each<[string, Parameters<typeof scenario>[0], string]>([
    ['an unknown word', { 'heat.cooling': 'big fan' }, '.heat.cooling: none of 2'],
    ['a number', { 'supply.volts': 12 }, '.supply.volts: none of 2'],
    ['a missing input', { 'belt.motorPulley': null }, '.belt.motorPulley: missing'],
    ['a missing group', { duty: null }, '.duty: missing'],
    [
      'an unknown name',
      { belt: { motorPulley: '1 in', machinePulley: '2 in', puley: '3 in' } },
      '.belt.puley: unknown',
    ],
    [
      'an unknown name in a value',
      { 'supply.volts': { value: '12 V', sorce: 'x' } },
      '.supply.volts: none of 2',
    ],
    ['no steps', { 'duty.phases': [] }, '.duty.phases: too many or few'],
    ['a long name', { name: 'x'.repeat(81) }, '.name: too long'],
    ['another format', { format: 2 }, '.format: not 1'],
  ])('%s does not', (_, changes, fault) => {
    expect(faults(root, scenario(changes))).toEqual([fault])
  })
})
