// Random jobs made harder or easier: what must not get better, does not. Never a value is asserted, only an order.
import type { Job } from '../../sim/job.ts'
import type { Phase } from '../../sim/duty.ts'
import { finish, run } from '../../sim/run.ts'
import { STATE } from '../../sim/plant.ts'
import { type Chance, seeded } from '../seeded.ts'
import type { Campaign } from './campaign.ts'
import { randomJob, randomScenario } from './randomJob.ts'
import { changed, loaded } from './sameJobs.ts'

const HOT = [STATE.windingC, STATE.frameC, STATE.switchC]
const MOMENTS = 24
/** Share of plate speed by which a settled speed may still change in the last of a step. */
const SETTLED = 1e-5

/** No cutoff: what opens later runs longer, and is then the hotter one. */
const uncut = (job: Job): Job => changed(job, { cutoff: { fitted: 'none' } })

/**
 * Temperatures that stay as they are: hot magnets are weak and make a motor fast, so that order in speed is only an
 * order at one and the same warmth. Every step long enough to arrive, none with surges, whose overshoot has no order.
 */
export function steady(job: Job): Job {
  const { controller, heat, rotor } = job.parts
  const fixed = changed(job, {
    heat: { windingCapacity: heat.windingCapacity * 1e9, frameCapacity: heat.frameCapacity * 1e9 },
    cutoff: { fitted: 'none' },
    rotor: { flywheel: Math.min(rotor.flywheel, rotor.inertia) },
  })
  const fastest = job.parts.lumpy!.speed
  const seconds = 10 + (2 * fastest) / controller.ramp + 40 * controller.response
  const phases = job.duty.phases.map((phase): Phase => ({ ...phase, seconds, surge: null }))
  return { ...fixed, duty: { ...job.duty, phases, seconds: seconds * phases.length } }
}

/** Greatest amount by which a temperature of the one lies over the other's, K: at moments all over, and the peaks. */
function hotter(one: Job, other: Job): Found {
  const until = one.duty.seconds
  const samples = Array.from({ length: MOMENTS }, (_, n) => (until * (n + 1)) / MOMENTS)
  const [a, b] = [one, other].map((job) => finish(run(job, { samples })))
  const count = Math.min(a.samples.length, b.samples.length)
  const over = a.samples.slice(0, count).flatMap((state, n) => HOT.map((h) => state[h] - b.samples[n][h]))
  return { worst: Math.max(0, ...over) }
}

/**
 * Greatest share of the plate's speed by which the one runs faster than the other at a step's end, where both have
 * settled: a constant power on a compensated motor may swing for good, and the end of a swing has no order.
 */
function faster(one: Job, other: Job): Found {
  const { phases, seconds } = one.duty
  const looks = phases.flatMap((phase, n) => [0.93, 0.97, 1].map((share) => (n + share) * phase.seconds))
  const samples = looks.map((t) => Math.min(t, seconds))
  const plate = one.parts.lumpy!.speed
  const [a, b] = [one, other].map((job) =>
    finish(run(job, { samples })).samples.map((state) => state[STATE.speed] / plate),
  )
  const still = (speeds: number[], end: number) =>
    Math.abs(speeds[end] - speeds[end - 1]) + Math.abs(speeds[end] - speeds[end - 2]) < SETTLED
  const ends = phases.map((_, n) => 3 * n + 2).filter((end) => still(a, end) && still(b, end))
  return { worst: Math.max(0, ...ends.map((end) => a[end] - b[end])), settled: ends.length }
}

/** Worst breach of an order, and the settled steps it was looked for at. */
interface Found {
  readonly worst: number
  readonly settled?: number
}
type Order = (job: Job, chance: Chance) => Found

const ORDERS: Readonly<Record<string, { readonly most: number; readonly unit: string; readonly by: Order }>> =
  {
    'more air, hotter by': {
      most: 0.002,
      unit: 'K',
      by(job, { even }) {
        const { heat } = job.parts
        const more = even(1, 2)
        const air = {
          windingToAir: heat.windingToAir * more,
          windingToFanAir: heat.windingToFanAir * more,
          frameToAir: heat.frameToAir * more,
          frameToFanAir: heat.frameToFanAir * more,
        }
        return hotter(changed(uncut(job), { heat: air }), uncut(job))
      },
    },
    'hotter air, cooler by': {
      most: 0.002,
      unit: 'K',
      by(job, { even }) {
        const warm = even(0, 30)
        const other = changed(uncut(job), { heat: { air: job.parts.heat.air + warm } })
        const duty = { ...other.duty, startC: job.duty.startC + even(0, warm) }
        return hotter(uncut(job), { ...other, duty })
      },
    },
    'more load, faster by': {
      most: 1e-5,
      unit: 'of plate speed',
      by: (job, { even }) => faster(changed(steady(job), {}, loaded(even(1, 2))), steady(job)),
    },
    'more resistance, faster by': {
      most: 1e-5,
      unit: 'of plate speed',
      by(job, { even }) {
        const { resistance, inductance } = job.parts.winding
        const more = even(1, 1.5)
        const winding = { resistance: resistance * more, inductance: inductance! * more }
        return faster(changed(steady(job), { winding }), steady(job))
      },
    },
    'fewer volts or amps, faster by': {
      most: 1e-5,
      unit: 'of plate speed',
      by(job, { even }) {
        const { supply, controller } = job.parts
        const less = {
          supply: { volts: supply.volts * even(0.6, 1) },
          controller: { currentLimit: controller.currentLimit * even(0.6, 1) },
        }
        return faster(changed(steady(job), less), steady(job))
      },
    },
  }

export const order: Campaign = {
  name: 'order',
  about: 'random jobs made harder or easier: what must not get better does not',
  whole: 2000,
  slice: 40,
  fixed: [],
  limits: Object.fromEntries(Object.entries(ORDERS).map(([name, { most, unit }]) => [name, { most, unit }])),
  seen: { 'settled steps': 5 },
  one(seed) {
    const job = randomJob(seed)
    const found = Object.entries(ORDERS).map(([name, { by }]) => [name, by(job, seeded(seed + 3e6))] as const)
    const settled = found.reduce((sum, [, { settled = 0 }]) => sum + settled, 0)
    return {
      measures: {
        ...Object.fromEntries(found.map(([name, { worst }]) => [name, worst])),
        'settled steps': settled,
      },
    }
  },
  show: (seed) => JSON.stringify(randomScenario(seed)),
}
