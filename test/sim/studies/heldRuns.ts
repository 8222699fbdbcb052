// Direct runs of one step held without a pause, and the map beside them at seeded points.
import type { Job } from '../../../sim/job.ts'
import { read } from '../../../sim/read.ts'
import { finish, run } from '../../../sim/run.ts'
import { type Cooling, mapPoint, mapSpec } from '../../../sim/studies/map.ts'
import type { MapPoint } from '../../../sim/studies/map/warming.ts'
import { seeded } from '../../seeded.ts'
import { example } from '../../ui/demo.ts'

export interface Compared {
  readonly speed: number
  readonly torque: number
  readonly cooling: Cooling
  readonly map: MapPoint
  /** When the direct run opened or burnt, s; Infinity: not in 48 h. */
  readonly seconds: number
  /** How far the map's time is from it, as a share; 0 where neither ends. */
  readonly error: number
  /** Within a degree of never, or of the current limit: no time is promised there. */
  readonly edge: boolean
}

const HOUR = 3600
/** How long "never" is looked at. */
const LONG = 48 * HOUR

/** The job with one step alone, held without a pause from standing and cold. */
export const heldJob = (job: Job, cooling: Cooling, speed: number, torque: number): Job => ({
  ...job,
  accuracy: 'precise',
  parts: { ...job.parts, heat: { ...job.parts.heat, cooling } },
  duty: {
    phases: [{ name: 'held', seconds: LONG, speed, cut: { kind: 'torque', torque }, surge: null }],
    seconds: LONG,
    startC: job.parts.heat.air,
  },
})

/** Time of the first opening of a job, or of its burning out, s; Infinity: neither. */
export function endOf(job: Job): number {
  const { trace } = finish(run(job, { toFirstOpening: true, statesOnly: true }))
  const opens = trace.marks.find(({ kind }) => kind === 'opens')
  if (opens) return opens.t
  return trace.ending.kind === 'destroyed' ? trace.ending.t : Infinity
}

/** A seeded point of the job's map beside a direct run; the map may be had another way. */
export function compared(job: Job, seed: number, asked = mapPoint): Compared {
  const { coolings, speeds, torques } = mapSpec(job)
  const { even, pick } = seeded(seed)
  const cooling = pick(coolings)
  const [slow, fast] = [speeds[0], speeds[speeds.length - 1]]
  const speed = even(slow, fast)
  const torque = even(0, torques[torques.length - 1])
  const map = asked(job.parts, cooling, speed, torque)
  const seconds = endOf(heldJob(job, cooling, speed, torque))
  const error = map.seconds === seconds ? 0 : Math.abs(map.seconds - seconds) / Math.min(map.seconds, seconds)
  const near = [0.99, 1.01].map((times) => mapPoint(job.parts, cooling, speed, torque * times))
  const [less, more] = near
  const edge =
    (less.seconds === Infinity) !== (more.seconds === Infinity) ||
    less.limitedAt < Infinity !== more.limitedAt < Infinity
  return { speed, torque, cooling, map, seconds, error, edge }
}

/** The example jobs, whose maps are looked at in turn. */
export const jobs: readonly Job[] = ['appleMill', 'bandSaw', 'bowlLathe'].map((name) => {
  const reading = read(example(name))
  if (!reading.ok) throw new Error(`${name} does not read`)
  return reading.job
})
