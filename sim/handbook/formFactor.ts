// Form factors: heating value of a current over its mean, by what supplies it.
import type { Sourced } from './source.ts'

interface FormFactor extends Sourced {
  readonly value: number
  readonly low: number
  readonly high: number
}

const DRIVE = 'drive handbook: filtered 1.05 to 1.10, PWM at most 1.05, unfiltered phase control about 1.37'

/** Usual form factor of each kind of supply. */
export const FORM_FACTORS = {
  battery: { value: 1, low: 1, high: 1, source: 'steady current, by definition', standing: 'read' },
  pwm: { value: 1.05, low: 1, high: 1.05, source: DRIVE, standing: 'read' },
  'phase control with choke': { value: 1.07, low: 1.05, high: 1.1, source: DRIVE, standing: 'read' },
  'phase control': {
    value: 1.42,
    low: 1.37,
    high: 1.5,
    source: 'fit to a simulated bridge with freewheel diode, L/R 4–5 ms, at plate load',
    standing: 'read',
  },
  'bare bridge': {
    value: 1.37,
    low: 1.11,
    high: 1.5,
    source: 'drive handbook: unfiltered phase control at full speed about 1.37, which is a bridge fully on',
    standing: 'read',
  },
  // A motor that does not turn: the heat of its AC is not followed.
  ac: { value: 1, low: 1, high: 1, source: 'AC puts no steady current through it', standing: 'read' },
} as const satisfies Readonly<Record<string, FormFactor>>

/** Form factor a motor was rated at: industrial 90 and 180 V motors, and all others. */
export const RATED_FORM_FACTORS = {
  industrial: {
    value: 1.4,
    low: 1,
    high: 1.4,
    source: 'rating point of 90/180 V motors, from memory',
    standing: 'memory',
  },
  other: { value: 1.05, low: 1, high: 1.4, source: DRIVE, standing: 'read' },
} as const satisfies Readonly<Record<string, FormFactor>>
