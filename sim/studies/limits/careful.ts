// The careful job: every doubt moved against the user just so far that, together, they stand at the careful end of 8 in 10.
import type { Job } from '../../job.ts'
import type { Progress } from '../../run.ts'
import type { Doubted, Where } from './doubted.ts'

/** What is asked of a job: the more, the better. */
export type Asked = (job: Job) => Generator<Progress, number>

/** A doubt that stops the answer from being one takes away so many times the worst other. */
const BROKEN = 1

/**
 * For each question the job at its careful end. Each doubt is taken to both ends of its own band by itself; what its
 * worse end takes away is its share. The doubts are then moved together, each by its share over the root of the sum of
 * squares: where answers are straight lines in the doubts, what is lost is exactly that root, the 8-in-10 end of the
 * band. The answer there is then worked out in full, bends and all. Source: the design point of first-order
 * reliability; from memory (Hasofer and Lind, J. Eng. Mech. Div. ASCE 100, 1974).
 */
export function* carefulJobs(
  doubts: Doubted,
  asked: readonly Asked[],
): Generator<Progress, readonly { readonly job: Job; readonly where: Where }[]> {
  const told = function* <T>(work: Generator<Progress, T>, n: number): Generator<Progress, T> {
    for (;;) {
      const next = work.next()
      if (next.done) return next.value
      yield { t: n, of: doubts.names.length }
    }
  }
  const first: number[] = []
  for (const question of asked) first.push(yield* told(question(doubts.job), 0))
  const shares: { name: string; side: number; lost: number }[][] = asked.map(() => [])
  for (const [n, name] of doubts.names.entries()) {
    const ends = [-1, 1].map((side) => ({ side, job: doubts.at(new Map([[name, side]])) }))
    for (const [q, question] of asked.entries()) {
      let worst = { name, side: 0, lost: 0 }
      for (const { side, job } of ends) {
        if (!job) continue
        const lost = first[q] - (yield* told(question(job), n))
        if (lost > worst.lost) worst = { name, side, lost }
      }
      if (worst.side !== 0) shares[q].push(worst)
    }
    yield { t: n + 1, of: doubts.names.length }
  }
  return shares.map((each) => {
    const most = Math.max(0, ...each.map(({ lost }) => lost).filter(Number.isFinite))
    const finite = each.map((one) => ({
      ...one,
      lost: Number.isFinite(one.lost) ? one.lost : BROKEN * (most || 1),
    }))
    const norm = Math.hypot(...finite.map(({ lost }) => lost))
    const where: Where = new Map(
      norm > 0 ? finite.map(({ name, side, lost }) => [name, (side * lost) / norm]) : [],
    )
    return { job: doubts.at(where) ?? doubts.job, where }
  })
}
