// Random jobs changed so that nothing may change: the exact laws of sameJobs.ts, and a run broken off and taken up again.
import type { Job } from '../../sim/job.ts'
import { finish, type Run, run } from '../../sim/run.ts'
import { STATE } from '../../sim/plant.ts'
import { seeded } from '../seeded.ts'
import type { Campaign } from './campaign.ts'
import { randomJob, randomScenario } from './randomJob.ts'
import { LAWS, type Law } from './sameJobs.ts'

const HOT = [STATE.windingC, STATE.frameC, STATE.switchC]
const MOMENTS = 10
/** Where the switch comes so near its opening without passing it, whether it opens is anybody's guess. K */
const GRAZES = 0.01

const openings = ({ trace }: Run) =>
  trace.marks.flatMap(({ kind, t }) => (kind === 'opens' || kind === 'recloses' ? t : []))

/** Two runs of a law, `later` (s) apart. */
interface Both {
  readonly one: Run
  readonly other: Run
  readonly later: number
}

/** Largest difference of a temperature at the moments and of the peaks, K, and of an event, as a share of its time; or what differs. */
function apart({ one: a, other: b, later }: Both, { opensAt, fitted }: Job['parts']['cutoff']) {
  const [before, after] = [openings(a), openings(b)]
  const grazes = fitted !== 'none' && Math.abs(a.trace.peaks.switchC.value - opensAt) < GRAZES
  if (before.length !== after.length || a.trace.ending.kind !== b.trace.ending.kind)
    return grazes
      ? null
      : `${before.length} openings and reclosings, ${after.length} when changed; ${a.trace.ending.kind}, ${b.trace.ending.kind}`
  const event = Math.max(0, ...before.map((t, n) => Math.abs(after[n] - later - t) / Math.max(1, t)))
  const count = Math.min(a.samples.length, b.samples.length)
  const kelvin = Math.max(
    0,
    ...a.samples.slice(0, count).flatMap((state, n) => HOT.map((h) => Math.abs(state[h] - b.samples[n][h]))),
    ...(['windingC', 'frameC', 'switchC'] as const).map((name) =>
      Math.abs(a.trace.peaks[name].value - b.trace.peaks[name].value),
    ),
  )
  return { kelvin, event, moments: count }
}

/** Greatest difference at the end of a run when it is taken up again in its middle: none. K */
function takenUp(job: Job, { trace: { checkpoints } }: Run): number {
  if (checkpoints.length < 2) return 0
  const from = checkpoints[(checkpoints.length - 1) >> 1]
  const rest = finish(run(job, { from })).trace
  const end = checkpoints[checkpoints.length - 1].states
  const again = rest.checkpoints[rest.checkpoints.length - 1]?.states ?? []
  return Math.max(...HOT.map((h) => Math.abs(end[h] - (again[h] ?? Number.NaN))))
}

export const same: Campaign = {
  name: 'same',
  about: `random jobs changed so that nothing may change: ${Object.keys(LAWS).join(', ')}`,
  whole: 2000,
  slice: 40,
  fixed: [664, 1910, 1980],
  limits: {
    ...Object.fromEntries(Object.keys(LAWS).map((name) => [name, { most: 0.02, unit: 'K' }])),
    'taken up again': { most: 0, unit: 'K' },
    // Two runs, each within 1e-4 of the truth; at the "reference" tolerance it is a hundred times less.
    event: { most: 2e-4, unit: '' },
  },
  seen: { moments: 40 },
  one(seed) {
    const job = randomJob(seed)
    const wrong: string[] = []
    const { even } = seeded(seed + 2e6)
    const times = Array.from({ length: MOMENTS }, () => job.duty.seconds * even(0.01, 1)).sort(
      (a, b) => a - b,
    )
    const unchanged = finish(run(job, { samples: times }))
    const measures: Record<string, number> = {
      event: 0,
      moments: 0,
      'taken up again': takenUp(job, unchanged),
    }
    for (const [name, law] of Object.entries<Law>(LAWS)) {
      const pair = law(job, seeded(seed + 2e6))
      if (!pair) continue
      const { one, other, later = 0 } = pair
      const both: Both = {
        one: one === job ? unchanged : finish(run(one, { samples: times })),
        other: finish(run(other, { samples: times.map((t) => t + later) })),
        later,
      }
      const found = apart(both, job.parts.cutoff)
      if (found === null) continue
      if (typeof found === 'string') {
        wrong.push(`${name}: ${found}`)
        continue
      }
      measures[name] = found.kelvin
      measures.event = Math.max(measures.event, found.event)
      measures.moments += found.moments
    }
    return { measures, ...(wrong.length > 0 && { wrong: wrong.join('; ') }) }
  },
  show: (seed) => JSON.stringify(randomScenario(seed)),
}
