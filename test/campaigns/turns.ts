// Random jobs that repeat for hours, by turns as the product shows them and directly, every turn run: the same figures.
import { figuresOf } from '../../sim/carryOut.ts'
import { cycleSeconds } from '../../sim/duty.ts'
import type { Job } from '../../sim/job.ts'
import type { Figures } from '../../sim/judge.ts'
import { finish } from '../../sim/run.ts'
import { jobOf } from '../jobs.ts'
import { seeded } from '../seeded.ts'
import type { Campaign, Trial } from './campaign.ts'
import { randomScenario } from './randomJob.ts'

/** Turns a job has at least, and how long it is at most, s. */
const LEAST = 20
const LONGEST = 8 * 3600
/** Where the switch comes so near its opening without passing it, whether it opens is anybody's guess. K */
const GRAZES = 0.3

function jobAt(seed: number): Job {
  const job = jobOf(randomScenario(seed))
  const cycle = cycleSeconds(job.duty)
  const seconds = Math.max(LEAST * cycle, Math.min(LONGEST, cycle * seeded(seed + 4e6).size(LEAST, 400)))
  return { ...job, duty: { ...job.duty, seconds } }
}

const temperatures = ({ hottestWindingC, hottestFrameC, hottestSwitchC }: Figures) => [
  hottestWindingC.value,
  hottestFrameC.value,
  hottestSwitchC.value,
]

export const turns: Campaign = {
  name: 'turns',
  about: 'random jobs repeated for hours, by turns as shown and with every turn run',
  whole: 500,
  slice: 10,
  // Burnt out within a few turns: the energy of so short a job is the least sure.
  fixed: [202],
  limits: {
    temperature: { most: 0.05, unit: 'K' },
    'first opening': { most: 1e-3, unit: '' },
    'energy taken': { most: 2e-3, unit: '' },
  },
  seen: { opens: 0.02 },
  one(seed): Trial {
    const job = jobAt(seed)
    const [quick, direct] = [false, true].map((every) => finish(figuresOf(job, every)))
    const [a, b] = [temperatures(quick), temperatures(direct)]
    const { fitted, opensAt } = job.parts.cutoff
    if ((quick.firstOpening === null) !== (direct.firstOpening === null)) {
      const grazes = fitted !== 'none' && [a[2], b[2]].some((value) => Math.abs(value - opensAt) < GRAZES)
      return {
        measures: {},
        ...(!grazes && { wrong: `opens ${quick.firstOpening?.t}, directly ${direct.firstOpening?.t}` }),
      }
    }
    const first = [quick, direct].map(({ firstOpening }) => firstOpening?.t ?? 0)
    return {
      measures: {
        temperature: Math.max(...a.map((value, n) => Math.abs(value - b[n]))),
        'first opening': Math.abs(first[0] - first[1]) / Math.max(1, first[1]),
        'energy taken': Math.abs(quick.energy.taken - direct.energy.taken) / Math.max(direct.energy.taken, 1),
        opens: first[1] > 0 ? 1 : 0,
      },
    }
  },
  show: (seed) => JSON.stringify({ ...randomScenario(seed), seconds: jobAt(seed).duty.seconds }),
}
