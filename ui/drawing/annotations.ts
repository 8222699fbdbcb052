// Dimension lines, tags and speeds: each where there is room for it, none over another.
import { NBSP } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { fieldText } from '../edit/shownText.ts'
import { crosses, type Polyline, placeLabels, type Rect, textWidth } from '../plot/label.ts'
import type { Dimension, Drive } from './drive.ts'
import { wireCurves } from './parts.ts'
import { beltWidth, distance, type Point, runsOf, type Wheel } from './runs.ts'
import { ROW, type Sheet } from './sheet.ts'

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

export interface Annotations {
  readonly tags: readonly Tag[]
  readonly lines: readonly DimensionLine[]
  /** Speeds of motor and spindle. */
  readonly speeds: readonly [Rect, Rect]
}

/** Longest text of a tag. */
const LONGEST = 12

/** A dimension as its field shows it: "2 1/2 in"; "? in" while it is open. */
export function tagText({ input: { field, text } }: Dimension, units: Units): string {
  const shown = field.kind === 'quantity' ? fieldText(field, text, units) : { text, unit: '' }
  const whole = `${shown.text || '?'}${NBSP}${shown.unit}`.trim()
  return whole.length > LONGEST ? `${whole.slice(0, LONGEST - 1)}…` : whole
}

interface Size {
  readonly width: number
  readonly height: number
}

/** Height of a tag: on a phone a finger's. */
const tagHeight = ({ k, narrow }: Sheet): number => (narrow ? Math.max(44, 32 * k) : Math.round(28 * k))

const tagSize = (text: string, sheet: Sheet) => ({
  width: Math.round(Math.max(52 * sheet.k, textWidth(text, 14.5 * sheet.k) + 20)),
  height: tagHeight(sheet),
})

const spread = (at: Point, r: number): Rect => ({ x: at.x - r, y: at.y - r, width: 2 * r, height: 2 * r })

/** A circle as two lines from left to right. */
const arcs = ({ at, r }: Wheel): readonly Polyline[] =>
  [1, -1].map((side) =>
    Array.from({ length: 9 }, (_, n) => {
      const angle = (n / 8) * Math.PI
      return [at.x - r * Math.cos(angle), at.y + side * r * Math.sin(angle)] as const
    }),
  )

const line = (a: Point, b: Point): Polyline => (a.x <= b.x ? [a, b] : [b, a]).map(({ x, y }) => [x, y] as const)

/** Places taken before any label is set. */
export function fixedBoxes({ inset, key, controller, controllerText, placement, width, height, k }: Sheet): Rect[] {
  const { shell, stages, floor } = placement
  const wheels = stages.flatMap(({ driving, driven }) => [driving, driven])
  return [
    { x: 0, y: 0, width: inset.width, height: inset.y },
    inset,
    key,
    controller,
    controllerText,
    { x: 0, y: floor - 1, width, height: height - floor + 1 },
    ...[shell, ...wheels].map(({ at, r }) => spread(at, r < 46 * k ? r + 3 : 0.72 * r)),
  ]
}

/** Middles of a box around a point: under, over, beside, then round it further out. */
function ring(at: Point, r: number, { width, height }: Size): Point[] {
  const [w, h] = [width / 2, height / 2]
  const near = [
    [0, r + 12 + h],
    [0, -r - 12 - h],
    [-r - 12 - w, 0],
    [r + 12 + w, 0],
  ]
  const round = [1, 1.6, 2.4].flatMap((far) =>
    Array.from({ length: 12 }, (_, n) => {
      const angle = (n / 12) * 2 * Math.PI + 0.3
      return [(r + 16 + w) * far * Math.cos(angle), (r + 12 + h) * far * Math.sin(angle)]
    }),
  )
  return [...near, ...round].map(([x, y]) => ({ x: at.x + x, y: at.y + y }))
}

/** The wires as short lines. */
function wirePieces({ controller, placement: { shell, floor }, narrow }: Sheet): Polyline[] {
  const p = wireCurves(controller, shell, floor, narrow)
  return [p.slice(0, 4), p.slice(3)].flatMap(([a, b, c, d]) => {
    const points = [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => {
      const [i, j, l, m] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3]
      return { x: i * a.x + j * b.x + l * c.x + m * d.x, y: i * a.y + j * b.y + l * c.y + m * d.y }
    })
    return points.slice(1).map((end, n) => line(points[n], end))
  })
}

