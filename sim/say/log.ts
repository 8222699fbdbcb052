// A logged run beside the prediction, in words: how far the can lay from where it was predicted.
import type { Log } from '../identify/log.ts'
import { type Trace, valueAt } from '../trace.ts'
import { duration, grouped, NBSP } from './number.ts'
import type { Units } from './units.ts'

/** Misses under this are none. K */
const NEAR = 0.5

/** "The can was logged 3.1 K hotter than predicted on average, 7 K at most." '' where no reading lies within the run. */
export function gapWords(log: Log, trace: Trace, units: Units): string {
  const end = trace.time[trace.time.length - 1]
  const gaps: number[] = []
  for (let row = 0; row < log.rows; row++)
    if (log.time[row] <= end && !Number.isNaN(log.frameC[row]))
      gaps.push(log.frameC[row] - valueAt(trace, 'frameC', log.time[row]))
  if (gaps.length === 0) return ''
  const fahrenheit = units.temperature === '°F'
  const told = (kelvin: number): string =>
    `${grouped(fahrenheit ? 1.8 * kelvin : kelvin, 1)}${NBSP}${fahrenheit ? '°F' : 'K'}`
  const mean = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length
  const most = gaps.reduce((top, gap) => Math.max(top, Math.abs(gap)), 0)
  const over = `over ${duration(Math.min(end, log.time[log.rows - 1]))}`
  if (most < NEAR) return `The can was logged where it was predicted, to ${told(most)}, ${over}.`
  if (Math.abs(mean) < NEAR)
    return `On average the can was logged where it was predicted, ${told(most)} off at most, ${over}.`
  return `On average the can was logged ${told(Math.abs(mean))} ${mean > 0 ? 'hotter' : 'cooler'} than predicted, ${told(most)} off at most, ${over}.`
}
