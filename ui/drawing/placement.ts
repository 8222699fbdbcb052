// Where the parts stand: the drive line in metres, turned and scaled to fill the room it is given.
import type { Rect } from '../plot/label.ts'
import type { Drive } from './drive.ts'
import { machineOf } from './machines.ts'
import type { Point, Wheel } from './runs.ts'

/** Two wheels with a belt round them; px. */
export interface DrawnStage {
  readonly driving: Wheel
  readonly driven: Wheel
  /** The centres stand further apart than they are drawn. */
  readonly shortened: boolean
}

export interface Placement {
  /** px to a metre, the same for every part. */
  readonly scale: number
  readonly stages: readonly DrawnStage[]
  readonly shell: Wheel
  /** Unit of the machine's drawing, px. */
  readonly unit: number
  /** Height of the floor, px from the top. */
  readonly floor: number
  /** Room the machine takes. */
  readonly machine: Rect
}

/** The room for a drive line: its bounds, places in it that are taken, and the largest scale wanted. */
export interface Room {
  readonly bounds: Rect
  readonly taken: readonly Rect[]
  readonly most: number
}

/** Centres this many times the largest wheel or shell apart are drawn no further: the belt is broken. */
const LONGEST = 6
/** Directions of a belt that are tried, degrees above the level; the first reads best. */
const SINGLE = [46, 38, 54, 30, 62, 22, 70, 12, 0]
const FIRST = [62, 40, 20, 0, 80, -20]
const SECOND = [35, 15, 55, 0, 75, -20]
/** What a direction may give up in scale against one that is further down the list. */
const WORTH = 0.02

/** The drive line in metres around its motor, y downwards. */
interface Skeleton {
  readonly centres: readonly Point[]
  readonly unit: number
  readonly floor: number
  readonly boxes: readonly Rect[]
  readonly machine: Rect
  readonly overlap: number
}

const around = ({ x, y }: Point, r: number): Rect => ({ x: x - r, y: y - r, width: 2 * r, height: 2 * r })

/** Centre distances as drawn, m. */
function drawnCentres({ stages, shell }: Drive): readonly number[] {
  return stages.map(({ driving, driven, centres }) =>
    Math.min(centres, LONGEST * Math.max(driving, driven, shell)),
  )
}

const shared = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y))

function skeleton(drive: Drive, directions: readonly number[], table: number): Skeleton {
  const { stages, shell } = drive
  const lengths = drawnCentres(drive)
  const centres: Point[] = [{ x: 0, y: 0 }]
  for (const [n, degrees] of directions.entries()) {
    const { x, y } = centres[n]
    const angle = (degrees / 180) * Math.PI
    centres.push({ x: x + lengths[n] * Math.cos(angle), y: y - lengths[n] * Math.sin(angle) })
  }
  const spindle = centres[centres.length - 1]
  const last = stages[stages.length - 1]
  const { reach, fromAbove } = machineOf(drive.kind)
  const unit = Math.max(last.driven, 0.5 * shell, ...stages.map(({ driving }) => 0.6 * driving))
  const under = fromAbove ? 0 : table
  const floor = Math.max(
    shell / 2 + under,
    stages[0].driving / 2 + under / 3,
    spindle.y + reach.bottom * unit,
    ...stages
      .slice(1)
      .map(({ driving }, n) => centres[n + 1].y + Math.max(driving, stages[n].driven) / 2 + under / 3),
  )
  const machine: Rect = {
    x: spindle.x - reach.left * unit,
    y: spindle.y - reach.top * unit,
    width: (reach.left + reach.right) * unit,
    height: floor - spindle.y + reach.top * unit,
  }
  const motor = around(centres[0], shell / 2)
  const stand: Rect = { x: -0.9 * shell, y: 0, width: 1.8 * shell, height: floor }
  const wheels = stages.flatMap(({ driving, driven }, n) => [
    around(centres[n], driving / 2),
    around(centres[n + 1], driven / 2),
  ])
  const overlap = shared(stand, machine) / (stand.width * stand.height)
  return { centres, unit, floor, machine, overlap, boxes: [motor, stand, machine, ...wheels] }
}

/** Where a skeleton of this scale stands: at the right, or a little from it where there is room to spare. */
function shifts({ boxes, floor }: Skeleton, scale: number, { x, y, width, height }: Rect): readonly Point[] {
  const right = Math.max(...boxes.map((box) => box.x + box.width)) * scale
  const left = Math.min(...boxes.map((box) => box.x)) * scale
  const spare = Math.max(0, width - (right - left))
  return [0.4, 0.2, 0].map((share) => ({
    x: x + width - right - share * spare,
    y: y + height - floor * scale,
  }))
}

const moved = (box: Rect, scale: number, by: Point): Rect => ({
  x: box.x * scale + by.x,
  y: box.y * scale + by.y,
  width: box.width * scale,
  height: box.height * scale,
})

const fits = (found: Skeleton, scale: number, by: Point, { bounds, taken }: Room): boolean =>
  found.boxes.every((each) => {
    const box = moved(each, scale, by)
    return (
      box.x >= bounds.x - 0.01 &&
      box.y >= bounds.y - 0.01 &&
      box.x + box.width <= bounds.x + bounds.width + 0.01 &&
      box.y + box.height <= bounds.y + bounds.height + 0.01 &&
      taken.every((other) => shared(box, other) === 0)
    )
  })

/** The largest scale at which a skeleton fits, and where; the room's least where it fits at none. */
function largest(found: Skeleton, room: Room): { scale: number; by: Point } {
  const at = (scale: number) => shifts(found, scale, room.bounds).find((by) => fits(found, scale, by, room))
  let low = 0
  let high = room.most
  const whole = at(high)
  if (whole) return { scale: high, by: whole }
  let best = { scale: 0, by: { x: 0, y: 0 } }
  for (let n = 0; n < 28; n++) {
    const middle = (low + high) / 2
    const by = at(middle)
    if (by) {
      best = { scale: middle, by }
      low = middle
    } else high = middle
  }
  return best
}

/** The drive line in its room: as large as it goes, in the direction that reads best; the motor's table as high as said, m. */
export function place(drive: Drive, room: Room, table = 0.9 * drive.shell): Placement {
  const two = drive.stages.length > 1
  const tries = two ? FIRST.flatMap((one) => SECOND.map((other) => [one, other])) : SINGLE.map((one) => [one])
  const rated = tries.map((directions, n) => {
    const found = skeleton(drive, directions, table)
    const { scale, by } = largest(found, room)
    const rank = two ? Math.floor(n / SECOND.length) + (n % SECOND.length) : n
    return { found, scale, by, rating: scale * (1 - WORTH * rank) * (1 - 0.5 * Math.min(1, found.overlap)) }
  })
  const { found, scale, by } = rated.reduce((best, next) => (next.rating > best.rating ? next : best))
  const point = ({ x, y }: Point): Point => ({ x: x * scale + by.x, y: y * scale + by.y })
  const lengths = drawnCentres(drive)
  return {
    scale,
    unit: found.unit * scale,
    floor: found.floor * scale + by.y,
    machine: moved(found.machine, scale, by),
    shell: { at: point(found.centres[0]), r: (drive.shell / 2) * scale },
    stages: drive.stages.map(({ driving, driven, centres }, n) => ({
      driving: { at: point(found.centres[n]), r: (driving / 2) * scale },
      driven: { at: point(found.centres[n + 1]), r: (driven / 2) * scale },
      shortened: lengths[n] < centres,
    })),
  }
}
