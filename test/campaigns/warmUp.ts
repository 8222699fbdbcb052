// Fits of warm-up logs of made-up motors: how often true numbers lie in the stated bands, and how wide those are.
import { fitWarmUp } from '../../sim/identify/fit.ts'
import { HEAT_NUMBERS } from '../../sim/identify/heatPath.ts'
import { METERS, type Protocol, RECOMMENDED, trial } from '../sim/identify/warmUpTwin.ts'
import type { Campaign, Summary, Trial } from './campaign.ts'

/** Share of true values inside the stated 8-in-10 band, and median half-width over median error, a fit is held to. */
const INSIDE = 0.75
const WIDTH = 3
/** Share of good logs that may be refused. */
const REFUSED = 0.05

function one(seed: number, protocol: Protocol): Trial {
  const { log, motor, truth } = trial(seed, protocol)
  const { ampsGain, resistance, friction } = METERS
  const fit = fitWarmUp(log, motor, { amps: ampsGain, resistance, friction })
  if (!fit.ok) return { measures: { refused: 1 } }
  const found = HEAT_NUMBERS.flatMap((name) => {
    const number = fit.numbers[name]
    if (!number) return []
    return [
      [`${name} error`, Math.abs(Math.log(number.value / truth[name]))],
      [`${name} half`, Math.log(number.high / number.value)],
    ]
  })
  return { measures: { refused: 0, ...Object.fromEntries(found) } }
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]

function sum(trials: readonly Trial[]): Summary {
  const errors: number[] = []
  const halves: number[] = []
  for (const { measures } of trials)
    for (const name of HEAT_NUMBERS)
      if (`${name} error` in measures) {
        errors.push(measures[`${name} error`])
        halves.push(measures[`${name} half`])
      }
  const refused = trials.filter(({ measures }) => measures.refused === 1).length
  const inside = errors.filter((error, n) => error <= halves[n]).length / errors.length
  const width = median(halves) / median(errors)
  // A few logs may fall lower by chance, 1 time in 20: a slice is held to that.
  const least = Math.min(INSIDE, 0.8 - 1.65 * Math.sqrt((0.8 * 0.2) / trials.length))
  const good = inside >= least && width <= WIDTH && refused <= Math.max(1, REFUSED * trials.length)
  const words = `${(100 * inside).toFixed(1)} % of true values inside their 8-in-10 bands (at least ${(100 * least).toFixed(0)} %), half-width ${width.toFixed(2)} times the error (most ${WIDTH}), ${refused} logs refused`
  return { words, wrong: good ? null : words }
}

const campaign = (name: string, about: string, slice: number, protocol: Protocol): Campaign => ({
  name,
  about,
  whole: 200,
  slice,
  fixed: [],
  limits: {},
  one: (seed) => one(seed, protocol),
  sum,
})

export const warmUpCan = campaign('warm-up-can', 'fits of seeded warm-up logs, can alone', 21, RECOMMENDED)
export const warmUpOhms = campaign('warm-up-ohms', 'the same, can and winding ohms', 21, {
  ...RECOMMENDED,
  ohms: true,
})
export const warmUpHeating = campaign('warm-up-heating', 'the same, without the cooling-off', 4, {
  ...RECOMMENDED,
  cooling: 0,
})
