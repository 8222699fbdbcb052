// Resistance and constant: what was measured of them, and the other by the plate's voltage equation and torque.
import type { Point } from './point.ts'

/** V, Ω and V·s/rad at 20 °C; copper and flux as ratios of plate temperature to that. */
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
  /** The plate's point; a speed that was not printed then follows from a measured constant. */
  readonly point: Point
}

/** Rounds of resistance and constant by turns; each takes what is left to a tenth or less. */
const ROUNDS = 30

export function tie(ends: Ends): Tied {
  const { point, noLoadAmps, brushDrop, copper, flux, resistance, free } = ends
  const { volts, amps, power } = point
  const left = volts - brushDrop
  const turning = (ohms: number) => left - ohms * copper * amps
  /** Speed at plate load of a motor of this constant: as printed, or what its ohms or plate power leave it. */
  const speedOf = (constant: number): number => {
    if (!point.guessed.includes('speed')) return point.speed
    return (resistance === null ? power / (amps - noLoadAmps) : turning(resistance)) / (constant * flux)
  }
  const ohmsOf = (constant: number): number =>
    resistance ?? (left - constant * flux * speedOf(constant)) / amps / copper

  let measured = ends.constant ?? free(resistance ?? 0)
  if (ends.constant === null && resistance === null)
    for (let n = 0; n < ROUNDS && measured !== null; n++) measured = free(ohmsOf(measured))
  if (measured !== null) {
    const speed = speedOf(measured)
    const guessed = point.guessed.filter((name) => name !== 'speed')
    return {
      resistance: ohmsOf(measured),
      constant: measured,
      point: { ...point, speed, torque: power / speed, guessed },
    }
  }
  if (resistance !== null)
    return { resistance, constant: turning(resistance) / point.speed / flux, point }
  const constant = point.torque / (amps - noLoadAmps) / flux
  return { resistance: ohmsOf(constant), constant, point }
}
