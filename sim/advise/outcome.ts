// What a job comes to, as advice compares it: faults, heat, amps and speed, in few enough numbers to keep by the dozen.
import { figuresOf } from '../carryOut.ts'
import { CAST_RIM, flywheelRim } from '../drive/runaway.ts'
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import { ratio } from '../parts/belt.ts'
import type { Accepted } from '../read.ts'
import type { Progress } from '../run.ts'
import { topSpeed } from '../steady/operating.ts'

/** What keeps a job from being done, worst first. */
export const FAULTS = [
  'destroyed',
  'rim',
  'opens',
  'hot',
  'stalls',
  'slips',
  'reach',
  'limited',
  'sags',
  'unfinished',
] as const
export type Fault = (typeof FAULTS)[number]

export interface Outcome {
  readonly faults: readonly Fault[]
  /** When the cutoff first opens, s, and how long it stays open; null: never, or for good. */
  readonly firstOpening: number | null
  readonly openFor: number | null
  readonly timesOpen: number
  readonly hottestWindingC: number
  readonly hottestFrameC: number
  readonly hottestSwitchC: number
  readonly classPassed: number | null
  /** Share of the asked running time that is delivered. */
  readonly delivered: number
  /** Mean amps in the hardest step, greatest, and at the outlet. */
  readonly workAmps: number
  readonly peakAmps: number
  readonly outletAmps: number
  readonly slowest: number | null
  readonly sag: number | null
  readonly stalled: number | null
  readonly limitedInCut: number
  readonly slipSeconds: number
  /** Copper heat and work done over the job, J. */
  readonly copper: number
  readonly work: number
  readonly taken: number
  /** Motor turns for one of the spindle; spindle speed with the knob fully up, idling, rad/s. */
  readonly ratio: number
  readonly topSpeed: number
  /** A cutoff is there and wired. */
  readonly guarded: boolean
}

/** So long at the current limit in the cut is being limited, s; and so long slipping is slip. */
const LIMITED = 1
const SLIPS = 0.2
/** A knob fully up that gets this near is there. */
const THERE = 0.98

/** A run's figures as an outcome; the diameter is the flywheel's, m, where it is known. */
export function outcomeFrom(job: Job, figures: Figures, flywheelDiameter: number | undefined): Outcome {
  const { ending, firstOpening, classPassed, stalled, speedMissed, limitedInCut, slipSeconds } = figures
  const fastest = Math.max(...job.duty.phases.map(({ speed }) => speed))
  const top = topSpeed(job.parts)
  const found: Readonly<Record<Fault, boolean>> = {
    destroyed: ending.kind === 'destroyed',
    rim: (flywheelRim(job.parts, fastest * ratio(job.parts.belt), flywheelDiameter) ?? 0) > CAST_RIM,
    opens: firstOpening !== null,
    hot: classPassed !== null,
    stalls: stalled !== null,
    slips: slipSeconds >= SLIPS,
    reach: top < THERE * fastest,
    limited: limitedInCut >= LIMITED,
    sags: speedMissed,
    unfinished: ending.kind !== 'finished' && ending.kind !== 'destroyed',
  }
  return {
    faults: FAULTS.filter((fault) => found[fault]),
    firstOpening: firstOpening?.t ?? null,
    openFor: figures.firstOpenFor,
    timesOpen: figures.timesOpen,
    hottestWindingC: figures.hottestWindingC.value,
    hottestFrameC: figures.hottestFrameC.value,
    hottestSwitchC: figures.hottestSwitchC.value,
    classPassed,
    delivered: figures.delivered,
    workAmps: figures.workAmps,
    peakAmps: figures.peakAmps.value,
    outletAmps: figures.outletAmps,
    slowest: figures.slowest?.value ?? null,
    sag: figures.slowest?.sag ?? null,
    stalled,
    limitedInCut,
    slipSeconds,
    copper: figures.energy.copper,
    work: figures.energy.work,
    taken: figures.energy.taken,
    ratio: ratio(job.parts.belt),
    topSpeed: top,
    guarded: job.parts.cutoff.fitted !== 'none',
  }
}

/** Runs a job as read, by turns where its duty repeats often. */
export function* outcomeOf({ job, motor }: Accepted): Generator<Progress, Outcome> {
  return outcomeFrom(job, yield* figuresOf(job), motor.bench.flywheelDiameter)
}
