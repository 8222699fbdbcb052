// The two heat equations along a log, exactly: between readings they are linear, so each interval is one matrix exponential.
import { COPPER } from '../handbook/materials.ts'
import type { Heat } from '../parts/heat.ts'
import type { Drive } from './heatDrive.ts'

/** The numbers to be found. */
export const HEAT_NUMBERS = [
  'windingCapacity',
  'frameCapacity',
  'windingToFrame',
  'windingToAir',
  'windingToFanAir',
  'frameToAir',
  'frameToFanAir',
] as const
export type HeatNumber = (typeof HEAT_NUMBERS)[number]
export type HeatNumbers = Readonly<Record<HeatNumber, number>>

/** How a path starts, and what the heat on its way is multiplied by. */
export interface Conditions {
  /** Air, one value a reading, and what is added to it. °C, K */
  readonly airC: Float64Array
  readonly airOffset: number
  readonly windingC: number
  readonly frameC: number
  readonly copper: number
  readonly brushes: number
  readonly friction: number
  /** Shares of friction and brush heat that warm the winding. */
  readonly shares: Pick<Heat, 'frictionShare' | 'brushShare'>
  /** How much of each interval is like its first reading, the rest like its second. */
  readonly first: Float64Array
}

/**
 * Writes winding and frame temperatures at every reading (°C). Equations of PHYSICS.md §1 with the amps given;
 * y' = A y + b over an interval of h, so y(h) = y + f(A)(A y + b) with f(λ) = (e^{λh} − 1)/λ, in Newton's form.
 */
export function heatPath(
  drive: Drive,
  numbers: HeatNumbers,
  conditions: Conditions,
  windingC: Float64Array,
  frameC: Float64Array,
): void {
  const { time, copper, brushes, friction, windingStill, windingFan, frameStill, frameFan } = drive
  const { windingCapacity: cw, frameCapacity: cm, windingToFrame: g } = numbers
  const { shares, first, airC, airOffset } = conditions
  let w = conditions.windingC
  let m = conditions.frameC
  windingC[0] = w
  frameC[0] = m
  for (let at = 1; at < time.length; at++) {
    const h = time[at] - time[at - 1]
    const u = first[at - 1]
    const v = 1 - u
    const k = conditions.copper * (u * copper[at - 1] + v * copper[at])
    const rubbed = conditions.friction * (u * friction[at - 1] + v * friction[at])
    const brushed = conditions.brushes * (u * brushes[at - 1] + v * brushes[at])
    const ga =
      numbers.windingToAir * (u * windingStill[at - 1] + v * windingStill[at]) +
      numbers.windingToFanAir * (u * windingFan[at - 1] + v * windingFan[at])
    const gc =
      numbers.frameToAir * (u * frameStill[at - 1] + v * frameStill[at]) +
      numbers.frameToFanAir * (u * frameFan[at - 1] + v * frameFan[at])
    const air = (airC[at - 1] + airC[at]) / 2 + airOffset
    const a11 = (k - g - ga) / cw
    const a12 = g / cw
    const a21 = g / cm
    const a22 = -(g + gc) / cm
    const rateW =
      a11 * w +
      a12 * m +
      (COPPER.zeroC * k + shares.frictionShare * rubbed + shares.brushShare * brushed + ga * air) / cw
    const rateM =
      a21 * w +
      a22 * m +
      ((1 - shares.frictionShare) * rubbed + (1 - shares.brushShare) * brushed + gc * air) / cm
    const middle = (a11 + a22) / 2
    const half = Math.sqrt(((a11 - a22) / 2) ** 2 + a12 * a21)
    const slow = grown(middle + half, h)
    const fast = grown(middle - half, h)
    const bend = (slow - fast) / (2 * half)
    const base = slow - bend * (middle + half)
    w += base * rateW + bend * (a11 * rateW + a12 * rateM)
    m += base * rateM + bend * (a21 * rateW + a22 * rateM)
    windingC[at] = w
    frameC[at] = m
  }
}

/** (e^{λh} − 1)/λ, which is h where λ is nothing. */
const grown = (rate: number, h: number): number => (rate === 0 ? h : Math.expm1(rate * h) / rate)
