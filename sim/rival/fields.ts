// What is asked of the old motor: its kind and plate, and the pulleys it drove the machine with.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { PlateFields } from '../parts/plate.ts'

const diameter = { dimension: 'length', low: '5 mm', high: '3 m', below: 'too small for a pulley' } as const

/** One step of the old pulleys: two diameters, or the spindle speed it gave. */
export const StepFields = v.object({
  motorPulley: v.optional(quantity({ label: 'Old motor pulley', ...diameter })),
  machinePulley: v.optional(quantity({ label: 'Old machine pulley', ...diameter })),
  spindle: v.optional(
    quantity({
      label: 'Spindle speed it gave',
      dimension: 'angular speed',
      low: '5 rpm',
      high: '30000 rpm',
      help: 'Instead of pulleys, where only this is known.',
    }),
  ),
})

/** Most steps: a pair of step pulleys with a back gear has eight. */
export const MOST_STEPS = 12

export const RivalFields = v.object({
  ...PlateFields.entries,
  kind: choiceOr('single-phase', {
    label: 'Kind of motor',
    options: {
      'single-phase': 'AC, single-phase',
      'three-phase': 'AC, three-phase',
      DC: 'Another DC motor with magnets',
    },
    help: 'Printed as PH or PHASE. A capacitor on its back: single-phase.',
  }),
  power: quantity({ label: 'Power on its plate', dimension: 'power', low: '20 W', high: '15 kW' }),
  speed: quantity({
    label: 'Speed on its plate',
    dimension: 'angular speed',
    low: '300 rpm',
    high: '12000 rpm',
    help: 'At full load, as printed: 1725, not 1800.',
  }),
  mains: choiceOr('by its speed', {
    label: 'Mains',
    options: { 'by its speed': 'As its speed tells', '60 Hz': '60 Hz', '50 Hz': '50 Hz' },
  }),
  serviceFactor: v.optional(
    quantity({
      label: 'Service factor',
      dimension: 'number',
      low: '1',
      high: '2',
      help: 'Printed as SF. Left open: as open general-purpose motors have it.',
    }),
  ),
  lockedTorque: v.optional(
    quantity({
      label: 'Locked-rotor torque over full load',
      dimension: 'share',
      low: '20 %',
      high: '500 %',
      help: 'Left open: the least that the standard allows.',
    }),
  ),
  breakdownTorque: v.optional(
    quantity({
      label: 'Breakdown torque over full load',
      dimension: 'share',
      low: '110 %',
      high: '350 %',
      help: 'Left open: the least that the standard allows.',
    }),
  ),
  beltEfficiency: quantityOr('95 %', {
    label: 'Efficiency of the old belt',
    dimension: 'share',
    low: '30 %',
    high: '100 %',
    above: 'more than anything gives back',
  }),
  steps: v.optional(
    v.pipe(
      v.array(StepFields, 'Old pulleys must be a list of steps.'),
      v.maxLength(MOST_STEPS, `More than ${MOST_STEPS} steps.`),
    ),
    [],
  ),
})

/** The old motor as written, and as read. */
export type GivenRival = v.InferInput<typeof RivalFields>
export type ReadRival = v.InferOutput<typeof RivalFields>
