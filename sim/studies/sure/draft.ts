// A draft: the job as it would be were its readings a little off; and the job and motor it makes.
import type { Assumed } from '../../identify/assume.ts'
import { allGiven, filledWith, readingsOf } from '../../fill.ts'
import { clampDoubt, SCALED, sound } from '../../identify/known.ts'
import { identify, type MotorNumber, type MotorNumbers } from '../../identify/motor.ts'
import type { Job } from '../../job.ts'
import type { PhaseCut } from '../../phaseCuts.ts'
import { jobOf } from '../../jobOf.ts'
import type { ReadScenario } from '../../scenario.ts'

export interface Draft {
  readonly fields: ReadScenario
  readonly cuts: readonly PhaseCut[]
  readonly assume: Assumed
  /** Where in its band the scale of the conductances lies, −1 to 1, where the rating did not fit and it was held to what is sane. */
  readonly scale: number
}

/** What a draft makes. */
export interface Made {
  readonly job: Job
  readonly numbers: MotorNumbers
  /** Of the motor, kg; null where every number was given and nobody asks. */
  readonly mass: number | null
}

function rescaled(
  numbers: MotorNumbers,
  given: Partial<MotorNumbers>,
  { down, up }: { down: number; up: number },
  at: number,
): MotorNumbers {
  const factor = at < 0 ? down ** -at : up ** at
  const scaled = Object.entries(numbers).map(([name, value]) => [
    name,
    SCALED.has(name as MotorNumber) && given[name as MotorNumber] === undefined ? value * factor : value,
  ])
  return Object.fromEntries(scaled)
}

/** The job of a draft; null where its readings make no motor. */
export function made({ fields, cuts, assume, scale }: Draft): Made | null {
  const readings = readingsOf(fields)
  const job = (numbers: MotorNumbers): Job => jobOf(fields, filledWith(fields, numbers), cuts)
  if (allGiven(readings)) {
    const numbers = readings.given as MotorNumbers
    return { job: job(numbers), numbers, mass: null }
  }
  const motor = identify(readings, assume)
  if (!sound(motor)) return null
  const doubt = clampDoubt(motor)
  const numbers = scale === 0 ? motor.numbers : rescaled(motor.numbers, readings.given, doubt, scale)
  return { job: job(numbers), numbers, mass: motor.mass }
}
