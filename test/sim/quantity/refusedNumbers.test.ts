// A number that is none, two, unusable or can be read two ways is told in plain sentences.
import { describe, expect, it } from 'vitest'
import { parseQuantity } from '../../../sim/quantity.ts'
import { refused } from './asked.ts'

describe('one comma before three digits', () => {
  it('is not guessed: both readings are offered', () => {
    expect(refused('4,000 rpm', 'angular speed')).toEqual({
      ok: false,
      wrong: '"4,000" can be read two ways.',
      wouldDo: 'Write 4000 or 4.000.',
      offers: ['4000 rpm', '4.000 rpm'],
    })
  })

  it('the offers take the unit of the field where none is written', () => {
    expect(refused('1,250', 'length', 'mm').offers).toEqual(['1250 mm', '1.250 mm'])
    expect(refused('-1,250 mm', 'length', 'in').offers).toEqual(['-1250 mm', '-1.250 mm'])
    expect(refused('1,250', 'number').offers).toEqual(['1250', '1.250'])
    expect(refused('1,250.', 'number').offers).toEqual(['1250.', '1.250.'])
  })

  it('no offer is made that would not be read', () => {
    expect(refused('4,000', 'angular speed').offers).toBeUndefined()
    expect(refused('4,000 foo', 'angular speed').offers).toBeUndefined()
    expect(refused('1,234 ft 1,234 in', 'length').offers).toBeUndefined()
  })

  it.each(['12,345', '123,456', '1,000 : 1'])('%s', (text) => {
    expect(refused(text, 'number').wrong).toMatch(/^"[\d,]+" can be read two ways\.$|cannot be read/)
  })
})

describe('no number, or one that makes no sense', () => {
  it.each(['', ' ', '\u00a0\t\n', '\u200b'])('nothing: %j', (text) => {
    expect(refused(text, 'torque')).toEqual({
      ok: false,
      wrong: 'Nothing is written here.',
      wouldDo: 'For example 4.2 lbf·ft or 5.7 N·m.',
    })
  })

  it.each([
    'NaN',
    'NaN V',
    'inf V',
    'Infinity',
    '-Infinity V',
    'twelve V',
    'V',
    '?',
    '? V',
    '--5 V',
    '.',
    'e5 V',
    '$5',
  ])('%s does not begin with a number', (text) => {
    expect(refused(text, 'voltage', 'V').wrong).toBe(`"${text}" does not begin with a number.`)
  })

  it.each([
    '1.2.3 V',
    '1,23,4 V',
    '1,234,56 V',
    '1.234,5,6 V',
    '3/0 V',
    '0/0 V',
    '2 5/4 V',
    '2 1/1 V',
    '1..2 V',
  ])('%s', (text) => {
    expect(refused(text, 'voltage').wrong).toMatch(/cannot be read\.$|not a unit|more than one number/)
  })

  it('says which number cannot be read', () => {
    expect(refused('1.2.3 V', 'voltage').wrong).toBe('The number in "1.2.3 V" cannot be read.')
    expect(refused('3/0 hp', 'power').wrong).toBe('The number in "3/0 hp" cannot be read.')
  })

  it.each(['5-10 A', '5 - 10 A', '1/2/3 A', '4000 100 A', '5..10 A', '1.5 1/2 A', '5 / 10 / 2 A', '5 ± 1 A'])(
    '%s',
    (text) => {
      expect(refused(text, 'current').wrong).toMatch(
        /holds more than one number\.$|cannot be read\.$|not a unit/,
      )
    },
  )

  it('says so of a range, and of groups that are not of three', () => {
    expect(refused('1 2341/min', 'angular speed').wrong).toBe('"1 2341/min" holds more than one number.')
    expect(refused('5-10 A', 'current').wrong).toBe('"5-10 A" holds more than one number.')
  })

  it.each(['0x10 V', '0b1 V', '5² V', '1_000 V', '1e V'])('%s', (text) => {
    expect(refused(text, 'voltage').wrong).toMatch('is not a unit of voltage.')
  })

  it('a number too large to hold, or with no inverse, is not usable', () => {
    expect(refused('1e999 V', 'voltage').wrong).toBe('"1e999 V" gives no usable number.')
    expect(refused('1e308 h', 'time').wrong).toBe('"1e308 h" gives no usable number.')
    expect(refused('0 rpm/V', 'motor constant').wrong).toBe('"0 rpm/V" gives no usable number.')
    expect(refused('1:0', 'number').wrong).toBe('"1:0" gives no usable number.')
    expect(refused('0:0', 'number').wrong).toBe('"0:0" gives no usable number.')
  })

  it('a long text is refused unread', () => {
    expect(refused(`${'1'.repeat(100)} V`, 'voltage').wrong).toBe('This text is too long for a quantity.')
    expect(parseQuantity(`${'0'.repeat(98)}1V`, 'voltage')).toEqual({ ok: true, value: 1, unit: 'V' })
  })

  it('a sentence quotes forty characters at most', () => {
    expect(refused(`x${'😀'.repeat(45)}`, 'voltage').wrong).toBe(
      `"x${'😀'.repeat(39)}…" does not begin with a number.`,
    )
  })
})

describe('shares', () => {
  it('thirty times the whole is asked about', () => {
    expect(refused('30', 'share')).toEqual({
      ok: false,
      wrong: '"30" is more than the whole.',
      wouldDo: 'Write 30 % if that is meant.',
      offers: ['30 %'],
    })
    expect(refused('-2', 'share').offers).toEqual(['-2 %'])
  })
})

describe('clock form', () => {
  it('may be minutes or hours', () => {
    expect(refused('1:30', 'time')).toEqual({
      ok: false,
      wrong: '"1:30" could be minutes or hours.',
      wouldDo: 'Write 1 min 30 s or 1 h 30 min.',
      offers: ['1 min 30 s', '1 h 30 min'],
    })
    expect(refused('1:30', 'time', 's').offers).toEqual(['1 min 30 s', '1 h 30 min'])
    expect(refused('1:02:03', 'time').offers).toEqual(['1 h 02 min 03 s'])
    expect(refused('1:02:03:04', 'time').wrong).toBe('"1:02:03:04" cannot be read.')
    expect(refused('1:30 h', 'time').wrong).toBe('"1:30 h" cannot be read.')
    expect(refused('4:1', 'torque').wrong).toBe('"4:1" cannot be read.')
    expect(refused('4 V:1', 'number').wrong).toBe('"4 V:1" cannot be read.')
    expect(refused('1:2:3', 'number').wrong).toBe('"1:2:3" cannot be read.')
  })
})

describe('units out of order', () => {
  it.each(['30 s 2 min', '3 in 5 ft', '5 s 5 s'])('%s', (text) => {
    const dimension = text.includes('in 5') ? 'length' : 'time'
    expect(refused(text, dimension).wrong).toBe(`The units in "${text}" do not go from large to small.`)
  })

  it('numbers are added in times, lengths and masses only, and never taken away', () => {
    expect(refused('5 V 3 mV', 'voltage').ok).toBe(false)
    expect(refused('2 min -30 s', 'time').ok).toBe(false)
    expect(refused('5 ft - 3 in', 'length').ok).toBe(false)
  })
})
