// The studies' runner: the old motor's picture is asked for once for each job and plate, and again for a job opened again.
import { expect, it } from 'vitest'
import { canonical } from '../../sim/job.ts'
import { read } from '../../sim/read.ts'
import type { Reply, Task } from '../../workers/contract.ts'
import { replaced } from '../../ui/change/job.ts'
import { AS_FOUND, createStore, type State } from '../../ui/store.ts'
import { startStudies } from '../../ui/studies.ts'
import { granted } from '../../ui/wishes.ts'
import { example, state } from './demo.ts'

const turn = () => new Promise((resolve) => setTimeout(resolve))
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
  const studies = startStudies(store, { ask: ask as never })
  return { calls, store, studies }
}
const picture = { comparison: null } as never

it('asks once it is looked at, once for each plate, and again for the same job opened again', async () => {
  const { calls, store } = watched()
  store.change((now) => ({ ...now, moment: 5 }))
  expect(calls).toHaveLength(0)
  store.change((now) => granted(now, { kind: 'see against' }))
  store.change((now) => ({ ...now, moment: 6 }))
  expect(calls.map(({ task }) => task.kind)).toEqual(['against'])
  calls[0].answer({ kind: 'against', picture })
  await turn()
  expect(store.state.against.picture).toBe(picture)
  store.change((now) => granted(now, { kind: 'edit', path: 'rival.power', text: '1 hp' }))
  expect(calls).toHaveLength(2)
  store.change((now) => withReading(replaced(now, example('appleMill'))))
  calls.at(-1)?.answer({ kind: 'against', picture })
  await turn()
  store.change((now) => withReading(replaced(now, example('appleMill'))))
  expect(calls).toHaveLength(3)
})

it('a failure is told and not asked for again and again', async () => {
  const { calls, store } = watched()
  store.change((now) => granted(now, { kind: 'see against' }))
  calls[0].answer({ kind: 'failed', why: 'a bug' })
  await turn()
  store.change((now) => ({ ...now, moment: 6 }))
  expect(calls).toHaveLength(1)
  expect(store.state.against.why).toBe('a bug')
})

it('a ratio study tells its progress, and nothing once it is taken back', async () => {
  const { calls, store, studies } = watched()
  studies.ratio()
  expect(calls[0].task.kind).toBe('ratio')
  expect(store.state.ratio.working).toEqual({ t: 0, of: 1 })
  studies.cancelRatio()
  expect(calls[0].signal.aborted).toBe(true)
  calls[0].answer({ kind: 'failed', why: 'late' })
  await turn()
  expect(store.state.ratio).toMatchObject({ working: null, study: null, why: null })
})
