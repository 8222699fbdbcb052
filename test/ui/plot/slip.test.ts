// Where the belt slips: the spells in view, those closer than a pixel told as one.
import { expect, it } from 'vitest'
import type { Mark } from '../../../sim/trace.ts'
import { slipSpells } from '../../../ui/plot/layers/slip.ts'

const slips = (t: number, until: number): Mark => ({ kind: 'belt slips', t, until, worst: 0.5 })
const marks: readonly Mark[] = [
  slips(10, 12),
  { kind: 'stalled', t: 20, until: 30 },
  slips(40, 41),
  slips(41.5, 43),
  slips(200, 210),
]

it('are those in view, and only of the belt', () => {
  expect(slipSpells(marks, { from: 0, to: 100, perPixel: 0.1 })).toEqual([
    [10, 12],
    [40, 41],
    [41.5, 43],
  ])
  expect(slipSpells(marks, { from: 205, to: 300, perPixel: 0.1 })).toEqual([[200, 210]])
})

it('are one where they cannot be told apart', () => {
  expect(slipSpells(marks, { from: 0, to: 100, perPixel: 1 })).toEqual([
    [10, 12],
    [40, 43],
  ])
})
