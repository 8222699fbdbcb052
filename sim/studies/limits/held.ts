// A cut held on and on: how long from one state, and what a rest makes of another; the margin to either limit.
import { clock } from '../../clock.ts'
import { coldStart } from '../../cycles/turn.ts'
import type { Phase } from '../../duty.ts'
import { classLimitC } from '../../handbook/insulation.ts'
import type { Job } from '../../job.ts'
import type { Cutoff } from '../../parts/cutoff.ts'
import { assemble, FLOWS, type Parts, STATE } from '../../plant.ts'
import { type Progress, run } from '../../run.ts'

/** What ends a run: the cutoff opens, the winding passes its class, or is destroyed; null: nothing did. */
type Ends = 'opens' | 'class' | 'destroyed' | null

export interface Held {
  readonly seconds: number
  readonly ends: Ends
  /** All states there. */
  readonly states: Float64Array
  readonly windingC: number
  readonly frameC: number
  readonly amps: number
}

/** K that are left to both limits, of peaks of winding and switch, °C. Below 0: passed. */
export const marginOf = ({ winding, cutoff }: Parts, windingC: number, switchC: number): number =>
  Math.min(
    classLimitC(winding.insulation) - windingC,
    cutoff.fitted === 'none' ? Infinity : cutoff.opensAt - switchC,
  )

/** The job at rest and as cold as its start. */
export const cold = (job: Job): Float64Array => coldStart(job, assemble(job.parts).states).states

const withCutoff = (job: Job, cutoff: Cutoff, phase: Phase): Job => ({
  ...job,
  parts: { ...job.parts, cutoff },
  duty: { ...job.duty, phases: [phase], seconds: phase.seconds },
})

/** Runs one phase from these states with the cutoff closed; whether it opened, and what is left behind. */
function* through(job: Job, states: Float64Array, seconds: number, toFirstOpening = true) {
  const { trace } = yield* run(job, {
    from: { t: 0, states, sums: new Float64Array(FLOWS), clock: clock(), asked: 0, on: false, open: false },
    until: seconds,
    toFirstOpening,
    statesOnly: true,
  })
  const last = trace.checkpoints.at(-1)
  return {
    t: last?.t ?? seconds,
    states: last?.states ?? null,
    open: last?.open === true,
    peaks: trace.peaks,
  }
}

/** A machine is started before it cuts: the same warmth, at the asked speed. */
function atSpeed({ parts }: Job, phase: Phase, states: Float64Array): Float64Array {
  const { ratio, slip } = assemble(parts)
  const at = states.slice()
  at[STATE.speed] = phase.speed * ratio
  if (slip) at[STATE.spindle] = at[STATE.speed] / ratio
  return at
}

/** Runs a cut from the warmth of these states, up to speed, until a limit ends it or for so many seconds at most. */
export function* held(job: Job, phase: Phase, states: Float64Array, most: number): Generator<Progress, Held> {
  const long = { ...phase, seconds: most }
  const { cutoff, winding } = job.parts
  const limitC = classLimitC(winding.insulation)
  const result = (seconds: number, ends: Ends, at: Float64Array): Held => ({
    seconds,
    ends,
    states: at,
    windingC: at[STATE.windingC],
    frameC: at[STATE.frameC],
    amps: at[STATE.current],
  })
  const at = atSpeed(job, phase, states)
  const guarded = yield* through(withCutoff(job, cutoff, long), at, most)
  const cool = guarded.peaks.windingC.value <= limitC
  if (cool && guarded.states) return result(guarded.t, guarded.open ? 'opens' : null, guarded.states)
  // The class is watched as a cutoff would be that feels nothing but the winding, and at once.
  const feeler: Cutoff = {
    ...cutoff,
    fitted: 'manual reset',
    opensAt: limitC,
    windingShare: 1,
    lag: 0.05,
  }
  const from = at.slice()
  from[STATE.switchC] = from[STATE.windingC]
  const watched = yield* through(withCutoff(job, feeler, long), from, guarded.t)
  return watched.states
    ? result(watched.t, 'class', watched.states)
    : result(watched.peaks.windingC.t, 'destroyed', from)
}

/** Just under its opening temperature a switch is closed. K */
const SHORT_OF = 1e-6

/**
 * States after a phase of rest, or of running free, begun just short of an opening; null where the cutoff is open then.
 * Heat still on its way to the switch may open it in the rest; a person presses its button when it takes it.
 */
export function* rested(
  job: Job,
  phase: Phase,
  states: Float64Array,
): Generator<Progress, Float64Array | null> {
  const { cutoff } = job.parts
  const from = states.slice()
  if (cutoff.fitted !== 'none') from[STATE.switchC] = Math.min(from[STATE.switchC], cutoff.opensAt - SHORT_OF)
  if (!(phase.seconds > 0)) return from
  const reset: Cutoff = cutoff.fitted === 'none' ? cutoff : { ...cutoff, fitted: 'self-reset' }
  const after = yield* through(withCutoff(job, reset, phase), from, phase.seconds, false)
  return after.open ? null : after.states
}

/** K that are left to both limits at the hottest of a cut held for so many seconds from cold. */
export function* marginAfter(job: Job, phase: Phase, seconds: number): Generator<Progress, number> {
  const bridged: Cutoff = { ...job.parts.cutoff, fitted: 'none' }
  const one = withCutoff(job, bridged, { ...phase, seconds })
  const { peaks } = yield* through(one, atSpeed(job, phase, cold(job)), seconds)
  return marginOf(job.parts, peaks.windingC.value, peaks.switchC.value)
}
