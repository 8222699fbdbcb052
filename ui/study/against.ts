// The drive against the old motor as typed; without one, the drive alone.
import type { AgainstOld } from '../../sim/rival/picture.ts'
import { readOld } from '../change/oldMotor.ts'
import { chosenOf } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'

export const againstKeeper: Keeper<AgainstOld> = {
  key(state) {
    const key = askedKey(state)
    // While the old motor does not read, the last picture stays; the first is drawn without it.
    if (key === null || (readOld(state.old)?.ok === false && state.studies.against.result)) return null
    return `${JSON.stringify(state.old)} ${key}`
  },
  async work(state, { pool, signal }) {
    const reading = state.readings.get(chosenOf(state).id)
    const old = readOld(state.old)
    if (!reading?.ok) return null
    const rival = old?.ok ? old.rival : null
    const reply = await pool.ask(signal, { kind: 'against', job: reading.job, rival })
    if (reply.kind === 'against') return { result: reply.picture }
    return unanswered(reply)
  },
}
