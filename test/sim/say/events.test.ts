// What happened when, a line each.
import { describe, expect, it } from 'vitest'
import { eventLines, markWords } from '../../../sim/say/events.ts'
import type { Ending, Mark } from '../../../sim/trace.ts'
import { job } from '../../jobs.ts'
import { FAHRENHEIT, US, visible } from './units.ts'

const mill = job()
/** 350 rpm at the spindle, at the motor: 4 : 1. */
const asked = (350 * 4 * Math.PI) / 30
const marks = {
  opens: { kind: 'opens', t: 1417, phase: 2 },
  recloses: { kind: 'recloses', t: 2430, phase: 1 },
  limited: { kind: 'limit reached', t: 100, until: 103.2 },
  slow: { kind: 'speed not reached', t: 200, until: 203, lowest: 0.745 * asked, asked },
  stalled: { kind: 'stalled', t: 300, until: 302 },
  slips: { kind: 'belt slips', t: 400, until: 404.2, worst: 0.31 },
  hot: { kind: 'class passed', t: 1770, limitC: 120 },
} satisfies Record<string, Mark>

it.each([
  [marks.opens, 'cutoff opens, during milling'],
  [marks.recloses, 'cutoff recloses, during rest'],
  [marks.limited, 'current limit reached, for 3~s'],
  [marks.slow, 'speed not held: down to 261~rpm of 350~rpm asked'],
  [marks.stalled, 'spindle stalled, for 2~s'],
  [marks.slips, 'belt slips, 31~% at the worst, for 4~s'],
  [marks.hot, 'winding passes its class limit of 120~°C'],
] as const)('$kind', (mark, words) => {
  expect(visible(markWords(mark, mill, US))).toBe(words)
})

it('a limit passed is told in °F where that is chosen', () => {
  expect(visible(markWords(marks.hot, mill, FAHRENHEIT))).toBe('winding passes its class limit of 248~°F')
})
it('a moment is told as the moment it was, not as 0 s', () => {
  expect(visible(markWords({ kind: 'limit reached', t: 30, until: 30.006 }, mill, US))).toContain(
    'for 0.006~s',
  )
})
it('a step without a name is told by its number', () => {
  expect(markWords(marks.opens, job({ 'duty.phases.2.name': '' }), US)).toBe('cutoff opens, during step 3')
})

describe('lines', () => {
  const lines = (given: readonly Mark[], ending: Ending = { kind: 'finished' }, reached = 10800) =>
    eventLines(mill, given, ending, reached, US).map(({ time, words }) => visible(`${time} ${words}`))

  it('come in order and end with how it ended', () => {
    expect(lines([marks.limited, marks.opens, marks.hot, marks.recloses])).toEqual([
      '1:40 current limit reached, for 3~s',
      '23:40 cutoff opens, during milling',
      '29:30 winding passes its class limit of 120~°C',
      '40:30 cutoff recloses, during rest',
      '3:00:00 end of the job',
    ])
  })
  it('of what comes by the hundred are one: the first time, the worst, and how many', () => {
    const many = Array.from(
      { length: 143 },
      (_, n): Mark => ({
        ...marks.slow,
        t: 200 + n,
        lowest: (n === 70 ? 0.5 : 0.745) * asked,
      }),
    )
    expect(lines([...many, { ...marks.limited, t: 500, until: 530 }, marks.limited])).toEqual([
      '3:20 speed not held: down to 175~rpm of 350~rpm asked (the worst of 143 times, at 4:30)',
      '8:20 current limit reached, for 30~s (the worst of 2 times, at 8:20)',
      '3:00:00 end of the job',
    ])
  })
  it('of two that last, the longer is the worst, whichever comes first', () => {
    const long = { ...marks.stalled, t: 600, until: 640 }
    for (const both of [
      [marks.stalled, long],
      [long, marks.stalled],
    ])
      expect(lines(both)[0]).toMatch(/ spindle stalled, for 40~s \(the worst of 2 times, at 10:00\)$/)
  })
  it('of openings are each told', () => {
    expect(lines([marks.opens, marks.recloses, { ...marks.opens, t: 5000 }])).toHaveLength(4)
  })
  it.each<[Ending, string]>([
    [{ kind: 'finished' }, '20:30 end of the job'],
    [{ kind: 'destroyed', t: 1234 }, '20:30 the winding burns out'],
    [{ kind: 'too many steps', t: 1234 }, '20:30 stopped: too many steps'],
    [{ kind: 'not finite', t: 1234 }, '20:30 stopped: the numbers ran away'],
    [{ kind: 'step too small', t: 1234 }, '20:30 stopped: no step was small enough'],
    [{ kind: 'abandoned', t: 1234 }, '20:30 stopped when asked'],
  ])('end with %j', (ending, line) => {
    expect(lines([], ending, 1234)).toEqual([line])
  })
})
