// What to measure next: the band were it measured, and how much of the doubt that would take away.
import type { Job } from '../../job.ts'
import type { Made } from './draft.ts'
import { type Measure, type MeasureKind, measuresOf } from './measures.ts'
import type { SurePoint } from './sample.ts'
import { type Band, bandOf, spreadOf, weightsFor } from './weigh.ts'

export interface Settling {
  readonly name: string
  readonly kind: MeasureKind
  readonly phase: number | null
  /** It is known as closely as a meter would tell: nothing is gained. */
  readonly known: boolean
  /** What the meter would show were all as given: A, Ω, V·s/rad, kg·m², kg, °C. */
  readonly reads: number
  /** The band of what is asked, and the share that lasts, if it read that; null for never. */
  readonly low: number | null
  readonly high: number | null
  readonly lasts: number
  /** Share of the doubt that measuring takes away on average, 0 to 1. */
  readonly gain: number
}

export type Sample = Extract<SurePoint, { ok: true }>

/** Known to so many times what a meter leaves counts as measured. */
const AS_GOOD = 1.5
/** Outcomes of a measurement that are gone through. */
const OUTCOMES = 50

export const never = (t: number): number | null => (t === Infinity ? null : t)

/**
 * Every measurement, that which takes away most doubt first. `of`: what the band is of; `asked`: what is to be settled,
 * a number for each sample.
 */
export function settling(
  job: Job,
  given: Sample,
  made: Made,
  samples: readonly Sample[],
  of: (sample: Sample) => number,
  asked: (sample: Sample) => number,
): readonly Settling[] {
  const values = samples.map(of)
  const questions = samples.map(asked)
  const whole = spreadOf(
    questions,
    samples.map(() => 1),
  ).variance
  const step = Math.max(1, Math.floor(samples.length / OUTCOMES))
  const one = (measure: Measure): Settling | null => {
    const reading = given.tells[measure.name]
    const tells = samples.map(({ tells }) => tells[measure.name])
    if (!reading || tells.some((told) => told === undefined)) return null
    const meter = measure.meter(made)
    const known = meter.every((each, k) => {
      const { low, high } = bandOf(tells.map((told) => told[k]))
      return high - low <= 2 * AS_GOOD * each
    })
    const weights = weightsFor(tells, reading, meter)
    const { low, high }: Band = bandOf(values, weights)
    let left = 0
    let outcomes = 0
    for (let n = 0; n < samples.length; n += step, outcomes++)
      left += spreadOf(questions, weightsFor(tells, tells[n], meter)).variance
    return {
      name: measure.name,
      kind: measure.kind,
      phase: measure.phase,
      known,
      reads: measure.reads(reading),
      low: never(low),
      high: never(high),
      lasts: spreadOf(
        samples.map(({ fate }) => (fate === 'lasts' ? 1 : 0)),
        weights,
      ).mean,
      gain: known || whole === 0 ? 0 : Math.max(0, 1 - left / outcomes / whole),
    }
  }
  return measuresOf(job)
    .flatMap((measure) => one(measure) ?? [])
    .sort((a, b) => b.gain - a.gain || Number(a.known) - Number(b.known))
}
