// Sentences about air and heat.
import { classLimitC } from '../../handbook/insulation.ts'
import type { FindingName } from '../../advise/finding.ts'
import { TOUCH_C } from '../../advise/air.ts'
import { NBSP, percent, told } from '../number.ts'
import {
  cureSentences,
  followWords,
  heatFigure,
  joined,
  type Say,
  say,
  type Telling,
  amount,
} from './words.ts'

/** A hot motor needs more for the same torque: ohms up, magnets down. */
function hotterWords(t: Telling): string {
  const more = (name: string) => percent(amount(t, name) - 1)
  return `Heat feeds itself: as hot as that it has ${more('ohms')} more ohms, and wants ${more('amps')} more amps for the same torque, ${say(t, 'copper')} times the copper heat of a cold motor.`
}

/** Power is told in watts here, whatever the units: it is heat. */
const watts = (value: number): string => `${Number(value.toPrecision(2))}${NBSP}W`

export const heatWords = {
  fanMissing: (t) => ({
    headline: 'Put air through the motor.',
    text: joined(
      cureSentences(t),
      'A flywheel gives no torque, half a second of it at most; but the fan went with it.',
      hotterWords(t),
    ),
    ...heatFigure(t),
  }),
  fanUseless: (t) => ({
    headline: 'Give it air that does not slow down with the motor.',
    text: joined(
      `At ${say(t, 'speed')} the shaft fan turns at ${say(t, 'turns')} of its full speed: it moves ${say(t, 'turns')} of the air, and takes away ${say(t, 'removed')} of the heat that it would.`,
      cureSentences(t),
      followWords(t),
    ),
    figure: say(t, 'removed'),
    note: 'of the fan’s cooling is left',
  }),
  enclosed: (t) => ({
    headline: 'Blow air over the shell.',
    text: joined(
      'Nothing passes through it, and nothing moves the air around it.',
      cureSentences(t),
      followWords(t),
    ),
    ...heatFigure(t),
  }),
  dirty: (t) => ({
    headline: 'Clean the air path.',
    text: joined(
      `Dust and chips leave ${say(t, 'path')} of its cooling.`,
      cureSentences(t),
      'Keep it clean: a coarse screen, no cloth.',
    ),
    ...heatFigure(t),
  }),
  tooHot: (t) => ({
    headline: 'Ask less of the motor, or gear it down.',
    text: joined(cureSentences(t), hotterWords(t)),
    ...heatFigure(t),
  }),
  peak: (t) => ({
    headline: `Do not count on the plate’s ${say(t, 'power')}.`,
    text: joined(
      `That is a peak: ${say(t, 'heat')} times the copper heat of its ${say(t, 'continuous')} all day. The cut asks ${say(t, 'asked')} of the shaft, surges averaged, and the plate gives ${say(t, 'allDay')} without end; what is over that has to be paid in rests.`,
      cureSentences(t),
      followWords(t),
    ),
    figure: `${say(t, 'heat')} ×`,
    note: 'copper heat, peak against all day',
  }),
  touch: (t) => ({
    headline: 'Keep hands off the frame.',
    text: `It gets to ${say(t, 'frame')}: bare metal over ${told(TOUCH_C, 'temperature', t.units)} burns within ten seconds. ${amount(t, 'winding') > classLimitC(t.job.parts.winding.insulation) ? 'The winding inside is hotter than it stands' : 'Hot to the hand is healthy all the same, and the shell says little of the winding'}, at ${say(t, 'winding')}: it goes on rising after switching off. Too hot to touch within a minute would be a fault, since that takes ${watts(amount(t, 'minute'))} into the frame.`,
    figure: say(t, 'frame'),
    note: 'hottest frame',
  }),
} as const satisfies Partial<Record<FindingName, Say>>
