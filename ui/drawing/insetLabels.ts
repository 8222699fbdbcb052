// Names and readings round the cut motor: in a row over it and one under it, pushed apart, each with its leader.
import { pushApart, textWidth } from '../plot/label.ts'
import { POINTS, switchPoint } from './cutaway.ts'
import { type Drive, isStandIn } from './drive.ts'
import type { Point } from './runs.ts'
import { ROW, type Sheet } from './sheet.ts'

/** What a label reads at the moment: a temperature, or words that stay. */
export interface InsetLabel {
  readonly name: string
  /** A node of the heat, or what is always said; '' for a name alone. */
  readonly reads: 'winding' | 'frame' | 'switch' | { readonly always: string }
  /** Middle of the label, left to right; middle line of its name. */
  readonly at: Point
  readonly width: number
  readonly leader: readonly [Point, Point]
}

const FAN: Readonly<Record<string, readonly [string, string]>> = {
  'shaft fan': ['fan', 'fitted'],
  none: ['fan', 'removed'],
  blower: ['blower', 'fitted'],
  'enclosed, outer fan': ['outer fan', 'fitted'],
}

/** Middles of labels of these widths, in their order, each as near its wish as the others allow. */
function inRow(wishes: readonly number[], widths: readonly number[], low: number, high: number): number[] {
  let before = 0
  const offsets = widths.map((width) => {
    const offset = before + width / 2
    before += width
    return offset
  })
  // Taking the widths away leaves points that only have to keep their order.
  let least = Number.NEGATIVE_INFINITY
  const points = wishes.map((wish, n) => {
    least = Math.max(least, wish - offsets[n])
    return least
  })
  return pushApart(points, 0, low, high - before).map((point, n) => point + offsets[n])
}

/** The labels with their places. */
export function insetLabels(drive: Drive, { inset, cut, cutScale, k }: Sheet): readonly InsetLabel[] {
  const unit = cutScale * drive.shell
  const point = ([x, y]: readonly [number, number]): Point => ({ x: cut.x + x * unit, y: cut.y + y * unit })
  const fan = FAN[drive.cooling]
  type Wanted = { name: string; reads: InsetLabel['reads']; to: Point }
  const over: Wanted[] = [
    ...(drive.cooling === 'blower'
      ? [{ name: 'blower', reads: { always: 'fitted' }, to: point(POINTS.blower) }]
      : []),
    ...(drive.cutoff
      ? [{ name: 'cutoff switch', reads: 'switch' as const, to: point(switchPoint(drive.cutoff)) }]
      : []),
    { name: 'winding', reads: 'winding', to: point(POINTS.winding) },
    ...(fan && drive.cooling !== 'blower'
      ? // A stand-in claims nothing about the motor.
        [{ name: fan[0], reads: { always: isStandIn(drive) ? `${fan[1]}?` : fan[1] }, to: point(POINTS.fan) }]
      : []),
  ]
  const under: Wanted[] = [
    { name: 'brushes', reads: { always: '' }, to: point(POINTS.brushes) },
    { name: 'frame', reads: 'frame', to: point(POINTS.frame) },
  ]
  const row = (wanted: Wanted[], isOver: boolean): InsetLabel[] => {
    const widths = wanted.map(({ name, reads }) => {
      const reading = typeof reads === 'string' ? '188 °C' : reads.always
      return Math.max(textWidth(name, 13 * k), textWidth(reading, 17 * k)) + 10
    })
    const middles = inRow(
      wanted.map(({ to }) => to.x),
      widths,
      inset.x + 4,
      inset.x + inset.width - 4,
    )
    const top = isOver ? inset.y + 6 : inset.y + inset.height - 6 - (ROW + 20) * k
    return wanted.map(({ name, reads, to }, n) => {
      const at = { x: middles[n], y: top + (ROW / 2) * k }
      const edge = isOver ? at.y + 31 * k : top - 2
      return { name, reads, at, width: widths[n], leader: [{ x: at.x, y: edge }, to] as const }
    })
  }
  return [...row(over, true), ...row(under, false)]
}
