// What to measure next: the band were it measured, and how much of the doubt that would take away.
import type { Job } from '../../job.ts'
import type { Made } from './draft.ts'
import { learned, placesOf, rankAt, valueAt } from './learned.ts'
import { type Measure, type MeasureKind, measuresOf } from './measures.ts'
import { EIGHT_IN_TEN } from './normal.ts'
import type { SurePoint } from './sample.ts'
import { bandOf } from './band.ts'

export interface Settling {
  readonly name: string
  readonly kind: MeasureKind
  readonly phase: number | null
  /** It is known as closely as a meter would tell: nothing is gained. */
  readonly known: boolean
  /** What the meter would show were all as given: A, Ω, V·s/rad, kg·m², kg, °C. */
  readonly reads: number
  /** The band of what is asked if it read that; null for never. */
  readonly low: number | null
  readonly high: number | null
  /** By how much that band is narrower than today's, in outcomes that are equally likely today: 0 to 1. */
  readonly gain: number
}

export type Sample = Extract<SurePoint, { ok: true }>

/** Known to so many times what a meter leaves counts as measured. */
const AS_GOOD = 1.5

export const never = (t: number): number | null => (t === Infinity ? null : t)

/** Every measurement, that which takes away most doubt first. `of`: the band is of when it fails, or of the hottest winding. */
export function settling(
  job: Job,
  given: Sample,
  made: Made,
  samples: readonly Sample[],
  of: 'time' | 'winding',
): readonly Settling[] {
  const heat = ({ windingC }: Sample) => windingC
  const time = ({ t }: Sample) => t ?? Infinity
  const earlier = (a: Sample, b: Sample) =>
    time(a) === time(b) ? heat(b) - heat(a) : time(a) < time(b) ? -1 : 1
  const order = of === 'time' ? earlier : (a: Sample, b: Sample) => heat(a) - heat(b)
  const places = placesOf(samples.length, (a, b) => order(samples[a], samples[b]))
  const values = samples.map(of === 'time' ? time : heat).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
  const one = (measure: Measure): Settling | null => {
    const reading = given.tells[measure.name]
    const tells = samples.map(({ tells }) => tells[measure.name])
    if (!reading || tells.some((told) => told === undefined)) return null
    const meter = measure.meter(made)
    const known = meter.every((each, k) => {
      const { low, high } = bandOf(tells.map((told) => told[k]))
      return high - low <= 2 * AS_GOOD * each
    })
    const { middle, spread } = learned(places.of, tells, reading, meter)
    const end = (side: number) => valueAt(values, rankAt(places, middle + side * EIGHT_IN_TEN * spread))
    return {
      name: measure.name,
      kind: measure.kind,
      phase: measure.phase,
      known,
      reads: measure.reads(reading),
      low: never(end(-1)),
      high: never(end(1)),
      gain: known ? 0 : 1 - spread,
    }
  }
  return measuresOf(job)
    .flatMap((measure) => one(measure) ?? [])
    .sort((a, b) => b.gain - a.gain || Number(a.known) - Number(b.known))
}
