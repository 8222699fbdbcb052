// Every field table, row by row: bounds, usual value, refusals and wording are checked from the tables themselves.
import { describe, expect, it } from 'vitest'
import { fieldOf, unwrap, usualOf } from '../../../sim/field.ts'
import { fromUnit, parseQuantity, toUnit } from '../../../sim/quantity.ts'
import { boundsOf, type Field, type QuantityField, readInput } from '../../../sim/reading.ts'
import { entriesOf, itemOf, ScenarioFields } from '../../../sim/scenario.ts'

type Schema = NonNullable<ReturnType<typeof itemOf>>
interface Row {
  readonly path: string
  readonly field: Field
  readonly usual: string | null
}

/** Every input that the tables declare, by path; a list stands for each of its items. */
function rowsOf(given: Schema, path: string): Row[] {
  const schema = unwrap(given)
  const field = fieldOf(schema)
  if (field) return [{ path, field, usual: usualOf(given) }]
  const item = itemOf(schema)
  const kinds = 'options' in schema ? (schema.options as { entries: { kind: { literal: string } } }[]) : []
  if (kinds.length > 0)
    return kinds.flatMap(({ entries: { kind } }) =>
      Object.entries(entriesOf(schema, { kind: kind.literal }) ?? {}).flatMap(([key, entry]) =>
        key === 'kind' ? [] : rowsOf(entry, `${path}.${kind.literal}.${key}`),
      ),
    )
  const below = item ? { '0': item } : (entriesOf(schema) ?? {})
  return Object.entries(below).flatMap(([key, entry]) => rowsOf(entry, path === '' ? key : `${path}.${key}`))
}

const rows = rowsOf(ScenarioFields, '')
const quantities = rows.filter((row): row is Row & { field: QuantityField } => row.field.kind === 'quantity')
const wrongOf = (field: Field, given: unknown) => {
  const reading = readInput(field, given)
  return reading.ok ? null : reading
}

it('finds the inputs, those in lists and nested groups too', () => {
  expect(rows.length).toBeGreaterThan(65)
  const paths = rows.map(({ path }) => path)
  for (const path of [
    'supply.volts',
    'duty.phases.0.surge.every',
    'variants.0.name',
    'cutoff.fitted',
    'duty.phases.0.cut.turning.depth',
  ])
    expect(paths).toContain(path)
})

describe.each(quantities)('$path', ({ field, usual }) => {
  const { low, high, unit } = boundsOf(field)
  /** The bound moved outward by a hundredth of itself, or of the range where it is 0: in the declared unit. */
  const outside = (bound: number, way: 1 | -1) => {
    const n = toUnit(bound, unit)
    const step = n === 0 ? toUnit(high, unit) / 100 : Math.abs(n) / 100
    return Number((n + way * step).toPrecision(4))
  }

  it('reads its own bounds, and they are in order', () => {
    expect(low).toBeLessThan(high)
    expect(readInput(field, field.low)).toEqual({ ok: true, value: low })
    expect(readInput(field, field.high)).toEqual({ ok: true, value: high })
  })

  if (usual !== null)
    it('has a usual value within them', () => {
      const reading = readInput(field, usual)
      expect(reading).toMatchObject({ ok: true })
      if (!reading.ok) return
      expect(reading.value).toBeGreaterThanOrEqual(low)
      expect(reading.value).toBeLessThanOrEqual(high)
    })

  it.each([
    ['below', -1],
    ['above', 1],
  ] as const)('refuses the next value %s, naming it and the range', (_, way) => {
    const n = outside(way < 0 ? low : high, way)
    const refusal = wrongOf(field, `${n} ${unit}`)
    expect(refusal?.wrong).toContain(`${n} ${unit}`.trim())
    expect(refusal?.wrong).toMatch(/ is .+\.$/)
    expect(refusal?.wouldDo).toContain(`Between ${field.low} and ${field.high} is sensible.`)
    for (const offer of refusal?.offers ?? []) expect(readInput(field, offer)).toMatchObject({ ok: true })
  })

  it('refuses a unit of another dimension', () => {
    const other = field.dimension === 'voltage' ? 'A' : 'V'
    const n = toUnit((low + high) / 2, unit)
    expect(parseQuantity(`${n} ${unit}`, field.dimension)).toMatchObject({ ok: true })
    expect(wrongOf(field, `${n} ${other}`)).not.toBeNull()
  })

  it.each(['', ' ', 'NaN', `NaN ${unit}`, `Infinity ${unit}`, 'null', '-', unit || 'x'])(
    'refuses "%s"',
    (text) => {
      expect(wrongOf(field, text)?.wrong).toMatch(/\.$/)
    },
  )

  it.each([120, null, undefined, true, [], {}, { value: 120 }, [['1 V']]])(
    'refuses %j, which is no text',
    (given) => {
      expect(wrongOf(field, given)?.wrong).toBe(`${field.label} must be a text with a unit.`)
    },
  )

  it('takes a value written out, and its bounds in order', () => {
    const middle = `${toUnit((low + high) / 2, unit)} ${unit}`
    const written = { value: middle, source: 'measured', low: field.low, high: field.high }
    expect(readInput(field, written)).toMatchObject({ ok: true })
    expect(wrongOf(field, { value: field.low, low: field.high })?.wrong).toContain('wrong side')
    expect(wrongOf(field, { value: field.high, high: field.low })?.wrong).toContain('wrong side')
    expect(wrongOf(field, { value: middle, low: 'garbage' })?.wrong).toContain('low bound')
    expect(wrongOf(field, { value: middle, high: 7 })?.wrong).toContain('high bound')
    expect(wrongOf(field, { value: middle, source: 7 })?.wrong).toContain('Where it comes from')
    expect(wrongOf(field, { value: middle, source: 'x'.repeat(301) })?.wouldDo).toContain('300')
  })
})

