// The scenario as written: finding inputs by path, changing them, and what paths cannot reach.
import { describe, expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import {
  givenAt,
  inputAt,
  inputsOf,
  schemaAt,
  variantsOf,
  withChange,
  withVariant,
} from '../../sim/scenario.ts'
import { DEMOS, scenario } from '../jobs.ts'

describe('paths', () => {
  it.each([
    'supply.volts',
    'duty.phases.0.lasts',
    'duty.phases.12.surge.every',
    'variants.3.name',
    'belt',
    'name',
  ])('%s names an input or a group', (path) => {
    expect(schemaAt(path)).not.toBeNull()
  })
  it.each([
    '',
    'volts',
    'supply.voltss',
    'supply.volts.value',
    'duty.phases.x.lasts',
    'duty.phases.-1.lasts',
    'duty.phases.1e3.lasts',
    'duty.phases.length',
    '__proto__',
    'constructor',
    'constructor.prototype',
    'supply.__proto__',
    'supply.toString',
    'duty.phases.__proto__.lasts',
  ])('"%s" names none', (path) => {
    expect(schemaAt(path)).toBeNull()
    expect(inputAt(scenario(), path)).toBeNull()
  })
  it('what stands in prototypes is not given', () => {
    for (const path of ['constructor', '__proto__', 'supply.toString', 'name.length'])
      expect(givenAt(scenario(), path)).toBeUndefined()
    expect(givenAt(null, 'supply')).toBeUndefined()
    expect(givenAt({ a: { b: null } }, 'a.b.c')).toBeUndefined()
  })
})

describe('an input as it stands', () => {
  it('has its text, source and bounds', () => {
    expect(inputAt(scenario(), 'winding.resistance')).toMatchObject({
      text: '1.25 Ω',
      usual: false,
      low: '0.9 Ω',
      high: '1.6 Ω',
      field: { label: 'Winding resistance, cold', dimension: 'resistance' },
    })
    expect(inputAt(scenario(), 'winding.resistance')?.source).toMatch(/^estimated/)
  })
  it('that is left out has its usual text, or none', () => {
    expect(inputAt(scenario(), 'supply.resistance')).toMatchObject({ text: '0 Ω', usual: true, source: null })
    expect(inputAt(scenario(), 'winding.inductance')).toMatchObject({ text: '', usual: true })
  })
  it('of the wrong type has no text, and nothing throws', () => {
    const broken = scenario({
      'supply.volts': 12,
      'belt.motorPulley': [],
      'winding.resistance': { value: 5, low: 5 },
    })
    expect(inputAt(broken, 'supply.volts')?.text).toBe('')
    expect(inputAt(broken, 'belt.motorPulley')?.text).toBe('')
    expect(inputAt(broken, 'winding.resistance')).toMatchObject({ text: '', low: null })
    for (const nothing of [null, undefined, 5, 'x', []])
      expect(inputAt(nothing, 'supply.volts')?.usual).toBe(true)
  })
})

describe('all inputs', () => {
  it.each(DEMOS)('of %s come in the order of the tables, each once, steps by number', (name) => {
    const paths = inputsOf(scenario({}, name)).map(({ path }) => path)
    expect(new Set(paths).size).toBe(paths.length)
    expect(paths).toContain('duty.phases.2.torque')
    expect(paths).not.toContain('duty.phases.3.torque')
    expect(paths.indexOf('supply.volts')).toBeLessThan(paths.indexOf('winding.resistance'))
  })
  it('below a path are those below it', () => {
    const paths = inputsOf(scenario(), 'belt').map(({ path }) => path)
    expect(paths).toContain('belt.motorPulley')
    expect(paths.every((path) => path.startsWith('belt.'))).toBe(true)
    expect(inputsOf(scenario(), 'belt.motorPulley').map(({ path }) => path)).toEqual(['belt.motorPulley'])
    expect(inputsOf(scenario(), 'nowhere')).toEqual([])
  })
  it('of nonsense are told as left out', () => {
    for (const nothing of [null, 5, 'x', [], { duty: 5 }])
      expect(inputsOf(nothing).length).toBeGreaterThan(50)
  })
})

describe('a change', () => {
  it('leaves the given scenario as it was, and shares what it does not touch', () => {
    const before = scenario()
    const copy = structuredClone(before)
    const after = withChange(before, 'supply.volts', '90 V')
    expect(before).toEqual(copy)
    expect(givenAt(after, 'supply.volts')).toBe('90 V')
    expect(after.belt).toBe(before.belt)
  })
  it('reaches into steps, adds one at the end, and takes one out', () => {
    const longer = withChange(scenario(), 'duty.phases.1.lasts', '90 s')
    expect(givenAt(longer, 'duty.phases.1')).toEqual({ name: 'rest', lasts: '90 s' })
    const more = withChange(scenario(), 'duty.phases.3', { name: 'clean', lasts: '1 min' })
    expect(more.duty.phases).toHaveLength(4)
    const fewer = withChange(scenario(), 'duty.phases.0', null)
    expect(fewer.duty.phases.map(({ name }) => name)).toEqual(['rest', 'milling'])
  })
  it('to null takes an input out, to its usual value', () => {
    const usual = withChange(scenario(), 'supply.lineVolts', null)
    expect(inputAt(usual, 'supply.lineVolts')).toMatchObject({ text: '120 V', usual: true })
  })
  it('makes the group it needs, where it was left out or is no group', () => {
    expect(givenAt(withChange(scenario(), 'machine', null), 'machine')).toBeUndefined()
    const bare = withChange(withChange(scenario(), 'machine', null), 'machine.drag', '2 N·m')
    expect(bare.machine).toEqual({ drag: '2 N·m' })
    expect(withChange(scenario({ machine: 'x' }), 'machine.drag', '2 N·m').machine).toEqual({ drag: '2 N·m' })
  })
  it.each([
    '__proto__.polluted',
    'constructor.prototype.polluted',
    'supply.__proto__',
    'toString',
    'no.such',
  ])('at %s changes nothing', (path) => {
    const before = scenario()
    expect(withChange(before, path, 'x')).toBe(before)
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  })
  it('makes the list it needs, item by item, and takes items out again', () => {
    const none = scenario()
    expect(givenAt(none, 'bench')).toBeUndefined()
    const one = withChange(none, 'bench.ohms.0', '1.2 Ω')
    expect(one.bench).toEqual({ ohms: ['1.2 Ω'] })
    expect(withChange(one, 'bench.ohms.1', '1.3 Ω').bench).toEqual({ ohms: ['1.2 Ω', '1.3 Ω'] })
    const free = withChange(withChange(none, 'bench.running.0.volts', '120 V'), 'bench.running.0.amps', '1 A')
    expect(free.bench).toEqual({ running: [{ volts: '120 V', amps: '1 A' }] })
    expect(withChange(one, 'bench.ohms.0', null).bench).toEqual({ ohms: [] })
    expect(read(free).ok).toBe(true)
  })
  it('makes a list where something else stood in its place', () => {
    const broken = scenario({ bench: { ohms: 'x' } })
    expect(withChange(broken, 'bench.ohms.0', '1 Ω').bench).toEqual({ ohms: ['1 Ω'] })
  })
  it('past the end of a list that is not there changes nothing', () => {
    expect(withChange(scenario(), 'bench.ohms.1', '1 Ω')).not.toHaveProperty('bench.ohms')
    expect(withChange(scenario(), 'bench.ohms.0', null)).not.toHaveProperty('bench.ohms')
    const one = withChange(scenario(), 'bench.ohms.0', '1.2 Ω')
    expect(withChange(one, 'bench.ohms.1', null).bench).toEqual(one.bench)
  })
  it('past the end of the steps changes nothing', () => {
    expect(withChange(scenario(), 'duty.phases.7.lasts', '1 s').duty).toEqual(scenario().duty)
  })
})

describe('variants', () => {
  it('put all their changes in', () => {
    const [, , slow] = variantsOf(scenario())
    const after = withVariant(scenario(), slow)
    expect(givenAt(after, 'heat.cooling')).toBe('shaft fan')
    expect(givenAt(after, 'belt.machinePulley')).toBe('14 in')
  })
  it('that are malformed are passed over, and the others kept', () => {
    const good = { name: 'good', changes: { 'heat.cooling': 'blower' } }
    const list = [
      null,
      5,
      {},
      { name: 5, changes: {} },
      { name: 'x' },
      { name: 'y', changes: { a: 1 } },
      good,
    ]
    expect(variantsOf({ variants: list })).toEqual([good])
    for (const nothing of [null, 5, {}, { variants: 'x' }, { variants: {} }])
      expect(variantsOf(nothing)).toEqual([])
  })
})
