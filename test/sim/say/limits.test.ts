// Work and rest in words: what holds all day, what never does, and the card's rounding to the careful side.
import { describe, expect, it } from 'vitest'
import {
  againSentence,
  canSentence,
  coldSentence,
  cycleSentence,
  slowSentence,
} from '../../../sim/say/limits.ts'
import { carefully, carefulTime, limitsCard } from '../../../sim/say/limitsCard.ts'
import { limitsLines } from '../../../sim/say/limitsReport.ts'
import type { Limits, LimitsStudy } from '../../../sim/studies/limits.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

const limits = (changes: Partial<Limits> = {}): Limits => ({
  allDay: { torque: 3.26, limit: 'winding', amps: 5.47, windingC: 120, frameC: 84, switchC: 98 },
  lowest: 31.4,
  cold: { seconds: 757, ends: 'class', frameC: 49.9 },
  amps: 7.99,
  again: { rest: 60, seconds: 84 },
  next: { run: 300, standing: 441, free: 544 },
  work: 85,
  rest: 640,
  cut: 0.674,
  frameC: 78.6,
  ...changes,
})
const study = (asGiven: Partial<Limits> = {}, careful: Partial<Limits> = asGiven): LimitsStudy => ({
  ok: true,
  phase: { name: 'milling', seconds: 300, speed: 36.65, cut: { kind: 'torque', torque: 5.8 }, surge: null },
  torque: 5.8,
  duty: { phases: [], seconds: 3600, startC: 20 },
  cycleRest: 60,
  slower: null,
  air: 20,
  asGiven: limits(asGiven),
  careful: limits(careful),
})
const plain = (text: string) => text.replaceAll('\u00a0', ' ')
const FOREVER: Partial<Limits> = { cold: null, again: null, next: null, work: 'any', rest: 'any', cut: 1.4 }

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

describe('the card', () => {
  const rows = (of: LimitsStudy, units = METRIC) =>
    Object.fromEntries(
      limitsCard('A mill', of, units).rows.map(({ name, value, about }) => [
        name,
        plain(`${value} | ${about}`),
      ]),
    )

  it('rounds work down and rest up, to steps a person keeps', () => {
    const down = (t: number) => plain(carefulTime(t, 'down'))
    const up = (t: number) => plain(carefulTime(t, 'up'))
    expect([44, 119, 131, 599, 601, 3700].map(down)).toEqual([
      '40 s',
      '1 min 50 s',
      '2 min',
      '9 min 30 s',
      '10 min',
      '1 h',
    ])
    expect([41, 111, 121, 541, 601, 3700].map(up)).toEqual([
      '45 s',
      '2 min',
      '2 min 30 s',
      '9 min 30 s',
      '11 min',
      '1 h 5 min',
    ])
    // What stands on a step stays there.
    expect([down(300), up(300), up(0.1 * 600)]).toEqual(['5 min', '5 min', '1 min'])
    expect(plain(carefully(5.47, 'current', US, 'down'))).toBe('5.4 A')
    expect(plain(carefully(5.4, 'current', US, 'down'))).toBe('5.4 A')
    expect(plain(carefully(36.1, 'angular speed', US, 'up'))).toBe('350 rpm')
    expect(plain(carefully(78.6, 'temperature', US, 'down'))).toBe('78 °C')
    expect(plain(carefully(78.6, 'temperature', FAHRENHEIT, 'down'))).toBe('173 °F')
    expect(plain(carefully(0, 'torque', METRIC, 'down'))).toBe('0.0 N·m')
  })

  it('holds every limit at its careful end, the lesser of both where either may be', () => {
    const of = study(
      {},
      {
        ...limits(),
        amps: 8.4,
        frameC: 74.3,
        work: 62,
        rest: 1237,
        next: { run: 199, standing: 410, free: 448 },
      },
    )
    expect(rows(of)).toEqual({
      'All day': '3.2 N·m at 350 rpm | up to 5.4 A in a motor lead',
      'This cut, from cold': '12 min | then let it cool',
      'On and off': '1 min on, 1 min off | or 5 min on, 21 min off',
      'Lowest speed': '300 rpm | slower, this cut is not for all day',
      'Cool down': '7 min standing | or 7 min 30 s running free; before another 3 min',
      'Stop at':
        '7.9 A or 49 °C | mean amps in a motor lead; frame in this cut, by a meter on the bare metal. Go by the clock, not by the hand',
    })
  })

  it('says so where there is no such limit', () => {
    expect(rows(study({ ...FOREVER, lowest: 0 }))).toMatchObject({
      'This cut, from cold': 'all day | ',
      'On and off': 'no rest needed | ',
      'Lowest speed': 'any | this cut can be held all day',
    })
    const none = rows(
      study({
        work: 'none',
        rest: 'none',
        lowest: null,
        frameC: null,
        next: { run: 60, standing: null, free: null },
      }),
    )
    expect(none['On and off']).toBe('not in this cycle | however short the cut')
    expect(none['Lowest speed']).toMatch(/^none /)
    expect(none['Cool down']).toBe('overnight | before another 1 min')
    // From cold the winding passes its class with the frame at 49.9 °C; where it never does, the all-day frame.
    expect(none['Stop at']).toContain('or 49 °C')
    const opens = study({ cold: { seconds: 757, ends: 'opens', frameC: 49.9 }, frameC: null })
    expect(rows(opens)['Stop at']).toContain('or 84 °C')
    expect(rows(study({ next: { run: 60, standing: null, free: 50 } }))['Cool down']).toMatch(
      /^50 s running free/,
    )
    expect(rows(study({ allDay: { ...limits().allDay, torque: 0 } }))['All day']).toMatch(/^nothing /)
  })
})

it('the report has a row for every limit, likely and careful', () => {
  const lines = limitsLines(
    'A mill',
    study({}, { cold: { seconds: 400, ends: 'class', frameC: 41 } }),
    US,
  ).map(plain)
  expect(lines.join('\n')).toMatch(/^ {2}Longest run from cold +12 min 40 s +6 min 40 s$/m)
  expect(lines.join('\n')).not.toMatch(/undefined|NaN|Infinity/)
  expect(limitsLines('A mill', study(FOREVER), US).join('\n')).toContain('all day')
})
