// How sure the answer of the chosen variant is. It belongs to the answer: worked out whether or not its zone is near.
import type { Sure } from '../../sim/studies/sure.ts'
import { AS_FOUND, chosenOf } from '../store.ts'
import { type Keeper, unanswered } from './keeper.ts'

const numbers = new WeakMap<object, number>()
let count = 0

/** A number for an object, the same as long as it is the same object: the state is replaced, never written into. */
function numberOf(object: object): number {
  const known = numbers.get(object)
  if (known !== undefined) return known
  numbers.set(object, ++count)
  return count
}

export const sureKeeper: Keeper<Sure> = {
  // Sources and bounds stand in the text and in no job: another text is another question.
  key(state) {
    const { id, changes } = chosenOf(state)
    if (!state.asked.has(id)) return null
    return `${numberOf(state.scenario)} ${id === AS_FOUND ? 0 : numberOf(changes)}`
  },
  // Long enough for a person who is still typing: two hundred runs are not begun for half a number.
  pause: 900,
  async work(state, { pool, signal, onProgress }) {
    const [{ sureSpec }, { spread }] = await Promise.all([
      import('../../sim/studies/sure.ts'),
      import('../../workers/spread.ts'),
    ])
    if (signal.aborted) return null
    const { name, changes } = chosenOf(state)
    const spec = sureSpec(state.scenario, { variant: { name, changes } })
    if ('ok' in spec) return null
    const found = await spread<'sure'>(pool, signal, spec, { onProgress })
    if (found.kind !== 'points') return unanswered(found)
    const reply = await pool.ask(signal, { kind: 'sure', spec, points: found.points })
    if (reply.kind === 'sure')
      return reply.sure ? { result: reply.sure } : { why: 'its readings make no motor' }
    return unanswered(reply)
  },
}
