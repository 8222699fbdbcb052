// Findings on jobs that say little, or go about it otherwise: what is not known is left out, and the sentence stays whole.
import { describe, expect, it } from 'vitest'
import { lessReduction, tooSmall } from '../../../sim/advise/afterwards.ts'
import type { Case } from '../../../sim/advise/case.ts'
import { doubt } from '../../../sim/advise/doubt.ts'
import type { Draft, Finding, FindingName } from '../../../sim/advise/finding.ts'
import type { Outcome } from '../../../sim/advise/outcome.ts'
import { finish } from '../../../sim/run.ts'
import { findingWords } from '../../../sim/say/advice.ts'
import { METRIC } from '../say/units.ts'
import type { Changes } from '../../jobs.ts'
import { caseOf, drafts, wellMade } from './cases.ts'

const SHORT = { 'duty.repeatFor': '26 min' }
const job = (changes: Changes) => wellMade('appleMill', { ...SHORT, ...changes })
const asFinding = (draft: Draft): Finding => ({ ...draft, cures: [], after: null })
const told = (draft: Draft, one: Case) => {
  const { headline, text, figure, note, leads } = findingWords(asFinding(draft), one, METRIC)
  const plain = (each: string) => each.replaceAll('\u00a0', ' ').replaceAll('\u202f', '')
  expect([headline, text, figure, note].join('\n')).not.toMatch(/NaN|undefined|Infinity| {2}| \.|,,/)
  return {
    headline,
    text: plain(text),
    figure: plain(figure),
    note: plain(note),
    leads,
    severity: draft.severity,
  }
}
/** The finding of this name, in words. */
const said = (name: FindingName, changes: Changes) => {
  const scenario = job(changes)
  const draft = drafts(scenario).find((each) => each.name === name)
  if (!draft) throw new Error(`there is no ${name}`)
  return told(draft, caseOf(scenario))
}
/** The case with what its run came to changed. */
const but = (changes: Changes, now: Partial<Outcome>): Case => {
  const one = caseOf(job(changes))
  const whole = { ...one.now, ...now }
  return { ...one, now: whole, has: (...faults) => faults.some((fault) => whole.faults.includes(fault)) }
}

describe('a plate without its speed', () => {
  const bare = { 'plate.speed': null }
  it('says nothing of running away on a bridge or too many volts, and only brushes judge the speed', () => {
    expect(said('bareBridge', { 'supply.kind': 'bare bridge' }).text).toContain('its plate says 4000 rpm')
    const bridge = said('bareBridge', { ...bare, 'supply.kind': 'bare bridge' })
    expect(bridge.text).not.toContain('plate')
    expect(bridge.severity).toBe('short')
    const volts = said('overVolts', { ...bare, 'supply.volts': '145 V' })
    expect(volts.text).not.toContain('and the plate says')
    expect(volts.severity).toBe('short')
  })
  it('turned faster than brushes stand is told so', () => {
    const fast = { 'belt.machinePulley': '80 in', 'belt.centreDistance': null }
    const { text, note, severity } = said('overspeeds', { ...bare, ...fast })
    expect(text).toContain('and brushes stand about 10 000 rpm: windings lift')
    expect(note).toBe('at the motor')
    expect(severity).toBe('danger')
    expect(said('overspeeds', fast).note).toBe('plate 4000 rpm')
  })
})

describe('outlet and earth', () => {
  it('over its breaker, or only over what long loads are held to', () => {
    expect(said('socket', { 'supply.breaker': '2 A' }).headline).toBe(
      'Take less from the outlet: its breaker opens.',
    )
    expect(said('socket', { 'supply.breaker': '6 A' }).headline).toBe('Take less from the outlet.')
  })
  it('a battery has no plug and no earth pin', () => {
    const { text, note } = said('earthUnknown', { 'supply.kind': 'battery', 'supply.volts': '96 V' })
    expect(text).toMatch(
      /^Leads off the battery’s posts: from the bare frame, .* to one another, 1(\.0+)? Ω at most/,
    )
    expect(note).toBe('at most, frame to case')
  })
})

