// One step of an implicit Runge–Kutta method: the one-page plant's integrator, no kin of those in sim/solve.

export type Vector = number[]

// SDIRK of order 4, L-stable, five implicit stages: Hairer & Wanner, Solving ODEs II, 2nd ed., IV.6, eq. (6.16);
// coefficients from memory, order checked in implicitStep.test.ts.
const A = [
  [1 / 4],
  [1 / 2, 1 / 4],
  [17 / 50, -1 / 25, 1 / 4],
  [371 / 1360, -137 / 2720, 15 / 544, 1 / 4],
  [25 / 24, -49 / 48, 125 / 16, -85 / 12, 1 / 4],
]
const C = [1 / 4, 3 / 4, 11 / 20, 1 / 2, 1]
const E = [-3 / 16, -27 / 32, 25 / 32, 0, 1 / 4]

/** Solves M x = b by Gauss–Jordan with pivoting, on copies. */
function solve(M: Vector[], b: Vector): Vector {
  const rows = M.map((row, r) => [...row, b[r]])
  for (let c = 0; c < rows.length; c++) {
    let best = c
    for (let r = c + 1; r < rows.length; r++) if (Math.abs(rows[r][c]) > Math.abs(rows[best][c])) best = r
    ;[rows[c], rows[best]] = [rows[best], rows[c]]
    for (let r = 0; r < rows.length; r++) {
      if (r === c) continue
      const q = rows[r][c] / rows[c][c]
      for (let j = c; j <= rows.length; j++) rows[r][j] -= q * rows[c][j]
    }
  }
  return rows.map((row, r) => row[row.length - 1] / row[r])
}

/** Largest error in tolerances. */
const size = (e: Vector, y: Vector, floor: Vector, tol: number): number =>
  Math.max(...e.map((each, n) => Math.abs(each) / (tol * (floor[n] + Math.abs(y[n])))))

/**
 * One step of h from (t, y) of dy/dt = f: the new state and its error, in units of tol (floor + |y|), the largest
 * component; null where Newton's iteration fails.
 */
export function step(
  f: (t: number, y: Vector) => Vector,
  t: number,
  y: Vector,
  h: number,
  floor: Vector,
  tol: number,
): { y: Vector; error: number } | null {
  const f0 = f(t, y)
  const M = y.map(() => new Array<number>(y.length))
  for (let j = 0; j < y.length; j++) {
    const d = 1e-7 * (floor[j] + Math.abs(y[j]))
    const beside = [...y]
    beside[j] += d
    const fj = f(t, beside)
    for (let r = 0; r < y.length; r++) M[r][j] = (r === j ? 1 : 0) - (h / 4) * ((fj[r] - f0[r]) / d)
  }
  const unit = (c: number) => y.map((_, r) => (r === c ? 1 : 0))
  const inverse = y.map((_, c) => solve(M, unit(c)))
  const backward = (b: Vector) => b.map((_, r) => b.reduce((sum, value, c) => sum + inverse[c][r] * value, 0))
  const k: Vector[] = []
  for (let s = 0; s < A.length; s++) {
    const base = y.map((value, n) => k.reduce((sum, kj, j) => sum + h * A[s][j] * kj[n], value))
    let ks = k[s - 1] ?? f0
    for (let tries = 1; ; tries++) {
      const at = base.map((value, n) => value + (h / 4) * ks[n])
      const fs = f(t + C[s] * h, at)
      const change = backward(ks.map((value, n) => fs[n] - value))
      ks = ks.map((value, n) => value + change[n])
      const left = (h / 4) * size(change, at, floor, tol)
      if (left < 1e-3) break
      if (tries === 12 || !Number.isFinite(left)) return null
    }
    k.push(ks)
  }
  const sum = (weights: Vector) => y.map((_, n) => h * k.reduce((all, kj, j) => all + weights[j] * kj[n], 0))
  const gain = sum(A[4])
  return { y: y.map((value, n) => value + gain[n]), error: size(backward(sum(E)), y, floor, tol) }
}
