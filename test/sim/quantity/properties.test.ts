// Properties over many drawn texts and numbers: writing and reading agree, and no text is left unanswered.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Dimension, parseQuantity, toUnit, unitsOf, writeQuantity } from '../../../sim/quantity.ts'
import { table } from '../../../sim/quantity/units.ts'

const seed = 811
const dimensions = Object.keys(table) as Dimension[]

describe('writing and reading', () => {
  const pairs = dimensions.flatMap((each) => unitsOf(each).map((unit) => [unit, each] as const))
  const magnitude = fc
    .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -12, max: 12 }), fc.boolean())
    .map(([digits, power, negative]) => (negative ? -digits : digits) * 10 ** power)

  it.each(pairs)('a value written in %s (%s) is read back to the last digits', (unit, each) => {
    fc.assert(
      fc.property(magnitude, (drawn) => {
        const value = each === 'share' && unit === '' ? drawn / 1e13 : drawn
        const parsed = parseQuantity(writeQuantity(value, unit), each)
        if (!parsed.ok) throw new Error(parsed.wrong)
        // Two roundings, one there and one back: within two units of the last place. (Most texts are exact.)
        // The zero of °F lies 32 away, so a temperature near 0 °C keeps the digits of a number near 32.
        const size = unit === '°F' ? Math.abs(value) + 32 : Math.abs(value)
        expect(Math.abs(parsed.value - value)).toBeLessThanOrEqual(2 ** -51 * size)
        expect(parsed.unit).toBe(unit)
      }),
      { seed, numRuns: 300 },
    )
  })

  it.each(pairs)('a number typed in %s (%s) is written back as it was typed', (unit, each) => {
    const typed = fc.integer({ min: 1, max: 99999 }).map((n) => n / 1000)
    fc.assert(
      fc.property(typed, (drawn) => {
        const n = each === 'share' && unit === '' ? drawn / 1000 : drawn
        const parsed = parseQuantity(`${n} ${unit}`, each)
        if (!parsed.ok) throw new Error(parsed.wrong)
        expect(writeQuantity(parsed.value, unit)).toBe(`${n} ${unit}`.trim())
      }),
      { seed, numRuns: 300 },
    )
  })

  it('2.5 in, 0 and large values are written short', () => {
    expect(writeQuantity(0.0635, 'in')).toBe('2.5 in')
    expect(writeQuantity(0, 'V')).toBe('0 V')
    expect(writeQuantity(1500, 'W')).toBe('1500 W')
    expect(writeQuantity(120, '°F')).toBe('248 °F')
    expect(writeQuantity(0.3, '%')).toBe('30 %')
    expect(writeQuantity(4, '')).toBe('4')
    expect(writeQuantity(-1.5, 'm')).toBe('-1.5 m')
  })

  it('what is not a number is written as a question mark', () => {
    expect(writeQuantity(Number.NaN, 'rpm')).toBe('? rpm')
    expect(writeQuantity(0, 'rpm/V')).toBe('? rpm/V')
    expect(toUnit(0, 'rpm/V')).toBe(Number.POSITIVE_INFINITY)
  })
})

describe('any text', () => {
  const pieces = fc.constantFrom(
    ...'0 1 2 12 000 4,000 1.5 1/2 ½ , . - + − / : e E ° " \' · ² ( ) % ft in lb oz N m s min h rpm V Ω µ M K'.split(
      ' ',
    ),
    ' ',
    '\u202f',
    '\u200b',
  )
  const numbers = fc.oneof(
    fc.double().map(String),
    fc.constantFrom('1', '-1', '0', '0.5', '2 1/2', '½', '4 000', '4,000', '1e400', '0,125', '3/0'),
  )
  /** A text, the dimension it is read as, and whether a unit is assumed: noise, pieces of sense, or nearly right. */
  const asked = fc.constantFrom(...dimensions).chain((each) => {
    const words = fc.constantFrom('', ' ', 'ftt', ...table[each].units.flatMap((unit) => unit.words))
    const text = fc.oneof(
      fc.string({ maxLength: 200, unit: 'binary' }),
      fc.string({ maxLength: 200 }),
      fc.array(pieces, { maxLength: 40 }).map((all) => all.join('')),
      fc.tuple(numbers, words).map((both) => both.join(' ')),
      fc.tuple(numbers, words, numbers, words).map((all) => all.join(' ')),
    )
    return fc.tuple(text, fc.constant(each), fc.boolean())
  })

  it('is read as a finite number in a unit of the dimension, or refused in two sentences', () => {
    let read = 0
    let refused = 0
    fc.assert(
      fc.property(asked, ([text, each, assume]) => {
        const parsed = parseQuantity(text, each, assume ? unitsOf(each).at(-1) : undefined)
        if (parsed.ok) {
          read++
          expect(Number.isFinite(parsed.value)).toBe(true)
          expect(unitsOf(each)).toContain(parsed.unit)
        } else {
          refused++
          expect(parsed.wrong).toMatch(/\.$/)
          expect(parsed.wouldDo).toMatch(/[.?]$/)
          expect(parsed.wrong.length).toBeLessThan(160)
        }
      }),
      { seed, numRuns: 20_000 },
    )
    // Both ways were met, or the property says nothing.
    expect(read).toBeGreaterThan(2000)
    expect(refused).toBeGreaterThan(3000)
  })

  it('every offer of a refusal is itself read', () => {
    let offers = 0
    fc.assert(
      fc.property(asked, ([text, each, assume]) => {
        const parsed = parseQuantity(text, each, assume ? unitsOf(each)[0] : undefined)
        if (parsed.ok) return
        for (const offer of parsed.offers ?? []) {
          offers++
          expect(parseQuantity(offer, each), offer).toMatchObject({ ok: true })
        }
      }),
      { seed, numRuns: 20_000 },
    )
    expect(offers).toBeGreaterThan(500)
  })

  it('every example shown is itself read', () => {
    for (const each of dimensions)
      for (const example of table[each].examples)
        expect(parseQuantity(example, each), example).toMatchObject({ ok: true })
  })
})
