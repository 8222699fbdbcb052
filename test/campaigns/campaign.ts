// A campaign: seeded trials that come to numbers, the limits these are held to, and what all of them come to.

/** What one seed came to: finite numbers by name, and what is wrong beside numbers out of their limits. */
export interface Trial {
  readonly measures: Readonly<Record<string, number>>
  readonly wrong?: string
}

/** A measure's limit, and the unit both are told in ('' for a plain number). */
export interface Limit {
  readonly most: number
  readonly unit: string
}

export interface Summary {
  readonly words: string
  /** What is wrong with all of them together; null: nothing. */
  readonly wrong: string | null
}

export interface Campaign {
  /** As typed: small letters and hyphens. */
  readonly name: string
  /** What it shows, for README: a phrase. */
  readonly about: string
  /** Seeds 1 to `whole` are the campaign; 1 to `slice`, and `fixed`, are run by `npm test`. */
  readonly whole: number
  readonly slice: number
  /** Seeds that ever failed, and those a slice must not be without. */
  readonly fixed: readonly number[]
  /** Measures no trial may pass; the worst of each is told. Others are kept for `sum`. */
  readonly limits: Readonly<Record<string, Limit>>
  /** Measures that count how often something was there to be seen: the least a trial has of it on average. */
  readonly seen?: Readonly<Record<string, number>>
  one(seed: number): Trial | Promise<Trial>
  /** The trial's job or input, for a person who looks into a failure. */
  show?(seed: number): string
  /** What matters where that is not the worst of each measure. */
  sum?(trials: readonly Trial[]): Summary
}

export type Trials = ReadonlyMap<number, Trial>

/** Runs one seed; what it throws is what is wrong with it. Limits are asked of what is kept: see failuresOf. */
export async function attempt(campaign: Campaign, seed: number): Promise<Trial> {
  try {
    const { measures, wrong } = await campaign.one(seed)
    const odd = Object.entries(measures).filter(([, value]) => !Number.isFinite(value))
    const all = [
      ...(wrong === undefined ? [] : [wrong]),
      ...odd.map(([name, value]) => `${name} is ${value}`),
    ]
    const finite = Object.fromEntries(Object.entries(measures).filter(([, value]) => Number.isFinite(value)))
    return { measures: finite, ...(all.length > 0 && { wrong: all.join('; ') }) }
  } catch (error) {
    return { measures: {}, wrong: error instanceof Error ? error.message : String(error) }
  }
}

/** What is wrong with a trial: told by itself, or a measure past its limit; null: nothing. */
export function wrongWith({ limits }: Campaign, { measures, wrong }: Trial): string | null {
  const over = Object.entries(limits).filter(([name, { most }]) => measures[name] > most)
  const all = [
    ...(wrong === undefined ? [] : [wrong]),
    ...over.map(([name, { most, unit }]) => `${name} ${told(measures[name], unit)}, more than ${most}`),
  ]
  return all.length > 0 ? all.join('; ') : null
}

/** A number to two digits, with its unit. */
export const told = (value: number, unit: string): string =>
  `${Number(value.toPrecision(2))}${unit === '' ? '' : ` ${unit}`}`

/** What is wrong, a line a seed. */
export const failuresOf = (campaign: Campaign, trials: Trials): string[] =>
  [...trials].flatMap(([seed, trial]) => {
    const wrong = wrongWith(campaign, trial)
    return wrong === null ? [] : [`seed ${seed}: ${wrong}`]
  })

/** What the trials come to together: the worst of each limited measure with its seed, what was seen, `sum`. */
export function sumUp(campaign: Campaign, trials: Trials): Summary {
  const values = (name: string) =>
    [...trials].flatMap(([seed, { measures }]) => (name in measures ? [{ seed, value: measures[name] }] : []))
  const worst = Object.entries(campaign.limits).map(([name, { most, unit }]) => {
    const all = values(name)
    if (all.length === 0) return `${name}: none`
    const top = all.reduce((a, b) => (b.value > a.value ? b : a))
    return `${name} ${told(top.value, unit)} (seed ${top.seed}, most ${told(most, unit)})`
  })
  const wrong: string[] = []
  const seen = Object.entries(campaign.seen ?? {}).map(([name, least]) => {
    const total = values(name).reduce((sum, { value }) => sum + value, 0)
    if (total < least * trials.size) wrong.push(`only ${total} ${name} in ${trials.size} trials`)
    return `${Math.round(total)} ${name}`
  })
  const own = campaign.sum?.([...trials.values()])
  if (own?.wrong) wrong.push(own.wrong)
  return {
    words: [...worst, ...seen, ...(own ? [own.words] : [])].join(', '),
    wrong: wrong.length > 0 ? wrong.join('; ') : null,
  }
}
