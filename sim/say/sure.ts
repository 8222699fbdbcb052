// How sure, in words: when and how hot, rounded to the doubt; how often; and what to measure next.
import type { Job } from '../job.ts'
import { phaseAt } from '../judge.ts'
import type { Sure, SureBand } from '../studies/sure.ts'
import { SURE } from '../studies/sure/verdict.ts'
import { brief, duration, percent } from './number.ts'
import { heatBand, timeBand, timeWords } from './sure/bands.ts'
import { estimatedWords, measureWords } from './sure/measuring.ts'
import type { Units } from './units.ts'

export type SureVerdict = 'Yes' | 'No' | 'Too close to call'

/** What the samples say: yes when at least 9 in 10 last, no when at most 1 in 10 does. */
export function sureVerdict({ fates }: Sure): SureVerdict {
  if (fates.lasts >= SURE - 1e-9) return 'Yes'
  return fates.lasts <= 1 - SURE + 1e-9 ? 'No' : 'Too close to call'
}

/** "4 of 10": a share that is neither nothing nor all. */
export const tenths = (share: number): string => `${Math.min(9, Math.max(1, Math.round(share * 10)))} of 10`
/** "1 of 10", "fewer than 1 of 10". */
export const ofTen = (share: number): string => (share < 0.1 - 1e-9 ? 'fewer than 1 of 10' : tenths(share))
/** How often a job lasts that lasts at least 9 times in 10. */
export const lastsWords = (sure: Sure): string => `It lasts ${lastsIn(sure)}`
/** "in every likely case": how often it does. */
export const lastsIn = ({ fates }: Sure): string =>
  fates.lasts > 0.995 ? 'in every likely case' : 'in at least 9 of 10 likely cases'

/** When it fails: the time as given where the band holds it, else the middle of the samples. */
function failTime({ given, fails, t }: Sure): number | null {
  const inside =
    given.t !== null &&
    given.fate === fails &&
    given.t >= (t.low ?? Infinity) &&
    given.t <= (t.high ?? Infinity)
  return inside ? given.t : t.mid
}

/** "24 min into the job, likely between 15 and 39"; null where it lasts in the middle of the samples. */
export function whenWords(sure: Sure): string | null {
  const parts = whenParts(sure)
  return parts && `${parts.when} into the job${parts.likely === '' ? '' : `, ${parts.likely}`}`
}

/** The same in pieces: "24 min", and "likely between 15 and 39" or ''. */
export function whenParts(sure: Sure): { when: string; likely: string } | null {
  const t = failTime(sure)
  return t === null ? null : timeWords(t, sure.t)
}

/** What happens, with its subject. */
const FAILS: Readonly<Record<NonNullable<Sure['fails']>, string>> = {
  opens: 'the cutoff opens',
  hot: 'the winding gets too hot',
  stalls: 'the spindle stops',
  burns: 'the winding burns out',
  unfinished: 'there is no answer',
}

/** The same for one dot among forty. */
const fateWords = (fate: Sure['given']['fate']): string => (fate === 'lasts' ? 'it lasts' : FAILS[fate])

/** One fate stands for all where it makes up so much of what fails. */
const MOST_OF = 0.8

/** Whether several things fail, none of them most of the time. */
export const isMixed = ({ fails, fates }: Sure): boolean =>
  fails !== null && fates[fails] < MOST_OF * (1 - fates.lasts)

/** What fails, or that several things do. */
export function failWords(sure: Sure): string {
  if (sure.fails === null) return 'it lasts'
  return isMixed(sure) ? 'it fails' : FAILS[sure.fails]
}

/** "between 15 and 39 min"; of a band that is one value, that value. */
const within = (band: string, between: string, at: string): string =>
  band.includes(' to ') ? `${between} ${band.replace(' to ', ' and ')}` : `${at} ${band}`.trim()

/** The doubt in one or two sentences, for the head of zone H. */
export function sureWords(sure: Sure, job: Job, units: Units): string {
  const { fates, fails, t, dots, windingC } = sure
  if (sure.of === 'winding')
    return `${lastsWords(sure)}. The winding gets to ${within(heatBand(windingC, units), 'between', '')}, eight times in ten.`
  const band =
    sureVerdict(sure) === 'Too close to call' || t.high === null
      ? `${capital(failWords(sure))} in ${tenths(1 - fates.lasts)} likely cases${t.low === null ? '' : `, seldom before ${timeWords(t.low, t).when}`}.`
      : `${within(timeBand(t), 'Between', 'At')}, eight times in ten.`
  const openings = dots.flatMap((dot) =>
    dot.t !== null && dot.fate === 'opens' ? [phaseAt(job, dot.t)] : [],
  )
  const only = openings[0]
  const name = job.duty.phases[only]?.name.trim()
  const clusters =
    fails === 'opens' &&
    t.low !== t.high &&
    name &&
    job.duty.phases.length > 1 &&
    openings.every((phase) => phase === only)
      ? ` It opens only during ${name}, hence the clusters.`
      : ''
  return `${band}${clusters}`
}

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** The share of each fate: "opens 76 of 100, lasts 10". */
export const fateShares = ({ fates }: Sure): string =>
  (Object.keys(fates) as (keyof Sure['fates'])[])
    .filter((fate) => fates[fate] > 0)
    .sort((a, b) => fates[b] - fates[a])
    .map((fate) => `${fateWords(fate)} in ${brief(100 * fates[fate])} of 100`)
    .join('; ')

/** The study as plain text. */
export function sureLines(sure: Sure, job: Job, units: Units): readonly string[] {
  const band = (each: Pick<SureBand, 'low' | 'high'>) =>
    sure.of === 'time' ? timeBand(each) : heatBand(each, units)
  const open = sure.settling.filter(({ known }) => !known)
  const rows = open.map((each) => [measureWords(each, job, units).title, band(each), percent(each.gain)])
  const width = Math.max(12, ...rows.map(([title]) => title.length))
  const dots = sure.dots.map(({ t }) => (t === null ? 'never' : duration(Math.round(t / 60) * 60)))
  return [
    sureWords(sure, job, units),
    `${sure.samples} samples: ${fateShares(sure)}.`,
    ...(sure.without > 0 ? [`${sure.without} more had readings that make no motor.`] : []),
    '',
    `Forty equally likely outcomes: ${dots.join(', ')}.`,
    `Hottest winding, eight times in ten: ${heatBand(sure.windingC, units)}.`,
    '',
    estimatedWords(sure, job, units),
    ...(rows.length === 0
      ? []
      : [
          `  ${'If measured'.padEnd(width)}  ${(sure.of === 'time' ? 'it would be' : 'winding').padEnd(24)}  takes away of the doubt`,
          `  ${'as known now'.padEnd(width)}  ${band(sure.of === 'time' ? sure.t : sure.windingC)}`,
          ...rows.map(([title, text, gain]) => `  ${title.padEnd(width)}  ${text.padEnd(24)}  ${gain}`),
        ]),
  ]
}
