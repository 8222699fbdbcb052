// The middle of values, and the band that holds 8 in 10 of them.

export interface Band {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/** Infinity is a value like others; an end is always a value that is there, never one between two. NaN of nothing. */
export function bandOf(values: readonly number[]): Band {
  const sorted = values.toSorted((a, b) => (a < b ? -1 : a > b ? 1 : 0))
  // By a hair less: a tenth is counted in tenths that no binary number holds.
  const at = (share: number) => sorted[Math.ceil(share * sorted.length - 1e-9) - 1] ?? Number.NaN
  return { low: at(0.1), mid: at(0.5), high: at(0.9) }
}
