// Work and rest: how long a cut can be held, how long to rest, what lasts for good; and the careful end of each for a card.
import { type Duty, meanTorque, type Phase } from '../duty.ts'
import { dutyOfType } from '../duty/patterns.ts'
import type { DutyType } from '../handbook/dutyTypes.ts'
import type { Job } from '../job.ts'
import { hardestPhase } from '../judge.ts'
import { nearest } from '../nearest.ts'
import { assemble } from '../plant.ts'
import { read, type Refused } from '../read.ts'
import type { Progress } from '../run.ts'
import { type Scenario, type Variant, withVariant } from '../scenario.ts'
import { allDayTorque } from '../steady/allDay.ts'
import { driveAt } from '../steady/drive.ts'
import { DAY, type RunLimits, runLimits, type SteadyLimits, steadyLimits } from './limits/alone.ts'
import { carefulJobs } from './limits/careful.ts'
import { doubted } from './limits/doubted.ts'
import { evened } from './limits/evened.ts'
import { marginAfter } from './limits/held.ts'
import {
  biggestCut,
  frameInTurn,
  longestWork,
  restOf,
  scaled,
  shortestRest,
  steadyMargins,
  type TurnLimits,
  type Turns,
  withRest,
} from './limits/turns.ts'

export interface LimitsOptions {
  readonly variant?: Variant
  /** Name of the step that is the cut; else the hardest. */
  readonly phase?: string
  /** The rest after which it is asked how long again, s; else the cycle's own, else ten minutes. */
  readonly rest?: number
  /** Another duty than the job's own, with the same cut. */
  readonly type?: DutyType
}

/** Everything for one job: as given, or at the careful end. */
export interface Limits extends SteadyLimits, RunLimits, TurnLimits {}

export interface LimitsStudy {
  readonly ok: true
  /** The cut: a step of the duty. Speed in rad/s at the spindle, mean torque in N·m. */
  readonly phase: Phase
  readonly torque: number
  readonly duty: Duty
  /** Rest in the duty's own cycle, s. */
  readonly cycleRest: number
  /** Speed the cut leaves, cold, rad/s at the spindle: less than asked by more than is accepted; null: it does. */
  readonly slower: number | null
  readonly air: number
  readonly asGiven: Limits
  /** Each at the careful end of its band: shorter, less, longer to wait. */
  readonly careful: Limits
}

const USUAL_REST = 600

/** The step that is meant, by name; or what is amiss. */
function cutOf(duty: Duty, name: string | undefined): number | Refused {
  const { phases } = duty
  const names = phases.map((phase) => phase.name)
  const index = name === undefined ? hardestPhase(phases) : names.indexOf(name)
  const refuse = (wrong: string, wouldDo: string): Refused => ({
    ok: false,
    problems: [{ path: 'duty.phases', wrong, wouldDo }],
  })
  if (name !== undefined && index < 0) {
    const guess = nearest(name, names)
    return refuse(
      `No step is called “${name}”.`,
      guess ? `Did you mean “${guess}”?` : `Known: ${names.map((each) => `“${each}”`).join(', ')}.`,
    )
  }
  if (!(phases[index].speed > 0)) return refuse('A rest has no limits of work.', 'Choose a step that runs.')
  return index
}

/** Speed left in the cut where that is less than accepted, rad/s at the spindle; null: it holds its speed; 0: it stalls. */
function slowedBy({ parts }: Job, phase: Phase): number | null {
  const plant = assemble(parts)
  const { air } = parts.heat
  const { spindle, limit } = driveAt(plant, phase.speed * plant.ratio, meanTorque(phase), air, air)
  if (limit === 'stall') return 0
  return spindle < (1 - parts.machine.acceptedSag) * phase.speed ? spindle : null
}

