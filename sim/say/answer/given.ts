// The answer with the values as given, worst news first.
import type { Job } from '../../job.ts'
import type { Figures } from '../../judge.ts'
import { brief, duration, NBSP, percent, told } from '../number.ts'
import type { Units } from '../units.ts'

export type Verdict = 'Yes' | 'Barely' | 'No' | 'Too close to call'

export interface Short {
  /** "No · opens after 24 min" */
  readonly words: string
  /** "likely 15 to 39"; '' where there is no more to say. */
  readonly doubt: string
}

export interface Answer {
  readonly verdict: Verdict
  /** The largest words on the page. */
  readonly sentence: string
  /** The same for the foot of a phone: the verdict with the one number that tells most, and what that number rests on. */
  readonly short: Short
  /** What it means for the work. */
  readonly support: string
}

/** A protector opens up to this much early or late (UL 1004-3, ±5 K). K */
const CUTOFF_TOLERANCE = 5
/** A winding nearer its limit than this is only just within it, whatever the numbers say. K */
const CLOSE_TO_CLASS = 5
/** Until the doubt has been worked out, the sentence says what it rests on. */
export const AS_GIVEN = 'with the values as given'

/** Verdict and number, with the values as given. */
const short = (verdict: Verdict, what: string): Short => ({ words: `${verdict} · ${what}`, doubt: AS_GIVEN })

/** The phase's own name, quoted lightly: it is the user's text. */
const during = (job: Job, phase: number): string => {
  const name = job.duty.phases[phase]?.name.trim() ?? ''
  return name === '' ? `in step ${phase + 1}` : `during ${name}`
}

const whole = (figures: Figures): string => duration(figures.seconds)

/** What stays of the work: "Over 3 h you get 39 of 111 min of milling." */
function deliveredOf(job: Job, figures: Figures): string {
  const { asked, got, phase } = figures.work
  const minutes = (s: number) => brief(Math.round(asked < 120 ? s : s / 60))
  const unit = asked < 120 ? 's' : 'min'
  const name = job.duty.phases[phase]?.name.trim() || `step ${phase + 1}`
  return `Over ${whole(figures)} you get ${minutes(got)} of ${minutes(asked)}${NBSP}${unit} of ${name}.`
}

function whenEnded(job: Job, figures: Figures, units: Units): Answer | null {
  const { ending } = figures
  if (ending.kind === 'finished') return null
  if (ending.kind === 'destroyed')
    return {
      verdict: 'No',
      sentence: `No. The winding burns out ${duration(ending.t)} into the job, ${AS_GIVEN}.`,
      short: short('No', `burns out after ${duration(ending.t)}`),
      support: `It passes ${told(300, 'temperature', units)}, where varnish, solder and magnets are long gone. ${deliveredOf(job, figures)}`,
    }
  const why =
    ending.kind === 'too many steps'
      ? 'it would take too many steps'
      : ending.kind === 'abandoned'
        ? 'it was stopped'
        : 'the numbers ran away'
  return {
    verdict: 'No',
    sentence: `No answer beyond ${duration(ending.t)}: ${why}.`,
    short: { words: `No answer beyond ${duration(ending.t)}`, doubt: why },
    support: 'What is shown holds up to there. Shorten the job, or look for an input that is far out.',
  }
}

function whenOpen(job: Job, figures: Figures, units: Units): Answer | null {
  const { firstOpening, firstOpenFor } = figures
  if (!firstOpening) return null
  const atOnce = firstOpening.t < 1
  const at = duration(firstOpening.t)
  const when = atOnce
    ? 'The cutoff is open from the start'
    : `The cutoff opens ${at} into the job, ${during(job, firstOpening.phase)}`
  const after =
    job.parts.cutoff.fitted === 'manual reset'
      ? 'It stays open until somebody starts it again.'
      : firstOpenFor === null
        ? 'It does not reclose within the job.'
        : `It recloses by itself ${duration(firstOpenFor)} later, and the machine restarts.`
  return {
    verdict: 'No',
    sentence: `No. ${when}, ${AS_GIVEN}.`,
    short: short('No', atOnce ? 'cutoff open from the start' : `opens after ${at}`),
    support: `${after} ${deliveredOf(job, figures)}${cooked(figures, units)}`,
  }
}

/** A cutoff that opens has not always saved the winding. */
function cooked({ hottestWindingC, classLimitC }: Figures, units: Units): string {
  const over = hottestWindingC.value - classLimitC
  if (!(over > 0)) return ''
  return ` The winding gets ${told(Math.max(1, over), 'temperature difference', units)} over its class limit: the cutoff does not protect it.`
}

