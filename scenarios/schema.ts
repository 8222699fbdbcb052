// The schema of a job file, from the field tables. `npm run schema` writes it; with `-- --check` it only compares.
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { isDeepStrictEqual } from 'node:util'
import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema'
import type { Field } from '../sim/field.ts'
import { keysOf } from '../sim/reading.ts'
import { ScenarioFields } from '../sim/scenario.ts'

/** Where the schema stands, beside the jobs that name it. */
export const SCHEMA_FILE = fileURLToPath(new URL('./schema.json', import.meta.url))

/** A group holds its inputs and nothing else, but for notes to other programs: names that begin with a dollar sign. */
const closed = { additionalProperties: false, patternProperties: { '^\\$': {} } } as const

const text: JsonSchema = { type: 'string' }

/** A value alone, or written out with what may stand beside it. */
const written = (value: JsonSchema, keys: readonly string[]): JsonSchema => ({
  anyOf: [
    value,
    {
      type: 'object',
      properties: { ...Object.fromEntries(keys.map((key) => [key, text])), value },
      required: ['value'],
      ...closed,
    },
  ],
})

const sentences = (...parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined).join(' ')

/** An input, with its label, range, words and help. */
function inputOf(field: Field): JsonSchema {
  const title = field.label
  if (field.kind === 'text')
    return { title, ...(field.help && { description: field.help }), ...text, maxLength: field.longest }
  if (field.kind === 'choice') {
    const meanings = Object.entries(field.options).map(([word, meaning]) => `"${word}": ${meaning}.`)
    return {
      title,
      description: sentences(field.help, ...meanings),
      ...written({ enum: Object.keys(field.options) }, keysOf(field)),
    }
  }
  return {
    title,
    description: sentences(`Between ${field.low} and ${field.high}.`, field.help),
    examples: [field.low, field.high],
    $ref: '#/$defs/quantity',
  }
}

/** The schema: every input with its label, range, words and usual value. */
export const jobSchema = (): JsonSchema => ({
  ...toJsonSchema(ScenarioFields, {
    target: 'draft-2020-12',
    typeMode: 'input',
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (valibotAction.type !== 'metadata') return jsonSchema
      const { field, only } = (valibotAction as unknown as { metadata: { field: Field; only?: string } })
        .metadata
      // One kind of several: its group stands for that kind alone.
      return only === undefined ? inputOf(field) : { title: field.label, const: only }
    },
    overrideSchema: ({ valibotSchema, jsonSchema }) =>
      valibotSchema.type === 'object' ? { ...jsonSchema, ...closed } : jsonSchema,
  }),
  title: 'A Dutywright job',
  $defs: {
    quantity: {
      description:
        'A number with its unit, and where it came from; low and high: it lies between them 8 times in 10.',
      ...written(text, ['source', 'low', 'high']),
    },
  },
})

/** True where the written schema is the one the field tables give. */
export const isCurrent = (text: string): boolean =>
  isDeepStrictEqual(JSON.parse(text), JSON.parse(JSON.stringify(jobSchema())))

function main(args: readonly string[]): number {
  if (!args.includes('--check')) {
    writeFileSync(SCHEMA_FILE, `${JSON.stringify(jobSchema(), null, 2)}\n`)
    return 0
  }
  if (isCurrent(readFileSync(SCHEMA_FILE, 'utf8'))) return 0
  process.stderr.write('scenarios/schema.json is not current: npm run schema\n')
  return 1
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main(process.argv.slice(2))