/** Sets boxes one after the other, each clear of all before it. */
class Setter {
  readonly lines: Polyline[] = []
  private readonly sheet: Sheet
  private readonly taken: Rect[]
  private readonly bounds: Rect

  constructor(sheet: Sheet) {
    this.sheet = sheet
    this.taken = fixedBoxes(sheet)
    this.bounds = { x: 2, y: 2, width: sheet.width - 4, height: sheet.height - 4 }
  }

  /** A segment that runs over no taken place and stays in the picture. */
  clear(a: Point, b: Point): boolean {
    const { x, y, width, height } = this.bounds
    const inside = [a, b].every((p) => p.x >= x && p.y >= y && p.x <= x + width && p.y <= y + height)
    return inside && this.fixed.every((box) => !crosses([a.x, a.y], [b.x, b.y], box))
  }

  private get fixed(): readonly Rect[] {
    const { inset, key, controller, controllerText, foot } = this.sheet
    return [inset, key, controller, controllerText, foot]
  }

  /** A box with its middle at one of these points; undefined where none is free. */
  at(size: Size, middles: readonly Point[], lines = this.lines, also: readonly Rect[] = []): Rect | undefined {
    const spots = middles.map(({ x, y }) => [x - size.width / 2, y - size.height / 2] as const)
    const [box] = placeLabels([{ text: '', ...size, spots }], [...this.taken, ...also], lines, this.bounds)
    if (box) this.taken.push(grown(box, 3))
    return box
  }

  /** A box as near to a point as there is room in the whole picture, whatever it covers. */
  anywhere(size: Size, near: Point): Rect {
    const { width, height } = this.bounds
    const middles: Point[] = []
    for (let x = size.width / 2 + 2; x < width; x += 8)
      for (let y = size.height / 2 + 2; y < height; y += 8) middles.push({ x, y })
    middles.sort((a, b) => distance(a, near) - distance(b, near))
    return this.at(size, middles, []) ?? { x: near.x, y: near.y, ...size }
  }
}

const grown = ({ x, y, width, height }: Rect, by: number): Rect => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
})

const nearest = ({ x, y, width, height }: Rect, to: Point): Point => ({
  x: Math.min(x + width, Math.max(x, to.x)),
  y: Math.min(y + height, Math.max(y, to.y)),
})

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
      const witnesses = [a, b].map((end) => [{ x: end.x, y: at.y }, { x: end.x, y: y + 5 * side }] as const)
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
    side === 0 ? [] : ([one, other].map(({ at }) => [at, by(at, side + 5 * Math.sign(side))] as const) ?? [])
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
  for (const { driving, driven } of stages) {
    const wide = beltWidth(Math.min(driving.r, driven.r))
    for (const [a, b] of runsOf(driving, driven).straight) setter.lines.push(line(a, b))
    for (const wheel of [driving, driven]) setter.lines.push(...arcs({ ...wheel, r: wheel.r + wide }))
  }
  setter.lines.push(...wirePieces(sheet))
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
  /** A speed stands at its wheel, without a leader: first of all where it reads best. */
  const speed = ({ at, r }: Wheel, best: Point): Rect =>
    setter.at(size, [best, ...ring(at, r, size)], setter.lines, [stand]) ?? setter.anywhere(size, at)
  const motor: Wheel = { at: shell.at, r: Math.max(shell.r, first.driving.r) }
  const { at, r } = last.driven
  const spindleSpeed = speed(last.driven, { x: at.x, y: at.y - r - 10 - size.height / 2 })
  const machineTag = wheelTag(setter, sheet, last.driven, tagged(drive.machinePulley))
  const motorSpeed = speed(motor, { x: motor.at.x - motor.r - 8 - size.width / 2, y: motor.at.y - 0.4 * motor.r })
  const found = [
    machineTag,
    wheelTag(setter, sheet, motor, tagged(drive.motorPulley)),
    ...spans.map(([pair, of]) => centresTag(setter, sheet, pair, tagged(of))),
    ...between.map(([wheel, of]) => wheelTag(setter, sheet, wheel, tagged(of))),
  ]
  return {
    lines: found.flatMap((each) => (each.line ? [each.line] : [])),
    tags: found.map(({ tag }) => tag),
    speeds: [motorSpeed, spindleSpeed],
  }
}
