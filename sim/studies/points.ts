// Studies of independent points, by name: what each is asked with, what a point of it is, and how to work out a stretch.
import type { Progress } from '../run.ts'
import { type GridPoint, type GridSpec, gridPoints } from './grid.ts'
import type { MapColumn } from './map/column.ts'
import { type MapSpec, mapPoints } from './map.ts'
import type { Pointwise } from './pointwise.ts'
import { type SurePoint, surePoints, type SureSpec } from './sure.ts'

/** Name → what is asked (plain data: it crosses to workers, and its text is the key it is kept under) and a point. */
export interface PointStudies {
  grid: { readonly spec: GridSpec; readonly point: GridPoint }
  sure: { readonly spec: SureSpec; readonly point: SurePoint }
  map: { readonly spec: MapSpec; readonly point: MapColumn }
}
export type PointStudy = keyof PointStudies
export type Spec<S extends PointStudy = PointStudy> = {
  [N in S]: PointStudies[N]['spec'] & { readonly study: N }
}[S]
export type PointOf<S extends PointStudy> = PointStudies[S]['point']

const STUDIES: { readonly [S in PointStudy]: Pointwise<PointStudies[S]['spec'], PointStudies[S]['point']> } =
  {
    grid: gridPoints,
    sure: surePoints,
    map: mapPoints,
  }

const studyOf = <S extends PointStudy>(spec: Spec<S>) =>
  STUDIES[spec.study] as unknown as Pointwise<Spec<S>, PointOf<S>>

/** How many points a study has. */
export const countOf = <S extends PointStudy>(spec: Spec<S>): number => studyOf<S>(spec).count(spec)

/** A stretch of a study. */
export interface Stretch {
  readonly from: number
  readonly until: number
}

/** A study cut into stretches, each a tenth of a second's work at the most. */
export function stretchesOf(spec: Spec): readonly Stretch[] {
  const count = countOf(spec)
  const size = Math.max(1, Math.floor(studyOf(spec).atOnce(spec)))
  return Array.from({ length: Math.ceil(count / size) }, (_, n) => ({
    from: n * size,
    until: Math.min(count, (n + 1) * size),
  }))
}

/** Points of a study, all of them unless said. Yields progress in points; throws only for bugs. */
export const points = <S extends PointStudy>(
  spec: Spec<S>,
  from = 0,
  until = countOf<S>(spec),
): Generator<Progress, readonly PointOf<S>[]> => studyOf<S>(spec).points(spec, from, until)
