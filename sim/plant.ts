// The whole machine on one screen: six states, every part asked once in causal order.
import { type SlipStage, slipCapacity, slipTorque } from './belting/slip.ts'
import { type Belt, ratio, slipStages } from './parts/belt.ts'
import { type Controller, type Gains, gains, limitedRate, TRACKING, wish } from './parts/controller.ts'
import { type Cutoff, senseRate } from './parts/cutoff.ts'
import { type Air, airAt, fullFan, type Heat } from './parts/heat.ts'
import { type Cut, cutTorque, idleTorque, type Machine } from './parts/machine.ts'
import { friction, type Rotor } from './parts/rotor.ts'
import { ceiling, formFactorSquared, type LumpyScale, type Supply, supplyAmps } from './parts/supply.ts'
import { brushVolts, constantAt, inductanceOf, resistanceAt, type Winding } from './parts/winding.ts'

/** The parts, in SI. */
export interface Parts {
  readonly supply: Supply
  readonly controller: Controller
  readonly winding: Winding
  readonly rotor: Rotor
  readonly belt: Belt
  readonly machine: Machine
  readonly heat: Heat
  readonly cutoff: Cutoff
  /** Plate amps and speed, where lumpy current needs them. */
  readonly lumpy: LumpyScale | null
}

/** The parts with what follows from them. */
export interface Plant extends Parts {
  /** Motor turns per spindle turn. */
  readonly ratio: number
  /** Inertia at the motor shaft, kg·m²: all of it, or without the spindle's where the belt may slip. */
  readonly inertia: number
  /** Stages of a belt that may slip; null: the spindle follows the motor. */
  readonly slip: readonly SlipStage[] | null
  /** Number of states: a spindle that may slip is one more. */
  readonly states: number
  readonly inductance: number
  readonly gains: Gains
  /** Scale of the shaft fan's airflow law. */
  readonly fan: number
}

/** Works out what follows from the parts. */
export function assemble(parts: Parts): Plant {
  const n = ratio(parts.belt)
  const slip = slipStages(parts.belt)
  const motor = parts.rotor.inertia + parts.rotor.flywheel
  const whole = motor + parts.machine.inertia / (n * n)
  return {
    ...parts,
    ratio: n,
    inertia: slip ? motor : whole,
    slip,
    states: slip ? STATES + 1 : STATES,
    inductance: inductanceOf(parts.winding),
    gains: gains(parts.controller, parts.winding.resistance, parts.winding.constant, whole),
    fan: fullFan(parts.heat),
  }
}

/** Order of the states: A, rad/s (motor), V, °C, °C, °C; and rad/s (spindle) where the belt may slip. */
export const STATE = {
  current: 0,
  speed: 1,
  integrator: 2,
  windingC: 3,
  frameC: 4,
  switchC: 5,
  spindle: 6,
} as const
/** States of a drive that cannot slip. */
export const STATES = 6

/** What the driver sets at an edge or an event, and the plant only reads. */
export interface Mode {
  /** Controller on and cutoff closed. */
  on: boolean
  /** Asked motor speed at the segment's start, rad/s, and its ramp, rad/s². */
  asked: number
  slope: number
  /** Where the ramp leads, rad/s; 0 with the controller off. */
  target: number
  cut: Cut
  /** Torque added to the cut in a surge, N·m at the spindle. */
  surge: number
}

/** What is measured at an instant, besides the states: places in `instant`. */
export const INSTANT = { asked: 0, volts: 1, load: 2, spindle: 3 } as const
/** What adds up over time: places in `flows`. Powers in W; charge A; heating A²; outlet A. */
export const FLOW = {
  charge: 0,
  heating: 1,
  taken: 2,
  copper: 3,
  brushes: 4,
  friction: 5,
  belt: 6,
  idle: 7,
  work: 8,
  toAir: 9,
  outlet: 10,
} as const
export const FLOWS = 11

/** Scratch for the readings of one instant. */
export interface Readings {
  readonly instant: Float64Array
  readonly flows: Float64Array
}
export const readings = (): Readings => ({ instant: new Float64Array(4), flows: new Float64Array(FLOWS) })

const air: Air = { windingToAir: 0, frameToAir: 0 }

/**
 * Rates of the six states at `t` seconds into the segment; with `read`, also what meters would show.
 * Source of every law: PHYSICS.md §1, repeated beside each part.
 */
