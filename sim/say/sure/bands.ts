// Times and temperatures within their bands: both rounded to the doubt.
import type { SureBand } from '../../studies/sure.ts'
import { duration, NBSP, show, told } from '../number.ts'
import type { Units } from '../units.ts'

/** Steps that a time is rounded to, s: the largest that leaves the doubt several of them. */
const STEPS = [1, 10, 60, 300, 600, 1800, 3600]
const STEPS_WIDE = 8

const stepFor = (width: number): number => STEPS.findLast((step) => step * STEPS_WIDE <= width) ?? 1

/** A time within its band, in pieces: "24 min" and "likely between 15 and 39"; no band where none is left. */
export function timeWords(t: number, { low, high }: SureBand): { when: string; likely: string } {
  const width = low === null ? 0 : high === null ? 2 * Math.max(0, t - low) : high - low
  const step = stepFor(width)
  const at = (value: number) => Math.max(step > 1 ? step : 0, Math.round(value / step) * step)
  const plain = step >= 60 && Math.max(t, high ?? 0) < 100 * 60
  const words = (value: number, unit = true) =>
    plain ? `${Math.round(at(value) / 60)}${unit ? `${NBSP}min` : ''}` : duration(at(value))
  if (low === null) return { when: words(t), likely: '' }
  if (high === null) return { when: words(t), likely: `likely not before ${words(low)}` }
  if (words(low) === words(high)) return { when: words(t), likely: '' }
  return { when: words(t), likely: `likely between ${words(low, false)} and ${words(high, false)}` }
}

/** "76 °C, likely between 66 and 91". */
export function heatWords(value: number, band: SureBand, units: Units): string {
  const likely = heatLikely(value, band, units)
  return `${told(value, 'temperature', units)}${likely === '' ? '' : `, ${likely}`}`
}

/** "likely between 66 and 91"; '' where no band is left. */
export function heatLikely(value: number, { low, high }: SureBand, units: Units): string {
  const [from, to] = [low ?? value, high ?? value].map((each) => show(each, 'temperature', units).number)
  return from === to ? '' : `likely between ${from} and ${to}`
}

/** "15 to 39 min", "from 40 min, or never", "never": a band of times for a chart or a table. */
export function timeBand({ low, high }: Pick<SureBand, 'low' | 'high'>): string {
  if (low === null) return 'never'
  const { likely } = timeWords(low, { low, mid: low, high })
  if (high === null) return `${duration(stepRound(low))} to never`
  const words = likely.replace('likely between ', '').replace(' and ', ' to ')
  if (words === '') return duration(low)
  return /[a-z]/.test(words.replace('to', '')) ? words : `${words}${NBSP}min`
}
const stepRound = (t: number): number => Math.round(t / 60) * 60

/** "86 to 118 °C". */
export function heatBand({ low, high }: Pick<SureBand, 'low' | 'high'>, units: Units): string {
  if (low === null || high === null) return '–'
  const [from, to] = [low, high].map((each) => show(each, 'temperature', units).number)
  return from === to ? told(high, 'temperature', units) : `${from} to ${told(high, 'temperature', units)}`
}
