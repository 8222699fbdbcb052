// Peak is not continuous: the plate's two powers as amps and as heat, and how long the larger one lasts from cold.
import { meanTorque } from '../duty.ts'
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { shortTimeTorque } from '../steady/shortTime.ts'
import { allDayTorque } from '../steady/allDay.ts'
import { type Facts, fact, printed } from './lesson.ts'

/** Longest that is told apart from for good, s. */
const LONGEST = 8 * 3600
const ROUNDS = 24

/** Seconds from cold in which a torque brings the winding to its class limit; Infinity: it never does. */
export function lasts({ parts }: Job, speed: number, torque: number): number {
  if (allDayTorque(parts, speed).torque >= torque) return Number.POSITIVE_INFINITY
  let low = 1
  let high = LONGEST
  for (let n = 0; n < ROUNDS; n++) {
    const middle = Math.sqrt(low * high)
    if (shortTimeTorque(parts, speed, middle).torque >= torque) low = middle
    else high = middle
  }
  return low
}

/** Peak against continuous power, its square as heat (at one speed torque goes with power, amps with torque), and the minutes it lasts. */
export function peak(job: Job): Facts {
  const { plate, duty } = job
  const phase = duty.phases[hardestPhase(duty.phases)]
  const torque = meanTorque(phase)
  const power = printed(plate.power)
  const continuous = printed(plate.continuousPower)
  const share = power / continuous
  return {
    peak: fact(power, 'power'),
    continuous: fact(continuous, 'power'),
    share: fact(share),
    heat: fact(share * share),
    torque: fact(torque, 'torque'),
    lasts: fact(lasts(job, phase.speed, torque), 'time'),
  }
}
