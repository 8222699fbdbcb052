// What a reading leaves of the doubt: outcomes put in order and spread as a normal distribution, and that one narrowed.
import { inverse } from '../../solve/leastSquares.ts'
import { EIGHT_IN_TEN, normalAt } from './normal.ts'

/** Outcomes of samples in order, each at the normal place of its rank: no unit, and "never" has a place like any other. */
export interface Places {
  /** Place of each sample, as the samples stand. */
  readonly of: readonly number[]
  /** Places from the lowest on, the same for every study of as many samples. */
  readonly inOrder: readonly number[]
}

/** `order`: below nought where sample `a` comes before `b`. */
export function placesOf(samples: number, order: (a: number, b: number) => number): Places {
  const inOrder = Array.from({ length: samples }, (_, rank) => normalAt((rank + 0.5) / samples))
  const of: number[] = new Array(samples)
  Array.from({ length: samples }, (_, n) => n)
    .sort(order)
    .forEach((sample, rank) => {
      of[sample] = inOrder[rank]
    })
  return { of, inOrder }
}

/** Rank of a place among those of samples, between two where it lies between them. */
export function rankAt({ inOrder }: Places, place: number): number {
  const above = inOrder.findIndex((each) => each >= place)
  if (above < 0) return inOrder.length - 1
  if (above === 0) return 0
  return above - (inOrder[above] - place) / (inOrder[above] - inOrder[above - 1])
}

/** The value at a rank, of values in order; between two where both are finite. */
export function valueAt(sorted: readonly number[], rank: number): number {
  const [under, over] = [sorted[Math.floor(rank)], sorted[Math.ceil(rank)]]
  if (!Number.isFinite(under) || !Number.isFinite(over)) return rank % 1 < 0.5 ? under : over
  return under + (rank % 1) * (over - under)
}

export interface Learned {
  /** Middle of the places left, and their spread beside that of all, 0 to 1. */
  readonly middle: number
  readonly spread: number
}

/**
 * What is left of the places once a meter has read `reading`, as if places and what the samples tell were jointly normal:
 * conditional mean and variance (T. W. Anderson, An Introduction to Multivariate Statistical Analysis, 1958, 2.5), the
 * meter's own variance added to that of what is told. `meter`: how far off it is, 8 in 10.
 */
export function learned(
  places: readonly number[],
  tells: readonly (readonly number[])[],
  reading: readonly number[],
  meter: readonly number[],
): Learned {
  const size = reading.length
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const centred = (values: readonly number[]) => {
    const middle = mean(values)
    return values.map((value) => value - middle)
  }
  const columns = reading.map((_, k) => centred(tells.map((told) => told[k])))
  const from = centred(places)
  const together = (a: readonly number[], b: readonly number[]) => mean(a.map((value, n) => value * b[n]))
  const read = new Float64Array(size * size)
  columns.forEach((a, j) => {
    columns.forEach((b, k) => {
      read[j * size + k] = together(a, b) + (j === k ? (meter[k] / EIGHT_IN_TEN) ** 2 : 0)
    })
  })
  const whole = together(from, from)
  const turned = inverse(read, size)
  if (!turned || whole === 0) return { middle: mean(places), spread: 1 }
  const shared = columns.map((column) => together(from, column))
  const share = reading.map((_, k) => shared.reduce((sum, each, j) => sum + each * turned[j * size + k], 0))
  const off = reading.map((value, k) => value - mean(tells.map((told) => told[k])))
  const moved = share.reduce((sum, each, k) => sum + each * off[k], 0)
  const taken = share.reduce((sum, each, k) => sum + each * shared[k], 0)
  return { middle: mean(places) + moved, spread: Math.sqrt(Math.max(0, 1 - taken / whole)) }
}
