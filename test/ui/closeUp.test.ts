// Zoomed in on skipped turns: asked for once the window rests, taken back when it moves on, put in place of the mixture.
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { finish } from '../../sim/run.ts'
import { carryOut } from '../../sim/carryOut.ts'
import type { Part } from '../../sim/cycles/exact.ts'
import type { Reply, Task } from '../../workers/contract.ts'
import type { Pool } from '../../workers/pool.ts'
import { edit } from '../../ui/change/inputs.ts'
import { closeUpOf, REST, startCloseUp } from '../../ui/closeUp.ts'
import { AS_FOUND, createStore, type Result, type State } from '../../ui/store.ts'
import { resultOf, state } from './demo.ts'

/** The apple mill with its fan for 16 hours: most of its turns are skipped. */
const long = edit(edit(state(), { 'heat.cooling': 'blower' }), { 'duty.repeatFor': '16 h' })
const result = resultOf(long, AS_FOUND)
const { computed, seconds } = result.skipping!
const n = Array.from({ length: 100 }, (_, turn) => turn).find(
  (turn) => turn > 30 && !computed.includes(turn),
)!
const over = (from: number, until: number): State['window'] => [from * seconds, until * seconds]

interface Call {
  readonly close: Part
  readonly signal: AbortSignal
  answer(reply: Reply): void
}
let calls: Call[]
const shown = (window: State['window'], of: Result = result): State => ({
  ...long,
  asked: new Map([[AS_FOUND, of.key]]),
  results: new Map([[AS_FOUND, of]]),
  window,
})

beforeEach(() => {
  vi.useFakeTimers()
  calls = []
})
afterEach(() => {
  vi.useRealTimers()
})

function started() {
  const store = createStore(shown(over(0, 100)))
  const ask = (signal: AbortSignal, task: Task) =>
    new Promise<Reply>((answer) => {
      calls.push({ close: (task as Task & { kind: 'run' }).close!, signal, answer })
    })
  startCloseUp(store, { ask: ask as Pool['ask'] })
  const look = (window: State['window']) => store.change((now) => ({ ...now, window }))
  return { store, look }
}

it('asks for whole turns that were skipped, and for none that are there', () => {
  expect(closeUpOf(result, over(n + 0.2, n + 0.9))).toEqual({ from: n * seconds, until: (n + 1) * seconds })
  expect(closeUpOf(result, over(0, 120))).toBeNull()
  expect(closeUpOf(result, over(0.2, 0.9))).toBeNull()
  expect(closeUpOf({ ...result, skipping: null }, over(n, n + 1))).toBeNull()
  const close = { from: (n - 1) * seconds, until: (n + 2) * seconds }
  expect(closeUpOf({ ...result, close }, over(n + 0.2, n + 0.9))).toBeNull()
})

it('waits until the window rests, and shows the exact rows when they come', async () => {
  const { store, look } = started()
  look(over(n, n + 3))
  vi.advanceTimersByTime(REST - 1)
  look(over(n + 0.1, n + 0.9))
  vi.advanceTimersByTime(REST - 1)
  expect(calls).toEqual([])
  vi.advanceTimersByTime(1)
  expect(calls).toHaveLength(1)
  const [{ close, answer }] = calls
  const outcome = finish(carryOut(result.job, { close }))
  answer({ kind: 'done', ...outcome })
  await vi.advanceTimersByTimeAsync(0)
  const now = store.state.results.get(AS_FOUND)!
  expect(now.trace).toBe(outcome.trace)
  expect(now.figures).toBe(result.figures)
  // They are there now: looking at a part of them asks for nothing more.
  look(over(n + 0.3, n + 0.8))
  vi.advanceTimersByTime(REST)
  expect(calls).toHaveLength(1)
})

it('takes it back when the window moves on, and leaves another answer alone', async () => {
  const { store, look } = started()
  look(over(n, n + 1))
  vi.advanceTimersByTime(REST)
  look(over(0, 100))
  expect(calls[0].signal.aborted).toBe(true)
  look(over(n, n + 1))
  vi.advanceTimersByTime(REST)
  expect(calls).toHaveLength(2)
  const other = { ...result, key: 'another' }
  store.change(() => shown(over(n, n + 1), other))
  calls[1].answer({ kind: 'done', ...finish(carryOut(result.job)) })
  await vi.advanceTimersByTimeAsync(0)
  expect(store.state.results.get(AS_FOUND)).toBe(other)
})

it('does not ask again for what was lost', async () => {
  const { store, look } = started()
  look(over(n, n + 1))
  vi.advanceTimersByTime(REST)
  calls[0].answer({ kind: 'lost', why: 'gone' })
  await vi.advanceTimersByTimeAsync(0)
  store.change((now) => ({ ...now, moment: 5 }))
  vi.advanceTimersByTime(REST)
  expect(calls).toHaveLength(1)
})
