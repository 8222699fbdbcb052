// Does a task in slices with a breath between them, so that a cancel gets in and the worker stays warm.
import { transfer } from 'comlink'
import { advise } from '../sim/advise.ts'
import { carryOut } from '../sim/carryOut.ts'
import { crossCheck } from '../sim/crossCheck.ts'
import { lessonFacts } from '../sim/lessons.ts'
import { againstOld } from '../sim/rival/picture.ts'
import type { Progress } from '../sim/run.ts'
import { points } from '../sim/studies/points.ts'
import { limitsStudy } from '../sim/studies/limits.ts'
import { sureOf } from '../sim/studies/sure.ts'
import { ratioStudy } from '../sim/studies/ratio.ts'
import type { Answer, Reply, Report, Service, Task } from './contract.ts'

/** How work is paced: a clock in ms, and a breath in which waiting messages are delivered. */
export interface Pace {
  now(): number
  breathe(): Promise<void>
}

/** A slice of work, ms: a cancel waits no longer than this and the step at hand. */
export const SLICE = 40

/** A breath is a message to oneself: it goes behind those already waiting, and no timer holds it up. */
const ownPace: Pace = {
  now: () => performance.now(),
  breathe: () =>
    new Promise((resolve) => {
      const { port1, port2 } = new MessageChannel()
      port1.onmessage = () => {
        port1.close()
        resolve()
      }
      port2.postMessage(null)
    }),
}

/** Does a task. Tells its progress once a slice; ends 'cancelled' at the first breath after the signal. Never rejects. */
export async function work(
  signal: AbortSignal,
  task: Task,
  onProgress: (progress: Progress) => void = () => {},
  pace: Pace = ownPace,
): Promise<Reply> {
  try {
    const steps = answer(task)
    while (!signal.aborted) {
      const until = pace.now() + SLICE
      let next = steps.next()
      while (!next.done && pace.now() < until) next = steps.next()
      if (next.done) return next.value
      onProgress(next.value)
      await pace.breathe()
    }
    return { kind: 'cancelled' }
  } catch (thrown) {
    return { kind: 'failed', why: thrown instanceof Error ? thrown.message : String(thrown) }
  }
}

function* answer(task: Task): Generator<Progress, Answer> {
  switch (task.kind) {
    case 'run':
      return { kind: 'done', ...(yield* carryOut(task.job, { close: task.close })) }
    case 'check':
      return { kind: 'checked', comparison: yield* crossCheck(task.job, { until: task.until }) }
    case 'ratio':
      return { kind: 'studied', study: yield* ratioStudy(task.scenario, { variant: task.variant }) }
    case 'advise':
      return { kind: 'advised', advice: yield* advise(task.scenario, { variant: task.variant }) }
    case 'limits':
      return { kind: 'limits', study: yield* limitsStudy(task.scenario, task) }
    case 'against':
      return { kind: 'against', picture: yield* againstOld(task.job, task.rival) }
    case 'lesson':
      return { kind: 'lesson', columns: lessonFacts(task.name, task.jobs) }
    case 'sure':
      return { kind: 'sure', sure: sureOf(task.spec, task.points) }
    case 'points':
      return { kind: 'points', points: yield* points(task.spec, task.from, task.until) }
  }
}

/** Every buffer in plain data, once each: handed over instead of copied. */
export function buffersIn(data: unknown, found = new Set<ArrayBuffer>()): ArrayBuffer[] {
  if (ArrayBuffer.isView(data)) {
    if (data.buffer instanceof ArrayBuffer) found.add(data.buffer)
  } else if (typeof data === 'object' && data !== null) {
    for (const value of Object.values(data)) buffersIn(value, found)
  }
  return [...found]
}

/** The service a worker exposes. */
export function service(pace: Pace = ownPace): Service {
  let report: Report = () => {}
  const running = new Map<number, AbortController>()
  return {
    listen(to) {
      report = to
    },
    async work(call, task) {
      const control = new AbortController()
      running.set(call, control)
      const reply = await work(control.signal, task, (progress) => report(call, progress), pace)
      running.delete(call)
      return transfer(reply, buffersIn(reply))
    },
    cancel(call) {
      running.get(call)?.abort()
    },
  }
}
