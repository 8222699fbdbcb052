// One place of the pool: a worker, the task it has, and another worker when that one is lost.
import type { Progress } from '../sim/run.ts'
import type { Reply, Task } from './contract.ts'
import type { Seat, SeatMaker } from './seats/seat.ts'

/** A task somebody waits for. `settle` may be called again: only the first time counts. */
export interface Entry {
  readonly call: number
  readonly task: Task
  readonly urgent: boolean
  readonly batch: number | undefined
  progress(progress: Progress): void
  settle(reply: Reply): void
}

export interface Place {
  /** The task under way. */
  readonly entry: Entry | null
  /** True where a worker sits. */
  readonly taken: boolean
  /** Gives the place its next task: only while it has none. */
  start(entry: Entry): void
  /** Asks the worker to stop; the place is free when it has. */
  cancel(): void
  /** A round has passed: a worker that has kept silent for too many is given up. */
  round(): void
  close(): void
}

/** A round, ms. A worker at work speaks every slice; more silent rounds than this mean it is dead or stuck. */
export const ROUND = 3000
const SILENT_ROUNDS = 3

/** A place whose worker is started at once where it is to be `warm`; `freed` tells when it can take a task again. */
export function place(make: SeatMaker, warm: boolean, freed: () => void): Place {
  let seat: Seat | null = null
  let entry: Entry | null = null
  let ready = false
  let silent = 0

  /** Seats a worker. What an earlier one still says is not heard. */
  const fill = (): Seat => {
    const heard = () => seat !== null && seat === mine
    let mine: Seat | null = null
    mine = make({
      ready() {
        if (heard()) ready = true
      },
      progress(call, progress) {
        if (entry?.call !== call) return
        silent = 0
        entry.progress(progress)
      },
      lost(why) {
        if (heard()) lose(why)
      },
    })
    seat = mine
    ready = false
    return mine
  }

  const lose = (why: string) => {
    const [lostSeat, lostEntry] = [seat, entry]
    seat = entry = null
    lostSeat?.close()
    lostEntry?.settle({ kind: 'lost', why })
    freed()
  }

  try {
    if (warm) fill()
  } catch {
    // The first task tries again, and is told why not.
  }

  return {
    get entry() {
      return entry
    },
    get taken() {
      return seat !== null
    },
    start(next) {
      entry = next
      silent = 0
      const done = (reply: Reply) => {
        if (entry !== next) return
        entry = null
        next.settle(reply)
        freed()
      }
      try {
        ;(seat ?? fill())
          .work(next.call, next.task)
          .then(done, (error: Error) => done({ kind: 'failed', why: error.message }))
      } catch (thrown) {
        entry = null
        next.settle({ kind: 'lost', why: String(thrown) })
      }
    },
    cancel() {
      if (entry) seat?.cancel(entry.call)
    },
    round() {
      if (entry && ready && ++silent > SILENT_ROUNDS) lose('the worker fell silent')
    },
    close() {
      seat?.close()
      entry?.settle({ kind: 'cancelled' })
      seat = entry = null
    },
  }
}
