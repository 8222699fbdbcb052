// A log thinned into blocks: heat keeps its sum, temperatures their mean, gaps do not count.
import { expect, it } from 'vitest'
import type { Log } from '../../../sim/identify/log.ts'
import { thinned } from '../../../sim/identify/logThin.ts'

/** A log of so many rows, a second apart; amps 3 and 4 by turns, every fifth can reading missing. */
function logOf(rows: number): Log {
  const column = (value: (row: number) => number) =>
    Float64Array.from({ length: rows }, (_, row) => value(row))
  const empty = column(() => Number.NaN)
  return {
    rows,
    time: column((row) => row),
    frameC: column((row) => (row % 5 === 4 ? Number.NaN : 20 + row)),
    windingC: empty,
    ohms: empty,
    airC: empty,
    amps: column((row) => 3 + (row % 2)),
    speed: column((row) => row),
    volts: empty,
    place: 'can',
  }
}

it('a log that is short enough stays as it is', () => {
  const log = logOf(2000)
  expect(thinned(log, log.speed)).toEqual({ log, speed: log.speed })
})

it('a long one comes to at most 2000 rows', () => {
  const log = logOf(7999)
  const { log: short, speed } = thinned(log, log.speed)
  expect(short.rows).toBe(2000)
  for (const column of [short.time, short.frameC, short.amps, speed]) expect(column).toHaveLength(2000)
  expect(short.time[0]).toBe(1.5)
  expect(speed[0]).toBe(1.5)
  // Copper heat goes with the square: of 3, 4, 3, 4.
  expect(short.amps[0] ** 2).toBeCloseTo((9 + 16) / 2, 12)
  // 24 is missing among 24 to 27; the last block holds three rows.
  expect(short.frameC[1]).toBeCloseTo((25 + 26 + 27) / 3, 12)
  expect(short.time[1999]).toBe(7997)
  expect(short.ohms[0]).toBeNaN()
})
