// Bench readings worked up, each into the number it measures.
import { copperRatio, fluxRatio } from '../handbook/materials.ts'
import type { Bench } from '../parts/bench.ts'
import type { Winding } from '../parts/winding.ts'
import { line, type Points, ray, wide } from './regress.ts'

/** Shaft-held readings must reach this far to part brush drop from resistance: greatest amps over least. */
const APART = 2

/** Less than this is what rounding leaves of two equal readings. Ω */
const LEAST_OHMS = 1e-9

/** Shaft-held readings as points: amps, volts. */
export const heldPoints = (bench: Bench): Points => bench.locked.map(({ amps, volts }) => [amps, volts])

/** True where shaft-held readings tell brush drop and resistance apart. */
export const partsBrushes = (bench: Bench): boolean =>
  bench.locked.length >= 3 &&
  wide(
    bench.locked.map(({ amps }) => amps),
    APART,
  )

export interface Winding20 {
  /** Ω at 20 °C. */
  readonly resistance: number
  /** V, where the readings tell it apart from the resistance. */
  readonly brushDrop: number | null
}

/**
 * Winding resistance from the shaft-held readings (volts at amps: the better way), or from ohms at several shaft
 * positions, where the lowest is the winding and the rest is brush contact. `brushDrop` (V) is taken off each
 * held reading when there are too few to find it. Nothing or less: the readings leave none for the winding.
 */
export function windingFrom(bench: Bench, brushDrop: number): Winding20 | null {
  const cold = copperRatio(bench.roomC)
  const points = heldPoints(bench)
  if (partsBrushes(bench)) {
    const { slope, offset } = line(points)
    // A drop under nothing is none, and the winding then takes all the volts.
    return offset > 0
      ? { resistance: slope / cold, brushDrop: offset }
      : { resistance: ray(points) / cold, brushDrop: 0 }
  }
  if (points.length > 0) {
    const mean = points.reduce((sum, [amps, volts]) => sum + (volts - brushDrop) / amps, 0) / points.length
    return { resistance: mean / cold, brushDrop: null }
  }
  if (bench.ohms.length === 0) return null
  const left = Math.min(...bench.ohms) - bench.leadOhms
  return { resistance: left > LEAST_OHMS ? left / cold : 0, brushDrop: null }
}

/** Motor constant at 20 °C from volts made by turning, V·s/rad. */
export function constantFrom(bench: Bench, magnets: Winding['magnets']): number | null {
  const points = bench.spin
    .filter(({ speed }) => speed > 0)
    .map(({ speed, volts }) => [speed, volts] as const)
  return points.length === 0 ? null : ray(points) / fluxRatio(magnets, bench.roomC)
}

/** The same from running free, where the speed was read: the volts less what brushes and winding take of them. */
export function constantFree(
  bench: Bench,
  { magnets, resistance, brushDrop }: Pick<Winding, 'magnets' | 'resistance' | 'brushDrop'>,
): number | null {
  const ohms = resistance * copperRatio(bench.roomC)
  const points = bench.running.flatMap(({ volts, amps, speed }) =>
    speed ? [[speed, volts - brushDrop - ohms * amps] as const] : [],
  )
  return points.length === 0 ? null : ray(points) / fluxRatio(magnets, bench.roomC)
}

export interface Friction {
  /** Torque that does not grow with speed, N·m, and what does, N·m·s/rad. */
  readonly dry: number
  readonly windage: number
}

/** The motor running free: rad/s, N·m. */
export interface Free {
  readonly speed: number
  readonly torque: number
}

/** Readings running free; speeds not read follow from volts, resistance and constant. */
export function freeRuns(
  bench: Bench,
  { magnets, resistance, constant, brushDrop }: Omit<Winding, 'insulation' | 'inductance'>,
): Free[] {
  const ohms = resistance * copperRatio(bench.roomC)
  const k = constant * fluxRatio(magnets, bench.roomC)
  return bench.running.map(({ volts, amps, speed }) => ({
    torque: k * amps,
    speed: speed ?? (volts - brushDrop - ohms * amps) / k,
  }))
}

/** Speeds must reach this far to part friction that grows with them from the rest. */
const SPEEDS_APART = 1.3

/** Friction from free runs: torque = dry + windage·ω. One speed: split by `dryShare`. Null where nothing turned. */
export function frictionFrom(runs: readonly Free[], dryShare: number): Friction | null {
  const points = runs.filter(({ speed }) => speed > 0).map(({ speed, torque }) => [speed, torque] as const)
  if (points.length === 0) return null
  const torque = points.reduce((sum, [, t]) => sum + t, 0) / points.length
  const speed = points.reduce((sum, [w]) => sum + w, 0) / points.length
  if (
    !wide(
      points.map(([w]) => w),
      SPEEDS_APART,
    )
  )
    return { dry: dryShare * torque, windage: ((1 - dryShare) * torque) / speed }
  const { slope, offset } = line(points)
  // Neither can be less than nothing: the other then carries it all.
  if (slope < 0) return { dry: torque, windage: 0 }
  return offset < 0 ? { dry: 0, windage: ray(points) } : { dry: offset, windage: slope }
}

/** Speed of a motor coasting down from w0 (rad/s) after t (s): J dω/dt = −dry − windage·ω. */
export function coasting(w0: number, t: number, inertia: number, { dry, windage }: Friction): number {
  if (windage * t < 1e-9 * inertia) return Math.max(0, w0 - (dry * t) / inertia)
  const drift = dry / windage
  return Math.max(0, (w0 + drift) * Math.exp((-windage * t) / inertia) - drift)
}

/** Inertia from a coast-down, kg·m²: the one whose curve lies nearest the readings. */
export function inertiaFrom(bench: Bench, friction: Friction): number | null {
  const points = bench.coast.toSorted((a, b) => a.time - b.time)
  const first = points[0]
  const later = points.filter(({ time, speed }) => time > first.time && speed > 0)
  if (!first || later.length === 0 || first.speed <= 0 || friction.dry + friction.windage <= 0) return null
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
  for (let n = 0; n < 40; n++) {
    const third = (high - low) * 0.381966
    if (miss(low + third) < miss(high - third)) high -= third
    else low += third
  }
  return (low + high) / 2
}

/** Inertia of a flywheel from its mass and diameter, kg·m²: ½ m r² for a disc, 0.7 m r² for a heavy rim. */
export function flywheelFrom(bench: Bench): number | null {
  const { flywheelMass, flywheelDiameter, flywheelShape } = bench
  if (flywheelMass === undefined || flywheelDiameter === undefined) return null
  return (flywheelShape === 'disc' ? 0.5 : 0.7) * flywheelMass * (flywheelDiameter / 2) ** 2
}
