// A study spread over seats: the same to the last bit whatever their number, asked again where one is lost, taken back.
import { isDeepStrictEqual } from 'node:util'
import { afterEach, expect, it } from 'vitest'
import type { Progress } from '../../sim/run.ts'
import { finish } from '../../sim/run.ts'
import { type GridSpec, gridSpec } from '../../sim/studies/grid.ts'
import { axisOf } from '../../sim/studies/grid/axis.ts'
import { countOf, points, stretchesOf } from '../../sim/studies/points.ts'
import type { Reply, Task } from '../../workers/contract.ts'
import { type Pool, pool } from '../../workers/pool.ts'
import { createPool } from '../../workers/seats/node.ts'
import type { SeatMaker } from '../../workers/seats/seat.ts'
import { work } from '../../workers/serve.ts'
import { AGAIN, spread } from '../../workers/spread.ts'
import { scenario } from '../jobs.ts'
import { short } from './jobs.ts'

const never = new AbortController().signal
const open: Pool[] = []
afterEach(() => {
  for (const made of open.splice(0)) made.close()
})

function grid(hours = 0.5, nx = 3, ny = 2): GridSpec {
  const given = scenario({ 'duty.repeatFor': `${hours} h` })
  const x = axisOf(given, 'heat.air', '10..40 °C', nx)
  const y = axisOf(given, 'belt.machinePulley', '8..14 in', ny)
  if ('wrong' in x || 'wrong' in y) throw new Error('no axis')
  const spec = gridSpec(given, undefined, x, y)
  if ('ok' in spec) throw new Error('refused')
  return spec
}

/** Seats in this thread that note every task they are given; one may die of its task, or answer something else. */
function noted(
  seats: number,
  instead: (task: Task, nth: number) => 'dies' | Promise<Reply> | null = () => null,
) {
  const tasks: Task[] = []
  let made = 0
  const make: SeatMaker = (watcher) => {
    made++
    const running = new Map<number, AbortController>()
    return {
      work(call, task) {
        const other = instead(task, tasks.push(task))
        if (other === 'dies') {
          queueMicrotask(() => watcher.lost('it died'))
          return new Promise(() => {})
        }
        if (other) return other
        const control = new AbortController()
        running.set(call, control)
        return work(control.signal, task, (progress) => watcher.progress(call, progress))
      },
      cancel: (call) => running.get(call)?.abort(),
      close() {
        for (const control of running.values()) control.abort()
      },
    }
  }
  const threads = pool(make, seats)
  open.push(threads)
  return { threads, tasks, made: () => made }
}

it.each([1, 2, 3])('on %i seats gives what one thread gives, bit for bit', async (seats) => {
  const spec = grid()
  const threads = createPool(seats)
  open.push(threads)
  const told: Progress[] = []
  const parts: number[] = []
  const found = await spread(threads, never, spec, {
    onProgress: (progress) => told.push(progress),
    onPart: (part) => {
      expect(part).toHaveLength(countOf(spec))
      parts.push(part.filter((point) => point !== undefined).length)
    },
  })
  const alone = finish(points(spec))
  expect(alone).toHaveLength(6)
  expect(isDeepStrictEqual(found, { kind: 'points', points: alone })).toBe(true)
  expect(parts).toEqual([1, 2, 3, 4, 5, 6])
  const shares = told.map(({ t }) => t)
  expect(shares).toEqual(shares.toSorted((a, b) => a - b))
  expect(told.at(-1)).toEqual({ t: 6, of: 6 })
})

it('stretches cover every point once', () => {
  const spec = grid(0.5, 5, 7)
  const numbers = stretchesOf(spec).flatMap(({ from, until }) =>
    Array.from({ length: until - from }, (_, n) => from + n),
  )
  expect(numbers).toEqual(Array.from({ length: 35 }, (_, n) => n))
})

it('a lost seat is replaced and its points asked again: nothing is missing', async () => {
  const spec = grid()
  const { threads, tasks, made } = noted(1, (_task, nth) => (nth === 3 ? 'dies' : null))
  const found = await spread(threads, never, spec)
  expect(made()).toBe(2)
  expect(tasks).toHaveLength(6 + 1)
  expect(isDeepStrictEqual(found, { kind: 'points', points: finish(points(spec)) })).toBe(true)
})

it('points that kill every worker are given up and said', async () => {
  const { threads, tasks } = noted(2, (task) => (task.kind === 'points' && task.from === 2 ? 'dies' : null))
  const found = await spread(threads, never, grid())
  expect(found).toEqual({ kind: 'lost', why: 'it died' })
  expect(tasks.filter((task) => task.kind === 'points' && task.from === 2)).toHaveLength(1 + AGAIN)
  // What is left of it is taken back, and the pool goes on.
  expect((await threads.run(never, short)).kind).toBe('done')
})

it('taken back, it settles at once, its stretches are never begun, and asked again it goes on where it stood', async () => {
  const spec = grid(0.5, 4, 3)
  const { threads, tasks } = noted(1)
  const control = new AbortController()
  let parts = 0
  const told: Progress[] = []
  const found = await spread(threads, control.signal, spec, {
    onProgress: (progress) => told.push(progress),
    onPart() {
      if (++parts === 2) control.abort()
    },
  })
  expect(found).toEqual({ kind: 'cancelled' })
  const before = told.length
  expect((await threads.run(never, short)).kind).toBe('done')
  // Two done, the third perhaps under way, then the run.
  expect(tasks.length).toBeLessThanOrEqual(4)
  expect(told).toHaveLength(before)
  const begun = tasks.length
  const again = await spread(threads, never, spec)
  expect(isDeepStrictEqual(again, { kind: 'points', points: finish(points(spec)) })).toBe(true)
  expect(tasks.length - begun).toBe(10)
  const once = tasks.length
  expect(await spread(threads, never, structuredClone(spec))).toEqual(again)
  expect(tasks).toHaveLength(once)
})

it('a bug in a point ends the study and says so; one taken back beforehand asks for nothing', async () => {
  const { threads, tasks } = noted(1, async ({ kind }) => ({ kind: 'failed', why: `${kind} have a bug` }))
  expect(await spread(threads, never, grid())).toEqual({ kind: 'failed', why: 'points have a bug' })
  // The next may have begun before the first was known to fail.
  const begun = tasks.length
  expect(begun).toBeLessThanOrEqual(2)
  expect(await spread(threads, AbortSignal.abort(), grid())).toEqual({ kind: 'cancelled' })
  expect(tasks).toHaveLength(begun)
})
