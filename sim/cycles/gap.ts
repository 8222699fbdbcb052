// The turns between two that were run: where each starts, how hot it gets, and how far it lies between the two.
import { type Defect, type Model, reach, walk } from './model.ts'
import { HEAT, heatOf, type Turn } from './turn.ts'

/** Skipped turns: `from` and `to` were run, `turns` apart; the model at `from`, and its defect at `to`, tell the rest. */
export interface Gap {
  readonly from: Turn
  readonly to: Turn
  readonly turns: number
  readonly model: Model
  readonly defect: Defect
}

/** A skipped turn, in live buffers. */
export interface Skipped {
  /** Its number after `from`: 1 … turns − 1. */
  turn: number
  /** Temperatures at its start and at its end, and its highest, °C. */
  readonly heat: Float64Array
  readonly end: Float64Array
  readonly peaks: Float64Array
  /** 0: like `from`, 1: like `to`; for whatever else is wanted of it. */
  share: number
}

/** Visits the skipped turns in order, as long as `visit` answers true. */
export function skipped({ from, to, turns, model, defect }: Gap, visit: (turn: Skipped) => boolean): void {
  const a = heatOf(from.start.states)
  const b = heatOf(to.start.states)
  const whole = reach(a, b) ** 2
  const [heat, end, peaks] = [new Float64Array(HEAT), new Float64Array(HEAT), new Float64Array(HEAT)]
  const now: Skipped = { turn: 0, heat, end, peaks, share: 0 }
  walk(model, turns, defect, (next, z) => {
    heat.set(end)
    end.set(z)
    now.turn = next - 1
    if (now.turn === 0) return true
    const along = (heat[0] - a[0]) * (b[0] - a[0]) + (heat[1] - a[1]) * (b[1] - a[1])
    now.share = whole > 0 ? Math.min(1, Math.max(0, along / whole)) : now.turn / turns
    for (let h = 0; h < peaks.length; h++)
      peaks[h] = heat[h] + (1 - now.share) * from.rise[h] + now.share * to.rise[h]
    return visit(now)
  })
}
