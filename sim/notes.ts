// What is worth saying before a run that goes ahead all the same.
import { driveNotes } from './drive/notes.ts'
import { allGiven } from './fill.ts'
import { USUAL } from './identify/assume.ts'
import { complaints } from './identify/complaints.ts'
import type { MotorReadings } from './identify/motor.ts'
import { pointOf } from './identify/point.ts'
import type { Job } from './job.ts'
import { ratio } from './parts/belt.ts'
import { resistanceAt } from './parts/winding.ts'
import type { Problem } from './problem.ts'
import { toUnit } from './quantity.ts'
import { givenAt, type Scenario } from './scenario.ts'

const rpm = (speed: number): string => `${Number(toUnit(speed, 'rpm').toPrecision(3))} rpm`

/** Sag compensation over this share of the coldest winding's resistance is unstable (PHYSICS.md §2). */
const STEADY = 0.9

/** Compensation that makes the speed hunt. */
function hunting({ parts: { controller, winding, heat }, duty }: Job): Problem[] {
  const coldest = Math.min(heat.air, duty.startC)
  const share = (controller.compensation * winding.resistance) / resistanceAt(winding, coldest)
  if (controller.holds !== 'sag compensation' || share <= STEADY) return []
  return [
    {
      path: 'controller.compensation',
      wrong: `The controller makes up for ${Math.round(share * 100)} % of the coldest winding’s resistance: speed will hunt.`,
      wouldDo: 'Turn it down under 90 %.',
    },
  ]
}

/** Speeds the supply has not the volts for, even with nothing to cut. */
function beyondVolts({ parts: { supply, winding, belt }, duty }: Job): Problem[] {
  const fastest = Math.max(0, supply.volts - winding.brushDrop) / winding.constant
  const n = ratio(belt)
  const asked = duty.phases.findIndex(({ speed }) => speed * n > fastest)
  if (asked < 0) return []
  const { speed } = duty.phases[asked]
  return [
    {
      path: `duty.phases.${asked}.speed`,
      wrong: `For ${rpm(speed)} at the spindle the motor would have to turn ${rpm(speed * n)}, and ${supply.volts} V takes it to about ${rpm(fastest)}.`,
      wouldDo: `At this ratio the spindle gets to about ${rpm(fastest / n)}. Ask for less, or gear it down less.`,
    },
  ]
}

/** Under this spindle speed the law that lets a cut stand still takes part of it away, rad/s (20 rpm). */
const SLOW_SPINDLE = 2.1

/** Spindles so slow that the cut is asked in part only. */
function underAsked({ duty }: Job): Problem[] {
  const slow = duty.phases.findIndex(
    ({ speed, cut }) => speed > 0 && speed < SLOW_SPINDLE && cut.kind === 'torque' && cut.torque > 0,
  )
  if (slow < 0) return []
  const { speed } = duty.phases[slow]
  return [
    {
      path: `duty.phases.${slow}.speed`,
      wrong: `At ${rpm(speed)} the spindle is so slow that only ${Math.round(Math.tanh(speed) * 100)} % of the cut’s torque is counted.`,
      wouldDo:
        'The model fades a cut out below about 20 rpm: give more torque, or take the answer as too kind.',
    },
  ]
}

/** A cutoff nobody mentioned is taken to be there: that has to be said. */
function assumedCutoff(scenario: Scenario, { parts: { cutoff } }: Job): Problem[] {
  if (givenAt(scenario, 'cutoff.fitted') !== undefined) return []
  return [
    {
      path: 'cutoff.fitted',
      wrong: `Nothing is said of a cutoff: one that opens at ${cutoff.opensAt} °C and recloses by itself is taken to be fitted and wired.`,
      wouldDo: 'Say which it is. If there is none, or its leads hang loose, nothing stops the heat.',
    },
  ]
}

/** Every note on a job: complaints of plate and bench last. */
export function notesOf(scenario: Scenario, job: Job, motor: MotorReadings): Problem[] {
  return [
    ...assumedCutoff(scenario, job),
    ...hunting(job),
    ...beyondVolts(job),
    ...underAsked(job),
    ...driveNotes(job),
    // A plate that says nothing is no complaint where every number is given.
    ...(allGiven(motor) && !pointOf(motor.plate, USUAL) ? [] : complaints(motor)),
  ]
}
