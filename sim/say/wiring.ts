// The wiring checklist in words: what to do, and why, with this job's numbers.
import type { Job } from '../job.ts'
import type { Statement, StatementName } from '../wiring.ts'
import { brief, NBSP, told } from './number.ts'
import type { Units } from './units.ts'

/** What to do, and why or how. */
export interface Spoken {
  readonly what: string
  readonly so: string
}

/** Digits that a reader is told, three at most, and upwards. */
const upwards = (value: number): string => brief(value < 100 ? Math.ceil(10 * value) / 10 : Math.ceil(value))

/** A time that must have passed: rounded up, never down. */
const roundedUp = (seconds: number): string =>
  seconds < 120
    ? `${Math.ceil(seconds)}${NBSP}s`
    : seconds < 7200
      ? `${upwards(seconds / 60)}${NBSP}min`
      : `${upwards(seconds / 3600)}${NBSP}h`

type Say = (fact: (name: string) => string, has: (name: string) => boolean) => Spoken

const WORDS: Readonly<Record<StatementName, Say>> = {
  electrician: () => ({
    what: 'Let a licensed electrician check it before the first switch-on.',
    so: 'Your local electrical code decides fuse, wire, switch and earth. What stands here is the principle, and no part number.',
  }),
  ac: () => ({
    what: 'Do not put AC on this motor.',
    so: 'Magnets make no torque of it: it hums, heats and can lose its magnets.',
  }),
  earth: () => ({
    what: 'Earth the motor frame, the machine and the controller case.',
    so: 'One green-and-yellow (or bare) conductor each, tight on bare metal. Never to a motor lead, never to DC minus.',
  }),
  earthOpen: (fact, has) => ({
    what: has('battery')
      ? 'Bond frame, machine and case before anything else.'
      : 'Connect the earth before anything else.',
    so: has('battery')
      ? `A battery floats: one worn brush lead goes unnoticed, and with a second fault, or a hand on the other pole, up to ${fact('volts')} stand on the frame. A conductor each, and never a motor lead.`
      : `As it is, one worn brush lead puts up to ${fact('volts')} on the frame you lean on, and no breaker opens. Frame, machine and case each get their own conductor.`,
  }),
  notIsolated: () => ({
    what: 'Treat every wire as mains, the thin ones too.',
    so: 'Behind a rectifier knob, choke, brushes, speed sensor and the leads of the cutoff are live, whatever the volts between them.',
  }),
  noEarthedMeter: () => ({
    what: 'Measure with a hand-held meter only.',
    so: 'An earthed instrument on a motor lead shorts the mains through its own lead.',
  }),
  residual: (_, has) => ({
    what: 'Keep the residual-current breaker, and do not count on it alone.',
    so: `Direct current can blind an ordinary one. ${has('wet') ? 'This machine gets wet: it wants' : 'Where it gets wet:'} an isolating transformer, or a type that senses direct current.`,
  }),
  insulation: (fact) => ({
    what: `Insulate motor leads and cutoff leads for ${fact('volts')} and for the heat.`,
    so: 'Sleeve them where they leave the motor; keep them off the belt and off the frame’s edges.',
  }),
  wireSize: () => ({
    what: 'Take the wire size from your code.',
    so: 'It goes by the breaker, the length and how the wire lies, and not by the motor alone.',
  }),
  rotation: () => ({
    what: 'Try the turning direction with the belt off.',
    so: 'Swapping the two motor leads turns it round; a fan made for one way then moves less air, and a screwed-on flywheel may come loose.',
  }),
  fuse: (fact) => ({
    what: `Fuse the supply side; a fuse on the motor side must be rated for DC at ${fact('volts')}.`,
    so: 'Direct current does not pass through zero: an AC fuse can go on arcing. No fuse protects a winding: it only ends a short.',
  }),
  batteryFuse: () => ({
    what: 'Put a fuse at the battery’s post, rated for its volts and for DC.',
    so: 'Within a hand’s width of it: a lead that chafes before the fuse burns until the battery is empty. Its breaking capacity must be over what the battery can short, thousands of amperes: an ordinary glass fuse bursts.',
  }),
  release: () => ({
    what: 'Switch it with start and stop buttons and a no-volt release.',
    so: 'After a power cut or an opening of the cutoff it stays off until you press start. Put stop where a knee or a hip finds it.',
  }),
  cutoffInCoil: () => ({
    what: 'Put the cutoff in the coil circuit of that release.',
    so: 'It then breaks the supply through the contactor. Keep within the rating printed on the cutoff; its leads insulated for full supply volts.',
  }),
  cutoffInMotorLead: (fact) => ({
    what: 'Take the cutoff out of the motor lead.',
    so: `A small contact breaking up to ${fact('amps')} of direct current at ${fact('volts')} welds shut, and then never opens again. It belongs in the release coil.`,
  }),
  cutoffLoose: () => ({
    what: 'Connect the two thin leads: nothing protects the winding now.',
    so: 'They belong in the coil circuit of the release.',
  }),
  enableAlone: () => ({
    what: 'An enable input alone is no protection.',
    so: 'A shorted power device ignores it. Let the release break the supply as well.',
  }),
  contacts: (fact, has) => ({
    what: `Switch direct current only with contacts rated for DC at ${fact('volts')}.`,
    so: `The AC rating printed on most switches means nothing there.${has('battery') ? '' : ' Better: switch the AC side.'}`,
  }),
  outlet: (fact) => ({
    what: `It takes about ${fact('amps')} from an outlet on a ${fact('breaker')} breaker.`,
    so: 'Running for hours, stay under four fifths of the breaker, with what else is plugged into that circuit.',
  }),
  discharge: (fact) => ({
    what: `Unplugged, wait ${fact('seconds')}, then measure under ${fact('safe')} before you touch.`,
    so: `At worst from ${fact('peak')} with a fifth more capacitance than printed. The resistor may have failed open: the meter decides, not the clock.`,
  }),
  dischargeUnknown: (fact) => ({
    what: `Treat the capacitors as charged; measure under ${fact('safe')} before touching.`,
    so: 'What they hold, and through what they drain, is not known here: no waiting time is safe to name.',
  }),
  pins: () => ({
    what: 'The plug’s pins must be dead one second after it is pulled.',
    so: 'If they can still shock, a resistor is missing or open: do not use it.',
  }),
  unplug: (_, has) => ({
    what: `${has('battery') ? 'Take the lead off the battery’s post' : 'Unplug'} before you clear a jam, change a belt or reach in.`,
    so: 'Knob at zero and stop pressed are no isolation.',
  }),
  charger: () => ({
    what: 'Unplug the charger before you work on it, and before you run it.',
    so: 'Through a charger the battery can be at mains. Take the lead off the battery’s post first.',
  }),
  frame: (fact) => ({
    what: `Keep hands off the frame: it gets to ${fact('frame')}.`,
    so: `Bare metal over ${fact('limit')} burns within ten seconds. Guard it, or put it out of reach.`,
  }),
  guards: () => ({
    what: 'Guard belt, both pulleys and the chuck before the first run.',
    so: 'Sleeves, gloves, hair and rings off.',
  }),
  thread: () => ({
    what: 'Look which way the flywheel’s thread turns.',
    so: 'Many are left-handed: braking or reversing unscrews them at full speed. Lock it, or do neither.',
  }),
  reverse: (fact, has) => ({
    what: has('endless')
      ? 'Reverse only at standstill: nothing here says when that is.'
      : `Reverse only at standstill: left alone it runs on for ${fact('stop')}${has('full') ? `, and for ${fact('full')} from the knob fully up` : ''}.`,
    so: 'This drive cannot brake. Reversed while turning, the current is limited by little but the winding.',
  }),
  knob: () => ({
    what: 'Turn the knob back to zero before you start again.',
    so: 'A controller without an interlock starts at the speed it was left at.',
  }),
  overspeed: (fact, has) => ({
    what: `With a lost speed signal, a shorted device or a thrown belt it runs up to ${fact('motor')} or more.`,
    so: `That is ${fact('spindle')} at the spindle and ${fact('rim')} at the machine pulley’s rim${has('flywheel') ? `, ${fact('flywheel')} at the flywheel’s` : ''}; ordinary cast rims are held to ${fact('limit')}.`,
  }),
  bridge: (fact, has) => ({
    what: `A bare bridge has no knob: with little to do it runs up to ${fact('motor')} or more.`,
    so: `That is ${fact('spindle')} at the spindle and ${fact('rim')} at the machine pulley’s rim${has('flywheel') ? `, ${fact('flywheel')} at the flywheel’s` : ''}; ordinary cast rims are held to ${fact('limit')}.`,
  }),
  flywheel: (fact) => ({
    what: `Slow the flywheel down: in the job as asked its rim moves at ${fact('rim')}.`,
    so: `Ordinary cast rims are held to ${fact('limit')}, and then burst.`,
  }),
  wheelMark: (fact, has) => ({
    what: has('printed')
      ? `Never turn the wheel over the ${fact('printed')} printed on it.`
      : `Fit only a wheel marked for ${fact('wild')} or more.`,
    so: `The job turns it at ${fact('asked')}, and run away it turns ${fact('wild')} or more. Ring-test it, guard it, stand aside as it starts.`,
  }),
  eyes: () => ({
    what: 'Goggles on before it turns.',
    so: 'Chips, grit and bits of wheel fly at eye height; glasses are no goggles.',
  }),
  chips: () => ({
    what: 'Keep chips, grit and juice out of an open frame.',
    so: 'The fan sucks them in; magnets hold what is iron. Screen the inlet and clean it: a blocked fan is no fan.',
  }),
  sparks: () => ({
    what: 'Brushes spark: no dust, fumes or gas around an open motor.',
    so: 'Fine wood dust, finish fumes and the gas of a charging battery burn or explode.',
  }),
  noLifting: () => ({
    what: 'Not for lifting, not for carrying people, not on slopes.',
    so: 'This drive can neither hold a load nor lower it.',
  }),
}

/** A statement in words. */
export function wiringWords({ name, facts }: Statement, units: Units): Spoken {
  const has = (key: string) =>
    key === 'endless' ? facts.stop?.value === Number.POSITIVE_INFINITY : key in facts
  const fact = (key: string): string => {
    const found = facts[key]
    if (!found) return ''
    return found.dimension === 'time' ? roundedUp(found.value) : told(found.value, found.dimension, units)
  }
  return WORDS[name](fact, has)
}

/** Headings of the groups. */
export const GROUP_WORDS: Readonly<Record<Statement['group'], string>> = {
  connect: 'Connect',
  protect: 'Protect',
  touch: 'Before a hand goes in',
  moving: 'What turns',
  use: 'In use',
}

/** Said over the checklist. */
export const wiringLead = ({ parts: { supply } }: Job): string =>
  `${supply.kind === 'battery' ? 'A battery melts a spanner, and over 60 V it can kill' : 'DC made from the mains kills'}. A licensed electrician and your local code decide; this is a list to go through with them.`
