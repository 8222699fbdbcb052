// Symptoms in words: what a drive does, what may be behind it here, and the measurement that tells.
import type { Diagnosis, Suspect } from '../advise/symptoms.ts'
import type { Cause } from '../advise/symptoms/causes.ts'
import type { Symptom } from '../advise/symptoms/names.ts'
import { duration, percent, told } from './number.ts'
import type { Units } from './units.ts'

/** Before anything is measured. */
export const HANDS_OFF =
  'Unplug it and measure under 60\u00a0V before a lead comes off or a clip goes on; smoke or a shock: switch off, unplug, and find out first. With the plug in, a hand-held meter and no hands on the leads.'

/** To finish the sentence "It does this:". */
export const SYMPTOM_WORDS: Readonly<Record<Symptom, string>> = {
  trips: 'trips after twenty minutes',
  stalls: 'stalls at low speed',
  bogs: 'bogs down in the cut',
  fuse: 'blows the fuse',
  squeals: 'belt squeals',
  burns: 'too hot to touch in a minute',
  hums: 'hums and will not start',
  shocks: 'gives a shock at the frame',
}

interface CauseWords {
  readonly what: string
  /** What to measure or look at, and what it shows. */
  readonly test: string
}

export const CAUSES: Readonly<Record<Cause, CauseWords>> = {
  air: { what: 'Too little air', test: 'Hold a blower to it: if it then lasts, it was the air.' },
  gearing: {
    what: 'Too little reduction',
    test: 'Clamp one motor lead in the cut: amps over the plate’s at a fraction of its speed.',
  },
  work: {
    what: 'More work than the motor is for',
    test: 'Clamp one motor lead in the cut and compare with the plate’s continuous amps.',
  },
  lumpy: {
    what: 'Lumpy current',
    test: 'Read the motor lead with a true-rms clamp, then on DC: a third more is lumpy.',
  },
  volts: { what: 'Too few volts', test: 'Meter on DC at the motor leads in the cut, knob fully up.' },
  limit: {
    what: 'The current limit',
    test: 'Clamp one motor lead in the cut: amps that stand still while the speed falls are the limit.',
  },
  slip: {
    what: 'The belt slips',
    test: 'Chalk across belt and pulley: the motor keeps its speed while the spindle slows.',
  },
  wrap: { what: 'Too little wrap, or too small a pulley', test: 'Measure centres and pulleys.' },
  outlet: { what: 'More amps than the outlet gives', test: 'Clamp the mains lead in the cut.' },
  highLimit: {
    what: 'A current limit set too high',
    test: 'Turn it down to 1.5 times the plate’s amps and try again.',
  },
  ac: { what: 'AC on a DC motor', test: 'Meter on DC at the motor leads: nearly nothing.' },
  sag: {
    what: 'Sag: ohms times amps',
    test: 'Meter at the motor leads: volts that hold while the speed falls are the winding’s own sag.',
  },
  dust: { what: 'Dust and chips in the vents', test: 'Open it and look; blow it out from the inside.' },
  switch: {
    what: 'A cutoff that opens too early',
    test: 'A thermometer beside it when it opens: a few degrees off is usual, twenty is worn out.',
  },
  brushes: {
    what: 'Worn or sticking brushes, a burnt commutator',
    test: 'Take them out: length, spring, a smooth brown commutator. Ohms at several shaft positions.',
  },
  bearings: {
    what: 'Tight bearings',
    test: 'Belt off, running free: amps over a tenth of the plate’s, or a bearing hotter than the shell.',
  },
  shorted: {
    what: 'Shorted turns in the winding',
    test: 'Ohms at several shaft positions, shaft held, volts at 2 to 5 A: one position far lower. To the frame: no reading, over 1\u00a0MΩ.',
  },
  magnets: {
    what: 'Weakened magnets',
    test: 'Spin it with a drill: volts a thousand turns against the bench’s or plate’s.',
  },
  control: {
    what: 'The controller, its knob or trimmers',
    test: 'Meter on DC at the motor leads while turning the knob.',
  },
  alignment: { what: 'Pulleys out of line, a glazed belt', test: 'A straightedge across both pulleys.' },
  jam: { what: 'Something jams', test: 'Unplugged, belt off: turn motor and machine by hand, each alone.' },
  inrush: {
    what: 'The rush into empty capacitors',
    test: 'It blows at switching on, before the motor turns: a slow fuse of the same amps holds.',
  },
  device: {
    what: 'A shorted power device in the controller',
    test: 'Motor leads off: it blows all the same.',
  },
  breaker: {
    what: 'The outlet’s breaker, or the controller’s own trip',
    test: 'See which is off when it stops: the breaker’s lever, or the controller’s lamp.',
  },
  earth: {
    what: 'An earth that is missing or broken',
    test: 'Unplugged: ohms from the bare frame to the plug’s earth pin, 1\u00a0Ω at most, while the lead is moved.',
  },
  chafed: {
    what: 'A lead or the winding touches the frame',
    test: 'Motor leads off: from each to the frame no reading, over 1\u00a0MΩ.',
  },
  carbon: {
    what: 'Brush dust between holder and frame',
    test: 'Blow it out and measure again: no reading, over 1\u00a0MΩ.',
  },
  static: {
    what: 'The belt’s own charge',
    test: 'One spark at the first touch, on dry days: with the frame earthed it is gone.',
  },
  tension: { what: 'A slack belt', test: 'Press it in the middle: a finger’s width for a forearm’s length.' },
}

