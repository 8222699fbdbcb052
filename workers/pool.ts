// A queue before a few workers: urgent tasks first, then the newest; every promise settles, whatever dies.
import type { Job } from '../sim/job.ts'
import type { Progress } from '../sim/run.ts'
import type { Kind, Reply, Task } from './contract.ts'
import { type Entry, type Place, place, ROUND } from './place.ts'
import type { SeatMaker } from './seats/seat.ts'

export interface Asking {
  readonly onProgress?: (progress: Progress) => void
  /** Goes before all that is not. */
  readonly urgent?: boolean
}

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

/** A pool of `seats` workers, started at once. */
export function pool(make: SeatMaker, seats: number): Pool {
  const queue: Entry[] = []
  let calls = 0
  let closed = false

  /** Gives free places, one with a warm worker first, what is next in the queue. */
  const advance = () => {
    while (queue.length > 0) {
      const free = places.find(({ taken, entry }) => taken && !entry) ?? places.find(({ entry }) => !entry)
      if (!free) return
      const urgent = queue.findLastIndex((entry) => entry.urgent)
      const [next] = queue.splice(urgent < 0 ? queue.length - 1 : urgent, 1)
      free.start(next)
    }
  }

  const places: Place[] = Array.from({ length: seats }, () => place(make, advance))
  const rounds = setInterval(() => {
    for (const each of places) each.round()
  }, ROUND)

  const ask = (
    signal: AbortSignal,
    task: Task,
    { onProgress, urgent = false }: Asking = {},
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
