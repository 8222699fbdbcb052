// Envelope following: a duty that repeats is run a turn here and there, and the turns between follow from those.
import { changed } from './cycles/changed.ts'
import { FIRST_JUMP, growth, guard, room } from './cycles/jump.ts'
import { landing } from './cycles/landing.ts'
import { bentTo, type Model, movedTo, walk } from './cycles/model.ts'
import { alongWay, drift, driftIn, settled, still, underWay, type Way } from './cycles/riding.ts'
import { differences } from './cycles/slope.ts'
import { type CycleRun, type Stop, summed } from './cycles/summed.ts'
import { coldStart, heatOf, inJob, type Start, spend, type Turn, turner, withHeat } from './cycles/turn.ts'
import { cycleSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { assemble } from './plant.ts'
import { type Progress, run } from './run.ts'

export type { CycleRun } from './cycles/summed.ts'

export interface CycleOptions {
  /** How far from its place a turn may be run, K; the turns between lie closer. */
  readonly tolerance?: number
  /** Stop when the cutoff first opens. */
  readonly toFirstOpening?: boolean
  /** Only peaks and openings are wanted: the turns have no rows, and no other marks. */
  readonly bare?: boolean
}

const TOLERANCE = 0.01
/** After so many misses from one place the slope there is taken anew. */
const MISSES = 2
/** A drive that takes more turns to come round, or a job that needs more of them run, is run directly. */
const LONGEST_START = 12
const MOST_COMPUTED = 250
/** So many landings in which the cutoff opens or the speed does not come round: then directly, too. */
const MOST_LOST = 30

/** Where the run has got to: the last turn run, and the model about its right start; none while that turn did not come round. */
interface Place {
  readonly n: number
  readonly turn: Turn
  readonly model: Model | null
  /** The way to it from the turn run before, if both came round. */
  readonly way: Way | null
}

/** Start of the turn `turns` after a place: exact for the next one. */
const startAfter = ({ turn, model }: Place, turns: number): Start =>
  model ? withHeat(turn.end, walk(model, turns, null)) : turn.end

/**
 * Runs a job by jumping over turns of its duty. Agrees with `run` to about the tolerance (0.02 K unless said), and
 * goes over to it a turn before one that may open the cutoff. Yields progress; never throws on a job the reader lets
 * through. Source: envelope following (multirevolution methods), NUMERICS; its bend along the way is our own addition.
 */
export function* cycles(job: Job, options: CycleOptions = {}): Generator<Progress, CycleRun> {
  const { duty } = job
  const { bare = false } = options
  const tolerance = options.tolerance ?? TOLERANCE
  const seconds = cycleSeconds(duty)
  // A last turn that ends a rounding after the job is whole too.
  const whole = seconds > 0 ? Math.floor((duty.seconds / seconds) * (1 + 1e-12)) : 0
  const first = coldStart(job, assemble(job.parts).states)
  const turns = turner(job)
  const risky = guard(job)

  const stops: Stop[] = []
  let place = null as Place | null
  let jump = FIRST_JUMP
  let misses = 0
  let lost = 0
  const gone = () => (place ? place.n + 1 : 0)

  /** Lets the caller breathe, and tells how far the turns have come. */
  function* told<T>(work: Generator<Progress, T>): Generator<Progress, T> {
    for (;;) {
      const next = work.next()
      if (next.done) return next.value
      yield { t: Math.min(duty.seconds, gone() * seconds), of: duty.seconds }
    }
  }

  /** The very next turn, run as it comes. False: from here on directly. */
  function* next(): Generator<Progress, boolean> {
    const turn = yield* told(turns.turn(place ? startAfter(place, 1) : first, bare))
    if (!turn) return false
    const n = gone()
    const round = underWay(turn, place?.turn ?? null)
    let model: Model | null = null
    if (round)
      model = place?.model
        ? movedTo(place.model, heatOf(turn.start.states), heatOf(turn.end.states))
        : yield* told(differences(job, turns, turn))
    const way = round && place?.model ? { prior: place.turn, last: turn, turns: 1 } : null
    stops.push({ n, turn, before: null })
    place = { n, turn, model, way }
    jump = FIRST_JUMP
    return round ? model !== null : n < LONGEST_START
  }

  /** A jump of `far` turns, more than one; if it will not do, a shorter one is left to try. False: from here on directly. */
  function* leap(from: Place & { model: Model }, far: number): Generator<Progress, boolean> {
    const { model } = from
    const z = walk(model, far, null)
    const start = from.way ? alongWay(from.way, walk(model, far - 1, null), z) : withHeat(from.turn.end, z)
    const turn = yield* told(settled(turns, start, from.way ? drift(from.way) : driftIn(from.turn), bare))
    if (!turn) {
      jump = far >> 1
      return ++lost < MOST_LOST
    }
    const landed = landing(from.turn, turn, far, model, ({ peaks }) => risky(peaks))
    const factor = growth(landed.error, tolerance)
    if (landed.error > tolerance) {
      misses++
      const anew = misses % MISSES === 0 ? yield* told(differences(job, turns, from.turn)) : null
      place = {
        ...from,
        model: anew
          ? { ...anew, at: model.at, gain: model.gain }
          : bentTo(model, heatOf(turn.start.states), heatOf(turn.end.states)),
      }
      jump = Math.max(1, Math.floor(far * factor))
    } else if (landed.risky > 0) {
      jump = landed.risky - 1
      return jump > 0
    } else if (landed.crest > tolerance || changed(from.turn, turn, seconds)) {
      // Something peaked or began on the way: where, is found by halving.
      jump = far >> 1
    } else {
      misses = 0
      const n = from.n + far
      const way = { prior: from.turn, last: turn, turns: far }
      stops.push({ n, turn, before: landed.gap })
      place = { n, turn, model: landed.model, way }
      jump = Math.max(FIRST_JUMP, Math.floor(far * factor))
    }
    return true
  }

  while (gone() < whole && stops.length < MOST_COMPUTED) {
    const from = place
    const model = from?.model
    // What goes with the heat can be told ahead once two turns have shown it.
    const ready = from && model && (from.way || still(from.turn))
    const far = ready ? room(model, from.turn, risky, Math.min(jump, whole - gone())) : 1
    if (far === 0) break
    if (!(yield* from && model && far > 1 ? leap({ ...from, model }, far) : next())) break
  }

  // What is left, or went its own way, is run directly.
  const n = gone()
  const t = n * seconds
  const effort = { ...turns.effort }
  if (n > 0 && n >= whole && t >= duty.seconds * (1 - 1e-12))
    return summed(seconds, stops, null, effort, duty.seconds)
  const from = inJob(place ? startAfter(place, 1) : first, n, t)
  const { trace } = yield* run(job, { from, toFirstOpening: options.toFirstOpening, statesOnly: bare })
  spend(effort, trace.effort)
  return summed(seconds, stops, trace, effort, duty.seconds)
}
