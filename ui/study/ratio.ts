// The ratio study of the chosen variant.
import type { RatioStudy } from '../../sim/studies/ratio.ts'
import { chosenOf } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'

export const ratioKeeper: Keeper<RatioStudy> = {
  key: askedKey,
  async work(state, { pool, signal, onProgress }) {
    const { name, changes } = chosenOf(state)
    const reply = await pool.ask(
      signal,
      { kind: 'ratio', scenario: state.scenario, variant: { name, changes } },
      { onProgress },
    )
    if (reply.kind === 'studied')
      return reply.study.ok ? { result: reply.study } : { why: 'a value needs a look' }
    return unanswered(reply)
  },
}
