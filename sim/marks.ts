// Marks found after the run, from its columns: the current limit, a speed not reached, a stall, the class passed.
import type { Job } from './job.ts'
import { classLimitC } from './handbook/insulation.ts'
import { ratio } from './parts/belt.ts'
import type { Columns, Mark } from './trace.ts'

/** A stretch of rows throughout which something held: s. */
export interface Spell {
  readonly from: number
  readonly until: number
  /** First and last row. */
  readonly first: number
  readonly last: number
}

/** Stretches in which `holds` is true of every row, lasting at least `least` s. */
export function spells(time: Float64Array, holds: (row: number) => boolean, least: number): Spell[] {
  const found: Spell[] = []
  let first = -1
  for (let row = 0; row <= time.length; row++) {
    const now = row < time.length && holds(row)
    if (now && first < 0) first = row
    if (!now && first >= 0) {
      const last = row - 1
      if (time[last] - time[first] >= least) found.push({ from: time[first], until: time[last], first, last })
      first = -1
    }
  }
  return found
}

/** A current within this share of the limit is at the limit. */
const AT_LIMIT = 0.995

/** Creep is a per cent or two; more than this is slip. Slower than this a motor shows nothing, rad/s. */
const SLIP = 0.05
const SLOW = 1

/** True where the current is at the controller's limit. */
export const atLimit = (job: Job, columns: Columns, row: number): boolean =>
  columns.current[row] >= AT_LIMIT * job.parts.controller.currentLimit

/** A motor takes a moment after its ramp: until then no shortfall counts. s */
const SETTLING = 1
/** Shortest shortfall worth a mark, and shortest standstill worth the name. s */
const SHORTFALL = 0.2
const STANDSTILL = 1
/** Slower than this share of what is asked is standing still. */
const STALL = 0.02

/** True where the controller drives and the asked speed has stopped moving. */
export const afterRamp = (columns: Columns, row: number): boolean =>
  row > 0 && columns.asked[row] > 0 && columns.asked[row] === columns.asked[row - 1]

/** Rows at which the controller has held one asked speed for a moment: there a motor shows what it can. */
export function settledRows(time: Float64Array, columns: Columns): Uint8Array {
  const settled = new Uint8Array(time.length)
  let since = 0
  for (let row = 0; row < time.length; row++) {
    if (!afterRamp(columns, row)) since = time[row]
    else if (time[row] - since > SETTLING) settled[row] = 1
  }
  return settled
}

/** Adds what the columns show to the openings and reclosings, in order of time. */
export function marksOf(job: Job, time: Float64Array, columns: Columns, switching: readonly Mark[]): Mark[] {
  const { winding, machine, belt } = job.parts
  const { asked, speed, spindle, windingC } = columns
  const n = ratio(belt)
  /** The spindle's speed as the motor would have it, rad/s: less than the motor's where the belt slips. */
  const got = (row: number) => spindle[row] * n
  const limitC = classLimitC(winding.insulation)
  const settled = settledRows(time, columns)
  const short = (row: number, share: number) => settled[row] === 1 && got(row) < share * asked[row]

  const limited = spells(time, (row) => atLimit(job, columns, row), 0).filter(
    (spell) => spell.until > spell.from,
  )
  const slow = spells(time, (row) => short(row, 1 - machine.acceptedSag), SHORTFALL)
  const still = spells(time, (row) => short(row, STALL), STANDSTILL)
  const slips = spells(time, (row) => speed[row] > SLOW && got(row) < (1 - SLIP) * speed[row], SHORTFALL)
  const passed = windingC.findIndex((value) => value > limitC)

  const found: Mark[] = [
    ...switching,
    ...limited.map(({ from, until }): Mark => ({ kind: 'limit reached', t: from, until })),
    ...slow.map(({ from, until, first, last }): Mark => {
      let lowest = first
      for (let row = first; row <= last; row++) if (got(row) < got(lowest)) lowest = row
      return { kind: 'speed not reached', t: from, until, lowest: got(lowest), asked: asked[lowest] }
    }),
    ...slips.map(({ from, until, first, last }): Mark => {
      let worst = 0
      for (let row = first; row <= last; row++) worst = Math.max(worst, 1 - got(row) / speed[row])
      return { kind: 'belt slips', t: from, until, worst }
    }),
    ...still.map(({ from, until }): Mark => ({ kind: 'stalled', t: from, until })),
  ]
  if (passed >= 0) found.push({ kind: 'class passed', t: time[passed], limitC })
  return found.sort((a, b) => a.t - b.t)
}
