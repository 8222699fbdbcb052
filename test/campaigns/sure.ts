// How sure: the band of a few even draws against plain ones by the thousand; each "if measured" against drawing again.
import { readFileSync } from 'node:fs'
import { read } from '../../sim/read.ts'
import { finish } from '../../sim/run.ts'
import type { Scenario } from '../../sim/scenario.ts'
import { type Sure, type SureSpec, sureOf, surePoints, sureSpec } from '../../sim/studies/sure.ts'
import { made } from '../../sim/studies/sure/draft.ts'
import { type Measure, measuresOf } from '../../sim/studies/sure/measures.ts'
import { EIGHT_IN_TEN } from '../../sim/studies/sure/normal.ts'
import { type Doubtful, doubtful, drafted, sampled } from '../../sim/studies/sure/sample.ts'
import { plain } from '../../sim/studies/sure/sequence.ts'
import type { Campaign, Summary, Trial } from './campaign.ts'

interface Asked {
  readonly all: Doubtful
  readonly spec: SureSpec
  readonly sure: Sure
  readonly measures: readonly Measure[]
}

const keep = new Map<string, Asked>()
/** The study as the product makes it: two hundred even draws of seed 1. */
function asked(name: string): Asked {
  const known = keep.get(name)
  if (known) return known
  const file = new URL(`../../scenarios/${name}.json`, import.meta.url)
  const scenario = JSON.parse(readFileSync(file, 'utf8')) as Scenario
  const reading = read(scenario)
  const spec = sureSpec(scenario)
  if (!reading.ok || 'ok' in spec) throw new Error(`${name} does not read.`)
  const sure = sureOf(spec, finish(surePoints.points(spec, 0, surePoints.count(spec))))
  if (!sure) throw new Error(`${name} makes no motor.`)
  const all = doubtful(scenario, reading)
  const kept = { all, spec, sure, measures: measuresOf(reading.job) }
  keep.set(name, kept)
  return kept
}

/** Binomial: standard deviation of a share p counted in n. */
const scatter = (p: number, n: number) => Math.sqrt((p * (1 - p)) / n)

const BATCH = 100
/** Ends of the band, the share of outcomes that lies before each, and what counts as before. */
const ENDS = [
  ['low', 0.1],
  ['mid', 0.5],
  ['high', 0.9],
] as const

/** A batch of plain draws against the band of the study. Never is after every time. */
function plainDraws(seed: number): Trial {
  const { spec, sure } = asked('bandSaw')
  const draws = { ...spec, draw: 'plain', seed: 1000 + seed, samples: BATCH } as const
  const times = finish(surePoints.points(draws, 1, BATCH + 1)).flatMap((point) =>
    point.ok ? (point.t ?? Infinity) : [],
  )
  const before = ENDS.map(
    ([name]) => [name, times.filter((t) => t < (sure.t[name] ?? Infinity)).length] as const,
  )
  return { measures: { draws: times.length, ...Object.fromEntries(before) } }
}

/** Shares before the ends as they should be: within two deviations of the study's own count, had its draws been plain ones, and three of these. */
function plainSum(trials: readonly Trial[]): Summary {
  const sum = (name: string) => trials.reduce((total, { measures }) => total + (measures[name] ?? 0), 0)
  const draws = sum('draws')
  const { samples } = asked('bandSaw').sure
  const ends = ENDS.map(([name, share]) => ({
    found: sum(name) / draws,
    share,
    most: 2 * scatter(share, samples) + 3 * scatter(share, draws),
  }))
  const told = ends.map(({ found, share }) => `${(100 * found).toFixed(1)} for ${100 * share} %`)
  const words = `of ${draws} plain draws lie under the ends of the even band ${told.join(', ')}`
  const off = ends.some(({ found, share, most }) => !(Math.abs(found - share) <= most))
  return { words, wrong: off ? words : null }
}

export const sureBand: Campaign = {
  name: 'sure-band',
  about: 'how sure: the band of 200 even draws against 20 000 plain ones, 100 a trial',
  whole: 200,
  slice: 4,
  fixed: [],
  limits: {},
  one: plainDraws,
  show: (seed) => JSON.stringify(plainDraws(seed)),
  sum: plainSum,
}

const JOBS = ['bandSaw', 'appleMill', 'bowlLathe'] as const
/** Things to measure at the most. */
const MOST = 10
const DRAWN_AGAIN = 200
const MOST_DRAFTS = 100_000

/** Times at which it fails in drafts that tell what the meter would read, each kept as likely as that reading is then. */
function drawnAgain({ all }: Asked, { tells, meter }: Measure, seed: number): readonly number[] {
  const given = made(all.draft)!
  const reading = tells(given)!
  const off = meter(given)
  const times: number[] = []
  for (let n = 0; times.length < DRAWN_AGAIN; n++) {
    if (n === MOST_DRAFTS) throw new Error(`Only ${times.length} of ${n} drafts tell that.`)
    const draft = drafted(all, (dimension) => plain(n, dimension + 1, seed))
    const one = made(draft)
    const told = one && tells(one)
    if (!told) continue
    const squares = told.reduce(
      (sum, each, k) => sum + (((each - reading[k]) * EIGHT_IN_TEN) / off[k]) ** 2,
      0,
    )
    if (plain(n, 0, seed) > Math.exp(-squares / 2)) continue
    const point = finish(sampled(draft))
    if (point.ok) times.push(point.t ?? Infinity)
  }
  return times
}

function measured(seed: number): Trial {
  const job = asked(JOBS[Math.floor((seed - 1) / MOST) % JOBS.length])
  const measure = job.measures[(seed - 1) % MOST]
  const found = job.sure.settling.find(({ name }) => name === measure?.name)
  if (!measure || !found || found.known) return { measures: { checked: 0 } }
  if (job.sure.of !== 'time') throw new Error('Its band is not of when it fails.')
  const times = drawnAgain(job, measure, 7000 + seed)
  const before = (end: number | null) => times.filter((t) => t < (end ?? Infinity)).length / times.length
  // An end that is never has only to be so: fewer fail than would make it a time.
  const low = before(found.low) - 0.1
  const high = before(found.high) - 0.9
  const off = (share: number, end: number | null) => (end === null ? Math.max(0, share) : Math.abs(share))
  return { measures: { checked: 1, early: off(low, found.low), late: off(high, found.high) } }
}

/**
 * Shares of the cases drawn again that lie out of the band, against a tenth: each of both draws of 200 has a deviation of
 * 0.021, 0.03 together; the rest is what the band's own assumption (jointly normal) may be off.
 */
const OFF = { most: 0.08, unit: '' }

export const sureMeasured: Campaign = {
  name: 'sure-measured',
  about: 'how sure: the band “if measured” against drawing again those cases that tell such a reading',
  whole: JOBS.length * MOST,
  slice: 1,
  fixed: [],
  limits: {
    early: OFF,
    late: OFF,
  },
  seen: { checked: 0.8 },
  one: measured,
  show: (seed) => JSON.stringify(measured(seed)),
}
