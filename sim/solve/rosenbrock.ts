// The stiff stepper: Rodas4 with error control.
import { formula } from './formula.ts'
import type { Limits, Stepper } from './stepper.ts'
import { type Failure, mostSteps, noEffort, type System, smallestStep, type Tolerance } from './system.ts'

const safety = 0.9
const mostShrink = 1 / 6
const mostGrow = 5

/** A stepper for stiff systems: L-stable, order 4 (Hairer & Wanner II, IV.7; its step control IV.8). */
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
  let lastSize = 0 // size and error of the last accepted step; 0 at a segment's start
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
    let h = wanted
    let finite = true
    // A rest below the smallest step is taken whole.
    for (let tries = 1; h >= smallestStep(t) || h >= rest; tries++) {
      // Land on tEnd without leaving a sliver for the step after.
      const size = rest <= 1.01 * h ? rest : rest < 2 * h ? rest / 2 : h
      const err = attempt(size) ? norm() : Infinity
      if (err <= 1) {
        const factor = Math.min(growth(size, err), tries > 1 ? 1 : mostGrow)
        // A step cut short to land on tEnd says nothing against the size that was wanted.
        wanted = size < h && factor === mostGrow ? Math.max(h, size * factor) : size * factor
        accept(size, size === rest ? tEnd : t + size, err)
        return null
      }
      effort.rejected++
      finite = err < Infinity
      h = size * clamp(safety * err ** -0.25)
    }
    return finite ? 'step too small' : 'not finite'
  }

  function accept(size: number, tNew: number, err: number): void {
    effort.steps++
    lastSize = size
    lastError = Math.max(0.01, err)
    tOld = t
    t = tNew
    y.set(y1)
  }

  /** The factor to the next step by the error, and by Gustafsson's prediction that its trend goes on. */
  function growth(size: number, err: number): number {
    const byError = clamp(safety * err ** -0.25)
    if (lastSize === 0) return byError
    return Math.min(byError, clamp(safety * (size / lastSize) * (lastError / (err * err)) ** 0.25))
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
