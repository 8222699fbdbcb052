// Variants are chosen, copied, tried, renamed, removed and brought back; and the page knows what to try next.
import { beforeAll, expect, it } from 'vitest'
import { toSave } from '../../ui/change/job.ts'
import type { Advice } from '../../sim/advise.ts'
import { coolingTries, largerPulley, nextTry, pulleyTry } from '../../ui/change/tries.ts'
import { choose, copy, MOST_VARIANTS, remove, rename, tryOut } from '../../ui/change/variants.ts'
import { AS_FOUND, type Result, type State } from '../../ui/store.ts'
import { granted } from '../../ui/wishes.ts'
import { example, resultOf, state } from './demo.ts'

let found: Result
beforeAll(() => {
  found = resultOf(state(), AS_FOUND)
})
const withResults = (now: State, ids: readonly string[]): State => ({
  ...now,
  results: new Map(ids.map((id) => [id, id === AS_FOUND ? found : resultOf(now, id)])),
})

it('a saved job is the one that was opened', () => {
  expect(toSave(state())).toEqual(example('appleMill'))
})

it('a copy is chosen, named apart, and undone', () => {
  const before = state()
  const again = (now: State) => granted(now, { kind: 'copy' })
  const after = again(again(before))
  expect(after.variants.slice(3).map(({ name }) => name)).toEqual([
    'Copy of As found',
    'Copy of Copy of As found',
  ])
  expect(after.chosen).toBe(after.variants[4].id)
  expect(granted(after, { kind: 'undo' }).variants).toHaveLength(4)
  expect(copy(choose(after, AS_FOUND)).variants[5].name).toBe('Copy of As found 2')
})

it('a try that is there already is chosen, another is added', () => {
  const now = state()
  expect(tryOut(now, 'x', { 'heat.cooling': 'shaft fan' })).toMatchObject({
    chosen: 'variant 1',
    variants: now.variants,
  })
  const blown = tryOut(now, 'With a blower', { 'heat.cooling': 'blower' })
  expect(blown.variants[3]).toMatchObject({ name: 'With a blower', changes: { 'heat.cooling': 'blower' } })
  expect(blown.chosen).toBe(blown.variants[3].id)
})

it('the chosen one removed leaves the one before it chosen; the job as found stays', () => {
  const now = choose(state(), 'variant 2')
  const after = granted(now, { kind: 'remove', id: 'variant 2' })
  expect(after.variants.map(({ id }) => id)).toEqual(['variant 1', 'variant 3'])
  expect(after.chosen).toBe('variant 1')
  expect(granted(after, { kind: 'undo' })).toMatchObject({ chosen: 'variant 2', variants: now.variants })
  expect(remove(now, AS_FOUND)).toBe(now)
})

it('names are kept short, and an empty one is not taken', () => {
  const now = rename(state(), 'variant 1', ` ${'n'.repeat(100)} `)
  expect(now.variants[0].name).toHaveLength(60)
  expect(rename(now, 'variant 1', '  ')).toBe(now)
})

it('there is an end to variants, said in words', () => {
  let now = state()
  for (let n = 0; n < 30; n++) now = copy(choose(now, AS_FOUND))
  expect(now.variants).toHaveLength(MOST_VARIANTS)
  expect(now.notice?.words).toContain('24 variants')
})

it('an open motor can lose or gain its fan; a shut one its outer fan', () => {
  const labels = (result: Result) => coolingTries(state(), result).map(({ label }) => label)
  expect(labels(found)).toEqual(['With the shaft fan', 'With a blower'])
  const { heat } = found.job.parts
  const shut = {
    ...found.job,
    parts: { ...found.job.parts, heat: { ...heat, cooling: 'enclosed' as const } },
  }
  expect(labels({ ...found, job: shut })).toEqual(['With an outer fan'])
})

