// An open belt round two wheels as a path: straight runs that touch both, arcs between them.
import { smallWrap } from '../../sim/belting/geometry.ts'

export interface Point {
  readonly x: number
  readonly y: number
}

/** A circle in the drawing: px, y downwards. */
export interface Wheel {
  readonly at: Point
  readonly r: number
}

/** Where a belt runs. */
export interface Runs {
  /** The two straight runs, each from the first wheel to the second. */
  readonly straight: readonly (readonly [Point, Point])[]
  /** Wrap of the first wheel and of the second, rad. */
  readonly wraps: readonly [number, number]
}

/** The point of a wheel at an angle, rad. */
const on = ({ at, r }: Wheel, angle: number): Point => ({
  x: at.x + r * Math.cos(angle),
  y: at.y + r * Math.sin(angle),
})

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y)

/** Runs of an open belt: both ends of a straight run stand at one angle to the line of centres, on their own wheels. */
export function runsOf(one: Wheel, other: Wheel): Runs {
  const centres = Math.max(distance(one.at, other.at), one.r + other.r)
  const small = smallWrap(2 * one.r, 2 * other.r, centres)
  const wraps =
    one.r <= other.r ? ([small, 2 * Math.PI - small] as const) : ([2 * Math.PI - small, small] as const)
  const axis = Math.atan2(other.at.y - one.at.y, other.at.x - one.at.x)
  const angles = [axis + wraps[1] / 2, axis - wraps[1] / 2]
  return { wraps, straight: angles.map((angle) => [on(one, angle), on(other, angle)] as const) }
}

const text = ({ x, y }: Point): string => `${x.toFixed(2)} ${y.toFixed(2)}`

/** The belt as the path of an svg. */
export function beltPath(one: Wheel, other: Wheel): string {
  const { straight, wraps } = runsOf(one, other)
  const [[a, b], [c, d]] = straight
  const arc = ({ r }: Wheel, wrap: number, to: Point) =>
    `A${r.toFixed(2)} ${r.toFixed(2)} 0 ${wrap > Math.PI ? 1 : 0} 0 ${text(to)}`
  return `M${text(a)}L${text(b)}${arc(other, wraps[1], d)}L${text(c)}${arc(one, wraps[0], a)}Z`
}

/** Width of a belt's line, px, by its smaller wheel. */
export const beltWidth = (r: number): number => Math.min(5.5, Math.max(1.75, 0.34 * r))
