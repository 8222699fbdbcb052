// The heat numbers of a motor from its warm-up log: the two heat equations, driven by what was logged, laid through it.
import { COPPER, copperRatio } from '../handbook/materials.ts'
import { inverse, leastSquares, type Solution } from '../solve/leastSquares.ts'
import { amiss, type Refusal, tooLittle, whatNext } from './fitAdvice.ts'
import { type Drive, driveOf, type LoggedMotor, speedsIn } from './heatDrive.ts'
import { type HeatNumber, heatPath } from './heatPath.ts'
import { EIGHT_IN_TEN, type HeatDoubt, STRAYS, type Unknowns, unknownsOf } from './heatUnknowns.ts'
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
  /** Scatter of the readings about the curve, K: of the frame, and of the winding by its ohms; NaN without. */
  readonly frameMiss: number
  readonly windingMiss: number
  /** The curve at every reading: s, °C; and readings less curve, K, NaN where there is none. */
  readonly time: Float64Array
  readonly frameC: Float64Array
  readonly windingC: Float64Array
  readonly frameMisses: Float64Array
  readonly windingMisses: Float64Array
  /** Readings of the winding, °C: as logged, or by resistance with the fitted cold ohms. */
  readonly windingReadC: Float64Array
  /** Air as fitted, °C, at the start. */
  readonly airC: number
  readonly notes: readonly string[]
  /** What to record next to narrow what is kept in proportion. */
  readonly next: readonly string[]
}

/** How well a clamp, a meter and a guess at friction are known when nothing is said. */
const USUAL_DOUBT: HeatDoubt = { amps: 0.04, resistance: 0.03, friction: 0.4 }
/** Readings no thermometer beats, K: a smaller scatter is not believed. */
const FINEST = 0.1
/** Readings further off than so many standard deviations count less (Huber 1964). */
const FAR = 2.5
const PASSES = 4
/** A number is settled by the log when it knows it this much better than the usual pattern does. */
const SETTLED = 0.5

/** Channels of readings, by the column they are compared with. */
interface Channel {
  readonly of: 'frame' | 'winding' | 'ohms'
  readonly rows: readonly number[]
  /** Standard deviation, K; what neighbours share is already counted in. */
  sigma: number
  readonly weights: Float64Array
}

/**
 * Fits heat capacities and conductances; the motor's other numbers are taken as given, as doubtful as `doubt` says.
 * `held`: motor speed (rad/s) where the log has neither rpm nor volts. What the log leaves open keeps the proportions
 * of the motor's own heat numbers. Refused where not even the whole of capacity and conductance shows.
 */
export function fitWarmUp(
  log: Log,
  motor: LoggedMotor,
  doubt: Partial<HeatDoubt> = {},
  held?: number,
): Fit | Refusal {
  const speed = speedsIn(log, motor, held)
  const wrong = amiss(log, speed)
  if (wrong || !speed) return wrong ?? amiss(log, null) as Refusal
  const short = thinned(log, speed)
  const drive = driveOf(short.log, motor, short.speed)
  const unknowns = unknownsOf(short.log, drive, motor, { ...USUAL_DOUBT, ...doubt })
  const channels = channelsOf(short.log, drive)
  let solution = search(short.log, drive, unknowns, channels)
  for (let pass = 0; pass < PASSES && solution; pass++) {
    weigh(short.log, drive, unknowns, channels, solution)
    solution = descend(short.log, drive, unknowns, channels, solution.p)
  }
  if (!solution) return tooLittle(short.log, drive.running)
  return reported(log, motor, speed, { drive, unknowns, channels, solution, short: short.log })
}

/** The least a log gives: every reading that can be compared. Ohms are read at rest only. */
function channelsOf(log: Log, drive: Drive): Channel[] {
  const rows = [...drive.time.keys()]
  const of = (name: Channel['of'], column: Float64Array, sigma: number): Channel => {
    const found = rows.filter((at) => !Number.isNaN(column[at]) && (name !== 'ohms' || !drive.running[at]))
    return { of: name, rows: found, sigma, weights: new Float64Array(found.length).fill(1) }
  }
  return [of('frame', log.frameC, 1), of('winding', log.windingC, 2), of('ohms', log.ohms, 3)].filter(
    (channel) => channel.rows.length > 0,
  )
}

