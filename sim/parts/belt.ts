// The belt drive, without slip: ratio from the pulleys, one stage or two, and what is lost on the way.
import * as v from 'valibot'
import { quantity, quantityOr } from '../field.ts'

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
  efficiency: quantityOr('95 %', {
    label: 'Belt efficiency',
    dimension: 'share',
    low: '30 %',
    high: '100 %',
    above: 'more than anything gives back',
    help: '95 to 98 % for a good V-belt, 93 % when slack; each stage counts.',
  }),
})

export type Belt = v.InferOutput<typeof BeltFields>

/** Motor turns for one turn of the spindle; two stages multiply. */
export function ratio(belt: Belt): number {
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall } = belt
  if (jackshaftLarge === undefined || jackshaftSmall === undefined) return machinePulley / motorPulley
  return (jackshaftLarge / motorPulley) * (machinePulley / jackshaftSmall)
}
