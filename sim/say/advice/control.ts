// Sentences about controller and cutoff.
import type { FindingName } from '../../advise/finding.ts'
import { clockTime, told } from '../number.ts'
import {
  amount,
  cureSentences,
  followWords,
  has,
  joined,
  machineOf,
  type Say,
  say,
  type Telling,
  unplugWords,
} from './words.ts'

/** What neither current limit nor fuse does for a winding. */
const limitWords = (t: Telling): string =>
  has(t, 'heat')
    ? `The current limit of ${say(t, 'amps')} does not guard it: it lets ${say(t, 'heat')} times the plate’s copper heat pass for ever, and a fuse acts later still.`
    : 'Neither the current limit nor a fuse knows how hot it is.'

/** How hot it gets with nothing to stop it. */
const unguarded = (t: Telling): string => {
  const { now, finding } = t
  if (now.faults.includes('destroyed')) return 'In this job it burns out.'
  const over = finding.evidence.winding.value - finding.evidence.limit.value
  return over > 0
    ? `In this job it gets to ${say(t, 'winding')}, and its class allows ${say(t, 'limit')}.`
    : `This job takes it to ${say(t, 'winding')}; a jam, a blocked vent or a hot day would go on from there.`
}

/** How often it opens, where that is more than once. */
const openings = (t: Telling): string => {
  const times = amount(t, 'times')
  return times > 1 ? `; it opens ${times === 2 ? 'twice' : `${say(t, 'times')} times`} in the job` : ''
}

export const controlWords = {
  hunts: (t) => ({
    headline: 'Turn the sag compensation down.',
    text: joined(
      `It makes up for ${say(t, 'share')} of the coldest winding’s resistance: over 90 % the speed hunts up and down by itself.`,
      cureSentences(t),
    ),
    figure: say(t, 'share'),
    note: '90 % at most',
  }),
  limitHigh: (t) => ({
    headline: 'Turn the current limit down.',
    text: joined(
      `${say(t, 'limit')} is more than brushes and magnets of a ${say(t, 'plate')} motor stand for long: 1.5 times the plate is usual, and even that is 2.25 times the copper heat for as long as it lasts.`,
      cureSentences(t),
    ),
    figure: say(t, 'limit'),
    note: `plate ${say(t, 'plate')}`,
  }),
  limited: (t) => ({
    headline: 'Take the cut off the current limit.',
    text: joined(
      `The cut stands at the controller’s limit of ${say(t, 'limit')} for ${say(t, 'seconds')}: there is no more torque to be had at this ratio.`,
      cureSentences(t),
      followWords(t),
    ),
    figure: say(t, 'seconds'),
    note: 'at the limit',
  }),
  notConnected: (t) => ({
    headline: 'Connect the cutoff: its leads hang loose.',
    text: joined(
      `It opens, and nothing stops. ${unguarded(t)} ${limitWords(t)} Its two thin leads belong in the coil of a release that breaks the supply; they are as live as the motor.`,
      cureSentences(t),
    ),
    figure: say(t, 'winding'),
    note: 'and nothing to stop it',
  }),
  noCutoff: (t) => ({
    headline: 'Fit a cutoff.',
    text: joined(`Nothing stops the heat. ${unguarded(t)} ${limitWords(t)}`, cureSentences(t)),
    figure: say(t, 'winding'),
    note: 'and nothing to stop it',
  }),
  motorLead: (t) => ({
    headline: 'Take the cutoff out of the motor lead.',
    text: `Its contact is made for a coil’s current: up to ${say(t, 'amps')} of direct current at ${say(t, 'volts')} holds an arc where alternating current would drop it, and welds it shut the day it is needed. Put it in the coil of a no-volt release that breaks the supply.`,
    figure: say(t, 'amps'),
    note: 'through a small contact',
  }),
  enableOnly: (t) => ({
    headline: 'Let the cutoff break the supply, not only the controller’s enable input.',
    text: joined(
      `A shorted power device ignores its enable input: the cutoff opens at ${say(t, 'opensAt')}, and the motor runs on at full volts, with no current limit either. In the coil of a no-volt release it breaks the supply, and nothing starts again by itself.`,
      cureSentences(t),
    ),
    figure: say(t, 'opensAt'),
    note: 'it opens, and breaks nothing',
  }),
  restarts: (t) => ({
    headline: `Stop the ${machineOf(t)} from restarting by itself.`,
    text: joined(
      `The cutoff recloses at ${clockTime(t.finding.evidence.recloses.value)} and the ${machineOf(t)} starts, with whatever hand is in it${openings(t)}. A no-volt release keeps it off until start is pressed; until there is one, ${unplugWords(t)} before you reach in.`,
      t.finding.after !== null &&
        'With its heat cured it never opens; a blocked vent or a jam would still open it.',
    ),
    figure: clockTime(t.finding.evidence.recloses.value),
    note: 'unattended restart',
  }),
  lateCutoff: (t) => ({
    headline: 'Do not trust the cutoff with the winding.',
    text: joined(
      `The winding passes its class limit of ${say(t, 'limit')} at ${clockTime(t.finding.evidence.passed.value)}${has(t, 'opens') ? `; the cutoff opens at ${clockTime(t.finding.evidence.opens.value)}` : ', and the cutoff never opens'}. The winding turns and the switch does not: set for ${say(t, 'opensAt')}, it feels the frame more than the copper.`,
      followWords(t),
    ),
    figure: say(t, 'winding'),
    note: `hottest winding; limit ${told(t.finding.evidence.limit.value, 'temperature', t.units)}`,
  }),
} as const satisfies Partial<Record<FindingName, Say>>
