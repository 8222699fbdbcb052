// What the first answer does without: studies, close-ups, the second opinion, and granting what is wished.
import type { Pool } from '../workers/pool.ts'
import { startChecker } from './check.ts'
import { startCloseUp } from './closeUp.ts'
import { grant } from './effects.ts'
import type { Wish } from './events.ts'
import type { Autosave } from './keep/autosave.ts'
import type { Runner } from './runner.ts'
import { startStudies } from './studies.ts'
import type { Store } from './store.ts'

/** Begins it all; returns what grants a wish. */
export function begin(
  store: Store,
  pool: Pool,
  runner: Runner,
  autosave: Autosave,
): (wish: Wish) => Promise<void> {
  const checker = startChecker(store, pool)
  startStudies(store, pool)
  startCloseUp(store, pool)
  return (wish) => grant(store, runner, checker, autosave, wish)
}
