// Advice on the chosen variant: what is wrong with it, and the cures, each run.
import type { Advice } from '../../sim/advise.ts'
import { chosenOf } from '../store.ts'
import type { Keeper } from './keeper.ts'

export const adviceKeeper: Keeper<Advice> = {
  key: (state) => state.asked.get(chosenOf(state).id) ?? null,
  async work(state, { pool, signal, onProgress }) {
    const { name, changes } = chosenOf(state)
    const reply = await pool.ask(
      signal,
      { kind: 'advise', scenario: state.scenario, variant: { name, changes } },
      { onProgress },
    )
    if (reply.kind === 'advised')
      return reply.advice.ok ? { result: reply.advice } : { why: 'a value needs a look' }
    return reply.kind === 'cancelled' ? null : { why: reply.why }
  },
}
