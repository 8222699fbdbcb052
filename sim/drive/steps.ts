// One belt on every step of its pulleys: what each step makes of it.
import { beltLength } from '../belting/geometry.ts'
import { type Belt, onStepOf, ratio, type Step, stagesOf } from '../parts/belt.ts'

/** A motor that slides on its bed takes up so much of a belt's length (common practice, no source). */
export const TAKE_UP = 0.02

/** A step: its pulleys, what it makes of the drive, and the belt it wants at the centres of the step in use, m. */
export interface StepFit extends Step {
  /** From 1. */
  readonly step: number
  readonly inUse: boolean
  /** Motor turns for one of the spindle. */
  readonly ratio: number
  readonly length: number
  /** How much longer a belt it wants than the one that lies on the step in use, as a share of that. */
  readonly longer: number
}

/** The steps of a belt; none where its pulleys have one each. */
export function stepFits(belt: Belt): readonly StepFit[] {
  const { pairs } = belt
  if (!pairs) return []
  const { centres, driving, driven } = stagesOf(belt).at(-1) as Step & { centres: number }
  const lies = beltLength(driving, driven, centres)
  const using = belt.step ?? 1
  return pairs.map((pair, index) => {
    const length = beltLength(pair.driving, pair.driven, Math.max(centres, (pair.driving + pair.driven) / 2))
    return {
      ...pair,
      step: index + 1,
      inUse: index + 1 === using,
      ratio: ratio(onStepOf(belt, pair)),
      length,
      longer: length / lies - 1,
    }
  })
}
