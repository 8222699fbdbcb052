// How sure: the job with its readings drawn over their doubts again and again, and what comes of each.
import type { Job } from '../job.ts'
import { read, type Refused } from '../read.ts'
import type { Progress } from '../run.ts'
import { type Scenario, type Variant, withVariant } from '../scenario.ts'
import { oneByOne, type Pointwise } from './pointwise.ts'
import { type Made, made } from './sure/draft.ts'
import { doubtful, drafted, type Fate, sampled, type SurePoint } from './sure/sample.ts'
import { even, plain } from './sure/sequence.ts'
import { never, type Sample, type Settling, settling } from './sure/settle.ts'
import { SURE } from './sure/verdict.ts'
import { bandOf } from './sure/band.ts'

/** What is drawn: point 0 is the job as given, the others are samples. */
export interface SureSpec {
  readonly study: 'sure'
  readonly scenario: Scenario
  readonly seed: number
  readonly samples: number
  /** Drawn evenly, or (to check that) as plain random numbers. */
  readonly draw: 'even' | 'plain'
}
export type { SurePoint }

export const SAMPLES = 200
export const MOST_SAMPLES = 100_000

export interface SureOptions {
  readonly variant?: Variant
  readonly seed?: number
  readonly samples?: number
  readonly draw?: SureSpec['draw']
}

/** The study of a scenario; what the reader refuses is refused. */
export function sureSpec(
  scenario: Scenario,
  { variant, seed = 1, samples = SAMPLES, draw = 'even' }: SureOptions = {},
): SureSpec | Refused {
  const whole = variant ? withVariant(scenario, variant) : scenario
  const reading = read(whole)
  if (!reading.ok) return reading
  // What stands in no job is no part of the question.
  return {
    study: 'sure',
    scenario: { ...whole, name: 'sure', about: undefined, variants: [] },
    seed,
    samples,
    draw,
  }
}

export const surePoints: Pointwise<SureSpec, SurePoint> = {
  count: ({ samples }) => samples + 1,
  // Two dozen milliseconds each for a job of a few hours with surges.
  atOnce: () => 4,
  *points({ scenario, seed, draw }, from, until) {
    const reading = read(scenario)
    if (!reading.ok) throw new Error('The scenario of a study was read before.')
    const all = doubtful(scenario, reading)
    const number = draw === 'even' ? even : plain
    return yield* oneByOne(from, until, (n) =>
      sampled(n === 0 ? all.draft : drafted(all, (dimension) => number(n - 1, dimension, seed))),
    )
  },
}

/** A band; null for never. */
export interface SureBand {
  readonly low: number | null
  readonly mid: number | null
  readonly high: number | null
}

/** How sure the answer is. Times in s, temperatures in °C, shares from 0 to 1. */
export interface Sure {
  readonly samples: number
  /** Samples whose readings made no motor: left out. */
  readonly without: number
  /** Share of each fate. */
  readonly fates: Readonly<Record<Fate, number>>
  /** What stops it most often; null: nothing ever does. */
  readonly fails: Exclude<Fate, 'lasts'> | null
  /** What becomes of it with the values as given, and when. */
  readonly given: { readonly fate: Fate; readonly t: number | null }
  /** When it fails (opens, for most), 8 in 10. */
  readonly t: SureBand
  readonly windingC: SureBand
  readonly switchC: SureBand
  /** Forty equally likely times at which it fails, in order; null: it lasts. Its fate beside it. */
  readonly dots: readonly { readonly t: number | null; readonly fate: Fate }[]
  /** What the bands of `settling` are of: when it fails, or where nearly all last the hottest winding. */
  readonly of: 'time' | 'winding'
  readonly settling: readonly Settling[]
  /** Things that could be measured and are not yet, of how many. */
  readonly estimated: number
  readonly measurable: number
  /** Evaluations of all samples. */
  readonly effort: number
}

const DOTS = 40

const FAILS = ['opens', 'hot', 'stalls', 'burns', 'unfinished'] as const

const told = ({ low, mid, high }: { low: number; mid: number; high: number }): SureBand => ({
  low: never(low),
  mid: never(mid),
  high: never(high),
})

/** What the points of a study come to; null where none made a motor. */
export function sureOf(spec: SureSpec, points: readonly SurePoint[]): Sure | null {
  const reading = read(spec.scenario)
  const [given, ...drawn] = points
  const samples = drawn.filter((point): point is Sample => point.ok)
  if (!reading.ok) return null
  const whole = made(doubtful(spec.scenario, reading).draft)
  if (!whole || !given?.ok || samples.length === 0) return null
  return weighed(reading.job, { given, made: whole, samples, without: drawn.length - samples.length })
}

function weighed(
  job: Job,
  {
    given,
    made,
    samples,
    without,
  }: { given: Sample; made: Made; samples: readonly Sample[]; without: number },
): Sure {
  const share = (fate: Fate) => samples.filter((sample) => sample.fate === fate).length / samples.length
  const fates: Record<Fate, number> = {
    lasts: share('lasts'),
    opens: share('opens'),
    hot: share('hot'),
    stalls: share('stalls'),
    burns: share('burns'),
    unfinished: share('unfinished'),
  }
  const time = ({ t }: Sample) => t ?? Infinity
  const winding = ({ windingC }: Sample) => windingC
  const of = fates.lasts >= SURE ? 'winding' : 'time'
  const settled = settling(job, given, made, samples, of)
  const byTime = samples.toSorted((a, b) => (time(a) < time(b) ? -1 : time(a) > time(b) ? 1 : 0))
  const worst = FAILS.reduce((a, b) => (fates[b] > fates[a] ? b : a))
  return {
    samples: samples.length,
    without,
    fates,
    fails: fates[worst] > 0 ? worst : null,
    given: { fate: given.fate, t: given.t },
    t: told(bandOf(samples.map(time))),
    windingC: told(bandOf(samples.map(winding))),
    switchC: told(bandOf(samples.map(({ switchC }) => switchC))),
    dots: Array.from({ length: DOTS }, (_, n) => {
      const { t, fate } = byTime[Math.floor(((n + 0.5) / DOTS) * byTime.length)]
      return { t, fate }
    }),
    of,
    settling: settled,
    estimated: settled.filter(({ known }) => !known).length,
    measurable: settled.length,
    effort: samples.reduce((sum, { effort }) => sum + effort, given.effort),
  }
}

/** The study done in one piece. */
export function* sure(spec: SureSpec): Generator<Progress, Sure | null> {
  return sureOf(spec, yield* surePoints.points(spec, 0, surePoints.count(spec)))
}
