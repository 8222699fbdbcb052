// The product's rules for numbers, a case each.
import { describe, expect, it } from 'vitest'
import {
  brief,
  clockTime,
  duration,
  grouped,
  percent,
  platePower,
  ratioText,
  show,
  told,
} from '../../../sim/say/number.ts'
import { unitFor } from '../../../sim/say/units.ts'
import { type Dimension, fromUnit, unitsOf } from '../../../sim/quantity.ts'
import { FAHRENHEIT, METRIC, US, visible } from './units.ts'

describe('times', () => {
  it.each([
    [0, '0~s'],
    [0.04, '0.04~s'],
    [0.26, '0.3~s'],
    [0.96, '1~s'],
    [42.4, '42~s'],
    [59.6, '1~min'],
    // Over a minute they are rounded to 10 s.
    [60, '1~min'],
    [64, '1~min'],
    [66, '1~min 10~s'],
    [1417, '23~min 40~s'],
    [3594, '59~min 50~s'],
    [3596, '1~h'],
    // Over an hour to the minute: and once, not by way of the nearest 10 s.
    [5039, '1~h 24~min'],
    [5427, '1~h 30~min'],
    [5431, '1~h 31~min'],
    [10800, '3~h'],
    [2 * 86400 - 60, '47~h 59~min'],
    [2 * 86400, '2~d'],
    [2 * 86400 + 3600 * 5.4, '2~d 5~h'],
  ])('%d s in a sentence is %s', (t, text) => {
    expect(visible(duration(t))).toBe(text)
  })

  it.each([
    [0, '0:00'],
    [7, '0:07'],
    [59.4, '0:59'],
    [1417, '23:40'],
    [3596, '1:00:00'],
    [5023, '1:23:40'],
    [10800, '3:00:00'],
  ])('%d s in a chart is %s', (t, text) => {
    expect(clockTime(t)).toBe(text)
  })
})

describe('temperatures', () => {
  it('are whole degrees', () => {
    expect(visible(told(131.6, 'temperature', US))).toBe('132~°C')
    expect(visible(told(-0.4, 'temperature', US))).toBe('0~°C')
    expect(visible(told(-12.3, 'temperature', METRIC))).toBe('−12~°C')
  })
  it('are °F where that is chosen, whatever the other units', () => {
    expect(visible(told(100, 'temperature', FAHRENHEIT))).toBe('212~°F')
    expect(visible(told(100, 'temperature', { system: 'metric', temperature: '°F' }))).toBe('212~°F')
  })
  it('differ by 1.8 °F to the kelvin, without the 32', () => {
    expect(visible(told(10, 'temperature difference', FAHRENHEIT))).toBe('18~°F')
    expect(visible(told(10, 'temperature difference', METRIC))).toBe('10~°C')
  })
})

describe('amps and torques', () => {
  it.each([
    [8.64, '8.6~A'],
    [18, '18.0~A'],
    [0, '0.0~A'],
    // Not 0.0 for what is something, and never over three digits.
    [0.04, '0.04~A'],
    [99.94, '99.9~A'],
    [123.4, '123~A'],
    [1234, '1_230~A'],
  ])('%d A is %s', (value, text) => {
    expect(visible(told(value, 'current', US))).toBe(text)
  })
  it('have one decimal in either unit', () => {
    expect(visible(told(5.6944, 'torque', METRIC))).toBe('5.7~N·m')
    expect(visible(told(5.6944, 'torque', US))).toBe('4.2~lbf·ft')
  })
})

describe('turning speeds', () => {
  it.each([
    [0, '0~rpm'],
    [261.4, '261~rpm'],
    [999.6, '1_000~rpm'],
    // Over 1000 they are rounded to 10.
    [1004, '1_000~rpm'],
    [1006, '1_010~rpm'],
    [3997, '4_000~rpm'],
    [12345, '12_300~rpm'],
  ])('%d rpm is %s', (rpm, text) => {
    expect(visible(told(fromUnit(rpm, 'rpm'), 'angular speed', US))).toBe(text)
  })
})

describe('other numbers', () => {
  it.each([
    [0, '0'],
    [1, '1'],
    [12.345, '12.3'],
    [0.0001234, '0.000123'],
    [999.6, '1_000'],
    [1234567, '1_230_000'],
    [-1.5, '−1.5'],
    [100, '100'],
    [0.1, '0.1'],
    [2e-7, '2e-7'],
    [1.25e-7, '1.25e-7'],
  ])('%d is %s: three digits, no zeros to spare', (value, text) => {
    expect(visible(brief(value))).toBe(text)
  })
  it('a narrow space stands between thousands, from a thousand up', () => {
    expect(visible(grouped(999, 0))).toBe('999')
    expect(visible(grouped(1000, 0))).toBe('1_000')
    expect(visible(grouped(1234567.891, 2))).toBe('1_234_567.89')
    expect(visible(grouped(-1234, 0))).toBe('−1_234')
    expect(grouped(-0.001, 1)).toBe('0.0')
  })
  it('a no-break space stands before every unit', () => {
    expect(told(12, 'voltage', US)).toBe('12\u00a0V')
    expect(told(12, 'number', US)).toBe('12')
  })
  it('shares are whole per cent', () => {
    expect(visible(percent(0.144))).toBe('14~%')
    expect(visible(percent(1))).toBe('100~%')
  })
  it('ratios are whole where they are whole, else to one decimal', () => {
    expect([4, 4.0001, 5.6, 15, 3.97, 0.5, 0.002, 1200].map((ratio) => visible(ratioText(ratio)))).toEqual([
      '4~:~1',
      '4~:~1',
      '5.6~:~1',
      '15~:~1',
      '4.0~:~1',
      '0.5~:~1',
      '0.002~:~1',
      '1_200~:~1',
    ])
  })
  it('horsepower of old plates is told in fractions, other power as it is', () => {
    const hp = (value: number) => visible(platePower(fromUnit(value, 'hp'), US))
    expect([0.25, 1 / 3, 0.5, 0.75, 1, 1.5, 1.6, 2.25].map(hp)).toEqual([
      '¼~hp',
      '⅓~hp',
      '½~hp',
      '¾~hp',
      '1~hp',
      '1½~hp',
      '1.6~hp',
      '2¼~hp',
    ])
    expect(visible(platePower(fromUnit(0.75, 'hp'), METRIC))).toBe('559~W')
  })
  it('what is no number is a dash, with its unit', () => {
    for (const value of [Number.NaN, Infinity, -Infinity])
      expect(show(value, 'temperature', US)).toEqual({ number: '—', unit: '°C' })
    expect(show(0, 'motor constant', US).number).toBe('0')
  })
})

it('every dimension is shown in one of its own units, in both systems', () => {
  const dimensions: Dimension[] = [
    'time',
    'angular speed',
    'torque',
    'power',
    'energy',
    'length',
    'mass',
    'voltage',
    'current',
    'resistance',
    'motor constant',
    'temperature',
    'share',
    'inertia',
    'heat capacity',
    'thermal conductance',
    'number',
    'inductance',
    'force',
    'speed',
  ]
  for (const dimension of dimensions)
    for (const units of [US, METRIC, FAHRENHEIT]) {
      expect(unitsOf(dimension), dimension).toContain(unitFor(dimension, units))
      expect(visible(told(1234.5678, dimension, units))).not.toMatch(/\d{4}|NaN|undefined/)
    }
})
