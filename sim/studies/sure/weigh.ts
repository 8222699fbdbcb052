// Weighing samples: bands of weighted values, and how much each sample counts once something has been measured.
import { EIGHT_IN_TEN } from './normal.ts'

export interface Band {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/** Value under which the share q (0 to 1) of the weight lies: that of a sample, never between two. */
function quantile(sorted: readonly (readonly [number, number])[], total: number, q: number): number {
  let sum = 0
  for (const [value, weight] of sorted) {
    sum += weight
    if (sum >= q * total) return value
  }
  return sorted[sorted.length - 1]?.[0] ?? Number.NaN
}

/** The middle and the 8-in-10 band of values; Infinity is a value like others. All weigh the same unless said. */
export function bandOf(values: readonly number[], weights?: readonly number[]): Band {
  const sorted = values
    .map((value, n) => [value, weights?.[n] ?? 1] as const)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0)
  return {
    low: quantile(sorted, total, 0.1),
    mid: quantile(sorted, total, 0.5),
    high: quantile(sorted, total, 0.9),
  }
}

/** How many samples of equal weight would tell as much: (Σw)² / Σw² (Kish, Survey Sampling, 1965). */
export function worth(weights: readonly number[]): number {
  const sum = weights.reduce((a, b) => a + b, 0)
  const squares = weights.reduce((a, b) => a + b * b, 0)
  return squares > 0 ? sum ** 2 / squares : 0
}

/** Samples that must carry a band, or it is nothing but their chance. */
const LEAST_WORTH = 20
const WIDER = 1.25

/**
 * How much each sample counts once a meter has read `reading`: the likelihood of that under what it tells. `meter`: how
 * far off it is, 8 in 10. Where too few samples would carry the answer the meter is taken for a worse one.
 */
export function weightsFor(
  tells: readonly (readonly number[])[],
  reading: readonly number[],
  meter: readonly number[],
): readonly number[] {
  const least = Math.min(LEAST_WORTH, tells.length / 4)
  let squares = tells.map((told) =>
    told.reduce((sum, value, k) => sum + (((value - reading[k]) * EIGHT_IN_TEN) / meter[k]) ** 2, 0),
  )
  // From the nearest one: a reading that no sample tells would leave nothing but zeros.
  const nearest = Math.min(...squares)
  squares = squares.map((square) => square - nearest)
  for (let wide = 1; ; wide *= WIDER) {
    const weights = squares.map((square) => Math.exp(-square / (2 * wide ** 2)))
    if (worth(weights) >= least || wide > 1e3) return weights
  }
}

/** Mean and variance of weighted values. */
export function spreadOf(
  values: readonly number[],
  weights: readonly number[],
): { mean: number; variance: number } {
  const total = weights.reduce((a, b) => a + b, 0)
  const mean = values.reduce((sum, value, n) => sum + value * weights[n], 0) / total
  const variance = values.reduce((sum, value, n) => sum + weights[n] * (value - mean) ** 2, 0) / total
  return { mean, variance }
}
