// How far the inputs of a job may be off: as their own bounds say, as a meter reads them, or as is usual where nobody did.
import { FORM_FACTORS } from '../../handbook/formFactor.ts'
import { LEAST_HYSTERESIS, PLACES, wired } from '../../parts/cutoff.ts'
import type { PhaseCut } from '../../phaseCuts.ts'
import { type QuantityField, boundsOf, readQuantity } from '../../reading.ts'
import { type Input, inputsOf, givenAt, type ReadScenario, type Scenario } from '../../scenario.ts'
import { type Band, type Doubt, placeIn, withInput } from './doubt.ts'

interface Rule {
  readonly path: RegExp
  /** Low and high 8 in 10 about a value, where nobody measured it; null: no doubt. */
  readonly usual: (value: number, fields: ReadScenario, path: string) => readonly [number, number] | null
  /** The same where the source says "measured"; null: in doubt only while the file leaves it to its usual value. */
  readonly measured: ((value: number) => readonly [number, number]) | null
}

const times = (share: number) => (value: number) => [value * (1 - share), value * (1 + share)] as const
const about = (by: number) => (value: number) => [value - by, value + by] as const
/** What is lost, not what is kept, may be half as much again, or two thirds. */
const loss = (factor: number) => (kept: number) => [1 - (1 - kept) * factor, 1 - (1 - kept) / factor] as const
const between = (low: number, high: number) => () => [low, high] as const
/** What follows air, where the fan or the rotor moves it. */
const stirred = ({ heat }: ReadScenario) => heat.cooling !== 'blower' && heat.cooling !== 'enclosed'

/**
 * Rules by place. Cutoffs open within ±5 K of what is printed and reclose within ±15 K (UL 1004-3); form factors are
 * those of the handbook; all else is common practice, no source.
 */
const RULES: readonly Rule[] = [
  { path: /^duty\.phases\.\d+\.(torque|power|fanTorque)$/, usual: times(0.15), measured: times(0.05) },
  { path: /^cutoff\.opensAt$/, usual: about(5), measured: about(2) },
  { path: /^heat\.air$/, usual: about(5), measured: about(1) },
  { path: /^duty\.phases\.\d+\.surge\.torque$/, usual: times(0.3), measured: times(0.1) },
  {
    path: /^heat\.airflow$/,
    usual: (v, { heat }) => (heat.cooling === 'blower' ? times(0.3)(v) : null),
    measured: null,
  },
  {
    path: /^heat\.stir$/,
    usual: (_, { heat }) => (heat.cooling === 'none' ? [0.1, 0.3] : null),
    measured: null,
  },
  { path: /^belt\.efficiency$/, usual: loss(1.5), measured: loss(1.1) },
  { path: /^machine\.drag$/, usual: times(0.3), measured: times(0.1) },
  {
    path: /^heat\.fanExponent$/,
    usual: (_, fields) => (stirred(fields) ? [0.6, 0.9] : null),
    measured: null,
  },
  {
    path: /^heat\.(frictionShare|brushShare)$/,
    usual: between(0.3, 0.7),
    measured: null,
  },
  { path: /^cutoff\.reclosesAt$/, usual: about(15), measured: about(3) },
]

const MEASURED = /^measured\b/i

/** The band of an input that stands in the job; null where there is no doubt about it. */
function bandOf(
  { path, source, usual, ...input }: Input,
  field: QuantityField,
  value: number,
  fields: ReadScenario,
): Band | null {
  const { low: least, high: most } = boundsOf(field)
  const whole = (low: number, high: number): Band | null =>
    high > low ? { value, low: Math.max(least, low), high: Math.min(most, high), least, most } : null
  if (input.low !== null || input.high !== null) {
    const end = (text: string | null) => {
      const reading = text === null ? null : readQuantity(field, text)
      return reading?.ok ? reading.value : value
    }
    return whole(end(input.low), end(input.high))
  }
  const rule = RULES.find((each) => each.path.test(path))
  if (!rule || value === 0 || (rule.measured === null && !usual)) return null
  const ends =
    rule.measured && MEASURED.test(source ?? '') ? rule.measured(value) : rule.usual(value, fields, path)
  return ends && whole(...ends)
}

const order = (path: string): number => {
  const at = RULES.findIndex((each) => each.path.test(path))
  return at < 0 ? RULES.length : at
}

/** Doubts of the inputs that stand in a job, those that matter most first. */
export function inputDoubts(scenario: Scenario, fields: ReadScenario): Doubt[] {
  const open =
    wired(fields.cutoff).fitted === 'none' ? /^(variants|bench|plate|cutoff)\b/ : /^(variants|bench|plate)\b/
  return inputsOf(scenario)
    .filter(({ path }) => !open.test(path))
    .sort((a, b) => order(a.path) - order(b.path))
    .flatMap((input): Doubt[] => {
      const { path, field } = input
      const value = givenAt(fields, path)
      const band =
        field.kind === 'quantity' && typeof value === 'number' ? bandOf(input, field, value, fields) : null
      if (!band) return []
      const at: Doubt['at'] = (draft, where) => {
        const next = withInput(draft, path, () => placeIn(band, where))
        if (!path.startsWith('cutoff.')) return next
        const { opensAt } = next.fields.cutoff
        return withInput(next, 'cutoff.reclosesAt', (old) => Math.min(old, opensAt - LEAST_HYSTERESIS))
      }
      return [{ name: path, at }]
    })
}

/** Doubts of what the job takes from a table because nobody said: the switch's place, the supply's form factor. */
export function tableDoubts(fields: ReadScenario): Doubt[] {
  const { cutoff, supply } = fields
  const found: Doubt[] = []
  const put = (path: string, band: Band) =>
    found.push({ name: path, at: (draft, where) => withInput(draft, path, () => placeIn(band, where)) })
  if (wired(cutoff).fitted !== 'none') {
    const { windingShare, lag } = PLACES[cutoff.place]
    // A hand's breadth of air or a bead of glue makes half the difference (common practice, no source).
    if (cutoff.windingShare === undefined)
      put('cutoff.windingShare', {
        value: windingShare,
        low: windingShare / 1.5,
        high: windingShare * 1.5,
        least: 0,
        most: 1,
      })
    if (cutoff.lag === undefined)
      put('cutoff.lag', { value: lag, low: lag / 1.6, high: lag * 1.6, least: 0.5, most: 1000 })
  }
  const { value, low, high } = FORM_FACTORS[supply.kind]
  if (supply.formFactor === undefined && high > low)
    put('supply.formFactor', { value, low, high, least: 1, most: 2.5 })
  return found
}

/** The doubt of each cut that a step names: the spread of its handbook row. */
export const cutDoubts = (cuts: readonly PhaseCut[]): Doubt[] =>
  cuts.flatMap(({ phase, low, torque, high }): Doubt[] => {
    if (!(high > low)) return []
    const band = { value: 1, low: low / torque, high: high / torque, least: 0.05, most: 20 }
    const at: Doubt['at'] = (draft, where) => {
      const factor = placeIn(band, where)
      const cuts = draft.cuts.map((cut) =>
        cut.phase === phase ? { ...cut, torque: cut.torque * factor, power: cut.power * factor } : cut,
      )
      return { ...draft, cuts }
    }
    return [{ name: `duty.phases.${phase}.cut`, at }]
  })
