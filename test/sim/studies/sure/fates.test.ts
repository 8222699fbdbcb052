// What becomes of a sample: it lasts, or the first of what stops it and when, as a run of the job has it.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../../sim/identify/assume.ts'
import { read } from '../../../../sim/read.ts'
import { judge } from '../../../../sim/judge.ts'
import { finish, run } from '../../../../sim/run.ts'
import { sureOf, surePoints, sureSpec } from '../../../../sim/studies/sure.ts'
import type { Draft } from '../../../../sim/studies/sure/draft.ts'
import { sampled, type SurePoint } from '../../../../sim/studies/sure/sample.ts'
import { type Changes, demo, job, scenario } from '../../../jobs.ts'
import { near } from '../../physics/lab.ts'

const draftOf = (changes: Changes): Draft => {
  const reading = read(scenario(changes))
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return { fields: reading.fields, cuts: reading.cuts, assume: USUAL, scale: 0 }
}
const sampleOf = (draft: Draft) => {
  const point = finish(sampled(draft))
  if (!point.ok) throw new Error('no motor')
  return point
}
const fateOf = (changes: Changes) => sampleOf(draftOf(changes))

/** One step held for the whole job, without a cutoff. */
const held = (torque: string, lasts: string, more: Changes = {}): Changes => ({
  'duty.phases': [{ name: 'cut', speed: '350 rpm', torque, lasts }],
  'duty.repeatFor': lasts,
  'cutoff.fitted': 'none',
  ...more,
})
/** The same cut in so many turns that it is followed by turns. */
const inTurns = (torque: string, lasts: string): Changes => ({
  ...held(torque, lasts),
  'duty.phases': [
    { name: 'cut', speed: '350 rpm', torque, lasts: '50 s' },
    { name: 'rest', lasts: '10 s' },
  ],
})

describe('as a run of the job has it', () => {
  it('lasts', () => {
    const { fate, t, windingC } = fateOf(held('1 N·m', '10 min'))
    expect({ fate, t }).toEqual({ fate: 'lasts', t: null })
    const { trace } = finish(run(job(held('1 N·m', '10 min'))))
    near(windingC, trace.peaks.windingC.value, 1e-3)
  })

  it('lasts, with fewer amps to spare than a longer surge would want', () => {
    expect(fateOf(held('15 N·m', '5 s'))).toMatchObject({ fate: 'lasts', t: null })
  })

  it('stalls: a cut that the current limit does not hold', () => {
    const one = job(held('60 N·m', '1 min'))
    const { stalled } = judge(one, finish(run(one)).trace)
    expect(stalled).toBeLessThan(3)
    expect(fateOf(held('60 N·m', '1 min'))).toMatchObject({ fate: 'stalls', t: stalled })
  })

  it.each([
    ['in one go', held('4 N·m', '2 h')],
    ['by turns', inTurns('5 N·m', '2 h')],
  ])('gets too hot, without a cutoff, when its winding passes its class: %s', (_, changes) => {
    const { fate, t } = fateOf(changes)
    expect(fate).toBe('hot')
    const { trace } = finish(run(job(changes)))
    near(t!, trace.marks.find(({ kind }) => kind === 'class passed')!.t, 5e-3)
  })

  it.each([
    ['with amps to spare', held('14 N·m', '2 h', { 'controller.currentLimit': '40 A' })],
    ['at the current limit', held('60 N·m', '2 h')],
  ])('burns out when the winding burns: %s', (_, changes) => {
    const { fate, t } = fateOf(changes)
    const { trace } = finish(run(job(changes)))
    expect(trace.ending.kind).toBe('destroyed')
    expect(fate).toBe('burns')
    near(t!, trace.ending.kind === 'destroyed' ? trace.ending.t : Number.NaN, 5e-3)
  })

  it('is open from the start where it starts hotter than its cutoff opens, whatever the cut', () => {
    const hot = { 'duty.start': '130 °C', 'cutoff.fitted': 'self-reset' }
    for (const torque of ['1 N·m', '60 N·m']) {
      const { fate, t, windingC } = fateOf(held(torque, '10 min', hot))
      expect({ fate, t, windingC }).toEqual({ fate: 'opens', t: 0, windingC: 130 })
    }
  })

  it.each([
    ['held', held('1 N·m', '10 min')],
    ['beyond its amps', held('60 N·m', '1 min')],
  ])('numbers that break off are no answer, from then on: %s', (_, changes) => {
    const draft = draftOf(changes)
    const heat = { ...draft.fields.heat, air: Number.NaN }
    expect(sampleOf({ ...draft, fields: { ...draft.fields, heat } })).toMatchObject({
      fate: 'unfinished',
      t: 0,
    })
  })
})

