// What the second method found, in a sentence.
import { describe, expect, it } from 'vitest'
import type { CrossCheck, Opinion } from '../../../sim/crossCheck.ts'
import { checkWords } from '../../../sim/say/check.ts'
import { FAHRENHEIT, US, visible } from './units.ts'

const opinion = (rates: number, opening: number | null): Opinion => ({
  method: 'rosenbrock',
  accuracy: 'default',
  reached: 3280,
  ending: { kind: 'finished' },
  opening,
  effort: { steps: 100, rejected: 0, rates, readings: 0 },
})
const check: CrossCheck = {
  shown: opinion(30_000, 3280),
  second: { ...opinion(1_600_000, 3280.2), method: 'extrapolation' },
  moments: 500,
  until: 3280,
  differences: {
    speed: { value: 0.1234, t: 1 },
    current: { value: 0.0345, t: 1 },
    windingC: { value: 0.0123, t: 1 },
    frameC: { value: 0.001, t: 1 },
    switchC: { value: 0.002, t: 1 },
  },
  openingDifference: 0.234,
}
const say = (changes: Partial<CrossCheck> = {}, units = US) =>
  visible(checkWords({ ...check, ...changes }, units))

describe('the second method', () => {
  it('differs by so much, with what it cost', () => {
    expect(say()).toBe(
      'An unrelated method, over the first 54~min 40~s and 53 times the work, differs by at most 0.012~°C, 1.2~rpm at the motor and 0.035~A. The cutoff opens 0.23~s apart.',
    )
  })
  it('in °F, without the 32', () => {
    expect(say({}, FAHRENHEIT)).toContain('at most 0.022~°F')
  })
  it('says nothing of an opening that neither saw, and warns where one did', () => {
    const blind = { shown: opinion(1, null), openingDifference: null }
    expect(say({ ...blind, second: opinion(1, null) })).toMatch(/A\.$/)
    expect(say(blind)).toMatch(/Only one of them sees the cutoff open: it is too close to call\.$/)
  })
  it('that got nowhere or lost its numbers confirms nothing', () => {
    expect(say({ moments: 0, second: { ...check.second, ending: { kind: 'not finite', t: 0 } } })).toBe(
      'The second method got nowhere (not finite), so there is nothing to compare.',
    )
    const lost = { ...check.differences, speed: { value: Number.NaN, t: 5 } }
    expect(say({ differences: lost })).toMatch(/nothing is confirmed\.$/)
  })
})
