// Does it replace the old motor? Both at the spindle, at every speed the old one ran. Never horsepower against horsepower.
import { type Duty, meanTorque, type Phase, phaseSeconds } from '../duty.ts'
import type { Job } from '../job.ts'
import type { Heat } from '../parts/heat.ts'
import { allDayTorque } from '../steady/allDay.ts'
import type { TorqueLimit } from '../steady/most.ts'
import { topSpeed } from '../steady/operating.ts'
import { cuts, dutyTorque } from './duty.ts'
import { besides, type Plates } from './plates.ts'
import type { Rival, Step } from './rival.ts'
import {
  coolingsOf,
  driveStart,
  driveStrength,
  onStep,
  rivalStart,
  rivalStrength,
  type Strength,
} from './strength.ts'

export type Claim = 'allDay' | 'minutes' | 'seconds' | 'start'

/** This motor's torque over the old one's; 'even' within 5 per cent. Infinity: the old one pulled nothing. */
export interface Against {
  readonly share: number
  readonly is: 'stronger' | 'weaker' | 'even'
}

/** Both at one speed of the old motor. Torques of the cut, N·m at the spindle; speed rad/s. */
export interface Met {
  readonly speed: number
  readonly step: Step
  readonly old: Strength & { readonly start: number; readonly duty: number | null }
  /** As it stands; `duty`, for this job’s duty, is null where it cuts nothing. */
  readonly motor: Strength & {
    readonly start: number
    readonly duty: number | null
    /** What limits its seconds. */
    readonly limit: TorqueLimit
  }
  /** All day with each cooling it may be given. */
  readonly allDay: readonly { readonly cooling: Heat['cooling']; readonly torque: number }[]
  readonly against: Readonly<Record<Claim, Against>>
}

/** What the job's heaviest step asks: mean torque of the cut, N·m, s of each cycle, s. */
export interface Asked {
  readonly name: string
  readonly torque: number
  readonly speed: number
  readonly seconds: number
  readonly cycle: number
}

export interface Comparison {
  readonly rival: Rival
  /** In the order of the old steps. */
  readonly met: readonly Met[]
  /** The two plates; null where this motor's says too little. */
  readonly plates: Plates | null
  readonly asked: Asked | null
  /** Spindle speed with the knob fully up and nothing to cut, rad/s: the old motor's may lie beyond. */
  readonly top: number
}

const EVEN = 0.05

/** How this motor's torque stands against the old one's. */
export function against(motor: number, old: number): Against {
  const share = old > 0 ? motor / old : motor > 0 ? Number.POSITIVE_INFINITY : 1
  return { share, is: share > 1 + EVEN ? 'stronger' : share < 1 - EVEN ? 'weaker' : 'even' }
}

function meet(job: Job, rival: Rival, step: Step): Met {
  const { parts, duty } = job
  const speed = rival.speed / step.ratio
  const strength = rivalStrength(rival, step, parts)
  const old = {
    ...strength,
    start: rivalStart(rival, step, parts),
    // How an induction motor warms nobody knows: its full load is what it surely carries.
    duty: rival.kind === 'DC' ? dutyTorque(onStep(rival, step, parts), duty, speed) : strength.allDay,
  }
  const motor = {
    ...driveStrength(parts, speed),
    start: driveStart(parts),
    duty: dutyTorque(parts, duty, speed),
  }
  return {
    speed,
    step,
    old,
    motor,
    allDay: coolingsOf(parts.heat.cooling).map((cooling) => ({
      cooling,
      torque: allDayTorque(parts, speed, cooling).torque,
    })),
    against: {
      allDay: against(motor.allDay, old.allDay),
      minutes: against(motor.minutes, old.minutes),
      seconds: against(motor.seconds, old.seconds),
      start: against(motor.start, old.start),
    },
  }
}

function askedOf(duty: Duty): Asked | null {
  const working = duty.phases.filter(cuts)
  if (working.length === 0) return null
  const heaviest = working.reduce((a: Phase, b: Phase) => (meanTorque(b) > meanTorque(a) ? b : a))
  return {
    name: heaviest.name,
    torque: meanTorque(heaviest),
    speed: heaviest.speed,
    seconds: phaseSeconds(heaviest),
    cycle: duty.phases.reduce((sum, phase) => sum + phaseSeconds(phase), 0),
  }
}

/** The comparison. The machine's own drag is taken off both; both work in the job's air. */
export function compare(job: Job, rival: Rival): Comparison {
  const { power, speed } = job.plate
  return {
    rival,
    met: rival.steps.map((step) => meet(job, rival, step)),
    plates: power !== undefined && speed !== undefined ? besides({ power, speed }, rival) : null,
    asked: askedOf(job.duty),
    top: topSpeed(job.parts),
  }
}
