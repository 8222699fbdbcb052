// Figures: what a run comes to, as numbers in SI. Wording lives in say/.
import { cycleSeconds, meanTorque, type Phase } from './duty.ts'
import type { Job } from './job.ts'
import { classLimitC, damageC } from './handbook/insulation.ts'
import { assemble } from './plant.ts'
import { type At, type Ending, type Mark, type Trace, valueAt } from './trace.ts'

export interface Figures {
  /** How far the run got, and how long the job is, s. */
  readonly reached: number
  readonly seconds: number
  readonly ending: Ending
  /** First opening of the cutoff: when (s) and in which phase. */
  readonly firstOpening: { readonly t: number; readonly phase: number } | null
  readonly timesOpen: number
  /** How long the cutoff stays open the first time, s; null: it never opens, or never recloses within the job. */
  readonly firstOpenFor: number | null
  /** Share of the asked running time that is delivered. */
  readonly delivered: number
  /** The hardest phase: its number, and seconds asked and got over the job. */
  readonly work: { readonly phase: number; readonly asked: number; readonly got: number }
  readonly hottestWindingC: At
  readonly hottestFrameC: At
  readonly hottestSwitchC: At
  /** Limit of the insulation class for the average winding, and what is left to it (K; negative: passed). */
  readonly classLimitC: number
  readonly classMargin: number
  /** When the class limit is first passed, s. */
  readonly classPassed: number | null
  /** Where the winding is damaged whatever the hours. */
  readonly damageC: number
  /** Insulation life against life at the class limit, by the rule that 10 K halve it (rule of thumb). */
  readonly life: number
  /** What is left to the cutoff's opening, K; null where it opens or none is fitted. */
  readonly cutoffMargin: number | null
  /** Heating value of the current over the job; greatest current; mean current in the hardest phase. A */
  readonly rmsAmps: number
  readonly peakAmps: At
  readonly workAmps: number
  /** Slowest the spindle runs while driven, after the ramp (rad/s at the spindle), and its share under the asked speed. */
  readonly slowest: (At & { readonly sag: number; readonly asked: number }) | null
  /** Time at the current limit, s; and of that, after the ramps: the cut is what limits. */
  readonly limitSeconds: number
  readonly limitedInCut: number
  readonly stalled: number | null
  readonly speedMissed: boolean
  /** Seconds the belt slips, s. */
  readonly slipSeconds: number
  /** Energy taken by the motor and where it went, J. */
  readonly energy: Readonly<
    Record<'taken' | 'copper' | 'brushes' | 'friction' | 'belt' | 'idle' | 'work', number>
  >
  /** Amps at the outlet: mean in the hardest phase, and greatest of any step-long mean. */
  readonly outletAmps: number
}

/** Seconds of `wanted` phases among the first t seconds of the duty. */
function secondsOf(
  phases: readonly Phase[],
  cycle: number,
  t: number,
  wanted: (phase: Phase, index: number) => boolean,
): number {
  const whole = Math.floor(t / cycle)
  let rest = t - whole * cycle
  let perCycle = 0
  let partial = 0
  phases.forEach((phase, index) => {
    const inRest = Math.max(0, Math.min(phase.seconds, rest))
    rest -= phase.seconds
    if (!wanted(phase, index)) return
    perCycle += phase.seconds
    partial += inRest
  })
  return whole * perCycle + partial
}

/** The phase that takes most work out of the motor: torque × speed × time, drag left aside. */
export function hardestPhase(phases: readonly Phase[]): number {
  const effort = phases.map((phase) => (meanTorque(phase) + 1e-9) * phase.speed * phase.seconds)
  return effort.indexOf(Math.max(...effort))
}

/** Stretches with the cutoff open, [from, until] in s; the last may run to the end. */
export function openSpells(marks: readonly Mark[], end: number): readonly (readonly [number, number])[] {
  const spells: [number, number][] = []
  for (const mark of marks) {
    if (mark.kind === 'opens') spells.push([mark.t, end])
    else if (mark.kind === 'recloses' && spells.length > 0) spells[spells.length - 1][1] = mark.t
  }
  return spells
}

function greatest(time: Float64Array, column: Float64Array): At {
  let row = 0
  for (let r = 1; r < column.length; r++) if (column[r] > column[row]) row = r
  return { value: column[row] ?? Number.NaN, t: time[row] ?? 0 }
}

/** Slowest driven moment once the speed had arrived, at the spindle. */
function slowestOf({ driving: { slowest } }: Trace, ratio: number): Figures['slowest'] {
  if (!slowest) return null
  const { t, got, target } = slowest
  return { value: got / ratio, t, sag: 1 - got / target, asked: target / ratio }
}

/** Charge and outlet charge in a phase over all its turns up to `reached`: A·s. */
function inPhase(
  trace: Trace,
  job: Job,
  index: number,
  cycle: number,
  reached: number,
): { charge: number; outlet: number } {
  const before = job.duty.phases.slice(0, index).reduce((sum, phase) => sum + phase.seconds, 0)
  const length = job.duty.phases[index].seconds
  let charge = 0
  let outlet = 0
  for (let n = 0, from = before; from < reached; from = ++n * cycle + before) {
    const until = Math.min(from + length, reached)
    charge += valueAt(trace, 'charge', until) - valueAt(trace, 'charge', from)
    outlet += valueAt(trace, 'outlet', until) - valueAt(trace, 'outlet', from)
  }
  return { charge, outlet }
}

