// Limits of one cut alone: all day, one run from cold, another after a rest, and the rest before another.
import { type Phase, meanTorque } from '../../duty.ts'
import { restFor } from '../../duty/patterns.ts'
import type { Job } from '../../job.ts'
import type { Progress } from '../../run.ts'
import { allDayTorque } from '../../steady/allDay.ts'
import { lowestAllDay } from '../../steady/lowest.ts'
import { ampsFor, heldAt, type Most } from '../../steady/most.ts'
import { operatingPoint, topSpeed } from '../../steady/operating.ts'
import { bracket, crossing, type Spare } from './crossing.ts'
import { evened } from './evened.ts'
import { cold, type Held, held, rested } from './held.ts'
import { holdsForGood } from './turns.ts'

const MINUTE = 60
const HOUR = 3600
/** A cut that holds longer than this is held all day, s; and a rest is no longer than a night. */
export const DAY = 8 * HOUR
const NIGHT = 24 * HOUR
/** How near a rest is found, as a share. */
const CLOSE = 0.005

export interface SteadyLimits {
  /** All-day torque of a cut at the cut's speed, N·m at the spindle, and what it is then. */
  readonly allDay: Most
  /** Lowest spindle speed at which the cut's mean torque is held all day, rad/s; 0: at any, null: at none. */
  readonly lowest: number | null
}

/** What holds all day, whatever the cut's own length. */
export function steadyLimits(job: Job, phase: Phase): SteadyLimits {
  return {
    allDay: allDayTorque(job.parts, phase.speed),
    lowest: lowestAllDay(job.parts, meanTorque(phase), topSpeed(job.parts)),
  }
}

export interface RunLimits {
  /** The longest run from cold, s, what ends it, and the frame's temperature then, °C; null: it holds all day. */
  readonly cold: Pick<Held, 'seconds' | 'ends' | 'frameC'> | null
  /** Mean amps of the cut at its limit, or settled: what a clamp on a motor lead shows. */
  readonly amps: number
  /** After a run to the limit and this rest, standing: how long again, s. */
  readonly again: { readonly rest: number; readonly seconds: number } | null
  /** The run that is wanted again, s, and the rest before it: standing, and running free; null: none does it. */
  readonly next: {
    readonly run: number
    readonly standing: number | null
    readonly free: number | null
  } | null
}

/** The same spindle speed with nothing to cut: the motor's own fan turns. */
const free = (phase: Phase, seconds: number): Phase => ({
  ...phase,
  name: 'running free',
  seconds,
  cut: { kind: 'torque', torque: 0 },
  surge: null,
})

/** Shortest rest of a kind after which the cut goes on for `wanted` s; null: a night is not enough. */
function* restBefore(
  job: Job,
  phase: Phase,
  hot: Float64Array,
  wanted: number,
  kind: (seconds: number) => Phase,
): Generator<Progress, number | null> {
  // How much longer than wanted it goes, as a logarithm: no longer than twice is looked at. More warmth is less time.
  const asked = (cut: Phase): Spare =>
    function* (log) {
      const states = yield* rested(job, kind(Math.exp(log)), hot)
      const seconds = states === null ? 0 : (yield* held(job, cut, states, 2 * wanted)).seconds
      return Math.log(Math.max(seconds, 1e-3) / wanted)
    }
  const from = function* (spare: Spare, first: number, factor: number): Generator<Progress, number | null> {
    // A rest is asked by how short it is: the shorter, the less is left.
    const found = yield* bracket((x) => spare(Math.log(1 / x)), 1 / first, 1 / NIGHT, 1, factor)
    if (found === 'never') return null
    if (found === 'always') return 0
    const { good, goodLeft, bad, badLeft } = found
    const [a, b] = [good, bad].map((x) => Math.log(1 / x))
    return Math.exp(yield* crossing(spare, { x: a, left: goodLeft }, { x: b, left: badLeft }, CLOSE))
  }
  if (phase.surge === null) return yield* from(asked(phase), MINUTE, 2)
  // Surges evened out give a first guess, quickly.
  const guess = yield* from(asked(evened(phase)), MINUTE, 2)
  return yield* from(asked(phase), guess || NIGHT, guess ? 1.1 : 2)
}

/** Mean amps that hold the cut's mean torque with the frame at a temperature. */
function meanAmps({ parts }: Job, phase: Phase, frameC: number): number {
  const amps = ampsFor(heldAt(parts, phase.speed), meanTorque(phase), frameC)
  return Math.min(amps, parts.controller.currentLimit)
}

/** Limits of runs of one cut; `rest`: the rest after which it is asked how long again, s. */
export function* runLimits(job: Job, phase: Phase, rest: number): Generator<Progress, RunLimits> {
  const first = (yield* holdsForGood(job, phase)) >= 0 ? null : yield* held(job, phase, cold(job), DAY)
  if (first === null || first.ends === null) {
    const { amps } = operatingPoint(job.parts, phase.speed, meanTorque(phase))
    return { cold: null, amps, again: null, next: null }
  }
  const { seconds, ends, frameC, states } = first
  const after = yield* rested(job, restFor(rest), states)
  const again = after === null ? 0 : (yield* held(job, phase, after, DAY)).seconds
  // No rest brings back the whole of the first run but a night: half of it is asked, or the cut's own length.
  const run = Math.min(phase.seconds, seconds / 2)
  const standing = yield* restBefore(job, phase, states, run, restFor)
  const running = yield* restBefore(job, phase, states, run, (each) => free(phase, each))
  return {
    cold: { seconds, ends, frameC },
    amps: meanAmps(job, phase, frameC),
    again: { rest, seconds: again },
    next: { run, standing, free: running },
  }
}
