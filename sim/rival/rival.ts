// The motor that is replaced, in SI: an induction motor with its torques, or another DC motor with its parts.
import type { MainsHertz, Poles } from '../handbook/induction.ts'
import type { Parts } from '../plant.ts'

/** A step of the old pulleys. */
export interface Step {
  /** Motor turns for one of the spindle. */
  readonly ratio: number
  /** Torque at the spindle over ratio times that at the motor's shaft. */
  readonly efficiency: number
}

interface Any {
  /** Plate power, W, and speed, rad/s. */
  readonly power: number
  readonly speed: number
  /** At least one. */
  readonly steps: readonly Step[]
}

/** An induction motor. Torques at its shaft, N·m. */
export interface Induction extends Any {
  readonly kind: 'three-phase' | 'single-phase'
  readonly poles: Poles
  readonly hertz: MainsHertz
  /** Speed of the turning field, rad/s. */
  readonly synchronous: number
  readonly fullLoad: number
  /** Torque it may carry for long at the price of its life, over full load. */
  readonly serviceFactor: number
  readonly breakdown: number
  readonly breakdownSlip: number
  readonly locked: number
  /** Lowest torque while running up; 0: nothing known. */
  readonly pullUp: number
  /** Where each torque is from, for the reader. */
  readonly sources: Readonly<Record<'serviceFactor' | 'breakdown' | 'locked', string>>
}

/** Another DC motor: identified from its plate, asked the same questions as this one. */
export interface Direct extends Any {
  readonly kind: 'DC'
  /** Its parts; belt, machine and air are those of the comparison. */
  readonly parts: Parts
}

export type Rival = Induction | Direct

/** Torque of a power (W) at a speed (rad/s), N·m: by definition, and never to be read off horsepower alone. */
export const plateTorque = (power: number, speed: number): number => power / speed
