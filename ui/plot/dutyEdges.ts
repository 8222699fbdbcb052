// The edges of the duty's first cycle, which can be dragged: where each step ends, and what a drag makes of its length.
import { type Duty, phaseSeconds } from '../../sim/duty.ts'

export interface Edge {
  readonly index: number
  readonly name: string
  /** When the step begins and how long it lasts, s. */
  readonly from: number
  readonly seconds: number
}

/** More steps than this are edited by their numbers. */
const MOST = 12
/** Lengths land on whole multiples of this, and are no shorter, s. */
const GRAIN = 10
/** A step lasts no longer than this, s. */
const LONGEST = 24 * 3600

/** The steps of the first cycle; none where there are too many to take hold of. */
export function edgesOf({ phases }: Duty): readonly Edge[] {
  if (phases.length > MOST) return []
  let from = 0
  return phases.map((phase, index) => {
    const edge = { index, name: phase.name || `step ${index + 1}`, from, seconds: phaseSeconds(phase) }
    from += edge.seconds
    return edge
  })
}

/** The length of a step that is dragged to end at t, s. */
export const lengthAt = ({ from }: Edge, t: number): number => length(Math.round((t - from) / GRAIN) * GRAIN)

/** The length of a step made longer by so much, s. */
export const lengthBy = ({ seconds }: Edge, by: number): number =>
  length(
    Number.isFinite(by)
      ? (by > 0 ? Math.floor(seconds / GRAIN + 1e-9) : Math.ceil(seconds / GRAIN - 1e-9)) * GRAIN + by
      : by,
  )

const length = (seconds: number): number => Math.min(LONGEST, Math.max(GRAIN, seconds))

/** A length as it is written into the job. */
export function lengthText(seconds: number): string {
  if (seconds >= 3600 && seconds % 3600 === 0) return `${seconds / 3600} h`
  const [minutes, rest] = [Math.floor(seconds / 60), seconds % 60]
  return [
    ...(minutes > 0 ? [`${minutes} min`] : []),
    ...(rest > 0 || minutes === 0 ? [`${rest} s`] : []),
  ].join(' ')
}
