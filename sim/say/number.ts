// Numbers as the product writes them: rounded to what they are worth, with the spaces of good setting.
import { type Dimension, toUnit } from '../quantity.ts'
import { type Units, unitFor } from './units.ts'

/** Narrow no-break space, between thousands; no-break space, before units. */
const THIN = '\u202f'
export const NBSP = '\u00a0'

/** A number and its unit, apart, so that the page can set them in two sizes. */
export interface Shown {
  readonly number: string
  readonly unit: string
}

/** A decimal number with thin spaces between thousands and a true minus sign. */
export function grouped(value: number, decimals: number): string {
  const [whole = '', part] = Math.abs(value).toFixed(decimals).split('.')
  const spaced = whole.replace(/\B(?=(\d{3})+$)/g, THIN)
  const text = part === undefined ? spaced : `${spaced}.${part}`
  return value < 0 && Number(text.replaceAll(THIN, '')) !== 0 ? `−${text}` : text
}

/** Rounds to three significant digits, without trailing zeros after the point. */
export function brief(value: number): string {
  if (value === 0) return '0'
  const size = Math.floor(Math.log10(Math.abs(value)))
  if (size >= 3) return grouped(Math.round(value / 10 ** (size - 2)) * 10 ** (size - 2), 0)
  if (size < -4) return value.toPrecision(3).replace(/\.?0+e/, 'e')
  return grouped(Number(value.toPrecision(3)), Math.max(0, 2 - size))
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '')
}

/** Amps and torques smaller than this are what is left of dying away: nothing. */
const NOTHING = 5e-4

/** One decimal, but never more than three significant digits, nor 0.0 for what is not nothing. */
const oneDecimal = (value: number): string =>
  Math.abs(value) < NOTHING || (Math.abs(value) >= 0.995 && Math.abs(value) < 99.95)
    ? grouped(value, 1)
    : brief(value)

/** Whole turns a minute, to 10 above 1000, to three significant digits above 10 000. */
const turns = (value: number): string => {
  if (Math.abs(value) >= 9995) return brief(value)
  return grouped(Math.abs(value) > 1000 ? Math.round(value / 10) * 10 : Math.round(value), 0)
}

const FORMATS: Partial<Record<Dimension, (value: number) => string>> = {
  temperature: (value) => grouped(Math.round(value), 0),
  'temperature difference': (value) => grouped(Math.round(value), 0),
  current: oneDecimal,
  torque: oneDecimal,
  'angular speed': turns,
}

/** A quantity in the reader's units. Infinite or missing: an em dash. */
export function show(value: number, dimension: Dimension, units: Units): Shown {
  const unit = unitFor(dimension, units)
  if (!Number.isFinite(value)) return { number: '—', unit }
  const inUnit =
    dimension === 'temperature difference' && units.temperature === '°F'
      ? value * 1.8
      : unit === ''
        ? value
        : toUnit(value, unit)
  return {
    number: (FORMATS[dimension] ?? brief)(inUnit),
    unit: dimension === 'temperature difference' ? units.temperature : unit,
  }
}

/** The same in one piece: "132 °C". */
export function told(value: number, dimension: Dimension, units: Units): string {
  const { number, unit } = show(value, dimension, units)
  return unit === '' ? number : `${number}${NBSP}${unit}`
}

const pad = (value: number): string => String(value).padStart(2, '0')

/** Rounded as the product tells time: to 10 s over a minute, to 1 s under. */
const rounded = (t: number): number => (t > 60 ? Math.round(t / 10) * 10 : Math.round(t))

/** Clock form for charts and tables: 23:40, from an hour 1:23:40. */
export function clockTime(t: number): string {
  const s = rounded(t)
  const minutes = Math.floor(s / 60)
  if (minutes < 60) return `${minutes}:${pad(s % 60)}`
  return `${Math.floor(minutes / 60)}:${pad(minutes % 60)}:${pad(s % 60)}`
}

/** For sentences: "23 min 40 s", "1 h 24 min", "42 s", "0.3 s". Over an hour, whole minutes. */
export function duration(t: number): string {
  if (t > 0 && t < 0.95) return `${brief(Number(t.toPrecision(1)))}${NBSP}s`
  const s = rounded(t)
  if (s < 60) return `${s}${NBSP}s`
  const joined = (big: number, bigUnit: string, small: number, smallUnit: string) =>
    `${big}${NBSP}${bigUnit}${small > 0 ? ` ${small}${NBSP}${smallUnit}` : ''}`
  if (s < 3600) return joined(Math.floor(s / 60), 'min', s % 60, 's')
  const minutes = Math.round(t / 60)
  if (minutes < 48 * 60) return joined(Math.floor(minutes / 60), 'h', minutes % 60, 'min')
  const hours = Math.round(t / 3600)
  return joined(Math.floor(hours / 24), 'd', hours % 24, 'h')
}

/** "4 : 1", or one decimal where it is not whole. */
export function ratioText(ratio: number): string {
  const whole = Math.round(ratio)
  const text = whole > 0 && Math.abs(ratio - whole) < 0.005 ? grouped(whole, 0) : oneDecimal(ratio)
  return `${text}${NBSP}:${NBSP}1`
}

const FRACTIONS = [
  [0.25, '¼'],
  [1 / 3, '⅓'],
  [0.5, '½'],
  [2 / 3, '⅔'],
  [0.75, '¾'],
] as const

/** Power as a plate prints it: horsepower of old motors in fractions, "¾ hp", "1½ hp". */
export function platePower(power: number, units: Units): string {
  const plain = told(power, 'power', units)
  if (unitFor('power', units) !== 'hp') return plain
  const value = toUnit(power, 'hp')
  const whole = Math.floor(value)
  const fraction = FRACTIONS.find(([part]) => Math.abs(value - whole - part) < 0.004)
  return fraction ? `${whole > 0 ? whole : ''}${fraction[1]}${NBSP}hp` : plain
}

/** A share as a whole per cent: "14 %". */
export const percent = (share: number): string => `${grouped(Math.round(share * 100), 0)}${NBSP}%`
