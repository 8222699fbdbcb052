// Figures of a run by turns: each turn judged as a job of its own, and added up for the turns it stands for.
import type { CycleRun } from './cycles/summed.ts'
import type { Turn } from './cycles/turn.ts'
import { cycleSeconds, type Duty, phaseSeconds } from './duty.ts'
import type { Job } from './job.ts'
import { type Figures, judge, poweredInWork } from './judge.ts'
import type { At, Trace } from './trace.ts'
import { watched } from './watch.ts'

/** Figures of a stretch of the job that began at t (s), standing for `weight` such stretches. */
interface Part {
  readonly figures: Figures
  readonly t: number
  readonly weight: number
}

/** The figures of a run by turns: those of the direct run, to about the tolerance of the turns. */
export function judgeCycles(job: Job, run: CycleRun): Figures {
  const { computed, tail, seconds, peaks } = run
  const last = computed.at(-1)
  if (!last) return judge(job, tail!)
  // What needs the job's clock comes from its end; the rest is added up.
  const whole = judge(job, tail ?? later(last.turn.trace, last.t))
  const oneTurn: Job = { ...job, duty: { ...job.duty, seconds } }
  const parts: Part[] = computed.map((one) => ({
    figures: judge(oneTurn, one === last && !tail ? ended(oneTurn, one.turn) : one.turn.trace),
    t: one.t,
    weight: one.weight,
  }))
  if (tail) parts.push({ figures: whole, t: 0, weight: 1 })

  const sum = (value: (figures: Figures) => number) =>
    parts.reduce((total, { figures, weight }) => total + weight * value(figures), 0)
  const extreme = <T extends At>(value: (figures: Figures) => T | null, beats: (a: T, b: T) => boolean) =>
    parts.reduce<T | null>((best, { figures, t }) => {
      const found = value(figures)
      return found && (!best || beats(found, best)) ? { ...found, t: t + found.t } : best
    }, null)
  const first = (value: (figures: Figures) => number | null) => {
    const part = parts.find(({ figures }) => value(figures) !== null)
    return part ? part.t + value(part.figures)! : null
  }
  /** The same in the turns alone: of some things the tail has counted its own. */
  const inTurns = (value: (figures: Figures) => number) =>
    parts.reduce((total, { figures, weight }) => total + (figures === whole ? 0 : weight * value(figures)), 0)
  const work = {
    ...whole.work,
    got: Math.max(0, whole.work.got - inTurns((figures) => figures.work.asked - figures.work.got)),
  }
  const running = runningSeconds(job.duty, job.duty.seconds)
  const stopped = inTurns((figures) => (1 - figures.delivered) * runningSeconds(job.duty, seconds))
  // A turn runs with the cutoff closed, all of it; the tail has counted the turns before it as powered, too.
  const powered = poweredInWork(job, tail?.marks ?? [], run.reached)
  const perWork = (value: (figures: Figures) => number) => {
    const inTail = tail ? value(whole) * powered : 0
    return powered > 0 ? (inTurns((figures) => value(figures) * figures.work.asked) + inTail) / powered : 0
  }
  const reached = run.reached
  const { classLimitC } = whole

  return {
    ...whole,
    reached,
    delivered: running > 0 ? Math.max(0, whole.delivered - stopped / running) : 1,
    work,
    hottestWindingC: peaks.windingC,
    hottestFrameC: peaks.frameC,
    hottestSwitchC: peaks.switchC,
    classMargin: classLimitC - peaks.windingC.value,
    classPassed: first((figures) => figures.classPassed),
    life: 2 ** ((classLimitC - peaks.windingC.value) / 10),
    cutoffMargin: whole.cutoffMargin === null ? null : job.parts.cutoff.opensAt - peaks.switchC.value,
    rmsAmps: Math.sqrt(sum((figures) => figures.rmsAmps ** 2 * figures.reached) / reached),
    peakAmps: extreme(
      (figures) => figures.peakAmps,
      (a, b) => a.value > b.value,
    )!,
    workAmps: perWork((figures) => figures.workAmps),
    slowest: extreme(
      (figures) => figures.slowest,
      (a, b) => a.sag > b.sag,
    ),
    limitSeconds: sum((figures) => figures.limitSeconds),
    limitedInCut: sum((figures) => figures.limitedInCut),
    stalled: first((figures) => figures.stalled),
    speedMissed: parts.some(({ figures }) => figures.speedMissed),
    slipSeconds: sum((figures) => figures.slipSeconds),
    energy: {
      taken: sum(({ energy }) => energy.taken),
      copper: sum(({ energy }) => energy.copper),
      brushes: sum(({ energy }) => energy.brushes),
      friction: sum(({ energy }) => energy.friction),
      belt: sum(({ energy }) => energy.belt),
      idle: sum(({ energy }) => energy.idle),
      work: sum(({ energy }) => energy.work),
    },
    outletAmps: perWork((figures) => figures.outletAmps),
  }
}

/** The trace of a turn with which the job ends, and its driving. */
const ended = (oneTurn: Job, { start, trace }: Turn): Trace => ({
  ...trace,
  ...watched(oneTurn, trace.time, trace.columns, [], start.stretch),
})

/** A turn's trace moved to begin at t, s; its marks are left to the turn. */
const later = (trace: Trace, t: number): Trace => ({
  ...trace,
  time: trace.time.map((own) => own + t),
  marks: [],
})

/** Seconds among the first `until` of a duty in which it asks for speed. */
function runningSeconds(duty: Duty, until: number): number {
  const turn = cycleSeconds(duty)
  const whole = Math.floor(until / turn)
  let rest = until - whole * turn
  let running = 0
  for (const phase of duty.phases) {
    const length = phaseSeconds(phase)
    if (phase.speed > 0) running += whole * length + Math.min(length, Math.max(0, rest))
    rest -= length
  }
  return running
}
