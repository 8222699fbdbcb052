// How long a drive that nothing brakes takes to stand still.
import { ratio } from '../parts/belt.ts'
import type { Parts } from '../plant.ts'

/**
 * Seconds from a spindle speed (rad/s) to standstill with the power off and nothing cut: inertia J of all that turns,
 * at the motor's shaft, against a steady drag c and one b that grows with speed. J dω/dt = −c − b ω gives
 * t = J/b · ln(1 + b ω/c), and J ω/c where b is nothing. Infinite where nothing drags. Closed form; the belt taken as tight.
 */
export function stopTime({ rotor, belt, machine }: Parts, spindle: number): number {
  const n = ratio(belt)
  const through = 1 / (n * belt.efficiency)
  const inertia = rotor.inertia + rotor.flywheel + machine.inertia / (n * n)
  const steady = rotor.dryFriction + machine.drag * through
  const growing = rotor.windage + (machine.windage * through) / n
  const speed = spindle * n
  if (speed <= 0) return 0
  if (steady <= 0) return Number.POSITIVE_INFINITY
  return growing * speed < 1e-9 * steady
    ? (inertia * speed) / steady
    : (inertia / growing) * Math.log1p((growing * speed) / steady)
}