describe('the belt', () => {
  it('that no tension holds wants grip by its pulleys, with what the bearings bear already', () => {
    const slack = { 'belt.section': '3L', 'belt.carries': '9 N·m', 'duty.phases.2.torque': '60 N·m' }
    const { headline, text } = said('slips', { ...slack, 'controller.currentLimit': '80 A' })
    expect(headline).toBe('Give the belt more grip by its pulleys.')
    expect(text).toMatch(
      /Do not just tighten it: that kills bearings, which bear [\d.]+ N of belt pull already\. More wrap/,
    )
    expect(said('slips', { 'belt.section': '3L', 'belt.carries': '9 N·m' }).headline).toBe(
      'Tighten the belt.',
    )
  })
  it('whose pulleys touch is told in lengths, one too far round in degrees', () => {
    expect(said('beltLimit', { 'belt.centreDistance': '5 in' })).toMatchObject({
      headline: 'Make room for the pulleys.',
      figure: expect.stringMatching(/^127 mm$/),
    })
    expect(said('beltLimit', { 'belt.centreDistance': '7 in' }).note).toBe('limit 120°')
  })
})

describe('a cutoff', () => {
  const none = { 'cutoff.fitted': 'none' }
  it('that is missing: what the current limit lets pass, where the plate prints amps', () => {
    expect(said('noCutoff', none).text).toContain('times the plate’s copper heat')
    expect(said('noCutoff', { ...none, 'plate.amps': null }).text).toContain(
      'Neither the current limit nor a fuse knows how hot it is.',
    )
  })
  it('that is missing where the winding burns out', () => {
    const draft = drafts(job(none)).find(({ name }) => name === 'noCutoff')!
    const burnt = but(none, { faults: ['destroyed', 'hot'] })
    expect(told(draft, burnt).text).toContain('In this job it burns out.')
  })
})

describe('a motor that nothing helps', () => {
  const weak = (changes: Changes) => {
    const one = but(changes, { faults: ['hot'] })
    return told(tooSmall(one)!, one)
  }
  it('beside what its plate gives all day, or its peak, or nothing where it prints neither', () => {
    expect(weak({}).text).toMatch(/, and the plate gives 746 W all day\. Whoever/)
    expect(weak({ 'plate.continuousPower': null }).text).toMatch(
      /, and the plate says 1190 W, likely a peak\. Whoever/,
    )
    const neither = weak({ 'plate.continuousPower': null, 'plate.power': null })
    expect(neither.text).toMatch(/ while it cuts\. Whoever/)
    expect(neither.note).toBe('asked')
  })
  it('is not told of one that does its job', () => {
    expect(tooSmall(but({}, { faults: [] }))).toBeNull()
  })
})

it('a bench that disagrees with its plate is a reading to check, at its own field', () => {
  const scenario = job({ bench: { ohms: ['2.2 Ω', '2.2 Ω'] } })
  const draft = drafts(scenario).find(
    ({ name, quotes }) => name === 'plate' && quotes[0].startsWith('bench'),
  )!
  const { headline, text, leads } = told(draft, caseOf(scenario))
  expect(headline).toBe('Check the bench reading.')
  expect(text).not.toContain('a fuse is neither')
  expect(leads).toMatchObject({ label: 'Go to the field', path: expect.stringMatching(/^bench\./) })
})

