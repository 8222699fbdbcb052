// A study that falls into points: each is worked out by itself, so any worker may do any stretch of them.
import type { Progress } from '../run.ts'

export interface Pointwise<Spec, Point> {
  /** How many points there are; 0 where there is nothing to study. */
  count(spec: Spec): number
  /** How many of them one request may ask for: a tenth of a second's work at the most. */
  atOnce(spec: Spec): number
  /**
   * The points `from` ≤ n < `until`, in order: plain data. A point must not depend on the stretch it is done in: no
   * warm start, no neighbour. Yields progress in points, as often as a run does.
   */
  points(spec: Spec, from: number, until: number): Generator<Progress, readonly Point[]>
}

/** The points of a stretch one after the other, by a function of their number; progress in points. */
export function* oneByOne<Point>(
  from: number,
  until: number,
  point: (n: number) => Generator<Progress, Point>,
): Generator<Progress, readonly Point[]> {
  const done: Point[] = []
  for (let n = from; n < until; n++) {
    const work = point(n)
    for (;;) {
      const next = work.next()
      if (next.done) {
        done.push(next.value)
        break
      }
      yield { t: n - from, of: until - from }
    }
    yield { t: n + 1 - from, of: until - from }
  }
  return done
}
