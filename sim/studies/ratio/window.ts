// The window of ratios that work: found on a grid, its edges halved until they are sharp, and what sets each.
import type { Progress } from '../../run.ts'

/** An edge: the last ratio that works, the first beyond that does not, and why not. */
export interface Edge<Why> {
  readonly ratio: number
  /** Null: it works as far as was looked. */
  readonly beyond: number | null
  readonly why: readonly Why[]
}

export interface Window<Why> {
  readonly low: Edge<Why>
  readonly high: Edge<Why>
}

/** A ratio that was tried: nothing against it, and it works. */
export interface Tried<Why> {
  readonly ratio: number
  readonly why: readonly Why[]
}

/** Halves between a ratio that works and one that does not until they lie within `close` (a share). */
function* sharpened<Why>(
  good: Tried<Why>,
  bad: Tried<Why>,
  close: number,
  attempt: (ratio: number) => Generator<Progress, Tried<Why>>,
): Generator<Progress, Edge<Why>> {
  while (Math.abs(Math.log(bad.ratio / good.ratio)) > close) {
    const middle: Tried<Why> = yield* attempt(Math.sqrt(good.ratio * bad.ratio))
    if (middle.why.length === 0) good = middle
    else bad = middle
  }
  return { ratio: good.ratio, beyond: bad.ratio, why: bad.why }
}

/**
 * The window around the ratio that works nearest to `present`, of tried ratios in ascending order; null where none
 * works. `attempt` tries another.
 */
export function* windowOf<Why>(
  tried: readonly Tried<Why>[],
  present: number,
  close: number,
  attempt: (ratio: number) => Generator<Progress, Tried<Why>>,
): Generator<Progress, Window<Why> | null> {
  const far = ({ ratio }: Tried<Why>) => Math.abs(Math.log(ratio / present))
  let seed = -1
  tried.forEach((each, index) => {
    if (each.why.length === 0 && (seed < 0 || far(each) < far(tried[seed]))) seed = index
  })
  if (seed < 0) return null
  let first = seed
  while (first > 0 && tried[first - 1].why.length === 0) first--
  let last = seed
  while (last + 1 < tried.length && tried[last + 1].why.length === 0) last++
  const edge = function* (inside: number, outside: number): Generator<Progress, Edge<Why>> {
    const good = tried[inside]
    const bad = tried[outside]
    if (bad === undefined) return { ratio: good.ratio, beyond: null, why: [] }
    return yield* sharpened(good, bad, close, attempt)
  }
  return { low: yield* edge(first, first - 1), high: yield* edge(last, last + 1) }
}
