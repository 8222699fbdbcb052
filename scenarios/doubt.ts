// How sure an answer is, for commands: the samples drawn and run, or why there are none.
import type { Problem } from '../sim/problem.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import { points } from '../sim/studies/points.ts'
import { type Sure, sureOf, sureSpec } from '../sim/studies/sure.ts'
import { drive } from './terminal.ts'

interface Draws {
  readonly seed?: number
  readonly samples?: number
}

/** How sure the answer to a job is, or every problem. */
export function doubtOn(
  scenario: Scenario,
  variant: Variant | undefined,
  draws: Draws = {},
): Sure | readonly Problem[] {
  const spec = sureSpec(scenario, { ...draws, ...(variant ? { variant } : {}) })
  if (!('study' in spec)) return spec.problems
  const found = sureOf(spec, drive(points(spec), 'Trying what may be'))
  return (
    found ?? [{ path: '', wrong: 'No reading of the plate makes a motor.', wouldDo: 'See npm run motor.' }]
  )
}