/** Whether the numbers explain it, with both of them. */
export function verdictWords({ symptom, explained, evidence }: Diagnosis, units: Units): string {
  const say = (name: string): string => {
    const found = evidence[name]
    if (!found) return ''
    const { value, dimension } = found
    if (dimension === 'time') return duration(value)
    if (dimension === 'share') return percent(value)
    // Heat is told in watts.
    return told(value, dimension, dimension === 'power' ? { ...units, system: 'metric' } : units)
  }
  const lead =
    explained === null
      ? 'This job does not say:'
      : explained
        ? 'The load explains it:'
        : 'A fault, not the load:'
  switch (symptom) {
    case 'trips':
      if (evidence.outlet)
        return `${lead} its cutoff stops nothing; what trips is the breaker or the controller. It takes ${say('outlet')} at a breaker of ${say('breaker')}, and the winding gets to ${say('winding')}.`
      return evidence.opens
        ? `${lead} by this job’s numbers the cutoff opens after ${say('opens')}.`
        : `${lead} by this job’s numbers the cutoff gets to ${say('switch')} and never opens.`
    case 'shocks':
      return `Switch off, unplug, and leave it off: up to ${say('volts')} may stand on what you touch. A shock is never the load’s; find the fault first.`
    case 'burns':
      return `${lead} so hot within ${say('within')} takes ${say('needed')} into the frame alone, and this job makes ${say('watts')} of heat at its hardest.`
    case 'fuse':
      return `${lead} the cut draws about ${say('outlet')} at a breaker of ${say('breaker')}, with ${say('motor')} in the motor.`
    case 'squeals':
      return evidence.carries
        ? `${lead} the belt carries ${say('carries')} at the spindle, and ${say('asked')} is asked.`
        : explained
          ? `${lead} it slips at ${say('asked')}.`
          : `${lead} no belt is named, or none that slips; ${say('asked')} is asked of it.`
    case 'stalls':
    case 'bogs':
    case 'hums':
      return `${lead} ${say('most')} is the most it can give at a standstill, and ${say('asked')} is asked${symptom !== 'hums' && evidence.sag ? `; ${say('sag')} of the speed is lost` : ''}.`
  }
}

export interface SuspectWords extends CauseWords {
  /** "found in this job", "a part to look at", or '' for what this job does not show. */
  readonly standing: string
}

/** A suspect in words. */
export const suspectWords = ({ cause, finding, fault }: Suspect): SuspectWords => ({
  ...CAUSES[cause],
  standing: finding ? 'found in this job' : fault ? 'a part to look at' : 'not in this job’s numbers',
})

/** Suspects worth a line. */
const LEAST_SHARE = 0.05
const MOST = 5

export const worthALine = ({ suspects }: Diagnosis): readonly Suspect[] =>
  suspects.filter(({ share }, index) => index < MOST && (index === 0 || share >= LEAST_SHARE))

/** What is seen, with the person's own time: "It trips after 5 min". */
function seenWords({ symptom, evidence: { seen, within } }: Diagnosis): string {
  if (symptom === 'trips' && seen) return `It trips after ${duration(seen.value)}`
  if (symptom === 'burns' && within) return `It is too hot to touch within ${duration(within.value)}`
  const words = SYMPTOM_WORDS[symptom]
  return symptom === 'squeals' ? `The ${words}` : `It ${symptom === 'trips' ? 'trips' : words}`
}

/** A diagnosis line by line, for the command line. */
export const symptomLines = (diagnosis: Diagnosis, units: Units): string[] => [
  seenWords(diagnosis),
  `  ${verdictWords(diagnosis, units)}`,
  `  ${HANDS_OFF}`,
  ...worthALine(diagnosis).map((suspect, index) => {
    const { what, test, standing } = suspectWords(suspect)
    return `  ${index + 1}. ${what} (${standing}). ${test}`
  }),
]
