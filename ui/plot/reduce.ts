// How one channel of a variant is drawn in a window: an exact line, or a mean line and the band of its surges.
import { cycleSeconds, type Duty } from '../../sim/duty.ts'
import type { Channel, Sum, Trace } from '../../sim/trace.ts'
import { means, outline, type Points, phaseEdges, pieces, rowsFor, type Spread } from './columns.ts'

/** A channel reduced: the line in one run, and a band for each steady stretch (none where the line is exact). */
export interface Reduced {
  readonly line: Points
  readonly bands: readonly Spread[]
}

/** Part of the job and how many seconds one pixel covers. */
export interface Span {
  readonly from: number
  readonly to: number
  readonly perPixel: number
}

/** Length of a mean, s; at least this many pixels. */
const MEAN_SECONDS = 15
const MEAN_PIXELS = 2
/** Below this many seconds a pixel, single surges are wide enough to be seen, and the line is exact. */
const FINE = 1
/** Phases narrower than this many pixels do not cut the means. */
const PHASE_PIXELS = 4

/** Mean length near 15 s that holds whole surges, so that the mean does not beat with them. s */
export function meanSeconds(duty: Duty, perPixel: number): number {
  const least = Math.max(MEAN_SECONDS, MEAN_PIXELS * perPixel)
  const every = duty.phases.find((phase) => phase.surge !== null)?.surge?.every
  if (every === undefined || every > 2 * least) return least
  return Math.max(1, Math.round(least / every)) * every
}

/** The line of a channel that needs no band: exact to the pixel. */
export function exact(trace: Trace, channel: Channel, { from, to, perPixel }: Span): Points {
  if (trace.time.length === 0) return { t: [], value: [] }
  const [first, last] = rowsFor(trace.time, from, to)
  return outline(trace.time, trace.columns[channel], first, last, perPixel)
}

/** The line of a channel with surges: means and bands while the controller is steady, exact while it ramps or is off. */
export function surging(trace: Trace, duty: Duty, channel: Channel, span: Span, sum?: Sum): Reduced {
  const { from, to, perPixel } = span
  const { time, columns } = trace
  const exactly = () => ({ line: exact(trace, channel, span), bands: [] })
  if (perPixel <= FINE) return exactly()
  const edges = phaseEdges(duty, Math.max(0, from - cycleSeconds(duty)), to, PHASE_PIXELS * perPixel)
  const parts = pieces(trace, from, to, edges)
  // More pieces than pixels: nothing but the outline can be told apart.
  if (parts.length > (to - from) / perPixel) return exactly()

  const seconds = meanSeconds(duty, perPixel)
  const t: number[] = []
  const value: number[] = []
  const bands: Spread[] = []
  for (const piece of parts) {
    const steady = piece.kind === 'steady'
    const reduced = steady ? means(time, columns[channel], piece, seconds, sum && columns[sum]) : undefined
    const line = reduced?.line ?? outline(time, columns[channel], piece.first, piece.last, perPixel)
    // After a mean, the single value the controller went off at would stand out as a spike: it is within the band.
    const ends = !steady && t.length > 0 ? time[piece.first] + perPixel : Number.NEGATIVE_INFINITY
    for (let n = 0; n < line.t.length; n++) {
      if (line.t[n] < ends && n < line.t.length - 1 && piece.kind === 'off') continue
      t.push(line.t[n])
      value.push(line.value[n])
    }
    if (reduced) bands.push(reduced.band)
  }
  return { line: { t, value }, bands }
}
