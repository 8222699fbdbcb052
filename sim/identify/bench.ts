// Bench readings worked up: each into a number with how far the readings themselves leave it open.
import { copperRatio, fluxRatio, type Magnet } from '../handbook/materials.ts'
import type { Bench } from '../parts/bench.ts'
import { line, ray, wide } from './regress.ts'

/** A value and half the width of its 8-in-10 band. */
export interface Measured {
  readonly value: number
  readonly give: number
}

/** What an ordinary meter is good for, as a share of its reading. */
const METER = 0.02
/** Half-width of an 8-in-10 band in standard deviations. */
const EIGHT_IN_TEN = 1.28
/** Locked readings must reach this far to part brush drop from resistance: greatest amps over least. */
const APART = 2

const about = (value: number, scatter: number): Measured => ({
  value,
  give: Math.hypot(METER * value, EIGHT_IN_TEN * scatter),
})

export interface Winding20 {
  /** Ω at 20 °C. */
  readonly resistance: Measured
  /** V, where the readings tell it apart from the resistance. */
  readonly brushDrop: Measured | null
}

/**
 * Winding resistance from the shaft-held readings (volts at amps: the better way), or from ohms at several shaft
 * positions, where the lowest is the winding and the rest is brush contact. `brushDrop` (V) is taken off each
 * held reading when there are too few to find it.
 */
export function windingFrom(bench: Bench, brushDrop: number): Winding20 | null {
  const cold = copperRatio(bench.roomC)
  const points = bench.locked.map(({ amps, volts }) => [amps, volts] as const)
  if (
    points.length >= 3 &&
    wide(
      points.map(([amps]) => amps),
      APART,
    )
  ) {
    const { slope, offset, scatter } = line(points)
    const mean = points.reduce((sum, [amps]) => sum + amps, 0) / points.length
    const spread = Math.sqrt(points.reduce((sum, [amps]) => sum + (amps - mean) ** 2, 0))
    const give = scatter / spread
    return {
      resistance: about(slope / cold, give),
      brushDrop: {
        value: Math.max(0, offset),
        give: EIGHT_IN_TEN * Math.hypot(scatter / Math.sqrt(points.length), give * mean),
      },
    }
  }
  if (points.length > 0) {
    const each = points.map(([amps, volts]) => (volts - brushDrop) / amps)
    const best = Math.min(...each)
    const mean = each.reduce((sum, r) => sum + r, 0) / each.length
    // The brush drop taken off is itself known to half its size only.
    const doubt = (0.5 * brushDrop) / Math.max(...points.map(([amps]) => amps))
    return {
      resistance: about(Math.max(mean, 0) / cold, Math.hypot(mean - best, doubt / EIGHT_IN_TEN) / cold),
      brushDrop: null,
    }
  }
  if (bench.ohms.length === 0) return null
  const each = bench.ohms.map((reading) => reading - bench.leadOhms)
  const lowest = Math.min(...each)
  const mean = each.reduce((sum, r) => sum + r, 0) / each.length
  return { resistance: about(lowest / cold, (mean - lowest) / 2 / EIGHT_IN_TEN / cold), brushDrop: null }
}

/** Motor constant at 20 °C from volts made by turning, V·s/rad. */
export function constantFrom(bench: Bench, magnets: Magnet): Measured | null {
  const points = bench.spin
    .filter(({ speed }) => speed > 0)
    .map(({ speed, volts }) => [speed, volts] as const)
  if (points.length === 0) return null
  const { slope, scatter } = ray(points)
  const length = Math.sqrt(points.reduce((sum, [speed]) => sum + speed * speed, 0))
  return about(slope / fluxRatio(magnets, bench.roomC), points.length > 1 ? scatter / length : 0)
}

export interface Friction {
  /** Torque that does not grow with speed, N·m, and what does, N·m·s/rad. */
  readonly dry: number
  readonly windage: number
  /** True where readings at two speeds or more told them apart. */
  readonly apart: boolean
}

