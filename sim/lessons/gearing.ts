// Why slow running needs gearing: the same cut, at the same spindle speed, through more and more reduction. Cold, so that only the pulleys differ.
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { meanTorque } from '../duty.ts'
import { resistanceAt } from '../parts/winding.ts'
import { assemble } from '../plant.ts'
import { driveAt } from '../steady/drive.ts'
import { carriedShare } from './air.ts'
import { type Facts, fact } from './lesson.ts'

/** Amps of cut and of idling, what the cut's share heats the copper, the speed it costs, and the air there is for it. */
export function gearing({ parts, duty }: Job): Facts {
  const plant = assemble(parts)
  const { air } = parts.heat
  const phase = duty.phases[hardestPhase(duty.phases)]
  const asked = phase.speed * plant.ratio
  const at = (torque: number) => driveAt(plant, asked, torque, air, air)
  const cutting = at(meanTorque(phase))
  const idling = at(0)
  const load = cutting.amps - idling.amps
  return {
    ratio: fact(plant.ratio),
    motor: fact(cutting.motor, 'angular speed'),
    amps: fact(cutting.amps, 'current'),
    load: fact(load, 'current'),
    copper: fact(resistanceAt(parts.winding, air) * load * load, 'power', 'W'),
    lost: fact(idling.spindle - cutting.spindle, 'angular speed'),
    sag: fact(1 - cutting.spindle / idling.spindle, 'share'),
    air: fact(carriedShare(parts.heat, cutting.motor), 'share'),
  }
}
