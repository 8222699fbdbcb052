// The slope of the turn's map by differences: two turns from slightly hotter or cooler starts.
import type { Job } from '../job.ts'
import { senseRate } from '../parts/cutoff.ts'
import type { Progress } from '../run.ts'
import { cycleSeconds } from '../duty.ts'
import type { Model } from './model.ts'
import { driftIn, settled } from './riding.ts'
import { HEAT, heatOf, type Turn, type Turner, withHeat } from './turn.ts'

/** Moved by this much, the map moves by far more than the noise of its steps. K */
const MOVED = 4

/** The model about a turn that came round; null where no neighbouring turn runs through. */
export function* differences(job: Job, turner: Turner, turn: Turn): Generator<Progress, Model | null> {
  const at = heatOf(turn.start.states).slice()
  const end = heatOf(turn.end.states)
  const slope = new Float64Array(HEAT * HEAT)
  // The switch listens and nothing listens to it: its own start fades at a known rate.
  const { cutoff } = job.parts
  const fades = -senseRate(cutoff, 0, 0, 1)
  slope[HEAT * HEAT - 1] = Math.exp(-fades * cycleSeconds(job.duty))
  for (let k = 0; k < HEAT - 1; k++) {
    let moved: Turn | null = null
    let by = MOVED
    for (const side of [1, -1]) {
      by = side * MOVED
      const heat = at.slice()
      heat[k] += by
      moved = yield* settled(turner, withHeat(turn.start, heat), driftIn(turn), true)
      if (moved) break
    }
    if (!moved) return null
    const movedEnd = heatOf(moved.end.states)
    for (let h = 0; h < HEAT; h++) slope[h * HEAT + k] = (movedEnd[h] - end[h]) / by
  }
  return {
    at,
    gain: end.map((value, h) => value - at[h]),
    slope,
    back: 0,
    bend: new Float64Array(HEAT),
    way: new Float64Array(HEAT),
    windingShare: senseRate(cutoff, 1, 0, 0) / fades,
  }
}
