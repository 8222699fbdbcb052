// Workers that are lost, stuck or silent, and a pool that closes: every task is answered.
import { expect, it, vi } from 'vitest'
import { ROUND } from '../../workers/place.ts'
import { reference } from './jobs.ts'
import { check, done, never, now, opened, order, paper } from './paper.ts'

it('says that a worker is lost, closes it, and gives the next task a new one', async () => {
  const { make, calls, closed, watchers } = paper()
  const { ask } = opened(make, 1)
  const first = ask(never, check(1))
  const second = ask(never, check(2))
  watchers[0].lost('out of memory')
  expect(await first).toEqual({ kind: 'lost', why: 'out of memory' })
  expect(closed).toEqual([0])
  expect(watchers).toHaveLength(2)
  expect(calls[1]).toMatchObject({ seat: 1, task: check(2) })
  // Last words of the first are not heard.
  watchers[0].lost('again')
  calls[0].answer(done)
  ask(never, check(3))
  expect(await now(second)).toBe('pending')
  expect(order(calls)).toEqual([1, 2])
  calls[1].answer(done)
  expect(await second).toBe(done)
})

it('a worker lost at rest costs no task', async () => {
  const { make, calls, watchers } = paper()
  const { ask } = opened(make, 2)
  watchers[0].lost('gone')
  expect(watchers).toHaveLength(2)
  ask(never, check(1))
  expect(calls[0].seat).toBe(1) // the warm one
  const second = ask(never, check(2), { urgent: true })
  expect(watchers).toHaveLength(3)
  calls[1].answer(done)
  expect(await second).toBe(done)
})

it('answers every task even if no worker can be had', async () => {
  const { ask } = opened(() => {
    throw new Error('no workers here')
  }, 2)
  const replies = await Promise.all(Array.from({ length: 50 }, (_, n) => ask(never, check(n))))
  expect(new Set(replies.map((reply) => JSON.stringify(reply)))).toEqual(
    new Set(['{"kind":"lost","why":"Error: no workers here"}']),
  )
})

it('answers a task that cannot be sent, and goes on', async () => {
  const { make, calls } = paper()
  const { ask } = opened(make, 1)
  const first = ask(never, check(1))
  calls[0].reject(new Error('could not be cloned'))
  expect(await first).toEqual({ kind: 'failed', why: 'could not be cloned' })
  const second = ask(never, check(2))
  calls[1].answer(done)
  expect(await second).toBe(done)
})

it('gives up a worker that has fallen silent, but not one that speaks, rests or still loads', async () => {
  const { make, calls, watchers } = paper()
  const { ask } = opened(make, 3)
  const stuck = ask(never, check(1))
  const speaking = ask(never, check(2))
  const loading = ask(never, check(3))
  watchers[0].ready()
  watchers[1].ready()
  for (let round = 0; round < 3; round++) {
    vi.advanceTimersByTime(ROUND)
    watchers[1].progress(calls[1].call, { t: round, of: 9 })
    expect(await now(stuck)).toBe('pending')
  }
  vi.advanceTimersByTime(ROUND)
  expect(await stuck).toEqual({ kind: 'lost', why: 'the worker fell silent' })
  vi.advanceTimersByTime(2 * ROUND)
  expect([await now(speaking), await now(loading)]).toEqual(['pending', 'pending'])
  calls[1].answer(done)
  await speaking
  vi.advanceTimersByTime(10 * ROUND)
  const next = ask(never, check(4))
  // Neither the rest nor the silence before it counts.
  vi.advanceTimersByTime(3 * ROUND)
  expect(await now(next)).toBe('pending')
  expect(calls[3].seat).toBe(1)
  calls[3].answer(done)
  expect(await next).toBe(done)
})

it('gives up a stuck worker whose task was taken back, so that the next task starts', async () => {
  const { make, calls, watchers } = paper()
  const { ask } = opened(make, 1)
  const control = new AbortController()
  const stuck = ask(control.signal, check(1))
  watchers[0].ready()
  control.abort()
  expect(await stuck).toEqual({ kind: 'cancelled' })
  const next = ask(never, check(2))
  vi.advanceTimersByTime(4 * ROUND)
  expect(calls[1]).toMatchObject({ seat: 1, task: check(2) })
  calls[1].answer(done)
  expect(await next).toBe(done)
})

it('closing answers all that is under way and all that comes after', async () => {
  const { make, closed, calls } = paper()
  const made = opened(make, 2)
  const asked = [1, 2, 3, 4].map((n) => made.ask(never, check(n), { urgent: n === 2 }))
  made.close()
  expect(closed).toEqual([0, 1])
  asked.push(made.ask(never, check(5)))
  expect(await Promise.all(asked)).toEqual(asked.map(() => ({ kind: 'cancelled' })))
  expect(calls).toHaveLength(2)
})

it('sends the job itself', () => {
  const { make, calls } = paper()
  const { job } = reference('surges')
  opened(make, 1).run(never, job)
  expect(calls[0].task).toEqual({ kind: 'run', job })
})
