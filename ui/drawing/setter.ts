// Where there is room: sets boxes into the drawing one after the other, each clear of all that is there.
import { crosses, type Polyline, placeLabels, type Rect } from '../plot/label.ts'
import { wireCurves } from './parts.ts'
import { beltWidth, distance, type Point, runsOf, type Wheel } from './runs.ts'
import type { Sheet } from './sheet.ts'

export interface Size {
  readonly width: number
  readonly height: number
}

const spread = (at: Point, r: number): Rect => ({ x: at.x - r, y: at.y - r, width: 2 * r, height: 2 * r })

/** A circle as two lines from left to right. */
const arcs = ({ at, r }: Wheel): readonly Polyline[] =>
  [1, -1].map((side) =>
    Array.from({ length: 9 }, (_, n) => {
      const angle = (n / 8) * Math.PI
      return [at.x - r * Math.cos(angle), at.y + side * r * Math.sin(angle)] as const
    }),
  )

export const line = (a: Point, b: Point): Polyline =>
  (a.x <= b.x ? [a, b] : [b, a]).map(({ x, y }) => [x, y] as const)

/** Places taken before any label is set. */
export function fixedBoxes({
  inset,
  key,
  controller,
  controllerText,
  placement,
  width,
  height,
  k,
}: Sheet): Rect[] {
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
export function ring(at: Point, r: number, { width, height }: Size): Point[] {
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

/** Runs and wheels of the belts. */
const beltLines = ({ placement }: Sheet): Polyline[] =>
  placement.stages.flatMap(({ driving, driven }) => {
    const wide = beltWidth(Math.min(driving.r, driven.r))
    return [
      ...runsOf(driving, driven).straight.map(([a, b]) => line(a, b)),
      ...[driving, driven].flatMap((wheel) => arcs({ ...wheel, r: wheel.r + wide })),
    ]
  })

/** Sets boxes one after the other, each clear of all before it. */
export class Setter {
  /** What a label had better not cross. */
  readonly lines: Polyline[] = []
  private readonly sheet: Sheet
  private readonly taken: Rect[]
  private readonly bounds: Rect

  constructor(sheet: Sheet) {
    this.sheet = sheet
    this.taken = fixedBoxes(sheet)
    this.bounds = { x: 2, y: 2, width: sheet.width - 4, height: sheet.height - 4 }
    this.lines.push(...beltLines(sheet), ...wirePieces(sheet))
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
  at(
    size: Size,
    middles: readonly Point[],
    lines = this.lines,
    also: readonly Rect[] = [],
  ): Rect | undefined {
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
