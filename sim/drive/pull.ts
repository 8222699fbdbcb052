// What a belt pulls the shafts with: standing still, and at the hardest moment of the duty.
import { smallWrap } from '../belting/geometry.ts'
import { shaftPull, workingShaftPull } from '../belting/grip.ts'
import { slipCapacity } from '../belting/slip.ts'
import type { Job } from '../job.ts'
import { ratio, slipStages, stagesOf } from '../parts/belt.ts'
import { cutTorque, idleTorque } from '../parts/machine.ts'

/** Pull of one stage on both its shafts, N: the same at either end. */
export interface ShaftPull {
  readonly rest: number
  readonly working: number
  /** Pull of each strand as fitted, N. */
  readonly strand: number
  /** Fastest that the driving shaft turns, rad/s. */
  readonly speed: number
}

/**
 * Pull of each stage, from motor to machine; null where nobody said which belt it is, or it has teeth. The tension is
 * the least that carries what the belt is said to carry: belts are mostly fitted tighter.
 */
export function shaftPulls({ parts: { belt, machine }, duty }: Job): readonly ShaftPull[] | null {
  const slip = slipStages(belt)
  if (!slip) return null
  const n = ratio(belt)
  const fastest = Math.max(...duty.phases.map(({ speed }) => speed)) * n
  const moving = duty.phases.filter(({ speed }) => speed > 0)
  const moments = moving.map(({ cut, surge, speed }) => {
    const asked = cutTorque(cut, surge?.torque ?? 0, speed) + idleTorque(machine, speed)
    return { motor: speed * n, torque: Math.min(asked, slipCapacity(slip, speed * n)) }
  })
  return stagesOf(belt).map(({ driving, driven, centres, turns }, stage) => {
    const { installed, mass, perSpeed, lever } = slip[stage]
    const wrap = smallWrap(driving, driven, centres)
    const pulls = moments.map(({ motor, torque }) =>
      workingShaftPull(installed, mass * (perSpeed * motor) ** 2, torque / lever, wrap),
    )
    return {
      rest: shaftPull(installed, wrap),
      working: pulls.length > 0 ? Math.max(...pulls) : shaftPull(installed, wrap),
      strand: installed,
      speed: fastest * turns,
    }
  })
}
