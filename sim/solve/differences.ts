// Derivatives of the rates by one-sided differences, where a system gives none.
import type { Effort, System } from './system.ts'

/** Differences of one system with their work space; `effort` counts the calls. */
export function differences(system: System, effort: Effort) {
  const n = system.size
  const probe = new Float64Array(n)
  const moved = new Float64Array(n)

  /** The Jacobian at (t, y), row-major, given f0 = f(t, y). At a kink either side serves. */
  function jacobian(t: number, y: Float64Array, f0: Float64Array, out: Float64Array): void {
    probe.set(y)
    for (let j = 0; j < n; j++) {
      const shifted = y[j] + 1e-7 * Math.max(Math.abs(y[j]), system.typical[j])
      const inverse = 1 / (shifted - y[j]) // the step as rounded, not as asked
      probe[j] = shifted
      system.rates(t, probe, moved)
      probe[j] = y[j]
      for (let i = 0; i < n; i++) out[i * n + j] = (moved[i] - f0[i]) * inverse
    }
    effort.rates += n
  }

  /** ∂f/∂t at (t, y), looking ahead by less than h: far enough that neither t nor f drowns in rounding. */
  function timeDerivative(t: number, y: Float64Array, f0: Float64Array, h: number, out: Float64Array): void {
    const shifted = t + Math.sqrt(Number.EPSILON * Math.max(Math.abs(t), h) * h)
    const inverse = 1 / (shifted - t)
    system.rates(shifted, y, moved)
    effort.rates++
    for (let i = 0; i < n; i++) out[i] = (moved[i] - f0[i]) * inverse
  }

  return { jacobian, timeDerivative }
}
