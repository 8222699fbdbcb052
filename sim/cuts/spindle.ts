// Spindle speed from surface speed and diameter, and the two inputs of which a person knows one.
import * as v from 'valibot'
import { quantity } from '../field.ts'
import { fromUnit } from '../quantity.ts'
import { refused, type Worked } from './answer.ts'

/** Spindle speed (rad/s) at which a diameter (m) has this surface speed (m/s). */
export const spindleSpeed = (surface: number, diameter: number): number => (2 * surface) / diameter

/** Surface speed (m/s) of a diameter (m) at a spindle speed (rad/s). */
export const surfaceSpeed = (spindle: number, diameter: number): number => (spindle * diameter) / 2

/** Diameter (m) that has this surface speed (m/s) at a spindle speed (rad/s). */
export const diameterFor = (surface: number, spindle: number): number => (2 * surface) / spindle

const FASTEST = fromUnit(60_000, 'rpm')

const turns = {
  label: 'Spindle speed',
  dimension: 'angular speed',
  low: '1 rpm',
  high: '60000 rpm',
} as const

/** The spindle speed, where it must be known. */
export const spindleField = quantity(turns)

/** Spindle speed or surface speed: one of them. */
export const speedFields = {
  speed: v.optional(
    quantity({
      label: 'Surface speed',
      dimension: 'speed',
      low: '0.001 m/s',
      high: '100 m/s',
      help: 'At the diameter. Or give the spindle speed.',
    }),
  ),
  spindle: v.optional(quantity({ ...turns, help: 'Or give the surface speed.' })),
}

interface Speeds {
  readonly speed?: number | undefined
  readonly spindle?: number | undefined
}

/** Works with the spindle speed (rad/s) from whichever was given; refuses none, both, and what no spindle turns. */
export function atSpeed(
  { speed, spindle }: Speeds,
  diameter: number,
  work: (spindle: number) => Worked,
): Worked {
  if (speed !== undefined && spindle !== undefined)
    return refused('speed', 'Surface speed and spindle speed are both given.', 'Give one: the other follows.')
  if (spindle !== undefined) return work(spindle)
  if (speed === undefined)
    return refused('speed', 'The speed is missing.', 'Give the surface speed or the spindle speed.')
  const turned = spindleSpeed(speed, diameter)
  return turned <= FASTEST
    ? work(turned)
    : refused(
        'speed',
        'At this diameter that is over 60 000 rpm.',
        'Give a lower speed or a larger diameter.',
      )
}
