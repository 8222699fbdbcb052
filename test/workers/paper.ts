// Seats made of paper for tests of the pool: they note what they are given and answer when the test says so.
import { afterEach, beforeEach, expect, vi } from 'vitest'
import type { Reply, Task } from '../../workers/contract.ts'
import { type Pool, pool } from '../../workers/pool.ts'
import type { SeatMaker, Watcher } from '../../workers/seats/seat.ts'
import { short } from './jobs.ts'

export interface Call {
  seat: number
  call: number
  task: Task
  answer(reply: Reply): void
  reject(error: Error): void
}

/** Seats that note what they are given and answer when the test says so. */
export function paper() {
  const calls: Call[] = []
  const cancels: number[] = []
  const closed: number[] = []
  const watchers: Watcher[] = []
  const make: SeatMaker = (watcher) => {
    const seat = watchers.push(watcher) - 1
    return {
      work: (call, task) =>
        new Promise((answer, reject) => {
          calls.push({ seat, call, task, answer, reject })
        }),
      cancel: (call) => void cancels.push(call),
      close: () => void closed.push(seat),
    }
  }
  return { make, calls, cancels, closed, watchers }
}

export const never = new AbortController().signal
export const done = { kind: 'done' } as Reply
/** Tells tasks apart by the time their check may last. */
export const check = (until: number) => ({ kind: 'check', job: short, until }) as const
export const order = (calls: Call[]) =>
  calls.map(({ task }) => (task.kind === 'check' ? task.until : task.kind))
/** Lets all settled promises run on. */
export const turn = async () => {
  for (let n = 0; n < 10; n++) await Promise.resolve()
}

/** What a promise came to, or 'pending'. */
export const now = async <T>(promise: Promise<T>) => {
  let result: T | 'pending' = 'pending'
  promise.then((value) => {
    result = value
  })
  await turn()
  return result
}

const open: Pool[] = []
export const opened = (make: SeatMaker, seats: number) => {
  const made = pool(make, seats)
  open.push(made)
  return made
}
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
})
afterEach(() => {
  for (const made of open.splice(0)) made.close()
  expect(vi.getTimerCount()).toBe(0)
  vi.useRealTimers()
})
