// What can be said only once cures were run: that nothing cures it, and what less reduction would cost.
import type { Progress } from '../run.ts'
import type { Case } from './case.ts'
import type { Bench } from './cures.ts'
import { type Draft, draft, JOB, number, PLATE, RUN } from './finding.ts'
import { halfReduction } from './pulleys.ts'
import { severityOf } from './trouble.ts'

/** No change that was tried is enough: the work against the motor, in power both ways. */
export function tooSmall(one: Case): Draft | null {
  const severity = severityOf(one)
  if (!severity) return null
  const { job, work, now } = one
  const { power, continuousPower } = job.plate
  return draft(
    'tooSmall',
    'Fix',
    severity,
    {
      asked: number(work.mean * work.speed, 'power', 'torque asked times speed asked'),
      torque: number(work.mean, 'torque', JOB),
      speed: number(work.speed, 'angular speed', JOB),
      delivered: number(now.work / job.duty.seconds, 'power', RUN),
      ...(power === undefined ? {} : { power: number(power, 'power', PLATE) }),
      ...(continuousPower === undefined ? {} : { continuous: number(continuousPower, 'power', PLATE) }),
    },
    [],
  )
}

/** Half the reduction, run to show its price: told where it makes a drive that is in trouble worse. */
export function* lessReduction(one: Case, { run }: Bench): Generator<Progress, Draft | null> {
  const { now } = one
  const half = halfReduction(one)
  if (!half || now.faults.length === 0 || one.has('reach', 'stalls')) return null
  const then = yield* run(half.changes)
  if (!then) return null
  const opening = (at: number | null) => at ?? Number.POSITIVE_INFINITY
  const worse =
    opening(then.firstOpening) < opening(now.firstOpening) ||
    then.faults.some((fault) => !now.faults.includes(fault))
  if (!worse) return null
  return draft(
    'lessReduction',
    'Avoid',
    'note',
    {
      ratio: number(then.ratio, 'number', 'pulleys'),
      amps: number(then.workAmps, 'current', RUN),
      now: number(now.workAmps, 'current', RUN),
      heat: number((then.workAmps / now.workAmps) ** 2, 'number', 'amps squared'),
      winding: number(then.hottestWindingC, 'temperature', RUN),
      ...(then.firstOpening === null ? {} : { opens: number(then.firstOpening, 'time', RUN) }),
      ...(now.firstOpening === null ? {} : { opensNow: number(now.firstOpening, 'time', RUN) }),
      ...(then.stalled === null ? {} : { stalls: number(then.stalled, 'time', RUN) }),
    },
    [],
  )
}
