// Steps of the pulleys on the page: added with diameters that one belt fits, taken out with the steps in use following.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { stepFits } from '../../sim/drive/steps.ts'
import { beltWords } from '../../ui/edit/beltWords.ts'
import type { FormState } from '../../ui/edit/field.ts'
import { inputAt, withChange } from '../../sim/scenario.ts'
import type { State } from '../../ui/store.ts'
import { granted } from '../../ui/wishes.ts'
import { state } from './demo.ts'

const many = (count: number): State =>
  Array.from({ length: count }).reduce<State>((now) => granted(now, { kind: 'add belt step' }), state())
const belt = (now: State) => {
  const reading = read(now.scenario)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.job.parts.belt
}

it('a step that is added fits the same belt, or nearly, and the first stays in use', () => {
  const fits = stepFits(belt(many(3)))
  expect(fits.map(({ step, inUse }) => [step, inUse])).toEqual([
    [1, true],
    [2, false],
    [3, false],
    [4, false],
  ])
  for (const { driving, driven } of fits) expect(driving + driven).toBeCloseTo(12.5 * 0.0254, 6)
  for (const { longer } of fits) expect(Math.abs(longer)).toBeLessThan(0.02)
  expect(belt(many(40)).pairs?.length).toBe(8)
})

it('taking one out renumbers the steps that variants use, and the last leaves no list', () => {
  const on = (step: string) => ({ id: `v${step}`, name: step, changes: { 'belt.step': step } })
  const three: State = { ...many(2), variants: [on('1'), on('2'), on('3')] }
  const after = granted(three, { kind: 'remove belt step', index: 0 })
  expect(after.variants.map(({ changes }) => changes)).toEqual([
    { 'belt.step': '1' },
    {},
    { 'belt.step': '2' },
  ])
  expect(belt(after).pairs?.length).toBe(2)
  const none = granted(after, { kind: 'remove belt step', index: 0 })
  expect(none.scenario.belt.steps).toBeUndefined()
  const inUse = { ...three, scenario: withChange(three.scenario, 'belt.step', '3') }
  expect(granted(inUse, { kind: 'remove belt step', index: 0 }).scenario.belt.step).toBe('2')
  expect(granted(inUse, { kind: 'remove belt step', index: 1 }).scenario.belt.step).toBeUndefined()
})

it('length and centres are each shown from the other', () => {
  const { scenario, settings } = state()
  const words = (asked: typeof scenario, path: string) =>
    beltWords(inputAt(asked, path)!, { asked, units: settings.units } as FormState)
  // 2.5 and 10 in at 23 in: L = 2C cos γ + π(D + d)/2 + γ(D − d) = 66.25 in.
  expect(words(scenario, 'belt.length')).toMatchObject({ placeholder: '66.2' })
  expect(words(scenario, 'belt.length').helper).toContain('Sold nearest: 66')
  const byLength = withChange(withChange(scenario, 'belt.centreDistance', null), 'belt.length', '66.247 in')
  expect(words(byLength, 'belt.centreDistance')).toMatchObject({ placeholder: '23' })
  expect(words(byLength, 'belt.centreDistance').helper).toContain('from the belt')
  expect(words(scenario, 'belt.ribs')).toEqual({ placeholder: '', helper: null })
})
