// Envelope following: a duty that repeats is run a turn here and there, and the turns between follow from those.
import { differences } from './cycles/slope.ts'
import { type Gap, skipped } from './cycles/gap.ts'
import { bentTo, defectOf, type Model, movedTo, reach, walk } from './cycles/model.ts'
import { cameRound, coldStart, heatOf, type Start, type Turn, turner, withHeat } from './cycles/turn.ts'
import { cycleSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { assemble } from './plant.ts'
import { type Progress, run } from './run.ts'
import type { Checkpoint, Effort, Ending, Trace } from './trace.ts'

export interface CycleOptions {
  /** Error a jump may make, K. */
  readonly tolerance?: number
  /** Stop when the cutoff first opens. */
  readonly toFirstOpening?: boolean
}

export interface Computed {
  readonly n: number
  readonly turn: Turn
  readonly gap: Gap | null
}

export interface CycleRun {
  readonly seconds: number
  readonly computed: readonly Computed[]
  readonly tail: Trace | null
  readonly effort: Effort
  readonly log: string[]
}

const NEAR = 0.3
const DESTROYED = 300
export const tune = { power: 2, grow: 5, safety: 0.8, first: 2 }

export function* cycles(job: Job, options: CycleOptions = {}): Generator<Progress, CycleRun> {
  const { duty, parts } = job
  const seconds = cycleSeconds(duty)
  const tolerance = options.tolerance ?? 0.02
  const whole = seconds > 0 ? Math.floor((duty.seconds / seconds) * (1 + 1e-12)) : 0
  const turns = turner(job)
  const opensAt = parts.cutoff.fitted === 'none' ? Infinity : parts.cutoff.opensAt
  const hot = (peaks: Float64Array) => peaks[2] > opensAt - NEAR || peaks[0] > DESTROYED - NEAR

  const computed: Computed[] = []
  const log: string[] = []
  let start: Start = coldStart(job, assemble(parts).states)
  let n = 0
  let model: Model | null = null
  let jump = tune.first
  let misses = 0

  running: while (n < whole) {
    const turn: Turn | null = yield* turns.turn(start)
    if (!turn) break
    computed.push({ n, turn, gap: null })
    let base: Turn = turn
    start = turn.end
    n++
    if (!cameRound(turn)) {
      model = null
      continue
    }
    const at = heatOf(turn.start.states)
    const end = heatOf(turn.end.states)
    if (model) model = movedTo(model, at, end)
    else {
      model = yield* differences(job, turns, turn)
      if (!model) break
    }
    // Jump as long as there is somewhere to jump to.
    for (;;) {
      const here: Model = model
      jump = Math.min(jump, whole - n)
      let far = 0
      const peaks = new Float64Array(3)
      walk(here, jump, null, (k, z) => {
        for (let h = 0; h < 3; h++) peaks[h] = z[h] + base.rise[h]
        if (hot(peaks)) return false
        far = k
        return true
      })
      if (far === 0) {
        log.push('direct')
        break running
      }
      if (far < 2) {
        jump = 2
        break
      }
      const z = walk(here, far, null)
      let landed: Turn | null = yield* turns.turn(withHeat(base.end, z))
      for (let k = 0; k < 2 && landed && !cameRound(landed); k++) {
        log.push('again')
        landed = yield* turns.turn(withHeat(landed.end, z))
      }
      if (!landed || !cameRound(landed)) {
        log.push(`lost ${far}`)
        jump = Math.floor(far / 2)
        if (jump < 2) break
        continue
      }
      const landedEnd = heatOf(landed.end.states)
      const value = defectOf(here, z, landedEnd)
      const defect = { value, far: reach(here.at, z) }
      const corrected = walk(here, far, defect)
      const error = Math.max(...corrected.map((c, h) => Math.abs(c - z[h])))
      const factor = Math.min(tune.grow, Math.max(0.2, tune.safety * (tolerance / Math.max(error, 1e-9)) ** (1 / (tune.power + 1))))
      const gap: Gap = { from: base, to: landed, turns: far, model: here, defect }
      let early = 0
      skipped(gap, (one) => {
        if (!hot(one.peaks)) return true
        early = one.turn
        return false
      })
      if (error > tolerance || early > 0) {
        log.push(`miss ${far} ${error.toFixed(4)} ${early}`)
        model = bentTo(here, z, landedEnd)
        misses++
        if (misses >= 2) {
          model = yield* differences(job, turns, base)
          if (!model) break running
          model = { ...model, at: here.at, gain: here.gain }
          misses = 0
        }
        jump = early > 0 ? early - 1 : Math.max(1, Math.floor(far * factor))
        if (jump < 2) break
        continue
      }
      misses = 0
      log.push(`${far} (${error.toFixed(4)})`)
      computed.push({ n: n - 1 + far, turn: landed, gap })
      base = landed
      const moved = movedTo(here, z, landedEnd)
      // The corrected start, and where a turn from there ends by the new model.
      const gain = walk({ ...moved }, 0, null)
      void gain
      const endC = new Float64Array(3)
      const { foresee } = yield* lazy()
      foresee(moved, corrected, endC)
      model = { ...moved, at: corrected, gain: endC.map((e, h) => e - corrected[h]) }
      n += far
      start = withHeat(landed.end, endC)
      jump = Math.max(2, Math.floor(far * factor))
      if (n >= whole) break running
    }
  }

  let tail: Trace | null = null
  const t = n * seconds
  const effort = { ...turns.effort }
  if (t < duty.seconds) {
    const from: Checkpoint = { ...start, t, clock: { phase: 0, phaseStart: t, cycles: n } }
    const made = yield* run(job, { from, toFirstOpening: options.toFirstOpening })
    tail = made.trace
    for (const key of ['steps', 'rejected', 'rates', 'readings'] as const) effort[key] += tail.effort[key]
  }
  return { seconds, computed, tail, effort, log }
}
import * as m from './cycles/model.ts'
function* lazy(): Generator<Progress, typeof m> {
  return m
}
