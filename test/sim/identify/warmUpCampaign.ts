// The campaign of warm-up fits: how often true numbers lie in the stated bands, and how wide those are.
import { fitWarmUp } from '../../../sim/identify/fit.ts'
import { HEAT_NUMBERS, type HeatNumber } from '../../../sim/identify/heatPath.ts'
import { METERS, type Meters, type Protocol, RECOMMENDED, trial } from './warmUpTwin.ts'

export interface Score {
  readonly trials: number
  readonly inside: number
  /** Medians of half-width and of absolute error, as logarithms: near shares. */
  readonly halfWidth: number
  readonly error: number
  /** Share of the trials in which the log settled it. */
  readonly settled: number
}

export interface Campaign {
  readonly refused: number
  readonly scores: Readonly<Partial<Record<HeatNumber, Score>>>
  /** All numbers of all trials together. */
  readonly all: Score
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]

/** Fits so many seeded logs and scores each number. */
export function warmUpCampaign(
  trials: number,
  protocol: Protocol = RECOMMENDED,
  meters: Meters = METERS,
): Campaign {
  const found = new Map<HeatNumber, { error: number; half: number; settled: boolean }[]>()
  let refused = 0
  for (let seed = 1; seed <= trials; seed++) {
    const { log, motor, truth } = trial(seed, protocol, meters)
    const fit = fitWarmUp(log, motor, {
      amps: meters.ampsGain,
      resistance: meters.resistance,
      friction: meters.friction,
    })
    if (!fit.ok) {
      refused++
      continue
    }
    for (const name of HEAT_NUMBERS) {
      const one = fit.numbers[name]
      if (!one) continue
      const error = Math.abs(Math.log(one.value / truth[name]))
      found.set(name, [
        ...(found.get(name) ?? []),
        { error, half: Math.log(one.high / one.value), settled: one.settled },
      ])
    }
  }
  const score = (list: readonly { error: number; half: number; settled: boolean }[]): Score => ({
    trials: list.length,
    inside: list.filter(({ error, half }) => error <= half).length / list.length,
    halfWidth: median(list.map(({ half }) => half)),
    error: median(list.map(({ error }) => error)),
    settled: list.filter(({ settled }) => settled).length / list.length,
  })
  return {
    refused,
    scores: Object.fromEntries([...found].map(([name, list]) => [name, score(list)])),
    all: score([...found.values()].flat()),
  }
}
