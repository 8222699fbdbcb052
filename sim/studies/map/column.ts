// One column of the map: every torque at one speed, and the torques at which something begins.
import { classLimitC } from '../../handbook/insulation.ts'
import type { Heat } from '../../parts/heat.ts'
import type { Parts } from '../../plant.ts'
import { root } from '../../solve/root.ts'
import type { DriveLimit } from '../../steady/drive.ts'
import type { Warm } from '../../steady/operating.ts'
import { type MapEnd, warming } from './warming.ts'

/** Points by torque, in the order of the map's torques. Times in s, Infinity: never; torques of the cut, N·m. */
export interface MapColumn {
  readonly seconds: Float64Array
  readonly ends: readonly MapEnd[]
  readonly classAt: Float64Array
  readonly limit: readonly DriveLimit[]
  /** Spindle speed it comes to while cold, rad/s. */
  readonly speed: Float64Array
  readonly limitedAt: Float64Array
  /** From steady heat: up to this torque nothing ever ends it; 0: not even idling; Infinity: beyond the map. */
  readonly never: number
  /** Up to this the winding keeps its class for good. */
  readonly cool: number
  /** Up to this the cold motor stays within the current limit. */
  readonly most: number
  /** From this on, or at 0 anyway, cold volts do not reach the asked speed; Infinity: at no torque. */
  readonly short: number
  /** What it cost: looks at the drive. */
  readonly evaluations: number
}

/** Torques are found to this share of the map's. */
const PRECISION = 1e-4

/** Where a growing torque first passes something, looked for up to `top`: 0 at once, Infinity not by there. */
function first(passed: (torque: number) => number, torques: readonly number[], top: number): number {
  let before = passed(0)
  if (before >= 0) return 0
  let low = 0
  for (const high of torques) {
    if (high <= low) continue
    const here = passed(high)
    if (here >= 0) return root(passed, low, high, before, here, PRECISION * top)
    low = high
    before = here
  }
  return Infinity
}

/** The column at a spindle speed, rad/s, with one of the coolings. */
export function mapColumn(
  parts: Parts,
  cooling: Heat['cooling'],
  speed: number,
  torques: readonly number[],
): MapColumn {
  const motor = warming(parts, speed, cooling)
  const { cutoff, winding } = parts
  const limitC = classLimitC(winding.insulation)
  const points = torques.map((torque) => motor.point(torque))
  const top = torques[torques.length - 1]
  // Each is looked for where the points say that it lies.
  const known = new Map(torques.map((torque, n) => [torque, points[n].settled]))
  const warmAt = (torque: number) => {
    const warm = known.get(torque)
    return warm === undefined ? motor.settles(torque) : warm
  }
  /** What does not settle is over by this much, K. */
  const AWAY = 400
  const over = (of: (warm: Warm) => number) => (torque: number) => {
    const warm = warmAt(torque)
    return warm ? of(warm) : AWAY
  }
  const cool = first(
    over(({ windingC }) => windingC - limitC),
    torques,
    top,
  )
  const never =
    cutoff.fitted === 'none'
      ? cool
      : first(
          over(({ switchC }) => switchC - cutoff.opensAt),
          torques,
          top,
        )
  return {
    seconds: Float64Array.from(points, ({ seconds }) => seconds),
    ends: points.map(({ ends }) => ends),
    classAt: Float64Array.from(points, ({ classAt }) => classAt),
    limit: points.map(({ limit }) => limit),
    speed: Float64Array.from(points, (point) => point.speed),
    limitedAt: Float64Array.from(points, ({ limitedAt }) => limitedAt),
    never,
    cool,
    most: first(motor.overAmps, [top], top),
    short: first((torque) => (motor.short(torque) ? 1 : -1), [top], top),
    evaluations: motor.evaluations,
  }
}
