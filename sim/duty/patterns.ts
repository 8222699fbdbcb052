// Ready-made duties: a cut put into one of the duty types of IEC 60034-1.
import type { Duty, Phase } from '../duty.ts'
import type { DutyType } from '../handbook/dutyTypes.ts'

const HOUR = 3600
/** Continuous and intermittent duty are run for this long: by then a workshop's motor has settled. s */
const LONG = 8 * HOUR

export interface Times {
  /** Length of the cut and of the rest after it, s; no rest: 0. */
  readonly work: number
  readonly rest: number
  /** How long the whole repeats, s. */
  readonly repeatFor: number
}

/** The times of a duty type as a job has them: a short-time duty is one run and its rest is not part of it. */
export function timesOf({ work, rest }: DutyType): Times {
  if (work === Infinity) return { work: LONG, rest: 0, repeatFor: LONG }
  return rest === Infinity ? { work, rest: 0, repeatFor: work } : { work, rest, repeatFor: LONG }
}

/** A standstill, controller off. */
export const restFor = (seconds: number): Phase => ({
  name: 'rest',
  seconds,
  speed: 0,
  cut: { kind: 'torque', torque: 0 },
  surge: null,
})

/** The duty of a type with this cut, from as cold as `startC`. */
export function dutyOfType(type: DutyType, cut: Phase, startC: number): Duty {
  const { work, rest, repeatFor } = timesOf(type)
  return {
    phases: [{ ...cut, seconds: work }, ...(rest > 0 ? [restFor(rest)] : [])],
    seconds: repeatFor,
    startC,
  }
}
