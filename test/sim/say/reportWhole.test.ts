// The report with everything in it: how sure, what the work asks, what to do, a second method; each only where there is such.
import { describe, expect, it } from 'vitest'
import { crossCheck } from '../../../sim/crossCheck.ts'
import { judge } from '../../../sim/judge.ts'
import { finish } from '../../../sim/run.ts'
import { jobReport } from '../../../sim/say/report.ts'
import { limitsOf } from '../../../sim/say/keyNumbers.ts'
import { stationRows } from '../../../sim/say/stations.ts'
import { type Changes, job, traceOf } from '../../jobs.ts'
import { figuresOf } from './figures.ts'
import { LASTS } from './sure/sures.ts'
import { US, visible } from './units.ts'

const given = job({ 'duty.repeatFor': '10 min' })
const trace = traceOf(given)
const figures = judge(given, trace)
const report = (more: Partial<Parameters<typeof jobReport>[1]>) =>
  visible(jobReport('The mill', { job: given, trace, figures, notes: [], check: null, ...more }, US))

describe('each part under its head, and not where there is none', () => {
  const bare = report({})
  it.each<[string, Partial<Parameters<typeof jobReport>[1]>, string]>([
    ['how sure', { sure: LASTS }, '\n\nHow sure\n  It lasts in at least 9 of 10 likely cases.'],
    ['advice', { advice: ['  Fit a fan.'] }, '\n\nWhat to do about it\n  Fit a fan.\n'],
    [
      'a second method',
      { check: finish(crossCheck(given, { until: 20 })) },
      '\n\nSecond method\n  An unrelated method, over the first 20~s',
    ],
  ])('%s', (_, more, words) => {
    expect(report(more)).toContain(words)
    expect(bare).not.toContain(words.trim().split('\n')[0])
  })
  it('with the samples told, the figures stand under what they rest on; a blank line stays blank', () => {
    const text = report({ sure: LASTS })
    expect(text).toContain('\n\nWith the values as given\n')
    expect(bare).not.toContain('With the values as given')
    expect(text).toContain('.\n\n  Forty equally likely outcomes: ')
    expect(text).not.toMatch(/[ \t]\n/)
  })
})

it('of a job that takes nothing no share of it is told, and without a cutoff none of its switch', () => {
  const rest = job({
    'duty.phases': [{ name: 'rest', lasts: '1 min' }],
    'duty.repeatFor': '1 min',
    'cutoff.fitted': 'none',
  })
  const still = traceOf(rest)
  const text = visible(
    jobReport('x', { job: rest, trace: still, figures: judge(rest, still), notes: [], check: null }, US),
  )
  expect(text).toMatch(/of that, the cut +—/)
  expect(text).not.toContain('Hottest cutoff switch')
  expect(text).not.toMatch(/NaN|undefined|Infinity/)
})

it('a load near its breaker is told what long ones are held to', () => {
  const why = (outletAmps: number, changes: Changes = {}) =>
    visible(
      limitsOf(job(changes), { ...figuresOf('fine'), outletAmps }, US).find(({ name }) => name === 'outlet')!
        .why,
    )
  expect(why(13)).toBe('about 13.0~A on average of 15.0~A at the outlet; long loads are held to 80 %')
  expect(why(11)).toBe('about 11.0~A on average of 15.0~A at the outlet')
  expect(why(16)).toBe('about 16.0~A on average of 15.0~A at the outlet')
  expect(why(11, { 'supply.kind': 'battery' })).toContain('from the battery')
})

it('the supply’s rows say how speed is held, with its share only where there is one', () => {
  const held = (changes: Changes) => {
    const one = job(changes)
    const rows = stationRows('supply', one, US)
    return rows.find(({ label }) => label === 'Holds speed by')?.value.replaceAll('\u00a0', '~')
  }
  expect(held({})).toMatch(/, 80~%$/)
  expect(held({ 'controller.holds': 'speed feedback' })).not.toMatch(/%/)
})
