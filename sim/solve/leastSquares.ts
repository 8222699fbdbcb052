// Nonlinear least squares between bounds: Levenberg–Marquardt with differences (Marquardt, SIAM J. 11, 1963).
import { factor, solve } from './lu.ts'

export interface Problem {
  /** Writes the residuals at p; whatever is not finite counts as no good at all. */
  readonly residuals: (p: Float64Array, out: Float64Array) => void
  readonly rows: number
  readonly low: ArrayLike<number>
  readonly high: ArrayLike<number>
  /** Step of each parameter for the differences. */
  readonly steps: ArrayLike<number>
}

export interface Solution {
  readonly p: Float64Array
  /** Sum of squared residuals. */
  readonly cost: number
  /** JᵀJ at p, row-major: its inverse is the covariance where residuals have variance 1. */
  readonly normal: Float64Array
  readonly evaluations: number
}

const MOST = 60
/** Done when a step lowers the cost by less than this share. */
const CLOSE = 1e-9
const START = 1e-3
const HOPELESS = 1e9

/** The least sum of squares found from a start; null where the residuals are not finite there. */
export function leastSquares(problem: Problem, start: ArrayLike<number>): Solution | null {
  const { residuals, rows, low, high, steps } = problem
  const n = start.length
  let p = Float64Array.from(start, (value, k) => Math.min(Math.max(value, low[k]), high[k]))
  let r = new Float64Array(rows)
  let tried = new Float64Array(rows)
  const beside = new Float64Array(rows)
  const jacobian = Array.from({ length: n }, () => new Float64Array(rows))
  let evaluations = 1
  residuals(p, r)
  let cost = squares(r)
  if (!Number.isFinite(cost)) return null
  const normal = new Float64Array(n * n)
  const gradient = new Float64Array(n)

  const linearize = () => {
    for (let k = 0; k < n; k++) {
      const q = p.slice()
      // Away from a bound, so that the difference stays inside.
      const step = p[k] + steps[k] <= high[k] ? steps[k] : -steps[k]
      q[k] += step
      residuals(q, beside)
      evaluations++
      for (let j = 0; j < rows; j++) jacobian[k][j] = (beside[j] - r[j]) / step
    }
    for (let k = 0; k < n; k++) {
      gradient[k] = dot(jacobian[k], r)
      for (let l = 0; l <= k; l++) normal[k * n + l] = normal[l * n + k] = dot(jacobian[k], jacobian[l])
    }
  }

  let damping = START
  linearize()
  for (let count = 0; count < MOST && damping < HOPELESS; count++) {
    const matrix = normal.slice()
    const step = gradient.map((value) => -value)
    for (let k = 0; k < n; k++) {
      matrix[k * n + k] *= 1 + damping
      // Pressed against a bound: left there, and the others go where they go without it.
      if ((p[k] <= low[k] && step[k] < 0) || (p[k] >= high[k] && step[k] > 0)) hold(matrix, step, k, n)
    }
    const pivots = new Int32Array(n)
    if (!factor(matrix, pivots, n)) {
      damping *= 10
      continue
    }
    solve(matrix, pivots, n, step)
    const next = p.map((value, k) => Math.min(Math.max(value + step[k], low[k]), high[k]))
    residuals(next, tried)
    evaluations++
    const lower = squares(tried)
    if (!(lower < cost)) {
      // No step is small enough to help: this is the bottom, to the last digits.
      if (step.every((value, k) => Math.abs(value) < 1e-3 * steps[k])) break
      damping *= 8
      continue
    }
    const gained = (cost - lower) / cost
    p = next
    cost = lower
    ;[r, tried] = [tried, r]
    damping = Math.max(damping / 8, 1e-12)
    linearize()
    if (gained < CLOSE) break
  }
  return { p, cost, normal: normal.slice(), evaluations }
}

/** Takes unknown k out of the linear system: its step is 0. */
function hold(matrix: Float64Array, step: Float64Array, k: number, n: number): void {
  for (let l = 0; l < n; l++) matrix[k * n + l] = matrix[l * n + k] = 0
  matrix[k * n + k] = 1
  step[k] = 0
}

const squares = (r: Float64Array): number => dot(r, r)
function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let n = 0; n < a.length; n++) sum += a[n] * b[n]
  return sum
}

/** Inverse of a symmetric n × n matrix, row-major; null where it is singular. */
export function inverse(matrix: Float64Array, n: number): Float64Array | null {
  const factors = matrix.slice()
  const pivots = new Int32Array(n)
  if (!factor(factors, pivots, n)) return null
  const out = new Float64Array(n * n)
  for (let k = 0; k < n; k++) {
    const column = new Float64Array(n)
    column[k] = 1
    solve(factors, pivots, n, column)
    for (let j = 0; j < n; j++) out[j * n + k] = column[j]
  }
  return out
}
