// Any value at all is answered by the reader with a job or with problems: nothing throws, hangs or leaks.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Read, read, readFile } from '../../sim/read.ts'
import { inputsOf, type Scenario, variantsOf, withChange } from '../../sim/scenario.ts'
import { DEMOS, demoText, scenario } from '../jobs.ts'

const seed = 2718

/** Expects an answer in the reader's own shape. */
function sane(reading: Read): void {
  if (reading.ok) {
    expect(structuredClone(reading.job)).toEqual(reading.job)
    for (const { wrong, wouldDo } of reading.notes)
      expect(`${wrong} ${wouldDo}`).not.toMatch(/NaN|Infinity|undefined|\[object/)
    return
  }
  expect(reading.problems.length).toBeGreaterThan(0)
  expect(reading.problems.length).toBeLessThanOrEqual(50)
  for (const { path, wrong, wouldDo } of reading.problems) {
    expect(typeof path).toBe('string')
    expect(wrong).toMatch(/\.$/)
    expect(wouldDo).toMatch(/[.?]$/)
    // Nothing of the schema library's own wording gets through, nor a value that was never there.
    expect(`${wrong} ${wouldDo}`).not.toMatch(/Invalid|Expected|undefined|\[object/)
  }
  expect(new Set(reading.problems.map(({ path }) => path)).size).toBe(reading.problems.length)
}

/** What a file may hold: JSON of any shape, with names that mean something to JavaScript and to the reader. */
const names = fc.constantFrom(
  ...[
    '__proto__',
    'constructor',
    'prototype',
    'toString',
    'hasOwnProperty',
    'then',
    'length',
    'value',
    'low',
  ],
  ...[
    'format',
    'supply',
    'volts',
    'winding',
    'duty',
    'phases',
    'lasts',
    'surge',
    'variants',
    'changes',
    'name',
  ],
)
const anything = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom(
      null,
      true,
      0,
      -1,
      1e308,
      1,
      '',
      '12 V',
      '5 min',
      '-3 N·m',
      '1e999 s',
      '4,000 rpm',
      '\u0000',
    ),
    fc.string({ maxLength: 20, unit: 'binary' }),
    fc.double({ noNaN: true }),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.array(fc.tuple(fc.oneof(names, fc.string({ maxLength: 8 })), tie('value')), { maxLength: 6 }),
  ),
})).value

/** Arrays of pairs made into objects, as JSON text makes them: "__proto__" becomes a name like any other. */
const asJson = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, each: unknown) => {
      if (!Array.isArray(each) || each.length === 0) return each
      if (!each.every((pair) => Array.isArray(pair) && typeof pair[0] === 'string')) return each
      const made = Object.create(null) as Record<string, unknown>
      for (const [key, inner] of each as [string, unknown][])
        Object.defineProperty(made, key, {
          value: inner,
          enumerable: true,
          configurable: true,
          writable: true,
        })
      return made
    }),
  )

describe('any JSON value', () => {
  it('is answered', () => {
    fc.assert(
      fc.property(anything, (drawn) => sane(read(asJson(drawn) as Scenario))),
      { seed, numRuns: 500 },
    )
  })

  it('in the place of any input or group of a demonstration is answered', () => {
    const places = DEMOS.map((name) => {
      const whole = scenario({}, name)
      const paths = inputsOf(whole).map(({ path }) => path)
      const groups = paths.map((path) => path.slice(0, path.lastIndexOf('.'))).filter((path) => path !== '')
      return { whole, paths: [...new Set([...paths, ...groups])] }
    })
    let read0 = 0
    let refused = 0
    const drawn = fc
      .constantFrom(...places)
      .chain(({ whole, paths }) =>
        fc.tuple(
          fc.constant(whole),
          fc.array(fc.tuple(fc.constantFrom(...paths), anything), { minLength: 1, maxLength: 2 }),
        ),
      )
    fc.assert(
      fc.property(drawn, ([whole, changes]) => {
        const mutated = changes.reduce(
          (before, [path, value]) => withChange(before, path, asJson(value)),
          whole,
        )
        const reading = read(mutated)
        sane(reading)
        if (reading.ok) read0++
        else refused++
      }),
      { seed, numRuns: 500 },
    )
    // Both ways were met, or the property says nothing.
    expect(read0).toBeGreaterThan(5)
    expect(refused).toBeGreaterThan(250)
  })

  it('as the changes of a variant is answered', () => {
    const changes = fc.dictionary(
      fc.oneof(
        names,
        fc.constantFrom('duty.phases.0', 'duty.phases.4.lasts', 'belt', 'heat.air', 'bench', 'format'),
      ),
      fc.oneof(fc.constant(null), fc.string({ maxLength: 12 }), fc.constantFrom('20 °C', '5 s')),
      { maxKeys: 4, noNullPrototype: true },
    )
    fc.assert(
      fc.property(changes, (drawn) => sane(read(scenario(), { name: 'x', changes: drawn }))),
      { seed, numRuns: 500 },
    )
  })
})

