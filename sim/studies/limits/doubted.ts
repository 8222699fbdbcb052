// The same job with some of what is doubted off by a share of its 8-in-10 band: readings, assumptions, and bands written beside inputs.
import { USUAL, between } from '../../identify/assume.ts'
import { type Basis, type Doubt, doubtsOf } from '../../identify/doubts.ts'
import { sound } from '../../identify/known.ts'
import { identify, type MotorNumbers } from '../../identify/motor.ts'
import type { Job } from '../../job.ts'
import { parseQuantity, writeQuantity } from '../../quantity.ts'
import { type Accepted, read } from '../../read.ts'
import { readQuantity } from '../../reading.ts'
import { inputsOf, type Scenario, withChange } from '../../scenario.ts'

/** Doubt's name → where in its band: −1 low, 0 as given, 1 high. */
export type Where = ReadonlyMap<string, number>

export interface Doubted {
  /** The job with nothing off. */
  readonly job: Job
  readonly names: readonly string[]
  /** The job there; null where the readings make none. */
  at(where: Where): Job | null
}

interface Written {
  readonly name: string
  at(scenario: Scenario, where: number): Scenario
}

/** Every input of a scenario that has a band written beside it. */
function writtenDoubts(scenario: Scenario): readonly Written[] {
  return inputsOf(scenario).flatMap(({ path, field, text, low, high }): Written[] => {
    if (field.kind !== 'quantity' || low === null || high === null) return []
    const usual = readQuantity(field, text)
    const ends = [readQuantity(field, low), readQuantity(field, high)]
    const parsed = parseQuantity(text, field.dimension)
    if (!usual.ok || !ends[0].ok || !ends[1].ok || !parsed.ok) return []
    const [a, b] = [ends[0].value, ends[1].value]
    return [
      {
        name: path,
        at: (before, where) =>
          withChange(before, path, writeQuantity(between(a, usual.value, b, where), parsed.unit)),
      },
    ]
  })
}

/** The job with other motor numbers. */
function withMotor(job: Job, numbers: MotorNumbers): Job {
  const { resistance, constant, brushDrop, dryFriction, windage, inertia, flywheel, ...heat } = numbers
  const { parts } = job
  return {
    ...job,
    parts: {
      ...parts,
      winding: { ...parts.winding, resistance, constant, brushDrop },
      rotor: { ...parts.rotor, inertia, flywheel, dryFriction, windage },
      heat: { ...parts.heat, ...heat },
    },
  }
}

/** What is doubted of a scenario, as `reading` took it; a duty other than its own may be put in by `as`. */
export function doubted(scenario: Scenario, reading: Accepted, as: (job: Job) => Job): Doubted {
  const written = writtenDoubts(scenario)
  const readings: readonly Doubt[] = doubtsOf(reading.motor)
  return {
    job: as(reading.job),
    names: [...written, ...readings].map(({ name }) => name),
    at(where) {
      const off = (name: string) => where.get(name) ?? 0
      const moved = written.filter(({ name }) => off(name) !== 0)
      const taken =
        moved.length === 0
          ? reading
          : read(moved.reduce((before, each) => each.at(before, off(each.name)), scenario))
      if (!taken.ok) return null
      if (!readings.some(({ name }) => off(name) !== 0)) return as(taken.job)
      const first: Basis = { readings: taken.motor, assume: USUAL }
      const basis = readings.reduce((before, doubt) => doubt.at(before, off(doubt.name)), first)
      const motor = identify(basis.readings, basis.assume)
      return sound(motor) ? as(withMotor(taken.job, motor.numbers)) : null
    },
  }
}
