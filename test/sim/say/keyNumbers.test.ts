// The five numbers and what limits, for the fates of a job.
import { describe, expect, it } from 'vitest'
import { keyNumbers, limitsOf } from '../../../sim/say/keyNumbers.ts'
import type { Units } from '../../../sim/say/units.ts'
import { job } from '../../jobs.ts'
import { type Fate, FATES, figuresOf } from './figures.ts'
import { FAHRENHEIT, US, visible } from './units.ts'

const mill = job()
const numbers = (fate: Fate, units: Units = US, given = mill) =>
  keyNumbers(given, figuresOf(fate), units).map(({ label, number, unit, note, bad }) =>
    visible(`${bad ? '! ' : ''}${label}: ${number}${unit && ` ${unit}`} (${note})`),
  )
const limits = (fate: Fate, given = mill) =>
  limitsOf(given, figuresOf(fate), US).map(({ name, limits: bad, why }) =>
    visible(`${bad ? '! ' : ''}${name}: ${why}`),
  )

describe('five numbers', () => {
  it('of a job that goes well', () => {
    expect(numbers('fine')).toEqual([
      'Cutoff opens at: never (gets to 90~°C, 30~°C short of opening)',
      'Running time you get: 100~% (of what the job asks)',
      'Hottest winding: 101 °C (class B limit 120~°C)',
      'Slowest in the cut: 325 rpm (7~% under the 350 asked)',
      'Average current, milling: 8.6 A (peaks at 12.3~A; plate 13.0~A)',
    ])
  })
  it('of one that the cutoff stops', () => {
    expect(numbers('opens').slice(0, 2)).toEqual([
      '! Cutoff opens at: 23~min 40~s (3 times in the job)',
      '! Stays open for: 16~min 50~s (then the machine restarts; you get 35~% of the running time)',
    ])
    expect(numbers('opens once and stays').slice(0, 2)).toEqual([
      '! Cutoff opens at: 2~h 42~min (once in the job)',
      '! Stays open: to the end (you get 90~% of the running time)',
    ])
    expect(numbers('opens once and stays', US, job({ 'cutoff.fitted': 'manual reset' }))[1]).toContain(
      'until it is reset',
    )
  })
  it('of one without a cutoff, without a speed, without a plate', () => {
    expect(numbers('fine, no cutoff', US, job({ 'cutoff.fitted': 'none' }))[0]).toBe(
      '! Cutoff opens at: none fitted (nothing stops the heat)',
    )
    const never = keyNumbers(mill, { ...figuresOf('stalled'), slowest: null }, US)[3]
    expect(never).toMatchObject({ number: '—', note: 'it never gets to its speed', bad: true })
    expect(numbers('fine', US, job({ 'plate.amps': null }))[4]).toContain('; limit 18.0~A')
  })
  it('marks what is over its limit', () => {
    expect(numbers('too hot')[2]).toBe('! Hottest winding: 173 °C (class B limit 120~°C)')
    expect(numbers('slow')[3]).toMatch(/^! Slowest in the cut: 261 rpm/)
    expect(numbers('stalled at the limit')[4]).toMatch(/^! Average current, milling/)
  })
  it('in °F', () => {
    expect(numbers('fine', FAHRENHEIT)[0]).toBe(
      'Cutoff opens at: never (gets to 194~°F, 54~°F short of opening)',
    )
  })
})

describe('what limits', () => {
  it('is nothing where all goes well, each with why not', () => {
    expect(limits('fine')).toEqual([
      'heat: cool enough',
      'speed: it holds its speed',
      'current: under the controller’s limit',
      'outlet: about 5.7~A on average of 15.0~A at the outlet',
    ])
  })
  it('is each of the four, with why', () => {
    expect(limits('opens')[0]).toBe('! heat: the cutoff opens')
    expect(limits('too hot')[0]).toBe('! heat: the winding passes its class limit')
    expect(limits('destroyed')[0]).toMatch(/^! heat/)
    expect(limits('slow')[1]).toBe('! speed: it sags more than you accept')
    expect(limits('stalled')[1]).toBe('! speed: the spindle stops')
    expect(limits('stalled at the limit')[2]).toBe('! current: 40~s at the limit of 18.0~A')
    expect(limits('fine', job({ 'supply.breaker': '5 A' }))[3]).toBe(
      '! outlet: about 5.7~A on average of 5.0~A at the outlet',
    )
    expect(limits('fine', job({ 'supply.kind': 'battery' }))[3]).toContain('from the battery')
  })
})

it('a belt limits where it slips; one that nobody named is not spoken of', () => {
  const vee = job({ 'belt.section': 'A' })
  const of = (slipSeconds: number) =>
    limitsOf(vee, { ...figuresOf('fine'), slipSeconds }, US).find(({ name }) => name === 'belt')
  expect(of(0)).toEqual({ name: 'belt', limits: false, why: 'it does not slip' })
  expect(of(0.1)?.limits).toBe(false)
  expect(visible(of(12)!.why)).toBe('it slips, 12~s in all')
  expect(of(12)?.limits).toBe(true)
  expect(limits('fine').join()).not.toContain('belt')
})

it('every fate has five numbers and four limits, and words for them all', () => {
  for (const fate of Object.keys(FATES) as Fate[]) {
    expect(numbers(fate)).toHaveLength(5)
    expect(limits(fate)).toHaveLength(4)
    expect([...numbers(fate), ...limits(fate)].join('\n')).not.toMatch(/undefined|NaN|Infinity|null/)
  }
})
