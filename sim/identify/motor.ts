// The motor from its readings: plate, bench, and what is assumed where nothing was read.
import { classLimitC, type InsulationClass, RATED_AIR_C } from '../handbook/insulation.ts'
import { copperRatio, fluxRatio, type Magnet } from '../handbook/materials.ts'
import type { Bench } from '../parts/bench.ts'
import type { Heat } from '../parts/heat.ts'
import type { Plate } from '../parts/plate.ts'
import { type Assumed, between } from './assume.ts'
import {
  constantFree,
  constantFrom,
  type Friction,
  flywheelFrom,
  freeRuns,
  frictionFrom,
  inertiaFrom,
  partsBrushes,
  windingFrom,
} from './bench.ts'
import { type Point, pointOf } from './point.ts'
import { scaleOf, type ThermalScale } from './thermal.ts'
import { tie } from './tie.ts'

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
  /** How long that is held, s; undefined: all day. */
  readonly continuousFor: number | undefined
  readonly thermal: ThermalScale
  readonly told: Told
}

/** What told a number: the bench reading, or plate and assumptions in its place. */
interface Told {
  readonly resistance: 'held' | 'ohms' | 'plate'
  readonly constant: 'spin' | 'free' | 'plate'
  readonly brushDrop: 'held' | 'usual'
  readonly friction: 'free' | 'usual'
  readonly inertia: 'coast' | 'usual'
  readonly flywheel: 'size' | 'coast' | 'none'
}

/** Usual brush drop by plate volts: 1.5 V from 60 V, 1 V from 30 V, 0.6 V below, metal-graphite (common practice). V */
const usualBrushDrop = (volts: number): number => (volts >= 60 ? 1.5 : volts >= 30 ? 1 : 0.6)

/** Rotor inertia of a motor of this mass, kg·m² (common practice, no source). */
const rotorInertia = (mass: number): number => 6e-5 * mass ** (5 / 3)

/** Temperatures of winding and frame that the plate speaks of. °C */
export function plateTemperatures(plate: Plate, assume: Assumed): { windingC: number; frameC: number } {
  if (plate.values === 'cold') return { windingC: 20, frameC: 20 }
  return {
    windingC: between(25, 75, 110, assume.plateWarmth),
    frameC: between(25, 50, 80, assume.plateWarmth),
  }
}

/** The bench less the readings whose amps are not the motor's: only a motor lead shows those. */
const motorAmps = (bench: Bench): Bench =>
  bench.clamp === 'motor lead' ? bench : { ...bench, running: [], locked: [] }

/** No-load amps at plate volts: the free run nearest to them, or the usual share. */
function noLoadOf(bench: Bench, point: Point, assume: Assumed): number {
  const near = bench.running.toSorted(
    (a, b) => Math.abs(a.volts - point.volts) - Math.abs(b.volts - point.volts),
  )[0]
  return near?.amps ?? assume.noLoadShare * point.amps
}

/** Rotor and flywheel, kg·m²: what coasted is both, unless the shaft was bare. `bare`: a usual rotor. */
function inertias(
  { bench, given }: MotorReadings,
  coasted: number | null,
  bare: number,
): Pick<MotorNumbers, 'inertia' | 'flywheel'> {
  const flywheel = given.flywheel ?? flywheelFrom(bench)
  if (coasted === null || bench.coastedWith === 'bare shaft')
    return { inertia: coasted ?? bare, flywheel: flywheel ?? 0 }
  if (flywheel !== null && coasted > flywheel) return { inertia: coasted - flywheel, flywheel }
  const inertia = Math.min(given.inertia ?? bare, 0.9 * coasted)
  return { inertia, flywheel: coasted - inertia }
}

/**
 * The motor, or null where the plate says too little for one. Every reading stands where it was made: ohms
 * and volts made by turning are cold, the plate is warm. PHYSICS.md §3.
 */
export function identify(readings: MotorReadings, assume: Assumed): Motor | null {
  const { plate, magnets, insulation, given } = readings
  const printed = pointOf(plate, assume)
  if (!printed) return null
  const bench = motorAmps(readings.bench)
  const noLoadAmps = noLoadOf(bench, printed, assume)
  // Brushes take no more than half of the volts at which amps flowed, or nothing would be left for the winding.
  const most = Math.min(...bench.locked.map(({ volts }) => volts / 2))
  const usualDrop = assume.brushes * Math.min(usualBrushDrop(printed.volts), most)
  const held = windingFrom(bench, given.brushDrop ?? usualDrop)
  const brushDrop = given.brushDrop ?? held?.brushDrop ?? usualDrop
  const { windingC, frameC } = plateTemperatures(plate, assume)
  const flux = fluxRatio(magnets, frameC)

  const spun = constantFrom(bench, magnets)
  const { resistance, constant, point } = tie({
    point: printed,
    noLoadAmps,
    brushDrop,
    copper: copperRatio(windingC),
    flux,
    resistance: given.resistance ?? held?.resistance ?? null,
    constant: given.constant ?? spun,
    free: (ohms) => constantFree(bench, { magnets, resistance: ohms, brushDrop }),
  })

  const usualFriction = (): Friction => {
    // At plate temperature, as the plate's amps are.
    const torque = constant * flux * noLoadAmps
    const speed = (point.volts - brushDrop - resistance * noLoadAmps) / (constant * flux)
    return { dry: assume.dryShare * torque, windage: ((1 - assume.dryShare) * torque) / speed }
  }
  const free = frictionFrom(freeRuns(bench, { magnets, resistance, constant, brushDrop }), assume.dryShare)
  const found = free ?? usualFriction()
  const friction: Friction = {
    dry: given.dryFriction ?? found.dry,
    windage: given.windage ?? found.windage,
  }

  const mass = plate.mass ?? (assume.massPerKilowatt * point.volts * point.amps) / 1000
  const coasted = inertiaFrom(bench, friction)
  const { inertia, flywheel } = inertias(readings, coasted, assume.rotorInertia * rotorInertia(mass))

  const continuousSpeed = plate.continuousSpeed ?? point.speed
  const share = plate.duty === 'continuous' ? 1 : assume.continuousShare
  const continuousTorque =
    plate.continuousPower === undefined && plate.continuousAmps !== undefined
      ? constant * flux * (plate.continuousAmps - noLoadAmps)
      : (plate.continuousPower ?? share * point.power) / continuousSpeed
  const thermal = scaleOf(
    readings,
    {
      winding: { resistance, constant, magnets, brushDrop, insulation },
      rotor: { inertia, flywheel, dryFriction: friction.dry, windage: friction.windage },
      speed: continuousSpeed,
      torque: continuousTorque,
      volts: point.volts,
      mass,
      fanSpeed: given.fanSpeed ?? point.speed,
      limitC: classLimitC(insulation),
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
    continuousFor: plate.continuousFor,
    thermal,
    told: {
      resistance: bench.locked.length > 0 ? 'held' : bench.ohms.length > 0 ? 'ohms' : 'plate',
      constant: spun !== null ? 'spin' : bench.running.some(({ speed }) => speed) ? 'free' : 'plate',
      brushDrop: partsBrushes(bench) ? 'held' : 'usual',
      friction: free ? 'free' : 'usual',
      inertia: coasted === null ? 'usual' : 'coast',
      flywheel: flywheelFrom(bench) !== null ? 'size' : flywheel > 0 ? 'coast' : 'none',
    },
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
