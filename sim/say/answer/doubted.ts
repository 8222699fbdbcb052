// The answer once it is known how sure the values are: the verdict follows the samples.
import type { Job } from '../../job.ts'
import type { Figures } from '../../judge.ts'
import type { Sure } from '../../studies/sure.ts'
import { told } from '../number.ts'
import { capital, failWords, lastsWords, ofTen, sureVerdict, tenths, whenWords } from '../sure.ts'
import { heatWords } from '../sure/bands.ts'
import { firstToMeasure, measureWords } from '../sure/measuring.ts'
import type { Units } from '../units.ts'
import { type Answer, AS_GIVEN } from './given.ts'

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

function surelyLasts(job: Job, figures: Figures, sure: Sure, units: Units, given: Answer): Answer {
  const { classLimitC } = figures
  const often = `${lastsWords(sure)}.`
  const lasts = sure.given.fate === 'lasts' ? often : `${often} ${unlikely(given, sure)}`
  // Slow it is all the same: what the samples tell is whether it stays cool enough.
  if (sure.given.fate === 'lasts' && figures.speedMissed)
    return { ...given, sentence: unbound(given.sentence), support: `${given.support} ${lasts}` }
  const likely = (value: number, band: Sure['switchC']) =>
    heatWords(sure.given.fate === 'lasts' ? value : (band.mid ?? value), band, units)
  const winding = likely(figures.hottestWindingC.value, sure.windingC)
  const limit = `its class limit is ${told(classLimitC, 'temperature', units)}`
  if (job.parts.cutoff.fitted === 'none')
    return {
      verdict: 'Yes',
      sentence: `Yes. The winding gets to ${winding}, and no further.`,
      support: `${lasts} No cutoff guards the winding; ${limit}.`,
    }
  return {
    verdict: 'Yes',
    sentence: `Yes. The cutoff gets to ${likely(figures.hottestSwitchC.value, sure.switchC)}, and never opens.`,
    support: `${lasts} The winding gets to ${winding}; ${limit}.`,
  }
}

function surelyFails(figures: Figures, sure: Sure, units: Units, given: Answer): Answer {
  const { fails, fates } = sure
  const when = whenWords(sure) ?? ''
  const mixed = fails !== null && failWords(sure) === 'it fails'
  const others = mixed ? ' In some likely cases something else stops it first.' : ''
  const support = `${sure.given.fate === fails ? given.support : unlikely(given, sure)}${others}`
  const hot = heatWords(
    sure.given.fate === 'hot'
      ? figures.hottestWindingC.value
      : (sure.windingC.mid ?? figures.hottestWindingC.value),
    sure.windingC,
    units,
  )
  const sentence =
    fails === 'hot'
      ? `No. The winding gets to ${hot}, over its class limit of ${told(figures.classLimitC, 'temperature', units)}.`
      : fails === null || fates[fails] === 0
        ? unbound(given.sentence)
        : `No. ${capital(failWords({ ...sure, fates: { ...fates, lasts: 1 - fates[fails] } }))} ${when}.`
  return { verdict: 'No', sentence, support }
}

function tooClose(job: Job, sure: Sure, units: Units, given: Answer): Answer {
  const first = firstToMeasure(sure)
  const settle = first
    ? `Measure ${measureWords(first, job, units).what}: that would tell most.`
    : 'No single measurement would settle it.'
  return {
    verdict: 'Too close to call',
    sentence: `Too close to call: ${failWords(sure)} in ${tenths(1 - sure.fates.lasts)} likely cases.`,
    support: `${settle} ${plainly(given)}`,
  }
}

/** The answer to a job that was run to its end, from that with the values as given and from the samples. */
export function doubted(job: Job, figures: Figures, units: Units, sure: Sure, given: Answer): Answer {
  const verdict = sureVerdict(sure)
  if (verdict === 'Yes') return surelyLasts(job, figures, sure, units, given)
  return verdict === 'No' ? surelyFails(figures, sure, units, given) : tooClose(job, sure, units, given)
}
