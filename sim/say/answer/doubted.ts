// The answer once it is known how sure the values are: the verdict follows the samples.
import type { Job } from '../../job.ts'
import type { Figures } from '../../judge.ts'
import type { Sure, SureBand } from '../../studies/sure.ts'
import { told } from '../number.ts'
import {
  capital,
  failWords,
  isMixed,
  lastsIn,
  lastsWords,
  ofTen,
  sureVerdict,
  tenths,
  whenParts,
  whenWords,
} from '../sure.ts'
import { heatLikely, heatWords } from '../sure/bands.ts'
import { firstToMeasure, measureWords } from '../sure/measuring.ts'
import type { Units } from '../units.ts'
import { type Answer, AS_GIVEN, type Short } from './given.ts'

/** A sentence that no longer rests on the values as given. */
const unbound = (sentence: string): string => sentence.replace(`, ${AS_GIVEN}`, '')
/** What becomes of it with the values as given, after the colon of its verdict. */
const plainly = ({ sentence }: Answer): string =>
  `As given: ${unbound(sentence)
    .replace(/^(Yes|No|Barely)\. /, '')
    .replace(/^(It|The)\b/, (word) => word.toLowerCase())}`

/** What becomes of it as given, where that is not what mostly becomes of it, and how often it does. */
const unlikely = (given: Answer, { fates, given: { fate } }: Sure): string =>
  `${plainly(given)} So it is in ${ofTen(fates[fate])} likely cases.`

/** "likely 15 to 39": on a line of its own it has little room. */
const shorter = (likely: string): string => likely.replace(/between (.+) and /, '$1 to ')

/** What happens, in a word or two. */
const BRIEFLY: Readonly<Record<NonNullable<Sure['fails']>, string>> = {
  opens: 'opens',
  hot: 'too hot',
  stalls: 'stops',
  burns: 'burns out',
  unfinished: 'no answer',
}

function surelyLasts(job: Job, figures: Figures, sure: Sure, units: Units, given: Answer): Answer {
  const { classLimitC } = figures
  const often = `${lastsWords(sure)}.`
  const lasts = sure.given.fate === 'lasts' ? often : `${often} ${unlikely(given, sure)}`
  // Slow it is all the same: what the samples tell is whether it stays cool enough.
  if (sure.given.fate === 'lasts' && figures.speedMissed)
    return {
      ...given,
      sentence: unbound(given.sentence),
      short: { words: given.short.words, doubt: `cool enough ${lastsIn(sure)}` },
      support: `${given.support} ${lasts}`,
    }
  const shown = (value: number, { mid }: SureBand) => (sure.given.fate === 'lasts' ? value : (mid ?? value))
  const likely = (value: number, band: SureBand) => heatWords(shown(value, band), band, units)
  const short = (what: string, value: number, band: SureBand): Short => ({
    words: `Yes · ${what} gets to ${told(shown(value, band), 'temperature', units)}`,
    doubt: shorter(heatLikely(shown(value, band), band, units)) || lastsIn(sure),
  })
  const winding = likely(figures.hottestWindingC.value, sure.windingC)
  const limit = `its class limit is ${told(classLimitC, 'temperature', units)}`
  if (job.parts.cutoff.fitted === 'none')
    return {
      verdict: 'Yes',
      sentence: `Yes. The winding gets to ${winding}, and no further.`,
      short: short('winding', figures.hottestWindingC.value, sure.windingC),
      support: `${lasts} No cutoff guards the winding; ${limit}.`,
    }
  return {
    verdict: 'Yes',
    sentence: `Yes. The cutoff gets to ${likely(figures.hottestSwitchC.value, sure.switchC)}, and never opens.`,
    short: short('cutoff', figures.hottestSwitchC.value, sure.switchC),
    support: `${lasts} The winding gets to ${winding}; ${limit}.`,
  }
}

function surelyFails(figures: Figures, sure: Sure, units: Units, given: Answer): Answer {
  const { fails, fates } = sure
  const parts = whenParts(sure)
  const others = isMixed(sure) ? ' In some likely cases something else stops it first.' : ''
  const support = `${sure.given.fate === fails ? given.support : unlikely(given, sure)}${others}`
  const { value } = figures.hottestWindingC
  const winding = sure.given.fate === 'hot' ? value : (sure.windingC.mid ?? value)
  // Where something else stops most of the samples first, the middle of them may be cool enough: then when, not how hot.
  if (fails === 'hot' && winding > figures.classLimitC)
    return {
      verdict: 'No',
      sentence: `No. The winding gets to ${heatWords(winding, sure.windingC, units)}, over its class limit of ${told(figures.classLimitC, 'temperature', units)}.`,
      short: {
        words: `No · winding too hot, ${told(winding, 'temperature', units)}`,
        doubt: shorter(heatLikely(winding, sure.windingC, units)),
      },
      support,
    }
  // At once, in every likely case: as given.
  const atOnce = sure.given.fate === fails && sure.t.high !== null && sure.t.high < 1
  if (fails === null || fates[fails] === 0 || atOnce)
    return {
      verdict: 'No',
      sentence: unbound(given.sentence),
      short: { words: given.short.words, doubt: '' },
      support,
    }
  return {
    verdict: 'No',
    sentence: `No. ${capital(failWords({ ...sure, fates: { ...fates, lasts: 1 - fates[fails] } }))} ${whenWords(sure) ?? ''}.`,
    short: {
      words: `No · ${BRIEFLY[fails]}${parts ? ` after ${parts.when}` : ''}`,
      doubt: shorter(parts?.likely ?? ''),
    },
    support,
  }
}

function tooClose(job: Job, sure: Sure, units: Units, given: Answer): Answer {
  const { fails } = sure
  const share = tenths(1 - sure.fates.lasts)
  const first = firstToMeasure(sure)
  const settle = first
    ? `Measure ${measureWords(first, job, units).what}: that would tell most.`
    : 'No single measurement would settle it.'
  return {
    verdict: 'Too close to call',
    sentence: `Too close to call: ${failWords(sure)} in ${share} likely cases.`,
    short: {
      words: 'Too close to call',
      doubt: `${fails === null || isMixed(sure) ? 'fails' : BRIEFLY[fails]} in ${share} likely cases`,
    },
    support: `${settle} ${plainly(given)}`,
  }
}

/** The answer to a job that was run to its end, from that with the values as given and from the samples. */
export function doubted(job: Job, figures: Figures, units: Units, sure: Sure, given: Answer): Answer {
  const verdict = sureVerdict(sure)
  if (verdict === 'Yes') return surelyLasts(job, figures, sure, units, given)
  return verdict === 'No' ? surelyFails(figures, sure, units, given) : tooClose(job, sure, units, given)
}
