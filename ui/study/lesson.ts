// The numbers of the lesson on the page: of its job as it stands, and of every variant.
import type { Facts } from '../../sim/lessons.ts'
import { entriesOf } from '../store.ts'
import { type Keeper, unanswered } from './keeper.ts'

export const lessonKeeper: Keeper<readonly Facts[]> = {
  key(state) {
    if (state.lesson === null) return null
    const keys = entriesOf(state).map(({ id }) => state.asked.get(id))
    return keys.includes(undefined) ? null : `${state.lesson.name} ${keys.join(' ')}`
  },
  async work(state, { pool, signal, onProgress }) {
    const jobs = entriesOf(state).flatMap(({ id }) => {
      const reading = state.readings.get(id)
      return reading?.ok ? [reading.job] : []
    })
    if (state.lesson === null) return null
    const reply = await pool.ask(signal, { kind: 'lesson', name: state.lesson.name, jobs }, { onProgress })
    if (reply.kind === 'lesson') return { result: reply.columns }
    return unanswered(reply)
  },
}