/** Curve at values of the unknowns, and by how much each channel's readings lie over it, K. */
function missesAt(log: Log, drive: Drive, { at }: Unknowns, p: ArrayLike<number>) {
  const { numbers, conditions, ohms20 } = at(p)
  const windingC = new Float64Array(log.rows)
  const frameC = new Float64Array(log.rows)
  heatPath(drive, numbers, conditions, windingC, frameC)
  const read = { frame: log.frameC, winding: log.windingC, ohms: byResistance(log.ohms, ohms20) }
  const curve = { frame: frameC, winding: windingC, ohms: windingC }
  return {
    windingC,
    frameC,
    windingReadC: log.windingC.map((value, row) => (Number.isNaN(value) ? read.ohms[row] : value)),
    of: ({ of, rows }: Channel) => rows.map((row) => read[of][row] - curve[of][row]),
  }
}

/** Winding temperature from ohms and the ohms at 20 °C. IEC 60034-1. °C */
const byResistance = (ohms: Float64Array, ohms20: number): Float64Array =>
  ohms.map((value) => (value / ohms20) * (COPPER.zeroC + 20) - COPPER.zeroC)

/** Least squares from p: every reading over its scatter, and every unknown over its usual give. */
function descend(
  log: Log,
  drive: Drive,
  unknowns: Unknowns,
  channels: readonly Channel[],
  p: ArrayLike<number>,
): Solution | null {
  const { all } = unknowns
  const readings = channels.reduce((sum, { rows }) => sum + rows.length, 0)
  return leastSquares(
    {
      rows: readings + all.length,
      low: all.map(({ low }) => low),
      high: all.map(({ high }) => high),
      steps: all.map(({ step }) => step),
      residuals: (q, out) => {
        const misses = missesAt(log, drive, unknowns, q)
        let row = 0
        for (const channel of channels) {
          misses.of(channel).forEach((miss, n) => {
            out[row++] = (miss * Math.sqrt(channel.weights[n])) / channel.sigma
          })
        }
        for (const [k, { usual, give }] of all.entries()) out[row++] = (q[k] - usual) / give
      },
    },
    p,
  )
}

/** Factors on capacity and conductance looked at first: one descent from the best of them. */
const LOOKS = [-1.6, -1.2, -0.8, -0.4, 0, 0.4, 0.8, 1.2, 1.6]

function search(log: Log, drive: Drive, unknowns: Unknowns, channels: readonly Channel[]): Solution | null {
  const usual = unknowns.all.map(({ usual }) => usual)
  let best = usual
  let least = Infinity
  for (const capacity of LOOKS)
    for (const conductance of LOOKS) {
      const p = [capacity, conductance, ...usual.slice(2)]
      const misses = missesAt(log, drive, unknowns, p)
      const sum = channels.reduce(
        (all, channel) => all + misses.of(channel).reduce((s, miss) => s + (miss / channel.sigma) ** 2, 0),
        0,
      )
      if (sum < least) {
        least = sum
        best = p
      }
    }
  return descend(log, drive, unknowns, channels, best)
}

/**
 * Sets each channel's scatter from its own misses, less the freedom the fit took, and lets far ones count less.
 * Misses that run alike from reading to reading are worth fewer readings: (1 + ρ)/(1 − ρ) as many for the same.
 */
function weigh(
  log: Log,
  drive: Drive,
  unknowns: Unknowns,
  channels: readonly Channel[],
  { p, normal }: Solution,
): void {
  const misses = missesAt(log, drive, unknowns, p)
  const n = unknowns.all.length
  const covariance = inverse(normal, n)
  // Freedom taken: what of each unknown the readings settle, and its usual give does not.
  const taken = unknowns.all.reduce(
    (sum, { give }, k) => sum + 1 - Math.min(1, (covariance?.[k * n + k] ?? 0) / give ** 2),
    0,
  )
  const readings = channels.reduce((sum, { rows }) => sum + rows.length, 0)
  const free = Math.max(0.2, 1 - taken / readings)
  for (const channel of channels) {
    const own = misses.of(channel)
    const median = own.map(Math.abs).toSorted((a, b) => a - b)[own.length >> 1]
    const far = FAR * Math.max(FINEST, 1.4826 * median)
    own.forEach((miss, k) => {
      channel.weights[k] = Math.min(1, far / Math.abs(miss))
    })
    const squares = own.reduce((sum, miss, k) => sum + channel.weights[k] * miss * miss, 0)
    const alike = own.slice(1).reduce((sum, miss, k) => sum + miss * own[k] * channel.weights[k], 0)
    const rho = Math.min(0.95, Math.max(0, squares > 0 ? alike / squares : 0))
    const scatter = Math.sqrt(squares / own.length / free)
    channel.sigma = Math.max(FINEST, scatter) * Math.sqrt((1 + rho) / (1 - rho))
  }
}
