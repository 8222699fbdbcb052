// What the page holds of a study: how far it has got, the newest there is and what that is of, or why there is none.
import type { Advice } from '../../sim/advise.ts'
import type { AgainstOld } from '../../sim/rival/picture.ts'
import type { LimitsStudy } from '../../sim/studies/limits.ts'
import type { Facts } from '../../sim/lessons.ts'
import type { HeatMap } from '../../sim/studies/map.ts'
import type { RatioStudy } from '../../sim/studies/ratio.ts'
import type { Sure } from '../../sim/studies/sure.ts'
import type { GridPoint, GridSpec } from '../../sim/studies/grid.ts'

/** A grid, each point at its place: undefined where it is still to come. */
export interface GridShown {
  readonly spec: GridSpec
  readonly points: readonly (GridPoint | undefined)[]
}

/** The studies the page keeps up, and what each comes to. */
export interface Kept {
  ratio: RatioStudy
  map: HeatMap
  against: AgainstOld
  limits: LimitsStudy
  advice: Advice
  grid: GridShown
  lesson: readonly Facts[]
  sure: Sure
}
export type StudyName = keyof Kept

export interface Work<T> {
  /** Somebody has come near its zone. */
  readonly wanted: boolean
  readonly working: { readonly t: number; readonly of: number } | null
  /** The newest there is; part of it while it is still being worked out, where the study can tell parts. */
  readonly result: T | null
  /** What the result is of, and what a reader has told to stop: keys of its keeper. */
  readonly key: string
  readonly halted: string | null
  /** Why there is none. */
  readonly why: string | null
}
export type Works = { readonly [N in StudyName]: Work<Kept[N]> }

const NONE = { wanted: false, working: null, result: null, key: '', halted: null, why: null }
export const NO_WORKS: Works = {
  ratio: NONE,
  map: NONE,
  against: NONE,
  limits: NONE,
  advice: NONE,
  grid: NONE,
  lesson: NONE,
  // The sentence waits for it.
  sure: { ...NONE, wanted: true },
}

/** Another job on the page: what was studied is of no use to anybody; what was looked at still is. */
export const forgotten = (works: Works): Works =>
  Object.fromEntries(
    Object.entries(works).map(([name, { wanted }]) => [name, { ...NONE, wanted }]),
  ) as unknown as Works
