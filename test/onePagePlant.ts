// The whole plant of PHYSICS.md on one page, written apart from sim/ as its oracle: other code, another integrator.
import type { ReferenceFile } from '../scenarios/referenceRuns.ts'
import { step, type Vector } from './implicitStep.ts'

/** The numbers of a plant by the short names of test/checks/runs.json, and what its runs do without. SI, °C. */
export type PageNumbers = ReferenceFile['base'] & {
  /** Enclosed, without and with a fan outside on the shaft: instead of `fan`. */
  enclosed?: 'plain' | 'outer fan'
  /** Dirty air path: 0.25 to 1. */
  dirt?: number
  /** Temperature of everything at the start, if not that of the air. */
  Tstart?: number
}

/** A phase: asked motor speed (rad/s; none: off), load at the spindle, surges of torque (N·m) added to it. */
export interface PagePhase {
  seconds: number
  speed?: number
  /** Power asks no more torque below `slow` (rad/s at the spindle), or `wPower`. */
  load?: { kind: 'torque' | 'power' | 'square'; value: number; slow?: number }
  surge?: { torque: number; every: number; lasts: number }
}

export interface PageRun {
  events: ['opens' | 'recloses' | 'destroyed', number][]
  /** i, ω, x, Tw, Tm, Ts at each asked time (s). */
  samples: number[][]
  /** Highest Tw, Tm, Ts. */
  peak: [number, number, number]
}

/** Typical sizes of the six states, under which errors are not counted relative to them. */
const FLOOR = [1e-2, 1e-1, 1e-1, 1, 1, 1]

/** What is set from outside: drive on, asked speed at `since` and its slope, load, surge. */
interface Inputs {
  on: boolean
  asked: number
  slope: number
  since: number
  phase: PagePhase
  surge: number
}

function ratesOf(
  p: PageNumbers,
  { on, asked, slope, since, phase, surge }: Inputs,
  t: number,
  y: Vector,
): Vector {
  const [i, w, x, Tw, Tm, Ts] = y
  const R = (p.R20 * (235 + Tw)) / 255
  const k = p.k20 * (1 + p.kTempCoeff * (Tm - 20))
  const J = p.Jm + p.Jfly + p.Jsp / p.N ** 2
  // Controller, supply, winding with its clipped rate.
  const wish = on ? asked + slope * (t - since) : 0
  const taum = (p.R20 * J) / p.k20 ** 2
  let u = p.k20 * wish
  if (p.mode === 'sag') u += p.Vb + p.Rc * i
  if (p.mode === 'tach') u += ((p.k20 * taum) / p.tauCl) * (wish - w) + x
  const v = Math.max(0, Math.min(u, p.Vmax - p.Rs * i))
  const f = (v - R * i - k * w - p.Vb * Math.tanh(i / 0.05)) / p.L
  const di = on ? Math.max(-i / 0.002, Math.min(f, (p.Imax - i) / 0.002)) : -i / 0.002
  let dx = 0
  if (!on) dx = -x / 0.1
  else if (p.mode === 'tach') dx = (p.k20 / p.tauCl) * (wish - w) + (v + p.L * (di - f) - u) / 0.1
  // Spindle and rotor.
  const s = w / p.N
  const { kind, value, slow = p.wPower } = phase.load ?? { kind: 'torque', value: 0 }
  let cut = surge * Math.tanh(s)
  if (kind === 'torque') cut += value * Math.tanh(s)
  else if (kind === 'power') cut += (value * Math.tanh(s)) / Math.max(s, slow)
  else cut += value * s * Math.abs(s)
  const drag = p.Td * Math.tanh(s / 0.5) + p.Bs * s
  const lost = p.Tc * Math.tanh(w / 0.5) + p.B * w
  const dw = (k * i - lost - (cut + drag) / (p.N * p.eta)) / J
  // Heat.
  let FF2 = p.FF ** 2
  if (p.lumpy) {
    const { FFp, Ip, wp } = p.lumpy
    FF2 = 1 + (FFp ** 2 - 1) * (Ip / Math.max(i, Ip / 5)) ** 0.7 * Math.min(1, (1.1 * w) / (w + 0.07 * wp))
  }
  const shaft = w ** 2 / ((w ** 2 + 1) ** (1 - p.m / 2) * p.wRef ** p.m)
  let g = shaft
  if (p.fan === 'blower') g = p.blow ** p.m
  if (p.fan === 'none') g = p.stir * shaft
  const open = p.enclosed ? 0 : (p.dirt ?? 1)
  const Ga = open * (p.Ga0 + p.Gfan * g)
  const Gc = p.Gc0 + (p.enclosed === 'plain' ? 0 : p.GcFan * (p.enclosed ? shaft : g))
  const inward = p.Gwm * (Tw - Tm)
  const brush = p.Vb * Math.abs(i)
  const heatW = FF2 * R * i * i + p.rotToW * lost * w + p.brushToW * brush
  const heatM = (1 - p.rotToW) * lost * w + (1 - p.brushToW) * brush
  return [
    di,
    dw,
    dx,
    (heatW - inward - Ga * (Tw - p.Ta)) / p.Cw,
    (heatM + inward - Gc * (Tm - p.Ta)) / p.Cm,
    (p.blend * Tw + (1 - p.blend) * Tm - Ts) / p.ts,
  ]
}

