// The drive and the old motor as curves of torque over spindle speed, and the comparison that goes with them.
import type { Job } from '../job.ts'
import type { Heat } from '../parts/heat.ts'
import type { Progress } from '../run.ts'
import { topSpeed } from '../steady/operating.ts'
import { compare, type Comparison } from './compare.ts'
import type { Rival } from './rival.ts'
import { allDayCurve, coolingsOf, type Curve, rivalCurve, secondsCurve } from './strength.ts'

/** What is drawn of a drive, beside the old motor if there is one. Torques of the cut, N·m at the spindle. */
export interface AgainstOld {
  readonly comparison: Comparison | null
  /** This drive all day, with each cooling it may be given but the blower, which few have; and for seconds. */
  readonly allDay: readonly { readonly cooling: Heat['cooling']; readonly curve: Curve }[]
  readonly seconds: Curve
  /** The old motor on each of its steps; none for a DC motor. */
  readonly old: readonly Curve[]
  /** Fastest spindle speed drawn, rad/s. */
  readonly fastest: number
}

/** The speed axis reaches so far past the fastest speed that the job or the old motor knows. */
const PAST = 3

/** The curves, and the comparison. Yields between them: a curve is some ten milliseconds of work. */
export function* againstOld(job: Job, rival: Rival | null): Generator<Progress, AgainstOld> {
  const { parts, duty } = job
  const asked = Math.max(...duty.phases.map(({ speed }) => speed))
  const olds = rival ? rival.steps.map(({ ratio }) => rival.speed / ratio) : []
  const known = Math.max(asked, ...olds)
  const top = topSpeed(parts)
  const fastest = Math.min(Math.max(top, known * 1.1), PAST * known)
  const end = Math.min(top, fastest)
  const coolings = new Set([
    ...coolingsOf(parts.heat.cooling).filter((each) => each !== 'blower'),
    parts.heat.cooling,
  ])
  const of = coolings.size + 2
  const allDay: AgainstOld['allDay'][number][] = []
  for (const cooling of coolings) {
    allDay.push({ cooling, curve: allDayCurve(parts, cooling, end) })
    yield { t: allDay.length, of }
  }
  const seconds = secondsCurve(parts, end)
  yield { t: of - 1, of }
  const old =
    rival && rival.kind !== 'DC' ? rival.steps.map((step) => rivalCurve(rival, step, parts.machine)) : []
  return { comparison: rival && compare(job, rival), allDay, seconds, old, fastest }
}
