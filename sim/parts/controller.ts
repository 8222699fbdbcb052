// The speed controller: what volts it wishes for, how fast it ramps, and the current it will not pass.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'

export const ControllerFields = v.object({
  holds: choiceOr('sag compensation', {
    label: 'How it holds speed',
    options: {
      'fixed voltage': 'Fixed voltage: the knob sets volts',
      'sag compensation': 'Sag compensation: more volts with more amps',
      'speed feedback': 'Speed feedback: a sensor on the shaft',
    },
  }),
  compensation: quantityOr('80 %', {
    label: 'Sag compensation',
    dimension: 'share',
    low: '0 %',
    high: '150 %',
    help: 'Share of the cold winding resistance that it makes up for. Above 90 % it hunts.',
  }),
  currentLimit: quantity({
    label: 'Current limit',
    dimension: 'current',
    low: '0.05 A',
    high: '500 A',
    below: 'too little for a motor',
    help: 'The limit printed for the controller, or set on its trimmer.',
  }),
  ramp: quantityOr('900 rpm/s', {
    label: 'Soft start',
    dimension: 'angular acceleration',
    low: '1 rpm/s',
    high: '100000 rpm/s',
    below: 'too slow to ever arrive',
    help: 'How much motor speed it adds each second, and takes off when the knob is turned down.',
  }),
  response: quantityOr('0.1 s', {
    label: 'Response of speed feedback',
    dimension: 'time',
    low: '0.02 s',
    high: '5 s',
  }),
})

export type Controller = v.InferOutput<typeof ControllerFields>

/** Time constant with which the limiter moves the current. s */
const LIMITER = 0.002
/** Time constant that unwinds the integrator in saturation. s */
export const TRACKING = 0.1

/** Speed-feedback gains: proportional V·s/rad, integral V/rad. */
export interface Gains {
  readonly proportional: number
  readonly integral: number
}

/**
 * Gains that close the speed loop in the response time τcl on a motor of mechanical time constant τm = R J/k²:
 * Kp = k τm/τcl, Ki = k/τcl. R in Ω, k in V·s/rad, J in kg·m² at the motor.
 */
export function gains(controller: Controller, resistance: number, constant: number, inertia: number): Gains {
  const mechanical = (resistance * inertia) / (constant * constant)
  return {
    proportional: (constant * mechanical) / controller.response,
    integral: constant / controller.response,
  }
}

/**
 * Volts the controller would like to give. V.
 * asked, w: rad/s; i: A; x: integrator, V; k20, r20: cold motor constant and resistance; brushes: V.
 */
export function wish(
  controller: Controller,
  gain: Gains,
  asked: number,
  w: number,
  i: number,
  x: number,
  k20: number,
  r20: number,
  brushes: number,
): number {
  if (controller.holds === 'fixed voltage') return k20 * asked
  if (controller.holds === 'sag compensation')
    return k20 * asked + brushes + controller.compensation * r20 * i
  return k20 * asked + gain.proportional * (asked - w) + x
}

/**
 * Rate of the current once the limiter has had its say: `free` (A/s) clipped so that the current stays within
 * zero and the limit. The drive cannot brake. Off: the current dies away. A/s.
 */
export function limitedRate(controller: Controller, on: boolean, free: number, i: number): number {
  const down = -i / LIMITER
  if (!on) return down
  return Math.min(Math.max(free, down), (controller.currentLimit - i) / LIMITER)
}
