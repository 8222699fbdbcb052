// The steps that the pulleys have already: each tried turn for turn on the user's duty, and a variant for each.
import { type StepFit, stepFits } from '../../drive/steps.ts'
import type { Job } from '../../job.ts'
import type { Belt } from '../../parts/belt.ts'
import type { Progress } from '../../run.ts'
import type { Scenario, Variant } from '../../scenario.ts'
import { jobWith } from './change.ts'
import { type Trial, trial } from './trial.ts'

/** A step with what it comes to, and the variant that lays the belt on it. */
export type StepTrial = StepFit & { readonly trial: Trial; readonly variant: Variant }

/** The variant that lays the belt on a step. */
export const stepVariant = ({ step, ratio }: StepFit, base?: Variant): Variant => ({
  name: `Step ${step}, ${Number(ratio.toFixed(1))} : 1`,
  changes: { ...base?.changes, 'belt.step': String(step) },
})

/** Every step of a scenario's pulleys, in order; one the reader refuses is left out. */
export function* tryTheSteps(
  scenario: Scenario,
  base: Variant | undefined,
  belt: Belt,
  told: <T>(work: Generator<Progress, T>) => Generator<Progress, T>,
): Generator<Progress, StepTrial[]> {
  const found: StepTrial[] = []
  for (const fit of stepFits(belt)) {
    const job: Job | null = jobWith(scenario, { 'belt.step': String(fit.step) })
    if (!job) continue
    const result: Trial = yield* told(trial(job, true))
    found.push({ ...fit, trial: result, variant: stepVariant(fit, base) })
  }
  return found
}
