// Resistance and constant: what was measured of them, and the other by the plate's voltage equation and torque.
import type { Point } from './point.ts'

/** V, A, Ω and V·s/rad at 20 °C; copper and flux as ratios of plate temperature to that. */
export interface Ends {
  readonly point: Point
  readonly noLoadAmps: number
  readonly brushDrop: number
  readonly copper: number
  readonly flux: number
  readonly resistance: number | null
  readonly constant: number | null
  /** Constant from running free at a read speed, for a resistance; null where no speed was read. */
  readonly free: (resistance: number) => number | null
}

export interface Tied {
  readonly resistance: number
  readonly constant: number
  /** The plate's point: speed and power that were not printed follow from what was measured. */
  readonly point: Point
}

export function tie(ends: Ends): Tied {
  const { point, noLoadAmps, brushDrop, copper, flux, resistance, free } = ends
  const { volts, amps } = point
  const left = volts - brushDrop
  const load = amps - noLoadAmps
  const noSpeed = point.guessed.includes('speed')
  const turning = (ohms: number) => left - ohms * copper * amps
  /** Speed at plate load of a motor of this measured constant: as printed, or what its ohms or plate power leave it. */
  const speedOf = (constant: number): number =>
    noSpeed
      ? (resistance === null ? point.power / load : turning(resistance)) / (constant * flux)
      : point.speed
  const ohmsOf = (constant: number): number =>
    resistance ?? (left - constant * flux * speedOf(constant)) / amps / copper

  const measured = ends.constant ?? freeConstant(free, resistance, ohmsOf)
  if (measured !== null) {
    const speed = speedOf(measured)
    const guessed = point.guessed.filter((name) => name !== 'speed')
    const known = { resistance: ohmsOf(measured), constant: measured }
    return {
      ...known,
      point: withPower({ ...point, speed, guessed }, measured * flux * load, noSpeed && resistance === null),
    }
  }
  if (resistance !== null) {
    const back = turning(resistance) / point.speed
    return { resistance, constant: back / flux, point: withPower(point, back * load, false) }
  }
  const constant = point.torque / load / flux
  return { resistance: (left - constant * flux * point.speed) / amps / copper, constant, point }
}

/**
 * Constant from running free: what its ohms take of the volts, and its ohms by the plate where nobody read them.
 * Each is a straight line in the other, so both are solved at once.
 */
function freeConstant(
  free: Ends['free'],
  resistance: number | null,
  ohmsOf: (constant: number) => number,
): number | null {
  const [whole, lessOne] = [free(0), free(1)]
  if (whole === null || lessOne === null) return null
  const perOhm = whole - lessOne
  if (resistance !== null) return whole - perOhm * resistance
  const slope = ohmsOf(2) - ohmsOf(1)
  return (whole - perOhm * (ohmsOf(1) - slope)) / (1 + perOhm * slope)
}

/** The point with its torque; a power that was not printed follows from it, unless speed itself came from power. */
function withPower(point: Point, torque: number, spent: boolean): Point {
  if (!point.guessed.includes('power') || spent || !(torque > 0))
    return { ...point, torque: point.power / point.speed }
  const guessed = point.guessed.filter((name) => name !== 'power')
  return { ...point, torque, power: torque * point.speed, guessed }
}
