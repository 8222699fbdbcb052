// What is worth trying next: the cooling it has not, and a pulley that trades top speed for torque.
import type { Job } from '../../sim/job.ts'
import { assemble } from '../../sim/plant.ts'
import { answerOf, inShort } from '../../sim/say/answer.ts'
import { ratioText } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Wish } from '../events.ts'
import { AS_FOUND, chosenOf, entriesOf, type Result, type State } from '../store.ts'

export interface Try {
  /** On the button. */
  readonly label: string
  readonly wish: Wish
}

type Cooling = Job['parts']['heat']['cooling']

/** Coolings one can change to without another motor, and how one says so. */
const OPEN = {
  'shaft fan': 'With the shaft fan',
  none: 'Without a fan',
  blower: 'With a blower',
} as const
const SHUT = { enclosed: 'Without the outer fan', 'enclosed, outer fan': 'With an outer fan' } as const

const others = (cooling: Cooling): readonly (readonly [string, string])[] =>
  Object.entries(cooling in SHUT ? SHUT : OPEN).filter(([other]) => other !== cooling)

/** "Ratio 5.6 : 1" on its own; with the cooling where the chosen variant is more than the job as found. */
const named = (state: State, plain: string, job: Job, changed: Partial<Job['parts']>): string => {
  if (state.chosen === AS_FOUND) return plain
  const words = inShort({ ...job, parts: { ...job.parts, ...changed } })
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** The chosen variant with another cooling. */
export function coolingTries(state: State, { job }: Result): readonly Try[] {
  return others(job.parts.heat.cooling).map(([cooling, words]) => ({
    label: words,
    wish: {
      kind: 'try',
      name: named(state, words, job, { heat: { ...job.parts.heat, cooling: cooling as Cooling } }),
      changes: { 'heat.cooling': cooling },
    },
  }))
}

/** The chosen variant with another machine pulley: its text, and its length in m. */
export function pulleyTry(state: State, { job }: Result, text: string, diameter: number): Try {
  const belt = { ...job.parts.belt, machinePulley: diameter }
  const ratio = ratioText(assemble({ ...job.parts, belt }).ratio)
  return {
    label: `Try ratio ${ratio}`,
    wish: {
      kind: 'try',
      name: named(state, `Ratio ${ratio}`, job, { belt }),
      changes: { 'belt.machinePulley': text },
    },
  }
}

/** Step between pulleys one can buy, m; and the motor speed a job should leave in hand. */
const STEP = { us: 0.0254, metric: 0.01 } as const
const IN_HAND = 0.9
/** How much more reduction is tried at a time. */
const MORE = 1.4

/** The next larger machine pulley that still reaches every speed asked, m; null where there is none. */
export function largerPulley({ job }: Result, units: Units): number | null {
  const { parts, duty } = job
  const { ratio } = assemble(parts)
  const fastest = Math.max(...duty.phases.map((phase) => phase.speed))
  const top = (IN_HAND * parts.supply.volts) / parts.winding.constant
  const step = STEP[units.system]
  const wanted = parts.belt.machinePulley * Math.min(MORE, top / (fastest * ratio))
  const pulley = Math.floor(wanted / step + 1e-9) * step
  return pulley > parts.belt.machinePulley * 1.1 ? pulley : null
}

/** A pulley's diameter as one would write it. */
export const pulleyText = (diameter: number, units: Units): string =>
  units.system === 'us' ? `${Math.round(diameter / 0.0254)} in` : `${Math.round(diameter * 1000)} mm`

const isYes = (result: Result | undefined, units: Units): boolean =>
  result !== undefined && answerOf(result.job, result.figures, units).verdict === 'Yes'

/** The one thing to do next about a result; null where there is nothing to say. */
export function nextTry(state: State, result: Result): Try | null {
  const { units } = state.settings
  const chosen = chosenOf(state)
  const look = (entry: { id: string; name: string }): Try => ({
    label: `Look at ${entry.id === AS_FOUND ? 'it as found' : `“${entry.name}”`}`,
    wish: { kind: 'choose', id: entry.id },
  })
  if (isYes(result, units)) return chosen.id === AS_FOUND ? null : look(entriesOf(state)[0])
  const good = entriesOf(state).find(
    (entry) => entry.id !== chosen.id && isYes(state.results.get(entry.id), units),
  )
  if (good) return look(good)
  if (result.job.parts.heat.cooling === 'none') {
    const fan = coolingTries(state, result).find(({ label }) => label === OPEN['shaft fan'])
    if (fan) return { ...fan, label: 'Try it with the shaft fan' }
  }
  const larger = largerPulley(result, units)
  return larger === null ? null : pulleyTry(state, result, pulleyText(larger, units), larger)
}
