// The rotor and its flywheel: what is heavy on the motor shaft, and what it loses in turning.
import * as v from 'valibot'
import { type Filled, quantity } from '../field.ts'

export const RotorFields = v.object({
  inertia: v.optional(
    quantity({
      label: 'Rotor inertia',
      dimension: 'inertia',
      low: '1e-8 kg·m²',
      high: '10 kg·m²',
      help: 'From its mass and radius, half of m r².',
    }),
  ),
  flywheel: v.optional(
    quantity({
      label: 'Flywheel inertia',
      dimension: 'inertia',
      low: '0 kg·m²',
      high: '100 kg·m²',
      below: 'less than nothing',
      help: 'A plain disc: half of m r². A heavy rim: 0.7 m r².',
    }),
  ),
  dryFriction: v.optional(
    quantity({
      label: 'Friction that is always there',
      dimension: 'torque',
      low: '0 N·m',
      high: '50 N·m',
      below: 'less than nothing',
      help: 'Brushes and bearings. Half of motor constant times no-load amps.',
    }),
  ),
  windage: v.optional(
    quantity({
      label: 'Friction that grows with speed',
      dimension: 'viscous friction',
      low: '0 N·m·s/rad',
      high: '1 N·m·s/rad',
      below: 'less than nothing',
      help: 'Fan, windage and iron. The other half, over the no-load speed.',
    }),
  ),
})

/** The rotor with every number known: read, or identified from plate and bench. */
export type Rotor = Filled<
  v.InferOutput<typeof RotorFields>,
  'inertia' | 'flywheel' | 'dryFriction' | 'windage'
>

/** Speed below which dry friction fades out, to keep the law smooth through standstill. rad/s */
const STANDSTILL = 0.5

/** Torque lost in the motor itself at speed w (rad/s). N·m */
export const friction = (rotor: Rotor, w: number): number =>
  rotor.dryFriction * Math.tanh(w / STANDSTILL) + rotor.windage * w
