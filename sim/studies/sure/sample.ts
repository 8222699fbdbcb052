// One sample: the readings a little off, the job they make, and what becomes of it up to the first opening.
import { cycles } from '../../cycles.ts'
import { cycleSeconds } from '../../duty.ts'
import { doubtsOf } from '../../identify/doubts.ts'
import { USUAL } from '../../identify/assume.ts'
import { allGiven } from '../../fill.ts'
import { classLimitC } from '../../handbook/insulation.ts'
import type { Job } from '../../job.ts'
import { type Figures, judge } from '../../judge.ts'
import { judgeCycles } from '../../judgeCycles.ts'
import type { Accepted } from '../../read.ts'
import { type Progress, run } from '../../run.ts'
import type { Scenario } from '../../scenario.ts'
import type { Effort } from '../../trace.ts'
import { bunched, holds } from './bunched.ts'
import type { Doubt } from './doubt.ts'
import { type Draft, made } from './draft.ts'
import { cutDoubts, inputDoubts, tableDoubts } from './inputs.ts'
import { measuresOf } from './measures.ts'
import { EIGHT_IN_TEN, normalAt } from './normal.ts'

/** What becomes of a job: it lasts, or the first of what stops it. */
export type Fate = 'lasts' | 'opens' | 'stalls' | 'hot' | 'burns' | 'unfinished'

/** One way things may be. Times in s, temperatures in °C. */
export type SurePoint =
  | {
      readonly ok: true
      readonly fate: Fate
      /** When it fails; null: it lasts. */
      readonly t: number | null
      /** Hottest winding and switch, up to the first opening. */
      readonly windingC: number
      readonly switchC: number
      /** What each measurement would tell, by name. */
      readonly tells: Readonly<Record<string, readonly number[]>>
      readonly effort: number
    }
  /** Readings so far off that they make no motor. */
  | { readonly ok: false }

/** A job with everything that is doubtful about it, those that matter most first. */
export interface Doubtful {
  readonly draft: Draft
  readonly doubts: readonly Doubt[]
}

/** A doubt of the motor's readings, as one of the job's. */
const ofReadings = (motor: Accepted['motor']): Doubt[] =>
  doubtsOf(motor).map(({ name, at }) => ({
    name,
    at(draft, where) {
      const { plate, bench } = draft.fields
      const { readings, assume } = at({ readings: { ...motor, plate, bench }, assume: draft.assume }, where)
      const changed = readings.plate !== plate || readings.bench !== bench
      return {
        ...draft,
        assume,
        fields: changed ? { ...draft.fields, plate: readings.plate, bench: readings.bench } : draft.fields,
      }
    },
  }))

const fit: Doubt = {
  name: 'rating',
  at: (draft, where) => ({ ...draft, scale: Math.max(-1, Math.min(1, where)) }),
}

/** Everything doubtful about a job. Where every number of the motor is given, plate and bench tell nothing. */
export const doubtful = (scenario: Scenario, { fields, cuts, motor }: Accepted): Doubtful => ({
  draft: { fields, cuts, assume: USUAL, scale: 0 },
  doubts: [
    ...cutDoubts(cuts),
    ...inputDoubts(scenario, fields),
    ...tableDoubts(fields),
    ...(allGiven(motor) ? [] : [...ofReadings(motor), fit]),
  ],
})

/** Beyond so many half-widths of its band nothing is drawn: one draw in a hundred lies out there. */
const FARTHEST = 2

/** The draft of a sample; `draw`: a number in (0, 1) for each doubt. */
export const drafted = ({ draft, doubts }: Doubtful, draw: (dimension: number) => number): Draft =>
  doubts.reduce((sofar, doubt, dimension) => {
    const where = normalAt(draw(dimension)) / EIGHT_IN_TEN
    return doubt.at(sofar, Math.max(-FARTHEST, Math.min(FARTHEST, where)))
  }, draft)

/** The first of what stops a job, as the answer tells it. */
function fateOf({ ending, firstOpening, stalled, classPassed }: Figures): {
  fate: Fate
  t: number | null
} {
  if (ending.kind === 'destroyed') return { fate: 'burns', t: ending.t }
  if (ending.kind !== 'finished') return { fate: 'unfinished', t: ending.t }
  if (firstOpening) return { fate: 'opens', t: firstOpening.t }
  if (stalled !== null) return { fate: 'stalls', t: stalled }
  return classPassed === null ? { fate: 'lasts', t: null } : { fate: 'hot', t: classPassed }
}

/** A duty that repeats no more often is run directly. */
const OFTEN = 10
/** How far from its place a turn may be run, K: far under the doubt. */
const LOOSE = 0.5

/** What is asked of a run. */
type Came = Pick<Extract<SurePoint, { ok: true }>, 'fate' | 't' | 'windingC' | 'switchC' | 'effort'>

const repeats = ({ duty }: Job): boolean => {
  const times = duty.seconds / cycleSeconds(duty)
  return times > OFTEN && times < Infinity
}

/** What becomes of a job that cannot stall, from its peaks alone; null where that does not tell when. */
function* bareFate(job: Job): Generator<Progress, Came | null> {
  const { peaks, marks, ending, effort } = repeats(job)
    ? yield* byTurns(job)
    : (yield* run(job, { toFirstOpening: true, statesOnly: true })).trace
  const opening = marks.find(({ kind }) => kind === 'opens')
  const windingC = peaks.windingC.value
  const came = { windingC, switchC: peaks.switchC.value, effort: effort.rates }
  if (ending.kind !== 'finished')
    return { ...came, fate: ending.kind === 'destroyed' ? 'burns' : 'unfinished', t: ending.t }
  if (opening) return { ...came, fate: 'opens', t: opening.t }
  return windingC > classLimitC(job.parts.winding.insulation) ? null : { ...came, fate: 'lasts', t: null }
}

function* byTurns(job: Job) {
  const { switching, ...found } = yield* cycles(job, { tolerance: LOOSE, toFirstOpening: true, bare: true })
  return { ...found, marks: switching }
}

/** The same from every row of the run. */
function* wholeFate(job: Job): Generator<Progress, Came> {
  const came = (figures: Figures, { rates }: Effort): Came => ({
    ...fateOf(figures),
    windingC: figures.hottestWindingC.value,
    switchC: figures.hottestSwitchC.value,
    effort: rates,
  })
  if (repeats(job)) {
    const made = yield* cycles(job, { tolerance: LOOSE, toFirstOpening: true })
    return came(judgeCycles(job, made), made.effort)
  }
  const { trace } = yield* run(job, { toFirstOpening: true })
  return came(judge(job, trace), trace.effort)
}

/** What becomes of a draft. */
export function* sampled(draft: Draft): Generator<Progress, SurePoint> {
  const whole = made(draft)
  if (!whole) return { ok: false }
  const job: Job = { ...bunched(whole.job), accuracy: 'rough' }
  const came =
    (job.duty.phases.every((phase) => holds(job, phase)) && (yield* bareFate(job))) || (yield* wholeFate(job))
  const tells = measuresOf(whole.job).flatMap(({ name, tells }) => {
    const told = tells(whole)
    return told ? [[name, told] as const] : []
  })
  return {
    ok: true,
    ...came,
    tells: Object.fromEntries(tells),
  }
}
