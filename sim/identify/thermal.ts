// The heat numbers from mass and rating: a usual pattern, scaled until the continuous rating settles at the class rise.
import { RATED_FORM_FACTORS } from '../handbook/formFactor.ts'
import type { Heat } from '../parts/heat.ts'
import type { Rotor } from '../parts/rotor.ts'
import type { Winding } from '../parts/winding.ts'
import { root } from '../solve/root.ts'
import { settle } from '../steady.ts'
import { type Assumed, between } from './assume.ts'
import type { MotorReadings } from './motor.ts'
import { warmUp } from './warmUp.ts'

/** Conductances of a motor of scale 1, W/K (common practice, no source). */
const PATTERN = {
  windingToFrame: 1.5,
  windingToAir: 0.3,
  windingToFanAir: 3.5,
  frameToAir: 1.2,
  frameToFanAir: 0.6,
}
/** Scale of a usual motor of this mass; and how far a sane one lies from it. */
const usualScale = (mass: number): number => 0.25 * mass ** (2 / 3)
export const SANE = { low: 0.6, high: 1.6 }
/** Plate volts of industrial motors, rated on unfiltered rectified current. V */
const INDUSTRIAL = [
  [85, 95],
  [170, 190],
] as const

export interface Rating {
  readonly winding: Winding
  readonly rotor: Rotor
  /** Held all day, or for as long as the plate says: rad/s, N·m. */
  readonly speed: number
  readonly torque: number
  readonly volts: number
  readonly mass: number
  readonly fanSpeed: number
  /** Winding limit and air of the rating, °C. */
  readonly limitC: number
  readonly air: number
}

export interface ThermalScale {
  readonly numbers: Pick<
    Heat,
    | 'windingCapacity'
    | 'frameCapacity'
    | 'windingToFrame'
    | 'windingToAir'
    | 'windingToFanAir'
    | 'frameToAir'
    | 'frameToFanAir'
  >
  /** Scale the rating asks for, and the sane one that is used: they differ where the continuous line does not fit. */
  readonly asked: number
  readonly used: number
  readonly usual: number
  readonly formFactor: number
}

function ratedFormFactor(printed: number | undefined, volts: number, at: number): number {
  if (printed !== undefined) return printed
  const row = INDUSTRIAL.some(([low, high]) => volts >= low && volts <= high)
    ? RATED_FORM_FACTORS.industrial
    : RATED_FORM_FACTORS.other
  return between(row.low, row.value, row.high, at)
}

/** The scale and the heat numbers. */
export function scaleOf(readings: MotorReadings, rating: Rating, assume: Assumed): ThermalScale {
  const { plate } = readings
  const formFactor = ratedFormFactor(plate.formFactor, rating.volts, assume.ratedFormFactor)
  const capacity = assume.heatCapacity * rating.mass
  const numbers = (scale: number): ThermalScale['numbers'] => ({
    windingCapacity: assume.windingMass * capacity,
    frameCapacity: (1 - assume.windingMass) * capacity,
    windingToFrame: PATTERN.windingToFrame * scale * assume.frameCoupling,
    windingToAir: PATTERN.windingToAir * scale,
    windingToFanAir: PATTERN.windingToFanAir * scale,
    frameToAir: PATTERN.frameToAir * scale,
    frameToFanAir: PATTERN.frameToFanAir * scale,
  })
  const heat = (scale: number): Heat => ({
    ...numbers(scale),
    ...readings.heat,
    cooling: plate.soldWith,
    air: rating.air,
    airflow: 1,
    airPath: 1,
    stir: 0.2,
    fanSpeed: rating.fanSpeed,
  })
  const held = { speed: rating.speed, torque: rating.torque, formFactor, air: rating.air }
  /** Winding over its limit at the rating, K; a runaway counts as far over. */
  const over = (scale: number): number => {
    const windingC =
      plate.continuousFor === undefined
        ? settle(rating.winding, rating.rotor, heat(scale), held)?.windingC
        : warmUp(rating.winding, rating.rotor, heat(scale), held, plate.continuousFor)
    return Math.min((windingC ?? Infinity) - rating.limitC, 1000)
  }
  const usual = usualScale(rating.mass)
  const asked = usual / shrinkAsked((shrink) => over(usual / shrink))
  const used = Math.min(Math.max(asked, SANE.low * usual), SANE.high * usual)
  return { numbers: numbers(used), asked, used, usual, formFactor }
}

/** How far the usual scale is looked at, larger and smaller, and how closely. */
const FARTHEST = 64
const CLOSE = 1e-8

/**
 * What the usual scale is divided by where the rating just keeps its limit; the farthest looked at where that lies
 * beyond. The rise goes nearly straight with it, but far out everything runs away: so up by factors from the coolest.
 */
function shrinkAsked(over: (shrink: number) => number): number {
  let low = 1 / FARTHEST
  let atLow = over(low)
  if (!(atLow < 0)) return low
  for (let high = 4 * low; high <= FARTHEST; high *= 4) {
    const atHigh = over(high)
    if (atHigh >= 0) return root(over, low, high, atLow, atHigh, CLOSE)
    low = high
    atLow = atHigh
  }
  return FARTHEST
}
