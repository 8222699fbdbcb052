// The heat numbers of a motor from its warm-up log: the two heat equations, driven by what was logged, laid through it.
import { amiss, type Refusal, tooLittle, unlike, whatNext } from './fitAdvice.ts'
import { agreement } from './fitAgreement.ts'
import { notesOn } from './fitNotes.ts'
import { type Fitted, spreads, wholeKnown } from './fitSpread.ts'
import { driveOf, type LoggedMotor, speedsIn } from './heatDrive.ts'
import type { HeatNumber } from './heatPath.ts'
import { missesAt, type Question, search } from './heatSearch.ts'
import { carried, type HeatDoubt, USUAL_DOUBT, unknownsOf } from './heatUnknowns.ts'
import type { Log } from './log.ts'
import { thinned } from './logThin.ts'

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
  const odd = unlike(found && agreement(question, found))
  if (!found || odd) return odd ?? tooLittle(log)
  if (!wholeKnown(question, found.solution)) return tooLittle(log)
  const numbers = spreads(question, found.solution)
  const open = question.unknowns.active.filter((name) => !numbers[name]?.settled)
  const whole = short.log === log ? question : ask(log, speed)
  return {
    ok: true,
    numbers,
    ...curve(whole, carried(question.unknowns, found.solution.p, whole.unknowns)),
    notes: notesOn(question, found, motor.heat.air),
    next: whatNext(log, { open, speed, ohms: believed.resistance, cooling: motor.heat.cooling }),
  }
}

/** The curve and the misses at every reading. */
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
