// What a run leaves behind: columns over time, marks, an ending, and the effort it took.
import type { Clock } from './clock.ts'

/** Columns of a trace besides `time`: what a meter would show, in SI, °C for temperatures; speeds at the motor but for 'spindle'. */
export const CHANNELS = [
  'asked',
  'speed',
  'current',
  'volts',
  'load',
  'windingC',
  'frameC',
  'switchC',
  'spindle',
  'target',
] as const
/** Columns that add up from the start: integrals over time, for exact means between any two rows. */
export const SUMS = [
  'charge',
  'heating',
  'taken',
  'copper',
  'brushes',
  'friction',
  'belt',
  'idle',
  'work',
  'toAir',
  'outlet',
] as const
export type Channel = (typeof CHANNELS)[number]
export type Sum = (typeof SUMS)[number]

export type Columns = Readonly<Record<Channel | Sum, Float64Array>>

/** How a run ended. */
export type Ending =
  | { readonly kind: 'finished' }
  | { readonly kind: 'destroyed'; readonly t: number }
  | { readonly kind: 'too many steps' | 'not finite' | 'step too small'; readonly t: number }
  | { readonly kind: 'abandoned'; readonly t: number }

/** Something that happened: time in s, speeds in rad/s at the motor. */
export type Mark =
  | { readonly kind: 'opens'; readonly t: number; readonly phase: number }
  | { readonly kind: 'recloses'; readonly t: number; readonly phase: number }
  | { readonly kind: 'limit reached'; readonly t: number; readonly until: number }
  | {
      readonly kind: 'speed not reached'
      readonly t: number
      readonly until: number
      readonly lowest: number
      readonly asked: number
    }
  | { readonly kind: 'stalled'; readonly t: number; readonly until: number }
  | { readonly kind: 'belt slips'; readonly t: number; readonly until: number; readonly worst: number }
  | { readonly kind: 'class passed'; readonly t: number; readonly limitC: number }

/** A stretch of driving to one target, as far as it has got: since when (s), ramped up, arrived; fastest and slowest since, rad/s. */
export interface Stretch {
  readonly target: number
  readonly since: number
  readonly ramped: boolean
  readonly arrived: boolean
  readonly best: number
  readonly low: number
}

/** Where a run can be taken up again: time, states, and what the driver remembers. */
export interface Checkpoint {
  readonly t: number
  readonly states: Float64Array
  readonly sums: Float64Array
  readonly clock: Clock
  readonly asked: number
  readonly on: boolean
  readonly open: boolean
  /** Unknown: a drive that runs has arrived long ago. */
  readonly stretch?: Stretch
}

/** A value and when it was reached, s. */
export interface At {
  readonly value: number
  readonly t: number
}

/** Highest temperatures of a run, °C: exact within steps, so no row need hold them. */
export interface Peaks {
  readonly windingC: At
  readonly frameC: At
  readonly switchC: At
}

export interface Effort {
  readonly steps: number
  readonly rejected: number
  readonly rates: number
  readonly readings: number
}

/** What the driving came to: speeds at the motor, rad/s; at the limit, s, and of that once the speed had arrived. */
export interface Driving {
  readonly slowest: { readonly t: number; readonly got: number; readonly target: number } | null
  readonly limitSeconds: number
  readonly limitedInCut: number
}

export interface Trace {
  /** s from the job's start; two rows at a jump. */
  readonly time: Float64Array
  readonly columns: Columns
  /** 0: every row is exact. Else each pair of rows holds the least and the most within this many seconds. */
  readonly bucket: number
  readonly peaks: Peaks
  readonly marks: readonly Mark[]
  readonly driving: Driving
  readonly ending: Ending
  readonly effort: Effort
  /** Beginnings of phases, well spread; the last is the end, unless the run broke off. */
  readonly checkpoints: readonly Checkpoint[]
}

/** Last row at or before time t, by halving. Row 0 if t lies before the trace. */
export function rowAt(time: Float64Array, t: number): number {
  let low = 0
  let high = time.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (time[middle] <= t) low = middle
    else high = middle - 1
  }
  return low
}

/** A column's value at time t, straight between rows; at a jump, the later row. */
export function valueAt(trace: Trace, channel: Channel | Sum, t: number): number {
  const { time } = trace
  const column = trace.columns[channel]
  const row = rowAt(time, t)
  if (row + 1 >= time.length) return column[row] ?? Number.NaN
  const t0 = time[row]
  const t1 = time[row + 1]
  if (t <= t0 || t1 === t0) return column[row]
  return column[row] + ((column[row + 1] - column[row]) * (t - t0)) / (t1 - t0)
}
