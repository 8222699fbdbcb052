// The runner: what is asked is read and sent to the workers, newest wins; what is shown stays until it is answered.
import { canonical } from '../sim/job.ts'
import { type Read, read } from '../sim/read.ts'
import { withVariant } from '../sim/scenario.ts'
import type { Pool } from '../workers/pool.ts'
import { withView } from './change/job.ts'
import { type Entry, entriesOf, type Result, type State, type Store, type Working } from './store.ts'

/** Work shorter than this shows no sign of itself. ms */
const QUIET = 150
/** Where answers take no longer than this, one under way is let come though the question has moved on, ms: a drag sees them, a step behind. */
const STEP_BEHIND = 60

export interface Runner {
  /** Gives up what is under way; the answers that are there stay. */
  cancel(): void
  /** Takes up again what was given up. */
  again(): void
}

/** Keeps the results of a store up with its inputs, from now on. */
export function startRunner(store: Store, pool: Pick<Pool, 'ask'>): Runner {
  const asking = new Map<string, { key: string; since: number; control: AbortController }>()
  let scenario: State['scenario'] | null = null
  let variants: State['variants'] | null = null
  let timer: ReturnType<typeof setTimeout> | undefined
  let overtaking: ReturnType<typeof setTimeout> | undefined
  /** What the last answer took, ms. */
  let took = Infinity

  const drop = (id: string) => {
    asking.get(id)?.control.abort()
    asking.delete(id)
  }

  const setWorking = (id: string, next: Working | null) =>
    store.change((state) => {
      const working = new Map(state.working)
      if (next) working.set(id, next)
      else working.delete(id)
      return { ...state, working, slow: state.slow && working.size > 0 }
    })

  /** Says so once work has gone on for a while. */
  const watchSlow = () => {
    if (asking.size === 0) {
      clearTimeout(timer)
      timer = undefined
    } else
      timer ??= setTimeout(() => {
        timer = undefined
        if (asking.size > 0) store.change((state) => ({ ...state, slow: true }))
      }, QUIET)
  }

  const ask = async (entry: Entry, reading: Extract<Read, { ok: true }>, key: string) => {
    const control = new AbortController()
    const { id } = entry
    const { job } = reading
    const since = performance.now()
    asking.set(id, { key, since, control })
    setWorking(id, { key, t: 0, of: job.duty.seconds, since })
    const text = withVariant(store.state.scenario, entry)
    const reply = await pool.ask(
      control.signal,
      { kind: 'run', job },
      {
        urgent: id === store.state.chosen,
        onProgress: ({ t, of }) => setWorking(id, { key, t, of, since }),
      },
    )
    if (asking.get(id)?.control !== control) return
    asking.delete(id)
    if (reply.kind === 'done' && id === store.state.chosen) took = performance.now() - since
    if (reply.kind === 'done') arrived(id, { text, job, key, reading, ...reply })
    else if (reply.kind !== 'cancelled')
      store.change((state) => ({ ...state, stopped: `The calculation was lost: ${reply.why}.` }))
    setWorking(id, null)
    if (store.state.stopped === null) askMissing()
    else watchSlow()
  }

  const arrived = (id: string, { text, job, key, reading, trace, figures, skipping }: Result) =>
    store.change((state) => {
      const result: Result = { text, job, key, reading, trace, figures, skipping }
      const next = { ...state, results: new Map(state.results).set(id, result) }
      return id === state.chosen ? withView(next, result, !state.results.has(id) && state.moment === 0) : next
    })

  /** What has been read and is asked. */
  const open = () => {
    const { state } = store
    return entriesOf(state).flatMap((entry) => {
      const reading = state.readings.get(entry.id)
      const key = state.asked.get(entry.id)
      return reading?.ok && key !== undefined ? [{ entry, reading, key }] : []
    })
  }

  /** Asks for the chosen answer if it is not there, else for the others: on two cores they would hold it up. */
  const askMissing = () => {
    const { chosen, results } = store.state
    const missing = open().filter(
      ({ entry, key }) => !asking.has(entry.id) && results.get(entry.id)?.key !== key,
    )
    const first = missing.find(({ entry }) => entry.id === chosen)
    const { example } = store.state
    if (first && example?.key === first.key) {
      const text = withVariant(store.state.scenario, first.entry)
      arrived(chosen, { ...example, text, reading: first.reading })
      askMissing()
    } else if (first) void ask(first.entry, first.reading, first.key)
    else if (!asking.has(chosen)) for (const { entry, reading, key } of missing) void ask(entry, reading, key)
    watchSlow()
  }

  /** Takes back what is no longer asked, once it has had its time, and asks for every answer that is not there. */
  const refresh = () => {
    const { chosen, results } = store.state
    const keys = new Map(open().map(({ entry, key }) => [entry.id, key]))
    const waits = keys.has(chosen) && results.get(chosen)?.key !== keys.get(chosen)
    clearTimeout(overtaking)
    for (const [id, { key, since }] of [...asking]) {
      if (keys.get(id) === key) continue
      const left = since + STEP_BEHIND - performance.now()
      if (id === chosen && waits && took < STEP_BEHIND && left > 0) overtaking = setTimeout(refresh, left)
      else {
        drop(id)
        setWorking(id, null)
      }
    }
    askMissing()
  }

  const follow = () => {
    const { state } = store
    if (state.scenario === scenario && state.variants === variants) return
    ;({ scenario, variants } = state)
    const entries = entriesOf(state)
    const readings = new Map(entries.map((entry) => [entry.id, read(state.scenario, entry)]))
    const asked = new Map<string, string>()
    for (const [id, reading] of readings) if (reading.ok) asked.set(id, canonical(reading.job))
    store.change((now) => ({ ...now, readings, asked, results: kept(now), stopped: null }))
    refresh()
  }

  store.subscribe(follow)
  follow()
  return {
    cancel() {
      for (const id of [...asking.keys()]) drop(id)
      clearTimeout(timer)
      clearTimeout(overtaking)
      timer = undefined
      store.change((state) => ({
        ...state,
        working: new Map(),
        slow: false,
        stopped: `Stopped.${state.results.has(state.chosen) ? ' Previous result kept.' : ''}`,
      }))
    },
    again() {
      store.change((state) => ({ ...state, stopped: null }))
      refresh()
    },
  }
}

/** Results of the variants there are, and of those that undo would bring back. */
function kept(state: State): State['results'] {
  const ids = new Set(
    [
      ...entriesOf(state),
      ...(state.history.past.at(-1)?.variants ?? []),
      ...(state.history.future.at(-1)?.variants ?? []),
    ].map(({ id }) => id),
  )
  return new Map([...state.results].filter(([id]) => ids.has(id)))
}
