// Limits of work in turns: the longest work, the shortest rest and the biggest cut in the user's cycle that last for good.
import { type Near, steadyCycle } from '../../cycles/steady.ts'
import type { Phase } from '../../duty.ts'
import { restFor } from '../../duty/patterns.ts'
import type { Job } from '../../job.ts'
import type { Cut } from '../../parts/machine.ts'
import type { Progress } from '../../run.ts'
import { bracket, crossing, type Spare } from './crossing.ts'
import { evened } from './evened.ts'
import { marginOf } from './held.ts'

/** Found in seconds (or as a factor); every one will do; or none does. */
export type Found = number | 'any' | 'none'

export interface TurnLimits {
  /** Longest work in the user's cycle, s. */
  readonly work: Found
  /** Shortest rest, all rests of the cycle together, s; 'any': it needs none. */
  readonly rest: Found
  /** Biggest cut in the cycle, as a factor on the one asked, heat alone; 'any': eight times as much will do. */
  readonly cut: Found
  /** Hottest frame in the turn with the longest work, °C; null where there is no such turn. */
  readonly frameC: number | null
}

/** A duty whose phases are work (one of them) and the others. */
export interface Turns {
  readonly phases: readonly Phase[]
  /** Which is the cut. */
  readonly cut: number
}

const SECOND = 1
const HOUR = 3600
/** Shorter work is none, s; longer is all day; a longer rest is a night's. */
const LEAST_WORK = 5 * SECOND
const MOST_WORK = 8 * HOUR
const MOST_REST = 24 * HOUR
const FIRST_REST = 30 * SECOND
const MOST_CUT = 8
const LEAST_CUT = 0.02
/** How near a limit is found, as a share. */
const CLOSE = 0.0005

/** Asks for the K left to both limits in the steady turn of a duty; -Infinity where there is none. Keeps what it learns. */
export function steadyMargins() {
  let near: Near | undefined
  return function* (job: Job, phases: readonly Phase[]): Generator<Progress, number> {
    const one: Job = { ...job, duty: { ...job.duty, phases } }
    // From a like turn first; afresh where that leads nowhere.
    const found = (near && (yield* steadyCycle(one, near))) ?? (yield* steadyCycle(one))
    if (!found) return Number.NEGATIVE_INFINITY
    near = found.near
    return marginOf(job.parts, found.peaks[0], found.peaks[2])
  }
}

/** A minute of holding a cut, or a surge's own time, stands for holding it for good. */
export const holdsForGood = (job: Job, phase: Phase): Generator<Progress, number> =>
  steadyMargins()(job, [{ ...phase, seconds: phase.surge?.every ?? 60 }])

const withCut = (phases: readonly Phase[], index: number, change: Partial<Phase>): readonly Phase[] =>
  phases.map((phase, n) => (n === index ? { ...phase, ...change } : phase))

/** A cut some times as big, surges too. */
export function scaled(phase: Phase, factor: number): Phase {
  const { cut, surge } = phase
  const bigger: Cut =
    cut.kind === 'torque'
      ? { ...cut, torque: cut.torque * factor }
      : cut.kind === 'power'
        ? { ...cut, power: cut.power * factor }
        : { ...cut, coefficient: cut.coefficient * factor }
  return { ...phase, cut: bigger, surge: surge && { ...surge, torque: surge.torque * factor } }
}

/** Seconds of standing still in a turn. */
export const restOf = (phases: readonly Phase[]): number =>
  phases.reduce((sum, { speed, seconds }) => sum + (speed > 0 ? 0 : seconds), 0)

/** The phases with their rests shared out anew to this sum, s; one after the cut where there was none. */
export function withRest({ phases, cut }: Turns, seconds: number): readonly Phase[] {
  const now = restOf(phases)
  if (now > 0)
    return phases.map((phase) =>
      phase.speed > 0 ? phase : { ...phase, seconds: (phase.seconds * seconds) / now },
    )
  return [...phases.slice(0, cut + 1), restFor(seconds), ...phases.slice(cut + 1)]
}

/** How near a first guess is looked about, as a factor. */
const ABOUT = 1.1
const STRIDE = 2

/** Finds the x on a scale of logarithms; more of it is hotter. */
function* most(
  spare: Spare,
  first: number,
  least: number,
  end: number,
  factor = STRIDE,
): Generator<Progress, Found> {
  const found = yield* bracket(spare, first, least, end, factor)
  if (found === 'always') return 'any'
  if (found === 'never') return 'none'
  const { good, bad, goodLeft, badLeft } = found
  const x = yield* crossing(
    (log) => spare(Math.exp(log)),
    { x: Math.log(good), left: goodLeft },
    { x: Math.log(bad), left: badLeft },
    CLOSE,
  )
  return Math.exp(x)
}

/** The largest x whose phases last for good, between two ends. Surges are evened out for a first guess: that is quick. */
function* lasting(
  job: Job,
  phasesAt: (x: number) => readonly Phase[],
  first: number,
  least: number,
  end: number,
): Generator<Progress, Found> {
  const asked = (even: (phase: Phase) => Phase): Spare => {
    const margin = steadyMargins()
    return (x) => margin(job, phasesAt(x).map(even))
  }
  const surges = phasesAt(first).some(({ surge }) => surge !== null)
  const guess = surges ? yield* most(asked(evened), first, least, end) : 'none'
  return typeof guess === 'number'
    ? yield* most(
        asked((phase) => phase),
        guess,
        least,
        end,
        ABOUT,
      )
    : yield* most(
        asked((phase) => phase),
        first,
        least,
        end,
      )
}

/** Longest work in the turn that never opens the cutoff and keeps the class; `end`: no longer is asked, s. */
export function longestWork(job: Job, { phases, cut }: Turns, end = MOST_WORK): Generator<Progress, Found> {
  const at = (seconds: number) => withCut(phases, cut, { seconds })
  return lasting(job, at, phases[cut].seconds, LEAST_WORK, end)
}

/** Shortest rest in the turn, all its rests together. */
export function* shortestRest(job: Job, turns: Turns): Generator<Progress, Found> {
  if ((yield* steadyMargins()(job, withRest(turns, 0))) >= 0) return 'any'
  // More rest is cooler: so asked by how short it is.
  const at = (shortness: number) => withRest(turns, 1 / shortness)
  const now = Math.max(FIRST_REST, restOf(turns.phases))
  const found = yield* lasting(job, at, 1 / now, 1 / MOST_REST, 1)
  return typeof found === 'number' ? 1 / found : found === 'any' ? SECOND : 'none'
}

/** Biggest cut in the turn, as a factor on the one asked; what speed is lost is not looked at. */
export function biggestCut(job: Job, { phases, cut }: Turns): Generator<Progress, Found> {
  const at = (factor: number) => withCut(phases, cut, scaled(phases[cut], factor))
  return lasting(job, at, 1, LEAST_CUT, MOST_CUT)
}

/** Hottest frame in the steady turn, °C: what a hand or a thermometer finds; null where nothing settles. */
export function* frameInTurn(job: Job, phases: readonly Phase[]): Generator<Progress, number | null> {
  const found = yield* steadyCycle({ ...job, duty: { ...job.duty, phases } })
  return found ? found.peaks[1] : null
}
