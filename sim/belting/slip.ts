// Slip: a belt carries torque by creeping a little, and no more than its grip allows.

/** Slip at which the torque is three quarters of capacity; creep is 1 % at half capacity (common practice). */
const CREEP = 0.0182
/** Under this spindle speed slip is measured against it instead of the pulley's own, rad/s. */
const SLOW = 1

/** One stage as the plant needs it. */
export interface SlipStage {
  /** Greatest difference of pulls over the installed pull less centrifugal: 2(E − 1)/(E + 1). */
  readonly grip: number
  /** Installed pull of each strand, N, and mass of the belt, kg/m. */
  readonly installed: number
  readonly mass: number
  /** Belt speed for a motor speed of 1 rad/s, m/s. */
  readonly perSpeed: number
  /** Torque at the spindle for 1 N of pull, N·m. */
  readonly lever: number
}

/** Torque at the spindle that the weakest stage carries at motor speed w (rad/s), N·m: fast belts lift off. */
export function slipCapacity(stages: readonly SlipStage[], w: number): number {
  let least = Infinity
  for (const { grip, installed, mass, perSpeed, lever } of stages) {
    const v = perSpeed * w
    least = Math.min(least, Math.max(0, installed - mass * v * v) * grip * lever)
  }
  return least
}

/** Torque through the belt at the spindle, N·m: pulley and spindle speeds in rad/s, both at the spindle's end. */
export const slipTorque = (capacity: number, pulley: number, spindle: number): number =>
  capacity * Math.tanh((pulley - spindle) / (Math.max(pulley, SLOW) * CREEP))

/** A stage that just carries `torque` (N·m at the spindle) with the motor at `speed` (rad/s; 0: standing still). */
export function slipStage(
  capstan: number,
  mass: number,
  perSpeed: number,
  lever: number,
  torque: number,
  speed = 0,
): SlipStage {
  const grip = (2 * (capstan - 1)) / (capstan + 1)
  return { grip, mass, perSpeed, lever, installed: torque / (grip * lever) + mass * (perSpeed * speed) ** 2 }
}