/** Runs the phases over and over for `seconds`, to `tol` (relative) a step. */
export function onePage(
  p: PageNumbers,
  phases: PagePhase[],
  seconds: number,
  times: number[],
  tol = 1e-7,
): PageRun {
  let y: Vector = [0, 0, 0, ...new Array<number>(3).fill(p.Tstart ?? p.Ta)]
  const run: PageRun = { events: [], samples: [], peak: [y[3], y[4], y[5]] }
  let closed = true
  let wasOn = false
  let asked = 0

  /** From t to `until`, or to where the switch moves or the winding is lost: that time. */
  const go = (inputs: Inputs, t: number, until: number): number => {
    const f = (at: number, state: Vector) => ratesOf(p, inputs, at, state)
    const reached = ([, , , Tw, , Ts]: Vector) =>
      Tw >= 300 || (closed ? Ts >= p.Topen : p.reset === 'self' && Ts <= p.Tclose)
    for (let h = 1e-3; t < until; ) {
      const span = Math.min(h, until - t)
      const done = step(f, t, y, span, FLOOR, tol)
      if (!done || !(done.error <= 1)) {
        h = span / 4
        continue
      }
      let [end, length] = [done.y, span]
      if (reached(end)) {
        // Halve the step until it ends on the event.
        let least = 0
        while (length - least > 1e-9) {
          const middle = (least + length) / 2
          const part = step(f, t, y, middle, FLOOR, tol)!.y
          if (reached(part)) [end, length] = [part, middle]
          else least = middle
        }
      }
      const [before, after] = [f(t, y), f(t + length, end)]
      run.peak.forEach((highest, n) => {
        const [a, b, da, db] = [y[3 + n], end[3 + n], length * before[3 + n], length * after[3 + n]]
        let top = Math.max(highest, b)
        // A crest inside the step: the cubic through both ends and their slopes.
        if (da > 0 && db < 0)
          for (let q = 0; q <= 1; q += 1 / 64)
            top = Math.max(
              top,
              a + q * da + q * q * (3 * (b - a) - 2 * da - db) + q ** 3 * (da + db - 2 * (b - a)),
            )
        run.peak[n] = top
      })
      y = end
      if (reached(end)) return t + length
      t = span === until - t ? until : t + span
      h = span * Math.min(4, 0.8 * Math.max(done.error, 1e-6) ** -0.25)
    }
    return until
  }

  const cycle = phases.reduce((sum, phase) => sum + phase.seconds, 0)
  if (y[5] >= p.Topen) {
    closed = false
    run.events.push(['opens', 0])
  }
  let t = 0
  for (let n = 0; t < seconds; n++) {
    const before = phases.slice(0, n % phases.length).reduce((sum, phase) => sum + phase.seconds, 0)
    const start = Math.floor(n / phases.length) * cycle + before
    const phase = phases[n % phases.length]
    const end = Math.min(start + phase.seconds, seconds)
    const { torque, every, lasts } = phase.surge ?? { torque: 0, every: Infinity, lasts: 0 }
    const edges: number[] = [end]
    for (let e = start; e < end && torque > 0; e += every) edges.push(e, Math.min(e + lasts, end))
    edges.push(...times.filter((at) => at > start && at < end))
    while (t < end) {
      const on = closed && (phase.speed ?? 0) > 0
      if (on && !wasOn) {
        asked = Math.max(0, y[1])
        y[2] = 0
      }
      if (!on) asked = 0
      wasOn = on
      const target = on ? phase.speed! : 0
      const rest = Math.abs(target - asked) / p.accel
      const slope = rest > 0 ? Math.sign(target - asked) * p.accel : 0
      const ramped = rest > 0 ? t + rest : Infinity
      const until = Math.min(ramped, ...edges.filter((edge) => edge > t + 1e-9))
      const surge = (t - start + 1e-9) % every < lasts ? torque : 0
      const at = go({ on, asked, slope, since: t, phase, surge }, t, until)
      asked = at === ramped ? target : asked + slope * (at - t)
      const stopped = at < until
      t = at
      if (times[run.samples.length] === t) run.samples.push([...y])
      if (y[3] >= 300) {
        run.events.push(['destroyed', t])
        return run
      }
      if (!stopped && !(closed ? y[5] >= p.Topen : p.reset === 'self' && y[5] <= p.Tclose)) continue
      closed = !closed
      run.events.push([closed ? 'recloses' : 'opens', t])
    }
  }
  return run
}
