// The grid of the chosen variant over the two inputs asked: shown as it fills.
import type { GridSpec } from '../../sim/studies/grid.ts'
import { axisRead, chosenText, gridOf } from '../change/grid.ts'
import type { State } from '../store.ts'
import { askedKey, type Keeper, unanswered } from './keeper.ts'
import type { GridShown } from './work.ts'

async function specOf(state: State): Promise<GridSpec | null> {
  const { gridSpec } = await import('../../sim/studies/grid.ts')
  const scenario = chosenText(state)
  const { x, y } = gridOf(state)
  const [along, down] = [axisRead(scenario, x, 'x'), axisRead(scenario, y, 'y')]
  if ('wrong' in along || 'wrong' in down) return null
  const spec = gridSpec(scenario, undefined, along, down)
  return 'ok' in spec ? null : spec
}

export const gridKeeper: Keeper<GridShown> = {
  key(state) {
    const key = askedKey(state)
    if (key === null) return null
    const { x, y } = gridOf(state)
    const scenario = chosenText(state)
    // While an axis does not read, the last grid stays.
    if ('wrong' in axisRead(scenario, x, 'x') || 'wrong' in axisRead(scenario, y, 'y') || x.path === y.path)
      return null
    return `${JSON.stringify([x, y])} ${key}`
  },
  async work(state, { pool, signal, onProgress, onPart }) {
    const [spec, { spread }] = await Promise.all([specOf(state), import('../../workers/spread.ts')])
    if (!spec || signal.aborted) return null
    const reply = await spread(pool, signal, spec, {
      onProgress,
      onPart: (points) => onPart({ spec, points }),
    })
    if (reply.kind === 'points') return { result: { spec, points: reply.points } }
    return unanswered(reply)
  },
}
