// The map of minutes against direct runs of the whole plant, at seeded speeds, torques and coolings of three jobs.
import { compared, jobs } from '../sim/studies/heldRuns.ts'
import type { Campaign } from './campaign.ts'

/** What the map is held to at 99 in 100 points away from its edges. */
const CLOSE = 2e-3

export const map: Campaign = {
  name: 'map',
  about: 'the map of minutes against direct runs of the whole plant, away from its edges',
  whole: 200,
  slice: 12,
  fixed: [],
  limits: {},
  seen: { 'away from the edges': 0.5 },
  one(seed) {
    const { map, seconds, error, edge } = compared(jobs[(seed - 1) % jobs.length], seed)
    if (edge) return { measures: { 'away from the edges': 0 } }
    const never = [map.seconds, seconds].map((each) => each === Infinity)
    return {
      measures: { 'away from the edges': 1, never: never[1] ? 1 : 0, ...(!never[0] && { error }) },
      ...(never[0] !== never[1] && { wrong: `the map says ${map.seconds} s, the run ${seconds} s` }),
    }
  },
  show: (seed) => JSON.stringify(compared(jobs[(seed - 1) % jobs.length], seed)),
  sum(trials) {
    const errors = trials.flatMap(({ measures: { error } }) => error ?? []).sort((a, b) => a - b)
    const p99 = errors[Math.ceil(0.99 * errors.length) - 1]
    if (errors.length === 0) return { words: 'none to compare', wrong: null }
    const never = trials.filter(({ measures }) => measures.never === 1).length
    const percent = (share: number) => `${Number((100 * share).toPrecision(2))} %`
    const words = `minutes ${percent(p99)} off at 99 in 100 (most ${percent(CLOSE)}), ${percent(errors[errors.length - 1])} at worst, ${never} never in 48 h and none of them wrong`
    return { words, wrong: p99 <= CLOSE ? null : words }
  },
}
