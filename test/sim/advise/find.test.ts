// Each finding: a job that has it, and one nearly like it that has not. Well-made drives have none that is severe.
import { describe, expect, it } from 'vitest'
import { FAULTS } from '../../../sim/advise/outcome.ts'
import { type FindingName, isPerilous, isSevere, SEVERITIES } from '../../../sim/advise/finding.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import type { Changes, Demo } from '../../jobs.ts'
import { findingWords } from '../../../sim/say/advice.ts'
import { caseOf, drafts, everyWellMade, named, wellMade } from './cases.ts'

/** A short apple mill with its fan: three turns and a little. */
const SHORT = { 'duty.repeatFor': '26 min' }

/** A flywheel of 250 mm geared so that its rim is too fast in normal work: 3 500 rpm × 125 mm = 45.8 m/s. */
const FAST_RIM = {
  'rotor.flywheel': '0.006 kg·m²',
  'bench.flywheelDiameter': '250 mm',
  'belt.machinePulley': '25 in',
}
const GRINDER = { 'machine.kind': 'grinder' }
const BELT_GRINDING = {
  name: 'grinding',
  lasts: '5 min',
  cut: { kind: 'beltGrinding', width: '50 mm', diameter: '100 mm', speed: '10 m/s' },
}

/** Name, what brings it about, and a near miss; on the apple mill with its fan unless said. */
const PAIRS: readonly (readonly [FindingName, Changes, Changes, Demo?])[] = [
  ['noEarth', { 'supply.earth': 'no' }, { 'supply.earth': 'yes' }],
  [
    'noEarth',
    { 'supply.earth': 'no', 'supply.kind': 'battery', 'supply.volts': '96 V' },
    { 'supply.earth': 'no', 'supply.kind': 'battery', 'supply.volts': '48 V' },
  ],
  ['earthUnknown', {}, { 'supply.earth': 'yes' }],
  ['ac', { 'supply.kind': 'ac' }, { 'supply.kind': 'pwm' }],
  ['bareBridge', { 'supply.kind': 'bare bridge' }, { 'supply.kind': 'phase control with choke' }],
  ['underVolts', { 'supply.volts': '36 V' }, { 'supply.volts': '60 V' }],
  ['overVolts', { 'supply.volts': '145 V' }, { 'supply.volts': '130 V' }],
  [
    'lumpy',
    { 'supply.kind': 'phase control', 'supply.formFactor': null },
    { 'supply.kind': 'phase control with choke', 'supply.formFactor': null },
  ],
  ['socket', { 'supply.breaker': '6 A' }, { 'supply.breaker': '8 A' }],
  [
    'weakSupply',
    { 'controller.currentLimit': '12 A', 'supply.breaker': '8 A' },
    { 'controller.currentLimit': '12 A', 'supply.breaker': '12 A' },
  ],
  ['bigBreaker', { 'supply.breaker': '100 A' }, { 'supply.breaker': '30 A' }],
  ['hunts', { 'controller.compensation': '95 %' }, { 'controller.compensation': '85 %' }],
  ['limitHigh', { 'controller.currentLimit': '33 A' }, { 'controller.currentLimit': '32 A' }],
  ['limited', { 'controller.currentLimit': '12 A' }, { 'controller.currentLimit': '16 A' }],
  ['notConnected', { 'cutoff.leads': 'not connected' }, { 'cutoff.leads': 'control circuit' }],
  ['noCutoff', { 'cutoff.fitted': 'none' }, { 'cutoff.leads': 'not connected' }],
  ['motorLead', { 'cutoff.leads': 'motor lead' }, { 'cutoff.leads': 'motor lead', 'cutoff.fitted': 'none' }],
  [
    'enableOnly',
    { 'cutoff.leads': 'control circuit' },
    { 'cutoff.leads': 'control circuit', 'cutoff.fitted': 'none' },
  ],
  [
    'restarts',
    { 'cutoff.opensAt': '50 °C', 'cutoff.reclosesAt': '45 °C' },
    { 'cutoff.opensAt': '50 °C', 'cutoff.reclosesAt': '45 °C', 'cutoff.leads': 'no-volt release' },
  ],
  [
    'lateCutoff',
    { 'heat.cooling': 'none' },
    { 'heat.cooling': 'none', 'cutoff.opensAt': '70 °C', 'cutoff.reclosesAt': '60 °C' },
  ],
  ['fanMissing', { 'heat.cooling': 'none' }, { 'heat.cooling': 'blower' }],
  ['fanUseless', { 'heat.air': '65 °C' }, { 'heat.air': '25 °C' }],
  [
    'enclosed',
    { 'belt.jackshaftLarge': '7 in', 'belt.machinePulley': '10 in', 'duty.repeatFor': '40 min' },
    { 'duty.repeatFor': '40 min' },
    'bandSaw',
  ],
  ['dirty', { 'heat.airPath': '60 %' }, { 'heat.airPath': '90 %' }],
  ['peak', { 'heat.cooling': 'none', 'plate.continuousPower': '0.5 hp' }, { 'heat.cooling': 'none' }],
  ['touch', { 'duty.repeatFor': '2 h' }, { 'heat.cooling': 'blower' }],
  ['range', { 'belt.machinePulley': '5 in' }, { 'heat.cooling': 'blower' }],
  ['horsepower', { 'plate.speed': '9000 rpm', 'plate.mass': '3 kg' }, { 'belt.machinePulley': '5 in' }],
  ['overspeeds', { 'plate.speed': '1200 rpm' }, { 'plate.speed': '1300 rpm' }],
  // Limit 33 m/s: at 1 400 rpm a rim of 450 mm runs 32.99 m/s, one of 451 mm 33.06 m/s, by hand.
  [
    'flywheelRim',
    { 'rotor.flywheel': '0.006 kg·m²', 'bench.flywheelDiameter': '451 mm' },
    { 'rotor.flywheel': '0.006 kg·m²', 'bench.flywheelDiameter': '450 mm' },
  ],
  ['wheelUnknown', GRINDER, { ...GRINDER, 'machine.wheelSpeed': '6000 rpm' }],
  [
    'wheelSpeed',
    { ...GRINDER, 'machine.wheelSpeed': '349 rpm' },
    { ...GRINDER, 'machine.wheelSpeed': '6000 rpm' },
  ],
  [
    'reach',
    { 'belt.machinePulley': '36 in', 'belt.centreDistance': null },
    { 'belt.machinePulley': '26 in', 'belt.centreDistance': null },
  ],
  ['stalls', { 'belt.machinePulley': '5 in' }, {}],
  ['sags', { 'machine.acceptedSag': '10 %' }, { 'machine.acceptedSag': '20 %' }],
  [
    'slips',
    { 'belt.section': '3L', 'belt.carries': '9 N·m' },
    { 'belt.section': '3L', 'belt.carries': '30 N·m' },
  ],
  ['beltLimit', { 'belt.centreDistance': '7 in' }, { 'belt.centreDistance': '23 in' }],
  ['plate', { 'plate.printedWatts': '900 W' }, {}],
  [
    'tooHot',
    { 'heat.cooling': 'blower', 'heat.airflow': '0 %', 'plate.speed': '2000 rpm', 'heat.air': '70 °C' },
    { 'heat.cooling': 'blower', 'plate.speed': '2000 rpm' },
  ],
]

