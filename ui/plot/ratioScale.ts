// The ratio axis: logarithmic, with ratios a person would name as ticks, each as far as its neighbours leave it room.
import { byRatio } from './scale.ts'

export interface RatioScale {
  readonly low: number
  readonly high: number
  /** Ratio → px, and px → the ratio there, kept within the axis. */
  readonly x: (ratio: number) => number
  readonly ratioAt: (x: number) => number
  readonly ticks: readonly number[]
}

const NAMED = [
  0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200,
]
/** Ratios that are named first where there is no room for all. */
const ROUND = [1, 2, 4, 10, 20, 50, 100, 6, 3, 15, 30, 80, 0.5]

/** The axis from `low` to `high` over [left, right] px, ticks at least `room` px apart. */
export function ratioScale(low: number, high: number, left: number, right: number, room: number): RatioScale {
  const x = byRatio([low, high], [left, right])
  const ticks: number[] = []
  const order = [...ROUND, ...NAMED.filter((each) => !ROUND.includes(each))]
  for (const ratio of order)
    if (ratio >= low && ratio <= high && ticks.every((other) => Math.abs(x(other) - x(ratio)) >= room))
      ticks.push(ratio)
  return {
    ...{ low, high, x },
    ratioAt: (at) => Math.min(high, Math.max(low, x.at(at))),
    ticks: ticks.sort((a, b) => a - b),
  }
}
