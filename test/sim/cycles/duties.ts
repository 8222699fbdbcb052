// Periodic jobs for the tests of envelope following, and the direct run they are held against.
import { type ReferenceRun, referenceJob } from '../../../scenarios/referenceRuns.ts'
import type { CycleRun } from '../../../sim/cycles.ts'
import { skipped } from '../../../sim/cycles/gap.ts'
import { heatOf } from '../../../sim/cycles/turn.ts'
import { cycleSeconds } from '../../../sim/duty.ts'
import type { Job } from '../../../sim/job.ts'
import { finish, type Run, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'
import { job as given } from '../../jobs.ts'

const HOUR = 3600

/** The one-minute cycle of the reference run "shaft-fan", with changes; phases as [seconds, speed, N·m]. */
export function duty(
  hours: number,
  plant: ReferenceRun['plant'] = {},
  phases?: readonly (readonly [seconds: number, speed: number, torque: number])[],
  startC?: number,
): Job {
  const base = references.runs.find(({ name }) => name === 'shaft-fan')!
  const job = referenceJob(
    references.base,
    {
      ...base,
      plant: { ...base.plant, ...plant },
      seconds: hours * HOUR,
      ...(phases && {
        phases: phases.map(([seconds, speed, value]) => ({
          seconds,
          speed,
          load: { kind: 'torque', value },
        })),
      }),
    },
    'default',
  )
  return startC === undefined ? job : { ...job, duty: { ...job.duty, startC } }
}

/** A reference run of test/checks/runs.json for longer. */
const longer = (name: string, hours: number): Job =>
  referenceJob(
    references.base,
    { ...references.runs.find((one) => one.name === name)!, seconds: hours * HOUR },
    'default',
  )

const cutAndIdle = [
  [20, 380, 6],
  [40, 380, 0],
] as const

/** Jobs in which the cutoff stays closed. */
export const closed: readonly (readonly [string, Job])[] = [
  ['one-minute cycle', duty(8)],
  [
    '10 s cycle',
    duty(4, {}, [
      [4, 380, 7],
      [6, 0, 0],
    ]),
  ],
  [
    '10 min cycle',
    duty(24, {}, [
      [240, 380, 9],
      [360, 0, 0],
    ]),
  ],
  ['never at rest, speed held', duty(8, {}, cutAndIdle)],
  ['never at rest, volts held', duty(8, { mode: 'open' }, cutAndIdle)],
  [
    'current limit reached hot',
    duty(8, { Imax: 11 }, [
      [20, 300, 8],
      [40, 0, 0],
    ]),
  ],
  [
    'coasting not finished',
    duty(8, { Jfly: 0.2 }, [
      [30, 300, 6],
      [10, 0, 0],
    ]),
  ],
  [
    'flywheel that takes turns to come up',
    duty(8, { Jfly: 2 }, [
      [50, 300, 4],
      [10, 0, 0],
    ]),
  ],
  ['starts hot', duty(8, {}, undefined, 100)],
  ['blower', longer('blower', 8)],
  ['two speeds', longer('two-speeds', 8)],
  ['restarts while coasting', longer('coast-restart', 3)],
  ['surges', given({ 'heat.cooling': 'shaft fan', 'duty.repeatFor': '16 h' })],
]

/** Jobs in which it opens after a while. */
export const opening: readonly (readonly [string, Job])[] = [
  ['fan lost', longer('fan-lost', 3)],
  ['manual reset', longer('manual-reset', 3)],
  ['lumpy supply', longer('lumpy-supply', 3)],
  [
    '10 s cycle, late',
    duty(1.5, {}, [
      [4, 380, 9],
      [6, 0, 0],
    ]),
  ],
  ['surges, no fan', given({ 'duty.repeatFor': '2 h' })],
]

/** Starts of the job's whole turns, s. */
export function starts({ duty }: Job): number[] {
  const seconds = cycleSeconds(duty)
  return Array.from({ length: Math.floor(duty.seconds / seconds + 1e-9) }, (_, n) => n * seconds)
}

export const direct = (job: Job): Run => finish(run(job, { samples: starts(job) }))

/** Largest difference in temperature at the starts of all turns, those skipped too, K; and how many were compared. */
export function worst({ computed }: CycleRun, { samples }: Run): { error: number; turns: number } {
  let error = 0
  let turns = 0
  const compare = (n: number, heat: Float64Array) => {
    turns++
    const wanted = heatOf(samples[n])
    for (let h = 0; h < wanted.length; h++) error = Math.max(error, Math.abs(heat[h] - wanted[h]))
  }
  for (const { n, turn, before } of computed) {
    if (before)
      skipped(before, ({ turn: number, heat }) => {
        compare(n - before.turns + number, heat)
        return true
      })
    compare(n, heatOf(turn.start.states))
  }
  return { error, turns }
}
