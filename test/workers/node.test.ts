// Real worker threads: the same numbers, cancelled and warm, killed and replaced.
import { isDeepStrictEqual } from 'node:util'
import { Worker } from 'node:worker_threads'
import { afterEach, expect, it } from 'vitest'
import { carryOut } from '../../sim/carryOut.ts'
import { crossCheck } from '../../sim/crossCheck.ts'
import type { Job } from '../../sim/job.ts'
import { finish, type Progress } from '../../sim/run.ts'
import type { Reply } from '../../workers/contract.ts'
import { latest } from '../../workers/latest.ts'
import { type Pool, pool } from '../../workers/pool.ts'
import { createPool, nodeSeat } from '../../workers/seats/node.ts'
import type { Seat, SeatMaker } from '../../workers/seats/seat.ts'
import { endless, reference, short } from './jobs.ts'

const never = new AbortController().signal
const open: Pool[] = []
afterEach(() => {
  for (const made of open.splice(0)) made.close()
})

/** A pool of worker threads that notes its seats, the slices their workers tell of, and what they really reply. */
function watched(seats: number) {
  const made: Seat[] = []
  const slices: number[] = []
  const replies: Reply['kind'][] = []
  const make: SeatMaker = (watcher) => {
    const seat = nodeSeat({
      ...watcher,
      progress(call, progress) {
        slices.push(call)
        watcher.progress(call, progress)
      },
    })
    made.push(seat)
    return {
      ...seat,
      work: async (call, task) => {
        const reply = await seat.work(call, task)
        replies.push(reply.kind)
        return reply
      },
    }
  }
  const threads = pool(make, seats)
  open.push(threads)
  return { threads, made, slices, replies }
}

it('gives the same numbers as the direct call, bit for bit', async () => {
  const threads = createPool(2)
  open.push(threads)
  const { job } = reference('fan-lost')
  const quick = reference('stall-at-limit').job
  const told: Progress[] = []
  const [ran, checked] = await Promise.all([
    threads.run(never, job),
    threads.check(never, quick, (progress) => told.push(progress)),
  ])
  expect(isDeepStrictEqual(ran, { kind: 'done', ...finish(carryOut(job)) })).toBe(true)
  expect(checked).toEqual({ kind: 'checked', comparison: finish(crossCheck(quick)) })
  const shares = told.map(({ t, of }) => t / of)
  expect(shares.length).toBeGreaterThan(0)
  expect(shares).toEqual(shares.toSorted((a, b) => a - b))
})

it.each(['run', 'check'] as const)(
  'a %s taken back stops in its worker, which answers the next',
  async (kind) => {
    const { threads, made, slices, replies } = watched(1)
    const control = new AbortController()
    let told = 0
    let before = 0
    const long = await threads[kind](control.signal, endless, () => {
      if (++told < 3) return
      before = slices.length
      control.abort()
    })
    expect(long).toEqual({ kind: 'cancelled' })
    expect((await threads.run(never, short)).kind).toBe('done')
    // The worker itself said so before it went on, after the slice at hand or the next; and it is still the first.
    expect(replies).toEqual(['cancelled', 'done'])
    expect(slices.length - before).toBeLessThanOrEqual(3)
    expect(told).toBe(3)
    expect(made).toHaveLength(1)
  },
)

it('the latest of many edits is answered, by the same worker', async () => {
  const { threads, made, replies } = watched(1)
  const answer = latest()
  const jobs: Job[] = [endless, endless, endless, endless, short]
  const asked = jobs.map((job) => threads.run(answer.next(), job))
  expect((await Promise.all(asked)).map(({ kind }) => kind)).toEqual([
    'cancelled',
    'cancelled',
    'cancelled',
    'cancelled',
    'done',
  ])
  // Those in the middle never reached it.
  expect(replies).toEqual(['cancelled', 'done'])
  expect(made).toHaveLength(1)
})

it('a killed worker is replaced, and its task says so', async () => {
  const { threads, made } = watched(1)
  const lost = threads.run(never, endless, () => made[0].close())
  const next = threads.run(never, short)
  expect(await lost).toEqual({ kind: 'lost', why: 'the worker ended' })
  expect((await next).kind).toBe('done')
  expect(made).toHaveLength(2)
})

it('a worker out of memory is replaced too', async () => {
  const tight: SeatMaker = (watcher) => {
    const worker = new Worker('const all = []; for (;;) all.push(new Array(1e6).fill(all.length))', {
      eval: true,
      resourceLimits: { maxOldGenerationSizeMb: 16 },
    })
    worker.on('error', (error) => watcher.lost(error.message))
    return { work: () => new Promise(() => {}), cancel: () => {}, close: () => void worker.terminate() }
  }
  const threads = pool(tight, 1)
  open.push(threads)
  const reply = await threads.run(never, short)
  expect(reply.kind).toBe('lost')
  expect(reply.kind === 'lost' && reply.why).toContain('memory')
})

it('a task that cannot be sent is answered, and the worker goes on', async () => {
  const { threads, made } = watched(1)
  const unsendable = { ...short, parts: () => 0 } as unknown as Job
  expect((await threads.run(never, unsendable)).kind).toBe('failed')
  expect((await threads.run(never, short)).kind).toBe('done')
  expect(made).toHaveLength(1)
})

it('closing settles what is under way', async () => {
  const { threads } = watched(1)
  const asked = [threads.run(never, endless), threads.check(never, endless)]
  threads.close()
  expect(await Promise.all(asked)).toEqual([{ kind: 'cancelled' }, { kind: 'cancelled' }])
})
