// Does a task in slices with a breath between them, so that a cancel gets in and the worker stays warm.
import { transfer } from 'comlink'
import { carryOut } from '../sim/carryOut.ts'
import type { Progress } from '../sim/run.ts'
import type { Answer, Reply, Report, Service, Task } from './contract.ts'
import { nextTask } from './nextTask.ts'

/** How work is paced: a clock in ms, and a breath in which waiting messages are delivered. */
export interface Pace {
  now(): number
  breathe(): Promise<void>
}

/** A slice of work, ms: a cancel waits no longer than this and the step at hand. */
export const SLICE = 10
/** Progress is told no more often, ms: each time the page is drawn anew. */
export const TELL = 40

const ownPace: Pace = { now: () => performance.now(), breathe: nextTask }

/** Does a task. Tells its progress after a slice, every `TELL` ms; ends 'cancelled' at the first breath after the signal. Never rejects. */
export async function work(
  signal: AbortSignal,
  task: Task,
  onProgress: (progress: Progress) => void = () => {},
  pace: Pace = ownPace,
): Promise<Reply> {
  try {
    const steps = await stepsOf(task)
    let told = -Infinity
    while (!signal.aborted) {
      const from = pace.now()
      let next = steps.next()
      while (!next.done && pace.now() < from + SLICE) next = steps.next()
      if (next.done) return next.value
      if (from >= told + TELL) {
        onProgress(next.value)
        told = from
      }
      await pace.breathe()
    }
    return { kind: 'cancelled' }
  } catch (thrown) {
    return { kind: 'failed', why: thrown instanceof Error ? thrown.message : String(thrown) }
  }
}

/** The work of a task, its module fetched when it is first wanted: an answer waits for nothing but the run itself. */
async function stepsOf(task: Task): Promise<Generator<Progress, Answer>> {
  switch (task.kind) {
    case 'run':
      return ended(carryOut(task.job, { close: task.close }), (outcome) => ({ kind: 'done', ...outcome }))
    case 'check': {
      const { crossCheck } = await import('../sim/crossCheck.ts')
      return ended(crossCheck(task.job, { until: task.until }), (comparison) => ({
        kind: 'checked',
        comparison,
      }))
    }
    case 'ratio': {
      const { ratioStudy } = await import('../sim/studies/ratio.ts')
      return ended(ratioStudy(task.scenario, { variant: task.variant }), (study) => ({
        kind: 'studied',
        study,
      }))
    }
    case 'advise': {
      const { advise } = await import('../sim/advise.ts')
      return ended(advise(task.scenario, { variant: task.variant }), (advice) => ({
        kind: 'advised',
        advice,
      }))
    }
    case 'limits': {
      const { limitsStudy } = await import('../sim/studies/limits.ts')
      return ended(limitsStudy(task.scenario, task), (study) => ({ kind: 'limits', study }))
    }
    case 'against': {
      const { againstOld } = await import('../sim/rival/picture.ts')
      return ended(againstOld(task.job, task.rival), (picture) => ({ kind: 'against', picture }))
    }
    case 'lesson': {
      const { lessonFacts } = await import('../sim/lessons.ts')
      return atOnce(() => ({ kind: 'lesson', columns: lessonFacts(task.name, task.jobs) }))
    }
    case 'sure': {
      const { sureOf } = await import('../sim/studies/sure.ts')
      return atOnce(() => ({ kind: 'sure', sure: sureOf(task.spec, task.points) }))
    }
    case 'points': {
      const { points } = await import('../sim/studies/points.ts')
      return ended(points(task.spec, task.from, task.until), (found) => ({ kind: 'points', points: found }))
    }
  }
}

/** Work whose outcome becomes an answer. */
function* ended<T>(
  work: Generator<Progress, T>,
  answer: (outcome: T) => Answer,
): Generator<Progress, Answer> {
  return answer(yield* work)
}

// biome-ignore lint/correctness/useYield: work too short to tell its progress.
function* atOnce(answer: () => Answer): Generator<Progress, Answer> {
  return answer()
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
