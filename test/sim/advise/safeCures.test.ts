// Cures of what hurts people, run by the one-page plant: those that cure, and those that say that they are not enough.
import { expect, it } from 'vitest'
import type { FindingName } from '../../../sim/advise/finding.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { adviceWords } from '../../../sim/say/advice.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import type { Scenario } from '../../../sim/scenario.ts'
import { type Changes, jobOf } from '../../jobs.ts'
import { adviceOf, cured, wellMade } from './cases.ts'
import { twin } from './twin.ts'

const SHORT = { 'duty.repeatFor': '16 min', 'supply.earth': 'yes' }
const CLASS_B = 120

const found = (scenario: Scenario, name: FindingName) => {
  const advice = adviceOf(scenario)
  const finding = advice.findings.find((each) => each.name === name)!
  const { text } = adviceWords(advice, { system: 'us', temperature: '°C' }).find(
    (each) => each.finding === name,
  )!
  return { ...finding, text: text.replaceAll(/[\u00a0\u202f]/g, ' ') }
}
/** Motor speed of a job 55 s into its first step, in the one-page plant, rad/s. */
const motorSpeed = (scenario: Scenario) => twin(jobOf(scenario), 60, [55]).samples[0][1]

it('flywheelRim: both cures bring the rim under 33 m/s, as the one-page plant turns it', () => {
  const fast = wellMade('appleMill', {
    ...SHORT,
    'rotor.flywheel': '0.006 kg·m²',
    'bench.flywheelDiameter': '250 mm',
    'belt.machinePulley': '25 in',
  })
  const { evidence, cures, severity } = found(fast, 'flywheelRim')
  expect(severity).toBe('danger')
  // 350 rpm × 10 = 3 500 rpm = 366.5 rad/s; × 125 mm = 45.8 m/s, by hand.
  expect(evidence.rim.value).toBeCloseTo(45.8, 1)
  expect(motorSpeed(fast) * 0.125).toBeGreaterThan(40)
  expect(cures.map(({ whole }) => whole)).toEqual([true, true])
  const [slower, off] = cures
  expect(Object.keys(slower.changes)).toContain('belt.machinePulley')
  expect(motorSpeed(cured(fast, slower.changes)) * 0.125).toBeLessThan(33)
  expect(jobOf(cured(fast, off.changes)).parts.rotor.flywheel).toBe(0)
})

it('overVolts: the plate’s volts alone leave a runaway flywheel too fast, and that is said; without it they are enough', () => {
  const wild = wellMade('appleMill', {
    ...SHORT,
    'supply.volts': '170 V',
    'rotor.flywheel': '0.006 kg·m²',
    'bench.flywheelDiameter': '200 mm',
  })
  const { evidence, cures, text } = found(wild, 'overVolts')
  // (120 − 1.5)/(170 − 1.5) of the runaway speed, by hand 0.7033.
  expect(evidence.rimAfter.value / evidence.rim.value).toBeCloseTo(118.5 / 168.5, 3)
  expect(evidence.rimAfter.value).toBeGreaterThan(33)
  expect(cures.map(({ whole, changes }) => [whole, Object.keys(changes)])).toEqual([
    [false, ['supply.volts']],
    [true, ['supply.volts', 'rotor.flywheel']],
  ])
  expect(text).toContain('not enough by itself: run away, the flywheel’s rim still gets to')
})

const HOT = { 'heat.cooling': 'none', 'duty.start': '105 °C' }
const LOOSE: readonly (readonly [FindingName, Changes])[] = [
  ['notConnected', { 'cutoff.leads': 'not connected' }],
  ['noCutoff', { 'cutoff.fitted': 'none' }],
]
it.each(LOOSE)(
  '%s: the cutoff alone is offered, said to be not enough, and offered with what is',
  (name, how) => {
    const bare = wellMade('appleMill', { ...SHORT, ...HOT, ...how })
    const { cures, text } = found(bare, name)
    const [alone, together] = cures
    expect([alone.whole, together.whole]).toEqual([false, true])
    expect(text).toMatch(/not enough by itself: the winding still gets \d+ °C too hot/)
    const { seconds } = jobOf(bare).duty
    expect(twin(jobOf(bare), seconds).events).toEqual([])
    const half = twin(jobOf(cured(bare, alone.changes)), seconds)
    expect(half.events[0]?.[0]).toBe('opens')
    expect(half.peak[0]).toBeGreaterThan(CLASS_B)
    const whole = twin(jobOf(cured(bare, together.changes)), seconds)
    expect(whole.events).toEqual([])
    expect(whole.peak[0]).toBeLessThan(CLASS_B)
    expect(Math.abs(whole.peak[0] - together.outcome!.hottestWindingC)).toBeLessThan(0.1)
    expect(Object.keys(together.changes)).toEqual(expect.arrayContaining(Object.keys(alone.changes)))
  },
)

