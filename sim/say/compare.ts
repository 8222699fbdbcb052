// The words of a comparison with the old motor: one sentence, where this one is stronger or weaker, and the plates.
import type { Job } from '../job.ts'
import type { Heat } from '../parts/heat.ts'
import { toUnit } from '../quantity.ts'
import type { Claim, Comparison, Met } from '../rival/compare.ts'
import type { Rival } from '../rival/rival.ts'
import { brief, duration, grouped, NBSP, percent, platePower, ratioText, show, told } from './number.ts'
import type { Units } from './units.ts'

/** With which air, as the sentence has it. */
export const WITH: Readonly<Record<Heat['cooling'], string>> = {
  'shaft fan': 'with the fan',
  blower: 'with a blower',
  none: 'without',
  enclosed: 'without',
  'enclosed, outer fan': 'with an outer fan',
}
const STANDS: Readonly<Record<Heat['cooling'], string>> = {
  'shaft fan': 'with its fan',
  blower: 'with a blower',
  none: 'without a fan',
  enclosed: 'closed, without a fan',
  'enclosed, outer fan': 'with an outer fan',
}

/** Plate speed as printed, not rounded as measured speeds are. */
const printedSpeed = (speed: number): string => `${grouped(Math.round(toUnit(speed, 'rpm')), 0)}${NBSP}rpm`

/** "the old ¾ hp motor". */
const oldName = (rival: Rival, units: Units): string => `the old ${platePower(rival.power, units)} motor`

/** Of the old motor's speeds the one that the job's heaviest step is nearest to; else the first. */
export function nearestMet({ met, asked }: Comparison): Met {
  if (!asked) return met[0]
  const off = ({ speed }: Met) => Math.abs(Math.log(speed / asked.speed))
  return met.reduce((a, b) => (off(b) < off(a) ? b : a))
}

/** What this motor holds all day, with each cooling but the blower, which few have. */
function holds({ allDay }: Met, units: Units): string {
  const told = allDay.filter(({ cooling }) => cooling !== 'blower')
  return told
    .map(({ cooling, torque }) => `${show(torque, 'torque', units).number} ${WITH[cooling]}`)
    .join(' and ')
}

const unreached = (speed: number, top: number, units: Units): string =>
  `This one does not reach ${told(speed, 'angular speed', units)} through its belt: its top is ${told(top, 'angular speed', units)}.`

/** The answer in a sentence: "At 350 rpm the old ¾ hp motor held 10.7 lbf·ft all day. This one holds 5.7 with the fan and 1.3 without." */
export function compareSentence(comparison: Comparison, units: Units): string {
  const met = nearestMet(comparison)
  const at = told(met.speed, 'angular speed', units)
  const old = `At ${at} ${oldName(comparison.rival, units)} held ${told(met.old.allDay, 'torque', units)} all day.`
  if (met.speed > comparison.top) return `${old} ${unreached(met.speed, comparison.top, units)}`
  return `${old} This one holds ${holds(met, units)}.`
}

/** One step of several: "Step 2, 863 rpm: the old one held 4.3 lbf·ft all day; this one holds 2.1 with the fan and 0.6 without." */
export function stepWords({ met, top }: Comparison, index: number, units: Units): string {
  const { speed, old, ...step } = met[index]
  const before = `Step ${index + 1}, ${told(speed, 'angular speed', units)}: the old one held ${told(old.allDay, 'torque', units)} all day;`
  if (speed > top) return `${before} this one does not turn so fast.`
  return `${before} this one holds ${holds({ speed, old, ...step }, units)}.`
}

const CLAIMS: Readonly<Record<Claim, string>> = {
  allDay: 'all day',
  minutes: 'for minutes',
  seconds: 'for seconds',
  start: 'from standstill',
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`

/** How far one lies above or under the other. */
function byWords(share: number): string {
  if (!Number.isFinite(share)) return 'where the old one had nothing'
  if (share >= 2) return `${brief(Number(share.toPrecision(2)))} times as much`
  return share === 0 ? 'it has nothing' : `by ${percent(Math.abs(share - 1))}`
}

/** Where this motor, as it stands, is stronger, where weaker, and by how much. */
export function verdictWords({ against, speed }: Met, job: Job, top: number, units: Units): string {
  if (speed > top) return unreached(speed, top, units)
  const claims = Object.keys(CLAIMS) as Claim[]
  const parts = (['stronger', 'weaker', 'even'] as const).flatMap((is) => {
    const those = claims.filter((claim) => against[claim].is === is)
    if (those.length === 0) return []
    if (is === 'even') return `as strong ${listed(those.map((claim) => CLAIMS[claim]))}`
    return `${is} ${listed(those.map((claim) => `${CLAIMS[claim]} (${byWords(against[claim].share)})`))}`
  })
  const at = told(speed, 'angular speed', units)
  return `At ${at} this motor, ${STANDS[job.parts.heat.cooling]}, is ${parts.join('; ')}.`
}

/** What the duty asks beside what it may ask. */
export function dutyWords({ asked }: Comparison, units: Units): string {
  if (!asked) return ''
  const often = asked.seconds < asked.cycle ? `, ${duration(asked.seconds)} in ${duration(asked.cycle)}` : ''
  const name = asked.name === '' ? 'The cut' : `${asked.name[0].toUpperCase()}${asked.name.slice(1)}`
  return `${name} averages ${told(asked.torque, 'torque', units)}${often}.`
}

/** The two plates, at the shaft and geared to the same speed. */
export function platesWords({ plates, rival }: Comparison, { plate }: Job, units: Units): string {
  if (!plates || plate.power === undefined || plate.speed === undefined) return ''
  const torque = (value: number) => told(value, 'torque', units)
  const one = `${platePower(plate.power, units)} at ${printedSpeed(plate.speed)} is ${torque(plates.torque)} at its shaft`
  const other = `the old one’s ${platePower(rival.power, units)} at ${printedSpeed(rival.speed)} is ${torque(plates.otherTorque)}`
  if (plates.ratio < 1.02) return `By the plates this motor’s ${one}, ${other}.`
  const slow = printedSpeed(Math.min(plate.speed, rival.speed))
  const who = plates.faster === 'one' ? 'this one' : 'the old one'
  return `By the plates this motor’s ${one}, ${other}. Geared ${ratioText(plates.ratio)} to the same ${slow}, ${who} comes to ${torque(plates.geared)}.`
}
