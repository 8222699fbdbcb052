// Work and rest in sentences: what holds all day, what never does, and what the cut does to the speed.
import { describe, expect, it } from 'vitest'
import {
  againSentence,
  canSentence,
  coldSentence,
  cycleSentence,
  cutWords,
  slowSentence,
} from '../../../sim/say/limits.ts'
import type { Limits } from '../../../sim/studies/limits.ts'
import { FOREVER, limits, plain, study } from './limitsMade.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

describe('sentences', () => {
  it('from cold, by each ending, and all day', () => {
    const cold = (ends: 'opens' | 'class' | 'destroyed') =>
      plain(coldSentence(limits({ cold: { seconds: 757, ends, frameC: 50 } })))
    expect(cold('class')).toBe('From cold it goes 12 min 40 s: then the winding passes its class limit.')
    expect(cold('opens')).toContain('then the cutoff opens.')
    expect(cold('destroyed')).toContain('then the winding burns out.')
    expect(coldSentence(limits(FOREVER))).toBe('It can be held all day without a rest.')
  })

  it('again: standing, running free, either alone, neither', () => {
    const again = (standing: number | null, free: number | null) =>
      plain(againSentence(limits({ next: { run: 300, standing, free } })))
    expect(again(441, 544)).toBe(
      'After 1 min of standing it goes 1 min 20 s more. To go another 5 min it must first stand 7 min 20 s, or run free 9 min.',
    )
    expect(again(441, null)).toMatch(/must first stand 7 min 20 s\.$/)
    expect(again(null, 544)).toMatch(/must first run free 9 min\.$/)
    expect(again(null, null)).toMatch(/No rest of a night brings it back to 5 min\.$/)
    expect(againSentence(limits(FOREVER))).toBe('')
  })

  it('in the cycle: a longest work, any, none; a shortest rest, any, none', () => {
    const cycle = (changes: Partial<Limits>) => plain(cycleSentence(limits(changes), study()))
    expect(cycle({})).toBe(
      'In the job’s cycle, with its 1 min of rest, it lasts for good if a cut takes no more than 1 min 30 s; 5 min of it needs 10 min 40 s of rest. With work and rest as the job has them, 67 % of this cut would last.',
    )
    expect(cycle({ work: 'none', rest: 'none', cut: 'none' })).toBe(
      'In the job’s cycle no cut lasts for good, however short; no rest is long enough for 5 min of it.',
    )
    expect(cycle({ work: 'any', rest: 200, cut: 1.2 })).toMatch(
      /may go as long as you like; 5 min of it needs/,
    )
    expect(cycle({ work: 400, rest: 'any', cut: 1.2 })).toMatch(/; 5 min of it needs no rest\.$/)
    expect(cycle(FOREVER)).toBe('In the job’s cycle it needs no rest.')
  })

  it('without a rest in the cycle none is spoken of; a cut without a name is the cut, one with surges a mean', () => {
    expect(plain(cycleSentence(limits(), { ...study(), cycleRest: 0 }))).toMatch(
      /^In the job’s cycle it lasts for good if a cut takes no more than 1 min 30 s;/,
    )
    expect(plain(cutWords(study(), METRIC))).toBe('milling, 5.8 N·m at 350 rpm')
    const surge = { torque: 4, every: 12, lasts: 3 }
    const phase = { ...study().phase, name: '', surge }
    expect(plain(cutWords({ ...study(), phase }, METRIC))).toBe('the cut, 5.8 N·m on average at 350 rpm')
  })

  it('says what the cut does to the speed, where that is more than accepted', () => {
    const slow = (slower: number | null) => plain(slowSentence({ ...study(), slower }, US))
    expect(slow(null)).toBe('')
    expect(slow(20)).toBe('It does not hold 350 rpm in this cut: 191 rpm is left.')
    expect(slow(0)).toMatch(/^This cut stops it\. /)
  })

  it('warns of a cool frame only where the class is passed unseen', () => {
    expect(plain(canSentence(study(), FAHRENHEIT))).toContain('the frame is only 122 °F')
    expect(canSentence(study({ cold: { seconds: 9, ends: 'opens', frameC: 50 } }), US)).toBe('')
    expect(canSentence(study(FOREVER), US)).toBe('')
  })
})