describe('a text', () => {
  it('of any kind is answered', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
        const opened = readFile(text)
        if (opened.ok) sane(read(opened.scenario))
        else expect(opened.problems).toHaveLength(1)
      }),
      { seed, numRuns: 1000 },
    )
  })

  it('of a demonstration with pieces cut out, doubled or replaced is answered', () => {
    const cut = fc.tuple(fc.constantFrom(...DEMOS), fc.nat(9000), fc.nat(12), fc.string({ maxLength: 3 }))
    let refused = 0
    fc.assert(
      fc.property(cut, ([name, at, length, put]) => {
        const text = demoText(name)
        const opened = readFile(text.slice(0, at) + put + text.slice(at + length))
        if (opened.ok) sane(read(opened.scenario))
        else refused++
      }),
      { seed, numRuns: 200 },
    )
    expect(refused).toBeGreaterThan(50)
    expect(refused).toBeLessThan(200)
  })

  it.each(['[', '{"a":'])('nested ten thousand levels deep with %s is answered', (open) => {
    const close = open === '[' ? ']' : '}'
    const nested = `${open.repeat(10_000)}1${close.repeat(10_000)}`
    for (const path of ['bench', 'supply', 'duty', 'variants', 'plate', 'nowhere', '$comment']) {
      const opened = readFile(
        demoText('appleMill').replace('"format": 1,', `"format": 1, "${path}": ${nested},`),
      )
      if (opened.ok) sane(read(opened.scenario))
    }
    expect(readFile(nested).ok).toBe(false)
  })
})

describe('names of prototypes', () => {
  const hostile = ['__proto__', 'constructor', 'prototype']
  const untouched = () => {
    expect(Object.keys(Object.prototype)).toEqual([])
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    expect(Object.hasOwn(Object.prototype, 'volts')).toBe(false)
  }

  it.each(hostile)('%s in the file is told as no input, and does nothing', (name) => {
    for (const group of ['"format": 1,', '"supply": {', '"duty": {']) {
      const text = demoText('appleMill').replace(
        group,
        `${group} "${name}": {"polluted": "yes", "volts": "1 V"}${group.endsWith('{') ? ',' : ','}`,
      )
      const opened = readFile(text)
      if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
      const reading = read(opened.scenario)
      expect(reading).toMatchObject({
        ok: false,
        problems: [{ path: expect.stringContaining(name), wrong: 'No input has this name.' }],
      })
      untouched()
    }
  })

  it.each(hostile)('%s as a path of a variant does nothing', (name) => {
    const changes = JSON.parse(
      `{"${name}": "x", "${name}.polluted": "yes", "supply.${name}.polluted": "yes"}`,
    )
    const reading = read(scenario(), { name: 'x', changes })
    expect(reading.ok ? [] : reading.problems).toHaveLength(3)
    untouched()
  })

  it.each(hostile)('%s in a variant of the file, or in its bench readings, does nothing', (name) => {
    const variants = JSON.parse(`[{"name": "x", "changes": {"${name}": "y"}, "${name}": {"polluted": 1}}]`)
    const reading = read(scenario({ variants, bench: JSON.parse(`{"${name}": {"polluted": 1}}`) }))
    untouched()
    for (const variant of variantsOf({ variants })) read(scenario(), variant)
    untouched()
    expect(typeof reading.ok).toBe('boolean')
  })

  it('are no choices', () => {
    for (const name of [...hostile, 'toString'])
      expect(read(scenario({ 'heat.cooling': name }))).toMatchObject({
        ok: false,
        problems: [{ path: 'heat.cooling' }],
      })
  })
})
