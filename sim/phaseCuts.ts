// The cuts that steps of the duty name: torque and speed of each, with the handbook row and spread; or what is amiss.
import type { CutAnswer } from './cuts/answer.ts'
import { type CutName, isCut } from './cuts/index.ts'
import { readCut } from './cuts/read.ts'
import type { Problem } from './problem.ts'
import { givenAt } from './scenario.ts'

/** The cut of a step: `low` to `high` holds its torque at the asked speed 8 times in 10 (N·m). */
export interface PhaseCut extends CutAnswer {
  /** Which step, from 0. */
  readonly phase: number
  readonly kind: CutName
}

export interface PhaseCuts {
  readonly cuts: readonly PhaseCut[]
  readonly problems: readonly Problem[]
}

/** The cut that a step of a scenario as written names, at the step's own speed or else the cut's; null: it names none. */
export function phaseCut(scenario: unknown, phase: number): PhaseCut | readonly Problem[] | null {
  const step = `duty.phases.${phase}`
  const given = givenAt(scenario, `${step}.cut`)
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return null
  const { kind, ...inputs } = given as Readonly<Record<string, unknown>>
  // What is no kind, or no input of it, the field tables tell.
  if (typeof kind !== 'string' || !isCut(kind)) return []
  const speed = givenAt(scenario, `${step}.speed`)
  const worked = readCut(kind, speed === undefined ? inputs : { ...inputs, spindle: speed })
  if (worked.ok) return { ...worked.answer, phase, kind }
  return worked.problems.map((problem) => ({
    ...problem,
    path: problem.path === 'spindle' ? `${step}.speed` : `${step}.cut.${problem.path}`,
  }))
}

/** Every cut that the duty of a scenario names. */
export function phaseCuts(scenario: unknown): PhaseCuts {
  const steps = givenAt(scenario, 'duty.phases')
  const cuts: PhaseCut[] = []
  const problems: Problem[] = []
  for (const phase of Array.isArray(steps) ? steps.keys() : []) {
    const found = phaseCut(scenario, phase)
    if (found === null) continue
    if ('kind' in found) cuts.push(found)
    else problems.push(...found)
  }
  return { cuts, problems }
}