function whenHot(job: Job, figures: Figures, units: Units): Answer | null {
  const { classPassed, hottestWindingC, classLimitC } = figures
  if (classPassed === null) return null
  const over = told(Math.max(1, hottestWindingC.value - classLimitC), 'temperature difference', units)
  const cutoff = job.parts.cutoff.fitted === 'none' ? 'and no cutoff stops it' : 'and the cutoff never opens'
  return {
    verdict: 'No',
    sentence: `No. The winding gets ${over} too hot, ${cutoff}, ${AS_GIVEN}.`,
    short: short('No', `winding ${over} too hot`),
    support: `It passes its class limit of ${told(classLimitC, 'temperature', units)} after ${duration(classPassed)} and reaches ${told(hottestWindingC.value, 'temperature', units)}.`,
  }
}

function whenStalled(job: Job, figures: Figures, units: Units): Answer | null {
  if (figures.stalled === null) return null
  const at =
    figures.limitedInCut > 0
      ? `held at the current limit of ${told(job.parts.controller.currentLimit, 'current', units)}`
      : 'short of torque'
  return {
    verdict: 'No',
    sentence: `No. The spindle stops ${duration(figures.stalled)} into the job, ${at}, ${AS_GIVEN}.`,
    short: short('No', `stops after ${duration(figures.stalled)}`),
    support:
      'A motor held still burns its commutator in seconds. More reduction gives more torque for the same current.',
  }
}

/** Slower than half of what was asked is no sag any more: it does not do the job. */
const HOPELESS = 0.5

function whenSlow(figures: Figures, units: Units): Answer | null {
  const { slowest, speedMissed, cutoffMargin, classMargin } = figures
  if (!speedMissed || !slowest) return null
  const speed = told(slowest.value, 'angular speed', units)
  const support = `${percent(slowest.sag)} under the ${told(slowest.asked, 'angular speed', units)} asked, more than you accept.`
  if (slowest.sag > HOPELESS)
    return {
      verdict: 'No',
      sentence: `No. The spindle gets down to ${speed}, ${AS_GIVEN}.`,
      short: short('No', `down to ${speed}`),
      support,
    }
  const cool = (cutoffMargin ?? Infinity) >= CUTOFF_TOLERANCE && classMargin >= CLOSE_TO_CLASS
  return {
    verdict: 'Barely',
    sentence: `Barely. ${cool ? 'It stays cool enough, but the' : 'The'} spindle gets down to ${speed}, ${AS_GIVEN}.`,
    short: short('Barely', `down to ${speed}`),
    support,
  }
}

function whenFine(figures: Figures, units: Units): Answer {
  const { cutoffMargin, hottestSwitchC, hottestWindingC, classMargin } = figures
  const settled = told(hottestSwitchC.value, 'temperature', units)
  const under = (margin: number) => told(Math.max(1, margin), 'temperature difference', units)
  const winding = `The winding stays ${told(classMargin, 'temperature difference', units)} under its class limit, at ${told(hottestWindingC.value, 'temperature', units)} at most.`
  if (cutoffMargin !== null && cutoffMargin < CUTOFF_TOLERANCE)
    return {
      verdict: 'Barely',
      sentence: `Barely. It lasts the ${whole(figures)}, but the cutoff comes within ${under(cutoffMargin)} of opening, ${AS_GIVEN}.`,
      short: short('Barely', `cutoff ${under(cutoffMargin)} from opening`),
      support: `Cutoffs open up to ${told(CUTOFF_TOLERANCE, 'temperature difference', units)} early. ${winding}`,
    }
  if (classMargin < CLOSE_TO_CLASS)
    return {
      verdict: 'Barely',
      sentence: `Barely. It lasts the ${whole(figures)}, but the winding comes within ${under(classMargin)} of its class limit, ${AS_GIVEN}.`,
      short: short('Barely', `winding ${under(classMargin)} from its limit`),
      support: `It gets to ${told(hottestWindingC.value, 'temperature', units)}. ${cutoffMargin === null ? 'No cutoff guards it.' : 'The cutoff never opens.'}`,
    }
  if (cutoffMargin === null)
    return {
      verdict: 'Yes',
      sentence: `Yes. The winding gets to ${told(hottestWindingC.value, 'temperature', units)} and no further, ${AS_GIVEN}.`,
      short: short('Yes', `winding gets to ${told(hottestWindingC.value, 'temperature', units)}`),
      support: `${winding} No cutoff guards it.`,
    }
  return {
    verdict: 'Yes',
    sentence: `Yes. The cutoff gets to ${settled} and never opens, ${AS_GIVEN}.`,
    short: short('Yes', `cutoff gets to ${settled}`),
    support: winding,
  }
}

/** The answer with the values as given. */
export function asGiven(job: Job, figures: Figures, units: Units): Answer {
  return (
    whenEnded(job, figures, units) ??
    whenOpen(job, figures, units) ??
    whenStalled(job, figures, units) ??
    whenHot(job, figures, units) ??
    whenSlow(figures, units) ??
    whenFine(figures, units)
  )
}
