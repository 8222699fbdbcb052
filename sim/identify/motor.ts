// The motor from its readings: plate, bench, and what is assumed where nothing was read.
import { classLimitC, type InsulationClass, RATED_AIR_C } from '../handbook/insulation.ts'
import { copperRatio, fluxRatio, type Magnet } from '../handbook/materials.ts'
import type { Bench } from '../parts/bench.ts'
import type { Heat } from '../parts/heat.ts'
import type { Plate } from '../parts/plate.ts'
import { type Assumed, between } from './assume.ts'
import {
  constantFrom,
  type Friction,
  flywheelFrom,
  freeRuns,
  frictionFrom,
  inertiaFrom,
  windingFrom,
} from './bench.ts'
import { type Point, pointOf } from './point.ts'
import { scaleOf, type ThermalScale } from './thermal.ts'

/** Everything that was read, with what a look at the motor tells. */
export interface MotorReadings {
  readonly plate: Plate
  readonly bench: Bench
  readonly magnets: Magnet
  readonly insulation: InsulationClass
  /** Numbers that are known without any of this, SI: they win, and the rest is worked out with them. */
  readonly given: Partial<MotorNumbers>
  /** Shares of friction and brush heat that warm the winding, and the fan law's exponent. */
  readonly heat: Pick<Heat, 'frictionShare' | 'brushShare' | 'fanExponent'>
}

/** The numbers the plant needs of a motor, SI. */
export interface MotorNumbers {
  readonly resistance: number
  readonly constant: number
  readonly brushDrop: number
  readonly dryFriction: number
  readonly windage: number
  readonly inertia: number
  readonly flywheel: number
  readonly windingCapacity: number
  readonly frameCapacity: number
  readonly windingToFrame: number
  readonly windingToAir: number
  readonly windingToFanAir: number
  readonly frameToAir: number
  readonly frameToFanAir: number
  readonly fanSpeed: number
}
export type MotorNumber = keyof MotorNumbers

export interface Motor {
  readonly numbers: MotorNumbers
  readonly point: Point
  /** No-load amps at plate volts, A, and the motor's mass, kg: read or assumed. */
  readonly noLoadAmps: number
  readonly mass: number
  /** Continuous torque at its speed, as printed or assumed: N·m, rad/s. */
  readonly continuousTorque: number
  readonly continuousSpeed: number
  readonly thermal: ThermalScale
}

/** Usual brush drop by plate volts: 1.5 V from 60 V, 1 V from 30 V, 0.6 V below, metal-graphite (common practice). V */
export const usualBrushDrop = (volts: number): number => (volts >= 60 ? 1.5 : volts >= 30 ? 1 : 0.6)

/** Rotor inertia of a motor of this mass, kg·m² (common practice, no source). */
const rotorInertia = (mass: number): number => 6e-5 * mass ** (5 / 3)

/** Temperatures of winding and frame that the plate speaks of. °C */
function plateTemperatures(plate: Plate, assume: Assumed): { windingC: number; frameC: number } {
  if (plate.values === 'cold') return { windingC: 20, frameC: 20 }
  return {
    windingC: between(25, 75, 110, assume.plateWarmth),
    frameC: between(25, 50, 80, assume.plateWarmth),
  }
}

/** Amps at the motor from where the meter sat: only a motor lead shows them. Null: they cannot be told. */
const motorAmps = (bench: Bench): Bench =>
  bench.clamp === 'motor lead' ? bench : { ...bench, running: [], locked: [] }

/** No-load amps at plate volts: the free run nearest to them, or the usual share. */
function noLoadOf(bench: Bench, point: Point, assume: Assumed): number {
  const near = bench.running.toSorted(
    (a, b) => Math.abs(a.volts - point.volts) - Math.abs(b.volts - point.volts),
  )[0]
  return near?.amps ?? assume.noLoadShare * point.amps
}

/**
 * The motor, or null where plate and bench say too little for one. Every reading stands where it was made: ohms
 * and volts made by turning are cold, the plate is warm. PHYSICS.md §3.
 */
