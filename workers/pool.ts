// A queue before a few workers: urgent tasks first, then the newest; every promise settles, whatever dies.
import type { Job } from '../sim/job.ts'
import type { Progress } from '../sim/run.ts'
import type { Kind, Reply, Task } from './contract.ts'
import type { Seat, SeatMaker } from './seats/seat.ts'

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

interface Entry extends Asking {
  readonly call: number
  readonly task: Task
  settle(reply: Reply): void
}

/** Where a worker sits or will sit. */
interface Place {
  seat: Seat | null
  entry: Entry | null
  ready: boolean
  /** Rounds without a word from a worker at work. */
  silent: number
}

/** A round, ms. A worker speaks every slice; three silent rounds mean that it is dead or stuck. */
export const ROUND = 3000
const SILENT_ROUNDS = 3

/** A pool of `seats` workers, started at once. */
export function pool(make: SeatMaker, seats: number): Pool {
  const queue: Entry[] = []
  const places: Place[] = Array.from({ length: seats }, () => ({
    seat: null,
    entry: null,
    ready: false,
    silent: 0,
  }))
  let calls = 0
  let closed = false

  /** Puts a worker on the place. What an earlier one still says is not heard. */
  const fill = (place: Place): Seat => {
    let seat: Seat | null = null
    const heard = () => seat !== null && place.seat === seat
    seat = make({
      ready() {
        if (heard()) place.ready = true
      },
      progress(call, progress) {
        if (!heard()) return
        place.silent = 0
        if (place.entry?.call === call) place.entry.onProgress?.(progress)
      },
      lost(why) {
        if (heard()) lose(place, why)
      },
    })
    place.seat = seat
    place.ready = false
    return seat
  }

  const lose = (place: Place, why: string) => {
    const { seat, entry } = place
    place.seat = place.entry = null
    seat?.close()
    entry?.settle({ kind: 'lost', why })
    advance()
  }

  const start = (place: Place, entry: Entry) => {
    place.entry = entry
    place.silent = 0
    const done = (reply: Reply) => {
      if (place.entry !== entry) return
      place.entry = null
      entry.settle(reply)
      advance()
    }
    try {
      const seat = place.seat ?? fill(place)
      seat
        .work(entry.call, entry.task)
        .then(done, (error: Error) => done({ kind: 'failed', why: error.message }))
    } catch (thrown) {
      place.entry = null
      entry.settle({ kind: 'lost', why: String(thrown) })
    }
  }

  /** Gives free places, one with a warm worker first, what is next in the queue. */
  const advance = () => {
    while (queue.length > 0) {
      const place = places.find(({ seat, entry }) => seat && !entry) ?? places.find(({ entry }) => !entry)
      if (!place) return
      const urgent = queue.findLastIndex((entry) => entry.urgent)
      const [entry] = queue.splice(urgent < 0 ? queue.length - 1 : urgent, 1)
      start(place, entry)
    }
  }

  const rounds = setInterval(() => {
    for (const place of places)
      if (place.entry && place.ready && ++place.silent > SILENT_ROUNDS) lose(place, 'the worker fell silent')
  }, ROUND)

  const ask = (signal: AbortSignal, task: Task, asking: Asking = {}): Promise<Reply> =>
    new Promise((resolve) => {
      if (closed || signal.aborted) return resolve({ kind: 'cancelled' })
      const call = ++calls
      const cancel = () => {
        const waiting = queue.indexOf(entry)
        if (waiting >= 0) queue.splice(waiting, 1)
        else places.find((place) => place.entry === entry)?.seat?.cancel(call)
        entry.settle({ kind: 'cancelled' })
      }
      const entry: Entry = {
        call,
        task,
        urgent: asking.urgent,
        onProgress: (progress) => {
          if (!signal.aborted) asking.onProgress?.(progress)
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

  for (const place of places) {
    try {
      fill(place)
    } catch {
      // The first task that needs the place tries again, and says why not.
    }
  }

  return {
    ask: ask as Pool['ask'],
    run: (signal, job, onProgress) =>
      ask(signal, { kind: 'run', job }, { onProgress, urgent: true }) as Promise<Reply<'run'>>,
    check: (signal, job, onProgress, until) =>
      ask(signal, { kind: 'check', job, until }, { onProgress }) as Promise<Reply<'check'>>,
    close() {
      closed = true
      clearInterval(rounds)
      const entries = [...queue.splice(0), ...places.flatMap(({ entry }) => entry ?? [])]
      for (const { seat } of places) seat?.close()
      for (const place of places) place.seat = place.entry = null
      for (const entry of entries) entry.settle({ kind: 'cancelled' })
    },
  }
}