/** Further near misses: leads that nobody mentioned or that go where they should, a flywheel taken off, a belt grinder. */
const MORE_MISSES: readonly (readonly [FindingName, Changes])[] = [
  ['bigBreaker', { 'supply.breaker': '32 A', 'supply.lineVolts': '230 V' }],
  ['bigBreaker', { 'supply.breaker': '100 A', 'supply.kind': 'battery' }],
  ['enableOnly', {}],
  ['enableOnly', { 'cutoff.leads': 'no-volt release' }],
  ['flywheelRim', { ...FAST_RIM, 'rotor.flywheel': '0 kg·m²' }],
  ['wheelUnknown', { ...GRINDER, 'machine.kind': 'lathe' }],
  ['wheelUnknown', { ...GRINDER, 'duty.phases': [BELT_GRINDING] }],
]

/** First words that findings begin with: verbs all. */
const VERBS =
  /^(Ask|Balance|Blow|Bond|Bring|Check|Clean|Connect|Do not|Earth|Fit|Fuse|Gear|Give|Hold|Keep|Let|Log|Make|Match|Measure|Put|Read|Rectify|Slow|Stop|Take|Tighten|Think|Turn) /
/** Words the product does not use (design, “Words”), and what a slip in a number leaves behind. */
const AVOIDED =
  /\b(protector|nodes?|RMS|envelope|simulation|parameters?|optimi[sz]e)\b|NaN|undefined|Infinity|—| {2}|\.\./i

