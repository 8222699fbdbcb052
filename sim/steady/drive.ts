// Where a drive comes to rest at given temperatures: its speed, its amps, and what holds it back.
import { slipCapacity, slipTorque } from '../belting/slip.ts'
import { wish } from '../parts/controller.ts'
import { cutTorque, idleTorque } from '../parts/machine.ts'
import { friction } from '../parts/rotor.ts'
import { ceiling } from '../parts/supply.ts'
import { brushVolts, constantAt, resistanceAt } from '../parts/winding.ts'
import type { Plant } from '../plant.ts'
import { root } from '../solve/root.ts'

/** What keeps it from the asked speed: nothing, the supply's volts, the current limit, a belt that slips; or it stands. */
export type DriveLimit = 'none' | 'voltage' | 'current' | 'slip' | 'stall'

export interface Drive {
  /** Speed of motor and spindle, rad/s. */
  readonly motor: number
  readonly spindle: number
  readonly amps: number
  readonly limit: DriveLimit
}

/** Speeds are found to this share of the motor's fastest. */
const PRECISION = 1e-14
/** More than creep: the belt slips. */
const SLIP = 0.05
/** Under this share of the cut's torque it has let go: it stands, and the cut with it. */
const STALL = 0.95

/** The spindle that goes with a motor speed, rad/s, and the torque through the belt there, N·m at the spindle. */
function spindleAt(plant: Plant, torque: number, motor: number): { spindle: number; through: number } {
  const pulley = motor / plant.ratio
  const load = (speed: number) =>
    cutTorque({ kind: 'torque', torque }, 0, speed) + idleTorque(plant.machine, speed)
  if (!plant.slip) return { spindle: pulley, through: load(pulley) }
  const capacity = slipCapacity(plant.slip, motor)
  const spare = (speed: number) => slipTorque(capacity, pulley, speed) - load(speed)
  if (!(spare(0) > 0)) return { spindle: 0, through: capacity }
  const end = spare(pulley)
  if (!(end < 0)) return { spindle: pulley, through: load(pulley) }
  const spindle = root(spare, 0, pulley, spare(0), end, PRECISION * pulley)
  return { spindle, through: load(spindle) }
}

/**
 * Steady speed and amps at temperatures of winding and frame, °C, with the controller asking for motor speed `asked`
 * (rad/s; Infinity: the knob fully up) and a cut of `torque` at the spindle, N·m, idle drag on top.
 * Source: the steady state of PHYSICS.md §1.
 */
export function driveAt(
  plant: Plant,
  asked: number,
  torque: number,
  windingC: number,
  frameC: number,
): Drive {
  const { supply, controller, winding, rotor, ratio, belt } = plant
  if (!(asked > 0)) return { motor: 0, spindle: 0, amps: 0, limit: 'none' }
  const resistance = resistanceAt(winding, windingC)
  const constant = constantAt(winding, frameC)

  /** Amps that hold the load at a motor speed; what is left of the volts given there; all the volts there are. */
  const amps = (motor: number) =>
    (friction(rotor, motor) + spindleAt(plant, torque, motor).through / (ratio * belt.efficiency)) / constant
  const needed = (motor: number, i: number) => resistance * i + constant * motor + brushVolts(winding, i)
  const wished = (i: number) =>
    controller.holds === 'speed feedback'
      ? Infinity // up to the asked speed, which it never passes
      : wish(controller, plant.gains, asked, 0, i, 0, winding.constant, winding.resistance, winding.brushDrop)
  const spare = (motor: number) => {
    const i = amps(motor)
    return Math.min(wished(i), ceiling(supply, i)) - needed(motor, i)
  }
  const fastest = supply.volts / constant + 1
  const highest = controller.holds === 'speed feedback' ? Math.min(asked, fastest) : fastest
  const atHighest = spare(highest)
  const close = PRECISION * fastest
  let motor = atHighest >= 0 ? highest : root(spare, 0, highest, spare(0), atHighest, close)
  let i = amps(motor)
  let limit: DriveLimit = motor < asked && wished(i) >= ceiling(supply, i) ? 'voltage' : 'none'
  const over = (speed: number) => amps(speed) - controller.currentLimit
  if (i > controller.currentLimit) {
    motor = root(over, 0, motor, over(0), over(motor), close)
    i = controller.currentLimit
    limit = 'current'
  }
  const { spindle } = spindleAt(plant, torque, motor)
  const cut = Math.tanh(spindle)
  if (spindle * ratio < (1 - SLIP) * motor) limit = 'slip'
  else if (limit !== 'none' && cut < STALL) limit = 'stall'
  return { motor, spindle, amps: i, limit }
}
