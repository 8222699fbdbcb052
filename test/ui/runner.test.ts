// The runner against a pool in the test's hands: newest wins, the old answer stays, and giving up keeps it.
import { beforeEach, expect, it, vi } from 'vitest'
import type { Job } from '../../sim/job.ts'
import type { Progress } from '../../sim/run.ts'
import type { Reply, Task } from '../../workers/contract.ts'
import type { Pool } from '../../workers/pool.ts'
import { edit } from '../../ui/change/inputs.ts'
import { choose, remove, rename } from '../../ui/change/variants.ts'
import { type Runner, startRunner } from '../../ui/runner.ts'
import { AS_FOUND, createStore, isCurrent, type Result, type Store } from '../../ui/store.ts'
import { granted } from '../../ui/wishes.ts'
import { shownJob } from '../../ui/view.ts'
import { resultOf, state } from './demo.ts'

interface Call {
  readonly job: Job
  readonly urgent: boolean
  readonly signal: AbortSignal
  progress(progress: Progress): void
  answer(reply: Reply<'run'>): void
}

let calls: Call[]
let store: Store
let runner: Runner
const result: Result = resultOf(state(), AS_FOUND)
const { trace, figures } = result
const done: Reply<'run'> = { kind: 'done', trace, figures, skipping: null }
const settled = () => new Promise((resolve) => setTimeout(resolve))

beforeEach(() => {
  calls = []
  const ask = (
    signal: AbortSignal,
    task: Task,
    asking: { onProgress?: (p: Progress) => void; urgent?: boolean },
  ) =>
    new Promise<Reply>((answer) => {
      calls.push({
        job: (task as Extract<Task, { kind: 'run' }>).job,
        urgent: asking.urgent === true,
        signal,
        progress: (p) => asking.onProgress?.(p),
        answer,
      })
    })
  store = createStore(state())
  runner = startRunner(store, { ask: ask as Pool['ask'] })
})

/** Answers all there is, and all that is asked thereupon. */
async function answered(from = 0) {
  for (let n = from; n < calls.length; n++) {
    calls[n].answer(done)
    await settled()
  }
}

const edited = (text: string) => store.change((now) => edit(now, { 'belt.motorPulley': text }))

it('asks for the chosen answer, urgent, and for the others when that is there', async () => {
  expect(calls.map(({ urgent }) => urgent)).toEqual([true])
  calls[0].answer(done)
  await settled()
  expect(calls.map(({ urgent }) => urgent)).toEqual([true, false, false, false])
})

it('an edit takes back what it makes stale, and the old answer stays until the new one is there', async () => {
  await answered()
  const before = store.state.results.get(AS_FOUND)
  expect(isCurrent(store.state, AS_FOUND)).toBe(true)
  edited('3 in')
  expect(calls).toHaveLength(5)
  edited('wide')
  expect(calls[4].signal.aborted, 'at once where nothing can be asked').toBe(true)
  edited('3.5 in')
  expect(calls).toHaveLength(6)
  expect(store.state.results.get(AS_FOUND)).toBe(before)
  calls[4].answer(done)
  await settled()
  expect(store.state.results.get(AS_FOUND), 'a late answer to an old question').toBe(before)
  expect(calls, 'and nothing more is asked for it').toHaveLength(6)
  calls[5].answer(done)
  await settled()
  expect(store.state.results.get(AS_FOUND)?.job.parts.belt.motorPulley).toBeCloseTo(3.5 * 0.0254, 12)
})

it('under a drag what was just asked is let come, a step behind, and what is slow is overtaken', async () => {
  await answered()
  const pulley = () => store.state.results.get(AS_FOUND)?.job.parts.belt.motorPulley
  vi.useFakeTimers()
  try {
    edited('3 in')
    edited('3.1 in')
    edited('3.2 in')
    expect(calls, 'one at a time').toHaveLength(5)
    calls[4].answer(done)
    await vi.advanceTimersByTimeAsync(1)
    expect(pulley()).toBeCloseTo(3 * 0.0254, 12)
    expect(isCurrent(store.state, AS_FOUND)).toBe(false)
    expect(calls, 'then the newest').toHaveLength(6)
    expect(calls[5].job.parts.belt.motorPulley).toBeCloseTo(3.2 * 0.0254, 12)
    edited('3.3 in')
    await vi.advanceTimersByTimeAsync(50)
    expect(calls[5].signal.aborted).toBe(false)
    await vi.advanceTimersByTimeAsync(20)
    expect(calls[5].signal.aborted).toBe(true)
    expect(calls).toHaveLength(7)
    expect(calls[6].job.parts.belt.motorPulley).toBeCloseTo(3.3 * 0.0254, 12)
    await vi.advanceTimersByTimeAsync(70)
    calls[6].answer(done)
    await vi.advanceTimersByTimeAsync(1)
    // That one took long: none is waited for any more.
    edited('3.4 in')
    edited('3.5 in')
    expect(calls.at(-2)?.signal.aborted).toBe(true)
    expect(calls.at(-1)?.job.parts.belt.motorPulley).toBeCloseTo(3.5 * 0.0254, 12)
  } finally {
    vi.useRealTimers()
  }
})

