// The stiff stepper: Rodas4 with error control.
import { formula } from './formula.ts'
import type { Limits, Stepper } from './stepper.ts'
import { type Failure, mostSteps, noEffort, smallestStep, type System, type Tolerance } from './system.ts'

const safety = 0.9
const mostShrink = 1 / 6
const mostGrow = 5

/** A stepper for stiff systems: L-stable, order 4 (Hairer & Wanner II, IV.7 and the controller of IV.8). */
export function rosenbrock(system: System, tolerance: Tolerance, limits: Limits = {}): Stepper {
  const n = system.size
  const most = limits.steps ?? mostSteps
  const { relative, absolute } = tolerance
  const effort = noEffort()
  const { linearize, attempt, value, slope, y1, error } = formula(system, effort)
  const y = new Float64Array(n)
  let tOld = 0
  let t = 0
  let wanted = 0 // the size the controller would take next
  let lastSize = 0 // size and error of the last accepted step, for the prediction; 0 at a segment's start
  let lastError = 0

  function start(t0: number, y0: Float64Array, firstStep: number): void {
    tOld = t = t0
    y.set(y0)
    wanted = firstStep
    lastSize = 0
  }

  function step(tEnd: number): Failure | null {
    const rest = tEnd - t
    if (!(rest > 0)) throw new RangeError(`a step from ${t} cannot end at ${tEnd}`)
    if (effort.steps >= most) return 'too many steps'
    linearize(t, y, Math.min(wanted, rest))
    let rejected = false
    let h = wanted
    for (;;) {
      // Land on tEnd without leaving a sliver for the step after.
      const size = rest <= 1.01 * h ? rest : rest < 2 * h ? rest / 2 : h
      const err = attempt(size) ? norm() : Infinity
      const factor = clamp(safety / Math.sqrt(Math.sqrt(err)))
      if (err <= 1) {
        accept(size, size === rest ? tEnd : t + size, err, factor, rejected, h)
        return null
      }
      effort.rejected++
      rejected = true
      h = size * (err < Infinity ? factor : mostShrink)
      if (h < smallestStep(t)) return err < Infinity ? 'step too small' : 'not finite'
    }
  }

  function accept(size: number, tNew: number, err: number, factor: number, rejected: boolean, h: number): void {
    effort.steps++
    // Gustafsson's prediction: the error's trend from the last step to this one goes on.
    const trend = lastSize > 0 ? (size / lastSize) * Math.sqrt(Math.sqrt(lastError / (err * err))) : Infinity
    const growth = Math.min(factor, clamp(safety * trend), rejected ? 1 : mostGrow)
    // A step cut short to land on tEnd says nothing against the size that was wanted.
    wanted = size < h && growth === mostGrow ? Math.max(h, size * growth) : size * growth
    lastSize = size
    lastError = Math.max(0.01, err)
    tOld = t
    t = tNew
    y.set(y1)
  }

  /** The error in units of the tolerance, RMS over the states; NaN where the step is not finite. */
  function norm(): number {
    let sum = 0
    for (let i = 0; i < n; i++) {
      const scale = absolute[i] + relative * Math.max(Math.abs(y[i]), Math.abs(y1[i]))
      const ratio = error[i] / scale
      sum += ratio * ratio
    }
    return Math.sqrt(sum / n)
  }

  return {
    start,
    step,
    get tOld() {
      return tOld
    },
    get t() {
      return t
    },
    y,
    value: (state, at) => value(state, (at - tOld) / (t - tOld)),
    slope: (state, at) => slope(state, (at - tOld) / (t - tOld)) / (t - tOld),
    interpolate(at, out) {
      const s = (at - tOld) / (t - tOld)
      for (let i = 0; i < n; i++) out[i] = value(i, s)
    },
    effort,
    get nextStep() {
      return wanted
    },
  }
}

/** A step factor within its bounds; the smallest for NaN. */
function clamp(factor: number): number {
  return factor >= mostShrink ? Math.min(factor, mostGrow) : mostShrink
}
