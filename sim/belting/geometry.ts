// An open belt over two pulleys, exactly: length, centre distance, wrap, straight run.
import { root } from '../solve/root.ts'

/** Half the angle between the straight runs: sin γ = (D − d)/2C. rad. NaN where the pulleys overlap. */
const halfAngle = (small: number, large: number, centres: number): number =>
  Math.asin((large - small) / (2 * centres))

/** Belt length, m: L = 2C cos γ + π(D + d)/2 + γ(D − d). Diameters and centre distance in m, either way round. */
export function beltLength(one: number, other: number, centres: number): number {
  const small = Math.min(one, other)
  const large = Math.max(one, other)
  const angle = halfAngle(small, large, centres)
  return 2 * centres * Math.cos(angle) + (Math.PI * (large + small)) / 2 + angle * (large - small)
}

/** Least centre distance at which two pulleys do not touch, m. */
export const leastCentres = (one: number, other: number): number => (one + other) / 2

/** Centre distance for a belt length, m; null where the belt is too short to go round. */
export function centresFor(length: number, one: number, other: number): number | null {
  const least = leastCentres(one, other)
  const short = beltLength(one, other, least)
  if (!(length >= short)) return null
  if (length === short) return least
  // A belt is longer than there and back.
  const most = length / 2
  const miss = (centres: number) => beltLength(one, other, centres) - length
  return root(miss, least, most, short - length, miss(most), 1e-13 * most)
}

/** Wrap of the smaller pulley, rad: π − 2γ. The larger has 2π less that. */
export const smallWrap = (one: number, other: number, centres: number): number =>
  Math.PI - 2 * halfAngle(Math.min(one, other), Math.max(one, other), centres)

/** Speed of the belt, m/s: pulley diameter m, shaft rad/s. */
export const beltSpeed = (diameter: number, speed: number): number => (diameter / 2) * Math.abs(speed)
