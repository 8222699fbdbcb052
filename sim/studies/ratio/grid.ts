// The grid of a ratio study: from well under the present ratio to past the one where the volts end, and then some.
import type { Progress } from '../../run.ts'
import type { Fault } from './trial.ts'
import type { Tried } from './window.ts'

export interface Grid {
  readonly low: number
  readonly high: number
  /** Ratios on it, 2 or more; the present one comes on top. */
  readonly count: number
  readonly now: number
  /** The lowest ratio that may be tried while all that is on the grid works. */
  readonly least: number
}

/** While the lowest ratio works, so many more are tried under it. */
const MORE = 8
/** Halvings in search of a window narrower than the grid's steps. */
const SEEKS = 7
/** Ratios nearer to each other than this are one, a share. */
const SAME = 0.005

/** Evenly spread by logarithm, ends included. */
export const spread = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, n) => low * (high / low) ** (n / (count - 1)))

/** Tries the grid, ascending, and what more it takes to see a window. */
export function* tryGrid(
  { low, high, count, now, least }: Grid,
  attempt: (ratio: number) => Generator<Progress, Tried<Fault>>,
): Generator<Progress, Tried<Fault>[]> {
  const ratios = spread(low, high, count).filter((each) => Math.abs(Math.log(each / now)) > SAME)
  const tried: Tried<Fault>[] = []
  for (const ratio of [...ratios, now].sort((a, b) => a - b)) tried.push(yield* attempt(ratio))
  const step = (high / low) ** (1 / (count - 1))
  for (let n = 0; n < MORE && tried[0].why.length === 0; n++) {
    const under = Math.max(least, tried[0].ratio / step)
    if (under >= tried[0].ratio) break
    tried.unshift(yield* attempt(under))
  }
  const beyond = tried.findIndex(({ why }) => why.includes('reach'))
  if (beyond <= 0 || tried.some(({ why }) => why.length === 0)) return tried

  // None works. One may, between the last that fails for other reasons and the first that volts forbid.
  let under = tried[beyond - 1]
  let over = tried[beyond]
  for (let n = 0; n < SEEKS; n++) {
    const middle: Tried<Fault> = yield* attempt(Math.sqrt(under.ratio * over.ratio))
    tried.push(middle)
    if (middle.why.length === 0) break
    if (middle.why.includes('reach')) over = middle
    else under = middle
  }
  return tried.sort((a, b) => a.ratio - b.ratio)
}
