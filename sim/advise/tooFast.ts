// Findings about what is turned too fast in the job as asked: the motor, its flywheel’s rim, a grinding wheel.
import { CAST_RIM, flywheelRim, runaway } from '../drive/runaway.ts'
import { SAFETY } from '../handbook/safety.ts'
import { givenAt } from '../scenario.ts'
import { textOf } from '../reading.ts'
import type { Case } from './case.ts'
import { type Draft, draft, JOB, number, PLATE } from './finding.ts'
import { BRUSH_SPEED } from './supply.ts'

/** Over this share of its plate speed a motor is turned too fast, and over this it is a danger. */
const TOO_FAST = 1.1
const MUCH_TOO_FAST = 1.25

function motor({ motorSpeed, plateSpeed, fastest }: Case): Draft[] {
  const share = plateSpeed === null ? 0 : motorSpeed / plateSpeed
  if (share <= TOO_FAST && motorSpeed <= BRUSH_SPEED) return []
  return [
    draft(
      'overspeeds',
      'Safety',
      share > MUCH_TOO_FAST || motorSpeed > BRUSH_SPEED ? 'danger' : 'damage',
      {
        motor: number(motorSpeed, 'angular speed', JOB),
        ...(plateSpeed === null ? {} : { plate: number(plateSpeed, 'angular speed', PLATE) }),
      },
      ['less reduction'],
      {
        defect: true,
        helps: ({ ratio }) => ratio * fastest < motorSpeed,
        heals: ({ ratio }) => plateSpeed === null || ratio * fastest <= TOO_FAST * plateSpeed,
      },
    ),
  ]
}

function rim(one: Case): Draft[] {
  const { job, motorSpeed } = one
  const { flywheelDiameter } = one.motor.bench
  const speed = flywheelRim(job.parts, motorSpeed, flywheelDiameter)
  if (speed === null || flywheelDiameter === undefined || speed <= CAST_RIM) return []
  return [
    draft(
      'flywheelRim',
      'Safety',
      'danger',
      {
        rim: number(speed, 'speed', 'motor speed asked times half the diameter'),
        limit: number(CAST_RIM, 'speed', SAFETY.castRim),
        motor: number(motorSpeed, 'angular speed', JOB),
        most: number((2 * CAST_RIM) / flywheelDiameter, 'angular speed', 'the limit over half the diameter'),
        diameter: number(flywheelDiameter, 'length', 'the bench'),
      },
      ['less reduction', 'no flywheel'],
      { defect: true, faults: ['rim'] },
    ),
  ]
}

/** True of a grinder that has a wheel, as far as is known: one that says it grinds with a belt has none. */
const hasWheel = ({ job, scenario }: Case): boolean =>
  job.parts.machine.kind === 'grinder' &&
  job.duty.phases.every((_, n) => textOf(givenAt(scenario, `duty.phases.${n}.cut.kind`)) !== 'beltGrinding')

function wheel(one: Case): Draft[] {
  const { job, fastest, ratio } = one
  if (!hasWheel(one)) return []
  const wild = runaway(job.parts, undefined).motor
  const printed = job.parts.machine.wheelSpeed
  const evidence = {
    asked: number(fastest, 'angular speed', JOB),
    wild: number(wild / ratio, 'angular speed', 'all the volts there can be over the motor constant'),
  }
  if (printed === undefined) return [draft('wheelUnknown', 'Measure', 'unknown', evidence, [])]
  if (Math.max(fastest, wild / ratio) <= printed) return []
  return [
    draft(
      'wheelSpeed',
      'Safety',
      fastest > printed ? 'danger' : 'short',
      { ...evidence, printed: number(printed, 'angular speed', SAFETY.wheel) },
      fastest > printed ? ['wheel speed'] : ['more reduction', 'most reduction'],
      {
        defect: true,
        // What is asked is not over it any more; or else full volts are not.
        heals: (then) => fastest > printed || wild / then.ratio <= printed,
      },
    ),
  ]
}

export const tooFastFindings = (one: Case): Draft[] => [...motor(one), ...rim(one), ...wheel(one)]
