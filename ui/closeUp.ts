// Zoomed in on a few turns that the answer skipped: they are run after all, and their exact rows take their place.
import { skippedIn } from '../sim/cycles/exact.ts'
import type { Part } from '../sim/cycles/exact.ts'
import { latest } from '../workers/latest.ts'
import type { Pool } from '../workers/pool.ts'
import { chosenOf, isCurrent, type Result, type State, type Store } from './store.ts'

/** Nothing is asked until the window has rested so long, ms. */
export const REST = 150

/** The turns, whole ones, that the window wants exact and the answer does not have; null: none. */
export function closeUpOf({ skipping, close }: Result, [from, until]: State['window']): Part | null {
  if (!skipping || !(until > from)) return null
  const { computed, seconds } = skipping
  const turns = skippedIn(computed, seconds, { from, until })
  if (turns.length === 0) return null
  const part = { from: turns[0] * seconds, until: (turns[turns.length - 1] + 1) * seconds }
  return close && close.from <= part.from && close.until >= part.until ? null : part
}

/** Watches the window of a store, from now on. */
export function startCloseUp(store: Store, pool: Pick<Pool, 'ask'>): void {
  const channel = latest()
  let pending: string | null = null
  let timer: ReturnType<typeof setTimeout> | undefined

  const ask = async (id: string, { job, key }: Result, close: Part) => {
    const signal = channel.next()
    const reply = await pool.ask(signal, { kind: 'run', job, close })
    if (signal.aborted) return
    // Kept as pending where it failed: the same question is not asked again and again.
    if (reply.kind !== 'done') return
    store.change((state) => {
      const now = state.results.get(id)
      if (now?.key !== key) return state
      return { ...state, results: new Map(state.results).set(id, { ...now, trace: reply.trace, close }) }
    })
  }

  store.subscribe(() => {
    const { state } = store
    const { id } = chosenOf(state)
    const result = state.results.get(id)
    const part = result && isCurrent(state, id) ? closeUpOf(result, state.window) : null
    const wanted = result && part ? `${part.from} ${part.until} ${result.key}` : null
    if (wanted === pending) return
    clearTimeout(timer)
    channel.cancel()
    pending = wanted
    if (result && part) timer = setTimeout(() => void ask(id, result, part), REST)
  })
}
