// What a turn run at the far end of a jump says of the jump: how good it was, and what lies on the way.
import { type Gap, type Skipped, skipped } from './gap.ts'
import { type Defect, defectOf, foresee, type Model, movedTo, reach, walk } from './model.ts'
import { HEAT, heatOf, type Turn } from './turn.ts'

export interface Landing {
  readonly gap: Gap
  /** How far the turn started from where it should have, K: what the defect adds up to on the way. */
  readonly error: number
  /** The model about where it should have started. */
  readonly model: Model
  /** How much hotter than both ends something gets on the way, K. */
  readonly crest: number
  /** First skipped turn that `danger` said true of; 0: none. */
  readonly risky: number
}

/** Judges the landing `to`, `turns` after `from`, that the model led to. */
export function landing(
  from: Turn,
  to: Turn,
  turns: number,
  model: Model,
  danger: (turn: Skipped) => boolean,
): Landing {
  const z = heatOf(to.start.states)
  const end = heatOf(to.end.states)
  const defect: Defect = { value: defectOf(model, z, end), far: reach(model.at, z) }
  const gap: Gap = { from, to, turns, model, defect }
  const right = walk(model, turns, defect)
  const error = right.reduce((worst, value, h) => Math.max(worst, Math.abs(value - z[h])), 0)
  let first = 0
  let crest = 0
  skipped(gap, (turn) => {
    turn.peaks.forEach((peak, h) => {
      crest = Math.max(crest, peak - Math.max(from.peaks[h], to.peaks[h]))
    })
    if (danger(turn)) first = turn.turn
    return first === 0
  })
  // The landing's own turn tells where one from the right start would end.
  const moved = movedTo(model, z, end)
  const rightEnd = new Float64Array(HEAT)
  foresee(moved, right, rightEnd)
  return {
    gap,
    error,
    model: { ...moved, at: right, gain: rightEnd.map((value, h) => value - right[h]) },
    crest,
    risky: first,
  }
}
