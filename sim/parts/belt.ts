// The belt drive: ratio from the pulleys, one stage or two, what is lost on the way, and what it carries before it slips.
import * as v from 'valibot'
import { capstan } from '../belting/grip.ts'
import { smallWrap } from '../belting/geometry.ts'
import { type SlipStage, slipStage } from '../belting/slip.ts'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { BELT_SECTIONS } from '../handbook/beltSections.ts'

const diameter = { dimension: 'length', low: '5 mm', high: '3 m', below: 'too small for a pulley' } as const

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
      help: 'Shaft to shaft.',
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

type Read = v.InferOutput<typeof BeltFields>
/** A belt whose section is not said is taken not to slip. */
export type Belt = Omit<Read, 'section'> & Partial<Pick<Read, 'section'>>

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

/** The stages of a drive, from motor to spindle. */
export function stagesOf(belt: Belt): readonly Stage[] {
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall, centreDistance, jackshaftCentres } =
    belt
  const stage = (
    driving: number,
    driven: number,
    centres: number | undefined,
    turns: number,
    torque: number,
  ): Stage => ({
    driving,
    driven,
    turns,
    torque,
    centres: Math.max(centres ?? usualCentres(driving, driven), (driving + driven) / 2),
  })
  if (jackshaftLarge === undefined || jackshaftSmall === undefined)
    return [stage(motorPulley, machinePulley, centreDistance, 1, 1)]
  return [
    stage(motorPulley, jackshaftLarge, jackshaftCentres, 1, machinePulley / jackshaftSmall),
    stage(jackshaftSmall, machinePulley, centreDistance, motorPulley / jackshaftLarge, 1),
  ]
}

/** The stages that may slip, or null: no section said, teeth, or no torque known that they carry. */
export function slipStages(belt: Belt): readonly SlipStage[] | null {
  if (belt.section === undefined || belt.section === 'not said' || belt.carries === undefined) return null
  const { groove, mass, friction, ribs, toothed } = BELT_SECTIONS[belt.section]
  if (toothed) return null
  const { carries } = belt
  return stagesOf(belt).map(({ driving, driven, centres, turns, torque }) =>
    slipStage(
      capstan(friction, smallWrap(driving, driven, centres), groove),
      mass * (belt.ribs ?? ribs),
      turns * (driving / 2),
      torque * (driven / 2),
      carries,
    ),
  )
}
