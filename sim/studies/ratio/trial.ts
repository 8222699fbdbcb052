// One drive tried on the user's own duty: what it comes to, and everything that speaks against it.
import { figuresOf, openingOf } from '../../carryOut.ts'
import { meanTorque } from '../../duty.ts'
import type { Job } from '../../job.ts'
import { hardestPhase } from '../../judge.ts'
import { ratio } from '../../parts/belt.ts'
import { idleTorque } from '../../parts/machine.ts'
import type { Progress } from '../../run.ts'
import { allDayTorque } from '../../steady/allDay.ts'
import { lowestAllDay } from '../../steady/lowest.ts'
import { topSpeed } from '../../steady/operating.ts'
import { type BeltFault, beltFaults, type BuiltStage, builtStages } from '../../drive/limits.ts'

/** What keeps a ratio from doing the job, worst first. */
const FAULTS = ['unfinished', 'destroyed', 'opens', 'hot', 'stalls', 'slips', 'reach', 'sags'] as const
export type Fault = (typeof FAULTS)[number]

export interface Trial {
  readonly ratio: number
  /** What the duty holds against it; and what belt and pulleys do. */
  readonly faults: readonly Fault[]
  readonly beltFaults: readonly BeltFault[]
  readonly stages: readonly BuiltStage[]
  /** Spindle speed with the knob fully up, idling, rad/s. */
  readonly topSpeed: number
  /** Lowest spindle speed at which the cut's mean torque can be held all day, rad/s; 0: at any, null: at none. */
  readonly lowestAllDay: number | null
  /** All-day torque at the cut's speed, N·m at the spindle. */
  readonly allDay: number
  /** Worst share of the asked speed that is lost, and the spindle speed then, rad/s. Null: never settles. */
  readonly sag: number | null
  readonly slowest: number | null
  /** Hottest over the whole duty had no cutoff stopped it, °C. */
  readonly hottestWindingC: number
  readonly hottestSwitchC: number
  /** When the cutoff first opens, s. */
  readonly firstOpening: number | null
  readonly peakAmps: number
}

/** What a duty asks: its fastest spindle speed, the hardest cut's speed, rad/s, and mean torque, N·m. */
export interface Asked {
  readonly fastest: number
  readonly speed: number
  readonly torque: number
}

export function askedOf({ duty: { phases } }: Job): Asked {
  const work = phases[hardestPhase(phases)]
  return {
    fastest: Math.max(...phases.map(({ speed }) => speed)),
    speed: work.speed,
    torque: meanTorque(work),
  }
}

/** So near to opening the cutoff is asked itself, K. */
const NEAR = 0.3

/** The job without its cutoff: what it would come to if nothing stopped it. */
const unguarded = (job: Job): Job => ({
  ...job,
  parts: { ...job.parts, cutoff: { ...job.parts.cutoff, fitted: 'none' } },
})

/** Tries a job; by turns where its duty repeats often, unless every turn is to be run. */
export function* trial(job: Job, direct = false): Generator<Progress, Trial> {
  const { parts } = job
  const asked = askedOf(job)
  const n = ratio(parts.belt)
  const figures = yield* figuresOf(unguarded(job), direct)
  const { ending, hottestSwitchC, hottestWindingC, slowest } = figures
  const firstOpening =
    parts.cutoff.fitted !== 'none' && hottestSwitchC.value > parts.cutoff.opensAt - NEAR
      ? yield* openingOf(job, direct)
      : null
  const top = topSpeed(parts)
  const found: Readonly<Record<Fault, boolean>> = {
    unfinished: ending.kind !== 'finished' && ending.kind !== 'destroyed',
    destroyed: ending.kind === 'destroyed' && firstOpening === null,
    opens: firstOpening !== null,
    hot: figures.classPassed !== null && (firstOpening === null || figures.classPassed < firstOpening),
    stalls: figures.stalled !== null,
    slips: figures.slipSeconds > 0,
    sags: figures.speedMissed,
    reach: top < asked.fastest,
  }
  return {
    ratio: n,
    faults: FAULTS.filter((fault) => found[fault]),
    beltFaults: beltFaults(
      parts.belt,
      asked.fastest * n,
      asked.torque + idleTorque(parts.machine, asked.speed),
    ),
    stages: builtStages(parts.belt, asked.fastest * n),
    topSpeed: top,
    lowestAllDay: lowestAllDay(parts, asked.torque, top),
    allDay: allDayTorque(parts, asked.speed).torque,
    sag: slowest?.sag ?? null,
    slowest: slowest?.value ?? null,
    hottestWindingC: hottestWindingC.value,
    hottestSwitchC: hottestSwitchC.value,
    firstOpening,
    peakAmps: figures.peakAmps.value,
  }
}