export function evaluate(
  plant: Plant,
  mode: Mode,
  t: number,
  y: Float64Array,
  rates: Float64Array,
  read?: Readings,
): void {
  const { supply, controller, winding, rotor, machine, heat, cutoff } = plant
  const i = y[0]
  const w = y[1]
  const x = y[2]
  const windingC = y[3]
  const frameC = y[4]
  const switchC = y[5]

  // Electrical: what is asked, what can be given, what flows.
  const resistance = resistanceAt(winding, windingC)
  const constant = constantAt(winding, frameC)
  const brushes = brushVolts(winding, i)
  const asked = mode.on ? mode.asked + mode.slope * t : 0
  const wished = wish(
    controller,
    plant.gains,
    asked,
    w,
    i,
    x,
    winding.constant,
    winding.resistance,
    winding.brushDrop,
  )
  const volts = Math.min(Math.max(wished, 0), ceiling(supply, i))
  const free = (volts - resistance * i - constant * w - brushes) / plant.inductance
  const currentRate = limitedRate(controller, mode.on, free, i)
  // What the limiter adds to the supply's volts: it also unwinds the integrator.
  const limiter = plant.inductance * (currentRate - free)

  // Mechanical: the motor against its own friction and the spindle's load through the belt.
  const pulley = w / plant.ratio
  const spindle = plant.slip ? y[STATE.spindle] : pulley
  const cut = cutTorque(mode.cut, mode.surge, spindle)
  const idle = idleTorque(machine, spindle)
  const through = plant.slip ? slipTorque(slipCapacity(plant.slip, w), pulley, spindle) : cut + idle
  const atMotor = through / (plant.ratio * plant.belt.efficiency)
  const lost = friction(rotor, w)

  // Heat: copper, brushes and friction in; through the frame and to the air out.
  const lumpy = formFactorSquared(supply, plant.lumpy, i, w)
  const copper = lumpy * resistance * i * i
  const frictionHeat = lost * w
  const brushHeat = winding.brushDrop * Math.abs(i)
  airAt(heat, plant.fan, w, air)
  const inward = heat.windingToFrame * (windingC - frameC)
  const windingToAir = air.windingToAir * (windingC - heat.air)
  const frameToAir = air.frameToAir * (frameC - heat.air)
  const intoWinding = copper + heat.frictionShare * frictionHeat + heat.brushShare * brushHeat
  const intoFrame = (1 - heat.frictionShare) * frictionHeat + (1 - heat.brushShare) * brushHeat

  rates[0] = currentRate
  rates[1] = (constant * i - lost - atMotor) / plant.inertia
  if (!mode.on) rates[2] = -x / TRACKING
  else if (controller.holds === 'speed feedback')
    rates[2] = plant.gains.integral * (asked - w) + (volts + limiter - wished) / TRACKING
  else rates[2] = 0
  rates[3] = (intoWinding - inward - windingToAir) / heat.windingCapacity
  rates[4] = (intoFrame + inward - frameToAir) / heat.frameCapacity
  if (plant.slip) rates[STATE.spindle] = (through - cut - idle) / machine.inertia
  rates[5] = senseRate(cutoff, windingC, frameC, switchC)

  if (!read) return
  const { instant, flows } = read
  // Terminal volts: with the controller off they follow from the dying current, and energy goes back into it.
  const terminal = volts + limiter
  const taken = terminal * i + (lumpy - 1) * resistance * i * i
  instant[INSTANT.asked] = asked
  instant[INSTANT.volts] = mode.on ? terminal : 0
  instant[INSTANT.load] = cut
  instant[INSTANT.spindle] = spindle
  flows[FLOW.charge] = i
  flows[FLOW.heating] = lumpy * i * i
  flows[FLOW.taken] = taken
  flows[FLOW.copper] = copper
  flows[FLOW.brushes] = brushes * i
  flows[FLOW.friction] = frictionHeat
  flows[FLOW.belt] = atMotor * w - through * spindle
  flows[FLOW.idle] = idle * spindle
  flows[FLOW.work] = cut * spindle
  flows[FLOW.toAir] = windingToAir + frameToAir
  flows[FLOW.outlet] = mode.on ? supplyAmps(supply, taken, i, Math.sqrt(lumpy)) : 0
}

/** A typical size of each state, and the default absolute tolerance for each (NUMERICS.md). */
export const TYPICAL = Float64Array.of(1, 10, 10, 50, 50, 50, 1)
export const ABSOLUTE = Float64Array.of(0.01, 0.1, 0.1, 0.01, 0.01, 0.01, 0.01)
