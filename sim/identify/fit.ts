// The heat numbers of a motor from its warm-up log: the two heat equations, driven by what was logged, laid through it.
import { inverse, type Solution } from '../solve/leastSquares.ts'
import { amiss, type Refusal, tooLittle, whatNext } from './fitAdvice.ts'
import { notesOn } from './fitNotes.ts'
import { driveOf, type LoggedMotor, speedsIn } from './heatDrive.ts'
import type { HeatNumber } from './heatPath.ts'
import { missesAt, type Question, search } from './heatSearch.ts'
import { EIGHT_IN_TEN, type HeatDoubt, STRAYS, unknownsOf } from './heatUnknowns.ts'
import type { Log } from './log.ts'
import { thinned } from './logThin.ts'

/** A fitted number, SI; it lies between low and high 8 times in 10. */
export interface Fitted {
  readonly value: number
  readonly low: number
  readonly high: number
  /** True where the log settles it; false where it keeps the usual proportion to the others. */
  readonly settled: boolean
}

export interface Fit {
  readonly ok: true
  /** The numbers that show in this log. */
  readonly numbers: Readonly<Partial<Record<HeatNumber, Fitted>>>
  /** The curve at every reading: s, °C. */
  readonly time: Float64Array
  readonly frameC: Float64Array
  readonly windingC: Float64Array
  /** Readings of the winding, °C: as logged, or by resistance with the cold ohms as fitted; NaN without. */
  readonly windingReadC: Float64Array
  /** Readings less curve, K, NaN without; and their root mean square, null without any. */
  readonly frameMisses: Float64Array
  readonly windingMisses: Float64Array
  readonly frameMiss: number | null
  readonly windingMiss: number | null
  readonly notes: readonly string[]
  /** What to record next. */
  readonly next: readonly string[]
}

/** How well a clamp, a meter and a guess at friction are known when nothing is said (common practice, no source). */
const USUAL_DOUBT: HeatDoubt = { amps: 0.04, resistance: 0.03, friction: 0.4 }
/** The log settles a number when it knows it this much better than the usual pattern does, or this well at all. */
const SETTLED = { share: 0.5, sd: 0.06 }
/** The whole of capacity and conductance must be known this well, proportions given; as a logarithm. */
const WHOLE_KNOWN = 0.25

/**
 * Fits heat capacities and conductances; the motor's other numbers are taken as given, as doubtful as `doubt` says.
 * `held`: motor speed (rad/s) where the log has neither rpm nor volts. What the log leaves open keeps the proportions
 * of the motor's own heat numbers. Refused where not even the whole of capacity and conductance shows.
 * PHYSICS.md §1 and §3; spreads from the covariance of the least squares, usual strays counted in.
 */
export function fitWarmUp(
  log: Log,
  motor: LoggedMotor,
  doubt: Partial<HeatDoubt> = {},
  held?: number,
): Fit | Refusal {
  const speed = speedsIn(log, motor, held)
  const wrong = amiss(log, speed)
  if (wrong || !speed) return wrong ?? tooLittle(log)
  const believed = { ...USUAL_DOUBT, ...doubt }
  const ask = (asked: Log, speeds: Float64Array): Question => {
    const drive = driveOf(asked, motor, speeds)
    return { log: asked, drive, unknowns: unknownsOf(asked, drive, motor, believed) }
  }
  const short = thinned(log, speed)
  const question = ask(short.log, short.speed)
  const found = search(question)
  if (!found || !wholeKnown(question, found.solution)) return tooLittle(log)
  const numbers = spreads(question, found.solution)
  const open = question.unknowns.active.filter((name) => !numbers[name]?.settled)
  const whole = short.log === log ? question : ask(log, speed)
  return {
    ok: true,
    numbers,
    ...curve(whole, found.solution.p),
    notes: notesOn(question, found, motor.heat.air),
    next: whatNext(log, open, speed, believed.resistance),
  }
}

/** The curve and the misses at every reading. A thinned log's moments of switching do not carry over to the whole. */
function curve(question: Question, p: ArrayLike<number>) {
  const { log } = question
  const { windingC, frameC, windingReadC } = missesAt(question, p)
  const frameMisses = log.frameC.map((value, row) => value - frameC[row])
  const windingMisses = windingReadC.map((value, row) => value - windingC[row])
  return {
    time: log.time,
    windingC,
    frameC,
    windingReadC,
    frameMisses,
    windingMisses,
    frameMiss: rms(frameMisses),
    windingMiss: rms(windingMisses),
  }
}

function rms(misses: Float64Array): number | null {
  const known = misses.filter((miss) => !Number.isNaN(miss))
  return known.length === 0
    ? null
    : Math.sqrt(known.reduce((sum, miss) => sum + miss * miss, 0) / known.length)
}

/** Covariance of the unknowns a test keeps, the others held where they are. Unknowns that are held read as 0. */
function covariance({ unknowns }: Question, { normal }: Solution, keep: (name: string) => boolean) {
  const n = unknowns.all.length
  const free = [...unknowns.all.keys()].filter((k) => keep(unknowns.all[k].name))
  const inner = inverse(
    Float64Array.from(free.flatMap((k) => free.map((l) => normal[k * n + l]))),
    free.length,
  )
  /** Standard deviation of a number with these derivatives. */
  return (slopes: ArrayLike<number>): number => {
    if (!inner) return Infinity
    let sum = 0
    free.forEach((k, row) => {
      free.forEach((l, column) => {
        sum += slopes[k] * slopes[l] * inner[row * free.length + column]
      })
    })
    return Math.sqrt(sum)
  }
}

const heatKnown = (name: string): boolean => !['amps', 'resistance', 'friction'].includes(name)

/** True where the log shows how much heat is stored and given off in all, proportions and heat taken as known. */
function wholeKnown(question: Question, solution: Solution): boolean {
  const strays: readonly string[] = Object.keys(STRAYS)
  const sd = covariance(question, solution, (name) => heatKnown(name) && !strays.includes(name))
  return ['capacity', 'conductance'].every(
    (whole) => sd(question.unknowns.all.map(({ name }) => (name === whole ? 1 : 0))) < WHOLE_KNOWN,
  )
}

/** Every active number with its band, and whether the log settled it. */
function spreads(question: Question, solution: Solution): Partial<Record<HeatNumber, Fitted>> {
  const { unknowns } = question
  const { p } = solution
  const full = covariance(question, solution, () => true)
  const given = covariance(question, solution, heatKnown)
  const { numbers } = unknowns.at(p)
  const beside = unknowns.all.map(({ step }, k) => unknowns.at(p.with(k, p[k] + step)).numbers)
  const found: Partial<Record<HeatNumber, Fitted>> = {}
  for (const name of unknowns.active) {
    const value = numbers[name]
    const slopes = beside.map((moved, k) => Math.log(moved[name] / value) / unknowns.all[k].step)
    const spread = Math.exp(EIGHT_IN_TEN * full(slopes))
    // How far the usual pattern leaves it open once the whole is known.
    const stray = unknowns.all.reduce(
      (sum, unknown, k) => (unknown.name in STRAYS ? sum + (slopes[k] * unknown.give) ** 2 : sum),
      0,
    )
    found[name] = {
      value,
      low: value / spread,
      high: value * spread,
      settled: given(slopes) < Math.max(SETTLED.share * Math.sqrt(stray), SETTLED.sd),
    }
  }
  return found
}
