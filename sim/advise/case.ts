// A case: a job, what it was read from and what its run came to, with the few numbers that every finding asks for.
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { meanTorque } from '../duty.ts'
import type { MotorReadings } from '../identify/motor.ts'
import { ratio } from '../parts/belt.ts'
import { idleTorque } from '../parts/machine.ts'
import { fromUnit } from '../quantity.ts'
import type { Accepted } from '../read.ts'
import type { Scenario } from '../scenario.ts'
import type { Fault, Outcome } from './outcome.ts'

export interface Case {
  /** The scenario with the variant's changes in it. */
  readonly scenario: Scenario
  readonly job: Job
  readonly motor: MotorReadings
  readonly now: Outcome
  readonly ratio: number
  /** Fastest spindle speed asked, the motor's speed then, and the plate's (null: none printed), rad/s. */
  readonly fastest: number
  readonly motorSpeed: number
  readonly plateSpeed: number | null
  /** The hardest step: its number, speed (rad/s), and torque it asks of the spindle, drag and mean or greatest surge in it, N·m. */
  readonly work: {
    readonly phase: number
    readonly name: string
    readonly speed: number
    readonly mean: number
    readonly peak: number
  }
  has(...faults: readonly Fault[]): boolean
}

/** Speeds of motors from the mains that horsepower is thought in, rad/s: a four-pole motor's 1725 rpm. */
export const OLD_SPEED = fromUnit(1725, 'rpm')

/** The case of a scenario as read and run. */
export function caseOf(scenario: Scenario, { job, motor }: Accepted, now: Outcome): Case {
  const { phases } = job.duty
  const phase = hardestPhase(phases)
  const hardest = phases[phase]
  const { speed, cut, surge } = hardest
  const drag = idleTorque(job.parts.machine, speed)
  const steady = meanTorque({ ...hardest, surge: null })
  const n = ratio(job.parts.belt)
  const fastest = Math.max(...phases.map((each) => each.speed))
  return {
    scenario,
    job,
    motor,
    now,
    ratio: n,
    fastest,
    motorSpeed: fastest * n,
    plateSpeed: job.plate.speed ?? null,
    work: {
      phase,
      name: hardest.name.trim() || `step ${phase + 1}`,
      speed,
      mean: meanTorque(hardest) + drag,
      peak: (cut.kind === 'torque' ? cut.torque : steady) + (surge?.torque ?? 0) + drag,
    },
    has: (...faults) => faults.some((fault) => now.faults.includes(fault)),
  }
}
