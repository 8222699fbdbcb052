// What a run shows as it goes, row by row: the current limit, speeds not reached, stalls, slip, the class passed.
import { classLimitC } from './handbook/insulation.ts'
import type { Job } from './job.ts'
import { ratio } from './parts/belt.ts'
import { type SpellKeeper, spellKeeper } from './spells.ts'
import type { Columns, Driving, Mark, Stretch } from './trace.ts'

/** One row, SI; speeds at the motor but the spindle's own. */
export interface Seen {
  t: number
  asked: number
  /** What the phase wants in the end: the asked speed ramps to it. 0: controller off. */
  target: number
  speed: number
  spindle: number
  current: number
  windingC: number
}

/** A current within this share of the limit is at the limit. */
const AT_LIMIT = 0.995
/** A spindle this near what is asked has arrived; and one that falls by this share has stopped rising. */
const ARRIVED = 0.98
const FALLING = 0.002
/** Shortest shortfall or slip worth a mark, and shortest standstill worth the name. s */
const SHORTFALL = 0.2
const STANDSTILL = 1
/** Slower than this share of what is asked, and than this at the motor (rad/s), is standing still. */
const STALL = 0.02
const STILL = 20
/** Creep is a per cent or two; more is slip. Slower than this a motor shows nothing, rad/s. */
const SLIP = 0.05
const SLOW = 1

const NONE: Stretch = { target: 0, since: 0, ramped: false, arrived: false, best: 0, low: 0 }

export interface Watch {
  row(seen: Seen): void
  /** Where it stands, for a run that is taken up again. */
  stretch(): Stretch
  /** `over`: driving ends here; else it was only looked at up to here. */
  finish(over: boolean): { marks: readonly Mark[]; driving: Driving }
}

/**
 * Watches a job's rows in order of time. `switching` is the driver's list of openings and reclosings, still growing;
 * `from`: the stretch of driving that is being taken up.
 */
export function watch(job: Job, switching: readonly Mark[], from?: Stretch): Watch {
  const { winding, machine, belt, controller } = job.parts
  const n = ratio(belt)
  const limit = AT_LIMIT * controller.currentLimit
  const limitC = classLimitC(winding.insulation)
  const least = 1 - machine.acceptedSag
  const marks: Mark[] = []
  let slowest: Driving['slowest'] = null
  let limitSeconds = 0
  let limitedInCut = 0
  let passed = false
  let lastT = 0
  let lastC = Number.NEGATIVE_INFINITY

  // One stretch of driving to one target: on its way until it arrives, or until it rises no more.
  let { target, since, ramped, arrived, best, low } = from ?? NONE
  let first = true

  const limited = spellKeeper(0, (t, until) => {
    limitSeconds += until - t
    marks.push({ kind: 'limit reached', t, until })
  })
  const limitedCut = spellKeeper(0, (t, until) => {
    limitedInCut += until - t
  })
  const short = spellKeeper(SHORTFALL, (t, until, worst) => {
    marks.push({ kind: 'speed not reached', t, until, lowest: (1 - worst) * target, asked: target })
  })
  const still = spellKeeper(STANDSTILL, (t, until) => marks.push({ kind: 'stalled', t, until }))
  const slips = spellKeeper(SHORTFALL, (t, until, worst) =>
    marks.push({ kind: 'belt slips', t, until, worst }),
  )
  const keepers: readonly SpellKeeper[] = [limited, limitedCut, short, still, slips]

  const slower = (t: number, got: number) => {
    if (!slowest || got / target < slowest.got / slowest.target) slowest = { t, got, target }
  }
  /** The stretch ends at t: one that never arrived got no further than it did, unless the cutoff cut it short. */
  const leave = (t: number) => {
    if (target <= 0 || arrived) return
    const opening = switching.at(-1)
    if (opening?.kind === 'opens' && Math.abs(opening.t - t) < 1e-9 * Math.max(1, t)) return
    slower(t, low)
    if (best < least * target && t - since >= SHORTFALL)
      marks.push({ kind: 'speed not reached', t: since, until: t, lowest: low, asked: target })
  }

  return {
    row({ t, asked, target: wanted, speed, spindle, current, windingC }) {
      const got = Math.max(0, spindle * n)
      if (wanted !== target) {
        // What is kept of a target is told before it changes.
        short.row(lastT, -1, false, 0)
        leave(t)
        target = wanted
        since = t
        ramped = false
        // Rows that begin in the middle of a drive have arrived long ago.
        arrived = first && asked === wanted && got > 0
        best = 0
        low = 0
      }
      first = false
      const on = target > 0
      if (on && !ramped && asked === target) ramped = true
      if (on && !arrived) {
        if (got >= best) low = got
        best = Math.max(best, got)
        low = Math.min(low, got)
        arrived = ramped && (got >= ARRIVED * target || got < best - FALLING * target)
      }
      const settled = on && arrived
      if (settled) slower(t, got)
      limited.row(t, current - limit, true, 0)
      limitedCut.row(t, current - limit, settled, 0)
      short.row(t, least * target - got, settled, on ? 1 - got / target : 0)
      still.row(t, Math.min(STALL * target - got, STILL - speed), on && ramped, 0)
      slips.row(t, (1 - SLIP) * speed - got, speed > SLOW, speed > SLOW ? 1 - got / speed : 0)
      if (!passed && windingC > limitC) {
        passed = true
        const at =
          Number.isFinite(lastC) && lastC < limitC
            ? lastT + ((t - lastT) * (limitC - lastC)) / (windingC - lastC)
            : t
        marks.push({ kind: 'class passed', t: at, limitC })
      }
      lastT = t
      lastC = windingC
    },
    stretch: () => ({ target, since, ramped, arrived, best, low }),
    finish(over) {
      for (const keeper of keepers) keeper.finish()
      if (over) leave(lastT)
      return {
        marks: [...switching, ...marks].sort((a, b) => a.t - b.t),
        driving: { slowest, limitSeconds, limitedInCut },
      }
    },
  }
}

/** The same over columns that are there already, to the end of the driving. */
export function watched(
  job: Job,
  time: Float64Array,
  columns: Columns,
  switching: readonly Mark[],
  from?: Stretch,
) {
  const eye = watch(job, switching, from)
  const seen: Seen = { t: 0, asked: 0, target: 0, speed: 0, spindle: 0, current: 0, windingC: 0 }
  for (let row = 0; row < time.length; row++) {
    seen.t = time[row]
    for (const name of ['asked', 'target', 'speed', 'spindle', 'current', 'windingC'] as const)
      seen[name] = columns[name][row]
    eye.row(seen)
  }
  return eye.finish(true)
}
