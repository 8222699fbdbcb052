// Least squares against a certified problem, and where it must give up.
import { expect, it } from 'vitest'
import { inverse, leastSquares } from '../../../sim/solve/leastSquares.ts'

// NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1 (1 − e^(−b2 x)); data and certified
// values as transcribed in public repositories.
const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760]
const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78]
const CERTIFIED = {
  b: [2.3894212918e2, 5.5015643181e-4],
  sd: [2.7070075241, 7.2668688436e-6],
  squares: 1.2455138894e-1,
}
const misra = (low: number[], high: number[]) => ({
  rows: x.length,
  low,
  high,
  steps: [1e-5, 1e-11],
  residuals: ([b1, b2]: Float64Array, out: Float64Array) =>
    x.forEach((at, n) => {
      out[n] = -b1 * Math.expm1(-b2 * at) - y[n]
    }),
})
const wide = misra([0, 0], [1e6, 1])

it.each([[[500, 1e-4]], [[250, 5e-4]]])('meets the certified values from %j', (start) => {
  const found = leastSquares(wide, start)!
  found.p.forEach((b, k) => {
    expect(Math.abs(b / CERTIFIED.b[k] - 1)).toBeLessThan(1e-6)
  })
  expect(found.cost / CERTIFIED.squares).toBeCloseTo(1, 8)
  const covariance = inverse(found.normal, 2)!
  const variance = found.cost / (x.length - 2)
  CERTIFIED.sd.forEach((sd, k) => {
    expect(Math.sqrt(variance * covariance[k * 3]) / sd).toBeCloseTo(1, 4)
  })
  expect(found.evaluations).toBeLessThan(150)
})

it('stays between its bounds, and ends on the nearer one', () => {
  const found = leastSquares(misra([0, 0], [200, 1]), [150, 1e-3])!
  expect(found.p[0]).toBe(200)
  // With b1 held the best b2 is a matter of one unknown: nothing beside it is better.
  const cost = (b2: number) => x.reduce((sum, at, n) => sum + (-200 * Math.expm1(-b2 * at) - y[n]) ** 2, 0)
  expect(cost(found.p[1])).toBeLessThanOrEqual(Math.min(cost(found.p[1] * 1.001), cost(found.p[1] * 0.999)))
})

it('is null where the start gives nothing finite; a singular matrix has no inverse', () => {
  const nothing = { ...wide, residuals: (_: Float64Array, out: Float64Array) => out.fill(Number.NaN) }
  expect(leastSquares(nothing, [1, 1])).toBeNull()
  expect(inverse(Float64Array.of(1, 2, 2, 4), 2)).toBeNull()
})
