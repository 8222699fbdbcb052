// The map of the chosen variant, as fitted and with the other cooling.
import type { HeatMap } from '../../sim/studies/map.ts'
import { chosenOf } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'

export const mapKeeper: Keeper<HeatMap> = {
  key: askedKey,
  async work(state, { pool, signal, onProgress }) {
    const reading = state.readings.get(chosenOf(state).id)
    if (!reading?.ok) return null
    const [{ heatMap, mapSpec }, { spread }] = await Promise.all([
      import('../../sim/studies/map.ts'),
      import('../../workers/spread.ts'),
    ])
    if (signal.aborted) return null
    const spec = mapSpec(reading.job)
    const found = await spread<'map'>(pool, signal, spec, { onProgress })
    if (found.kind === 'points') return { result: heatMap(reading.job, spec, found.points) }
    return unanswered(found)
  },
}
