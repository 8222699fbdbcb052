// A log with more readings than a fit needs, in blocks: heat keeps its sum, temperatures their mean.
import type { Log } from './log.ts'

/** Readings a fit is given at most. */
const MOST = 2000

/** The log and its speeds with at most MOST rows; NaN cells do not count in a mean. */
export function thinned(log: Log, speed: Float64Array): { log: Log; speed: Float64Array } {
  const block = Math.ceil(log.rows / MOST)
  if (block <= 1) return { log, speed }
  const rows = Math.ceil(log.rows / block)
  const mean = (column: Float64Array, power = 1): Float64Array =>
    Float64Array.from({ length: rows }, (_, n) => {
      const known = column.subarray(n * block, (n + 1) * block).filter((value) => !Number.isNaN(value))
      const sum = known.reduce((all, value) => all + value ** power, 0)
      return known.length === 0 ? Number.NaN : (sum / known.length) ** (1 / power)
    })
  return {
    speed: mean(speed),
    log: {
      ...log,
      rows,
      time: mean(log.time),
      frameC: mean(log.frameC),
      windingC: mean(log.windingC),
      ohms: mean(log.ohms),
      airC: mean(log.airC),
      // Copper heat goes with the square.
      amps: mean(log.amps, 2),
      speed: mean(log.speed),
      volts: mean(log.volts),
    },
  }
}
