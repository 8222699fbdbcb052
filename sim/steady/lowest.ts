// The lowest speed at which a motor holds a torque all day: where its own fan still gives it air enough.
import type { Heat } from '../parts/heat.ts'
import type { Parts } from '../plant.ts'
import { root } from '../solve/root.ts'
import { allDayTorque } from './allDay.ts'

/** Speeds that are looked at. */
const LOOKS = 32

/**
 * Lowest spindle speed, rad/s, up to `fastest` at which a cut of `torque` (N·m at the spindle) can be held for good;
 * 0: at any; null: at none.
 */
export function lowestAllDay(
  parts: Parts,
  torque: number,
  fastest: number,
  cooling?: Heat['cooling'],
): number | null {
  const spare = (speed: number) => allDayTorque(parts, speed, cooling).torque - torque
  let before = 0
  for (let n = 1; n <= LOOKS; n++) {
    const speed = (fastest * n) / LOOKS
    const here = spare(speed)
    if (here >= 0) {
      const low = Math.max(before, speed * 1e-3)
      const there = spare(low)
      return there >= 0 ? before : root(spare, low, speed, there, here, 1e-6 * speed)
    }
    before = speed
  }
  return null
}
