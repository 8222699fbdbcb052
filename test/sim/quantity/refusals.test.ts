// A unit that is missing, unknown or of another kind is told in plain sentences, with texts that would be read.
import { describe, expect, it } from 'vitest'
import { refused } from './asked.ts'

describe('another kind of quantity', () => {
  it.each([
    ['12 V', 'torque', '"12 V" is a voltage; a torque is wanted.', 'For example 4.2 lbf·ft or 5.7 N·m.'],
    ['4.2 ft-lb', 'energy', '"4.2 ft-lb" is a torque; an energy is wanted.', 'For example 500 J or 0.2 kWh.'],
    ['5 m', 'torque', '"5 m" is a length; a torque is wanted.', 'For example 4.2 lbf·ft or 5.7 N·m.'],
    ['5 V', 'number', '"5 V" is a voltage; a plain number is wanted.', 'For example 4 or 2.5.'],
    [
      '300 K',
      'temperature',
      '"300 K" is a temperature difference; a temperature is wanted.',
      'For example 40 °C or 104 °F.',
    ],
    [
      '20 m/s',
      'angular speed',
      '"20 m/s" is a straight-line speed; a turning speed is wanted.',
      'For example 4000 rpm or 420 rad/s.',
    ],
    ['5 kg', 'force', '"5 kg" is a mass; a force is wanted.', 'For example 20 lbf or 90 N.'],
  ] as const)('%s as %s', (text, dimension, wrong, wouldDo) => {
    expect(refused(text, dimension)).toEqual({ ok: false, wrong, wouldDo })
  })
})

describe('no unit', () => {
  it('is said, with the number in units that would do', () => {
    expect(refused('4.2', 'torque')).toEqual({
      ok: false,
      wrong: '"4.2" has no unit.',
      wouldDo: 'Write 4.2 lbf·ft or 4.2 N·m.',
      offers: ['4.2 lbf·ft', '4.2 N·m'],
    })
  })

  it('behind the last number of two is refused, whatever the field assumes', () => {
    expect(refused('5 ft 3', 'length', 'mm').wrong).toBe('The last number in "5 ft 3" has no unit.')
    expect(refused('1h30', 'time').wrong).toBe('The last number in "1h30" has no unit.')
  })
})

describe('a unit that is not known', () => {
  it('is named, with those that would do and the likely one', () => {
    expect(refused('4.2 ft-lbd', 'torque')).toEqual({
      ok: false,
      wrong: '"ft-lbd" is not a unit of torque.',
      wouldDo: 'Units that would do: N·m, lbf·ft, lbf·in, ozf·in or kgf·m. Did you mean 4.2 lbf·ft?',
      offers: ['4.2 lbf·ft'],
    })
    expect(refused('5 lb/ft', 'torque').offers).toEqual(['5 lbf·ft'])
    expect(refused('12 vlots', 'voltage').offers).toEqual(['12 V'])
    expect(refused('4000 rmp', 'angular speed').offers).toEqual(['4000 rpm'])
    expect(refused('5 ft 3 inchs', 'length').offers).toEqual(['5 ft 3 in'])
    expect(refused('12 R', 'resistance')).toEqual({
      ok: false,
      wrong: '"R" is not a unit of resistance.',
      wouldDo: 'Units that would do: Ω, mΩ or kΩ.',
    })
    expect(refused('5 foo', 'number').wrong).toBe('"5 foo" is more than a plain number.')
    expect(refused('5 ft 3 V', 'length').wrong).toBe('"V" is not a unit of length.')
  })

  it.each([
    ['5 mN·m', 'torque'],
    ['5 kg-cm', 'torque'],
    ['5 kV', 'voltage'],
    ['5 km', 'length'],
  ] as const)('%s: a prefix is not taken for a slip', (text, dimension) => {
    const { wrong, offers } = refused(text, dimension)
    expect(wrong).toMatch('is not a unit of')
    expect(offers).toBeUndefined()
  })

  it.each([
    ['5 MV', 'voltage'],
    ['5 MA', 'current'],
    ['5 MΩ', 'resistance'],
    ['5 Mohm', 'resistance'],
    ['5 MOHMS', 'resistance'],
    ['5 MH', 'inductance'],
    ['5 MF', 'capacitance'],
    ['5 mf', 'capacitance'],
    ['5 MS', 'time'],
    ['5 MV/rpm', 'motor constant'],
    ['5 mW', 'power'],
    ['5 MW', 'power'],
  ] as const)('%s: mega is never taken for milli, and nothing is suggested', (text, dimension) => {
    const { wrong, offers } = refused(text, dimension)
    expect(wrong).toMatch('is not a unit of')
    expect(offers).toBeUndefined()
  })
})
