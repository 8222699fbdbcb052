// Steady questions, without time stepping: where a motor settles at a held speed and torque.
import { type Air, airAt, fullFan, type Heat } from './parts/heat.ts'
import { friction, type Rotor } from './parts/rotor.ts'
import { constantAt, type Winding } from './parts/winding.ts'
import { balance, type Left, leftOver } from './steady/balance.ts'

/** What is held: motor speed (rad/s), torque at the motor's shaft (N·m), form factor, air (°C). */
export interface Held {
  readonly speed: number
  readonly torque: number
  readonly formFactor: number
  readonly air: number
}

export interface Settled {
  readonly windingC: number
  readonly frameC: number
  readonly amps: number
}

/** Current that holds the torque with the frame at a temperature, A. */
const ampsAt = (winding: Winding, rotor: Rotor, { torque, speed }: Held, frameC: number): number =>
  (torque + friction(rotor, speed)) / constantAt(winding, frameC)

/** Heat left over in winding and frame, W, by their temperatures: PHYSICS.md §1's balances. */
export function heatLeft(
  winding: Winding,
  rotor: Rotor,
  heat: Heat,
  held: Held,
): (windingC: number, frameC: number) => Left {
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  airAt(heat, fullFan(heat), held.speed, air)
  const formFactorSquared = held.formFactor ** 2
  return (windingC, frameC) => {
    const running = { speed: held.speed, amps: ampsAt(winding, rotor, held, frameC), formFactorSquared }
    return leftOver(winding, rotor, heat, air, held.air, running, windingC, frameC)
  }
}

/**
 * Temperatures at which heat in equals heat out, from a motor as cold as the air. Null where copper heat grows
 * faster than it is carried away, or nothing settles under 400 °C.
 */
export function settle(winding: Winding, rotor: Rotor, heat: Heat, held: Held): Settled | null {
  const found = balance(heatLeft(winding, rotor, heat, held), held.air)
  return found && { ...found, amps: ampsAt(winding, rotor, held, found.frameC) }
}
