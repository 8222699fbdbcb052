// Each lever: what it changes where a job has a use for it, and nothing where it has none.
import { describe, expect, it } from 'vitest'
import { type LeverName, LEVERS } from '../../../sim/advise/levers.ts'
import type { Changes as Texts } from '../../../sim/advise/finding.ts'
import { toUnit } from '../../../sim/quantity.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { type Changes, type Demo, jobOf } from '../../jobs.ts'
import { caseOf, cured, wellMade } from './cases.ts'

const SHORT = { 'duty.repeatFor': '10 s' }
const one = (changes: Changes, demo?: Demo) => caseOf(wellMade(demo, { ...SHORT, ...changes }))
const pull = (name: LeverName, changes: Changes = {}, demo?: Demo) => LEVERS[name](one(changes, demo))
const changed = (name: LeverName, changes: Changes = {}): Texts | null => pull(name, changes)?.changes ?? null

describe('air, controller, supply and duty', () => {
  const work = { name: 'milling', lasts: '5 min', speed: '350 rpm', torque: '4 N·m' }
  const rests = (...lasts: readonly string[]) => ({
    'duty.phases': [work, ...lasts.map((each) => ({ name: 'rest', lasts: each }))],
  })
  it.each<[LeverName, Changes, Texts | null]>([
    ['shaft fan', { 'heat.cooling': 'none' }, { 'heat.cooling': 'shaft fan' }],
    ['shaft fan', { 'heat.cooling': 'enclosed' }, null],
    ['outer fan', { 'heat.cooling': 'enclosed' }, { 'heat.cooling': 'enclosed, outer fan' }],
    ['clean', { 'heat.airPath': '60 %' }, { 'heat.airPath': '100 %' }],
    ['clean', {}, null],
    // The mill's plate says 13 A: 1.5 and 2 times it.
    ['lower limit', { 'controller.currentLimit': '30 A' }, { 'controller.currentLimit': '19.5 A' }],
    ['lower limit', { 'controller.currentLimit': '19.5 A' }, null],
    ['lower limit', { 'controller.currentLimit': '30 A', 'plate.amps': null }, null],
    ['higher limit', { 'controller.currentLimit': '18 A' }, { 'controller.currentLimit': '26 A' }],
    ['higher limit', { 'controller.currentLimit': '26 A' }, null],
    ['plate volts', { 'supply.volts': '60 V' }, { 'supply.volts': '120 V' }],
    ['plate volts', { 'plate.volts': null }, null],
    ['no flywheel', { 'rotor.flywheel': '0.004 kg·m²' }, { 'rotor.flywheel': '0 kg·m²' }],
    ['no flywheel', { 'rotor.flywheel': '0 kg·m²' }, null],
    [
      'plate volts, no flywheel',
      { 'rotor.flywheel': '0.004 kg·m²' },
      { 'supply.volts': '120 V', 'rotor.flywheel': '0 kg·m²' },
    ],
    ['plate volts, no flywheel', { 'rotor.flywheel': '0 kg·m²' }, null],
    ['compensation', { 'controller.compensation': '80 %' }, null],
    [
      'compensation',
      { 'controller.compensation': '50 %' },
      { 'controller.holds': 'sag compensation', 'controller.compensation': '80 %' },
    ],
    ['feedback', {}, { 'controller.holds': 'speed feedback' }],
    ['feedback', { 'controller.holds': 'speed feedback' }, null],
    ['wheel speed', {}, null],
    [
      'wheel speed',
      { 'machine.kind': 'grinder', 'machine.wheelSpeed': '300 rpm', 'duty.phases.0.speed': '200 rpm' },
      { 'duty.phases.2.speed': '300 rpm' },
    ],
    ['longer rest', rests('1 min', '3 min', '2 min'), { 'duty.phases.2.lasts': '9 min' }],
    ['longer rest', rests('20 s'), { 'duty.phases.1.lasts': '60 s' }],
    ['longer rest', rests(), null],
    ['shorter work', rests('1 min'), { 'duty.phases.0.lasts': '3 min' }],
    [
      'shorter work',
      {
        'duty.phases': [
          { ...work, lasts: '90 s' },
          { name: 'rest', lasts: '1 min' },
        ],
      },
      { 'duty.phases.0.lasts': '45 s' },
    ],
    ['shorter work', rests(), null],
  ])('%s %#', (name, changes, texts) => {
    expect(changed(name, changes)).toEqual(texts)
  })

  it('a choke by itself, or with the controller that it is a part of', () => {
    expect(pull('choke', { 'supply.kind': 'phase control' })?.name).toBe('With a choke')
    expect(pull('choke', { 'supply.kind': 'bare bridge' })?.name).toBe('With a phase controller and choke')
  })

  it('two at once are named in one piece', () => {
    expect(pull('plate volts, no flywheel', { 'rotor.flywheel': '0.004 kg·m²' })?.name).toBe(
      'Supply of 120 V, without the flywheel',
    )
  })

  it('the smallest usual breaker that carries it for hours: 20 A at the outlet want 30 A; 26 A want none of them', () => {
    const bare = one({})
    const at = (outletAmps: number) => LEVERS['usual breaker']({ ...bare, now: { ...bare.now, outletAmps } })
    expect(at(20)?.changes).toEqual({ 'supply.breaker': '30 A' })
    expect(at(12)?.changes).toEqual({ 'supply.breaker': '15 A' })
    expect(at(26)).toBeNull()
    // Elsewhere sockets have 16 or 32 A.
    const other = one({ 'supply.lineVolts': '230 V' })
    expect(LEVERS['usual breaker']({ ...other, now: { ...other.now, outletAmps: 20 } })?.changes).toEqual({
      'supply.breaker': '32 A',
    })
  })
})