describe('what its measurements would tell', () => {
  const whole = fateOf(held('1 N·m', '1 min', { 'cutoff.fitted': 'self-reset' })).tells
  it('amps, ohms and volts as logarithms, temperatures as they are', () => {
    near(Math.exp(whole.ohms[0]), 1.25, 1e-12)
    expect(whole.air).toEqual([25])
    expect(whole['opens at']).toEqual([120])
  })
  it('nothing of where a cutoff opens that is not there, and of what does not turn', () => {
    const bare = fateOf({
      ...held('1 N·m', '1 min'),
      'rotor.windage': '0 N·m·s/rad',
      'rotor.dryFriction': '0 N·m',
    })
    expect(Object.keys(whole).filter((name) => !(name in bare.tells))).toEqual(['running', 'opens at'])
  })
})

describe('readings that make no motor', () => {
  const saw = demo('bandSaw')
  const spec = sureSpec(saw, { samples: 3 })
  if (!('study' in spec)) throw new Error('refused')
  const good = (t: number | null): SurePoint => ({
    ok: true,
    fate: t === null ? 'lasts' : 'opens',
    t,
    windingC: 100,
    switchC: 90,
    tells: {},
    effort: 1,
  })

  it('one sample: it is left out and counted; all of them, or the readings as given: no study', () => {
    const none: SurePoint = { ok: false }
    expect(sureOf(spec, [good(60), good(60), none, good(120)])).toMatchObject({
      samples: 2,
      without: 1,
      t: { low: 60, high: 120 },
    })
    expect(sureOf(spec, [good(60), none, none, none])).toBeNull()
    expect(sureOf(spec, [none, good(60), good(60), good(60)])).toBeNull()
    expect(sureOf({ ...spec, scenario: { ...saw, plate: {} } }, [good(60), good(60)])).toBeNull()
  })

  it('a plate that holds together and whose sample does not', () => {
    const reading = read(saw)
    if (!reading.ok) throw new Error('refused')
    const { fields, cuts } = reading
    const plate = { ...fields.plate, amps: fields.plate.amps! / 4 }
    const draft: Draft = { fields: { ...fields, plate }, cuts, assume: USUAL, scale: 0 }
    expect(finish(sampled(draft))).toEqual({ ok: false })
    expect(finish(sampled({ ...draft, fields })).ok).toBe(true)
  })

  it('a variant is put in before it is asked', () => {
    const fanned = sureSpec(saw, { variant: { name: 'cool', changes: { 'heat.air': '5 °C' } } })
    expect('study' in fanned && fanned.scenario.heat!.air).toBe('5 °C')
  })

  it('where nothing ever fails nothing is named, and the bands are of the winding', () => {
    expect(sureOf(spec, [good(null), good(null), good(null)])).toMatchObject({
      fails: null,
      of: 'winding',
      t: { low: null, mid: null, high: null },
      windingC: { low: 100, high: 100 },
    })
  })

  it('a scenario that the reader refuses is refused, with its problems', () => {
    const refused = sureSpec(scenario({ 'supply.volts': '12 furlongs' }))
    expect('problems' in refused && refused.problems.map(({ path }) => path)).toEqual(['supply.volts'])
    const slipped = { ...spec, scenario: scenario({ 'supply.volts': '12 furlongs' }) }
    expect(sureOf(slipped, [good(60), good(60)])).toBeNull()
    // A study is of a scenario that was read: anything else is a bug of ours.
    expect(() => finish(surePoints.points(slipped, 0, 1))).toThrow('read before')
  })
})