describe('words of the tables', () => {
  it.each(rows)('$path is worded as the page shows it', ({ field }) => {
    const shown = [field.label, ...(field.kind === 'choice' ? Object.values(field.options) : [])]
    for (const text of shown) {
      expect(text).toMatch(/^\p{Lu}/u)
      expect(text).not.toMatch(/[.—]$|—|\s$|^\s/)
    }
    if (field.help !== undefined) {
      expect(field.help).toMatch(/^[\p{Lu}\d]/u)
      expect(field.help).toMatch(/\.$/)
      expect(field.help).not.toContain('—')
    }
    if (field.kind === 'quantity')
      // They finish the sentence "… is".
      for (const end of [field.below, field.above]) expect(end ?? 'x').not.toMatch(/^\p{Lu}|\.$/u)
  })

  it('no two inputs of a group share a label', () => {
    const named = rows.map(({ path, field }) => `${path.slice(0, path.lastIndexOf('.'))}: ${field.label}`)
    expect(named.filter((name, index) => named.indexOf(name) !== index)).toEqual([])
  })

  it.each(rows.filter(({ field }) => field.kind === 'choice'))(
    '$path takes its words and no others',
    ({ field, usual }) => {
      if (field.kind !== 'choice') throw new Error('filtered')
      const words = Object.keys(field.options)
      expect(words).toContain(usual)
      for (const word of words)
        expect(readInput(field, { value: word, source: 'seen' })).toEqual({ ok: true, value: word })
      for (const other of ['', 'constructor', '__proto__', 'toString', `${words[0]} `, 7, null, {}]) {
        const refusal = wrongOf(field, other)
        expect(refusal?.wouldDo).toContain(`"${words[0]}"`)
        expect(refusal?.offers).toEqual(words)
      }
    },
  )

  it.each(rows.filter(({ field }) => field.kind === 'text'))(
    '$path takes words up to its length',
    ({ field }) => {
      if (field.kind !== 'text') throw new Error('filtered')
      expect(readInput(field, 'x'.repeat(field.longest))).toMatchObject({ ok: true })
      expect(wrongOf(field, 'x'.repeat(field.longest + 1))?.wrong).toContain(String(field.longest + 1))
      expect(wrongOf(field, 5)?.wouldDo).toContain(String(field.longest))
    },
  )
})

it('a slip of the decimal point is offered back, within the bounds', () => {
  const plate = rows.find(({ path }) => path === 'plate.speed')!.field
  expect(wrongOf(plate, '40000 rpm')).toEqual({
    ok: false,
    wrong: '40000 rpm is more than brushes stand (about 10 000 rpm).',
    wouldDo: 'Between 50 rpm and 12000 rpm is sensible. Did you mean 4000 rpm?',
    offers: ['4000 rpm'],
  })
})

it('a bound written in another unit counts as met', () => {
  const air = rows.find(({ path }) => path === 'heat.air')!.field
  expect(readInput(air, '158 °F')).toMatchObject({ ok: true })
  expect(readInput(air, '-22 °F')).toMatchObject({ ok: true })
  const pulley = rows.find(({ path }) => path === 'belt.motorPulley')!.field
  expect(readInput(pulley, `${toUnit(fromUnit(5, 'mm'), 'in')} in`)).toMatchObject({ ok: true })
})
