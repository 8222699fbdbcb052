// The belt drive: ratio from the pulleys, one stage or two, what is lost on the way, and what it carries before it slips.
import * as v from 'valibot'
import { capstan } from '../belting/grip.ts'
import { centresFor, leastCentres, smallWrap } from '../belting/geometry.ts'
import { type SlipStage, slipStage } from '../belting/slip.ts'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { BELT_SECTIONS, type BeltSection } from '../handbook/beltSections.ts'

const diameter = { dimension: 'length', low: '5 mm', high: '3 m', below: 'too small for a pulley' } as const

const length = { dimension: 'length', low: '100 mm', high: '25 m' } as const

/** A further pair of a step pulley's diameters; the first pair are the pulleys themselves. */
const StepFields = v.object({
  driving: quantity({
    label: 'Driving pulley',
    ...diameter,
    help: 'On the motor; with a jackshaft, on that.',
  }),
  driven: quantity({ label: 'Driven pulley', ...diameter, help: 'On the machine.' }),
})

/** Most steps a pulley has, with the first. */
export const MOST_STEPS = 8

export const BeltFields = v.object({
  motorPulley: quantity({ label: 'Motor pulley', ...diameter }),
  machinePulley: quantity({ label: 'Machine pulley', ...diameter }),
  jackshaftLarge: v.optional(
    quantity({
      label: 'Jackshaft, pulley driven by the motor',
      ...diameter,
      help: 'Only with a second stage: the motor drives this one.',
    }),
  ),
  jackshaftSmall: v.optional(
    quantity({
      label: 'Jackshaft, pulley driving the machine',
      ...diameter,
      help: 'Only with a second stage: this one drives the machine.',
    }),
  ),
  centreDistance: v.optional(
    quantity({
      label: 'Between centres',
      dimension: 'length',
      low: '20 mm',
      high: '10 m',
      help: 'Shaft to shaft. Left open: as the belt’s length has it.',
    }),
  ),
  length: v.optional(
    quantity({
      label: 'Belt length',
      ...length,
      help: 'Along the line where it runs. With centres measured too, the shafts stay where they are.',
    }),
  ),
  jackshaftCentres: v.optional(
    quantity({
      label: 'Motor to jackshaft',
      dimension: 'length',
      low: '20 mm',
      high: '10 m',
      help: 'Shaft to shaft, with a second stage.',
    }),
  ),
  jackshaftLength: v.optional(
    quantity({
      label: 'Length of the belt to the jackshaft',
      ...length,
      help: 'Only with a second stage.',
    }),
  ),
  steps: v.optional(
    v.pipe(
      v.array(StepFields, 'Further steps must be a list of pairs.'),
      v.maxLength(MOST_STEPS - 1, `More than ${MOST_STEPS - 1} further steps.`),
    ),
  ),
  step: v.optional(
    quantity({
      label: 'Step in use',
      dimension: 'number',
      low: '1',
      high: String(MOST_STEPS),
      help: '1: the pulleys themselves; 2 and on: the further pairs.',
    }),
  ),
  section: choiceOr('not said', {
    label: 'Belt',
    options: {
      'not said': 'Not said: taken not to slip',
      ...(Object.fromEntries(
        Object.entries(BELT_SECTIONS).map(([name, { label }]) => [name, label]),
      ) as Record<keyof typeof BELT_SECTIONS, string>),
    },
    help: 'Printed on its back, or measure its width.',
  }),
  ribs: v.optional(
    quantity({
      label: 'Ribs, or belts side by side',
      dimension: 'number',
      low: '1',
      high: '40',
      help: 'Left open: 6 ribs, or one belt.',
    }),
  ),
  carries: v.optional(
    quantity({
      label: 'Slips at',
      dimension: 'torque',
      low: '0.01 N·m',
      high: '10000 N·m',
      help: 'Torque at the spindle. Left open: half as much again as the motor’s plate torque.',
    }),
  ),
  efficiency: quantityOr('95 %', {
    label: 'Belt efficiency',
    dimension: 'share',
    low: '30 %',
    high: '100 %',
    above: 'more than anything gives back',
    help: '95 to 98 % for a good V-belt, 93 % when slack; each stage counts.',
  }),
})

/** The belt as written, in SI. */
export type ReadBelt = v.InferOutput<typeof BeltFields>
/** Two diameters of a step, m. */
export interface Step {
  readonly driving: number
  readonly driven: number
}
/** A belt whose section is not said is taken not to slip. Its pulleys are those of the step in use. */
export type Belt = Omit<ReadBelt, 'section' | 'steps'> &
  Partial<Pick<ReadBelt, 'section'>> & {
    /** Every step of its pulleys, the first too, where there are several. */
    readonly pairs?: readonly Step[]
    /** Motor speed at which it carries what it carries, rad/s; left out: standing still. */
    readonly carriesAt?: number
  }

