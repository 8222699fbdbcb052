// What a warm-up log lacks: why it cannot be fitted, and what to record next.
import type { Heat } from '../parts/heat.ts'
import type { Agreement } from './fitAgreement.ts'
import { runningIn } from './heatDrive.ts'
import type { HeatNumber } from './heatPath.ts'
import type { Log } from './log.ts'

export interface Refusal {
  readonly ok: false
  readonly wrong: string
  readonly wouldDo: string
}

/** Rise under which heat does not stand out from scatter, and what would do well. K */
const LEAST_RISE = 6
const GOOD_RISE = 15
/** Misses of this share of the rise are no scatter. */
const ASTRAY = 0.15
/** A cooling-off counts from so many readings and seconds. */
const COOLING = { readings: 5, seconds: 300 }
/** Speeds must differ so much to part the fan's air from still air. */
const APART = 1.5
/** Ohms known worse than this widen everything. Share */
const POOR_OHMS = 0.1

const COOL_OFF = 'Log the cooling-off too: 20 minutes after switching off, still at a reading a minute.'

const refuse = (wrong: string, wouldDo: string): Refusal => ({ ok: false, wrong, wouldDo })
const known = (column: Float64Array): number[] => [...column].filter((value) => !Number.isNaN(value))
const minutes = (seconds: number): string => `${Math.round(seconds / 60)} min`

/** Highest less lowest mean of three neighbours: one slip of the pen is no rise. */
function rise(values: readonly number[]): number {
  let [low, high] = [Infinity, -Infinity]
  for (let n = 1; n + 1 < values.length; n++) {
    const mean = (values[n - 1] + values[n] + values[n + 1]) / 3
    low = Math.min(low, mean)
    high = Math.max(high, mean)
  }
  return Math.max(0, high - low)
}

/** Why a log cannot be fitted at all; null where it can be tried. `speed`: as worked out, null where it cannot be. */
export function amiss(log: Log, speed: Float64Array | null): Refusal | null {
  const amps = known(log.amps)
  if (amps.length === 0)
    return refuse(
      'The log has no amps, and without them nobody knows the heat that went in.',
      'Record amps: clamp round one motor lead, meter on DC, at every reading.',
    )
  if (!amps.some((value) => value > 0))
    return refuse('The motor never ran: all amps are 0.', 'Log the warm-up as well as the cooling-off.')
  const frame = known(log.frameC)
  const winding = known(log.windingC)
  const ohms = known(log.ohms)
  if (frame.length + winding.length + ohms.length < COOLING.readings + 1)
    return refuse(
      `There are ${frame.length + winding.length + ohms.length} readings of temperature or ohms.`,
      'A reading a minute over the warm-up and the cooling-off is best.',
    )
  if (!speed)
    return refuse(
      'The log has neither rpm nor volts, and friction and fan go by the speed.',
      'Record motor rpm, or say at what rpm it was held.',
    )
  const least = ohms.reduce((low, value) => Math.min(low, value), Infinity)
  // Copper gains 0.4 % a kelvin.
  const warmed = Math.max(rise(frame), rise(winding), rise(ohms.map((value) => (255 * value) / least)))
  if (warmed < LEAST_RISE)
    return refuse(
      `It warmed by only ${warmed < 0.95 ? warmed.toFixed(1) : Math.round(warmed)} K.`,
      `Heat must stand out from scatter: ${GOOD_RISE} K or more. Load it harder, or run it longer.`,
    )
  return null
}

/** Readings at rest at the end, and the seconds they span. */
function coolingIn(log: Log): boolean {
  const running = runningIn(log)
  const last = running.lastIndexOf(1)
  return log.rows - 1 - last >= COOLING.readings && log.time[log.rows - 1] - log.time[last] >= COOLING.seconds
}

/** Why the curve laid through a log is not believed; null where it is. Null for the agreement: there is none at all. */
export function unlike(agreement: Agreement | null): Refusal | null {
  const check =
    'Check that amps were those of one motor lead, on DC, that rpm were the motor’s, and that the job is this motor’s.'
  if (!agreement?.sane)
    return refuse(
      'The heat the amps make and the warmth that came of it lie more than ten times apart.',
      check,
    )
  const { miss, rise } = agreement
  return miss > ASTRAY * rise
    ? refuse(
        `The temperatures do not follow the heat the amps make: they miss it by ${Math.round(miss)} K in ${Math.round(rise)} K.`,
        check,
      )
    : null
}

/** Why a log that could be tried does not show the whole of capacity and conductance. */
export function tooLittle(log: Log): Refusal {
  const ran = log.time[runningIn(log).lastIndexOf(1)]
  return coolingIn(log)
    ? refuse(
        `Its ${minutes(log.time[log.rows - 1])} do not part the heat it stores from the heat it gives off.`,
        'Run it until it gains less than 1 K in 5 minutes, then log 20 minutes of cooling-off.',
      )
    : refuse(
        `It was still warming when the log ended at ${minutes(ran)}: what it gives off does not show yet.`,
        `Run it until it gains less than 1 K in 5 minutes. ${COOL_OFF}`,
      )
}

/** What the advice goes by. */
export interface Known {
  /** Numbers the log left in their usual proportion. */
  readonly open: readonly HeatNumber[]
  /** Motor speed at every reading, rad/s. */
  readonly speed: Float64Array
  /** How well the job knows the winding's ohms: 8-in-10 half-width, as a share. */
  readonly ohms: number
  readonly cooling: Heat['cooling']
}

/** What to record next. */
export function whatNext(log: Log, { open, speed, ohms, cooling }: Known): string[] {
  const next: string[] = []
  const cooled = coolingIn(log)
  const ohmsRead = !log.ohms.every(Number.isNaN)
  if (open.length > 0 && !cooled) next.push(COOL_OFF)
  if ((open.includes('windingCapacity') || open.includes('windingToFrame')) && cooled && !ohmsRead)
    next.push('Read the winding’s ohms cold, and every minute or two after switching off.')
  const spinning = [...speed].filter((w) => w > 0)
  const slowest = spinning.reduce((low, w) => Math.min(low, w), Infinity)
  const fastest = spinning.reduce((high, w) => Math.max(high, w), 0)
  const fan = open.includes('windingToFanAir') || open.includes('frameToFanAir')
  if ((cooling === 'shaft fan' || cooling === 'enclosed, outer fan') && fan && fastest < APART * slowest)
    next.push('Log another run at about half the speed: it parts the fan’s air from still air.')
  if (ohms > POOR_OHMS)
    next.push(
      `${ohmsRead ? 'Give the job the winding’s cold ohms, under bench' : 'Measure the winding’s ohms, cold'}: the job knows them to ${Math.round(100 * ohms)} % only, and every number here goes with them.`,
    )
  return next
}
