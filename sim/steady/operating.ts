// The operating point: where a drive settles, in speed, amps and warmth, with a speed and a cut held for good.
import { type Air, airAt, fullFan } from '../parts/heat.ts'
import { type Cutoff, senseRate } from '../parts/cutoff.ts'
import { formFactorSquared } from '../parts/supply.ts'
import { assemble, type Parts, type Plant } from '../plant.ts'
import { balance, leftOver } from './balance.ts'
import { type DriveLimit, driveAt } from './drive.ts'

/** Settled temperatures, °C. */
export interface Warm {
  readonly windingC: number
  readonly frameC: number
  readonly switchC: number
}

export interface OperatingPoint {
  /** Speed got, rad/s at the spindle and at the motor. */
  readonly speed: number
  readonly motor: number
  readonly amps: number
  readonly limit: DriveLimit
  /** Null: nothing settles, it runs away; speed and amps are then those of the cold motor. */
  readonly warm: Warm | null
}

/** What the cutoff comes to feel, °C: its rate is a straight line in its own temperature, and there it is nought. */
export function feltC(cutoff: Cutoff, windingC: number, frameC: number): number {
  const rate = (switchC: number) => senseRate(cutoff, windingC, frameC, switchC)
  return rate(0) / (rate(0) - rate(1))
}

/** Copper heat over that of steady amps, in this plant. */
export const lumpiness = ({ supply, lumpy }: Parts, amps: number, motor: number): number =>
  formFactorSquared(supply, lumpy, amps, motor)

/**
 * Where the drive settles with spindle speed `speed` asked (rad/s) and a cut of `torque` (N·m at the spindle, idle
 * drag on top), started as cold as the air, the cutoff left alone. Source: PHYSICS.md §6.
 */
export function operatingPoint(parts: Parts, speed: number, torque: number): OperatingPoint {
  const plant: Plant = assemble(parts)
  const { winding, rotor, heat, cutoff } = parts
  const fan = fullFan(heat)
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  const at = (windingC: number, frameC: number) =>
    driveAt(plant, speed * plant.ratio, torque, windingC, frameC)
  const found = balance((windingC, frameC) => {
    const { motor, amps } = at(windingC, frameC)
    airAt(heat, fan, motor, air)
    const running = { speed: motor, amps, formFactorSquared: lumpiness(parts, amps, motor) }
    return leftOver(winding, rotor, heat, air, heat.air, running, windingC, frameC)
  }, heat.air)
  const { spindle, motor, amps, limit } = at(found?.windingC ?? heat.air, found?.frameC ?? heat.air)
  const warm = found && { ...found, switchC: feltC(cutoff, found.windingC, found.frameC) }
  return { speed: spindle, motor, amps, limit, warm }
}

/** Speeds looked at below the fastest, and how closely the best of them is found, a share. */
const LOOKS = 48
const CLOSE = 1e-4

/**
 * Greatest spindle speed with nothing to cut, rad/s: cold, when magnets are strongest and it is slowest. That is with
 * the knob fully up, unless the belt lifts off there: then somewhere below.
 */
export function topSpeed(parts: Parts): number {
  const plant = assemble(parts)
  const { air } = parts.heat
  const at = (asked: number) => driveAt(plant, asked, 0, air, air)
  const full = at(Infinity)
  if (full.limit !== 'slip') return full.spindle
  const step = full.motor / LOOKS
  let best = LOOKS
  for (let n = 1; n < LOOKS; n++) if (at(n * step).spindle > at(best * step).spindle) best = n
  let [low, high] = [(best - 1) * step, Math.min(LOOKS, best + 1) * step]
  // One summit between them: a third of the way from either end, the lower side goes.
  while (high - low > CLOSE * full.motor) {
    const [a, b] = [(2 * low + high) / 3, (low + 2 * high) / 3]
    if (at(a).spindle < at(b).spindle) low = a
    else high = b
  }
  return at((low + high) / 2).spindle
}
