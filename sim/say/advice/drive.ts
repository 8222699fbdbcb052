// Sentences about gearing, belt, plate, and what to measure.
import type { FindingName } from '../../advise/finding.ts'
import type { BeltFault } from '../../drive/limits.ts'
import { clockTime, platePower, ratioText, told } from '../number.ts'
import { beltSentence } from '../ratio.ts'
import {
  cureSentences,
  followWords,
  gearedWords,
  has,
  heatFigure,
  joined,
  machineOf,
  type Say,
  say,
  type Telling,
  amount,
} from './words.ts'

/** Every power in the reader's units and in watts: computed two ways, as it always should be. */
const powers = (t: Telling, name: string): string => {
  const value = amount(t, name)
  const own = told(value, 'power', t.units)
  const watt = told(value, 'power', { ...t.units, system: 'metric' })
  return own === watt ? own : `${own} (${watt})`
}

const BELT_HEADLINES = {
  rim: 'Slow the pulley’s rim down.',
  touch: 'Make room for the pulleys.',
  wrap: 'Give the belt more of the small pulley.',
  'small driving': 'Fit a larger driving pulley for this belt.',
  'small driven': 'Fit a larger driven pulley for this belt.',
  load: 'Take a stronger belt, or more ribs.',
  balance: 'Balance the pulleys, or slow the belt down.',
  steep: 'Think of two stages.',
} as const

const MEASURES: Readonly<Record<string, { readonly headline: string; readonly text: string }>> = {
  ohms: {
    headline: 'Measure the winding’s ohms.',
    text: 'Hold the shaft, send 2 to 5 A through it for seconds and read volts and amps; a plain ohmmeter shows nearly nothing, and that is normal.',
  },
  cooling: {
    headline: 'Log a warm-up.',
    text: 'Time, can temperature and amps every few minutes, then the cooling-off: it takes the place of the guess at how the motor sheds its heat.',
  },
  cut: {
    headline: 'Read the current in the cut.',
    text: 'A clamp meter on one motor lead, set to DC.',
  },
}

