// Dimension lines, tags and speeds: each where there is room for it, none over another.
import { NBSP } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { fieldText } from '../edit/shownText.ts'
import { type Rect, textWidth } from '../plot/label.ts'
import type { Dimension, Drive } from './drive.ts'
import { distance, type Point, type Wheel } from './runs.ts'
import { line, ring, Setter } from './setter.ts'
import { ROW, type Sheet, tagHeight } from './sheet.ts'

/** A dimension as its tag shows it. */
export interface TagText {
  readonly dimension: Dimension
  readonly text: string
}

export interface Tag extends TagText {
  readonly box: Rect
  /** From the tag to what it measures; null where it stands in its dimension line. */
  readonly leader: readonly [Point, Point] | null
}

/** A dimension line with an arrow at both ends, and the lines that carry it out to its side. */
export interface DimensionLine {
  readonly ends: readonly [Point, Point]
  readonly witnesses: readonly (readonly [Point, Point])[]
}

export interface Speed {
  readonly box: Rect
  readonly leader: readonly [Point, Point] | null
}

export interface Annotations {
  readonly tags: readonly Tag[]
  readonly lines: readonly DimensionLine[]
  /** Speeds of motor and spindle; with a leader where they could not stand at their wheel. */
  readonly speeds: readonly [Speed, Speed]
}

/** Longest text of a tag. */
const LONGEST = 12

/** A dimension as its field shows it: "2 1/2 in"; "? in" while it is open. */
function tagText({ input: { field, text } }: Dimension, units: Units): string {
  const shown = field.kind === 'quantity' ? fieldText(field, text, units) : { text, unit: '' }
  const whole = `${shown.text || '?'}${NBSP}${shown.unit}`.trim()
  return whole.length > LONGEST ? `${whole.slice(0, LONGEST - 1)}…` : whole
}

const tagSize = (text: string, sheet: Sheet) => ({
  width: Math.round(Math.max(52 * sheet.k, textWidth(text, 14.5 * sheet.k) + 20)),
  height: tagHeight(sheet),
})

const nearest = ({ x, y, width, height }: Rect, to: Point): Point => ({
  x: Math.min(x + width, Math.max(x, to.x)),
  y: Math.min(y + height, Math.max(y, to.y)),
})

/** A speed further than this from its wheel (px) gets a leader. */
const AWAY = 24

/** Line from a tag to the rim it measures. */
function toRim(box: Rect, { at, r }: Wheel): readonly [Point, Point] {
  const from = nearest(box, at)
  const far = distance(from, at)
  const share = far > r ? r / far : 0
  return [from, { x: at.x + (from.x - at.x) * share, y: at.y + (from.y - at.y) * share }]
}

/** Tag of a wheel's diameter: in a dimension line under or over a large wheel, else beside it with a leader. */
function wheelTag(
  setter: Setter,
  sheet: Sheet,
  { at, r }: Wheel,
  tag: TagText,
): { tag: Tag; line: DimensionLine | null } {
  const size = tagSize(tag.text, sheet)
  if (2 * r >= size.width + 40)
    for (const side of [1, -1]) {
      const y = at.y + side * (r + 10 + size.height / 2)
      const [a, b] = [-r, r].map((dx) => ({ x: at.x + dx, y }))
      const box = setter.clear(a, b) ? setter.at(size, [{ x: at.x, y }], []) : undefined
      if (!box) continue
      const witnesses = [a, b].map(
        (end) =>
          [
            { x: end.x, y: at.y },
            { x: end.x, y: y + 5 * side },
          ] as const,
      )
      return { tag: { ...tag, box, leader: null }, line: { ends: [a, b], witnesses } }
    }
  const box = setter.at(size, ring(at, r, size)) ?? setter.anywhere(size, at)
  return { tag: { ...tag, box, leader: toRim(box, { at, r }) }, line: null }
}

