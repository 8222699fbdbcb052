// The plate as one running point: volts, amps, power out, speed; what is not printed is estimated from the rest.
import type { Plate } from '../parts/plate.ts'
import type { Assumed } from './assume.ts'

/** V, A, W, rad/s, N·m; and which of them were not printed. */
export interface Point {
  readonly volts: number
  readonly amps: number
  readonly power: number
  readonly speed: number
  readonly torque: number
  readonly guessed: readonly ('volts' | 'amps' | 'power' | 'speed')[]
}

/** From this voltage up plates speak of exercise-machine motors, below of scooter and wheelchair motors. V */
const HIGH_VOLTS = 60
/** Usual speeds of the two kinds, rad/s (5000 and 2800 rpm; range seen on plates, common practice). */
const USUAL_SPEED = { high: (5000 * Math.PI) / 30, low: (2800 * Math.PI) / 30 }

/** The running point, or null where the plate says too little: it takes two of volts, amps and power. */
export function pointOf(plate: Plate, assume: Assumed): Point | null {
  const { efficiency } = assume
  const guessed: Point['guessed'][number][] = []
  let { volts, amps, speed } = plate
  // Watts printed beside horsepower are the soberer of the two.
  let power = plate.printedWatts ?? plate.power
  if (power === undefined && volts !== undefined && amps !== undefined) {
    power = volts * amps * efficiency
    guessed.push('power')
  }
  if (amps === undefined && volts !== undefined && power !== undefined) {
    amps = power / (volts * efficiency)
    guessed.push('amps')
  }
  if (volts === undefined && amps !== undefined && power !== undefined) {
    volts = power / (amps * efficiency)
    guessed.push('volts')
  }
  if (volts === undefined || amps === undefined || power === undefined) return null
  if (speed === undefined) {
    speed = (volts >= HIGH_VOLTS ? USUAL_SPEED.high : USUAL_SPEED.low) * assume.guessedSpeed
    guessed.push('speed')
  }
  return { volts, amps, power, speed, torque: power / speed, guessed }
}
