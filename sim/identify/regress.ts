// Straight lines through readings, by least squares.

/** y = slope·x + offset through points. NaN slope where all x are equal. */
export function line(points: readonly (readonly [x: number, y: number])[]): {
  slope: number
  offset: number
  scatter: number
} {
  const n = points.length
  const mx = points.reduce((sum, [x]) => sum + x, 0) / n
  const my = points.reduce((sum, [, y]) => sum + y, 0) / n
  const sxx = points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0)
  const sxy = points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0)
  const slope = sxy / sxx
  const offset = my - slope * mx
  const left = points.reduce((sum, [x, y]) => sum + (y - slope * x - offset) ** 2, 0)
  return { slope, offset, scatter: Math.sqrt(left / Math.max(1, n - 2)) }
}

/** y = slope·x through points. */
export function ray(points: readonly (readonly [x: number, y: number])[]): {
  slope: number
  scatter: number
} {
  const sxx = points.reduce((sum, [x]) => sum + x * x, 0)
  const sxy = points.reduce((sum, [x, y]) => sum + x * y, 0)
  const slope = sxy / sxx
  const left = points.reduce((sum, [x, y]) => sum + (y - slope * x) ** 2, 0)
  return { slope, scatter: Math.sqrt(left / Math.max(1, points.length - 1)) }
}

/** True where readings reach over a range wide enough to tell a slope from an offset. */
export const wide = (values: readonly number[], ratio: number): boolean => {
  const least = Math.min(...values)
  return values.length >= 2 && least > 0 && Math.max(...values) / least >= ratio
}
