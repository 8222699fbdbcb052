// Work and rest on a card and in the report: each limit rounded to the careful side, or said that there is none.
import { describe, expect, it } from 'vitest'
import { carefully, carefulTime, limitsCard } from '../../../sim/say/limitsCard.ts'
import { limitRows, limitsLines } from '../../../sim/say/limitsReport.ts'
import type { Limits, LimitsStudy } from '../../../sim/studies/limits.ts'
import { FOREVER, limits, plain, study } from './limitsMade.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

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
    expect(rows(study({ next: { run: 60, standing: 50, free: null } }))['Cool down']).toBe(
      '50 s standing | before another 1 min',
    )
    expect(rows(study({ allDay: { ...limits().allDay, torque: 0 } }))['All day']).toMatch(/^nothing /)
  })
})

describe('on and off', () => {
  const turns = (changes: Partial<Limits>, more: Partial<LimitsStudy> = {}) => {
    const { rows } = limitsCard('A mill', { ...study(changes), ...more }, METRIC)
    const { value, about } = rows.find(({ name }) => name === 'On and off')!
    return plain(`${value} | ${about}`)
  }
  const step = study().phase
  const steps = [{ ...step, name: 'loading' }, step, { ...step, speed: 0 }]
  const among = { duty: { ...study().duty, phases: steps } }

  it('names the other steps that run, wherever there is a turn', () => {
    expect(turns({}, among)).toBe(
      '1 min 20 s on, 1 min off | or 5 min on, 11 min off; the job’s other steps between',
    )
    expect(turns({ work: 'none' }, among)).toBe('5 min on, 11 min off | the job’s other steps between')
    expect(turns({ work: 'none' })).toBe('5 min on, 11 min off | ')
    expect(turns({ rest: 'none' })).toBe('1 min 20 s on, 1 min off | ')
  })

  it('a job without a rest of its own has only the one its work needs', () => {
    expect(turns({}, { cycleRest: 0 })).toBe('5 min on, 11 min off | ')
  })

  it('where the job’s own turn lasts and a run from cold does not, it is the job’s', () => {
    expect(turns({ work: 'any', rest: 'any' })).toBe('as in the job | ')
    expect(turns({ work: 'any', rest: 'none' })).toBe('as in the job | ')
  })
})

describe('the report’s rows where there is no such limit', () => {
  const rows = (asGiven: Partial<Limits>, careful: Partial<Limits>) =>
    limitRows(study(asGiven, careful), METRIC).map((row) => plain(row.join(' | ')))
  it('nothing limits at the careful end', () => {
    expect(rows({}, { ...FOREVER, lowest: 0 })).toEqual([
      'All-day torque at this speed | 3.3 N·m | 3.3 N·m',
      'Amps at that | 5.5 A | 5.5 A',
      'Lowest speed for this cut all day | 300 rpm | any',
      'Longest run from cold | 12 min 40 s | all day',
      'Again after 1 min | 1 min 20 s | all day',
      'A next run of | 5 min | all day',
      'needs standing | 7 min 20 s | nothing',
      'or running free | 9 min | nothing',
      'Longest work in the cycle | 1 min 30 s | any',
      'Shortest rest in the cycle | 10 min 40 s | none needed',
      'Biggest cut in the cycle | 67 % of this | 140 % of this',
      'Hottest frame at that | 79 °C | 79 °C',
    ])
  })
  it('nothing lasts at the careful end', () => {
    const none = { work: 'none', rest: 'none', cut: 'none', lowest: null, frameC: null } as const
    const next = { run: 300, standing: null, free: null }
    expect(rows({ cut: 'any' }, { ...none, next }).slice(2)).toEqual([
      'Lowest speed for this cut all day | 300 rpm | none',
      'Longest run from cold | 12 min 40 s | 12 min 40 s',
      'Again after 1 min | 1 min 20 s | 1 min 20 s',
      'A next run of | 5 min | 5 min',
      'needs standing | 7 min 20 s | a night is not enough',
      'or running free | 9 min | a night is not enough',
      'Longest work in the cycle | 1 min 30 s | none',
      'Shortest rest in the cycle | 10 min 40 s | none is enough',
      'Biggest cut in the cycle | any | none',
      'Hottest frame at that | 79 °C | —',
    ])
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
