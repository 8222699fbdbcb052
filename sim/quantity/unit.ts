// What a unit is: a symbol, a straight line to SI, the words people type for it.

export type Dimension =
  | 'time'
  | 'angular speed'
  | 'angular acceleration'
  | 'torque'
  | 'power'
  | 'energy'
  | 'length'
  | 'mass'
  | 'force'
  | 'speed'
  | 'feed'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'inductance'
  | 'capacitance'
  | 'motor constant'
  | 'temperature'
  | 'temperature difference'
  | 'share'
  | 'number'
  | 'inertia'
  | 'viscous friction'
  | 'heat capacity'
  | 'thermal conductance'

/** SI value = (n − zero) · times / over; an inverse unit: times / over / n. */
export interface Unit {
  readonly symbol: string
  readonly times: number
  readonly over: number
  readonly zero: number
  readonly inverse: boolean
  /** What people type, in lower case and without spaces, dots or dashes. */
  readonly words: readonly string[]
}

/** A unit of a symbol and its words, apart by blanks. Small decimal units divide rather than multiply, so that 9 mm is 0.009 m to the last digit. */
export const unit = (symbol: string, words: string, factor: Partial<Unit> = {}): Unit => {
  return { symbol, times: 1, over: 1, zero: 0, inverse: false, ...factor, words: words.split(' ') }
}

/** A dimension: what a person calls it, texts to show as examples, its units with the SI one first. */
export interface Entry {
  readonly name: string
  readonly examples: readonly string[]
  readonly units: readonly Unit[]
}

/** SI → the number in a unit. */
export const inUnit = (value: number, { times, over, zero, inverse }: Unit): number =>
  inverse ? times / over / value : (value * over) / times + zero

/** The number in a unit → SI. */
export const toSi = (n: number, { times, over, zero, inverse }: Unit): number =>
  inverse ? times / over / n : ((n - zero) * times) / over
