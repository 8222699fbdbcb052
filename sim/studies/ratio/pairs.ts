// Pairs of pulleys and a belt that are sold, for a ratio within a window: few to buy, and well inside.
import { stockBelt } from '../../belting/stock.ts'
import { STOCK_PULLEYS } from '../../handbook/beltSections.ts'
import { type Belt, type Stage, stagesOf } from '../../parts/belt.ts'
import { type Changes, lastStage } from './change.ts'
import { smallestOf, STEEPEST } from '../../drive/limits.ts'

/** A proposal: pulleys of the stage, m, the whole ratio, a stock belt and the centres it needs, m. */
export interface Pair {
  readonly driving: number
  readonly driven: number
  readonly ratio: number
  /** Stock belt and the centres it needs; null: none of the lengths goes round. */
  readonly length: number | null
  readonly centres: number | null
  /** Pulleys to buy. */
  readonly buys: number
  readonly changes: Changes
}

/** Ratios to stay within. */
export interface Range {
  readonly low: number
  readonly high: number
}

/** Diameters that differ by less are the same pulley, m. */
const SAME = 1e-6
/** True of one and the same pulley, m. */
export const isSame = (one: number, other: number): boolean => Math.abs(one - other) < SAME

/** Stock diameters no smaller than `least`, and the one that is there already, m. */
export const choices = (present: number | undefined, least: number): readonly number[] =>
  [
    ...STOCK_PULLEYS.filter((size) => size >= least - SAME && !(present && isSame(size, present))),
    ...(present && present >= least - SAME ? [present] : []),
  ].sort((a, b) => a - b)

/** How far a ratio lies from the middle of a range, by logarithm. */
export const offMiddle = (ratio: number, { low, high }: Range): number =>
  Math.abs(Math.log(ratio / Math.sqrt(low * high)))

/**
 * Pairs for the last stage whose whole ratio lies within the range, best first: fewest pulleys to buy, then nearest
 * to the middle. Centres as near to those of the drive as a stock belt allows.
 */
export function pairsWithin(belt: Belt, range: Range): readonly Pair[] {
  const stages = stagesOf(belt)
  const last: Stage = stages[stages.length - 1]
  const before = 1 / last.turns
  const least = smallestOf(belt)
  const found: Pair[] = []
  for (const driving of choices(last.driving, least))
    for (const driven of choices(last.driven, least)) {
      const ratio = (before * driven) / driving
      if (ratio < range.low || ratio > range.high || driven / driving > STEEPEST + SAME) continue
      const kept = isSame(driving, last.driving) && isSame(driven, last.driven)
      const wanted = belt.centreDistance ?? driving + driven
      const stock = kept && belt.centreDistance !== undefined ? null : stockBelt(driving, driven, wanted)
      found.push({
        driving,
        driven,
        ratio,
        length: stock?.length ?? null,
        centres: stock?.centres ?? null,
        buys: Number(!isSame(driving, last.driving)) + Number(!isSame(driven, last.driven)),
        changes: lastStage(belt, driving, driven, stock?.centres ?? null),
      })
    }
  return found.sort((a, b) => a.buys - b.buys || offMiddle(a.ratio, range) - offMiddle(b.ratio, range))
}
