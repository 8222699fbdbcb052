// Horsepower is not torque: two plates of equal power, and what each holds all day at one spindle speed.
import { meanTorque } from '../duty.ts'
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { ratio } from '../parts/belt.ts'
import { allDayTorque } from '../steady/allDay.ts'
import { type Facts, fact, printed } from './lesson.ts'

/** Plate torque P/ω, the same at the spindle through the pulleys (losses left out), and the torque held all day there. */
export function horsepower({ parts, plate, duty }: Job): Facts {
  const power = printed(plate.power)
  const speed = printed(plate.speed)
  const phase = duty.phases[hardestPhase(duty.phases)]
  return {
    power: fact(power, 'power'),
    speed: fact(speed, 'angular speed'),
    torque: fact(power / speed, 'torque'),
    ratio: fact(ratio(parts.belt)),
    spindle: fact((power / speed) * ratio(parts.belt), 'torque'),
    allDay: fact(allDayTorque(parts, phase.speed).torque, 'torque'),
    asked: fact(meanTorque(phase), 'torque'),
  }
}
