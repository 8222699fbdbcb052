// The fast states ride along: what speed, current and integrator are at a start of which only the heat is known.
import { STATE } from '../plant.ts'
import type { Progress } from '../run.ts'
import { reach } from './model.ts'
import { cameRound, FAST, heatOf, type Start, type Turn, type Turner, withHeat } from './turn.ts'

/** Turns that lie nearer together tell nothing of how the fast states go with the heat, K; nor are they trusted this many times as far. */
const TELLING = 0.3
const FARTHEST = 5

/** The start at heat z, its fast states as they went on the way from `prior` to `last`. */
export function alongWay(prior: Turn | null, last: Turn, z: Float64Array): Start {
  const start = withHeat(last.end, z)
  if (!prior) return start
  const here = heatOf(last.start.states)
  const back = reach(heatOf(prior.start.states), here)
  if (back < TELLING) return start
  const share = Math.min(FARTHEST, reach(here, z) / back)
  for (const k of FAST)
    if (k < start.states.length) start.states[k] += share * (last.end.states[k] - prior.end.states[k])
  return bounded(start)
}

/** Neither current nor speed is ever below nothing. */
function bounded(start: Start): Start {
  for (const k of [STATE.current, STATE.speed, STATE.spindle])
    if (k < start.states.length) start.states[k] = Math.max(0, start.states[k])
  return start
}

/** A difference of speed or integrator between start and end of a turn that adds no heat worth counting: rad/s, V. */
const STILL = 0.002
/** Beyond that, this many times what heat alone made of it in a turn already known. */
const LIKE = 2
const TRIES = 4

/** Runs the turn from a start until its fast states come round as well as those of `like`, heated as much. Null where none does. */
export function* settled(
  turns: Turner,
  start: Start,
  like: Turn,
  bare: boolean,
): Generator<Progress, Turn | null> {
  const z = heatOf(start.states).slice()
  let before: Turn | null = null
  let turn = yield* turns.turn(start, bare)
  for (let n = 1; turn && !asWell(turn, like) && n < TRIES; n++) {
    const next: Turn | null = yield* turns.turn(before ? extrapolated(before, turn, z) : withHeat(turn.end, z), bare)
    before = before ? null : turn
    turn = next
  }
  return turn && cameRound(turn) ? turn : null
}

function asWell(turn: Turn, like: Turn): boolean {
  if (!cameRound(turn)) return false
  const gain = ({ start, end }: Turn) => reach(heatOf(start.states), heatOf(end.states))
  const share = Math.min(1, gain(turn) / Math.max(gain(like), 1e-9))
  const off = ({ start, end }: Turn, k: number) => Math.abs(end.states[k] - start.states[k])
  return [STATE.speed, STATE.integrator].every((k) => off(turn, k) <= STILL + LIKE * share * off(like, k))
}

/** Where two turns in a row, from the same heat, tend to (Aitken). */
function extrapolated(first: Turn, second: Turn, z: Float64Array): Start {
  const start = withHeat(second.end, z)
  for (const k of FAST) {
    if (k >= start.states.length) continue
    const step = first.end.states[k] - first.start.states[k]
    const next = second.end.states[k] - second.start.states[k]
    const ratio = next / step
    if (Math.abs(ratio) < 0.95) start.states[k] += (next * ratio) / (1 - ratio)
  }
  return bounded(start)
}
