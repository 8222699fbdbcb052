// A job in the one-page plant, so that a cure is tried by other code: what the file leaves open is filled in as the product does.
import { FORM_FACTORS } from '../../../sim/handbook/formFactor.ts'
import type { Job } from '../../../sim/job.ts'
import { assemble } from '../../../sim/plant.ts'
import { pageOf } from '../../pageOf.ts'
import { onePage, type PageRun } from '../../onePagePlant.ts'

/** Runs the first `seconds` of a job in the one-page plant; motor speeds at `times`, s. */
export function twin(job: Job, seconds: number, times: number[] = []): PageRun {
  const { parts } = job
  const { supply, winding } = parts
  const { plant, phases } = pageOf({
    ...job,
    parts: {
      ...parts,
      supply: { ...supply, formFactor: supply.formFactor ?? FORM_FACTORS[supply.kind].value },
      winding: { ...winding, inductance: assemble(parts).inductance },
    },
  })
  return onePage(plant, phases, seconds, times, 1e-5)
}