export const driveWords = {
  horsepower: (t) => ({
    headline: 'Gear it down: horsepower is not torque.',
    text: joined(
      `${platePower(amount(t, 'power'), t.units)} at ${say(t, 'speed')} is ${say(t, 'torque')}; a motor of the same power at 1725 rpm has ${say(t, 'old')}. Through these pulleys that makes ${say(t, 'atSpindle')}, and the cut asks ${say(t, 'asked')} at its worst.`,
      cureSentences(t),
      gearedWords(t),
    ),
    ...heatFigure(t),
  }),
  range: (t) => ({
    headline:
      t.finding.kind === 'Better'
        ? 'Gear it down for a cooler motor.'
        : 'Let the motor turn faster: gear it down.',
    text: joined(
      `Its fastest in this job is ${say(t, 'motor')}, ${say(t, 'share')} of the plate’s ${say(t, 'plate')}. Slow by the knob is not slow by the pulley: the knob takes speed and leaves the amps.`,
      cureSentences(t),
      gearedWords(t),
    ),
    ...heatFigure(t),
  }),
  reach: (t) => ({
    headline: 'Gear it less, or ask for less speed.',
    text: joined(
      `${say(t, 'volts')} take the spindle to ${say(t, 'top')} with nothing to cut, and ${say(t, 'asked')} is asked.`,
      cureSentences(t),
    ),
    figure: say(t, 'top'),
    note: `top speed; ${say(t, 'asked')} asked`,
  }),
  stalls: (t) => ({
    headline: 'Gear it down: the spindle stops.',
    text: joined(
      `At ${clockTime(amount(t, 'at'))} it stands, at a limit of ${say(t, 'limit')}, against ${say(t, 'asked')} asked. Held still it burns the bars under its brushes in seconds.`,
      cureSentences(t),
      followWords(t),
    ),
    figure: clockTime(amount(t, 'at')),
    note: 'the spindle stops',
  }),
  sags: (t) => ({
    headline: `Hold the ${machineOf(t)}’s speed in the cut.`,
    text: joined(
      `It gets down to ${say(t, 'slowest')}, ${say(t, 'sag')} lost, and you accept ${say(t, 'accepted')}.`,
      amount(t, 'perAmp') > 0 &&
        `Each amp costs ${say(t, 'perAmp')} at the spindle, the same at any speed: little when fast, everything when slow.`,
      cureSentences(t),
      followWords(t),
    ),
    figure: say(t, 'sag'),
    note: `lost in the cut; ${say(t, 'accepted')} accepted`,
  }),
  slips: (t) => ({
    headline: has(t, 'strand') ? 'Tighten the belt.' : 'Give the belt more grip by its pulleys.',
    text: joined(
      `It slips for ${say(t, 'seconds')} in all: the cut asks ${say(t, 'asked')}, and it wraps ${say(t, 'wrap')}° of the small pulley.`,
      cureSentences(t),
      has(t, 'strand')
        ? `Fitted with ${say(t, 'strand')} in each strand it carries the work with half in hand, and pulls each shaft with ${say(t, 'shafts')}: a usual bearing stands that, and no tighter is needed.`
        : `Do not just tighten it: that kills bearings${has(t, 'pull') ? `, which bear ${say(t, 'pull')} of belt pull already` : ''}. More wrap, wider pulleys or a second stage is the cure.`,
    ),
    figure: say(t, 'seconds'),
    note: 'slipping',
  }),
  beltLimit: (t) => {
    const kind = t.finding.quotes[0] as BeltFault['kind']
    const fault: BeltFault = {
      kind,
      value: amount(t, 'value'),
      limit: amount(t, 'limit'),
      stage: amount(t, 'stage'),
    }
    const dimension = t.finding.evidence.value.dimension
    const degrees = (angle: number) => `${Math.round((angle * 180) / Math.PI)}°`
    const show = (value: number) =>
      kind === 'wrap' ? degrees(value) : kind === 'steep' ? ratioText(value) : told(value, dimension, t.units)
    return {
      headline: BELT_HEADLINES[kind],
      text: beltSentence(fault, amount(t, 'stages'), t.units),
      figure: show(fault.value),
      note: `limit ${show(fault.limit)}`,
    }
  },
  tooSmall: (t) => ({
    headline: 'Take a stronger motor, or ask less of this one.',
    text: joined(
      `No change that was tried does the job. Power two ways: ${say(t, 'torque')} at ${say(t, 'speed')} is ${powers(t, 'asked')} while it cuts`,
    ).concat(
      `${has(t, 'continuous') ? `, and the plate gives ${powers(t, 'continuous')} all day` : has(t, 'power') ? `, and the plate says ${powers(t, 'power')}, likely a peak` : ''}. Whoever sells a motor should be able to show you both numbers.`,
    ),
    figure: told(amount(t, 'asked'), 'power', t.units),
    note: has(t, 'continuous') ? `asked; ${say(t, 'continuous')} all day` : 'asked',
  }),
  plate: (t) => {
    const [path, wrong, wouldDo] = t.finding.quotes
    const own = path.startsWith('plate')
    return {
      headline: own ? 'Check the plate.' : 'Check the bench reading.',
      text: joined(
        wrong,
        wouldDo,
        /power|amps|Watts/.test(path) &&
          own &&
          'Volts times amps is what goes in; volts times a fuse is neither.',
      ),
      figure: '',
      note: '',
    }
  },
  lessReduction: (t) => {
    const { finding, now } = t
    const opens = finding.evidence.opens
    return {
      headline: `Do not gear it to ${ratioText(amount(t, 'ratio'))}.`,
      text: joined(
        `The cut would take ${say(t, 'amps')} instead of ${say(t, 'now')}: ${say(t, 'heat')} times the copper heat.`,
        has(t, 'stalls') && `The spindle would stop at ${clockTime(amount(t, 'stalls'))}.`,
      ),
      figure: opens ? say(t, 'opens') : say(t, 'winding'),
      note: opens
        ? `to opening, ${now.firstOpening === null ? 'now never' : `was ${say(t, 'opensNow')}`}`
        : 'hottest winding',
    }
  },
  doubt: (t) => {
    const [name] = t.finding.quotes
    const { headline, text } = MEASURES[name]
    return {
      headline,
      text: joined(
        text,
        'No other guess decides as much whether the job gets done.',
        name === 'cut' &&
          `On a motor lead: ${say(t, 'amps')} expected there, and ${say(t, 'outlet')} at the outlet, which is not the same.`,
      ),
      figure: `${say(t, 'low').replace(/\s.*$/, '')} to ${say(t, 'high')}`,
      note: 'hottest winding, as this guess is low or high',
    }
  },
} as const satisfies Partial<Record<FindingName, Say>>
