// Random jobs as circuits: electrical, mechanical and thermal network with the duty and the cutoff, in a circuit simulator.
import type { Job } from '../../sim/job.ts'
import { STATE } from '../../sim/plant.ts'
import { finish, run } from '../../sim/run.ts'
import { simulate } from '../sim/physics/spice.ts'
import { plantNetlist } from '../sim/physics/spicePlant.ts'
import type { Campaign } from './campaign.ts'
import { pageOf } from '../pageOf.ts'
import { randomJob, randomScenario } from './randomJob.ts'

/** How long a job is followed, s. */
const LONGEST = 300
const MOMENTS = 12

const jobAt = (seed: number): Job => {
  const job = randomJob(seed)
  return { ...job, duty: { ...job.duty, seconds: Math.min(job.duty.seconds, LONGEST) } }
}
const netlistAt = (seed: number): string => {
  const job = jobAt(seed)
  const { plant, phases } = pageOf(job)
  return plantNetlist(plant, phases, job.duty.seconds)
}

/** Source: ngspice (eecircuit-engine), trapezoidal integration of charges: L. W. Nagel, SPICE2, UCB/ERL M520 (1975), ch. 4. */
export const circuit: Campaign = {
  name: 'circuit',
  about: 'random jobs as circuits in ngspice: electrical, mechanical, thermal, duty and cutoff',
  whole: 100,
  slice: 2,
  // With the cutoff open, and the widest apart.
  fixed: [24, 60],
  limits: {
    temperature: { most: 0.1, unit: 'K' },
    speed: { most: 1e-2, unit: '' },
  },
  seen: { moments: MOMENTS / 2, 'found open': 0.05 },
  async one(seed) {
    const job = jobAt(seed)
    const { seconds } = job.duty
    const times = Array.from({ length: MOMENTS }, (_, n) => ((n + 0.7) / MOMENTS) * seconds)
    const spice = await simulate(netlistAt(seed))
    const { samples } = finish(run(job, { samples: times }))
    const off = (name: string, state: number) =>
      samples.map((states, n) => Math.abs(states[state] - spice(`v(${name})`, times[n])))
    const closed = samples.map((_, n) => spice('v(closed)', times[n]))
    return {
      measures: {
        temperature: Math.max(
          ...off('tw', STATE.windingC),
          ...off('tm', STATE.frameC),
          ...off('ts', STATE.switchC),
        ),
        speed: Math.max(...off('w', STATE.speed)) / job.parts.lumpy!.speed,
        moments: samples.length,
        'found open': closed.filter((value) => value < 0.5).length,
      },
    }
  },
  show: (seed) => `${JSON.stringify(randomScenario(seed))}\n${netlistAt(seed)}`,
}