it('a cutoff that opens too late to do anything is no cure either', () => {
  const late = wellMade('appleMill', {
    ...SHORT,
    ...HOT,
    'cutoff.leads': 'not connected',
    'cutoff.opensAt': '190 °C',
  })
  const [alone, together] = found(late, 'notConnected').cures
  expect(alone.outcome!.firstOpening).toBeNull()
  expect([alone.whole, together.whole]).toEqual([false, true])
})

it('reduction that would make the flywheel’s rim too fast is no cure of anything', () => {
  const geared = wellMade('appleMill', {
    ...SHORT,
    'duty.repeatFor': '26 min',
    'belt.machinePulley': '5 in',
    'rotor.flywheel': '0.006 kg·m²',
    'bench.flywheelDiameter': '400 mm',
  })
  const { findings } = adviceOf(geared)
  const range = findings.find(({ name }) => name === 'range')!
  const rim = (n: number) => fromUnit(350, 'rpm') * n * 0.2
  // 33 m/s at 200 mm is 1 576 rpm, 4.50 : 1 at 350 rpm, by hand.
  expect(rim(4.5)).toBeCloseTo(33, 1)
  for (const { whole, outcome } of range.cures) expect(whole && rim(outcome!.ratio) > 33).toBe(false)
  const all = findings.flatMap(({ cures }) => cures)
  expect(all.some(({ outcome }) => outcome?.faults.includes('rim'))).toBe(false)
  expect(all.some(({ whole }) => whole)).toBe(true)
})

it('restarts and enableOnly: with a release the one-page plant opens once and stays so', () => {
  const self = wellMade('appleMill', {
    ...SHORT,
    'duty.repeatFor': '40 min',
    'cutoff.opensAt': '50 °C',
    'cutoff.reclosesAt': '45 °C',
    'cutoff.leads': 'control circuit',
  })
  const kinds = (one: Scenario) => twin(jobOf(one), jobOf(one).duty.seconds).events.map(([kind]) => kind)
  expect(kinds(self)).toContain('recloses')
  for (const name of ['restarts', 'enableOnly'] as const) {
    const [cure] = found(self, name).cures
    expect(cure.whole).toBe(true)
    expect(kinds(cured(self, cure.changes))).toEqual(['opens'])
  }
})

it('socket: a cure tells the outlet’s amps it comes to, and whether a breaker carries those for hours', () => {
  const weak = wellMade('appleMill', { ...SHORT, 'supply.breaker': '5 A' })
  const { cures, text } = found(weak, 'socket')
  const [first] = cures
  expect(first.whole).toBe(first.outcome!.outletAmps <= 0.8 * 5)
  expect(text).toContain(`it draws ${first.outcome!.outletAmps.toFixed(1)} A there`)
  if (!first.whole) expect(text).toContain('not enough by itself: that is over 4.0 A')
})

it('bigBreaker: a usual size that carries the drive for hours is offered', () => {
  const { cures } = found(wellMade('appleMill', { ...SHORT, 'supply.breaker': '100 A' }), 'bigBreaker')
  expect(cures[0].changes).toEqual({ 'supply.breaker': '15 A' })
  expect(cures[0].outcome!.outletAmps).toBeLessThan(0.8 * 15)
})

it('wheelSpeed: the job run at the marked speed, as the one-page plant turns it; full volts slowed by the pulley', () => {
  const marked = (rpm: string) =>
    wellMade('appleMill', { ...SHORT, 'machine.kind': 'grinder', 'machine.wheelSpeed': rpm })
  const fast = found(marked('300 rpm'), 'wheelSpeed')
  expect(fast.severity).toBe('danger')
  const slow = cured(marked('300 rpm'), fast.cures[0].changes)
  expect(motorSpeed(marked('300 rpm')) / ratio(jobOf(slow).parts.belt)).toBeGreaterThan(fromUnit(330, 'rpm'))
  expect(motorSpeed(slow) / ratio(jobOf(slow).parts.belt)).toBeLessThan(fromUnit(300.5, 'rpm'))
  // Run away on 170 V it would turn about 1 600 rpm at 4 : 1.
  const wild = found(marked('1100 rpm'), 'wheelSpeed')
  expect(wild.severity).toBe('short')
  const [geared] = wild.cures
  expect((wild.evidence.wild.value * 4) / geared.outcome!.ratio).toBeLessThanOrEqual(fromUnit(1100, 'rpm'))
})
