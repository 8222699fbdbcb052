// What is known of a motor, in words: each number with its band, where it came from, and what it comes to.
import type { Known, KnownMotor } from '../identify/known.ts'
import type { Motor, MotorNumber } from '../identify/motor.ts'
import { type Dimension, toUnit } from '../quantity.ts'
import { brief, duration, NBSP, told } from './number.ts'
import { type Units, unitFor } from './units.ts'

/** Name and dimension of each number, in the order they are told. */
export const MOTOR_NUMBERS: Readonly<
  Record<MotorNumber, { readonly label: string; readonly dimension: Dimension }>
> = {
  constant: { label: 'Motor constant, cold', dimension: 'motor constant' },
  resistance: { label: 'Winding resistance, cold', dimension: 'resistance' },
  brushDrop: { label: 'Brush drop', dimension: 'voltage' },
  dryFriction: { label: 'Friction that is always there', dimension: 'torque' },
  windage: { label: 'Friction that grows with speed', dimension: 'viscous friction' },
  inertia: { label: 'Rotor inertia', dimension: 'inertia' },
  flywheel: { label: 'Flywheel inertia', dimension: 'inertia' },
  windingCapacity: { label: 'Heat the winding stores', dimension: 'heat capacity' },
  frameCapacity: { label: 'Heat the frame stores', dimension: 'heat capacity' },
  windingToFrame: { label: 'Winding to frame', dimension: 'thermal conductance' },
  windingToAir: { label: 'Winding to still air', dimension: 'thermal conductance' },
  windingToFanAir: { label: 'Winding to air, full fan', dimension: 'thermal conductance' },
  frameToAir: { label: 'Frame to still air', dimension: 'thermal conductance' },
  frameToFanAir: { label: 'Frame to air, full fan', dimension: 'thermal conductance' },
  fanSpeed: { label: 'Motor speed at full fan', dimension: 'angular speed' },
}

/** Three significant digits whatever the dimension: bands of small numbers must not round to one. */
function three(value: number, dimension: Dimension, units: Units): { number: string; unit: string } {
  const unit = unitFor(dimension, units)
  return { number: brief(toUnit(value, unit)), unit }
}

/** "0.84 to 1.8 Ω", or one value where there is no doubt. */
export function bandWords({ low, high }: Known, dimension: Dimension, units: Units): string {
  const from = three(low, dimension, units)
  const to = three(high, dimension, units)
  const unit = `${NBSP}${to.unit}`
  return from.number === to.number ? `${to.number}${unit}` : `${from.number} to ${to.number}${unit}`
}

const FROM = {
  measured: 'Measured',
  plate: 'From the plate',
  estimated: 'Estimated',
  given: 'Given',
} as const

/** Where a number came from: "Estimated: its mass." */
export const originWords = ({ from, how }: Known): string =>
  from === 'given' ? 'Given in the job.' : `${FROM[from]}: ${how}.`

export interface MotorLine {
  readonly name: MotorNumber
  readonly label: string
  readonly value: string
  /** Empty where there is no doubt. */
  readonly band: string
  readonly origin: string
}

/** Every number of a motor, a line each. */
export function motorLines(known: KnownMotor, units: Units): readonly MotorLine[] {
  return (Object.keys(MOTOR_NUMBERS) as MotorNumber[]).map((name) => {
    const { label, dimension } = MOTOR_NUMBERS[name]
    const { value, low, high } = known[name]
    const { number, unit } = three(value, dimension, units)
    return {
      name,
      label,
      value: `${number}${NBSP}${unit}`,
      band: low === high ? '' : bandWords(known[name], dimension, units),
      origin: originWords(known[name]),
    }
  })
}

/** Torque at plate speed and all day (or as long as the plate says), and the copper heat between them. */
export function torqueWords(motor: Motor, units: Units): string {
  const { point, continuousTorque, continuousSpeed, continuousFor, noLoadAmps } = motor
  const peak = `The plate’s power at ${told(point.speed, 'angular speed', units)} is a torque of ${told(point.torque, 'torque', units)}`
  const long = continuousFor === undefined ? 'all day' : `for ${duration(continuousFor)}`
  // Copper heat goes as amps squared; amps less no-load go as torque.
  const load = (point.amps - noLoadAmps) / point.torque
  const heat = (point.amps / (continuousTorque * load + noLoadAmps)) ** 2
  if (Math.abs(heat - 1) < 0.05) return `${peak}, ${long}.`
  const slower =
    Math.abs(continuousSpeed / point.speed - 1) < 0.005
      ? ''
      : ` at ${told(continuousSpeed, 'angular speed', units)}`
  return `${peak}; ${long} it is ${told(continuousTorque, 'torque', units)}${slower}. Between them lies ${brief(Number(heat.toPrecision(2)))} times the copper heat.`
}
