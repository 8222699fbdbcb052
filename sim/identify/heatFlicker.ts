// Amps flicker, and a log holds only moments of them: how far the heat of a stretch may be off for that.
import type { Drive } from './heatDrive.ts'
import type { Log } from './log.ts'

/** Stretches of the running time in which the heat may have been other than the few readings of amps say. */
const MOST_STRETCHES = 12
const READINGS_EACH = 3
/** Amps that flicker less than this, as a share, were steady. */
const STEADY = 0.002

/** Stretches of running readings, each with how far its mean heat may be off, as a logarithm; none for steady amps. */
export function stretchesIn(log: Log, drive: Drive): { rows: readonly number[]; give: number }[] {
  const rows = [...drive.running.keys()].filter((at) => drive.running[at])
  const flicker = flickerOf(log, drive)
  const each = Math.max(READINGS_EACH, Math.ceil(rows.length / MOST_STRETCHES))
  if (flicker < STEADY) return []
  return Array.from({ length: Math.ceil(rows.length / each) }, (_, n) => {
    const own = rows.slice(n * each, (n + 1) * each)
    return { rows: own, give: (2 * flicker) / Math.sqrt(own.length) }
  })
}

/** Standard deviation of a reading of amps, as a share: by how much running neighbours differ, the middle of it. */
function flickerOf({ amps, rows }: Log, { running }: Drive): number {
  const steps: number[] = []
  for (let at = 1; at < rows; at++)
    if (running[at] && running[at - 1]) steps.push(Math.abs(Math.log(amps[at] / amps[at - 1])))
  if (steps.length === 0) return 0
  return (1.4826 * steps.toSorted((a, b) => a - b)[steps.length >> 1]) / Math.SQRT2
}
