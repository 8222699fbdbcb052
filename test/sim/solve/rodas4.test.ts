// The table of Rodas4 against the order conditions of Rosenbrock methods.
import { describe, expect, it } from 'vitest'
import { a, C, c, d, gamma, h3, h4, stages } from '../../../sim/solve/rodas4.ts'

// The table is in the form that needs no product with J. Back to the classical α, γ and b:
// Γ = (I/γ − C)⁻¹, α = a Γ, b = m Γ, with u the vectors of the table (Hairer & Wanner II, IV.7, eq. 7.25 f.).
const I = [...Array(stages).keys()]
const at = (rows: number[][], i: number, j: number) => rows[i][j] ?? 0

const Gamma: number[][] = I.map(() => I.map(() => 0))
for (const j of I) {
  for (const i of I.slice(j)) {
    // Forward substitution, column by column.
    const sum = I.slice(j, i).reduce((total, k) => total + at(C, i, k) * Gamma[k][j], i === j ? 1 : 0)
    Gamma[i][j] = sum * gamma
  }
}
const times = (row: number[]) => I.map((j) => I.reduce((sum, k) => sum + (row[k] ?? 0) * Gamma[k][j], 0))
const alpha = I.map((i) => times(a[i]))
const beta = I.map((i) => I.map((j) => alpha[i][j] + Gamma[i][j]))

const rowSum = (row: number[]) => row.reduce((sum, x) => sum + x, 0)
const A = alpha.map(rowSum)
const B = beta.map(rowSum)
const dot = (x: number[], y: (i: number) => number) => I.reduce((sum, i) => sum + x[i] * y(i), 0)
const through = (rows: number[][], v: number[]) => rows.map((row) => dot(row, (k) => v[k]))

/** y1 = u6 + k6, so m is the last row of `a` and a 1; the embedded solution is u6. */
const m = [...a[stages - 1], 1]
const b = times(m)
const embedded = times([...a[stages - 1], 0])

/** Left side less right side of every order condition up to `order` after a fraction s of the step. */
function residues(weights: number[], order: number, s = 1): number[] {
  // One line per rooted tree; Hairer & Wanner II, IV.7, table 7.1 (from memory; each follows from its tree).
  const conditions: [order: number, left: number, right: number][] = [
    [1, dot(weights, () => 1), s],
    [2, dot(weights, (i) => B[i]), s ** 2 / 2],
    [3, dot(weights, (i) => A[i] ** 2), s ** 3 / 3],
    [3, dot(weights, (i) => through(beta, B)[i]), s ** 3 / 6],
    [4, dot(weights, (i) => A[i] ** 3), s ** 4 / 4],
    [4, dot(weights, (i) => A[i] * through(alpha, B)[i]), s ** 4 / 8],
    [
      4,
      dot(
        weights,
        (i) =>
          through(
            beta,
            A.map((x) => x ** 2),
          )[i],
      ),
      s ** 4 / 12,
    ],
    [4, dot(weights, (i) => through(beta, through(beta, B))[i]), s ** 4 / 24],
  ]
  return conditions.filter(([o]) => o <= order).map(([, left, right]) => left - right)
}
const largest = (values: number[]) => Math.max(...values.map(Math.abs))

describe('Rodas4', () => {
  it('meets the eight conditions of order 4', () => {
    expect(largest(residues(b, 4))).toBeLessThan(1e-13)
  })

  it('embeds a solution of order 3 and not of order 4', () => {
    expect(largest(residues(embedded, 3))).toBeLessThan(1e-13)
    expect(largest(residues(embedded, 4))).toBeGreaterThan(1e-3)
  })

  it('has a dense output of order 3', () => {
    for (const s of [0.1, 0.25, 0.5, 0.75, 0.9]) {
      const bend = I.map((j) => (h3[j] ?? 0) + s * (h4[j] ?? 0))
      const weights = times(I.map((j) => s * m[j] + s * (1 - s) * bend[j]))
      expect(largest(residues(weights, 3, s))).toBeLessThan(1e-12)
    }
  })

  it('keeps time where it says: c and d are the row sums of α and Γ', () => {
    expect(largest(I.map((i) => A[i] - c[i]))).toBeLessThan(1e-13)
    expect(largest(I.map((i) => rowSum(Gamma[i]) - d[i]))).toBeLessThan(1e-13)
  })

  it('is stiffly accurate, so R(∞) = 0', () => {
    expect(largest(I.map((j) => beta[stages - 1][j] - b[j]))).toBeLessThan(1e-13)
  })
})
