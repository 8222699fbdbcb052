// The two heat equations along a log, exactly: under a held drive they are linear, so a step is a matrix exponential.
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
  /** Of copper heat, one a reading. */
  readonly copper: Float64Array
  readonly brushes: number
  readonly friction: number
  /** Shares of friction and brush heat that warm the winding. */
  readonly shares: Pick<Heat, 'frictionShare' | 'brushShare'>
  /** Where it was switched between two readings: the share of the interval before. */
  readonly first: Float64Array
}

/**
 * Writes winding and frame temperatures at every reading (°C). Equations of PHYSICS.md §1 with the amps given.
 * Between two readings alike the drive is their mean; where it was switched on or off between them, first the one
 * lasts and then the other.
 */
export function heatPath(
  drive: Drive,
  numbers: HeatNumbers,
  conditions: Conditions,
  windingC: Float64Array,
  frameC: Float64Array,
): void {
  const { time, running } = drive
  const { first } = conditions
  const state = [conditions.windingC, conditions.frameC]
  for (let at = 0; at < time.length; at++) {
    if (at > 0) {
      const h = time[at] - time[at - 1]
      if (running[at] === running[at - 1]) step(drive, numbers, conditions, at - 1, at, h, state)
      else {
        step(drive, numbers, conditions, at - 1, at - 1, first[at - 1] * h, state)
        step(drive, numbers, conditions, at, at, (1 - first[at - 1]) * h, state)
      }
    }
    windingC[at] = state[0]
    frameC[at] = state[1]
  }
}

/**
 * Takes [winding, frame] on by h seconds under the mean of two readings' drives. With the drive held the equations
 * are linear, y' = A y + b: y(h) = y + f(A)(A y + b) with f(λ) = (e^{λh} − 1)/λ, in Newton's form over the eigenvalues.
 */
function step(
  drive: Drive,
  numbers: HeatNumbers,
  { copper, brushes, friction, shares, airC, airOffset }: Conditions,
  a: number,
  b: number,
  h: number,
  state: number[],
): void {
  const { windingCapacity: cw, frameCapacity: cm, windingToFrame: inward } = numbers
  const w = state[0]
  const m = state[1]
  const air = (airC[a] + airC[b]) / 2 + airOffset
  const perKelvin = (copper[a] * drive.copper[a] + copper[b] * drive.copper[b]) / 2
  const rubbed = (friction * (drive.friction[a] + drive.friction[b])) / 2
  const brushed = (brushes * (drive.brushes[a] + drive.brushes[b])) / 2
  const ga =
    (numbers.windingToAir * (drive.windingStill[a] + drive.windingStill[b]) +
      numbers.windingToFanAir * (drive.windingFan[a] + drive.windingFan[b])) /
    2
  const gc =
    (numbers.frameToAir * (drive.frameStill[a] + drive.frameStill[b]) +
      numbers.frameToFanAir * (drive.frameFan[a] + drive.frameFan[b])) /
    2
  const intoWinding = COPPER.zeroC * perKelvin + shares.frictionShare * rubbed + shares.brushShare * brushed
  const intoFrame = (1 - shares.frictionShare) * rubbed + (1 - shares.brushShare) * brushed
  const a11 = (perKelvin - inward - ga) / cw
  const a12 = inward / cw
  const a21 = inward / cm
  const a22 = -(inward + gc) / cm
  const rateW = a11 * w + a12 * m + (intoWinding + ga * air) / cw
  const rateM = a21 * w + a22 * m + (intoFrame + gc * air) / cm
  const middle = (a11 + a22) / 2
  const half = Math.sqrt(((a11 - a22) / 2) ** 2 + a12 * a21)
  const slow = grown(middle + half, h)
  const bend = (slow - grown(middle - half, h)) / (2 * half)
  const base = slow - bend * (middle + half)
  state[0] = w + base * rateW + bend * (a11 * rateW + a12 * rateM)
  state[1] = m + base * rateM + bend * (a21 * rateW + a22 * rateM)
}

/** (e^{λh} − 1)/λ, which is h where λ is nothing. */
const grown = (rate: number, h: number): number => (rate === 0 ? h : Math.expm1(rate * h) / rate)
