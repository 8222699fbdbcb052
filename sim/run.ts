// The run: phases of the duty through the solver, with the cutoff opening and reclosing; a trace out.
import { bookkeeper } from './bookkeeper.ts'
import { clock, nextPhase, phaseNow, phaseOver } from './clock.ts'
import { cycleSeconds, surgeAt } from './duty.ts'
import type { Accuracy, Job } from './job.ts'
import type { Cutoff } from './parts/cutoff.ts'
import { ABSOLUTE, assemble, evaluate, FLOWS, type Mode, STATE, TYPICAL } from './plant.ts'
import { advance, type Crossing } from './solve/advance.ts'
import { extrapolation } from './solve/odex.ts'
import { rosenbrock } from './solve/rosenbrock.ts'
import type { System, Tolerance } from './solve/system.ts'
import type { Checkpoint, Ending, Mark, Trace } from './trace.ts'
import { watch } from './watch.ts'

export type Method = 'rosenbrock' | 'extrapolation'

export interface RunOptions {
  /** The solver: the product's own, or the library's as second opinion. */
  readonly method?: Method
  /** Stop here instead of at the duty's end, s. */
  readonly until?: number
  /** Stop when the cutoff first opens. */
  readonly toFirstOpening?: boolean
  /** Take the run up again from here. */
  readonly from?: Checkpoint
  /** Times (s, ascending) at which the states are wanted exactly. */
  readonly samples?: readonly number[]
  /** Only states, peaks and openings are wanted: no meters are read, the trace has no rows, no sums, no other marks. */
  readonly statesOnly?: boolean
}

/** How far a run has got, s of the job, of how many. */
export interface Progress {
  readonly t: number
  readonly of: number
}

export interface Run {
  readonly trace: Trace
  /** States at the asked times, as far as the run got. */
  readonly samples: readonly Float64Array[]
}

/** Above this the linear laws of copper and magnets mean nothing. °C */
export const DESTROYED_C = 300
/** First step of a segment, s. */
const FIRST_STEP = 0.01
/** Steps between two breaths. */
const BREATH = 64
/** Checkpoints kept over a run. */
const CHECKPOINTS = 400

/** Relative tolerance, and how many times finer than usual the absolute ones are (NUMERICS.md). */
const TOLERANCES = {
  rough: { relative: 1e-2, finer: 0.1 },
  default: { relative: 1e-3, finer: 1 },
  precise: { relative: 1e-5, finer: 10 },
  reference: { relative: 1e-7, finer: 1000 },
} as const

function tolerance(accuracy: Accuracy, states: number): Tolerance {
  const { relative, finer } = TOLERANCES[accuracy]
  return { relative, absolute: ABSOLUTE.subarray(0, states).map((size) => size / finer) }
}

const destroyed: Crossing = { state: STATE.windingC, level: DESTROYED_C, direction: 1 }

/** What to watch for with the cutoff closed, and open. */
function watches(cutoff: Cutoff): { closed: readonly Crossing[]; open: readonly Crossing[] } {
  const opens: Crossing = { state: STATE.switchC, level: cutoff.opensAt, direction: 1 }
  const recloses: Crossing = { state: STATE.switchC, level: cutoff.reclosesAt, direction: -1 }
  return {
    closed: cutoff.fitted === 'none' ? [destroyed] : [destroyed, opens],
    open: cutoff.fitted === 'self-reset' ? [destroyed, recloses] : [destroyed],
  }
}

/**
 * Runs a job. Yields progress every few dozen steps, so that the caller can breathe, cancel, or simply go on;
 * returns the trace. Never throws on a job the reader lets through: what can go wrong is the trace's ending.
 */
