// How sure, in words: when and how hot, rounded to the doubt; how often; and what to measure next.
import type { Job } from '../job.ts'
import { phaseAt } from '../judge.ts'
import type { Sure, SureBand } from '../studies/sure.ts'
import type { Settling } from '../studies/sure/settle.ts'
import { SURE } from '../studies/sure/verdict.ts'
import { brief, duration, grouped, NBSP, show, told } from './number.ts'
import type { Units } from './units.ts'

export type SureVerdict = 'Yes' | 'No' | 'Too close to call'

/** What the samples say: yes when at least 9 in 10 last, no when at most 1 in 10 does. */
export function sureVerdict({ fates }: Sure): SureVerdict {
  if (fates.lasts >= SURE - 1e-9) return 'Yes'
  return fates.lasts <= 1 - SURE + 1e-9 ? 'No' : 'Too close to call'
}

/** "4 of 10": a share that is neither nothing nor all. */
export const tenths = (share: number): string => `${Math.min(9, Math.max(1, Math.round(share * 10)))} of 10`

/** Steps that a time is rounded to, s: the largest that leaves the doubt several of them. */
const STEPS = [1, 10, 60, 300, 600, 1800, 3600]
const STEPS_WIDE = 8

const stepFor = (width: number): number => STEPS.findLast((step) => step * STEPS_WIDE <= width) ?? 1

/** A time within its band, in pieces: "24 min" and "likely between 15 and 39"; no band where none is left. */
function timeWords(t: number, { low, high }: SureBand): { when: string; likely: string } {
  const width = low === null ? 0 : high === null ? 2 * Math.max(0, t - low) : high - low
  const step = stepFor(width)
  const at = (value: number) => Math.max(step > 1 ? step : 0, Math.round(value / step) * step)
  const plain = step >= 60 && Math.max(t, high ?? 0) < 100 * 60
  const words = (value: number, unit = true) =>
    plain ? `${Math.round(at(value) / 60)}${unit ? `${NBSP}min` : ''}` : duration(at(value))
  if (low === null) return { when: words(t), likely: '' }
  if (high === null) return { when: words(t), likely: `likely not before ${words(low)}` }
  if (at(low) === at(high)) return { when: words(t), likely: '' }
  return { when: words(t), likely: `likely between ${words(low, false)} and ${words(high, false)}` }
}

/** When it fails: the time as given where the band holds it, else the middle of the samples. */
export function failTime({ given, fails, t }: Sure): number | null {
  const inside =
    given.t !== null &&
    given.fate === fails &&
    given.t >= (t.low ?? Infinity) &&
    given.t <= (t.high ?? Infinity)
  return inside ? given.t : t.mid
}

/** "24 min into the job, likely between 15 and 39"; null where it lasts in the middle of the samples. */
export function whenWords(sure: Sure): string | null {
  const t = failTime(sure)
  if (t === null) return null
  const { when, likely } = timeWords(t, sure.t)
  return `${when} into the job${likely === '' ? '' : `, ${likely}`}`
}

/** "76 °C, likely between 66 and 91". */
export function heatWords(value: number, { low, high }: SureBand, units: Units): string {
  const [from, to] = [low ?? value, high ?? value].map((each) => show(each, 'temperature', units).number)
  return `${told(value, 'temperature', units)}${from === to ? '' : `, likely between ${from} and ${to}`}`
}

/** "15 to 39 min", "from 40 min, or never", "never": a band of times for a chart or a table. */
export function timeBand({ low, high }: Pick<SureBand, 'low' | 'high'>): string {
  if (low === null) return 'never'
  const { likely } = timeWords(low, { low, mid: low, high })
  if (high === null) return `${duration(stepRound(low))} to never`
  const words = likely.replace('likely between ', '').replace(' and ', ' to ')
  if (words === '') return duration(low)
  return /[a-z]/.test(words.replace('to', '')) ? words : `${words}${NBSP}min`
}
const stepRound = (t: number): number => Math.round(t / 60) * 60

/** "86 to 118 °C". */
export function heatBand({ low, high }: Pick<SureBand, 'low' | 'high'>, units: Units): string {
  if (low === null || high === null) return '–'
  const [from, to] = [low, high].map((each) => show(each, 'temperature', units).number)
  return from === to ? told(high, 'temperature', units) : `${from} to ${told(high, 'temperature', units)}`
}

/** What happens, with its subject. */
export const FAILS: Readonly<Record<NonNullable<Sure['fails']>, string>> = {
  opens: 'the cutoff opens',
  hot: 'the winding gets too hot',
  stalls: 'the spindle stops',
  burns: 'the winding burns out',
  unfinished: 'there is no answer',
}

/** The same for one dot among forty. */
export const fateWords = (fate: Sure['given']['fate']): string =>
  fate === 'lasts' ? 'it lasts' : FAILS[fate]

/** One fate stands for all where it makes up so much of what fails. */
const MOST_OF = 0.8

/** What fails, or that several things do. */
export function failWords({ fails, fates }: Sure): string {
  if (fails === null) return 'it lasts'
  return fates[fails] >= MOST_OF * (1 - fates.lasts) ? FAILS[fails] : 'it fails'
}

