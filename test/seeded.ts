// Chance from a seed: the same numbers for the same seed, for every trial of a campaign and every seeded test.

export interface Chance {
  /** In (0, 1). */
  readonly uniform: () => number
  readonly even: (low: number, high: number) => number
  /** Even in its logarithm. */
  readonly size: (low: number, high: number) => number
  /** Of mean 0 and standard deviation 1. */
  readonly normal: () => number
  readonly happens: (share: number) => boolean
  readonly pick: <T>(list: readonly T[]) => T
}

/** Box and Muller (1958) over a linear congruence of 2³² (Knuth, TAOCP 2, 3.3.4). */
export function seeded(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return (state + 0.5) / 2 ** 32
  }
  for (let n = 0; n < 8; n++) uniform()
  return {
    uniform,
    even: (low, high) => low + (high - low) * uniform(),
    size: (low, high) => low * (high / low) ** uniform(),
    normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()),
    happens: (share) => uniform() < share,
    pick: (list) => list[Math.floor(list.length * uniform())],
  }
}
