// The wiring checklist in words: times rounded up, what a battery and a wet machine want, boxes to tick.
import { describe, expect, it } from 'vitest'
import { wiringLead, wiringWords } from '../../../sim/say/wiring.ts'
import { wiringLines } from '../../../sim/say/wiringReport.ts'
import { type Fact, type Statement, wiringOf } from '../../../sim/wiring.ts'
import { type Changes, job } from '../../jobs.ts'
import { METRIC } from './units.ts'

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', '')
const statement = (name: Statement['name'], facts: Readonly<Record<string, Fact>> = {}): Statement => ({
  name,
  group: 'moving',
  source: 'none',
  facts,
  wrong: false,
})
const said = (name: Statement['name'], facts: Readonly<Record<string, Fact>>) => {
  const { what, so } = wiringWords(statement(name, facts), METRIC)
  return plain(`${what} ${so}`)
}
const time = (value: number): Fact => ({ value, dimension: 'time' })

describe('a time that must have passed', () => {
  it.each([
    [3.01, '4 s'],
    [119.2, '120 s'],
    [121, '2.1 min'],
    [5990, '99.9 min'],
    [7190, '120 min'],
    [7201, '2.1 h'],
  ])('%d s is %s: up, never down', (seconds, words) => {
    expect(said('reverse', { stop: time(seconds) })).toContain(`it runs on for ${words}.`)
  })
  it('from the knob fully up is told beside it, where that is longer; where it never comes no time is', () => {
    expect(said('reverse', { stop: time(20), full: time(40) })).toContain(
      'it runs on for 20 s, and for 40 s from the knob fully up.',
    )
    expect(said('reverse', { stop: time(Number.POSITIVE_INFINITY) })).toContain(
      'Reverse only at standstill: nothing here says when that is.',
    )
  })
})

describe('of the job as it is', () => {
  const words = (changes: Changes, name: Statement['name']) => {
    const found = wiringOf(job(changes), {}, null).find((each) => each.name === name)
    return found && plain(Object.values(wiringWords(found, METRIC)).join(' '))
  }
  it('a wet machine wants it, another only where it gets wet', () => {
    expect(words({ 'machine.kind': 'mill' }, 'residual')).toContain(
      'This machine gets wet: it wants an isolating',
    )
    expect(words({ 'machine.kind': 'lathe' }, 'residual')).toContain('Where it gets wet: an isolating')
  })
  it('what else runs away with it: a flywheel’s rim where its size is known', () => {
    const fast = {
      'belt.machinePulley': '30 in',
      'rotor.flywheel': '0.006 kg·m²',
      'supply.lineVolts': '240 V',
    }
    const overspeed = (diameter: number | undefined) => {
      const found = wiringOf(job(fast), { flywheelDiameter: diameter }, null).find(
        ({ name }) => name === 'overspeed',
      )!
      return plain(wiringWords(found, METRIC).so)
    }
    expect(overspeed(0.25)).toMatch(/, [\d.]+ m\/s at the flywheel’s; ordinary cast rims/)
    expect(overspeed(undefined)).not.toContain('flywheel')
  })
  it('the lead goes with the supply', () => {
    expect(wiringLead(job())).toMatch(/^DC made from the mains kills\. /)
    expect(wiringLead(job({ 'supply.kind': 'battery' }))).toMatch(/^A battery melts a spanner, /)
  })
  it('a battery’s capacitors hold its own volts, the mains’ their peak', () => {
    const held = (changes: Changes) => {
      const found = wiringOf(
        job({ 'supply.capacitance': '1000 µF', 'supply.bleeder': '10 kΩ', ...changes }),
        {},
        null,
      ).find(({ name }) => name === 'discharge')!
      return found.facts.peak.value
    }
    // Mains may be a tenth high.
    expect(held({ 'supply.lineVolts': '120 V' })).toBeCloseTo(1.1 * 120 * Math.SQRT2, 6)
    expect(held({ 'supply.kind': 'battery', 'supply.volts': '96 V' })).toBeCloseTo(96, 6)
  })
})

it('as text: a box for each, groups that are there, and what is wrong as it stands', () => {
  const lines = wiringLines(
    'A lead.',
    [statement('knob'), { ...statement('eyes'), wrong: true, group: 'use', source: 'practice' }],
    METRIC,
  )
  expect(lines).toEqual([
    '  A lead.',
    '',
    '  What turns',
    '    [ ] Turn the knob back to zero before you start again.',
    expect.stringMatching(/^ {8}A controller without an interlock starts/),
    '',
    '  In use',
    '    [ ] Goggles on before it turns.',
    expect.stringMatching(/^ {8}AS IT STANDS\. Chips, grit.*\(practice\)$/),
  ])
})
