// The answer: a verdict a person can say aloud, and one sentence on what it means for the work.
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import { assemble } from '../plant.ts'
import type { Sure } from '../studies/sure.ts'
import { doubted } from './answer/doubted.ts'
import { type Answer, asGiven, type Verdict } from './answer/given.ts'
import { wrongSupply } from './answer/wrongSupply.ts'
import { ratioText } from './number.ts'
import type { Units } from './units.ts'

export type { Answer, Verdict }

/**
 * The answer to "Will this motor do the job?". With the values as given it says so; once it is known how sure they are,
 * the verdict follows the samples and the headline is rounded to the doubt.
 */
export function answerOf(job: Job, figures: Figures, units: Units, sure: Sure | null = null): Answer {
  const wrong = wrongSupply(job, units)
  if (wrong) return wrong
  const given = asGiven(job, figures, units)
  const { kind } = figures.ending
  if (!sure || (kind !== 'finished' && kind !== 'destroyed')) return given
  return doubted(job, figures, units, sure, given)
}

const COOLING = {
  'shaft fan': 'shaft fan',
  blower: 'blower',
  none: 'no fan',
  enclosed: 'enclosed',
  'enclosed, outer fan': 'enclosed, outer fan',
} as const

/** A job in a few words, to tell variants apart: "no fan, ratio 4 : 1". */
export const inShort = (job: Job): string =>
  `${COOLING[job.parts.heat.cooling]}, ratio ${ratioText(assemble(job.parts).ratio)}`
