// What the sentences of advice share: the finding's numbers, the machine's name, and what a cure comes to.
import { classLimitC } from '../../handbook/insulation.ts'
import type { Cure, Finding } from '../../advise/finding.ts'
import type { Fault, Outcome } from '../../advise/outcome.ts'
import type { Job } from '../../job.ts'
import { brief, duration, percent, ratioText, told } from '../number.ts'
import type { Units } from '../units.ts'

/** A finding in words: a verb first, what and why, the number that counts, and what that is. */
export interface Words {
  readonly headline: string
  readonly text: string
  readonly figure: string
  readonly note: string
}

/** What a sentence is made from. */
export interface Telling {
  readonly finding: Finding
  readonly job: Job
  readonly now: Outcome
  readonly units: Units
}

/** Makes the words of a finding. */
export type Say = (telling: Telling) => Words

const MACHINES = {
  mill: 'mill',
  lathe: 'lathe',
  saw: 'saw',
  grinder: 'grinder',
  wheel: 'wheel',
  drill: 'drill press',
  other: 'machine',
} as const

/** "mill" */
export const machineOf = ({ job }: Telling): string => MACHINES[job.parts.machine.kind]

/** A number of the finding in the reader's units; '' where it has none of this name. */
export function say({ finding, units }: Telling, name: string): string {
  const found = finding.evidence[name]
  if (found === undefined) return ''
  const { value, dimension } = found
  if (dimension === 'time') return duration(value)
  if (dimension === 'share') return percent(value)
  if (dimension === 'number') return brief(Number(value.toPrecision(2)))
  return told(value, dimension, units)
}

export const amount = ({ finding }: Telling, name: string): number =>
  finding.evidence[name]?.value ?? Number.NaN
export const has = ({ finding }: Telling, name: string): boolean => finding.evidence[name] !== undefined

/** What is done before a hand goes in. */
export const unplugWords = ({ job }: Telling): string =>
  job.parts.supply.kind === 'battery' ? 'take the lead off the battery’s post' : 'unplug'

/** Sentences that are there, one after the other. */
export const joined = (...sentences: readonly (string | false | undefined)[]): string =>
  sentences.filter((each) => each).join(' ')

/** What a job comes to, to finish "With the shaft fan …": "the cutoff never opens: it gets to 81 °C, the winding to 105 °C". */
function outcomeWords(then: Outcome, now: Outcome, units: Units, whole: boolean): string {
  const heat = (value: number) => told(value, 'temperature', units)
  const winding = heat(then.hottestWindingC)
  const sag =
    whole && then.sag !== null && now.faults.includes('sags')
      ? `; ${percent(then.sag)} of the speed is lost in the cut${now.sag === null ? '' : `, not ${percent(now.sag)}`}`
      : ''
  if (then.faults.includes('destroyed')) return 'the winding burns out'
  if (then.firstOpening !== null)
    return `the cutoff opens after ${duration(then.firstOpening)}, and the winding gets to ${winding}${sag}`
  return then.guarded
    ? `the cutoff never opens: it gets to ${heat(then.hottestSwitchC)}, and the winding to ${winding}${sag}`
    : `the winding gets to ${winding}${sag}`
}

/** How much hotter than its class a winding is. */
const tooHot = ({ hottestWindingC }: Outcome, { job, units }: Telling): string =>
  told(
    Math.max(1, hottestWindingC - classLimitC(job.parts.winding.insulation)),
    'temperature difference',
    units,
  )

/** What is amiss with a fault, to finish "not enough by itself: …"; null: another says it. */
const AMISS: Readonly<Record<Fault, (then: Outcome, t: Telling, still: string) => string | null>> = {
  destroyed: (_, __, still) => `the winding${still} burns out`,
  rim: (_, __, still) => `the flywheel’s rim${still} runs too fast`,
  opens: ({ faults }, _, still) =>
    faults.includes('hot') ? null : `the heat${still} stops it before the work is done`,
  hot: (then, t, still) =>
    then.faults.includes('destroyed') ? null : `the winding${still} gets ${tooHot(then, t)} too hot`,
  stalls: (_, __, still) => `the spindle${still} stops`,
  slips: (_, __, still) => `the belt${still} slips`,
  reach: (_, __, still) => `the speed asked is${still} out of reach`,
  limited: (_, __, still) => `the cut${still} stands at the current limit`,
  sags: ({ faults, sag }, _, still) =>
    faults.includes('stalls') || sag === null
      ? null
      : `${percent(sag)} of the speed is${still} lost in the cut`,
  unfinished: () => 'its run comes to no end',
}
/** Things amiss that are told of one cure. */
const MOST_AMISS = 2

