// The supply: how much steady DC it can give, and how lumpy its current is.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { FORM_FACTORS } from '../handbook/formFactor.ts'

export const SupplyFields = v.object({
  kind: choiceOr('pwm', {
    label: 'Kind of supply',
    options: {
      battery: 'Battery',
      pwm: 'Chopped DC (PWM)',
      'phase control with choke': 'Phase control with a choke',
      'phase control': 'Phase control, no choke',
      'bare bridge': 'Bare rectifier bridge, no control',
      ac: 'AC straight from the outlet',
    },
    help: 'Look for a coil (choke) in the motor lead beside the controller.',
  }),
  volts: quantity({
    label: 'Most volts to the motor',
    dimension: 'voltage',
    low: '1 V',
    high: '400 V',
    above: 'more than this tool covers',
    help: 'Turn the knob fully up, motor running free, meter on DC at the motor leads.',
  }),
  resistance: quantityOr('0 Ω', {
    label: 'Resistance of leads and source',
    dimension: 'resistance',
    low: '0 Ω',
    high: '100 Ω',
    below: 'less than nothing',
    help: 'Leave at 0 unless the leads are long, or a small transformer or battery feeds it.',
  }),
  formFactor: v.optional(
    quantity({
      label: 'Form factor',
      dimension: 'number',
      low: '1',
      high: '2.5',
      below: 'less than steady current has, which is 1',
      help: 'How lumpy the current is: its heating value over its mean. Printed on some plates.',
    }),
  ),
  lineVolts: quantityOr('120 V', {
    label: 'Outlet volts',
    dimension: 'voltage',
    low: '12 V',
    high: '480 V',
  }),
  breaker: quantityOr('15 A', {
    label: 'Outlet breaker',
    dimension: 'current',
    low: '1 A',
    high: '200 A',
  }),
  earth: choiceOr('not known', {
    label: 'Earth to frame, machine and case',
    options: {
      yes: 'Connected: motor frame, machine and controller case',
      no: 'Not connected',
      'not known': 'Not known',
    },
    help: 'Unplugged: ohms from the frame to the plug’s earth pin.',
  }),
  capacitance: v.optional(
    quantity({
      label: 'Capacitors behind the rectifier',
      dimension: 'capacitance',
      low: '1 µF',
      high: '1 F',
      help: 'Printed on the cans; add up those side by side.',
    }),
  ),
  bleeder: v.optional(
    quantity({
      label: 'Resistor across the capacitors',
      dimension: 'resistance',
      low: '1 Ω',
      high: '10000 kΩ',
      help: 'Tells how long they stay charged. Left open: not known.',
    }),
  ),
})

type Read = v.InferOutput<typeof SupplyFields>
/** An earth that is not said is not known. */
export type Supply = Omit<Read, 'earth'> & Partial<Pick<Read, 'earth'>>

/** Plate amps and speed that scale the lumpy-current law: A and rad/s. */
export interface LumpyScale {
  readonly amps: number
  readonly speed: number
}

/** Mains may be a tenth high (common practice). */
const HIGH_MAINS = 1.1

/** Peak of the mains at their highest, V, from the volts they are called by. */
export const mainsPeak = (lineVolts: number): number => Math.SQRT2 * HIGH_MAINS * lineVolts

/**
 * Volts that may stand between a wire of the motor and earth, V: a battery's own; of what is rectified from the mains
 * their peak at a tenth over, whatever the knob says. A transformer inside would make it less; nobody knows of one.
 */
export const liveVolts = ({ kind, volts, lineVolts }: Supply): number =>
  kind === 'battery' ? volts : Math.max(volts, mainsPeak(lineVolts))

/** Most volts the supply can hold at a current i (A). Of AC the mean is nothing: magnets make no torque of it. V. */
export const ceiling = (supply: Supply, i: number): number =>
  supply.kind === 'ac' ? 0 : Math.max(0, supply.volts - supply.resistance * i)

/**
 * Form factor squared: copper heat over that of steady current of the same mean.
 * Constant, but for phase control without a choke, where light and slow running is lumpier:
 * FF² = 1 + (FFp² − 1)(Ip/max(i, Ip/5))^0.7 · min(1, 1.1 ω/(ω + 0.07 ωp)), within 5 % of a simulated bridge.
 * i in A, w in rad/s.
 */
export function formFactorSquared(supply: Supply, plate: LumpyScale | null, i: number, w: number): number {
  const printed = supply.formFactor ?? FORM_FACTORS[supply.kind].value
  const full = printed * printed
  if (supply.kind !== 'phase control' || plate === null) return full
  const light = (plate.amps / Math.max(i, plate.amps / 5)) ** 0.7
  const slow = Math.min(1, (1.1 * w) / (w + 0.07 * plate.speed))
  return 1 + (full - 1) * light * Math.max(0, slow)
}

/** Efficiency and power factor of a capacitor-input drive at its plug (common practice, no source; PHYSICS.md §9). */
const DRIVE_EFFICIENCY = 0.95
const DRIVE_POWER_FACTOR = 0.65

/**
 * Amps drawn from the outlet (or battery) when the motor takes `power` W at mean current i (A).
 * Phase control draws the motor's own lumpy current: FF·i, an upper bound. A.
 */
export function supplyAmps(supply: Supply, power: number, i: number, formFactor: number): number {
  if (supply.kind === 'battery') return Math.max(0, power) / supply.volts
  if (supply.kind === 'pwm')
    return Math.max(0, power) / (DRIVE_EFFICIENCY * DRIVE_POWER_FACTOR * supply.lineVolts)
  return formFactor * i
}