/** True with a second stage. */
export const hasJackshaft = (belt: Pick<Belt, 'jackshaftLarge' | 'jackshaftSmall'>): boolean =>
  belt.jackshaftLarge !== undefined && belt.jackshaftSmall !== undefined

/** A belt with another pair of pulleys in its last stage, where the steps are. */
export const onStepOf = (belt: Belt, { driving, driven }: Step): Belt => ({
  ...belt,
  [hasJackshaft(belt) ? 'jackshaftSmall' : 'motorPulley']: driving,
  machinePulley: driven,
})

/** The belt as written, lying on the step in use. */
export function onStep({ steps, ...belt }: ReadBelt): Belt {
  if (steps === undefined || steps.length === 0) return belt
  const { motorPulley, jackshaftSmall, machinePulley } = belt
  const driving = hasJackshaft(belt) ? (jackshaftSmall as number) : motorPulley
  const pairs = [{ driving, driven: machinePulley }, ...steps]
  return onStepOf({ ...belt, pairs }, pairs[(belt.step ?? 1) - 1] ?? pairs[0])
}

/** The belt of a group of inputs that has all it needs; null elsewhere. */
export function beltOf(given: unknown): Belt | null {
  const parsed = v.safeParse(BeltFields, given)
  return parsed.success ? onStep(parsed.output) : null
}

/** Motor turns for one turn of the spindle; two stages multiply. */
export function ratio(belt: Belt): number {
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall } = belt
  if (jackshaftLarge === undefined || jackshaftSmall === undefined) return machinePulley / motorPulley
  return (jackshaftLarge / motorPulley) * (machinePulley / jackshaftSmall)
}

/** A stage's pulleys and centres, m, and what comes after it: from motor to spindle. */
export interface Stage {
  readonly driving: number
  readonly driven: number
  readonly centres: number
  /** Shaft turns of the driving pulley for one motor turn; spindle torque for one of the driven shaft. */
  readonly turns: number
  readonly torque: number
}

/** Centres nobody measured: the pulleys' diameters together (common practice). */
const usualCentres = (one: number, other: number): number => one + other

/** Centres, m: as measured, else as the belt's length has it, else usual; never so near that the pulleys touch. */
function centresOf(one: number, other: number, measured?: number, length?: number): number {
  const byLength = length === undefined ? null : centresFor(length, one, other)
  return Math.max(measured ?? byLength ?? usualCentres(one, other), leastCentres(one, other))
}

/** The stages of a drive, from motor to spindle. */
export function stagesOf(belt: Belt): readonly Stage[] {
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall } = belt
  const stage = (driving: number, driven: number, centres: number, turns: number, torque: number): Stage => ({
    driving,
    driven,
    turns,
    torque,
    centres,
  })
  const last = (driving: number) => centresOf(driving, machinePulley, belt.centreDistance, belt.length)
  if (jackshaftLarge === undefined || jackshaftSmall === undefined)
    return [stage(motorPulley, machinePulley, last(motorPulley), 1, 1)]
  const first = centresOf(motorPulley, jackshaftLarge, belt.jackshaftCentres, belt.jackshaftLength)
  return [
    stage(motorPulley, jackshaftLarge, first, 1, machinePulley / jackshaftSmall),
    stage(jackshaftSmall, machinePulley, last(jackshaftSmall), motorPulley / jackshaftLarge, 1),
  ]
}

/** The section of a belt; null where nobody said which it is. */
export const sectionOf = ({ section }: Pick<Belt, 'section'>): BeltSection | null =>
  section === undefined || section === 'not said' ? null : BELT_SECTIONS[section]

/** The stages that may slip, or null: no section said, teeth, or no torque known that they carry. */
export function slipStages(belt: Belt): readonly SlipStage[] | null {
  const section = sectionOf(belt)
  if (section === null || section.toothed || belt.carries === undefined) return null
  const { groove, mass, friction, ribs } = section
  const { carries } = belt
  return stagesOf(belt).map(({ driving, driven, centres, turns, torque }) =>
    slipStage(
      capstan(friction, smallWrap(driving, driven, centres), groove),
      mass * (belt.ribs ?? ribs),
      turns * (driving / 2),
      torque * (driven / 2),
      carries,
      belt.carriesAt,
    ),
  )
}
