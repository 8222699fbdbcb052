// The pool over seats made of paper: who goes first, who is told what, and that every promise settles.
import { expect, it } from 'vitest'
import { latest } from '../../workers/latest.ts'
import { seatsFor } from '../../workers/pool.ts'
import { short } from './jobs.ts'
import { check, done, never, now, opened, order, paper, turn } from './paper.ts'

it('gives each worker one task at a time, urgent ones first, then the newest', async () => {
  const { make, calls } = paper()
  const { ask, run } = opened(make, 1)
  ask(never, check(1))
  ask(never, check(2))
  run(never, short)
  ask(never, check(3))
  ask(never, check(4), { urgent: true })
  expect(order(calls)).toEqual([1])
  for (let n = 0; n < 4; n++) {
    calls[n].answer(done)
    await turn()
  }
  expect(order(calls)).toEqual([1, 4, 'run', 3, 2])
})

it('uses all its workers but the one it keeps for what somebody waits for; those beyond two start when needed', async () => {
  const { make, calls, watchers } = paper()
  const { ask, run } = opened(make, 4)
  expect(watchers).toHaveLength(2)
  for (const n of [1, 2, 3, 4]) ask(never, check(n))
  expect(calls.map(({ seat }) => seat)).toEqual([0, 1, 2])
  expect(watchers).toHaveLength(3)
  run(never, short)
  run(never, short)
  expect(calls.map(({ seat }) => seat)).toEqual([0, 1, 2, 3])
  calls[1].answer(done)
  await turn()
  expect(order(calls)).toEqual([1, 2, 3, 'run', 'run'])
  expect(calls[4].seat).toBe(1)
  calls[2].answer(done)
  await turn()
  // Two of three for what nobody waits for: there is room.
  expect(order(calls)).toEqual([1, 2, 3, 'run', 'run', 4])
})

it('with one worker, uses that one', async () => {
  const { make, calls } = paper()
  const { ask } = opened(make, 1)
  for (const n of [1, 2]) ask(never, check(n))
  expect(order(calls)).toEqual([1])
  calls[0].answer(done)
  await turn()
  expect(order(calls)).toEqual([1, 2])
})

it('parts of a batch go last and in their order; those of the newest batch before those of older ones', async () => {
  const { make, calls } = paper()
  const { ask } = opened(make, 1)
  ask(never, check(0))
  for (const n of [11, 12, 13]) ask(never, check(n), { batch: 1 })
  for (const n of [21, 22]) ask(never, check(n), { batch: 2 })
  ask(never, check(3))
  ask(never, check(14), { batch: 1 })
  ask(never, check(4), { urgent: true })
  ask(never, check(5))
  for (let n = 0; n < 9; n++) {
    calls[n].answer(done)
    await turn()
  }
  expect(order(calls)).toEqual([0, 4, 5, 3, 21, 22, 11, 12, 13, 14])
})

it('keeps a worker for the cores but one, and one more for answers', () => {
  expect([1, 2, 3, 4, 8, 64].map(seatsFor)).toEqual([2, 2, 3, 4, 8, 17])
})

it('hands over reply and progress, each to its own asker', async () => {
  const { make, calls, watchers } = paper()
  const { run, check } = opened(make, 2)
  const told: unknown[] = []
  const first = run(never, short, (progress) => told.push(['run', progress.t]))
  const second = check(never, short, (progress) => told.push(['check', progress.t]), 5)
  expect(calls[1].task).toEqual({ kind: 'check', job: short, until: 5 })
  watchers[1].progress(calls[1].call, { t: 1, of: 5 })
  watchers[0].progress(calls[0].call, { t: 2, of: 5 })
  // That of an earlier call, still on its way.
  watchers[0].progress(calls[0].call - 1, { t: 3, of: 5 })
  expect(told).toEqual([
    ['check', 1],
    ['run', 2],
  ])
  calls[1].answer({ kind: 'failed', why: 'a bug' })
  calls[0].answer(done)
  expect(await first).toBe(done)
  expect(await second).toEqual({ kind: 'failed', why: 'a bug' })
})

it('takes a waiting task out of the queue', async () => {
  const { make, calls, cancels } = paper()
  const { ask } = opened(make, 1)
  const control = new AbortController()
  ask(never, check(1))
  const waiting = ask(control.signal, check(2))
  ask(never, check(3))
  control.abort()
  expect(await waiting).toEqual({ kind: 'cancelled' })
  for (const n of [0, 1]) {
    calls[n].answer(done)
    await turn()
  }
  expect(order(calls)).toEqual([1, 3])
  expect(cancels).toEqual([])
})

it('takes a running task back at once, and the same worker goes on when it has stopped', async () => {
  const { make, calls, cancels, closed, watchers } = paper()
  const { ask } = opened(make, 1)
  const control = new AbortController()
  const told: number[] = []
  const running = ask(control.signal, check(1), { onProgress: ({ t }) => told.push(t) })
  const next = ask(never, check(2))
  watchers[0].progress(calls[0].call, { t: 1, of: 9 })
  control.abort()
  expect(await now(running)).toEqual({ kind: 'cancelled' })
  expect(cancels).toEqual([calls[0].call])
  watchers[0].progress(calls[0].call, { t: 2, of: 9 })
  expect(told).toEqual([1])
  expect(calls).toHaveLength(1)
  calls[0].answer({ kind: 'cancelled' })
  await turn()
  expect(order(calls)).toEqual([1, 2])
  calls[1].answer(done)
  expect(await next).toBe(done)
  expect(closed).toEqual([])
  expect(watchers).toHaveLength(1)
})

it('never starts what was taken back beforehand', async () => {
  const { make, calls } = paper()
  const { run } = opened(make, 1)
  expect(await run(AbortSignal.abort(), short)).toEqual({ kind: 'cancelled' })
  expect(calls).toEqual([])
})

it('lets the latest request of a channel win', async () => {
  const { make, calls, cancels } = paper()
  const { run, check } = opened(make, 1)
  const answer = latest()
  const other = latest()
  const kept = check(other.next(), short)
  const [a, b, c] = [1, 2, 3].map((startC) =>
    run(answer.next(), { ...short, duty: { ...short.duty, startC } }),
  )
  expect([await now(a), await now(b), await now(c), await now(kept)]).toEqual([
    { kind: 'cancelled' },
    { kind: 'cancelled' },
    'pending',
    'pending',
  ])
  calls[0].answer(done)
  await turn()
  expect(calls.map(({ task }) => 'job' in task && task.job.duty.startC)).toEqual([short.duty.startC, 3])
  answer.cancel()
  expect(await c).toEqual({ kind: 'cancelled' })
  expect(await kept).toBe(done)
  expect(cancels).toEqual([calls[1].call])
  // A cancelled channel is not a dead one.
  expect(answer.next().aborted).toBe(false)
})
