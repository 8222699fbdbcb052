// Envelope following: a duty that repeats is run a turn here and there, and the turns between follow from those.
import { landing } from './cycles/landing.ts'
import { bentTo, type Model, movedTo, walk } from './cycles/model.ts'
import { changed } from './cycles/changed.ts'
import { differences } from './cycles/slope.ts'
import { type CycleRun, type Stop, summed } from './cycles/summed.ts'
import {
  cameRound,
  coldStart,
  heatOf,
  inJob,
  type Start,
  spend,
  type Turn,
  turner,
  withHeat,
} from './cycles/turn.ts'
import { cycleSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { assemble } from './plant.ts'
import { DESTROYED_C, type Progress, run } from './run.ts'
import type { Trace } from './trace.ts'

export interface CycleOptions {
  /** How far from its place a turn may be run, K; the turns between lie closer. */
  readonly tolerance?: number
  /** Stop when the cutoff first opens. */
  readonly toFirstOpening?: boolean
}

const TOLERANCE = 0.02
/** A turn that comes this near to opening the cutoff is not skipped, nor is any after it. K */
const NEAR = 0.3
/** Turns of the first jump; how much longer the next may be, and how much shorter after a miss. */
const FIRST_JUMP = 2
const MOST_GROWTH = 5
const LEAST_GROWTH = 0.2
const SAFETY = 0.8
/** After so many misses from one place the slope there is taken anew. */
const MISSES = 2
/** How often a landing is run again until its speed comes round. */
const LANDINGS = 3
/** A drive that takes longer to come round, or a job that needs more turns run, is run directly. */
const LONGEST_START = 12
const MOST_COMPUTED = 250

/** Where the run has got to: the last turn run, and the model about its right start once it has come round. */
interface Place {
  readonly n: number
  readonly turn: Turn
  readonly model: Model | null
}

/** Start of the turn `turns` after a place: exact for the next one. */
const startAfter = ({ turn, model }: Place, turns: number): Start =>
  model ? withHeat(turn.end, walk(model, turns, null)) : turn.end

/**
 * Runs a periodic job by jumping over turns. Agrees with `run` to about the tolerance (0.02 K unless said), and goes
 * over to it before the cutoff first opens. Yields progress; never throws on a job the reader lets through.
 * Source: envelope following, a multirevolution method (Petzold 1981, SIAM J. Numer. Anal. 18, from memory).
 */
export function* cycles(job: Job, options: CycleOptions = {}): Generator<Progress, CycleRun> {
  const { duty, parts } = job
  const tolerance = options.tolerance ?? TOLERANCE
  const seconds = cycleSeconds(duty)
  // Turns that end within the job, the last of them perhaps a rounding after it.
  const whole = seconds > 0 ? Math.floor((duty.seconds / seconds) * (1 + 1e-12)) : 0
  const { states } = assemble(parts)
  const turns = turner(job)
  const opensAt = parts.cutoff.fitted === 'none' ? Infinity : parts.cutoff.opensAt
  const risky = (windingC: number, switchC: number) =>
    switchC > opensAt - NEAR || windingC > DESTROYED_C - NEAR

  const computed: Stop[] = []
  let place = null as Place | null
  let jump = FIRST_JUMP
  let misses = 0

  /** Lets the caller breathe. */
  function* told<T>(work: Generator<Progress, T>): Generator<Progress, T> {
    for (;;) {
      const next = work.next()
      if (next.done) return next.value
      yield { t: Math.min(duty.seconds, ((place?.n ?? -1) + 1) * seconds), of: duty.seconds }
    }
  }

  /** How many of the next turns could be jumped without passing one that comes near to opening. */
  function room(model: Model, turn: Turn, most: number): number {
    let safe = 0
    walk(model, most, null, (n, z) => {
      if (risky(z[0] + turn.rise[0], z[2] + turn.rise[2])) return false
      safe = n
      return true
    })
    return safe
  }

  while (computed.length < MOST_COMPUTED) {
    const last: Place | null = place
    const left = whole - (last ? last.n + 1 : 0)
    if (left === 0) break
    const model: Model | null = last?.model ?? null
    const far: number = last && model ? room(model, last.turn, Math.min(jump, left)) : 1
    if (far === 0) break

    const start: Start = last ? startAfter(last, far) : coldStart(job, states)
    let turn: Turn | null = yield* told(turns.turn(start))
    if (far === 1) {
      if (!turn) break
      const n: number = last ? last.n + 1 : 0
      computed.push({ n, turn, before: null })
      const around = cameRound(turn)
      if (!around && n >= LONGEST_START) {
        place = { n, turn, model: null }
        break
      }
      const known: Model | null = !around
        ? null
        : model
          ? movedTo(model, heatOf(turn.start.states), heatOf(turn.end.states))
          : yield* told(differences(job, turns, turn))
      place = { n, turn, model: known }
      if (around && !known) break
      jump = FIRST_JUMP
      continue
    }
    if (!last || !model) throw new Error('a jump without a place to jump from')

    for (let again = 1; turn && !cameRound(turn) && again < LANDINGS; again++)
      turn = yield* told(turns.turn(withHeat(turn.end, heatOf(start.states))))
    if (!turn || !cameRound(turn)) {
      jump = far >> 1
      continue
    }
    const landed = landing(last.turn, turn, far, model, ({ peaks }) => risky(peaks[0], peaks[2]))
    const factor = Math.max(
      LEAST_GROWTH,
      Math.min(MOST_GROWTH, SAFETY * Math.cbrt(tolerance / Math.max(landed.error, 1e-9))),
    )
    if (landed.error > tolerance) {
      misses++
      const fresh: Model | null = misses % MISSES === 0 ? yield* told(differences(job, turns, last.turn)) : null
      place = {
        ...last,
        model: fresh
          ? { ...fresh, at: model.at, gain: model.gain }
          : bentTo(model, heatOf(turn.start.states), heatOf(turn.end.states)),
      }
      jump = Math.max(1, Math.floor(far * factor))
      continue
    }
    if (landed.wary > 0) {
      if (landed.wary === 1) break
      jump = landed.wary - 1
      continue
    }
    if (changed(last.turn, turn, seconds)) {
      // What is new in it began somewhere on the way: where, is found by halving.
      jump = far >> 1
      continue
    }
    misses = 0
    const n: number = last.n + far
    computed.push({ n, turn, before: landed.gap })
    place = { n, turn, model: landed.model }
    jump = Math.max(FIRST_JUMP, Math.floor(far * factor))
  }

  // What is left, or went its own way, is run directly.
  const n = place ? place.n + 1 : 0
  const t = n * seconds
  const effort = { ...turns.effort }
  let tail: Trace | null = null
  if (n === 0 || n < whole || t < duty.seconds * (1 - 1e-12)) {
    const start = place ? startAfter(place, 1) : coldStart(job, states)
    const from = inJob(start, n, t)
    tail = (yield* run(job, { from, toFirstOpening: options.toFirstOpening })).trace
    spend(effort, tail.effort)
  }
  return summed(seconds, computed, tail, effort, duty.seconds)
}

