// A body of one node in the plant, as the textbooks have it: heat straight in the torque, a fan that may stop with it.
import type { Phase } from '../../../sim/duty.ts'
import type { Job } from '../../../sim/job.ts'
import { type Changes, partsWith } from '../physics/lab.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { shortTimeTorque } from '../../../sim/steady/shortTime.ts'

/** Motor speed, rad/s; volts lost at the brushes, and the motor's constant at 20 °C. */
export const SPEED = 300
export const DROP = 10
export const CONSTANT = 0.3
/** W/K. */
export const USUAL = 20
/** Class B: the winding's limit, °C. */
export const LIMIT_C = 120

export interface Body {
  /** Time constants running and at rest, s. */
  readonly running: number
  readonly resting?: number
  /** Conductance to the air while it runs, W/K; else the usual. */
  readonly conductance?: number
  readonly air?: number
  /** Heat that does not go with the load, W. */
  readonly constantHeat?: number
}

/**
 * The body is the winding; the frame stays as the air. All heat that goes with the load is the brushes', which is
 * straight in the amps and they in the torque: so the torque here stands for the square of a textbook's load.
 */
export function body({
  running,
  resting = running,
  conductance = USUAL,
  air = 20,
  constantHeat = 0,
}: Body): Changes {
  const still = (conductance * running) / resting
  return {
    // A form factor of nothing: copper makes no heat.
    supply: { volts: 1e4, formFactor: 0 },
    controller: { holds: 'speed feedback', response: 0.02, currentLimit: 1e4 },
    winding: { constant: CONSTANT, inductance: 1e-5, magnets: 'AlNiCo', brushDrop: DROP },
    // What friction costs in amps, brushes turn into heat too.
    rotor: { inertia: 0.01, dryFriction: constantHeat / (SPEED + DROP / CONSTANT) },
    heat: {
      air,
      cooling: 'shaft fan',
      fanSpeed: SPEED,
      brushShare: 1,
      frictionShare: 1,
      windingCapacity: conductance * running,
      windingToAir: still,
      windingToFanAir: conductance - still,
      frameCapacity: 1e8,
      frameToAir: 1e6,
    },
  }
}

export const phase = (seconds: number, torque: number, speed = SPEED): Phase => ({
  name: speed > 0 ? 'load' : 'rest',
  seconds,
  speed,
  cut: { kind: 'torque', torque },
  surge: null,
})

/** A rest in which the load brings it to a stop within a second. */
export const rest = (seconds: number): Phase => phase(seconds, 3, 0)

export const bodyJob = (of: Body, phases: readonly Phase[], startC = of.air ?? 20): Job => ({
  parts: partsWith(body(of)),
  plate: {},
  duty: { phases, seconds: phases.reduce((sum, { seconds }) => sum + seconds, 0), startC },
  accuracy: 'precise',
})

/** Torque whose heat is so many W, the frame at 20 °C. */
export const torqueFor = (watts: number): number => (CONSTANT * watts) / DROP

/** Rise the class leaves over air of 20 °C, K. */
export const RISE = LIMIT_C - 20

/** A body of one time constant with so many times its copper heat as constant heat, at the load it stands all day. */
export const withConstant = (running: number, share: number): Body => ({
  running,
  constantHeat: (share * USUAL * RISE) / (1 + share),
})

/** Load over the continuous load that a body stands for a while from cold: torque here is the square of the load. */
export function shortTimeFactor(of: Body, seconds: number): number {
  const { parts } = bodyJob(of, [phase(1, 1)])
  return Math.sqrt(shortTimeTorque(parts, SPEED, seconds).torque / allDayTorque(parts, SPEED).torque)
}
