// LU with partial pivoting against the definition of a solution.
import { expect, it } from 'vitest'
import { factor, solve } from '../../../sim/solve/lu.ts'

/** Solves A x = b and returns the largest residue. */
function residue(A: number[], b: number[]): number {
  const n = b.length
  const matrix = Float64Array.from(A)
  const pivots = new Int32Array(n)
  expect(factor(matrix, pivots, n)).toBe(true)
  const x = Float64Array.from(b)
  solve(matrix, pivots, n, x)
  return Math.max(...b.map((bi, i) => Math.abs(x.reduce((sum, xj, j) => sum + A[i * n + j] * xj, -bi))))
}

it('solves full systems of every small size', () => {
  for (let n = 1; n <= 8; n++) {
    const A = Array.from({ length: n * n }, (_, i) => Math.sin(1 + 3 * i * i))
    const b = Array.from({ length: n }, (_, i) => Math.cos(5 * i))
    expect(residue(A, b)).toBeLessThan(1e-13)
  }
})

it('swaps rows where the diagonal is zero or tiny', () => {
  expect(residue([0, 2, 0, 0, 0, 3, 4, 0, 0], [2, 3, 4])).toBeLessThan(1e-15)
  // Without pivoting the first unknown would come out as 0: a textbook loss of all digits.
  expect(residue([1e-20, 1, 1, 1], [1, 2])).toBeLessThan(1e-15)
})

it('says so when there is no solution to find', () => {
  const pivots = new Int32Array(2)
  expect(factor(Float64Array.of(1, 2, 2, 4), pivots, 2)).toBe(false)
  expect(factor(Float64Array.of(Number.NaN, 1, 1, 1), pivots, 2)).toBe(false)
  expect(factor(Float64Array.of(Infinity, 1, 1, 1), pivots, 2)).toBe(false)
})