describe('half the reduction, run to show its price', () => {
  const hot = but({}, { faults: ['opens'], firstOpening: 1200, workAmps: 8 })
  const price = (one: Case, then: Partial<Outcome> | null) =>
    finish(
      lessReduction(one, {
        runs: () => 0,
        // biome-ignore lint/correctness/useYield: nothing is run.
        *run() {
          return then && { ...one.now, ...then }
        },
      }),
    )
  it('opens sooner, where the job opens now or never did', () => {
    expect(told(price(hot, { firstOpening: 600, workAmps: 16 })!, hot)).toMatchObject({
      figure: '10 min',
      note: 'to opening, was 20 min',
      text: expect.stringContaining('16.0 A instead of 8.0 A: 4 times the copper heat'),
    })
    const warm = but({}, { faults: ['hot'], firstOpening: null })
    expect(told(price(warm, { firstOpening: 600 })!, warm).note).toBe('to opening, now never')
  })
  it('or stalls; nothing is told where it is no worse, makes no job, or all is well', () => {
    const stalls = told(price(hot, { faults: ['opens', 'stalls'], stalled: 100, firstOpening: 1200 })!, hot)
    expect(stalls.text).toContain('The spindle would stop at 1:40.')
    expect(price(hot, { faults: ['opens'], firstOpening: 1300 })).toBeNull()
    expect(price(hot, null)).toBeNull()
    expect(price(but({}, { faults: [] }), { firstOpening: 600 })).toBeNull()
  })
})

describe('what to measure', () => {
  /** The guess that decides, were the job so hot with its low and its high end. */
  const decides = (
    one: Case,
    ends: (changes: Readonly<Record<string, unknown>>) => Partial<Outcome> | null,
  ) =>
    finish(
      doubt(one, {
        runs: () => 0,
        // biome-ignore lint/correctness/useYield: nothing is run.
        *run(changes) {
          const then = ends(changes)
          return then && { ...one.now, ...then }
        },
      }),
    )
  const near = (changes: Changes = {}) => but(changes, { faults: [], hottestWindingC: 110 })
  const ofCut = (changes: Readonly<Record<string, unknown>>) =>
    Object.keys(changes).some((path) => path.endsWith('torque'))
  const high = (changes: Readonly<Record<string, unknown>>) =>
    /^[\d.]+/.exec(String(Object.values(changes)[0]))![0]

  it('the cut’s current, where the cut decides; its reading goes to the step', () => {
    const one = near()
    const cut = one.job.duty.phases[one.work.phase].cut
    const torque = cut.kind === 'torque' ? cut.torque : 0
    const draft = decides(one, (changes) =>
      ofCut(changes)
        ? Number(high(changes)) > torque
          ? { hottestWindingC: 140, faults: ['opens'], firstOpening: 900 }
          : { hottestWindingC: 90, faults: [] }
        : { hottestWindingC: 110, faults: [] },
    )!
    const { headline, text, figure, leads } = told(draft, one)
    expect(headline).toBe('Read the current in the cut.')
    expect(text).toMatch(/On a motor lead: [\d.]+ A expected there, and [\d.]+ A at the outlet/)
    expect(figure).toBe('90 to 140 °C')
    expect(leads).toMatchObject({ path: `duty.phases.${one.work.phase}.torque` })
    expect(draft.evidence.opens.value).toBe(900)
  })

  it('nothing where no end changes the answer, where neither end makes a job, or far from the class limit', () => {
    expect(decides(near(), () => ({ hottestWindingC: 100, faults: [] }))).toBeNull()
    expect(decides(near(), () => null)).toBeNull()
    expect(decides(but({}, { hottestWindingC: 60 }), () => ({ faults: ['opens'] }))).toBeNull()
  })

  it('ohms that were measured are asked no more, and a cut given as power is none', () => {
    const asked: string[] = []
    const note = (changes: Readonly<Record<string, unknown>>) => {
      asked.push(Object.keys(changes)[0])
      return { faults: [] }
    }
    decides(near(), note)
    expect(asked).toContain('winding.resistance')
    expect(asked).toContain('duty.phases.2.torque')
    asked.length = 0
    const step = { name: 'milling', lasts: '5 min', speed: '350 rpm', power: '150 W' }
    decides(near({ bench: { ohms: ['1.25 Ω'] }, 'duty.phases.2': step }), note)
    expect(asked).not.toContain('winding.resistance')
    expect(asked.some((path) => path.endsWith('torque'))).toBe(false)
  })
})
