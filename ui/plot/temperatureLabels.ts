// Labels of the temperature chart: trip marks and their times, names of lines, an early end.
import { clockTime } from '../../sim/say/number.ts'
import { type Polyline, type Rect, textWidth, type Wanted } from './label.ts'
import type { LabelText } from './layers/labels.ts'
import { TRIP_SIZE } from './layers/tripMark.ts'
import type { Box, Scales } from './scales.ts'
import { endOf, type Series, type Shown } from './shown.ts'
import { alongLine, type View } from './view.ts'

/** A trip mark to draw: its middle and square, px. */
export interface Trip {
  readonly cx: number
  readonly cy: number
  readonly rect: Rect
  readonly t: number
  readonly open: boolean
  readonly series: Series
  readonly active: boolean
}

/** Trip marks of a variant within the plot; of marks of one kind that would overlap, the first. */
export function tripsIn(
  { trace, job, series }: Shown,
  active: boolean,
  view: View,
  { x, y }: Scales,
): Trip[] {
  const size = active ? TRIP_SIZE.active : TRIP_SIZE.other
  const last = { opens: Number.NEGATIVE_INFINITY, recloses: Number.NEGATIVE_INFINITY }
  const trips: Trip[] = []
  for (const mark of trace.marks) {
    if ((mark.kind !== 'opens' && mark.kind !== 'recloses') || mark.t < view.from || mark.t > view.to)
      continue
    const cx = x(mark.t)
    if (cx - last[mark.kind] < size) continue
    last[mark.kind] = cx
    const open = mark.kind === 'opens'
    const cy = y(open ? job.parts.cutoff.opensAt : job.parts.cutoff.reclosesAt)
    trips.push({
      cx,
      cy,
      rect: { x: cx - size / 2, y: cy - size / 2, width: size, height: size },
      t: mark.t,
      open,
      series,
      active,
    })
  }
  return trips
}

/** "opens 23:40" beside the active variant's marks: above the opening line, below the reclosing line. */
export const tripsWanted = (trips: readonly Trip[], { type, row }: View): (Wanted & LabelText)[] =>
  trips
    .filter(({ active }) => active)
    .map(({ cx, cy, rect, t, open }) => {
      const text = `${open ? 'opens' : 'recloses'} ${clockTime(t)}`
      const width = textWidth(text, type)
      const height = row - 2
      const aside = rect.width / 2 + 2
      const over = cy - aside - height
      const under = cy + aside
      const rightwards = [cx + 3, open ? over : under] as const
      const leftwards = [cx - width - 3, open ? over : under] as const
      const further = [cx + 3, open ? over - row : under + row] as const
      const beside = [cx + aside, cx - aside - width].map((x) => [x, cy - height / 2] as const)
      const spots = [rightwards, leftwards, further, ...beside]
      return { text, look: open ? 'bad strong' : 'strong', width, height, spots }
    })

/** Names at the lines: the active variant's winding and frame, the others by their own, and where a run broke off. */
export function namesWanted(
  view: View,
  box: Box,
  own: { winding: Polyline; frame: Polyline; switch: Polyline },
  others: readonly { variant: Shown; line: Polyline }[],
): (Wanted & LabelText)[] {
  const lines = [own.winding, own.frame, own.switch, ...others.map(({ line }) => line)]
  const label = (text: string, look: string, line: Polyline) => {
    const rest = lines.filter((other) => other !== line)
    const size = { width: textWidth(text, view.type), height: view.row - 2 }
    return { text, look, ...size, spots: alongLine(line, rest, box, size) }
  }
  const ends = view.variants
    .filter(({ trace }) => trace.ending.kind === 'destroyed')
    .filter((variant) => endOf(variant) >= view.from && endOf(variant) <= view.to)
    .map((variant) => {
      const line =
        variant === view.active
          ? own.winding
          : (others.find((other) => other.variant === variant)?.line ?? [])
      return label(`winding destroyed ${clockTime(endOf(variant))}`, 'bad strong', line.slice(-2))
    })
  return [
    ...ends,
    ...others.map(({ variant, line }) => label(variant.name, `strong ${variant.series}`, line)),
    label('winding', '', own.winding),
    label('frame', '', own.frame),
  ]
}

/** "can, logged" at the rings of a logged run. */
export function loggedWanted(
  view: View,
  box: Box,
  points: Polyline,
  lines: readonly Polyline[],
): (Wanted & LabelText)[] {
  const text = 'can, logged'
  const size = { width: textWidth(text, view.type), height: view.row - 2 }
  return points.length > 1
    ? [{ text, look: 'logged-name strong', ...size, spots: alongLine(points, lines, box, size) }]
    : []
}
