// A logged run beside the prediction, in words: hotter or cooler, by how much, only where both are there.
import { beforeAll, expect, it } from 'vitest'
import type { Log } from '../../../sim/identify/log.ts'
import { gapWords } from '../../../sim/say/log.ts'
import { type Trace, valueAt } from '../../../sim/trace.ts'
import { job, traceOf } from '../../jobs.ts'

const metric = { system: 'metric', temperature: '°C' } as const
let trace: Trace
beforeAll(() => {
  trace = traceOf(job({ 'duty.repeatFor': '20 min' }))
})

/** A log that reads the predicted can, and so much more; one reading a minute over `minutes`. */
const logOff = (kelvin: (minute: number) => number, minutes = 20): Log => {
  const time = Float64Array.from({ length: minutes + 1 }, (_, n) => 60 * n)
  const none = time.map(() => Number.NaN)
  const columns = { windingC: none, ohms: none, airC: none, amps: none, speed: none, volts: none }
  const frameC = time.map((t, n) => valueAt(trace, 'frameC', t) + kelvin(n))
  return { rows: time.length, time, frameC, ...columns, place: 'can' }
}
const words = (log: Log, units: Parameters<typeof gapWords>[2] = metric) =>
  gapWords(log, trace, units).replaceAll('\u00a0', ' ')

it('says how much hotter or cooler, and the most', () => {
  expect(words(logOff((n) => (n === 7 ? 9 : 3)))).toBe(
    'On average the can was logged 3.3 K hotter than predicted, 9.0 K off at most, over 20 min.',
  )
  expect(words(logOff(() => -2))).toContain('2.0 K cooler than predicted')
  expect(
    words(
      logOff(() => 5),
      { system: 'us', temperature: '°F' },
    ),
  ).toContain('9.0 °F hotter')
})

it('does not make much of little, nor hide what evens out', () => {
  expect(words(logOff(() => 0.2))).toBe('The can was logged where it was predicted, to 0.2 K, over 20 min.')
  expect(words(logOff((n) => (n === 0 ? 0 : n % 2 ? 6 : -6)))).toContain('6.0 K off at most')
})

it('leaves out readings after the run’s end and gaps, and says nothing where none is left', () => {
  const long = logOff((n) => (n > 20 ? 100 : 1), 40)
  expect(words(long)).toContain('1.0 K hotter')
  expect(words(logOff(() => Number.NaN))).toBe('')
})
