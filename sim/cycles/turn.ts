// One turn of the duty from a known start: the map from its temperatures to those at its end, with all it shows.
import { clock } from '../clock.ts'
import { cycleSeconds } from '../duty.ts'
import type { Job } from '../job.ts'
import { FLOWS, STATE } from '../plant.ts'
import { DESTROYED_C, type Progress, run } from '../run.ts'
import type { At, Checkpoint, Effort, Peaks, Stretch, Trace } from '../trace.ts'

/** Winding, frame and switch, °C: the slow states. The others ride along. */
export const HEAT = 3
const FIRST = STATE.windingC

/** The states that ride along; the last only where the belt may slip. */
export const FAST = [STATE.current, STATE.speed, STATE.integrator, STATE.spindle] as const

/** The slow states among all. */
export const heatOf = (states: Float64Array): Float64Array => states.subarray(FIRST, FIRST + HEAT)

/** All states and what the driver remembers, at the start of a turn; time runs from there. */
export type Start = Checkpoint

/** A turn that ran through with the cutoff closed. */
export interface Turn {
  readonly start: Start
  readonly end: Start
  /** Winding, frame and switch: their highest, °C, and when in the turn, as shares of it. */
  readonly peaks: Float64Array
  readonly when: Float64Array
  readonly trace: Trace
}

/** Start of the job's first turn: at rest, all of one temperature. */
export function coldStart(job: Job, states: number): Start {
  const y = new Float64Array(states)
  heatOf(y).fill(job.duty.startC)
  return startWith(y, { asked: 0, on: false })
}

const startWith = (
  states: Float64Array,
  { asked, on, stretch }: Pick<Start, 'asked' | 'on' | 'stretch'>,
): Start => ({
  t: 0,
  states,
  sums: new Float64Array(FLOWS),
  clock: clock(),
  asked,
  on,
  open: false,
  ...(stretch && { stretch }),
})

const shifted = (stretch: Stretch | undefined, by: number) =>
  stretch && { ...stretch, since: stretch.since + by }

/** A start with other temperatures. */
export function withHeat(start: Start, heat: Float64Array): Start {
  const states = start.states.slice()
  heatOf(states).set(heat)
  return startWith(states, start)
}

/** A start in the job's own time, as that of turn `n` at t (s). */
export const inJob = (start: Start, n: number, t: number): Checkpoint => ({
  ...start,
  t,
  clock: { phase: 0, phaseStart: t, cycles: n },
  ...(start.stretch && { stretch: shifted(start.stretch, t) }),
})

/** More than this apart in speed, a turn does not end as it began. rad/s */
const SAME_SPEED = 1

/** True where the fast states came round: what differs then is heat. */
export function cameRound({ start, end }: Turn): boolean {
  const near = (a: number, b: number) => Math.abs(a - b) <= SAME_SPEED
  const speeds = [STATE.speed, STATE.spindle].filter((state) => state < start.states.length)
  return (
    start.on === end.on &&
    near(start.asked, end.asked) &&
    speeds.every((state) => near(start.states[state], end.states[state]))
  )
}

/** Adds to an effort. */
export function spend(total: { -readonly [K in keyof Effort]: Effort[K] }, more: Effort): void {
  for (const key of ['steps', 'rejected', 'rates', 'readings'] as const) total[key] += more[key]
}

/** Turns of one job, and what they have cost so far. */
export interface Turner {
  /**
   * Runs one turn; null where the cutoff opens in it, or where it breaks off.
   * `bare`: only its states and peaks are wanted, not the rows of its trace.
   */
  turn(start: Start, bare?: boolean): Generator<Progress, Turn | null>
  readonly effort: Effort
}

export function turner(job: Job): Turner {
  const seconds = cycleSeconds(job.duty)
  const effort = { steps: 0, rejected: 0, rates: 0, readings: 0 }
  return {
    effort,
    *turn(start, bare = false) {
      const { trace } = yield* run(job, {
        from: start,
        until: seconds,
        toFirstOpening: true,
        statesOnly: bare,
      })
      spend(effort, trace.effort)
      const last = trace.checkpoints.at(-1)
      if (trace.ending.kind !== 'finished' || !last || last.open) return null
      // A turn that starts beyond the end of the winding never meets it.
      if (trace.peaks.windingC.value >= DESTROYED_C) return null
      return {
        start,
        end: startWith(last.states, { ...last, stretch: shifted(last.stretch, -seconds) }),
        peaks: hottest(trace.peaks, ({ value }) => value),
        when: hottest(trace.peaks, ({ t }) => t / seconds),
        trace,
      }
    },
  }
}

const hottest = ({ windingC, frameC, switchC }: Peaks, of: (at: At) => number): Float64Array =>
  Float64Array.of(of(windingC), of(frameC), of(switchC))
