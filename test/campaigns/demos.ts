// Every demonstration with each of its variants, run by the product's method and by the library's, to its first opening or end.
import { COMPARED, crossCheck, momentsOf } from '../../sim/crossCheck.ts'
import type { Job } from '../../sim/job.ts'
import { STATE } from '../../sim/plant.ts'
import { finish, run } from '../../sim/run.ts'
import { variantsOf } from '../../sim/scenario.ts'
import { DEMOS, demo, jobOf } from '../jobs.ts'
import type { Campaign } from './campaign.ts'

const HOT = [STATE.windingC, STATE.frameC, STATE.switchC]

/** Demonstrations as they stand, then with their first variants, and so on: a slice holds one of each. */
const cases = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((n) =>
  DEMOS.flatMap((name) => {
    const variants = [undefined, ...variantsOf(demo(name))]
    return n < variants.length ? [{ name, variant: variants[n] }] : []
  }),
)

/** What the product keeps to at its "precise" tolerance; at its usual one, in temperature. */
const UNITS = { speed: 'rad/s', current: 'A', windingC: 'K', frameC: 'K', switchC: 'K' } as const
const MOST = { speed: 0.05, current: 0.02, windingC: 0.02, frameC: 0.02, switchC: 0.02 } as const

/**
 * Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving ODEs I, II.9 (ODEX, explicit extrapolation), in the odex
 * package; the product's is RODAS of Solving ODEs II, IV.7.
 */
export const demos: Campaign = {
  name: 'demos',
  about:
    'every demonstration and variant to its first opening or end, against a library’s explicit extrapolation (odex)',
  whole: cases.length,
  slice: DEMOS.length,
  fixed: [],
  limits: {
    ...Object.fromEntries(COMPARED.map((name) => [name, { most: MOST[name], unit: UNITS[name] }])),
    'first opening': { most: 1e-4, unit: '' },
    'temperature as shown': { most: 0.1, unit: 'K' },
  },
  seen: { moments: 300 },
  one(seed) {
    const { name, variant } = cases[seed - 1]
    const job = jobOf(demo(name), variant)
    const precise: Job = { ...job, accuracy: 'precise' }
    const { differences, moments, until, shown, second, openingDifference } = finish(crossCheck(precise))
    const samples = momentsOf(job, until).filter((t) => t < until)
    const [usual, fine] = [job, precise].map((each) => finish(run(each, { samples, until })).samples)
    const asShown = samples.flatMap((_, n) => HOT.map((h) => Math.abs(usual[n][h] - fine[n][h])))
    const opens = [shown.opening !== null, second.opening !== null]
    return {
      measures: {
        ...Object.fromEntries(COMPARED.map((state) => [state, differences[state].value])),
        ...(openingDifference !== null && { 'first opening': openingDifference / shown.opening! }),
        'temperature as shown': Math.max(...asShown),
        moments,
      },
      ...(opens[0] !== opens[1] && { wrong: `opens: ${opens.join(', by the library: ')}` }),
    }
  },
  show: (seed) => JSON.stringify({ name: cases[seed - 1].name, variant: cases[seed - 1].variant?.name }),
}
