// The top of a state within a step: where its slope goes from up to down.
import { root } from './root.ts'
import type { Stepper } from './stepper.ts'

/** Time of the highest value within the last step up to `until` (s), or null where the state only rises, or only falls. */
export function summit(stepper: Stepper, state: number, until: number): number | null {
  const { tOld } = stepper
  const rising = stepper.slope(state, tOld)
  const falling = stepper.slope(state, until)
  if (!(rising > 0 && falling < 0)) return null
  return root((t) => stepper.slope(state, t), tOld, until, rising, falling, 1e-9 * (until - tOld))
}
