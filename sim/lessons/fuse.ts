// A fuse does not protect a winding: what it lets pass for ever, as heat, and how soon that is too much.
import { meanTorque } from '../duty.ts'
import { classLimitC } from '../handbook/insulation.ts'
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { finish, run } from '../run.ts'
import { operatingPoint } from '../steady/operating.ts'
import { type Facts, fact, printed } from './lesson.ts'
import { lasts } from './peak.ts'

/** Motor fuses are sold at this share of the rated amps, controllers set to that one (common practice, no source). */
const FUSE = 1.7
const LIMIT = 1.5

/** When the cutoff first opens, s (Infinity: never), and how hot the winding is by then or gets in all, °C. */
function opening(job: Job): { readonly t: number; readonly windingC: number } {
  const { trace } = finish(run(job, { toFirstOpening: true }))
  const opens = trace.marks.find(({ kind }) => kind === 'opens')
  return { t: opens?.t ?? Number.POSITIVE_INFINITY, windingC: trace.peaks.windingC.value }
}

/** Amps of this cut, of the fuse and of the usual limit against the plate's; their squares as heat; the minutes to the class limit, and to the cutoff. */
export function fuse(job: Job): Facts {
  const { parts, plate, duty } = job
  const rated = printed(plate.amps)
  const phase = duty.phases[hardestPhase(duty.phases)]
  const torque = meanTorque(phase)
  const { amps } = operatingPoint(parts, phase.speed, torque)
  const opens = opening(job)
  return {
    rated: fact(rated, 'current'),
    fuse: fact(FUSE * rated, 'current'),
    limit: fact(LIMIT * rated, 'current'),
    limitHeat: fact(LIMIT * LIMIT),
    amps: fact(amps, 'current'),
    share: fact(amps / rated),
    class: fact(classLimitC(parts.winding.insulation), 'temperature'),
    lasts: fact(lasts(job, phase.speed, torque), 'time'),
    opens: fact(opens.t, 'time'),
    winding: fact(opens.windingC, 'temperature'),
  }
}
