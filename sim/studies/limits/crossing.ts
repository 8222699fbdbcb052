// Where a condition just still holds, asked by work that can be breathed in: false position on a bracket.
import type { Progress } from '../../run.ts'

/** Asked at x: how much is left; below 0: too much. */
export type Spare = (x: number) => Generator<Progress, number>

/** Times looked at in between, at most. */
const LOOKS = 40

/**
 * The x nearest the crossing at which there is still something left, to `close`; `good` has some left, `bad` has not,
 * either may be the greater. Illinois false position, a half where that creeps; -Infinity is taken as far below.
 */
export function* crossing(
  spare: Spare,
  good: { readonly x: number; readonly left: number },
  bad: { readonly x: number; readonly left: number },
  close: number,
): Generator<Progress, number> {
  const finite = (left: number) => Math.max(-1e3, Math.min(1e3, left))
  let [a, fa] = [good.x, finite(good.left)]
  let [b, fb] = [bad.x, finite(bad.left)]
  let last = 0
  for (let n = 0; n < LOOKS && Math.abs(b - a) > close; n++) {
    const slope = fb - fa
    const secant = a - (fa * (b - a)) / slope
    // Every third look halves the bracket, whatever the secant thinks; none lies nearer to an end than half of `close`.
    const edge = Math.min(0.5, (0.5 * close) / Math.abs(b - a))
    const share =
      n % 3 === 2 || !(slope < 0) ? 0.5 : Math.min(1 - edge, Math.max(edge, (secant - a) / (b - a)))
    const x = a + share * (b - a)
    const left = finite(yield* spare(x))
    if (left >= 0) {
      a = x
      fa = left
      if (last > 0) fb /= 2
      last = 1
    } else {
      b = x
      fb = left
      if (last < 0) fa /= 2
      last = -1
    }
  }
  return a
}

/**
 * From `first`, goes by factors until the sign changes: a bracket, or the side that holds all the way ('always' up to
 * `most`, 'never' down to `least`). Something is left at small x and not at large ones.
 */
export function* bracket(
  spare: Spare,
  first: number,
  least: number,
  most: number,
  factor: number,
): Generator<
  Progress,
  { good: number; bad: number; goodLeft: number; badLeft: number } | 'always' | 'never'
> {
  let x = Math.min(most, Math.max(least, first))
  let left = yield* spare(x)
  const up = left >= 0
  // Downwards the end is asked first: where nothing does, the way there is spared.
  if (!up && (x === least || (yield* spare(least)) < 0)) return 'never'
  for (;;) {
    if (up && x === most) return 'always'
    const next = up ? Math.min(most, x * factor) : Math.max(least, x / factor)
    const there = yield* spare(next)
    if (up ? there < 0 : there >= 0)
      return up
        ? { good: x, goodLeft: left, bad: next, badLeft: there }
        : { good: next, goodLeft: there, bad: x, badLeft: left }
    x = next
    left = there
  }
}
