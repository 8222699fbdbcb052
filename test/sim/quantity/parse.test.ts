// What people type is read: every spelling of a number, quantities in two units, and what needs none.
import { describe, expect, it } from 'vitest'
import { fromUnit, parseQuantity } from '../../../sim/quantity.ts'
import { read } from './asked.ts'

describe('numbers', () => {
  it.each([
    ['4.2', 4.2],
    ['4,2', 4.2],
    ['.5', 0.5],
    [',5', 0.5],
    ['4.', 4],
    ['4.000', 4],
    ['+5', 5],
    ['-5', -5],
    ['− 5', -5],
    ['–5', -5],
    ['1.2e-3', 0.0012],
    ['1.2E+3', 1200],
    ['2 1/2', 2.5],
    ['2-1/2', 2.5],
    ['2 - 1/2', 2.5],
    ['-2 1/2', -2.5],
    ['3/4', 0.75],
    ['3 / 4', 0.75],
    ['½', 0.5],
    ['2½', 2.5],
    ['2 ½', 2.5],
    ['12⅞', 12.875],
    ['3⁄8', 0.375],
    ['4 000', 4000],
    ['4\u202f000', 4000],
    ['4\u00a0000', 4000],
    ['1 234 567', 1234567],
    ['1 234,5', 1234.5],
    ['1 234.567', 1234.567],
    ['1,234,567', 1234567],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1.234,567', 1234.567],
    ['1.234.567', 1234567],
    ['12,34', 12.34],
    ['1,2345', 1.2345],
    ['1234,567', 1234.567],
    ['0,125', 0.125],
    ['4\u200b000', 4000],
    ['4 : 1', 4],
    ['2.5:1', 2.5],
    ['1:4', 0.25],
  ])('%s is %d', (text, value) => {
    expect(read(text, 'number')).toEqual([value, ''])
  })

  it('the same numbers before a unit, with and without a blank', () => {
    expect(read('2 1/2 in', 'length')).toEqual([0.0635, 'in'])
    expect(read('2-1/2"', 'length')).toEqual([0.0635, 'in'])
    expect(read('¾hp', 'power')).toEqual([fromUnit(0.75, 'hp'), 'hp'])
    expect(read('3/4 HP', 'power')).toEqual([fromUnit(0.75, 'hp'), 'hp'])
    expect(read('4 000 rpm', 'angular speed')).toEqual([fromUnit(4000, 'rpm'), 'rpm'])
    expect(read('1/2. hp.', 'power')).toEqual([fromUnit(0.5, 'hp'), 'hp'])
    expect(read('5e3V', 'voltage')).toEqual([5000, 'V'])
    expect(read('  12\tV \n', 'voltage')).toEqual([12, 'V'])
  })
})

describe('two units together', () => {
  it.each([
    ['2 min 30 s', 'time', 150, 's'],
    ['1 h 30 min', 'time', 5400, 'min'],
    ['1h30m', 'time', 5400, 'min'],
    ['1 h, 2 min, 3 s', 'time', 3723, 's'],
    ['-2 min 30 s', 'time', -150, 's'],
    ['5 lb 3 oz', 'mass', fromUnit(83, 'oz'), 'oz'],
    ['1 m 20 cm', 'length', 1.2, 'cm'],
  ] as const)('%s', (text, dimension, value, unit) => {
    expect(read(text, dimension)).toEqual([value, unit])
  })

  it.each(['5 ft 3 in', `5' 3"`, `5'3"`, `5'-3"`, `5′ 3″`, `5' 3''`, '5ft3in', '5 ft 2 1/2 in 0.5 in'])(
    '%s',
    (text) => {
      if (text.endsWith('0.5 in')) expect(read(text, 'length')).toMatch('large to small')
      else {
        const [value, unit] = read(text, 'length')
        expect(value).toBeCloseTo(63 * 0.0254, 14)
        expect(unit).toBe('in')
      }
    },
  )

  it('5 ft 2 1/2 in', () => {
    expect(read('5 ft 2 1/2 in', 'length')[0]).toBeCloseTo(62.5 * 0.0254, 14)
  })
})

describe('the unit of a form field', () => {
  it('is taken when none is written, and only then', () => {
    expect(read('4 000', 'angular speed', 'rpm')).toEqual([fromUnit(4000, 'rpm'), 'rpm'])
    expect(read('2 1/2', 'length', 'in')).toEqual([0.0635, 'in'])
    expect(read('63 mm', 'length', 'in')).toEqual([0.063, 'mm'])
    expect(read('30', 'share', '%')).toEqual([0.3, '%'])
    expect(read('0.5', 'share', '%')).toEqual([0.005, '%'])
    expect(read('9', 'temperature difference', '°F')).toEqual([5, 'Δ°F'])
    expect(read('248', 'temperature', '°F')).toEqual([120, '°F'])
  })

  it('must be of the dimension asked: anything else is a bug of ours', () => {
    expect(() => parseQuantity('5', 'torque', 'V')).toThrow('V')
  })
})

describe('shares and plain numbers', () => {
  it('need no unit', () => {
    expect(read('0.3', 'share')).toEqual([0.3, ''])
    expect(read('1/3', 'share')).toEqual([1 / 3, ''])
    expect(read('1', 'share')).toEqual([1, ''])
    expect(read('150 %', 'share')).toEqual([1.5, '%'])
    expect(read('1.4', 'number')).toEqual([1.4, ''])
  })
})
