// What can hurt: said with every answer, calmly, and for this supply and this cutoff.
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import { NBSP } from './number.ts'

/** What is dangerous, and what to do about it. */
export interface Caution {
  readonly what: string
  readonly so: string
}

const MAINS: Caution = {
  what: 'DC made from the mains kills.',
  so: 'Knob, choke, brushes and the leads of the cutoff are live. Unplug it before you open the box.',
}
const BATTERY: Caution = {
  what: 'A battery melts a spanner laid across it.',
  so: 'Fuse it at its terminal, and take the lead off before you work on the drive.',
}
const CHARGED: Caution = {
  what: 'Capacitors stay charged.',
  so: `Unplugged, measure under 60${NBSP}V before you touch anything, however long it has been off.`,
}
const MOVING: Caution = {
  what: 'Belts, pulleys and chucks take fingers.',
  so: 'Guard them before the first run. No gloves, no loose sleeves.',
}
const RECLOSES: Caution = {
  what: 'A cutoff that recloses restarts the machine with your hand in it.',
  so: 'Let it drop a release that stays off until you press start; till then unplug before you reach in.',
}
const ESTIMATE: Caution = {
  what: 'This is an estimate, not a rating.',
  so: 'Your local electrical code and a licensed electrician decide.',
}

/** The cautions that go with a job. */
export const cautions = ({ parts: { supply, cutoff } }: Job): readonly Caution[] => [
  supply.kind === 'battery' ? BATTERY : MAINS,
  CHARGED,
  MOVING,
  ...(cutoff.fitted === 'self-reset' ? [RECLOSES] : []),
  ESTIMATE,
]

/** Said beside an answer in which the machine restarts by itself; null where it does not. */
export const restartWords = (figures: Figures): string | null =>
  figures.firstOpenFor === null ? null : 'The machine restarts by itself: unplug it before you reach in.'
