// From a symptom to its cause: practice cases, each with what a person who knows such drives would look at first (common
// practice, no source; the cases are those people meet, the jobs are ours).
import { describe, expect, it } from 'vitest'
import { find } from '../../../sim/advise/find.ts'
import { diagnose } from '../../../sim/advise/symptoms.ts'
import { CANDIDATES, type Cause } from '../../../sim/advise/symptoms/causes.ts'
import { type Symptom, SYMPTOMS, symptomOf } from '../../../sim/advise/symptoms/names.ts'
import { CAUSES, HANDS_OFF, SYMPTOM_WORDS, symptomLines, worthALine } from '../../../sim/say/symptoms.ts'
import type { Changes } from '../../jobs.ts'
import { caseOf, wellMade } from './cases.ts'

const SHORT = { 'duty.repeatFor': '26 min' }
const LUMPY = { 'supply.kind': 'phase control', 'supply.formFactor': null }
const SLIPPING = { 'belt.section': '3L', 'belt.carries': '9 N·m' }
/** A small motor that is held still with ten times its amps. */
const HELD = {
  'plate.mass': '2 kg',
  'controller.currentLimit': '60 A',
  'belt.machinePulley': '3 in',
  'duty.phases.2.torque': '40 N·m',
}

/** What is seen, in a person's words; the job; whether its load explains it; and what comes first. */
const PRACTICE: readonly (readonly [string, Changes, boolean, Cause])[] = [
  ['trips after 50 minutes', { 'heat.cooling': 'none', 'duty.repeatFor': '1 h' }, true, 'air'],
  ['trips after twenty minutes', SHORT, false, 'dust'],
  ['trips after half an hour, 30 min', { ...LUMPY, 'duty.repeatFor': '1 h' }, true, 'lumpy'],
  ['stalls at low speed', { ...SHORT, 'belt.machinePulley': '5 in' }, true, 'gearing'],
  ['stalls at low speed', SHORT, false, 'brushes'],
  ['bogs down in the cut', { ...SHORT, 'supply.volts': '36 V' }, true, 'volts'],
  ['bogs down in the cut', { ...SHORT, ...SLIPPING }, true, 'slip'],
  ['belt squeals', { ...SHORT, ...SLIPPING }, true, 'slip'],
  ['belt squeals', { ...SHORT, 'belt.section': 'A', 'belt.carries': '60 N·m' }, false, 'alignment'],
  ['blows the fuse', { ...SHORT, 'supply.breaker': '4 A' }, true, 'outlet'],
  ['blows the fuse', SHORT, false, 'device'],
  ['too hot to touch in a minute', SHORT, false, 'shorted'],
  ['too hot to touch in a minute', { ...SHORT, ...HELD }, true, 'work'],
  ['trips after 5 minutes', { ...SHORT, 'cutoff.leads': 'not connected' }, false, 'breaker'],
  ['trips', { ...SHORT, 'cutoff.leads': 'not connected', 'supply.breaker': '4 A' }, true, 'outlet'],
  ['hums and will not start', { ...SHORT, 'supply.kind': 'ac' }, true, 'ac'],
  ['hums and will not start', SHORT, false, 'jam'],
]

const diagnosed = (words: string, changes: Changes) => {
  const one = caseOf(wellMade('appleMill', changes))
  const { symptom, after } = symptomOf(words)!
  return diagnose(one, find(one), symptom, after)
}

describe.each(PRACTICE)('%s', (words, changes, explained, cause) => {
  it(`${explained ? 'the load' : 'a fault'}: ${cause}`, () => {
    const found = diagnosed(words, changes)
    expect(found.explained).toBe(explained)
    expect(found.suspects[0].cause).toBe(cause)
    expect(found.suspects.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
    const [, verdict, handsOff, firstLine] = symptomLines(found, { system: 'us', temperature: '°C' })
    expect(verdict).toContain(explained ? 'The load explains it:' : 'A fault, not the load:')
    expect(handsOff).toContain(HANDS_OFF)
    expect(firstLine).toContain(CAUSES[cause].test)
  })
})

it('too hot in a minute: the frame’s heat by hand, 5 kg of motor from 25 to 60 °C', () => {
  const { evidence } = diagnosed('too hot to touch in a minute', SHORT)
  // 0.75 × 400 J/(kg K) × 5 kg × 35 K in 60 s.
  expect(evidence.needed.value).toBeCloseTo((0.75 * 400 * 5 * 35) / 60, 6)
  expect(evidence.watts.value).toBeGreaterThan(50)
  expect(evidence.watts.value).toBeLessThan(250)
})

it('a belt that is not named is not blamed', () => {
  const { explained, suspects } = diagnosed('belt squeals', SHORT)
  expect(explained).toBeNull()
  expect(worthALine({ suspects } as never)[0].share).toBeLessThan(0.5)
})

it.each(SYMPTOMS)('%s is known by its own words, and every cause of it has a test', (symptom: Symptom) => {
  expect(symptomOf(SYMPTOM_WORDS[symptom])?.symptom).toBe(symptom)
  for (const { cause, weight } of CANDIDATES[symptom]) {
    expect(weight).toBeGreaterThan(0)
    expect(CAUSES[cause].test).toMatch(/\.$/)
  }
})

it.each([
  ['it trips after twenty minutes', 'trips', 1200],
  ['Cuts out after 90 s', 'trips', 90],
  ['the cutoff opens after 1.5 hours', 'trips', 5400],
  ['breaker goes', 'fuse', null],
  ['won’t start, hums', 'hums', null],
  ['smokes', 'burns', null],
] as const)('“%s”', (words, symptom, after) => {
  expect(symptomOf(words)).toEqual({ symptom, after })
})

it('a person’s own time is told back; with loose leads no cutoff is blamed', () => {
  const found = diagnosed('trips after 5 minutes', { ...SHORT, 'cutoff.leads': 'not connected' })
  const lines = symptomLines(found, { system: 'us', temperature: '°C' }).join('\n').replaceAll('\u00a0', ' ')
  expect(lines).toMatch(/^It trips after 5 min\n/)
  expect(lines).toContain('its cutoff stops nothing')
  expect(found.suspects.map(({ cause }) => cause)).not.toContain('switch')
  expect(diagnosed('trips after 5 minutes', SHORT).suspects.map(({ cause }) => cause)).toContain('switch')
})

it('a shock is never the load’s: off first, then the earth', () => {
  const found = diagnosed('I get a shock from the frame', SHORT)
  expect([found.symptom, found.explained, found.suspects[0].cause]).toEqual(['shocks', null, 'earth'])
  // √2 × 1.1 × 120 V = 186.7 V, by hand.
  expect(symptomLines(found, { system: 'us', temperature: '°C' })[1]).toMatch(/Switch off, unplug.* 187/)
})

it('words that name no symptom are none', () => {
  expect(symptomOf('it is a fine day')).toBeNull()
})
