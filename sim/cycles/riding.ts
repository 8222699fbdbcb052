// The fast states ride along: what speed, current and integrator are at a start of which only the heat is known.
import { STATE } from '../plant.ts'
import type { Progress } from '../run.ts'
import { reach } from './model.ts'
import { cameRound, FAST, heatOf, type Start, type Turn, type Turner, withHeat } from './turn.ts'

/** Turns that lie nearer together tell nothing of how the fast states go with the heat, K; nor are they trusted this many times as far. */
const TELLING = 0.3
const FARTHEST = 5

/** A difference of speed or integrator between start and end of a turn that adds no heat worth counting: rad/s, V. */
const STILL = 0.002
/** Beyond that, this many times what heat alone makes of it. */
const LIKE = 2
/** Turns run at most from one heat until the fast states come round. */
const TRIES = 4

const off = ({ start, end }: Turn, k: number) => Math.abs(end.states[k] - start.states[k])

/** Two turns that were run, so many turns apart. */
export interface Way {
  readonly prior: Turn
  readonly last: Turn
  readonly turns: number
}

/** The start at heat z, after a turn that started at `before`: its fast states as they went on the way so far. */
export function alongWay({ prior, last }: Way, before: Float64Array, z: Float64Array): Start {
  const start = withHeat(last.end, z)
  const here = heatOf(last.start.states)
  const back = reach(heatOf(prior.start.states), here)
  if (back < TELLING) return start
  const share = Math.min(FARTHEST, reach(here, before) / back)
  for (const k of FAST)
    if (k < start.states.length) start.states[k] += share * (last.end.states[k] - prior.end.states[k])
  return bounded(start)
}

/** How much speed and integrator may differ between start and end of a turn: as heat alone made of them, rad/s, V. */
export function drift({ prior, last, turns }: Way): Drift {
  const part = (k: number) => STILL + (LIKE * Math.abs(last.end.states[k] - prior.end.states[k])) / turns
  return { speed: part(STATE.speed), integrator: part(STATE.integrator) }
}

/** As much as in a turn already known. */
export function driftIn(turn: Turn): Drift {
  const part = (k: number) => STILL + LIKE * off(turn, k)
  return { speed: part(STATE.speed), integrator: part(STATE.integrator) }
}

/** None to speak of. */
export const NO_DRIFT: Drift = { speed: STILL, integrator: STILL }

export type Drift = Readonly<Record<'speed' | 'integrator', number>>

/** Neither current nor speed is ever below nothing. */
function bounded(start: Start): Start {
  for (const k of [STATE.current, STATE.speed, STATE.spindle])
    if (k < start.states.length) start.states[k] = Math.max(0, start.states[k])
  return start
}

/** Runs the turn from a start until its fast states come round to within `most`. Null where they do not. */
export function* settled(
  turns: Turner,
  start: Start,
  most: Drift,
  bare: boolean,
): Generator<Progress, Turn | null> {
  const z = heatOf(start.states).slice()
  const fine = (turn: Turn) =>
    cameRound(turn) &&
    (['speed', 'integrator'] as const).every(
      (name) => Math.abs(turn.end.states[STATE[name]] - turn.start.states[STATE[name]]) <= most[name],
    )
  let before: Turn | null = null
  let turn = yield* turns.turn(start, bare)
  for (let n = 1; turn && !fine(turn) && n < TRIES; n++) {
    const from = before ? extrapolated(before, turn, z) : withHeat(turn.end, z)
    before = before ? null : turn
    turn = yield* turns.turn(from, bare)
  }
  return turn && fine(turn) ? turn : null
}

/** A difference no larger needs no waiting for: rad/s, V. A larger one is heat's once it shrinks no faster than this, a turn. */
const UNDER_WAY = 0.02
const SHRINKS = 0.7

/** True where nothing but heat differs between a turn's start and end. */
export const still = (turn: Turn): boolean =>
  cameRound(turn) && [STATE.speed, STATE.integrator].every((k) => off(turn, k) <= UNDER_WAY)

/** True where a turn, run after `before`, shows the drive under way: what still differs goes with the heat. */
export const underWay = (turn: Turn, before: Turn | null): boolean =>
  cameRound(turn) &&
  [STATE.speed, STATE.integrator].every(
    (k) => off(turn, k) <= UNDER_WAY || (before !== null && off(turn, k) > SHRINKS * off(before, k)),
  )

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
