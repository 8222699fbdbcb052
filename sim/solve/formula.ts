// One step of Rodas4 of a given size: linearise, six stages, one factorisation. No error control.
import { differences } from './differences.ts'
import { factor, solve } from './lu.ts'
import { a, C, c, d, gamma, h3, h4, stages } from './rodas4.ts'
import type { Effort, System } from './system.ts'

export type Formula = ReturnType<typeof formula>

/** The formula on one system with its work space; `effort` counts the calls. */
export function formula(system: System, effort: Effort) {
  const n = system.size
  const { jacobian, timeDerivative } = differences(system, effort)
  const y0 = new Float64Array(n)
  const y1 = new Float64Array(n)
  const f0 = new Float64Array(n)
  const ft = new Float64Array(n)
  const f = new Float64Array(n)
  const u = new Float64Array(n)
  const J = new Float64Array(n * n)
  const W = new Float64Array(n * n)
  const pivots = new Int32Array(n)
  const k = Array.from({ length: stages }, () => new Float64Array(n))
  const error = k[stages - 1]
  const c3 = new Float64Array(n)
  const c4 = new Float64Array(n)
  const bent = new Uint8Array(n)
  let t0 = 0

  /** Rates and their derivatives at (t, y), for steps of about h from there; all are kept for a retry. */
  function linearize(t: number, y: Float64Array, h: number): void {
    t0 = t
    y0.set(y)
    system.rates(t, y0, f0)
    effort.rates++
    if (system.jacobian) system.jacobian(t, y0, J)
    else jacobian(t, y0, f0, J)
    effort.jacobians++
    if (system.autonomous) ft.fill(0)
    else timeDerivative(t, y0, f0, h, ft)
  }

  /** The step of h: fills `y1` and `error`. False if W is singular or not finite. */
  function attempt(h: number): boolean {
    const inverse = 1 / h
    bent.fill(0)
    for (let i = 0; i < W.length; i++) W[i] = -J[i]
    for (let i = 0; i < W.length; i += n + 1) W[i] += inverse / gamma
    effort.factorizations++
    if (!factor(W, pivots, n)) return false
    for (let s = 0; s < stages; s++) {
      const ks = k[s]
      for (let i = 0; i < n; i++) {
        u[i] = y0[i]
        ks[i] = 0
      }
      const as = a[s]
      const Cs = C[s]
      for (let j = 0; j < s; j++) {
        const kj = k[j]
        const asj = as[j]
        const Csj = Cs[j] * inverse
        for (let i = 0; i < n; i++) {
          u[i] += asj * kj[i]
          ks[i] += Csj * kj[i]
        }
      }
      if (s > 0) system.rates(t0 + c[s] * h, u, f)
      const fs = s > 0 ? f : f0
      const hd = h * d[s]
      for (let i = 0; i < n; i++) ks[i] += fs[i] + hd * ft[i]
      solve(W, pivots, n, ks)
    }
    effort.rates += stages - 1
    for (let i = 0; i < n; i++) y1[i] = u[i] + error[i]
    return true
  }

  /** One state at the fraction s of the last attempt. */
  function value(i: number, s: number): number {
    bend(i)
    return y0[i] * (1 - s) + s * (y1[i] + (1 - s) * (c3[i] + s * c4[i]))
  }

  /** The derivative of `value` with respect to s. */
  function slope(i: number, s: number): number {
    bend(i)
    return y1[i] - y0[i] + (1 - 2 * s) * c3[i] + s * (2 - 3 * s) * c4[i]
  }

  /** How a state bends between its ends: worked out when it is first asked after an attempt. */
  function bend(i: number): void {
    if (bent[i] === 1) return
    bent[i] = 1
    c3[i] = c4[i] = 0
    for (let j = 0; j < h3.length; j++) {
      c3[i] += h3[j] * k[j][i]
      c4[i] += h4[j] * k[j][i]
    }
  }

  return { linearize, attempt, value, slope, y1, error }
}