export function* run(job: Job, options: RunOptions = {}): Generator<Progress, Run> {
  const plant = assemble(job.parts)
  const { duty } = job
  const { cutoff, controller } = plant
  const { from } = options
  const end = Math.min(options.until ?? Infinity, duty.seconds)
  const crossings = watches(cutoff)

  const mode: Mode = {
    on: false,
    asked: 0,
    slope: 0,
    target: 0,
    cut: { kind: 'torque', torque: 0 },
    surge: 0,
  }
  const system: System = {
    size: plant.states,
    typical: TYPICAL.subarray(0, plant.states),
    get autonomous() {
      return !mode.on || mode.slope === 0
    },
    rates: (t, y, out) => evaluate(plant, mode, t, y, out),
  }
  const method = options.method === 'extrapolation' ? extrapolation : rosenbrock
  const stepper = method(system, tolerance(job.accuracy, plant.states))

  const y = from
    ? from.states.slice()
    : Float64Array.of(0, 0, 0, duty.startC, duty.startC, duty.startC, 0).subarray(0, plant.states)
  const now = from ? { ...from.clock } : clock()
  let t = from?.t ?? 0
  let asked = from?.asked ?? 0
  let wasOn = from?.on ?? false
  let open = from?.open ?? false
  const marks: Mark[] = []
  const eye = watch(job, marks, from?.stretch)
  const books = bookkeeper(
    plant,
    mode,
    stepper,
    end - t,
    from ? from.sums.slice() : new Float64Array(FLOWS),
    options.samples ?? [],
    !options.statesOnly,
    eye,
  )
  const checkpoints: Checkpoint[] = []
  let stepsAtBreath = 0
  let ending: Ending = { kind: 'finished' }
  const here = (): Checkpoint => ({
    t,
    states: y.slice(),
    sums: books.sums.slice(),
    clock: { ...now },
    asked,
    on: wasOn,
    open,
    stretch: eye.stretch(),
  })

  if (!open && cutoff.fitted !== 'none' && y[STATE.switchC] >= cutoff.opensAt) {
    open = true
    marks.push({ kind: 'opens', t, phase: now.phase })
  }
  // Asked only as far as the first opening, that is all there is of it.
  if (open && options.toFirstOpening) books.begin(t, y)

  // Once: a duty may have ten thousand phases.
  const cycle = cycleSeconds(duty)

  driving: while (t < end && cycle > 0 && !(open && options.toFirstOpening)) {
    if (phaseOver(duty, now, t)) {
      nextPhase(duty, now, cycle)
      t = Math.max(t, now.phaseStart)
      if (t >= (checkpoints.at(-1)?.t ?? 0) + duty.seconds / CHECKPOINTS) checkpoints.push(here())
      continue
    }

    // The mode of this segment, and how long it holds.
    const phase = phaseNow(duty, now)
    const into = t - now.phaseStart
    const on = !open && phase.speed > 0
    if (on !== wasOn) {
      books.rows.edge()
      asked = on ? Math.max(0, y[STATE.speed]) : 0
      if (on) y[STATE.integrator] = 0
      wasOn = on
    }
    const target = on ? phase.speed * plant.ratio : 0
    const surge = surgeAt(phase, into)
    mode.on = on
    mode.asked = asked
    mode.target = target
    mode.slope = on ? Math.sign(target - asked) * controller.ramp : 0
    mode.cut = phase.cut
    mode.surge = surge.torque
    const rampEdge = mode.slope === 0 ? Infinity : (target - asked) / mode.slope
    const phaseEdge = phase.seconds - into
    const span = Math.min(phaseEdge, rampEdge, surge.until - into, end - t)
    stepper.start(0, y, Math.min(FIRST_STEP, span))
    books.begin(t, y)

    for (;;) {
      const watched = open ? crossings.open : crossings.closed
      const move = advance(stepper, span, watched)
      if (move.kind === 'failed') {
        ending = { kind: move.why, t: t + stepper.t }
        break driving
      }
      const local = move.kind === 'crossing' ? move.t : stepper.t
      y.set(move.kind === 'crossing' ? move.y : stepper.y)
      books.step(local, y)
      if (stepper.effort.steps - stepsAtBreath >= BREATH) {
        stepsAtBreath = stepper.effort.steps
        yield { t: t + local, of: end }
      }
      if (move.kind === 'step') continue

      asked = local >= rampEdge ? target : asked + mode.slope * local
      // Land on the edge itself, not a rounding away from it.
      t = local === end - t ? end : local === phaseEdge ? now.phaseStart + phase.seconds : t + local
      if (move.kind === 'edge') break
      if (watched[move.index] === destroyed) {
        ending = { kind: 'destroyed', t }
        break driving
      }
      open = !open
      marks.push({ kind: open ? 'opens' : 'recloses', t, phase: now.phase })
      break
    }
  }

  if (ending.kind === 'finished') checkpoints.push(here())
  const { steps, rejected, rates } = stepper.effort
  const { time, columns, bucket } = books.rows.finish()
  const trace: Trace = {
    time,
    columns,
    bucket,
    peaks: books.peaks,
    // Stopped by its caller before the job's end, the driving goes on.
    ...eye.finish(end >= duty.seconds || t < end),
    ending,
    effort: { steps, rejected, rates, readings: books.readings },
    checkpoints,
  }
  return { trace, samples: books.samples }
}

/** Runs a generator to its end without breathing. */
export function finish<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const next = work.next()
    if (next.done) return next.value
  }
}
