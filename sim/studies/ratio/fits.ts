// Of a window of ratios, the part that the belt's last stage can be given: room, wrap, pulley sizes, rim speed.
import type { Belt } from '../../parts/belt.ts'
import type { Progress } from '../../run.ts'
import { spread } from './grid.ts'
import { beltFaults, type BeltLimit } from '../../drive/limits.ts'
import type { Fault } from './trial.ts'
import { type Tried, type Window, windowOf } from './window.ts'

export type Why = Fault | BeltLimit

/** Limits of the belt that the last pulley decides; the others stand as they are at every ratio. */
export const DECIDED: readonly BeltLimit[] = ['touch', 'wrap', 'small driven', 'rim']

const LOOKS = 200

/** The window within `duty`; null where nothing of it fits. `now` is the ratio, `fastest` the spindle's asked rad/s. */
export function* fitting(
  belt: Belt,
  duty: Window<Fault>,
  now: number,
  fastest: number,
  close: number,
): Generator<Progress, Window<Why> | null> {
  const look = (ratio: number): Tried<Why> => ({
    ratio,
    // What it pulls is none of these limits.
    why: beltFaults({ ...belt, machinePulley: (belt.machinePulley * ratio) / now }, fastest * ratio, 0)
      .map(({ kind }) => kind)
      .filter((kind) => DECIDED.includes(kind)),
  })
  const looks = spread(duty.low.ratio, duty.high.ratio, LOOKS).map(look)
  // biome-ignore lint/correctness/useYield: attempts may take runs; these take none.
  const found = yield* windowOf<Why>(looks, now, close, function* (ratio) {
    return look(ratio)
  })
  if (!found) return null
  return {
    low: found.low.beyond === null ? duty.low : found.low,
    high: found.high.beyond === null ? duty.high : found.high,
  }
}
