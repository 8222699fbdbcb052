// The machine at its spindle: what is heavy, what drags, and the cut.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'

export const MachineFields = v.object({
  kind: choiceOr('other', {
    label: 'Kind of machine',
    options: {
      mill: 'Mill or crusher',
      lathe: 'Lathe',
      saw: 'Saw',
      grinder: 'Grinder',
      wheel: 'Potter’s wheel',
      drill: 'Drill press',
      other: 'Other machine',
    },
  }),
  inertia: quantityOr('0.01 kg·m²', {
    label: 'Inertia at the spindle',
    dimension: 'inertia',
    low: '0 kg·m²',
    high: '10000 kg·m²',
    below: 'less than nothing',
    help: 'Everything that turns with the spindle: half of m r² for a disc.',
  }),
  drag: quantityOr('0.5 N·m', {
    label: 'Drag when idling',
    dimension: 'torque',
    low: '0 N·m',
    high: '5000 N·m',
    below: 'less than nothing',
    help: 'Bearings and belts, at the spindle, with nothing to cut.',
  }),
  windage: quantityOr('0 N·m·s/rad', {
    label: 'Drag that grows with speed',
    dimension: 'viscous friction',
    low: '0 N·m·s/rad',
    high: '1000 N·m·s/rad',
    below: 'less than nothing',
  }),
  wheelSpeed: v.optional(
    quantity({
      label: 'Speed printed on the wheel',
      dimension: 'angular speed',
      low: '100 rpm',
      high: '100000 rpm',
      help: 'Of a grinder: the most its wheel may ever turn.',
    }),
  ),
  acceptedSag: quantityOr('20 %', {
    label: 'Sag you accept in the cut',
    dimension: 'share',
    low: '1 %',
    high: '90 %',
  }),
})

export type Machine = v.InferOutput<typeof MachineFields>

/** What the work asks of the spindle: a torque (N·m), a power (W, up to a torque at `fullAbove` rad/s), or a fan law (N·m·s²). */
export type Cut =
  | { readonly kind: 'torque'; readonly torque: number }
  | { readonly kind: 'power'; readonly power: number; readonly fullAbove: number }
  | { readonly kind: 'fan'; readonly coefficient: number }

/** Speed below which idling drag fades out. rad/s at the spindle */
const STANDSTILL = 0.5

/** Torque the cut takes at spindle speed ws (rad/s), with a surge of torque added. It opposes motion, never drives. N·m */
export function cutTorque(cut: Cut, surge: number, ws: number): number {
  const moving = Math.tanh(ws)
  const extra = surge * moving
  if (cut.kind === 'torque') return cut.torque * moving + extra
  if (cut.kind === 'power') return (cut.power * moving) / Math.max(ws, cut.fullAbove) + extra
  return cut.coefficient * ws * Math.abs(ws) + extra
}

/** Torque of idling at spindle speed ws (rad/s). N·m */
export const idleTorque = (machine: Machine, ws: number): number =>
  machine.drag * Math.tanh(ws / STANDSTILL) + machine.windage * ws