it('the next larger pulley can be bought and still reaches the speed', () => {
  // 1.4 × 10 in = 14 in; metric 355.6 mm, down to 350.
  expect(largerPulley(found, state().settings.units)).toBeCloseTo(14 * 0.0254, 9)
  expect(largerPulley(found, { system: 'metric', temperature: '°C' })).toBeCloseTo(0.35, 9)
  // At 1000 rpm asked, 4 : 1 wants 4000 of 4580 rpm with a tenth in hand: nothing larger would do.
  const phases = found.job.duty.phases.map((phase) => ({ ...phase, speed: (1000 * Math.PI) / 30 }))
  const fast = { ...found, job: { ...found.job, duty: { ...found.job.duty, phases } } }
  expect(largerPulley(fast, state().settings.units)).toBeNull()
  expect(pulleyTry(state(), found, '14 in', 14 * 0.0254)).toMatchObject({
    label: 'Try ratio 5.6\u00a0:\u00a01',
    wish: { name: 'Ratio 5.6\u00a0:\u00a01', changes: { 'belt.machinePulley': '14 in' } },
  })
})

/** By rule of thumb, before there is any advice. */
const next = (now: State, result: Result) => nextTry(now, result, null)

it('what to do next: look at one that works, else the fan, else more reduction', () => {
  const now = state()
  expect(next(withResults(now, [AS_FOUND]), found)?.label).toBe('Try it with the shaft fan')
  expect(next(withResults(now, [AS_FOUND, 'variant 1']), found)?.label).toBe('Look at “With the shaft fan”')
  const fast = choose(now, 'variant 2')
  const result = resultOf(now, 'variant 2')
  expect(next(withResults(fast, ['variant 2']), result)?.label).toBe('Try ratio 2.8\u00a0:\u00a01')
  const good = choose(now, 'variant 1')
  expect(next(withResults(good, [AS_FOUND]), resultOf(now, 'variant 1'))?.label).toBe('Look at it as found')
})

it('a change that the advice has run and found good goes before a rule of thumb', () => {
  const cure = (name: string, faults: readonly string[]) => ({
    ...{ name, levers: [], changes: { 'belt.machinePulley': name }, whole: true, outcome: { faults } },
  })
  const advice = {
    findings: [{ cures: [cure('One', ['hot'])] }, { cures: [cure('Two', []), cure('Three', [])] }],
  }
  const now = withResults(state(), [AS_FOUND])
  expect(nextTry(now, found, advice as unknown as Advice)).toEqual({
    label: 'Try two',
    wish: { kind: 'try', name: 'Two', changes: { 'belt.machinePulley': 'Two' } },
  })
  expect(nextTry(now, found, { findings: [] } as unknown as Advice)?.label).toBe('Try it with the shaft fan')
})

it('of several that work it points to the one with the most in hand', () => {
  const now = state()
  // Fan and 5.6 : 1 stays coolest of the example's own.
  expect(next(withResults(now, [AS_FOUND, 'variant 1', 'variant 3']), found)?.label).toBe(
    'Look at “Fan, ratio 5.6\u00a0: 1”'.replace('\u00a0', ' '),
  )
})

it('a stall asks for reduction and never for a fan: a swap where it gears up, else a larger pulley', () => {
  const stalls = (belt: Partial<Result['job']['parts']['belt']>): Result => ({
    ...found,
    figures: { ...found.figures, stalled: 3 },
    job: { ...found.job, parts: { ...found.job.parts, belt: { ...found.job.parts.belt, ...belt } } },
  })
  const now = state()
  expect(next(now, stalls({}))?.label).toBe('Try ratio 5.6\u00a0:\u00a01')
  const up = {
    ...now,
    scenario: {
      ...now.scenario,
      belt: { ...now.scenario.belt, motorPulley: '10 in', machinePulley: '2.5 in' },
    },
  }
  expect(next(up, stalls({ motorPulley: 0.254, machinePulley: 0.0635 }))).toEqual({
    label: 'Swap the pulleys',
    wish: {
      kind: 'try',
      name: 'Pulleys swapped',
      changes: { 'belt.motorPulley': '2.5 in', 'belt.machinePulley': '10 in' },
    },
  })
  // Already geared as far as the speed allows: a standing spindle has no use for speed.
  const far = stalls({ machinePulley: 0.76 })
  expect(largerPulley(far, now.settings.units)).toBeNull()
  expect(next(now, far)?.label).toMatch(/^Try ratio/)
})
