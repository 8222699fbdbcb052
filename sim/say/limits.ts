// Work and rest in sentences: how long a cut goes, how long to rest, and what of it lasts for good.
import type { Limits, LimitsStudy } from '../studies/limits.ts'
import { duration, percent, told } from './number.ts'
import type { Units } from './units.ts'

/** The cut in a few words: "milling, 4.3 lbf·ft at 350 rpm". */
export function cutWords({ phase, torque }: LimitsStudy, units: Units): string {
  const name = phase.name === '' ? 'the cut' : phase.name
  const mean = phase.surge ? ' on average' : ''
  return `${name}, ${told(torque, 'torque', units)}${mean} at ${told(phase.speed, 'angular speed', units)}`
}

const ENDS = {
  opens: 'the cutoff opens',
  class: 'the winding passes its class limit',
  destroyed: 'the winding burns out',
} as const

/** How long from cold: "From cold it goes 12 min 40 s: then the winding passes its class limit." */
export function coldSentence({ cold }: Limits): string {
  if (cold === null || cold.ends === null) return 'It can be held all day without a rest.'
  return `From cold it goes ${duration(cold.seconds)}: then ${ENDS[cold.ends]}.`
}

/** How long again, and what rest brings it back. */
export function againSentence({ again, next }: Limits): string {
  if (again === null || next === null) return ''
  const { run, standing, free } = next
  const after = `After ${duration(again.rest)} of standing it goes ${duration(again.seconds)} more.`
  if (standing === null && free === null)
    return `${after} No rest of a night brings it back to ${duration(run)}.`
  const free_ = free === null ? '' : `${standing === null ? '' : ', or '}run free ${duration(free)}`
  const stand = standing === null ? '' : `stand ${duration(standing)}`
  return `${after} To go another ${duration(run)} it must first ${stand}${free_}.`
}

/** What lasts for good in the user's cycle. */
export function cycleSentence({ work, rest, cut }: Limits, study: LimitsStudy): string {
  const { cycleRest, phase } = study
  if (work === 'any' && rest === 'any') return 'In the job’s cycle it needs no rest.'
  const turns =
    work === 'none'
      ? 'In the job’s cycle no cut lasts for good, however short'
      : work === 'any'
        ? 'In the job’s cycle it may go as long as you like'
        : `In the job’s cycle${cycleRest > 0 ? `, with its ${duration(cycleRest)} of rest,` : ''} it lasts for good if a cut takes no more than ${duration(work)}`
  const rests =
    rest === 'none'
      ? `no rest is long enough for ${duration(phase.seconds)} of it`
      : rest === 'any'
        ? `${duration(phase.seconds)} of it needs no rest`
        : `${duration(phase.seconds)} of it needs ${duration(rest)} of rest`
  const smaller =
    typeof cut === 'number' && cut < 1
      ? ` With work and rest as the job has them, ${percent(cut)} of this cut would last.`
      : ''
  return `${turns}; ${rests}.${smaller}`
}

/** What the cut does to the speed, where it takes more than is accepted. */
export function slowSentence({ slower, phase }: LimitsStudy, units: Units): string {
  if (slower === null) return ''
  const asked = told(phase.speed, 'angular speed', units)
  return slower === 0
    ? `This cut stops it. A motor held still burns its commutator in seconds: these limits of heat are no leave to try.`
    : `It does not hold ${asked} in this cut: ${told(slower, 'angular speed', units)} is left.`
}

/** All of it for the motor as it is taken to be. */
export const limitsSentences = (study: LimitsStudy, units: Units): string =>
  [
    slowSentence(study, units),
    coldSentence(study.asGiven),
    againSentence(study.asGiven),
    cycleSentence(study.asGiven, study),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')

/** Where the cool frame of a short hard run deceives: said once, beside the card. */
export function canSentence({ asGiven: { cold } }: LimitsStudy, units: Units): string {
  if (cold === null || cold.ends !== 'class') return ''
  return `After one run from cold the frame is only ${told(cold.frameC, 'temperature', units)} when the winding is at its limit: go by the clock, not by the hand.`
}