const told: string[] = []
const sourced: { name: FindingName; text: string }[] = []

describe.each(
  PAIRS.map(([name, has, hasNot, where]) => ({ name, has, hasNot, where: where ?? 'appleMill' })),
)('$name', ({ name, has, hasNot, where }) => {
  const short = where === 'appleMill' ? SHORT : {}
  it('is found', () => {
    const found = drafts(wellMade(where, { ...short, ...has }))
    expect(named(found)).toContain(name)
    const { evidence } = found.find((each) => each.name === name)!
    for (const { value, source } of Object.values(evidence)) {
      expect(Number.isFinite(value)).toBe(true)
      expect(source).not.toBe('')
    }
  })
  it('is said in plain words that begin with a verb, in both systems of units', () => {
    const scenario = wellMade(where, { ...short, ...has })
    const { job, now } = caseOf(scenario)
    const draft = drafts(scenario).find((each) => each.name === name)!
    for (const system of ['us', 'metric'] as const) {
      const words = findingWords(
        { ...draft, cures: [], after: null },
        { job, now },
        { system, temperature: '°C' },
      )
      const { headline, text, figure, note } = words
      expect(headline).toMatch(VERBS)
      expect(headline).toMatch(/\.$/)
      expect(text).toMatch(/[.]$/)
      expect([headline, text, figure, note].filter((each) => each !== '').join(' ')).not.toMatch(AVOIDED)
      if (draft.kind === 'Safety' || isPerilous(draft.severity)) sourced.push({ name, text })
      told.push(`${name}, ${system}: ${headline} ${text} [${figure} ${note}]`)
    }
  })
  it('is not found in a near miss', () => {
    expect(named(drafts(wellMade(where, { ...short, ...hasNot })))).not.toContain(name)
  })
})

it.each(MORE_MISSES)('%s is not found with %j', (name, hasNot) => {
  expect(named(drafts(wellMade('appleMill', { ...SHORT, ...hasNot })))).not.toContain(name)
})

it.each(everyWellMade)('the well-made %s has nothing severe', (name) => {
  const found = drafts(wellMade(name))
  expect(found.filter(({ severity }) => isSevere(severity)).map(({ name: each }) => each)).toEqual([])
})

it('the sentences, in both systems of units', async () => {
  await expect(`${told.join('\n')}\n`).toMatchFileSnapshot('sentences.txt')
})

it('what is said of safety names a standard or owns that nobody wrote it down; what is from memory says so', () => {
  expect(sourced.length).toBeGreaterThan(14)
  for (const { name, text } of sourced) {
    const [, source] = text.split(' Source: ')
    expect(source, name).toMatch(/common practice, no source|\(.*from memory\)/)
  }
})

it('severities go from people to what is only worth knowing', () => {
  expect(SEVERITIES).toEqual(['danger', 'unknown', 'damage', 'fails', 'short', 'gain', 'note'])
  expect(SEVERITIES.map(isSevere)).toEqual([true, false, true, true, true, false, false])
  expect(new Set(FAULTS).size).toBe(FAULTS.length)
})

it('a runaway on too many volts is a danger past a quarter over the plate’s speed', () => {
  const over = (volts: string) =>
    drafts(wellMade('appleMill', { ...SHORT, 'supply.volts': volts })).find(
      ({ name }) => name === 'overVolts',
    )!
  const { evidence, severity } = over('200 V')
  expect(severity).toBe('danger')
  // No-load speed: volts less brush drop over k, by hand from the job's own k.
  const k = 198.5 / evidence.idle.value
  expect(k).toBeGreaterThan(0.2)
  expect(k).toBeLessThan(0.3)
  expect(evidence.plateSpeed.value).toBeCloseTo(fromUnit(4000, 'rpm'), 9)
})
