// The turn that ends as it began: where a duty repeated for ever comes to rest.
import { factor, solve } from '../solve/lu.ts'
import type { Job } from '../job.ts'
import { assemble } from '../plant.ts'
import type { Progress } from '../run.ts'
import { type Model, movedTo } from './model.ts'
import { differences } from './slope.ts'
import { NO_DRIFT, settled, still } from './riding.ts'
import { cameRound, coldStart, HEAT, heatOf, type Start, type Turn, turner, withHeat } from './turn.ts'
import type { Effort } from '../trace.ts'

export interface SteadyCycle {
  /** Winding, frame and switch at the turn's start, and their highest in it, °C. */
  readonly z: Float64Array
  readonly peaks: Float64Array
  /** Steps that Newton's method took. */
  readonly tries: number
  /** Where the turn begins, in its own time: `run` from here shows it row by row. */
  readonly start: Start
  /** To take up from for a job that differs a little. */
  readonly near: Near
  readonly effort: Effort
}

/** A turn and the map about it. */
export interface Near {
  readonly turn: Turn
  readonly model: Model
}

/** Steps shorter than this are the last, K; more steps than this lead nowhere. */
const CLOSE = 0.01
const TRIES = 20
const LEAST_SHARE = 1 / 8
/** Turns until the speed must have come round. */
const ROUNDS = 12

/**
 * The steady turn of a periodic duty with the cutoff bridged: it never opens if its switch peaks stay below the
 * opening temperature. Null where there is none: the heat runs away, passes 300 °C, or the duty never comes round.
 * `near` (of a like job) saves most of the work. Newton's method on the turn's map, its slope by differences, then secants.
 */
export function* steadyCycle(job: Job, near?: Near): Generator<Progress, SteadyCycle | null> {
  const bridged: Job = {
    ...job,
    duty: { ...job.duty, seconds: Infinity },
    parts: { ...job.parts, cutoff: { ...job.parts.cutoff, fitted: 'none' } },
  }
  const turns = turner(bridged)
  // At the same heat, until the fast states come round too.
  const round = function* (start: Start): Generator<Progress, Turn | null> {
    const heat = heatOf(start.states).slice()
    let turn = yield* turns.turn(start, true)
    for (let n = 1; turn && !cameRound(turn); n++) {
      if (n === ROUNDS) return null
      turn = yield* turns.turn(withHeat(turn.end, heat), true)
    }
    return turn && (still(turn) ? turn : yield* settled(turns, withHeat(turn.end, heat), NO_DRIFT, true))
  }

  let turn = yield* round(near?.turn.end ?? coldStart(bridged, assemble(job.parts).states))
  if (!turn) return null
  let model: Model | null = near
    ? { ...near.model, ...about(turn) }
    : yield* differences(bridged, turns, turn)
  for (let tries = 1; model && tries <= TRIES; tries++) {
    const step = newton(model)
    if (!step) return null
    // Too long a step may end where nothing runs: half of it, then.
    let next: Turn | null = null
    let z = model.at
    for (let share = 1; !next && share >= LEAST_SHARE; share /= 2) {
      z = z.map((_, h) => model!.at[h] + share * step[h])
      next = yield* round(withHeat(turn.end, z))
    }
    if (!next) return null
    turn = next
    if (Math.hypot(...step) < CLOSE) {
      return { z, peaks: turn.peaks, tries, start: turn.start, near: { turn, model }, effort: turns.effort }
    }
    model = movedTo(model, z, heatOf(turn.end.states))
  }
  return null
}

const about = ({ start, end }: Turn): Pick<Model, 'at' | 'gain'> => {
  const at = heatOf(start.states).slice()
  return { at, gain: heatOf(end.states).map((value, h) => value - at[h]) }
}

/** (I − slope)⁻¹ gain; null where the map pushes away from its steady turn instead of drawing to it. */
function newton({ slope, gain }: Model): Float64Array | null {
  const matrix = slope.map((value, place) => (place % (HEAT + 1) === 0 ? 1 - value : -value))
  const pivots = new Int32Array(HEAT)
  if (!factor(matrix, pivots, HEAT)) return null
  // Hotter in means hotter out, so it draws to the steady turn exactly if this sum of all its powers is above zero.
  const ones = new Float64Array(HEAT).fill(1)
  solve(matrix, pivots, HEAT, ones)
  if (ones.some((value) => !(value > 0))) return null
  const step = gain.slice()
  solve(matrix, pivots, HEAT, step)
  return step
}
