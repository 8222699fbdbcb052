// A task put straight to the serving function, by turns of counted work: an answer, or a named refusal, before its turns are up.
import { read } from '../../../sim/read.ts'
import { type Variant, variantsOf } from '../../../sim/scenario.ts'
import type { Task } from '../../../workers/contract.ts'
import { SLICE, work } from '../../../workers/serve.ts'
import type { Chance } from '../../seeded.ts'
import type { Trial } from '../campaign.ts'
import { HOSTILE } from './damage.ts'
import { misfilled } from './file.ts'
import { notNumber } from './said.ts'

/** Breaths a task may take, each after `SLICE` steps of its work. */
const MOST_BREATHS = 80_000

/** No task of ours: plain data of a stranger. */
const stray = (chance: Chance): unknown =>
  chance.pick<unknown>([
    ...[null, undefined, 0, '', [], {}, { kind: chance.pick(HOSTILE) }, { kind: 'run' }],
    ...[
      { kind: 'run', job: {} },
      { kind: 'ratio', scenario: null, variant: {} },
      { kind: 'lesson', name: 'none', jobs: [] },
    ],
    { kind: 'points', spec: { study: '__proto__' }, from: 0, until: 3 },
    { kind: 'points', spec: { study: 'constructor' }, from: -1, until: 1e9 },
    { kind: 'sure', spec: {}, points: [] },
  ])

/** The task of a chance: three in four of a job that the reader takes or might take. */
export function taskOf(chance: Chance): unknown {
  if (chance.happens(0.25)) return stray(chance)
  const scenario = misfilled(chance)
  const reading = read(scenario)
  const found = variantsOf(scenario)
  const variant: Variant =
    found.length > 0 && chance.happens(0.5) ? chance.pick(found) : { name: '', changes: {} }
  const kind = chance.uniform()
  // The studies run a job over and over: a few of them are enough.
  if (kind < 0.04) return { kind: 'ratio', scenario, variant } satisfies Task
  if (kind < 0.12) return { kind: 'limits', scenario, variant } satisfies Task
  if (kind < 0.14) return { kind: 'advise', scenario, variant } satisfies Task
  if (!reading.ok) return { kind: 'limits', scenario, variant } satisfies Task
  const { job } = reading
  if (kind < 0.3) return { kind: 'check', job, until: chance.size(1, 300) } satisfies Task
  if (kind < 0.4) return { kind: 'against', job, rival: null } satisfies Task
  return { kind: 'run', job } satisfies Task
}

/** What becomes of a task. */
export async function tryTask(task: unknown): Promise<Trial> {
  let steps = 0
  let breaths = 0
  const control = new AbortController()
  const reply = await work(control.signal, task as Task, () => {}, {
    now: () => steps++,
    breathe: async () => {
      if (++breaths > MOST_BREATHS) control.abort()
    },
  })
  const measures = { breaths, [reply.kind === 'failed' ? 'named refusals' : 'answers']: 1 }
  if (reply.kind === 'cancelled') return { measures, wrong: `not done after ${MOST_BREATHS * SLICE} steps` }
  if (reply.kind === 'failed') {
    // A job that the reader lets through never ends in a bug.
    const ours =
      typeof task === 'object' &&
      task !== null &&
      ('scenario' in task ? task.scenario !== null : 'job' in task && JSON.stringify(task.job).length > 2)
    return { measures, ...((reply.why === '' || ours) && { wrong: `failed: ${reply.why}` }) }
  }
  const none = notNumber(reply)
  return { measures, ...(none && { wrong: `no number at ${none}` }) }
}
