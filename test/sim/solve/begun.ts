// The stiff stepper, set to begin on a problem.
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import type { System } from '../../../sim/solve/system.ts'
import { tolerance } from './problems.ts'

/** At time 0 from a state, with one tolerance for all of it. */
export function begun(problem: System, y0: number[], relative: number, firstStep = 0.1, limits = {}) {
  const stepper = rosenbrock(problem, tolerance(problem.size, relative), limits)
  stepper.start(0, Float64Array.from(y0), firstStep)
  return stepper
}
