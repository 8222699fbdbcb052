// The largest torque that everything still stands: heat, volts, amps and belt, each with what is over its limit.
import { slipCapacity } from '../belting/slip.ts'
import { classLimitC } from '../handbook/insulation.ts'
import { type Air, airAt, type Heat } from '../parts/heat.ts'
import { idleTorque } from '../parts/machine.ts'
import { friction } from '../parts/rotor.ts'
import { ceiling } from '../parts/supply.ts'
import { brushVolts, constantAt, resistanceAt } from '../parts/winding.ts'
import { assemble, type Parts, type Plant } from '../plant.ts'
import { root } from '../solve/root.ts'

/** What a torque is limited by. 'runaway': more would not settle, though the winding is still cool enough. */
export type TorqueLimit = 'winding' | 'switch' | 'runaway' | 'current' | 'voltage' | 'belt'

export interface Most {
  /** Largest torque of the cut, N·m at the spindle, idle drag on top; 0: it cannot even idle there. */
  readonly torque: number
  readonly limit: TorqueLimit
  readonly amps: number
  readonly windingC: number
  readonly frameC: number
  readonly switchC: number
}

/** A motor held at one speed. */
export interface HeldAt {
  readonly plant: Plant
  /** Motor and spindle speed, rad/s. */
  readonly motor: number
  readonly spindle: number
  readonly air: Air
}

/** The parts held at spindle speed `speed`, rad/s, with another cooling if one is named. Creep is left aside. */
export function heldAt(parts: Parts, speed: number, cooling?: Heat['cooling']): HeldAt {
  const plant = assemble(cooling ? { ...parts, heat: { ...parts.heat, cooling } } : parts)
  const motor = speed * plant.ratio
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  airAt(plant.heat, plant.fan, motor, air)
  return { plant, motor, spindle: speed, air }
}

/** Torque of the cut, N·m at the spindle, that amps hold with the frame at a temperature. */
export function cutFrom({ plant, motor, spindle }: HeldAt, amps: number, frameC: number): number {
  const shaft = constantAt(plant.winding, frameC) * amps - friction(plant.rotor, motor)
  return shaft * plant.ratio * plant.belt.efficiency - idleTorque(plant.machine, spindle)
}

/** Amps that hold a torque of the cut, N·m at the spindle. */
export function ampsFor({ plant, motor, spindle }: HeldAt, torque: number, frameC: number): number {
  const atMotor = (torque + idleTorque(plant.machine, spindle)) / (plant.ratio * plant.belt.efficiency)
  return (atMotor + friction(plant.rotor, motor)) / constantAt(plant.winding, frameC)
}

/** A state at one torque: amps and temperatures. */
export type Reached = Omit<Most, 'limit' | 'torque'>

/** How far each limit is passed (K, A, V, N·m): none over 0 is in order. */
export function excess(
  { plant, motor, spindle }: HeldAt,
  torque: number,
  { amps, windingC, frameC, switchC }: Reached,
): Readonly<Partial<Record<TorqueLimit, number>>> {
  const { supply, controller, winding, cutoff, machine } = plant
  const needed =
    resistanceAt(winding, windingC) * amps + constantAt(winding, frameC) * motor + brushVolts(winding, amps)
  return {
    winding: windingC - classLimitC(winding.insulation),
    ...(cutoff.fitted === 'none' ? {} : { switch: switchC - cutoff.opensAt }),
    current: amps - controller.currentLimit,
    voltage: needed - ceiling(supply, amps),
    ...(plant.slip ? { belt: torque + idleTorque(machine, spindle) - slipCapacity(plant.slip, motor) } : {}),
  }
}

/** The limit that is passed furthest. */
export function worst(over: Readonly<Partial<Record<TorqueLimit, number>>>): readonly [TorqueLimit, number] {
  const entries = Object.entries(over) as [TorqueLimit, number][]
  return entries.reduce((a, b) => (b[1] > a[1] ? b : a))
}

/** Found to this share of the range. */
const PRECISION = 1e-12

/**
 * The largest x in [0, high] at which nothing is passed, and which limit that is: `over` grows past 0 somewhere
 * between, or x is 0.
 */
export function largest(
  over: (x: number) => readonly [TorqueLimit, number],
  high: number,
): { readonly x: number; readonly limit: TorqueLimit } {
  const [first, start] = over(0)
  if (start >= 0) return { x: 0, limit: first }
  const [, end] = over(high)
  if (end <= 0) return { x: high, limit: over(high)[0] }
  const x = root((each) => over(each)[1], 0, high, start, end, PRECISION * high)
  return { x, limit: over(x)[0] }
}
