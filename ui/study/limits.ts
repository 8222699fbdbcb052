// Work and rest of the chosen variant: the limits of its hardest step, or of one that was picked.
import type { LimitsStudy } from '../../sim/studies/limits.ts'
import { chosenOf, type State } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'

/** The step that was picked, where the job still has one of that name that runs. */
export function cutPicked(state: State): string | undefined {
  const reading = state.readings.get(chosenOf(state).id)
  const { limitsCut } = state
  if (!reading?.ok || !limitsCut) return undefined
  return reading.job.duty.phases.some(({ name, speed }) => name === limitsCut && speed > 0)
    ? limitsCut
    : undefined
}

export const limitsKeeper: Keeper<LimitsStudy> = {
  key(state) {
    const key = askedKey(state)
    return key === null ? null : `${cutPicked(state) ?? ''} ${key}`
  },
  async work(state, { pool, signal, onProgress }) {
    const { name, changes } = chosenOf(state)
    const { scenario } = state
    const reply = await pool.ask(
      signal,
      { kind: 'limits', scenario, variant: { name, changes }, phase: cutPicked(state) },
      { onProgress },
    )
    if (reply.kind === 'limits')
      return reply.study.ok ? { result: reply.study } : { why: reply.study.problems[0].wrong }
    return unanswered(reply)
  },
}
