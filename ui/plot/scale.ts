// From a value to its place on an axis and back: evenly, or by logarithm.

export interface Scale {
  (value: number): number
  /** The value at a place. */
  readonly at: (place: number) => number
}

type Ends = readonly [number, number]

/** The straight line through two pairs; an axis of no length puts all in its middle. */
const straight =
  ([a, b]: Ends, [c, d]: Ends) =>
  (value: number): number => {
    const share = a === b ? 0.5 : (value - a) / (b - a)
    return c * (1 - share) + d * share
  }

/** Even: `values` are those at the two `ends`, px. What lies beyond goes on in the same way. */
export const even = (values: Ends, ends: Ends): Scale =>
  Object.assign(straight(values, ends), { at: straight(ends, values) })

/** Even, and kept within `values`, which ascend. */
export function evenWithin(values: Ends, ends: Ends): Scale {
  const free = even(values, ends)
  const kept = (value: number) => Math.max(values[0], Math.min(values[1], value))
  return Object.assign((value: number) => free(kept(value)), { at: (place: number) => kept(free.at(place)) })
}

/** Equal ratios as far apart everywhere; `values` > 0. */
export function byRatio(values: Ends, ends: Ends): Scale {
  const free = even([Math.log(values[0]), Math.log(values[1])], ends)
  return Object.assign((value: number) => free(Math.log(value)), {
    at: (place: number) => Math.exp(free.at(place)),
  })
}
