// Another DC motor as the rival: identified from its plate by the reader of jobs, on volts and amps of its own.
import { PlateFields } from '../parts/plate.ts'
import type { Problem } from '../problem.ts'
import { writeQuantity } from '../quantity.ts'
import { read } from '../read.ts'
import type { Scenario } from '../scenario.ts'
import type { GivenRival, ReadRival } from './fields.ts'
import type { Direct, Step } from './rival.ts'

/** Volts where none are printed: torque by heat hardly depends on them. */
const USUAL_VOLTS = '120 V'
/** The usual current limit over plate amps (JOB: limit 1.5 times, common practice). */
const LIMIT = 1.5
/** Efficiency at plate load where amps are not printed either. */
const EFFICIENCY = 0.77

/** The rival, or what is wrong with its plate. `given`: its texts; `rival`: the same as read. */
export function direct(
  given: GivenRival,
  rival: ReadRival,
  steps: readonly Step[],
):
  | { readonly ok: true; readonly rival: Direct }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const { power, speed, soldWith } = rival
  const volts = given.volts ?? USUAL_VOLTS
  const amps = rival.amps ?? power / (EFFICIENCY * (rival.volts ?? 120))
  const printed = Object.entries(given).filter(([name]) => name in PlateFields.entries)
  const scenario: Scenario = {
    format: 1,
    name: 'The old motor',
    plate: { ...Object.fromEntries(printed), volts },
    supply: { volts },
    controller: { currentLimit: writeQuantity(LIMIT * amps, 'A') },
    belt: { motorPulley: '100 mm', machinePulley: '100 mm' },
    heat: { cooling: soldWith },
    cutoff: { fitted: 'none' },
    duty: { phases: [{ name: 'running', lasts: '1 min' }], repeatFor: '1 min' },
  }
  const reading = read(scenario)
  if (!reading.ok)
    return {
      ok: false,
      problems: reading.problems.map((problem) => ({
        ...problem,
        path: problem.path.replace(/^plate\./, ''),
      })),
    }
  return { ok: true, rival: { kind: 'DC', power, speed, steps, parts: reading.job.parts } }
}
