// Straight lines through readings, by least squares.

export type Points = readonly (readonly [x: number, y: number])[]

export interface Line {
  readonly slope: number
  readonly offset: number
  /** Standard deviation of a reading about the line; 0 through two points. */
  readonly scatter: number
  /** Middle of x, and the root of the sum of squares about it. */
  readonly middle: number
  readonly reach: number
}

/** y = slope·x + offset through points. NaN slope where all x are equal. */
export function line(points: Points): Line {
  const n = points.length
  const middle = points.reduce((sum, [x]) => sum + x, 0) / n
  const my = points.reduce((sum, [, y]) => sum + y, 0) / n
  const sxx = points.reduce((sum, [x]) => sum + (x - middle) ** 2, 0)
  const sxy = points.reduce((sum, [x, y]) => sum + (x - middle) * (y - my), 0)
  const slope = sxy / sxx
  const offset = my - slope * middle
  const left = points.reduce((sum, [x, y]) => sum + (y - slope * x - offset) ** 2, 0)
  return { slope, offset, scatter: Math.sqrt(left / Math.max(1, n - 2)), middle, reach: Math.sqrt(sxx) }
}

/** The slope of y = slope·x through points. */
export function ray(points: Points): number {
  const sxx = points.reduce((sum, [x]) => sum + x * x, 0)
  return points.reduce((sum, [x, y]) => sum + x * y, 0) / sxx
}

/** True where readings reach over a range wide enough to tell a slope from an offset. */
export const wide = (values: readonly number[], ratio: number): boolean => {
  const least = Math.min(...values)
  return values.length >= 2 && least > 0 && Math.max(...values) / least >= ratio
}
