// A job run and judged, for tests of its figures.
import type { Job } from '../../sim/job.ts'
import { type Figures, judge } from '../../sim/judge.ts'
import type { Trace } from '../../sim/trace.ts'
import { type Changes, type Demo, job, traceOf } from '../jobs.ts'

export interface Case {
  readonly given: Job
  readonly trace: Trace
  readonly figures: Figures
}
export const judged = (changes: Changes, name: Demo): Case => {
  const given = job(changes, name)
  const trace = traceOf(given)
  return { given, trace, figures: judge(given, trace) }
}
