// The duty: phases of work and rest, repeated for a time; and the next known edge in a phase.
import * as v from 'valibot'
import { NamedCutFields } from './cuts/named.ts'
import { quantity, quantityOr, words } from './field.ts'
import type { Cut } from './parts/machine.ts'

const torque = {
  dimension: 'torque',
  low: '0 N·m',
  high: '10000 N·m',
  below: 'less than nothing: a load that drives the motor needs a brake',
} as const
const lasting = { dimension: 'time', low: '0 s', high: '30 d', below: 'less than no time' } as const

const SurgeFields = v.object({
  torque: quantity({ label: 'Surge adds', ...torque, help: 'On top of the cut.' }),
  every: quantity({ label: 'A surge every', dimension: 'time', low: '0.05 s', high: '24 h' }),
  lasts: quantity({ label: 'It lasts', dimension: 'time', low: '0.01 s', high: '24 h' }),
})

const PhaseFields = v.object({
  name: words({ label: 'Name of the step', longest: 40, help: 'For example: milling, loading, rest.' }),
  lasts: quantity({ label: 'Lasts', ...lasting }),
  speed: quantityOr('0 rpm', {
    label: 'Speed asked at the spindle',
    dimension: 'angular speed',
    low: '0 rpm',
    high: '60000 rpm',
    help: '0 rpm: controller off.',
  }),
  torque: v.optional(quantity({ label: 'Torque of the cut', ...torque })),
  power: v.optional(quantity({ label: 'Power of the cut', dimension: 'power', low: '0 W', high: '100 kW' })),
  fanTorque: v.optional(
    quantity({
      label: 'Torque at the asked speed, growing as speed squared',
      ...torque,
      help: 'Fans, pumps and stirring.',
    }),
  ),
  cut: v.optional(NamedCutFields),
  surge: v.optional(SurgeFields),
})

/** Most phases one cycle may have. */
export const MOST_PHASES = 10_000

export const DutyFields = v.object({
  phases: v.pipe(
    v.array(PhaseFields, 'The duty needs a list of steps.'),
    v.minLength(1, 'The duty needs at least one step.'),
    v.maxLength(
      MOST_PHASES,
      (issue) => `${issue.received} steps are more than one cycle can hold (${MOST_PHASES}).`,
    ),
  ),
  repeatFor: quantity({ label: 'Repeat for', ...lasting }),
  start: v.optional(
    quantity({
      label: 'Motor temperature at the start',
      dimension: 'temperature',
      low: '-30 °C',
      high: '150 °C',
      help: 'Left open: as the air.',
    }),
  ),
})

/** Torque added to the cut (N·m at the spindle) from n·every to n·every + lasts of phase time (s). */
export interface Surge {
  readonly torque: number
  readonly every: number
  readonly lasts: number
}

export interface Phase {
  readonly name: string
  readonly seconds: number
  /** Asked at the spindle, rad/s; 0: controller off. */
  readonly speed: number
  readonly cut: Cut
  readonly surge: Surge | null
}

export interface Duty {
  readonly phases: readonly Phase[]
  /** The phases repeat until this time, s. */
  readonly seconds: number
  /** Every temperature at the start, °C. */
  readonly startC: number
}

/** A phase no longer than this is skipped. s */
export const SHORTEST_PHASE = 1e-9

/** Length of a phase as it is run, s. */
export const phaseSeconds = ({ seconds }: Pick<Phase, 'seconds'>): number =>
  seconds <= SHORTEST_PHASE ? 0 : seconds

/** Length of one cycle, s. */
export const cycleSeconds = (duty: Duty): number =>
  duty.phases.reduce((sum, phase) => sum + phaseSeconds(phase), 0)

/** What the surge is doing at phase time t: torque now (N·m) and when that next changes (s, Infinity: never again). */
export function surgeAt(phase: Phase, t: number): { torque: number; until: number } {
  const { surge } = phase
  if (surge === null) return { torque: 0, until: Infinity }
  // An edge reached to rounding counts as passed, or the driver would stand still on it.
  const now = t + 1e-9 * Math.max(1, t)
  const n = Math.floor(now / surge.every)
  const ends = n * surge.every + surge.lasts
  return now < ends ? { torque: surge.torque, until: ends } : { torque: 0, until: (n + 1) * surge.every }
}

/** Mean torque a phase asks at its asked speed, surges included: N·m at the spindle. */
export function meanTorque(phase: Phase): number {
  const { cut, surge, seconds } = phase
  const steady =
    cut.kind === 'torque'
      ? cut.torque
      : cut.kind === 'power'
        ? cut.power / Math.max(phase.speed, cut.fullAbove)
        : cut.coefficient * phase.speed * phase.speed
  if (surge === null || seconds <= 0) return steady
  const whole = Math.floor(seconds / surge.every)
  const inSurge = whole * surge.lasts + Math.min(surge.lasts, seconds - whole * surge.every)
  return steady + (surge.torque * inSurge) / seconds
}
