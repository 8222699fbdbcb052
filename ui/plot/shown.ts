// What the charts draw: a variant with its job and trace, and how a reader wants it shown.
import type { Job } from '../../sim/job.ts'
import type { Trace } from '../../sim/trace.ts'

/** Line style and colour of a variant. */
export type Series = 'A' | 'B' | 'C' | 'D'

/** One variant to draw. */
export interface Shown {
  readonly id: string
  readonly name: string
  readonly series: Series
  /** The chosen variant: drawn heavy, with winding, frame, band and hatch. */
  readonly active: boolean
  readonly trace: Trace
  readonly job: Job
  /** Motor speed over spindle speed. */
  readonly ratio: number
}

/** Most variants drawn at once, on a wide sheet and on a phone. */
export const MOST = { wide: 3, narrow: 2 } as const

/** The variants that fit, in their order, the active one always among them. */
export function fitting(shown: readonly Shown[], most: number): readonly Shown[] {
  const active = shown.find((variant) => variant.active) ?? shown[0]
  if (active === undefined) return []
  const others = shown.filter((variant) => variant !== active).slice(0, most - 1)
  return shown.filter((variant) => variant === active || others.includes(variant))
}

/** The active one of the variants; the first where none is. */
export const activeOf = (shown: readonly Shown[]): Shown | undefined =>
  shown.find((variant) => variant.active) ?? shown[0]

/** Last time of a trace, s: where a run that ended early stops. */
export const endOf = ({ trace }: Shown): number => trace.time[trace.time.length - 1] ?? 0
