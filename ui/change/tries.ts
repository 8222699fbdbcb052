// What is worth trying next: the cooling it has not, and a pulley that trades top speed for torque.
import type { Advice } from '../../sim/advise.ts'
import type { Job } from '../../sim/job.ts'
import { assemble } from '../../sim/plant.ts'
import { button } from '../../sim/say/advice/button.ts'
import { type Verdict, answerOf, inShort } from '../../sim/say/answer.ts'
import { limitsOf } from '../../sim/say/keyNumbers.ts'
import { ratioText } from '../../sim/say/number.ts'
import { inputAt } from '../../sim/scenario.ts'
import { asTight, settled } from '../../sim/studies/ratio/change.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Wish } from '../events.ts'
import { AS_FOUND, chosenOf, type Entry, entriesOf, type Result, type State } from '../store.ts'
import { asked } from './inputs.ts'

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
      changes: asTight(asked(state), job.parts.belt, {
        ...settled(job.parts.belt),
        'belt.machinePulley': text,
      }),
    },
  }
}

/** Step between pulleys one can buy, m; and the motor speed a job should leave in hand. */
const STEP = { us: 0.0254, metric: 0.01 } as const
const IN_HAND = 0.9
/** How much more reduction is tried at a time. */
const MORE = 1.4

/** What a pulley of about this diameter is sold as, m. */
const sold = (diameter: number, units: Units): number =>
  Math.floor(diameter / STEP[units.system] + 1e-9) * STEP[units.system]

/** The next larger machine pulley that still reaches every speed asked, m; null where there is none. */
export function largerPulley({ job }: Result, units: Units): number | null {
  const { parts, duty } = job
  const { ratio } = assemble(parts)
  const fastest = Math.max(...duty.phases.map((phase) => phase.speed))
  const top = (IN_HAND * parts.supply.volts) / parts.winding.constant
  const pulley = sold(parts.belt.machinePulley * Math.min(MORE, top / (fastest * ratio)), units)
  return pulley > parts.belt.machinePulley * 1.1 ? pulley : null
}

/** A pulley's diameter as one would write it. */
const pulleyText = (diameter: number, units: Units): string =>
  units.system === 'us' ? `${Math.round(diameter / 0.0254)} in` : `${Math.round(diameter * 1000)} mm`

/** The two pulleys changed over, where they gear up, have one step and no jackshaft between; null elsewhere. */
function swapTry(state: State, { job }: Result): Try | null {
  const { belt } = job.parts
  if (belt.motorPulley <= belt.machinePulley || belt.jackshaftLarge !== undefined || belt.pairs) return null
  const textAt = (path: string) => inputAt(asked(state), path)?.text ?? ''
  const swapped = { ...belt, motorPulley: belt.machinePulley, machinePulley: belt.motorPulley }
  return {
    label: 'Swap the pulleys',
    wish: {
      kind: 'try',
      name: named(state, 'Pulleys swapped', job, { belt: swapped }),
      changes: {
        ...settled(belt),
        'belt.motorPulley': textAt('belt.machinePulley'),
        'belt.machinePulley': textAt('belt.motorPulley'),
      },
    },
  }
}

/** More reduction; on a stall even at the price of top speed, which a standing spindle has no use for. */
function reductionTry(state: State, result: Result): Try | null {
  const { units } = state.settings
  const { machinePulley } = result.job.parts.belt
  const larger =
    largerPulley(result, units) ??
    (result.figures.stalled === null ? null : sold(machinePulley * MORE + STEP[units.system], units))
  return larger === null ? null : pulleyTry(state, result, pulleyText(larger, units), larger)
}

const verdictOf = ({ job, figures }: Result, units: Units): Verdict => answerOf(job, figures, units).verdict

/** How far a result stays from what would stop it, K. */
const margin = ({ figures }: Result): number =>
  Math.min(figures.cutoffMargin ?? Number.POSITIVE_INFINITY, figures.classMargin)

/** The other variant that does the job with nothing that limits it, and with the most in hand; null: none does. */
function bestOther(state: State, units: Units): Entry | null {
  const good = entriesOf(state).flatMap((entry) => {
    const result = state.results.get(entry.id)
    if (entry.id === state.chosen || !result || verdictOf(result, units) !== 'Yes') return []
    const limited = limitsOf(result.job, result.figures, units).some(({ limits }) => limits)
    return [{ entry, limited, margin: margin(result) }]
  })
  const [best] = good.sort((a, b) => Number(a.limited) - Number(b.limited) || b.margin - a.margin)
  return best?.entry ?? null
}

/** The first change of the advice that was run and leaves nothing amiss; null: there is none. */
function advisedTry(advice: Advice): Try | null {
  const cure = advice.findings
    .flatMap(({ cures }) => cures)
    .find(({ whole, outcome }) => whole && outcome?.faults.length === 0)
  if (!cure) return null
  const { label, name, changes } = button(cure)
  return { label, wish: { kind: 'try', name, changes } }
}

/**
 * The one thing to do next about a result; null where there is nothing to say. `advice` on the same job goes before
 * what is tried by rule of thumb: its changes were run.
 */
export function nextTry(state: State, result: Result, advice: Advice | null): Try | null {
  const { units } = state.settings
  const { figures, job } = result
  const look = (entry: { id: string; name: string }): Try => ({
    label: `Look at ${entry.id === AS_FOUND ? 'it as found' : `“${entry.name}”`}`,
    wish: { kind: 'choose', id: entry.id },
  })
  if (verdictOf(result, units) === 'Yes')
    return chosenOf(state).id === AS_FOUND ? null : look(entriesOf(state)[0])
  const best = bestOther(state, units)
  if (best) return look(best)
  const advised = advice && advisedTry(advice)
  if (advised) return advised
  // Air is no help to a motor that lacks torque: that takes reduction.
  const weak = figures.stalled !== null || (figures.speedMissed && verdictOf(result, units) === 'Barely')
  if (weak) return swapTry(state, result) ?? reductionTry(state, result)
  if (job.parts.heat.cooling === 'none') {
    const fan = coolingTries(state, result).find(({ label }) => label === OPEN['shaft fan'])
    if (fan) return { ...fan, label: 'Try it with the shaft fan' }
  }
  return reductionTry(state, result)
}