/** All limits of a job's step `cut`, each from the job that goes with it. */
function* limitsOf(
  jobs: { readonly steady: Job; readonly run: Job; readonly turn: Job },
  cut: number,
  rest: number,
): Generator<Progress, Limits> {
  const { steady, run, turn } = jobs
  const turns: Turns = { phases: turn.duty.phases, cut }
  const work = yield* longestWork(turn, turns)
  const runs = yield* runLimits(run, run.duty.phases[cut], rest)
  return {
    ...steadyLimits(steady, steady.duty.phases[cut]),
    ...runs,
    work,
    frameC: work === 'none' ? null : yield* frameInTurn(turn, withWork(turns, work)),
    rest: yield* shortestRest(turn, turns),
    cut: yield* biggestCut(turn, turns),
  }
}

/** The phases with the longest work, where there is one. */
const withWork = ({ phases, cut }: Turns, work: Limits['work']): readonly Phase[] =>
  phases.map((phase, n) => (n === cut && typeof work === 'number' ? { ...phase, seconds: work } : phase))

/** The phases that only just last for good: by less work, by more rest, or by a smaller cut. */
function lastingTurn(turns: Turns, { work, rest, cut }: Limits): readonly Phase[] {
  if (typeof work === 'number' || typeof rest !== 'number')
    return typeof work === 'number' || typeof cut !== 'number'
      ? withWork(turns, work)
      : turns.phases.map((phase, n) => (n === turns.cut ? scaled(phase, cut) : phase))
  return withRest(turns, rest)
}

/**
 * Studies work and rest of a scenario's job. Its limits: the cutoff does not open and the winding keeps its class.
 * Yields progress; refuses what the reader refuses and a step that is not there.
 */
export function* limitsStudy(
  scenario: Scenario,
  options: LimitsOptions = {},
): Generator<Progress, LimitsStudy | Refused> {
  const { variant, type } = options
  const whole = variant ? withVariant(scenario, variant) : scenario
  const reading = read(whole)
  if (!reading.ok) return reading
  const found = cutOf(reading.job.duty, options.phase)
  if (typeof found !== 'number') return found
  const ownCut = found
  const as = (job: Job): Job =>
    type ? { ...job, duty: dutyOfType(type, job.duty.phases[ownCut], job.duty.startC) } : job
  const job = as(reading.job)
  const { phases } = job.duty
  const cut = type ? 0 : ownCut
  const phase = phases[cut]
  const cycleRest = restOf(phases)
  const rest = options.rest ?? (cycleRest > 0 ? cycleRest : USUAL_REST)

  let part = 0
  const told = function* <T>(work: Generator<Progress, T>, share: number): Generator<Progress, T> {
    let within = 0
    for (;;) {
      const next = work.next()
      if (next.done) {
        part += share
        return next.value
      }
      within = Math.max(within, Math.min(1, next.value.t / next.value.of || 0))
      yield { t: part + share * within, of: 1 }
    }
  }

  const asGiven = yield* told(limitsOf({ steady: job, run: job, turn: job }, cut, rest), 0.25)
  // Which way each doubt pushes is asked at the limits just found, with surges evened out: that is quick and near.
  const seconds = asGiven.cold?.seconds ?? DAY
  const atLimit = ({ duty }: Job) => lastingTurn({ phases: duty.phases.map(evened), cut }, asGiven)
  const margin = steadyMargins()
  const careful = yield* told(
    carefulJobs(doubted(whole, reading, as), [
      // biome-ignore lint/correctness/useYield: a question may be answered at once.
      function* (one) {
        return allDayTorque(one.parts, phase.speed).torque - meanTorque(one.duty.phases[cut])
      },
      (one) => marginAfter(one, evened(one.duty.phases[cut]), seconds),
      (one) => margin(one, atLimit(one)),
    ]),
    0.5,
  )
  const [steady, run, turn] = careful.map((each) => each.job)
  return {
    ok: true,
    phase,
    torque: meanTorque(phase),
    duty: job.duty,
    cycleRest,
    slower: slowedBy(job, phase),
    air: job.parts.heat.air,
    asGiven,
    careful: yield* told(limitsOf({ steady, run, turn }, cut, rest), 0.25),
  }
}
