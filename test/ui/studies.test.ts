// The studies' runner: the old motor's picture is asked for once for each job and plate, and again for a job opened again.
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { canonical } from '../../sim/job.ts'
import { read } from '../../sim/read.ts'
import type { Reply, Task } from '../../workers/contract.ts'
import { replaced } from '../../ui/change/job.ts'
import { AS_FOUND, createStore, type State } from '../../ui/store.ts'
import type { Wish } from '../../ui/events.ts'
import { isStale, PAUSE, startStudies } from '../../ui/studies.ts'
import { granted } from '../../ui/wishes.ts'
import { example, state } from './demo.ts'

const withReading = (now: State): State => {
  const reading = read(now.scenario)
  if (!reading.ok) throw new Error('the job does not read')
  return {
    ...now,
    readings: new Map([[AS_FOUND, reading]]),
    asked: new Map([[AS_FOUND, canonical(reading.job)]]),
  }
}

function watched() {
  const calls: { task: Task; signal: AbortSignal; answer: (reply: Reply) => void }[] = []
  const store = createStore(withReading(state()))
  const ask = (signal: AbortSignal, task: Task) =>
    new Promise<Reply>((answer) => calls.push({ task, signal, answer }))
  startStudies(store, { ask: ask as never })
  const wish = (asked: Wish) => store.change((now) => granted(now, asked))
  return { calls, store, wish }
}
/** The inputs rest long enough. */
const rest = () => vi.advanceTimersByTimeAsync(PAUSE)
const picture = { comparison: null } as never
const want = { kind: 'want study', study: 'against' } as const

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

it('asks once it is looked at, once for each plate, and again for the same job opened again', async () => {
  const { calls, store, wish } = watched()
  store.change((now) => ({ ...now, moment: 5 }))
  await rest()
  expect(calls).toHaveLength(0)
  wish(want)
  store.change((now) => ({ ...now, moment: 6 }))
  await rest()
  expect(calls.map(({ task }) => task.kind)).toEqual(['against'])
  calls[0].answer({ kind: 'against', picture })
  await rest()
  expect(store.state.studies.against.result).toBe(picture)
  wish({ kind: 'edit', path: 'rival.power', text: '1 hp' })
  await rest()
  expect(calls).toHaveLength(2)
  calls[1].answer({ kind: 'against', picture })
  await rest()
  store.change((now) => withReading(replaced(now, example('appleMill'))))
  await rest()
  expect(calls).toHaveLength(3)
})

it('waits until the inputs rest and the answer is there', async () => {
  const { calls, store, wish } = watched()
  wish(want)
  store.change((now) => ({ ...now, working: new Map([[AS_FOUND, { key: 'a', t: 0, of: 1, since: 0 }]]) }))
  await vi.advanceTimersByTimeAsync(PAUSE - 1)
  wish({ kind: 'edit', path: 'rival.power', text: '1 hp' })
  wish({ kind: 'edit', path: 'rival.speed', text: '1725 rpm' })
  await rest()
  expect(calls).toHaveLength(0)
  store.change((now) => ({ ...now, working: new Map() }))
  await rest()
  expect(calls).toHaveLength(1)
})

it('a failure is told and not asked for again and again, but by hand', async () => {
  const { calls, store, wish } = watched()
  wish(want)
  await rest()
  calls[0].answer({ kind: 'failed', why: 'a bug' })
  await rest()
  store.change((now) => ({ ...now, moment: 6 }))
  await rest()
  expect(calls).toHaveLength(1)
  expect(store.state.studies.against.why).toBe('a bug')
  wish(want)
  await rest()
  expect(calls).toHaveLength(2)
})

it('told to stop, it takes the question back and waits until it is asked again', async () => {
  const { calls, store, wish } = watched()
  wish({ kind: 'want study', study: 'ratio' })
  await rest()
  expect(calls[0].task.kind).toBe('ratio')
  expect(store.state.studies.ratio.working).toEqual({ t: 0, of: 1 })
  wish({ kind: 'stop study', study: 'ratio' })
  expect(calls[0].signal.aborted).toBe(true)
  calls[0].answer({ kind: 'failed', why: 'late' })
  await rest()
  expect(store.state.studies.ratio).toMatchObject({ working: null, result: null, why: null })
  expect(calls).toHaveLength(1)
  wish({ kind: 'want study', study: 'ratio' })
  await rest()
  expect(calls).toHaveLength(2)
})

it('a study that fails for other inputs leaves nothing older on show as its own', async () => {
  const { calls, store, wish } = watched()
  wish(want)
  await rest()
  calls[0].answer({ kind: 'against', picture })
  await rest()
  wish({ kind: 'edit', path: 'rival.power', text: '1 hp' })
  await rest()
  calls[1].answer({ kind: 'failed', why: 'a bug' })
  await rest()
  expect(isStale(store.state, 'against')).toBe(false)
  expect(store.state.studies.against).toMatchObject({ result: null, why: 'a bug' })
})
