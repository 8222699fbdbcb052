// What is assumed where nothing was read: each with the band it lies in 8 times in 10, and where that comes from.

export interface Assumption {
  readonly usual: number
  readonly low: number
  readonly high: number
  /** It cannot be more than this, whatever else. */
  readonly most?: number
  readonly about: string
  readonly source: string
}

const PRACTICE = 'common practice, no source'

export const ASSUMPTIONS = {
  noLoadShare: { usual: 0.07, low: 0.04, high: 0.1, about: 'no-load amps over plate amps', source: PRACTICE },
  brushes: { usual: 1, low: 0.5, high: 1.5, about: 'brush drop over its usual value', source: PRACTICE },
  /** −1: 25/25 °C; 0: 75/50 °C; 1: 110/80 °C, winding and frame. */
  plateWarmth: {
    usual: 0,
    low: -1,
    high: 1,
    about: 'how warm the motor was that the plate speaks of',
    source: PRACTICE,
  },
  dryShare: {
    usual: 0.5,
    low: 0.25,
    high: 0.75,
    most: 1,
    about: 'share of no-load friction that does not grow with speed',
    source: PRACTICE,
  },
  efficiency: {
    usual: 0.77,
    low: 0.68,
    high: 0.84,
    about: 'efficiency at plate load',
    source: 'implied by NEC Table 430.247: 0.68 to 0.78; small sheets to 0.84',
  },
  guessedSpeed: {
    usual: 1,
    low: 0.75,
    high: 1.35,
    about: 'speed of a plate that prints none, over 5000 rpm from 60 V and 2800 rpm below',
    source: `range seen on such motors; ${PRACTICE}`,
  },
  continuousShare: {
    usual: 0.6,
    low: 0.5,
    high: 0.7,
    about: 'continuous power over plate power',
    source: PRACTICE,
  },
  ratedFormFactor: {
    usual: 0,
    low: -1,
    high: 1,
    about: 'form factor of the rating, between its bounds',
    source: 'sim/handbook/formFactor',
  },
  massPerKilowatt: {
    usual: 4,
    low: 3,
    high: 6,
    about: 'kg for each kW of plate volts times amps',
    source: PRACTICE,
  },
  rotorInertia: {
    usual: 1,
    low: 0.5,
    high: 2,
    about: 'rotor inertia over 6e-5 times mass to the power 5/3',
    source: PRACTICE,
  },
  heatCapacity: {
    usual: 400,
    low: 330,
    high: 480,
    about: 'heat capacity of a motor, J/(kg K)',
    source: `between copper 385, iron 450 and aluminium 900; ${PRACTICE}`,
  },
  windingMass: {
    usual: 0.25,
    low: 0.18,
    high: 0.33,
    about: 'share of the heat capacity in the winding',
    source: PRACTICE,
  },
  frameCoupling: {
    usual: 1,
    low: 0.65,
    high: 1.5,
    about: 'winding-to-frame conductance over its usual share',
    source: PRACTICE,
  },
} as const satisfies Readonly<Record<string, Assumption>>

export type AssumptionName = keyof typeof ASSUMPTIONS
export type Assumed = Readonly<Record<AssumptionName, number>>

/** Everything at its usual value. */
export const USUAL: Assumed = Object.fromEntries(
  Object.entries(ASSUMPTIONS).map(([name, { usual }]) => [name, usual]),
) as Assumed

/** A value between low, usual and high: at −1, 0 and 1. */
export const between = (low: number, usual: number, high: number, at: number): number =>
  at < 0 ? usual + at * (usual - low) : usual + at * (high - usual)

/** An assumption at `where`: −1 is its low end, 0 its usual value, 1 its high end; further out by the same factor. */
export function assumedAt(name: AssumptionName, where: number): number {
  const { low, usual, high, most = Infinity }: Assumption = ASSUMPTIONS[name]
  const out = Math.abs(where) - 1
  if (out <= 0) return between(low, usual, high, where)
  const end = where < 0 ? low : high
  // What is itself a place between two ends stays between them.
  return usual === 0 ? end : Math.min(most, end * (end / usual) ** out)
}
