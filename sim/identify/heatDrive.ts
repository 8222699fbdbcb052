// What warms and cools a logged motor, reading by reading: copper, brush and friction heat, and the air it is given.
import { COPPER } from '../handbook/materials.ts'
import { type Air, airAt, fullFan, type Heat } from '../parts/heat.ts'
import { friction, type Rotor } from '../parts/rotor.ts'
import { formFactorSquared, type LumpyScale, type Supply } from '../parts/supply.ts'
import { brushVolts, constantAt, resistanceAt, type Winding } from '../parts/winding.ts'
import type { Log } from './log.ts'

/** The motor that was logged: what its heat is worked out from. */
export interface LoggedMotor {
  readonly winding: Winding
  readonly rotor: Rotor
  readonly heat: Heat
  readonly supply: Supply
  readonly lumpy: LumpyScale | null
}

/** One value a reading. Shares multiply a conductance: still air and full fan, of the winding and of the frame. */
export interface Drive {
  readonly time: Float64Array
  /** Copper heat for each kelvin over −235 °C, W/K: copper heat is this times (235 + Tw). */
  readonly copper: Float64Array
  readonly brushes: Float64Array
  readonly friction: Float64Array
  readonly windingStill: Float64Array
  readonly windingFan: Float64Array
  readonly frameStill: Float64Array
  readonly frameFan: Float64Array
  readonly running: Uint8Array
  /** Motor speed as used, rad/s. */
  readonly speed: Float64Array
}

/** Amps under this share of the most count as switched off. */
const OFF = 0.05

/** Which readings were taken running. */
export function runningIn({ amps }: Log): Uint8Array {
  const most = amps.reduce((top, value) => Math.max(top, value || 0), 0)
  return Uint8Array.from(amps, (value) => (value > OFF * most ? 1 : 0))
}

/**
 * Motor speed at each reading, rad/s: as logged, else from the volts it makes by turning, else as held; at rest
 * nothing. Null where a running reading leaves it open.
 */
export function speedsIn(log: Log, { winding }: LoggedMotor, held: number | undefined): Float64Array | null {
  const running = runningIn(log)
  const speed = new Float64Array(log.rows)
  let last = Number.NaN
  for (let at = 0; at < log.rows; at++) {
    if (!running[at]) continue
    const own = log.speed[at]
    const volts = log.volts[at]
    if (!Number.isNaN(own)) last = Math.abs(own)
    else if (!Number.isNaN(volts)) {
      const frameC = Number.isNaN(log.frameC[at]) ? 50 : log.frameC[at]
      const i = log.amps[at]
      last =
        (volts - brushVolts(winding, i) - resistanceAt(winding, frameC) * i) / constantAt(winding, frameC)
      last = Math.max(0, last)
    } else if (Number.isNaN(last) || log.speed.every(Number.isNaN)) last = held ?? last
    if (Number.isNaN(last)) return null
    speed[at] = last
  }
  return speed
}

/** The drive of a log. Laws of PHYSICS.md §1, each asked of its part. */
export function driveOf(log: Log, motor: LoggedMotor, speed: Float64Array): Drive {
  const { winding, rotor, heat, supply, lumpy } = motor
  const { rows, amps } = log
  const column = () => new Float64Array(rows)
  const drive: Drive = {
    time: log.time,
    copper: column(),
    brushes: column(),
    friction: column(),
    windingStill: column(),
    windingFan: column(),
    frameStill: column(),
    frameFan: column(),
    running: runningIn(log),
    speed,
  }
  const full = fullFan(heat)
  const still = { ...heat, windingToAir: 1, frameToAir: 1, windingToFanAir: 0, frameToFanAir: 0 }
  const fan = { ...heat, windingToAir: 0, frameToAir: 0, windingToFanAir: 1, frameToFanAir: 1 }
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  for (let at = 0; at < rows; at++) {
    const i = drive.running[at] ? amps[at] : 0
    const w = speed[at]
    drive.copper[at] =
      (formFactorSquared(supply, lumpy, i, w) * winding.resistance * i * i) / (COPPER.zeroC + 20)
    drive.brushes[at] = winding.brushDrop * i
    drive.friction[at] = friction(rotor, w) * w
    airAt(still, full, w, air)
    drive.windingStill[at] = air.windingToAir
    drive.frameStill[at] = air.frameToAir
    airAt(fan, full, w, air)
    drive.windingFan[at] = air.windingToAir
    drive.frameFan[at] = air.frameToAir
  }
  return drive
}
