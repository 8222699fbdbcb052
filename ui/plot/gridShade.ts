// The shade of a grid's cells: from nothing at the least value to a fixed tint at the most; which one is now.
import { axisNumber } from '../../sim/say/grid.ts'
import type { Scenario } from '../../sim/scenario.ts'
import type { FigureName } from '../../sim/studies/figures.ts'
import type { GridPoint } from '../../sim/studies/grid.ts'
import type { Axis } from '../../sim/studies/grid/axis.ts'

/** How much of the tint the cell with the most has, %: text stays readable on it. */
const MOST = 34

/** Tint of each cell, %; 0 where it has no number. */
export function shadesOf(points: readonly (GridPoint | undefined)[], figure: FigureName): readonly number[] {
  const values = points.map((point) => (point?.ok ? point.figures[figure] : null))
  const numbers = values.filter((value) => value !== null)
  const least = Math.min(...numbers)
  const range = Math.max(...numbers) - least
  return values.map((value) =>
    value === null || !(range > 0) ? 0 : Math.round((MOST * (value - least)) / range),
  )
}

/** The place on an axis nearest to what stands in the job; null off the axis. */
export function placeOf(scenario: Scenario, { path, texts }: Axis, now: string): number | null {
  const value = axisNumber(scenario, path, now)
  if (value === null) {
    const at = texts.indexOf(now)
    return at < 0 ? null : at
  }
  const numbers = texts.map((text) => axisNumber(scenario, path, text) ?? Number.NaN)
  const away = numbers.map((number) => Math.abs(number - value))
  const at = away.indexOf(Math.min(...away))
  const step = Math.abs(numbers[Math.min(1, numbers.length - 1)] - numbers[0])
  return away[at] <= step / 2 + 1e-12 ? at : null
}
