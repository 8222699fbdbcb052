// A queue before a few workers: urgent tasks first, then the newest, batches last; every promise settles, whatever dies.
import type { Job } from '../sim/job.ts'
import type { Progress } from '../sim/run.ts'
import type { Kind, Reply, Task } from './contract.ts'
import { type Entry, type Place, place, ROUND } from './place.ts'
import type { SeatMaker } from './seats/seat.ts'

export interface Asking {
  readonly onProgress?: (progress: Progress) => void
  /** Goes before all that is not. */
  readonly urgent?: boolean
  /** Part of a batch: batches go after all else, the one with the greatest number first, its parts as they were asked. */
  readonly batch?: number
}

/** Workers that are started before there is work for them. */
const WARM = 2

/**
 * Nothing here rejects: what goes wrong is the reply. An aborted signal is answered 'cancelled' at once, and no
 * progress follows; the worker stops within a slice and stays warm. A task whose worker dies is answered 'lost'
 * and not tried again: what killed one worker would kill the next. The next task gets a new worker.
 */
export interface Pool {
  ask<K extends Kind>(signal: AbortSignal, task: Task & { kind: K }, asking?: Asking): Promise<Reply<K>>
  /** A run somebody waits for: urgent. */
  run(signal: AbortSignal, job: Job, onProgress?: Asking['onProgress']): Promise<Reply<'run'>>
  /** The second opinion, up to `until` (s) at the most. */
  check(
    signal: AbortSignal,
    job: Job,
    onProgress?: Asking['onProgress'],
    until?: number,
  ): Promise<Reply<'check'>>
  /** Ends the workers. What is under way, and what is asked from now on, is answered 'cancelled'. */
  close(): void
}

/**
 * Seats for a machine of so many cores: one less for studies, so that the page itself has one, one at least; and one
 * more that is kept for what somebody waits for, idle most of the time. Beyond a dozen and a half a study gains nothing.
 */
export const seatsFor = (cores: number): number => Math.min(16, Math.max(1, cores - 1)) + 1

/** Whether one entry goes before another that was asked before it. */
function overtakes(next: Entry, first: Entry): boolean {
  if (next.urgent !== first.urgent) return next.urgent
  if (next.batch === undefined) return true
  return first.batch !== undefined && next.batch > first.batch
}

/** A pool of `seats` workers, the first two started at once. Where there are two, one is kept for urgent tasks. */
export function pool(make: SeatMaker, seats: number): Pool {
  const queue: Entry[] = []
  let calls = 0
  let closed = false

  /** Gives free places, one with a warm worker first, what is next in the queue. */
  const advance = () => {
    while (queue.length > 0) {
      const free = places.find(({ taken, entry }) => taken && !entry) ?? places.find(({ entry }) => !entry)
      if (!free) return
      const next = queue.reduce((first, entry) => (overtakes(entry, first) ? entry : first))
      const unhurried = places.filter(({ entry }) => entry && !entry.urgent).length
      if (!next.urgent && unhurried >= Math.max(1, seats - 1)) return
      queue.splice(queue.indexOf(next), 1)
      free.start(next)
    }
  }

  const places: Place[] = Array.from({ length: seats }, (_, n) => place(make, n < WARM, advance))
  const rounds = setInterval(() => {
    for (const each of places) each.round()
  }, ROUND)

  const ask = (
    signal: AbortSignal,
    task: Task,
    { onProgress, urgent = false, batch }: Asking = {},
  ): Promise<Reply> =>
    new Promise((resolve) => {
      if (closed || signal.aborted) return resolve({ kind: 'cancelled' })
      const cancel = () => {
        const waiting = queue.indexOf(entry)
        if (waiting >= 0) queue.splice(waiting, 1)
        else places.find((each) => each.entry === entry)?.cancel()
        entry.settle({ kind: 'cancelled' })
      }
      const entry: Entry = {
        call: ++calls,
        task,
        urgent,
        batch,
        progress(progress) {
          if (!signal.aborted) onProgress?.(progress)
        },
        settle(reply) {
          signal.removeEventListener('abort', cancel)
          resolve(reply)
        },
      }
      signal.addEventListener('abort', cancel)
      queue.push(entry)
      advance()
    })

  return {
    ask: ask as Pool['ask'],
    run: (signal, job, onProgress) =>
      ask(signal, { kind: 'run', job }, { onProgress, urgent: true }) as Promise<Reply<'run'>>,
    check: (signal, job, onProgress, until) =>
      ask(signal, { kind: 'check', job, until }, { onProgress }) as Promise<Reply<'check'>>,
    close() {
      closed = true
      clearInterval(rounds)
      for (const each of places) each.close()
      for (const entry of queue.splice(0)) entry.settle({ kind: 'cancelled' })
    },
  }
}
