// Torque of an induction motor by speed: Kloss's curve up to breakdown, drawn on to the locked rotor.
import type { Induction } from './rival.ts'

/**
 * Slip at breakdown, from slip at full load and breakdown torque over full-load torque (above 1): Kloss's law solved
 * for its summit. M. Kloss, Drehmoment und Schlüpfung des Drehstrommotors, 1901; in any textbook of machines.
 */
export const breakdownSlip = (fullLoadSlip: number, over: number): number =>
  fullLoadSlip * (over + Math.sqrt(over * over - 1))

/** Kloss’s law: torque at a slip over breakdown torque, 2 / (s/sb + sb/s), sb the slip at breakdown. */
export const kloss = (slip: number, atBreakdown: number): number =>
  slip === 0 ? 0 : 2 / (slip / atBreakdown + atBreakdown / slip)

/**
 * Torque at the shaft, N·m, at a shaft speed from standstill to that of the field, rad/s. From there to breakdown it is
 * Kloss's; from breakdown to standstill, where no motor can be held, his curve is bent to end at the locked-rotor
 * torque and is never under pull-up: a drawing between guaranteed points.
 */
export function inductionTorque(motor: Induction, speed: number): number {
  const { synchronous, breakdown, breakdownSlip: summit, locked, pullUp } = motor
  const slip = Math.min(1, Math.max(0, 1 - speed / synchronous))
  const smooth = breakdown * kloss(slip, summit)
  if (slip <= summit) return smooth
  const way = (slip - summit) / (1 - summit)
  const bent = smooth + (locked - breakdown * kloss(1, summit)) * way * way
  return Math.max(bent, Math.min(pullUp, locked))
}