describe('pulleys', () => {
  /** The ratio with the lever pulled over the ratio before. */
  const times = (name: LeverName, changes: Changes = {}): number | null => {
    const scenario = wellMade('appleMill', { ...SHORT, ...changes })
    const pulled = LEVERS[name](caseOf(scenario))
    if (!pulled) return null
    const at = (whole: typeof scenario) => ratio(jobOf(whole).parts.belt)
    return at(cured(scenario, pulled.changes)) / at(scenario)
  }
  const SLOW = { 'duty.phases.0.speed': '60 rpm', 'duty.phases.2.speed': '60 rpm' }

  it('more reduction: about 1.4 times; the most that one stage and the volts allow; none where volts allow no more', () => {
    expect(times('more reduction', SLOW)).toBeGreaterThan(1.1)
    expect(times('more reduction', SLOW)).toBeLessThanOrEqual(1.4)
    expect(times('most reduction', SLOW)).toBeGreaterThanOrEqual(times('more reduction', SLOW)!)
    const fast = { 'duty.phases.0.speed': '1000 rpm', 'duty.phases.2.speed': '1000 rpm' }
    expect(times('more reduction', fast)).toBeNull()
    expect(times('most reduction', fast)).toBeNull()
    expect(times('jackshaft', fast)).toBeNull()
  })

  it('a jackshaft: about twice and more, also where no single pulley does it', () => {
    expect(times('jackshaft', SLOW)).toBeGreaterThan(1.6)
    const steep = { ...SLOW, 'belt.machinePulley': '15 in' }
    expect(times('more reduction', steep)).toBeNull()
    expect(times('jackshaft', steep)).toBeGreaterThan(1.6)
  })

  it('another step, where the pulleys have one with more reduction', () => {
    const steps = { ...SLOW, 'belt.steps': [{ driving: '2 in', driven: '12 in' }] }
    expect(pull('another step', steps)).toEqual({
      name: 'Step 2 of the pulleys',
      changes: { 'belt.step': '2' },
    })
    expect(pull('another step', { ...SLOW, 'belt.steps': [{ driving: '3 in', driven: '9 in' }] })).toBeNull()
    expect(pull('another step', SLOW)).toBeNull()
  })

  it('less reduction: no faster than the plate, or a flywheel’s rim, stands', () => {
    const FAST = { 'belt.machinePulley': '30 in' }
    const motor = (changes: Changes) => {
      const scenario = wellMade('appleMill', { ...SHORT, ...FAST, ...changes })
      const pulled = LEVERS['less reduction'](caseOf(scenario))!
      const { parts, duty } = jobOf(cured(scenario, pulled.changes))
      return toUnit(Math.max(...duty.phases.map(({ speed }) => speed)) * ratio(parts.belt), 'rpm')
    }
    // Pulleys are sold to 18 in: 7.2 : 1 and 2520 rpm, unless something stands less.
    expect(motor({ 'plate.speed': null })).toBeCloseTo(2520, 6)
    expect(motor({ 'plate.speed': '2000 rpm' })).toBeLessThanOrEqual(2000)
    expect(motor({ 'plate.speed': '2000 rpm' })).toBeGreaterThan(1700)
    // A rim of 33 m/s on 250 mm is 2521 rpm; nineteen twentieths of it 2395.
    const wheel = { 'rotor.flywheel': '0.006 kg·m²', 'bench.flywheelDiameter': '250 mm' }
    expect(motor(wheel)).toBeLessThanOrEqual(2395)
    expect(motor(wheel)).toBeGreaterThan(2000)
    expect(times('less reduction', { 'belt.machinePulley': '20 mm' })).toBeNull()
  })

  it('half the reduction, where such a pulley is sold', () => {
    expect(times('half the reduction')).toBeCloseTo(0.5, 1)
    expect(times('half the reduction', { 'belt.machinePulley': '2 in' })).toBeNull()
  })

  it('a duty that only rests asks no speed, and has no use for another ratio', () => {
    const rest = { 'duty.phases': [{ name: 'rest', lasts: '1 min' }] }
    for (const name of ['more reduction', 'most reduction', 'jackshaft'] as const)
      expect(pull(name, rest)).toBeNull()
  })

  it('wider pulleys: a third larger or more, about the same ratio, with room for them', () => {
    const room = { 'belt.centreDistance': '10 in' }
    expect(times('wider pulleys', room)).toBeCloseTo(1, 1)
    const { changes } = pull('wider pulleys', room)!
    const inches = (path: string) => Number.parseFloat((changes as Texts)[path]!)
    expect(inches('belt.motorPulley')).toBeGreaterThanOrEqual(1.33 * 2.5)
    expect(inches('belt.centreDistance')).toBeCloseTo(
      0.75 * (inches('belt.motorPulley') + inches('belt.machinePulley')),
      1,
    )
    expect(pull('wider pulleys', { 'belt.centreDistance': null })!.changes).not.toHaveProperty([
      'belt.centreDistance',
    ])
    expect(pull('wider pulleys', { 'belt.motorPulley': '30 in', 'belt.machinePulley': '60 in' })).toBeNull()
    const two = { 'belt.jackshaftLarge': '8 in', 'belt.jackshaftSmall': '2 in' }
    expect(pull('wider pulleys', two)!.changes).toHaveProperty(['belt.jackshaftSmall'])
  })
})

describe('a tighter belt', () => {
  const slack = { 'belt.section': 'A', 'belt.carries': '5 N·m' }
  it('carries half as much again as the worst of the work, where belt and bearing stand it', () => {
    const carries = Number.parseFloat(changed('tighter belt', slack)!['belt.carries']!)
    const { work } = one(slack)
    expect(carries).toBeGreaterThan(1.5 * work.peak)
    expect(carries).toBeLessThan(1.7 * work.peak)
  })
  it('is none where it may not slip, and none where it would be too much', () => {
    expect(changed('tighter belt')).toBeNull()
    expect(changed('tighter belt', { ...slack, 'duty.phases.2.torque': '200 N·m' })).toBeNull()
  })
})