/** What a cure leaves amiss. */
function leftWords({ outcome }: Cure, t: Telling): string {
  if (!outcome) return ''
  const left = outcome.faults.flatMap((fault) => {
    const words = AMISS[fault](outcome, t, t.now.faults.includes(fault) ? ' still' : '')
    return words === null ? [] : [words]
  })
  return left.slice(0, MOST_AMISS).join(', and ')
}

/** How a cure's name begins a sentence, where it is not "With the shaft fan". */
const LEADS: readonly (readonly [RegExp, string])[] = [
  [/^Ratio /, 'At ratio '],
  [/^Step /, 'On step '],
  [/^Jackshaft, /, 'With a jackshaft, '],
  [/^Supply /, 'With a supply '],
  [/^Current limit /, 'With a current limit of '],
  [/^Rests /, 'With rests '],
  [/^Sag /, 'With sag '],
  [/^Wider /, 'With wider '],
  [/^(\d)/, 'With $1'],
  [/^Cutoff wired$/, 'Wired, '],
  [/^Cutoff wired, /, 'Wired, '],
  [/^Cleaned$/, 'Clean, '],
  [/^Belt tightened$/, 'With the belt tightened'],
]

export function leadOf(name: string): string {
  const found = LEADS.find(([pattern]) => pattern.test(name))
  const lead = found ? name.replace(found[0], found[1]).trimEnd() : name
  return lead.includes(',') && !lead.endsWith(',') ? `${lead},` : lead
}

/** "With the shaft fan the cutoff never opens …" */
function cureSentence(cure: Cure, t: Telling, about: Sayings): string {
  const { name, outcome, whole } = cure
  if (!outcome) return ''
  const lead = leadOf(name)
  const comes = about.comes?.(outcome, cure) ?? outcomeWords(outcome, t.now, t.units, whole)
  const once = /cutoff/.test(lead) ? comes.replace('the cutoff', 'it') : comes
  const left = whole ? '' : (about.left ?? leftWords(cure, t))
  const short = whole ? '' : `; ${name.includes(',') ? 'still not enough' : 'not enough by itself'}`
  return `${lead} ${once}${short}${left === '' ? '' : `: ${left}`}.`
}

/** What a finding says of its cures in its own way: what one comes to, and what is left amiss. */
interface Sayings {
  readonly comes?: (then: Outcome, cure: Cure) => string
  readonly left?: string
}

/** Every cure in a sentence of its own. */
export const cureSentences = (t: Telling, about: Sayings = {}): string =>
  joined(...t.finding.cures.map((cure) => cureSentence(cure, t, about)))

/** Where the finding is healed by one that stands before it. */
export const followWords = ({ finding }: Telling): string =>
  finding.after === null || finding.kind === 'Safety' ? '' : 'The cure above is enough for this too.'

/** The number that counts where heat does: where the best cure settles, against what it is now. */
export function heatFigure({ finding, job, now, units }: Telling): Pick<Words, 'figure' | 'note'> {
  const heat = (value: number) => told(value, 'temperature', units)
  const cure = finding.cures.find(({ whole, outcome }) => whole && outcome !== null)?.outcome
  const winding = heat(now.hottestWindingC)
  if (!cure)
    return {
      figure: winding,
      note: `hottest winding; limit ${heat(classLimitC(job.parts.winding.insulation))}`,
    }
  if (now.firstOpening !== null && cure.firstOpening === null)
    return {
      figure: heat(cure.hottestSwitchC),
      note: `at the cutoff, instead of opening at ${heat(job.parts.cutoff.opensAt)}`,
    }
  return { figure: heat(cure.hottestWindingC), note: `hottest winding, was ${winding}` }
}

/** What gearing does to amps and copper heat, since that goes as amps squared; and its price. */
export function gearedWords({ finding, now, units }: Telling): string {
  const then = finding.cures.find(({ outcome }) => outcome !== null)?.outcome
  if (!then) return ''
  const share = ({ copper, work }: Outcome) => copper / Math.max(work, 1)
  const heat =
    share(now) > 1
      ? `More goes into heat in the copper now than into the work; then it is ${percent(share(then))} of it`
      : `Heat in the copper is ${percent(share(now))} of the work done now, and ${percent(share(then))} then`
  return `At ${ratioText(then.ratio)} the cut takes ${told(then.workAmps, 'current', units)}, not ${told(now.workAmps, 'current', units)}: ${brief(Number(((then.workAmps / now.workAmps) ** 2).toPrecision(2)))} times the copper heat. ${heat}. The price is top speed: ${told(then.topSpeed, 'angular speed', units)}, not ${told(now.topSpeed, 'angular speed', units)}.`
}