/** Seconds of the hardest phase with the controller on, over the job: held still, the motor draws amps too. s */
export function poweredInWork({ duty }: Job, marks: readonly Mark[], reached: number): number {
  const hardest = hardestPhase(duty.phases)
  const cycle = cycleSeconds(duty)
  const upTo = (t: number) => secondsOf(duty.phases, cycle, t, (_phase, index) => index === hardest)
  const off = [...openSpells(marks, reached), [reached, duty.seconds] as const]
  return Math.max(
    0,
    off.reduce((sum, [from, until]) => sum - upTo(until) + upTo(from), upTo(duty.seconds)),
  )
}

/** Works out the figures of a run. */
export function judge(job: Job, trace: Trace): Figures {
  const { parts, duty } = job
  const { time, columns, marks, ending, peaks } = trace
  const { ratio } = assemble(parts)
  const cycle = cycleSeconds(duty)
  const last = Math.max(0, time.length - 1)
  const reached = time[last] ?? 0
  const final = (name: keyof typeof columns) => columns[name][last] ?? 0

  const hardest = hardestPhase(duty.phases)
  // What was not reached, and what the spindle stood still, was not delivered either; but a motor held still draws amps.
  const off = [...openSpells(marks, reached), [reached, duty.seconds] as const]
  const still = marks.flatMap((mark) => (mark.kind === 'stalled' ? [[mark.t, mark.until] as const] : []))
  const got = (
    wanted: (phase: Phase, index: number) => boolean,
    lost: readonly (readonly [number, number])[],
  ) => {
    const upTo = (t: number) => secondsOf(duty.phases, cycle, t, wanted)
    const asked = upTo(duty.seconds)
    const missed = lost.reduce((sum, [from, until]) => sum + upTo(until) - upTo(from), 0)
    return { asked, got: Math.max(0, asked - missed) }
  }
  const inWork = (_phase: Phase, index: number) => index === hardest
  const running = got((phase) => phase.speed > 0, [...off, ...still])
  const work = got(inWork, [...off, ...still])
  const powered = poweredInWork(job, marks, reached)
  const spent = inPhase(trace, job, hardest, cycle, reached)

  const opening = marks.find((mark) => mark.kind === 'opens')
  const reclosing = marks.find((mark) => mark.kind === 'recloses')
  const { windingC: winding, switchC } = peaks
  const limitC = classLimitC(parts.winding.insulation)
  const passed = marks.find((mark) => mark.kind === 'class passed')
  const { limitSeconds, limitedInCut } = trace.driving

  return {
    reached,
    seconds: duty.seconds,
    ending,
    firstOpening: opening?.kind === 'opens' ? { t: opening.t, phase: opening.phase } : null,
    timesOpen: marks.filter((mark) => mark.kind === 'opens').length,
    firstOpenFor: opening && reclosing ? reclosing.t - opening.t : null,
    delivered: running.asked > 0 ? running.got / running.asked : 1,
    work: { phase: hardest, ...work },
    hottestWindingC: winding,
    hottestFrameC: peaks.frameC,
    hottestSwitchC: switchC,
    classLimitC: limitC,
    classMargin: limitC - winding.value,
    classPassed: passed ? passed.t : null,
    damageC: damageC(parts.winding.insulation),
    life: 2 ** ((limitC - winding.value) / 10),
    cutoffMargin: opening || parts.cutoff.fitted === 'none' ? null : parts.cutoff.opensAt - switchC.value,
    rmsAmps: reached > 0 ? Math.sqrt(final('heating') / reached) : 0,
    peakAmps: greatest(time, columns.current),
    workAmps: powered > 0 ? spent.charge / powered : 0,
    slowest: slowestOf(trace, ratio),
    limitSeconds,
    limitedInCut,
    stalled: marks.find((mark) => mark.kind === 'stalled')?.t ?? null,
    speedMissed: marks.some((mark) => mark.kind === 'speed not reached'),
    slipSeconds: marks.reduce(
      (sum, mark) => (mark.kind === 'belt slips' ? sum + mark.until - mark.t : sum),
      0,
    ),
    energy: {
      taken: final('taken'),
      copper: final('copper'),
      brushes: final('brushes'),
      friction: final('friction'),
      belt: final('belt'),
      idle: final('idle'),
      work: final('work'),
    },
    outletAmps: powered > 0 ? spent.outlet / powered : 0,
  }
}

/** Index of the phase the duty is in at time t. */
export function phaseAt(job: Job, t: number): number {
  let rest = t % cycleSeconds(job.duty)
  const { phases } = job.duty
  for (let index = 0; index < phases.length; index++) {
    rest -= phases[index].seconds
    if (rest < 0) return index
  }
  return phases.length - 1
}
