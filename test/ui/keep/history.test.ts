// Undo and redo over everything that changes the job; a drag is one step; what is not the job is left alone.
import { expect, it } from 'vitest'
import type { Wish } from '../../../ui/events.ts'
import { MOST_STEPS } from '../../../ui/keep/history.ts'
import type { State } from '../../../ui/store.ts'
import { granted } from '../../../ui/wishes.ts'
import { state } from '../demo.ts'

const after = (now: State, ...wishes: Wish[]) => wishes.reduce(granted, now)
const air = (text: string, during?: string): Wish => ({ kind: 'edit', path: 'heat.air', text, during })
const airOf = ({ scenario }: State) => scenario.heat?.air
const back: Wish = { kind: 'undo' }
const on: Wish = { kind: 'redo' }

it('goes back step by step and forward again', () => {
  const found = state()
  const edited = after(found, air('21 °C'), { kind: 'copy' }, air('22 °C'))
  const [copied, warm, first] = [
    after(edited, back),
    after(edited, back, back),
    after(edited, back, back, back),
  ]
  expect(copied.variants).toHaveLength(4)
  expect(airOf(warm)).toBe('21 °C')
  expect(warm.variants).toHaveLength(3)
  expect(first.scenario).toBe(found.scenario)
  expect(after(first, back)).toBe(first)
  const again = after(first, on, on, on)
  expect(again).toMatchObject({ scenario: edited.scenario, variants: edited.variants, chosen: edited.chosen })
  expect(after(again, on)).toBe(again)
})

it('a change after going back forgets what was forward', () => {
  const now = after(state(), air('21 °C'), back, air('26 °C'))
  expect(after(now, on)).toBe(now)
})

it('a drag is one step, two drags are two', () => {
  const now = after(state(), air('21 °C', 'a'), air('22 °C', 'a'), air('23 °C', 'a'), air('24 °C', 'b'))
  expect(now.history.past).toHaveLength(2)
  expect(airOf(after(now, back))).toBe('23 °C')
})

it('choosing, looking and settings are no steps; another job is one', () => {
  const found = state()
  const looked = after(
    found,
    { kind: 'choose', id: 'variant 1' },
    { kind: 'moment', t: 5 },
    { kind: 'theme', theme: 'dark' },
    { kind: 'open station', station: 'belt' },
  )
  expect(looked.history.past).toHaveLength(0)
  const other = after(looked, { kind: 'job', scenario: { ...found.scenario, name: 'Other' } })
  expect(other.slot).not.toBe(found.slot)
  expect(after(other, back)).toMatchObject({
    slot: found.slot,
    scenario: found.scenario,
    chosen: 'variant 1',
  })
})

it('keeps no more steps than its limit', () => {
  let now = state()
  for (let n = 0; n < MOST_STEPS + 20; n++) now = after(now, air(`${20 + (n % 2)} °C`))
  expect(now.history.past).toHaveLength(MOST_STEPS)
})