/** A reading of the motor running free, with its speed read or worked out: A, rad/s. */
export interface Free {
  readonly amps: number
  readonly speed: number
}

/** Readings running free; speeds not read follow from volts, resistance and constant. */
export function freeRuns(bench: Bench, constant: number, resistance: number, brushDrop: number): Free[] {
  return bench.running.map(({ volts, amps, speed }) => ({
    amps,
    speed: speed ?? Math.max(0, (volts - brushDrop - resistance * amps) / constant),
  }))
}

/** Friction from free runs: k I = dry + windage·ω. One speed: split by `dryShare`. */
export function frictionFrom(runs: readonly Free[], constant: number, dryShare: number): Friction | null {
  const moving = runs.filter(({ speed }) => speed > 0)
  if (moving.length === 0) return null
  const points = moving.map(({ amps, speed }) => [speed, constant * amps] as const)
  if (
    wide(
      points.map(([speed]) => speed),
      1.3,
    )
  ) {
    const { slope, offset } = line(points)
    if (slope >= 0 && offset >= 0) return { dry: offset, windage: slope, apart: true }
    // Neither can be less than nothing: the other then carries it all.
    const mean = points.reduce((sum, [, torque]) => sum + torque, 0) / points.length
    return slope < 0
      ? { dry: mean, windage: 0, apart: true }
      : { dry: 0, windage: ray(points).slope, apart: true }
  }
  const torque = points.reduce((sum, [, t]) => sum + t, 0) / points.length
  const speed = points.reduce((sum, [w]) => sum + w, 0) / points.length
  return { dry: dryShare * torque, windage: ((1 - dryShare) * torque) / speed, apart: false }
}

/** Speed of a motor coasting down from w0 (rad/s) after t (s): J dω/dt = −dry − windage·ω. */
export function coasting(w0: number, t: number, inertia: number, { dry, windage }: Friction): number {
  if (windage * t < 1e-9 * inertia) return Math.max(0, w0 - (dry * t) / inertia)
  const drift = dry / windage
  return Math.max(0, (w0 + drift) * Math.exp((-windage * t) / inertia) - drift)
}

/** Inertia from a coast-down, kg·m²: the one whose curve lies nearest the readings. */
export function inertiaFrom(bench: Bench, friction: Friction): Measured | null {
  const points = bench.coast.toSorted((a, b) => a.time - b.time)
  const first = points[0]
  const later = points.filter(({ time, speed }) => time > first.time && speed > 0)
  if (!first || later.length === 0 || first.speed <= 0) return null
  const miss = (inertia: number) =>
    later.reduce(
      (sum, { time, speed }) =>
        sum + (coasting(first.speed, time - first.time, inertia, friction) - speed) ** 2,
      0,
    )
  // One parameter over decades: a coarse look by factors, then golden section between the neighbours of the best.
  let best = 1e-9
  for (let inertia = 1e-9; inertia < 1e3; inertia *= 1.1) if (miss(inertia) < miss(best)) best = inertia
  let low = best / 1.1
  let high = best * 1.1
  for (let n = 0; n < 60; n++) {
    const third = (high - low) * 0.381966
    if (miss(low + third) < miss(high - third)) high -= third
    else low += third
  }
  const value = (low + high) / 2
  return { value, give: value * Math.hypot(0.05, Math.sqrt(miss(value) / later.length) / first.speed) }
}

/** Inertia of a flywheel from its mass and diameter, kg·m²: ½ m r² for a disc, 0.7 m r² for a heavy rim. */
export function flywheelFrom(bench: Bench): number | null {
  const { flywheelMass, flywheelDiameter, flywheelShape } = bench
  if (flywheelMass === undefined || flywheelDiameter === undefined) return null
  return (flywheelShape === 'disc' ? 0.5 : 0.7) * flywheelMass * (flywheelDiameter / 2) ** 2
}
