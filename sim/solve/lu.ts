// Small dense linear systems: LU with partial pivoting, in place, row-major.

/**
 * Factors the n × n matrix in place, the diagonal inverted; pivots[k] is the row that column k swapped in.
 * Returns false if a column has no finite pivot above zero: the matrix is singular or not finite.
 */
export function factor(matrix: Float64Array, pivots: Int32Array, n: number): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k
    let largest = Math.abs(matrix[k * n + k])
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(matrix[i * n + k])
      if (size > largest) {
        largest = size
        pivot = i
      }
    }
    if (!(largest > 0 && largest < Infinity)) return false
    pivots[k] = pivot
    if (pivot !== k) {
      for (let j = 0; j < n; j++) {
        const swapped = matrix[k * n + j]
        matrix[k * n + j] = matrix[pivot * n + j]
        matrix[pivot * n + j] = swapped
      }
    }
    const inverse = 1 / matrix[k * n + k]
    matrix[k * n + k] = inverse
    for (let i = k + 1; i < n; i++) {
      const row = i * n
      const multiplier = matrix[row + k] * inverse
      matrix[row + k] = multiplier
      if (multiplier !== 0) {
        for (let j = k + 1; j < n; j++) matrix[row + j] -= multiplier * matrix[k * n + j]
      }
    }
  }
  return true
}

/** Solves for b in place with a matrix and pivots from `factor`. */
export function solve(matrix: Float64Array, pivots: Int32Array, n: number, b: Float64Array): void {
  for (let k = 0; k < n; k++) {
    const pivot = pivots[k]
    const swapped = b[pivot]
    b[pivot] = b[k]
    b[k] = swapped
  }
  for (let i = 1; i < n; i++) {
    const row = i * n
    let sum = b[i]
    for (let j = 0; j < i; j++) sum -= matrix[row + j] * b[j]
    b[i] = sum
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n
    let sum = b[i]
    for (let j = i + 1; j < n; j++) sum -= matrix[row + j] * b[j]
    b[i] = sum * matrix[row + i]
  }
}