/** Tag of a distance between centres, in a dimension line beside the belt, or along the line of centres. */
function centresTag(
  setter: Setter,
  sheet: Sheet,
  [one, other]: readonly [Wheel, Wheel],
  tag: TagText,
): { tag: Tag; line: DimensionLine } {
  const size = tagSize(tag.text, sheet)
  const length = Math.max(1e-6, distance(one.at, other.at))
  const across: Point = { x: (other.at.y - one.at.y) / length, y: -(other.at.x - one.at.x) / length }
  const out = Math.max(one.r, other.r) + 16
  const by = (p: Point, far: number): Point => ({ x: p.x + across.x * far, y: p.y + across.y * far })
  const side = [out, out - 8, -out].find((far) => setter.clear(by(one.at, far), by(other.at, far))) ?? 0
  const ends = [by(one.at, side), by(other.at, side)] as const
  const along = (share: number): Point => ({
    x: ends[0].x + (ends[1].x - ends[0].x) * share,
    y: ends[0].y + (ends[1].y - ends[0].y) * share,
  })
  const witnesses =
    side === 0 ? [] : [one, other].map(({ at }) => [at, by(at, side + 5 * Math.sign(side))] as const)
  const short = length < size.height + 34
  const spots = short ? [] : [0.5, 0.42, 0.58, 0.34, 0.66, 0.27, 0.73, 0.2, 0.8].map(along)
  const inLine = setter.at(size, spots)
  if (inLine) return { tag: { ...tag, box: inLine, leader: null }, line: { ends, witnesses } }
  const middle = along(0.5)
  const box = setter.at(size, ring(middle, 10, size)) ?? setter.anywhere(size, middle)
  return { tag: { ...tag, box, leader: [nearest(box, middle), middle] }, line: { ends, witnesses } }
}

/** Everything that is written round the drive line. */
export function annotate(drive: Drive, sheet: Sheet, units: Units): Annotations {
  const { placement, k } = sheet
  const { stages, shell } = placement
  const setter = new Setter(sheet)
  const tagged = (dimension: Dimension): TagText => ({ dimension, text: tagText(dimension, units) })
  const first = stages[0]
  const last = stages[stages.length - 1]
  const { jackshaft } = drive
  const between: [Wheel, Dimension][] = jackshaft
    ? [
        [first.driven, jackshaft.large],
        [last.driving, jackshaft.small],
      ]
    : []
  const spans: [readonly [Wheel, Wheel], Dimension][] = [
    [[last.driving, last.driven], drive.centres],
    ...(jackshaft ? ([[[first.driving, first.driven], jackshaft.centres]] as typeof spans) : []),
  ]
  const size = { width: 88 * k, height: (ROW + 4) * k }
  const stand: Rect = {
    x: shell.at.x - 1.65 * shell.r,
    y: shell.at.y,
    width: 3.3 * shell.r,
    height: placement.floor - shell.at.y,
  }
  const speed = (wheel: Wheel, best: readonly Point[]): Speed => {
    const { at, r } = wheel
    const middles = [...best, ...ring(at, r, size)]
    const box = setter.at(size, middles, setter.lines, [stand]) ?? setter.anywhere(size, at)
    const leader = toRim(box, wheel)
    return { box, leader: distance(...leader) > AWAY ? leader : null }
  }
  const motor: Wheel = { at: shell.at, r: Math.max(shell.r, first.driving.r) }
  const { at, r } = last.driven
  const spindleSpeed = speed(last.driven, [{ x: at.x, y: at.y - r - 10 - size.height / 2 }])
  const machineTag = wheelTag(setter, sheet, last.driven, tagged(drive.machinePulley))
  const set = [
    machineTag,
    wheelTag(setter, sheet, motor, tagged(drive.motorPulley)),
    ...spans.map(([pair, of]) => centresTag(setter, sheet, pair, tagged(of))),
  ]
  for (const each of set) if (each.line) setter.lines.push(line(...each.line.ends))
  const motorSpeed = speed(
    motor,
    [
      [-motor.r - 8 - size.width / 2, -0.4 * motor.r],
      [-motor.r - 4 - size.width / 2, -motor.r],
      [-size.width / 2, -motor.r - 6 - size.height / 2],
      [size.width / 2 + motor.r + 8, 0.6 * motor.r],
    ].map(([x, y]) => ({ x: motor.at.x + x, y: motor.at.y + y })),
  )
  const found = [...set, ...between.map(([wheel, of]) => wheelTag(setter, sheet, wheel, tagged(of)))]
  return {
    lines: found.flatMap((each) => (each.line ? [each.line] : [])),
    tags: found.map(({ tag }) => tag),
    speeds: [motorSpeed, spindleSpeed],
  }
}
