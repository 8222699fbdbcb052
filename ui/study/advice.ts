// Advice on the chosen variant: what is wrong with it, and the cures, each run.
import type { Advice } from '../../sim/advise.ts'
import { chosenOf } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'

export const adviceKeeper: Keeper<Advice> = {
  key: askedKey,
  async work(state, { pool, signal, onProgress }) {
    const { name, changes } = chosenOf(state)
    const reply = await pool.ask(
      signal,
      { kind: 'advise', scenario: state.scenario, variant: { name, changes } },
      { onProgress },
    )
    if (reply.kind === 'advised')
      return reply.advice.ok ? { result: reply.advice } : { why: 'a value needs a look' }
    return unanswered(reply)
  },
}
