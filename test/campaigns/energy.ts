// Energy is kept in random jobs: what the motor takes comes out as heat and work or is stored; so with the heat alone.
import { assemble } from '../../sim/plant.ts'
import { finish, run } from '../../sim/run.ts'
import type { Campaign } from './campaign.ts'
import { randomJob, randomScenario } from './randomJob.ts'

/** Where energy that was taken goes. */
const OUTS = ['copper', 'brushes', 'friction', 'belt', 'idle', 'work'] as const

export const energy: Campaign = {
  name: 'energy',
  about: 'energy of random jobs: taken = heat + work + stored; heat = kept + given to the air',
  whole: 2000,
  slice: 40,
  fixed: [],
  limits: {
    'power balance off': { most: 1e-3, unit: 'of what is taken' },
    'heat balance off': { most: 1e-3, unit: 'of the heat' },
  },
  seen: { 'hours run': 0.1 },
  one(seed) {
    const job = randomJob(seed)
    const { trace } = finish(run(job))
    const last = (name: keyof typeof trace.columns) => trace.columns[name].at(-1)!
    const { inertia, inductance, heat, winding, lumpy } = assemble(job.parts)
    const { startC } = job.duty
    const stored = (inertia / 2) * last('speed') ** 2 + (inductance / 2) * last('current') ** 2
    const out = OUTS.reduce((sum, name) => sum + last(name), 0)
    // Brushes warm by Vb |i|, and take Vb tanh(i/0.05) i: heat is made of the former.
    const made = last('copper') + last('friction') + winding.brushDrop * last('charge')
    const kept =
      heat.windingCapacity * (last('windingC') - startC) + heat.frameCapacity * (last('frameC') - startC)
    // In a job of rests alone nothing is taken: a second of the plate's amps is then what counts as much.
    const least = winding.resistance * lumpy!.amps ** 2
    const warm = made + Math.abs(last('toAir')) + least
    return {
      measures: {
        'power balance off': Math.abs(last('taken') - out - stored) / (last('taken') + least),
        'heat balance off': Math.abs(made - kept - last('toAir')) / warm,
        'hours run': trace.time.at(-1)! / 3600,
      },
    }
  },
  show: (seed) => JSON.stringify(randomScenario(seed)),
}