it('asks nothing twice: renaming, choosing, and going back to what is there', async () => {
  await answered()
  store.change((now) => rename(now, 'variant 1', 'Fan'))
  store.change((now) => choose(now, 'variant 1'))
  expect(calls).toHaveLength(4)
  store.change((now) => choose(now, AS_FOUND))
  edited('3 in')
  edited('2.5 in')
  expect(store.state.working.size).toBe(0)
  expect(isCurrent(store.state, AS_FOUND)).toBe(true)
})

it('says nothing of quick work, and of slow work how far it is; given up, the old answer is tagged', async () => {
  vi.useFakeTimers()
  try {
    for (const n of [0, 1, 2, 3]) {
      calls[n].answer(done)
      await vi.advanceTimersByTimeAsync(1)
    }
    edited('3 in')
    await vi.advanceTimersByTimeAsync(140)
    expect(store.state.slow).toBe(false)
    expect(shownJob(store.state)?.previous).toBe(false)
    await vi.advanceTimersByTimeAsync(20)
    expect(store.state.slow).toBe(true)
    expect(shownJob(store.state)?.previous).toBe(true)
    calls[4].progress({ t: 3600, of: 10800 })
    expect(store.state.working.get(AS_FOUND)).toMatchObject({ t: 3600, of: 10800 })
    runner.cancel()
    expect(calls[4].signal.aborted).toBe(true)
    expect(store.state).toMatchObject({ slow: false, stopped: 'Stopped. Previous result kept.' })
    expect(shownJob(store.state)?.previous).toBe(true)
    runner.again()
    expect(calls).toHaveLength(6)
    calls[5].answer(done)
    await vi.advanceTimersByTimeAsync(1)
    expect(shownJob(store.state)?.previous).toBe(false)
  } finally {
    vi.useRealTimers()
  }
})

it('what cannot be read is not asked; its problem is there and the answer stays', async () => {
  await answered()
  edited('wide')
  expect(calls).toHaveLength(4)
  const reading = store.state.readings.get(AS_FOUND)
  expect(reading?.ok === false && reading.problems[0].path).toBe('belt.motorPulley')
  expect(shownJob(store.state)).toMatchObject({ previous: true })
})

it('a lost calculation is said, and can be asked for again', async () => {
  calls[0].answer({ kind: 'lost', why: 'the worker died' })
  await settled()
  expect(store.state.stopped).toBe('The calculation was lost: the worker died.')
  expect(calls, 'not by itself').toHaveLength(1)
  runner.again()
  expect(calls).toHaveLength(2)
})

it('a removed variant is taken back, and its answer kept only while undo would bring it back', async () => {
  calls[0].answer(done)
  await settled()
  store.change((now) => remove(now, 'variant 1'))
  expect(calls[1].signal.aborted).toBe(true)
  expect(store.state.working.has('variant 1')).toBe(false)
  await answered(2)
  const takeOut = () => store.change((now) => granted(now, { kind: 'remove', id: 'variant 2' }))
  takeOut()
  expect(store.state.results.has('variant 2')).toBe(true)
  store.change((now) => granted(now, { kind: 'undo' }))
  expect(calls).toHaveLength(4)
  takeOut()
  store.change((now) => granted(now, { kind: 'edit', path: 'machine.drag', text: '1 N·m' }))
  expect(store.state.results.has('variant 2')).toBe(false)
})

it('opens on the eve of the first opening, with the hour around it', async () => {
  calls[0].answer(done)
  await settled()
  const opening = figures.firstOpening?.t ?? 0
  expect(opening).toBeGreaterThan(0)
  expect(store.state.moment).toBeCloseTo(opening - 10, 6)
  expect(store.state.window).toEqual([0, 3600])
})
