// The normal distribution: the place under which a share of it lies.

/**
 * Standard deviations from the middle below which the share p (0 to 1) lies; error under 2e-9 of it. Rational fits of
 * P. J. Acklam (2003), from memory; test/sim/studies/sure holds it against printed quantiles.
 */
export function normalAt(p: number): number {
  if (p > 0.5) return -normalAt(1 - p)
  if (p >= 0.02425) {
    const q = p - 0.5
    const r = q * q
    return (
      (q *
        polynomial(
          r,
          [
            -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716,
            2.506628277459239,
          ],
        )) /
      polynomial(
        r,
        [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572, 1],
      )
    )
  }
  const q = Math.sqrt(-2 * Math.log(p))
  return (
    polynomial(
      q,
      [
        -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
        2.938163982698783,
      ],
    ) / polynomial(q, [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1])
  )
}

/** The first coefficient goes with the highest power. */
const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduce((sum, each) => sum * x + each, 0)

/** Half the width of the middle 8 in 10, in standard deviations. */
export const EIGHT_IN_TEN = normalAt(0.9)
