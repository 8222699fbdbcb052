// Turns that were skipped, run after all: exact rows for the part of a job that somebody looks at.
import type { Job } from '../job.ts'
import { type Progress, run } from '../run.ts'
import type { Trace } from '../trace.ts'
import type { CycleRun } from './summed.ts'
import { startOf } from './whole.ts'

/** A part of the job, s. */
export interface Part {
  readonly from: number
  readonly until: number
}

/** In a part with more turns than this no single one can be made out, and none is run. */
const MOST_TURNS = 12

/**
 * Numbers of the skipped turns that reach into a part; none where there are too many to tell apart. `computed`: the
 * numbers of those that were run; `seconds`: how long each is.
 */
export function skippedIn(computed: readonly number[], seconds: number, { from, until }: Part): number[] {
  const last = computed.at(-1) ?? -1
  const first = Math.max(0, Math.floor(from / seconds))
  const end = Math.min(last, Math.ceil(until / seconds) - 1)
  if (end - first >= MOST_TURNS) return []
  const known = new Set(computed)
  const found: number[] = []
  for (let n = first; n <= end; n++) if (!known.has(n)) found.push(n)
  return found
}

/** Runs the skipped turns that reach into a part: number → trace in the job's time, its sums from nothing. */
export function* exactTurns(job: Job, made: CycleRun, part: Part): Generator<Progress, Map<number, Trace>> {
  const found = new Map<number, Trace>()
  const computed = made.computed.map(({ n }) => n)
  for (const n of skippedIn(computed, made.seconds, part)) {
    const from = startOf(made, n)
    if (!from) continue
    const { trace } = yield* run(job, { from, until: from.t + made.seconds })
    // One that would open the cutoff by a hair is left as it was told: no opening appears by looking closer.
    if (trace.ending.kind === 'finished' && !trace.marks.some(({ kind }) => kind === 'opens'))
      found.set(n, trace)
  }
  return found
}
