// What the sentences of advice share: the finding's numbers, the machine's name, and what a cure comes to.
import { classLimitC } from '../../handbook/insulation.ts'
import type { Cure, Finding } from '../../advise/finding.ts'
import type { Outcome } from '../../advise/outcome.ts'
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

export const valueOf = ({ finding }: Telling, name: string): number =>
  finding.evidence[name]?.value ?? Number.NaN
export const has = ({ finding }: Telling, name: string): boolean => finding.evidence[name] !== undefined

/** Sentences that are there, one after the other. */
export const joined = (...sentences: readonly (string | false | undefined)[]): string =>
  sentences.filter((each) => each).join(' ')

/** What a job comes to, to finish "With the shaft fan …": "the cutoff never opens, and gets to 81 °C". */
export function outcomeWords(then: Outcome, job: Job, now: Outcome, units: Units): string {
  const heat = (value: number) => told(value, 'temperature', units)
  const limit = classLimitC(job.parts.winding.insulation)
  const parts: string[] = []
  if (then.firstOpening !== null) parts.push(`the cutoff opens after ${duration(then.firstOpening)}`)
  else if (job.parts.cutoff.fitted !== 'none' && !then.faults.includes('destroyed'))
    parts.push(`the cutoff never opens and gets to ${heat(then.hottestSwitchC)}`)
  const over = then.hottestWindingC - limit
  parts.push(
    over > 0
      ? `the winding ${then.faults.includes('destroyed') ? 'burns out' : `still gets to ${heat(then.hottestWindingC)}, ${told(Math.max(1, over), 'temperature difference', units)} too hot`}`
      : `the winding gets to ${heat(then.hottestWindingC)}`,
  )
  if (then.stalled !== null) parts.push('the spindle stops')
  else if (then.sag !== null && now.sag !== null && Math.abs(then.sag - now.sag) > 0.02)
    parts.push(`it loses ${percent(then.sag)} of its speed in the cut instead of ${percent(now.sag)}`)
  return parts.length === 1
    ? parts[0]
    : `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`.replace(
        / and gets to (\S+) and /,
        ' and gets to $1, and ',
      )
}

/** "With the shaft fan the cutoff never opens …" */
export function cureSentence({ name, outcome, whole }: Cure, { job, now, units }: Telling): string {
  if (!outcome) return ''
  const lead = /^(With|On) /.test(name) ? `${name} ` : `${name}: `
  return `${lead}${outcomeWords(outcome, job, now, units)}${whole ? '' : '; that is not enough by itself'}.`
}

/** Every cure in a sentence of its own. */
export const cureSentences = (telling: Telling): string =>
  joined(...telling.finding.cures.map((cure) => cureSentence(cure, telling)))

/** Where the finding is healed by one that stands before it. */
export const followWords = ({ finding }: Telling): string =>
  finding.after === null || finding.kind === 'Safety' ? '' : 'What is said above makes an end of this too.'

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

/** What gearing down does to amps and copper heat: "Amps fall from 14.9 A to 5.9 A, and the copper heat to a fifth." */
export function gearedWords(telling: Telling): string {
  const { finding, job, now, units } = telling
  const then = finding.cures.find(({ outcome }) => outcome !== null)?.outcome
  if (!then) return ''
  const watts = (outcome: Outcome) =>
    told(outcome.copper / job.duty.seconds, 'power', { ...units, system: 'metric' })
  return `At ${ratioText(then.ratio)} the cut takes ${told(then.workAmps, 'current', units)} instead of ${told(now.workAmps, 'current', units)}, and the copper makes ${watts(then)} of heat over the job instead of ${watts(now)}; the price is top speed, ${told(then.topSpeed, 'angular speed', units)} instead of ${told(now.topSpeed, 'angular speed', units)}.`
}
