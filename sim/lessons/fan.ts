// What the fan is worth at a fifth of speed: the air, the heat it carries, and the torque that is left for the day.
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { meanTorque } from '../duty.ts'
import { ratio } from '../parts/belt.ts'
import { allDayTorque } from '../steady/allDay.ts'
import { operatingPoint } from '../steady/operating.ts'
import { carriedShare } from './air.ts'
import { type Facts, fact } from './lesson.ts'

/** Shares against full speed with the fan on the shaft: of speed, and of heat carried from the winding; and all-day torque. */
export function fan({ parts, duty }: Job): Facts {
  const { heat } = parts
  const phase = duty.phases[hardestPhase(duty.phases)]
  const motor = phase.speed * ratio(parts.belt)
  const settled = operatingPoint(parts, phase.speed, meanTorque(phase)).warm
  return {
    speed: fact(motor / heat.fanSpeed, 'share'),
    carried: fact(carriedShare(heat, motor, { ...heat, cooling: 'shaft fan' }), 'share'),
    allDay: fact(allDayTorque(parts, phase.speed).torque, 'torque'),
    asked: fact(meanTorque(phase), 'torque'),
    winding: fact(settled?.windingC ?? Number.POSITIVE_INFINITY, 'temperature'),
  }
}