interface Measuring {
  /** "Current during milling". */
  readonly title: string
  /** To finish "Measure …". */
  readonly what: string
  readonly how: string
  /** Zone J holds its step and field. */
  readonly bench: boolean
  /** The input whose field takes it, where it is not a bench reading. */
  readonly path: string | null
}

const BENCH: Readonly<
  Record<
    Exclude<Settling['kind'], 'current' | 'air' | 'opens at' | 'mass'>,
    readonly [string, string, string]
  >
> = {
  'warm-up': [
    'Warm-up on the bench',
    'a warm-up on the bench',
    'Belt off, steady amps; log the frame until it settles, and as it cools.',
  ],
  ohms: [
    'Winding ohms',
    'the winding’s ohms',
    'Supply unplugged: ohmmeter across the motor leads, the lowest of ten.',
  ],
  held: [
    'Volts with the shaft held',
    'volts with the shaft held',
    '2 to 5 A for a few seconds, volts at the leads.',
  ],
  spin: [
    'Volts made by turning',
    'the volts it makes by turning',
    'Turn the shaft with a drill; read volts and rpm together.',
  ],
  running: [
    'Amps running free',
    'the amps running free',
    'Belt off, full voltage, after five minutes; clamp on one motor lead.',
  ],
  coast: ['Coast-down', 'the coast-down', 'Belt off; switch off from speed with a stopwatch running.'],
}

/** A measurement in words. `settling.reads`: what it would show if all were as given. */
export function measureWords({ kind, phase, reads }: Settling, job: Job, units: Units): Measuring {
  if (kind === 'current') {
    const { cut, ...step } = job.duty.phases[phase ?? 0]
    const name = step.name.trim() || `step ${(phase ?? 0) + 1}`
    const input = cut.kind === 'power' ? 'power' : cut.kind === 'fan' ? 'fanTorque' : 'torque'
    return {
      title: `Current during ${name}`,
      what: `the current during ${name}`,
      how: `Clamp on one motor lead, on DC, for a full minute. The torque as given makes about ${told(reads, 'current', units)}: change it in proportion.`,
      bench: false,
      path: `duty.phases.${phase}.${input}`,
    }
  }
  if (kind === 'air')
    return {
      title: 'Air around the motor',
      what: 'the air around the motor',
      how: 'A thermometer beside the motor, while it works.',
      bench: false,
      path: 'heat.air',
    }
  if (kind === 'opens at')
    return {
      title: 'Where the cutoff opens',
      what: 'where the cutoff opens',
      how: 'Warm it in an oven beside a thermometer until its contact opens.',
      bench: false,
      path: 'cutoff.opensAt',
    }
  if (kind === 'mass')
    return {
      title: 'Mass of the motor',
      what: 'the motor’s mass',
      how: 'Bathroom scales will do.',
      bench: false,
      path: 'plate.mass',
    }
  const [title, what, how] = BENCH[kind]
  return { title, what, how, bench: true, path: null }
}

/** A gain worth a sentence. */
const WORTH = 0.05

/** What to measure first; null where nothing would tell much. */
export const firstToMeasure = ({ settling }: Sure): Settling | null =>
  settling.find(({ known, gain }) => !known && gain >= WORTH) ?? null

/** "9 of 9 things that could be measured are estimated: measure the current during milling first." */
export function estimatedWords(sure: Sure, job: Job, units: Units): string {
  const { estimated, measurable } = sure
  if (estimated === 0) return 'Everything that bears on it has been measured.'
  const first = firstToMeasure(sure)
  const count = `${estimated} of ${measurable} inputs estimated`
  return first
    ? `${count}: measure ${measureWords(first, job, units).what} first.`
    : `${count}; no single one would tell much more.`
}

/** The doubt in one or two sentences, for the head of zone H. */
export function sureWords(sure: Sure, job: Job, units: Units): string {
  const { fates, fails, t, dots, windingC } = sure
  if (sure.of === 'winding') {
    const often =
      fates.lasts > 0.995 ? 'It lasts in every likely case' : 'It lasts in more than 9 of 10 likely cases'
    return `${often}. The winding gets to between ${heatBand(windingC, units).replace(' to ', ' and ')}, eight times in ten.`
  }
  const band =
    sureVerdict(sure) === 'Too close to call' || t.high === null
      ? `${capital(failWords(sure))} in ${tenths(1 - fates.lasts)} likely cases${t.low === null ? '' : `, seldom before ${timeWords(t.low, t).when}`}.`
      : `Between ${timeBand(t).replace(' to ', ' and ')}, eight times in ten.`
  const openings = dots.flatMap((dot) =>
    dot.t !== null && dot.fate === 'opens' ? [phaseAt(job, dot.t)] : [],
  )
  const only = openings[0]
  const name = job.duty.phases[only]?.name.trim()
  const clusters =
    fails === 'opens' && name && job.duty.phases.length > 1 && openings.every((phase) => phase === only)
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
  const rows = open.map((each) => [
    measureWords(each, job, units).title,
    band(each),
    `${grouped(100 * each.gain, 0)}${NBSP}%`,
  ])
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
