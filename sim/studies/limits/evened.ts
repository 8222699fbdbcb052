// A cut without its surges: a steady torque that heats about as much.
import { meanTorque, type Phase } from '../../duty.ts'

/** The phase with its surges evened out to the torque whose square is their mean, N·m at the spindle. */
export function evened(phase: Phase): Phase {
  const { surge } = phase
  if (surge === null) return phase
  const calm = meanTorque({ ...phase, surge: null })
  const share = Math.min(1, surge.lasts / surge.every)
  const torque = Math.sqrt((1 - share) * calm ** 2 + share * (calm + surge.torque) ** 2)
  return { ...phase, cut: { kind: 'torque', torque }, surge: null }
}
