// How the drawing divides its room: the motor cut open, the key, the controller, and what is left for the drive line.
import type { Rect } from '../plot/label.ts'
import { cutReach } from './cutaway.ts'
import { type Drive, SHELL_LENGTH } from './drive.ts'
import { type Placement, place } from './placement.ts'
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

/** Rows above and under the cut motor: a name and a reading. */
const labels = (k: number): number => (ROW + VALUE + 6) * k

/** Whole times from 3 up, halves below: what can be said of a scale. */
const saidTimes = (times: number): number =>
  Math.max(1, times >= 3 ? Math.floor(times + 1e-9) : Math.floor(2 * times + 1e-9) / 2)

const nextTimes = (times: number): number => times + (times < 3 ? 0.5 : 1)
/** Scale of the drive line that may be given up for a larger step. */
const WORTH = 0.86

/** The sheet for a drive: inset first, then the drive line in what is left, then the scale of the inset. */
export function sheetOf(drive: Drive, frame: Frame): Sheet {
  const { width, k, narrow } = frame
  const title = (ROW + 6) * k
  const inset: Rect = {
    x: 0,
    y: title,
    width: narrow ? width : Math.round(width * 0.56),
    height: Math.round(2 * labels(k) + (narrow ? Math.min(0.42 * width, 190) : 0.25 * width) + 12),
  }
  const { left, right } = cutReach(drive.cooling)
  const room = { x: inset.width - 24, y: inset.height - 2 * labels(k) - 12 }
  const fitting = Math.min(room.x / (left + right + 0.12), room.y / 1.16) / drive.shell
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
  const controllerText: Rect = narrow
    ? { x: 0, y: top, ...text }
    : { x: 20 + box.width + 14, y: top, ...text }
  const controller: Rect = { x: narrow ? 0 : 20, y: narrow ? top + text.height + 6 : top, ...box }
  const tall = narrow ? Math.round(0.62 * width + 170 * k) : Math.round(Math.max(box.height, text.height) + 0.1 * width)
  const floor = top + tall
  const edge = narrow ? 0 : 6
  const bounds: Rect = narrow
    ? { x: 4, y: top, width: width - 8, height: tall }
    : {
        x: controllerText.x + text.width + 12,
        y: edge,
        width: width - controllerText.x - text.width - 16,
        height: floor - edge,
      }
  const taken: Rect[] = narrow
    ? [
        { x: 0, y: top, width: text.width + 4, height: text.height + 4 },
        { x: 0, y: top, width: box.width + 16, height: text.height + box.height + 22 },
      ]
    : [{ x: 0, y: 0, width: inset.width + 14, height: under + 34 * k }]
  const widest = narrow ? WIDEST.narrow : WIDEST.wide
  const largest = Math.max(...drive.stages.flatMap(({ driving, driven }) => [driving, driven]))
  const most = Math.min(fitting, (widest.wheel * width) / largest, (widest.shell * width) / drive.shell)
  const fitted = place(drive, { bounds, taken, most })
  const times = saidTimes(fitting / fitted.scale)
  // A little smaller where that makes the cut motor a whole step larger against the rest.
  const next = nextTimes(times)
  const worth = fitting / next >= WORTH * fitted.scale
  const placement = worth ? place(drive, { bounds, taken, most: fitting / next }) : fitted
  const said = worth ? saidTimes(fitting / placement.scale) : times
  const cutScale = Math.min(fitting, said * placement.scale)
  const unit = cutScale * drive.shell
  const cut: Point = {
    x: inset.x + (inset.width - (left + right) * unit) / 2 + left * unit,
    y: inset.y + inset.height / 2,
  }
  const foot: Rect = { x: 0, y: floor + 12, width, height: ROW * k * (narrow || width < 660 * k ? 2 : 1) }
  return {
    ...frame,
    ...{ inset, cut, cutScale, times: said, key, controller, controllerText, placement, foot },
    height: Math.ceil(foot.y + foot.height + 4),
  }
}

/** Length of the cut motor's shell, px. */
export const cutLength = (drive: Drive, { cutScale }: Sheet): number => SHELL_LENGTH * drive.shell * cutScale
