// Bench readings count once they are whole, go to every variant, and leave the job as it was when they are taken away.
import { expect, it } from 'vitest'
import { givenAt } from '../../sim/scenario.ts'
import { read } from '../../sim/read.ts'
import { addReading, drafted, editBench, removeReading } from '../../ui/change/bench.ts'
import { choose } from '../../ui/change/variants.ts'
import type { State } from '../../ui/store.ts'
import { state } from './demo.ts'

/** The state after some texts typed at paths. */
const typed = (from: State, texts: readonly (readonly [string, string | null])[]): State =>
  texts.reduce((now, [path, text]) => {
    const next = editBench(now, path, text)
    if (!next) throw new Error(`${path} is none of the bench’s`)
    return next
  }, from)
const bench = (now: State) => now.scenario.bench
const shown = (now: State, path: string) => givenAt(drafted(now.scenario, now.drafts), path)

it('a single value counts at once, and is gone with its text', () => {
  const before = state()
  const one = typed(before, [['bench.ohms.0', '1.1 Ω']])
  expect(bench(one)).toEqual({ ohms: ['1.1 Ω'] })
  const reading = read(one.scenario)
  expect(reading.ok && reading.motor.bench.ohms).toEqual([1.1])
  const none = typed(one, [['bench.ohms.0', null]])
  expect(bench(none)).toEqual({})
  expect(none.drafts['bench.ohms']).toEqual([])
})

it('half a reading stands in its field and in no job; the other half makes it count', () => {
  const before = state()
  const half = typed(before, [['bench.running.0.volts', '120 V']])
  expect(half.scenario).toBe(before.scenario)
  expect(bench(half)).toBeUndefined()
  expect(read(half.scenario).ok).toBe(true)
  expect(shown(half, 'bench.running.0.volts')).toBe('120 V')
  const whole = typed(half, [['bench.running.0.amps', '1.1 A']])
  expect(bench(whole)).toEqual({ running: [{ volts: '120 V', amps: '1.1 A' }] })
  expect(whole.drafts['bench.running']).toEqual([])
  // What need not be read does not undo it.
  expect(bench(typed(whole, [['bench.running.0.speed', '4100 rpm']]))?.running).toHaveLength(1)
  const open = typed(whole, [['bench.running.0.volts', null]])
  expect(bench(open)).toEqual({})
  expect(shown(open, 'bench.running.0')).toEqual({ amps: '1.1 A' })
})

it('a second half-read row does not disturb the first', () => {
  const now = typed(state(), [
    ['bench.coast.0.time', '0 s'],
    ['bench.coast.1.speed', '1000 rpm'],
    ['bench.coast.0.speed', '3000 rpm'],
  ])
  expect(bench(now)).toEqual({ coast: [{ time: '0 s', speed: '3000 rpm' }] })
  expect(shown(now, 'bench.coast.1')).toEqual({ speed: '1000 rpm' })
  const both = typed(now, [['bench.coast.1.time', '8 s']])
  expect(bench(both)?.coast).toEqual([
    { time: '0 s', speed: '3000 rpm' },
    { time: '8 s', speed: '1000 rpm' },
  ])
})

it('readings are added and taken away by number', () => {
  const two = typed(addReading(typed(state(), [['bench.ohms.0', '1.1 Ω']]), 'bench.ohms'), [
    ['bench.ohms.1', '1.3 Ω'],
  ])
  expect(bench(two)?.ohms).toEqual(['1.1 Ω', '1.3 Ω'])
  expect(bench(removeReading(two, 'bench.ohms', 0))?.ohms).toEqual(['1.3 Ω'])
  const empty = addReading(two, 'bench.ohms')
  expect(shown(empty, 'bench.ohms')).toEqual(['1.1 Ω', '1.3 Ω', ''])
  expect(shown(removeReading(empty, 'bench.ohms', 2), 'bench.ohms')).toHaveLength(2)
  // Coast-down shows two rows before anything is typed: the one added is the third.
  expect(shown(addReading(state(), 'bench.coast'), 'bench.coast')).toHaveLength(3)
})

it('with a variant chosen, readings go to the job, and the variant’s own word on them goes', () => {
  const chosen = choose(state(), 'variant 1')
  const own: State = {
    ...chosen,
    variants: chosen.variants.map((entry) =>
      entry.id === 'variant 1' ? { ...entry, changes: { ...entry.changes, 'bench.ohms.0': '9 Ω' } } : entry,
    ),
  }
  const now = typed(own, [['bench.ohms.0', '1.1 Ω']])
  expect(bench(now)).toEqual({ ohms: ['1.1 Ω'] })
  expect(now.variants[0].changes).toEqual({ 'heat.cooling': 'shaft fan' })
  expect(now.variants[1]).toBe(chosen.variants[1])
  expect(givenAt(typed(chosen, [['bench.clamp', 'wall']]).scenario, 'bench.clamp')).toBe('wall')
})

it('the same text again changes nothing, and other paths are none of its business', () => {
  const one = typed(state(), [['bench.ohms.0', '1.1 Ω']])
  expect(editBench(one, 'bench.ohms.0', '1.1 Ω')).toBe(one)
  expect(editBench(one, 'bench.clamp', null)).toBe(one)
  for (const path of ['plate.volts', 'bench', 'bench.nothing', 'bench.ohms.x', 'bench.__proto__.0'])
    expect(editBench(one, path, '1'), path).toBeNull()
})