export function identify(readings: MotorReadings, assume: Assumed): Motor | null {
  const { plate, magnets, given } = readings
  const point = pointOf(plate, assume)
  if (!point) return null
  const bench = motorAmps(readings.bench)
  const usualDrop = assume.brushes * usualBrushDrop(point.volts)
  const measured = windingFrom(bench, usualDrop)
  const brushDrop = given.brushDrop ?? measured?.brushDrop?.value ?? usualDrop
  const { windingC, frameC } = plateTemperatures(plate, assume)
  const warmCopper = copperRatio(windingC)
  const warmMagnets = fluxRatio(magnets, frameC)
  const noLoadAmps = noLoadOf(bench, point, assume)

  // Two unknowns, resistance and constant; the plate's voltage equation ties them, a bench reading or torque settles one.
  const spun = given.constant ?? constantFrom(bench, magnets)?.value
  let resistance = given.resistance ?? measured?.resistance.value
  let constant = spun
  if (constant === undefined)
    constant =
      resistance === undefined
        ? point.torque / (point.amps - noLoadAmps) / warmMagnets
        : (point.volts - brushDrop - resistance * warmCopper * point.amps) / point.speed / warmMagnets
  resistance ??= (point.volts - brushDrop - constant * warmMagnets * point.speed) / point.amps / warmCopper

  const plateFriction = (k: number, r: number): Friction => {
    // At plate temperature, as the plate's amps are.
    const torque = k * warmMagnets * noLoadAmps
    const speed = (point.volts - brushDrop - r * noLoadAmps) / (k * warmMagnets)
    return { dry: assume.dryShare * torque, windage: ((1 - assume.dryShare) * torque) / speed, apart: false }
  }
  const found =
    frictionFrom(freeRuns(bench, constant, resistance, brushDrop), constant, assume.dryShare) ??
    plateFriction(constant, resistance)
  const friction: Friction = {
    dry: given.dryFriction ?? found.dry,
    windage: given.windage ?? found.windage,
    apart: found.apart,
  }

  const mass = plate.mass ?? (assume.massPerKilowatt * point.volts * point.amps) / 1000
  const flywheelRead = flywheelFrom(bench)
  const coasted = inertiaFrom(bench, friction)?.value
  const bare = assume.rotorInertia * rotorInertia(mass)
  let inertia = bare
  let flywheel = flywheelRead ?? 0
  if (coasted !== undefined && bench.coastedWith === 'bare shaft') inertia = coasted
  else if (coasted !== undefined && flywheelRead !== null && coasted > flywheelRead)
    inertia = coasted - flywheelRead
  else if (coasted !== undefined) {
    inertia = Math.min(bare, 0.9 * coasted)
    flywheel = coasted - inertia
  }

  const continuousSpeed = plate.continuousSpeed ?? point.speed
  const continuousPower =
    plate.continuousPower ?? point.power * (plate.duty === 'continuous' ? 1 : assume.continuousShare)
  const continuousTorque = continuousPower / continuousSpeed
  const thermal = scaleOf(
    readings,
    {
      winding: { resistance, constant, magnets, brushDrop, insulation: readings.insulation },
      rotor: { inertia, flywheel, dryFriction: friction.dry, windage: friction.windage },
      speed: continuousSpeed,
      torque: continuousTorque,
      volts: point.volts,
      mass,
      fanSpeed: given.fanSpeed ?? point.speed,
      limitC: classLimitC(readings.insulation),
      air: RATED_AIR_C,
    },
    assume,
  )
  return {
    point,
    noLoadAmps,
    mass,
    continuousTorque,
    continuousSpeed,
    thermal,
    numbers: {
      resistance,
      constant,
      brushDrop,
      dryFriction: friction.dry,
      windage: friction.windage,
      inertia,
      flywheel,
      fanSpeed: point.speed,
      ...thermal.numbers,
      ...given,
    },
  }
}
