// How the drawing divides its room: the motor cut open, the key, the controller, and what is left for the drive line.
import type { Rect } from '../plot/label.ts'
import { cutReach } from './cutaway.ts'
import type { Drive } from './drive.ts'
import { type Placement, place, type Room } from './placement.ts'
import type { Point } from './runs.ts'

export interface Frame {
  /** px */
  readonly width: number
  /** How much text is enlarged. */
  readonly k: number
  /** On a phone the motor stands over the machine. */
  readonly narrow: boolean
}

export interface Sheet extends Frame {
  readonly height: number
  /** The motor cut open: its box, where the left end of its shell is, px to a metre, times the scale of the rest. */
  readonly inset: Rect
  readonly cut: Point
  readonly cutScale: number
  readonly times: number
  readonly key: Rect
  readonly controller: Rect
  /** Its name and what it gives. */
  readonly controllerText: Rect
  readonly placement: Placement
  /** Under the floor: scale and the machine's name, in one row where both have room, else in two. */
  readonly foot: Rect
}

export const ROW = 18
const VALUE = 22

/** Largest scale: no wheel wider than this share of the drawing, nor shell. */
const WIDEST = { wide: { wheel: 0.26, shell: 0.11 }, narrow: { wheel: 0.36, shell: 0.17 } } as const

/** Height of a tag: on a phone a finger's. */
export const tagHeight = ({ k, narrow }: Frame): number =>
  narrow ? Math.max(44, 32 * k) : Math.round(28 * k)

/** Rows above and under the cut motor: a name and a reading. */
const labels = (k: number): number => (ROW + VALUE + 6) * k

/** Whole times from 3 up, halves below: what can be said of a scale. */
const saidTimes = (times: number): number =>
  Math.max(1, times >= 3 ? Math.floor(times + 1e-9) : Math.floor(2 * times + 1e-9) / 2)

const nextTimes = (times: number): number => times + (times < 3 ? 0.5 : 1)
/** Scale of the drive line that may be given up for a larger step. */
const WORTH = 0.86

/** Placed so that the motor's table is at least `tall` (px) high: the motor pulley's tag stands in front of it. */
function stood(drive: Drive, room: Room, tall: number): Placement {
  const usual = place(drive, room)
  const stand = usual.floor - usual.shell.at.y - usual.shell.r
  return stand >= tall ? usual : place(drive, room, (1.06 * tall) / usual.scale)
}

/** Places that do not depend on the drive line, and the room that is left for it. */
function boxesOf({ width, k, narrow }: Frame) {
  const inset: Rect = {
    x: 0,
    y: (ROW + 6) * k,
    width: narrow ? width : Math.round(width * 0.56),
    height: Math.round(2 * labels(k) + (narrow ? Math.min(0.42 * width, 190) : 0.25 * width) + 12),
  }
  const under = inset.y + inset.height
  const key: Rect = {
    x: narrow ? 0 : 20,
    y: under + (narrow ? 8 : 20),
    width: Math.min(230 * k, (narrow ? 0.72 : 0.32) * width),
    height: 16 + 2 * ROW * k,
  }
  const box = narrow ? { width: 52, height: 70 } : { width: 72, height: 96 }
  const text = { width: 152 * k, height: (VALUE + 2 * ROW) * k }
  const top = key.y + key.height + (narrow ? 16 : 22)
  if (narrow) {
    const tall = Math.round(0.62 * width + 170 * k)
    return {
      ...{ inset, key },
      controllerText: { x: 0, y: top, ...text },
      controller: { x: 0, y: top + text.height + 6, ...box },
      floor: top + tall,
      bounds: { x: 4, y: top, width: width - 8, height: tall },
      taken: [
        { x: 0, y: top, width: text.width + 4, height: text.height + 4 },
        { x: 0, y: top, width: box.width + 16, height: text.height + box.height + 22 },
      ],
    }
  }
  const floor = top + Math.round(Math.max(box.height, text.height) + 0.1 * width)
  const controllerText = { x: 20 + box.width + 14, y: top, ...text }
  const left = controllerText.x + text.width + 12
  return {
    ...{ inset, key, controllerText, floor },
    controller: { x: 20, y: top, ...box },
    bounds: { x: left, y: 6, width: width - left - 4, height: floor - 6 },
    taken: [{ x: 0, y: 0, width: inset.width + 14, height: under + 34 * k }],
  }
}

/** The drive line placed, and how many times larger the motor is cut open, at most at `fitting` px to a metre. */
function scaled(
  drive: Drive,
  room: Room,
  tall: number,
  fitting: number,
): { placement: Placement; times: number } {
  const placement = stood(drive, room, tall)
  const times = saidTimes(fitting / placement.scale)
  const most = fitting / nextTimes(times)
  if (most < WORTH * placement.scale) return { placement, times }
  // A little smaller, since that makes the cut motor a whole step larger against the rest.
  const smaller = stood(drive, { ...room, most }, tall)
  return { placement: smaller, times: saidTimes(fitting / smaller.scale) }
}

/** The sheet for a drive: what stands fixed, then the drive line in what is left, then the scale of the inset. */
export function sheetOf(drive: Drive, frame: Frame): Sheet {
  const { width, k, narrow } = frame
  const { inset, key, controller, controllerText, floor, bounds, taken } = boxesOf(frame)
  const { left, right } = cutReach(drive.cooling)
  const room = { x: inset.width - 24, y: inset.height - 2 * labels(k) - 12 }
  const fitting = Math.min(room.x / (left + right + 0.12), room.y / 1.16) / drive.shell
  const widest = narrow ? WIDEST.narrow : WIDEST.wide
  const largest = Math.max(...drive.stages.flatMap(({ driving, driven }) => [driving, driven]))
  const most = Math.min(fitting, (widest.wheel * width) / largest, (widest.shell * width) / drive.shell)
  const { placement, times } = scaled(drive, { bounds, taken, most }, tagHeight(frame) + 18, fitting)
  const cutScale = Math.min(fitting, times * placement.scale)
  const unit = cutScale * drive.shell
  const cut: Point = {
    x: inset.x + (inset.width - (left + right) * unit) / 2 + left * unit,
    y: inset.y + inset.height / 2,
  }
  const foot: Rect = { x: 0, y: floor + 12, width, height: ROW * k * (narrow || width < 660 * k ? 2 : 1) }
  return {
    ...frame,
    ...{ inset, cut, cutScale, times, key, controller, controllerText, placement, foot },
    height: Math.ceil(foot.y + foot.height + 4),
  }
}
