// The second opinion: explicit extrapolation (ODEX, by the odex package) behind the same interface.
import { type Dense, Solver } from './odexLibrary.js'
import type { Limits, Stepper } from './stepper.ts'
import { type Failure, mostSteps, noEffort, smallestStep, type System, type Tolerance } from './system.ts'

/** Calls of `rates` allowed for each step of the limit: the package can loop for ever within one. */
const callsAStep = 200

/** The span of one solve in units of the asked step: room for the package to say how far it would go next. */
const room = 8

/** From exact rest the package first creeps, far below the smallest step worth trying otherwise. */
const creep = 1e-4

/** Thrown through the package to stop it: by itself it stops only after an accepted step. */
const stop = new Error('the extrapolation was stopped')

/**
 * A stepper for non-stiff systems; right but slow on stiff ones. One step is one accepted step of the package,
 * started afresh in a time that begins at 0 and has the asked step as its unit: the package takes no first
 * step below 1e-4, and this way that never matters. `effort.rejected` counts the steps that ended shorter
 * than asked, however many attempts that took.
 */
export function extrapolation(system: System, tolerance: Tolerance, limits: Limits = {}): Stepper {
  const n = system.size
  const most = limits.steps ?? mostSteps
  const effort = noEffort()
  const y = new Float64Array(n)
  const state = new Float64Array(n)
  const out = new Float64Array(n)
  const answer: number[] = new Array(n).fill(0)
  let tOld = 0
  let t = 0
  let wanted = 0
  let unit = 1 // the asked step, s
  let length = 0 // of the accepted step, in units; 0 until there is one
  let next = 0 // what the package would take after it, in units
  let ending: Failure | null = null
  let dense: Dense = () => Number.NaN

  const solver = new Solver(n)
  solver.relativeTolerance = tolerance.relative
  solver.absoluteTolerance = Array.from(tolerance.absolute)
  solver.denseOutput = true
  solver.initialStepSize = 1

  function leave(why: Failure | null): never {
    ending = why
    throw stop
  }

  function rates(x: number, yx: number[]): number[] {
    if (length > 0) {
      // The first look after an accepted step is halfway into the next: it tells the size, all we want of it.
      next = 2 * (x - length)
      leave(null)
    }
    if (effort.rates >= most * callsAStep) leave('too many steps')
    // Its substeps are up to 34 times shorter than its steps.
    if (x > 0 && x * unit < (creep / 100) * smallestStep(t)) leave('step too small')
    state.set(yx)
    system.rates(t + unit * x, state, out)
    effort.rates++
    for (let i = 0; i < n; i++) {
      answer[i] = unit * out[i]
      if (!Number.isFinite(answer[i]) || !Number.isFinite(yx[i])) leave('not finite')
    }
    return answer
  }

  function accepted(_: number, __: number, x: number, yx: number[], interpolant?: Dense | false): boolean {
    if (interpolant) {
      length = x
      state.set(yx)
      dense = interpolant
    }
    return true
  }

  /** One accepted step of at most `unit`; null if there was one. */
  function attempt(): Failure | null {
    length = 0
    ending = 'too many steps'
    try {
      solver.solve(rates, 0, Array.from(y), room, accepted)
    } catch (thrown) {
      if (thrown !== stop) throw thrown
    }
    return ending
  }

  function start(t0: number, y0: Float64Array, firstStep: number): void {
    tOld = t = t0
    y.set(y0)
    wanted = firstStep
  }

  function step(tEnd: number): Failure | null {
    const rest = tEnd - t
    if (!(rest > 0)) throw new RangeError(`a step from ${t} cannot end at ${tEnd}`)
    if (effort.steps >= most) return 'too many steps'
    let h = wanted
    let why: Failure | null = 'step too small'
    while (why && (h >= creep * smallestStep(t) || h >= rest)) {
      // Land on tEnd without leaving a sliver for the step after.
      unit = rest <= 1.01 * h ? rest : rest < 2 * h ? rest / 2 : h
      why = attempt()
      if (why || length < 1) effort.rejected++
      if (why && why !== 'not finite') return why
      if (why) h = unit / 6
    }
    if (why) return why
    effort.steps++
    // A step cut short to land on tEnd says nothing against the size that was wanted.
    wanted = length === 1 && unit < h ? Math.max(h, next * unit) : next * unit
    tOld = t
    t = length === 1 && unit === rest ? tEnd : t + length * unit
    y.set(state)
    return null
  }

  function value(i: number, at: number): number {
    return at === t ? y[i] : dense(i, (at - tOld) / unit)
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
    value,
    slope(i, at) {
      const x = (at - tOld) / unit
      return (dense(i, x + 1e-4) - dense(i, x - 1e-4)) / (2e-4 * unit)
    },
    interpolate(at, into) {
      for (let i = 0; i < n; i++) into[i] = value(i, at)
    },
    effort,
    get nextStep() {
      return wanted
    },
  }
}
