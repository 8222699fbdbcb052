// The second opinion on the answer shown: asked for by hand, told as it goes, dropped when the answer changes.
import { latest } from '../workers/latest.ts'
import type { Pool } from '../workers/pool.ts'
import { type Check, chosenOf, type Store } from './store.ts'

export interface Checker {
  start(): void
  cancel(): void
}

export function startChecker(store: Store, pool: Pick<Pool, 'check'>): Checker {
  const asking = latest()
  const set = (check: Check | null) => store.change((state) => ({ ...state, check }))

  // A check belongs to one answer: with another answer on show it says nothing.
  store.subscribe(() => {
    const { check, results } = store.state
    if (!check || results.get(chosenOf(store.state).id)?.key === check.key) return
    asking.cancel()
    set(null)
  })

  return {
    async start() {
      const result = store.state.results.get(chosenOf(store.state).id)
      if (!result) return
      const signal = asking.next()
      const { key, job } = result
      set({ kind: 'working', key, t: 0, of: result.figures.firstOpening?.t ?? job.duty.seconds })
      const reply = await pool.check(signal, job, ({ t, of }) => {
        if (!signal.aborted) set({ kind: 'working', key, t, of })
      })
      if (signal.aborted) return
      if (reply.kind === 'checked') set({ kind: 'done', key, comparison: reply.comparison })
      else if (reply.kind === 'cancelled') set(null)
      else set({ kind: 'stopped', key, why: reply.why })
    },
    cancel() {
      asking.cancel()
      set(null)
    },
  }
}
