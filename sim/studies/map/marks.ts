// What the job asks, as marks on the map: each step that cuts, by the steady torque that would heat as much.
import { meanTorque, type Phase } from '../../duty.ts'
import type { Job } from '../../job.ts'
import { idleTorque } from '../../parts/machine.ts'
import { friction } from '../../parts/rotor.ts'
import { assemble, type Plant } from '../../plant.ts'

export interface MapMark {
  /** Number of the step in the duty, from 0, and its name. */
  readonly phase: number
  readonly name: string
  /** Spindle speed asked, rad/s. */
  readonly speed: number
  /** Steady torque that heats as the step does on average, N·m of the cut at the spindle. */
  readonly torque: number
  /** The cut without and with its surges, N·m; equal where it has none. */
  readonly low: number
  readonly high: number
}

/** Most steps that are marked: the hardest. */
const MOST_MARKS = 3

/**
 * The steady torque of the cut, N·m at the spindle, that heats as a step does: copper heat goes by the square of the
 * amps, and amps by the cut, the drag and the motor's own friction together. Surges count in full at their share of
 * the step's time.
 */
export function heatTorque(plant: Plant, phase: Phase): number {
  const { ratio, belt, rotor, machine } = plant
  const { surge, speed } = phase
  const calm = meanTorque({ ...phase, surge: null })
  if (!surge) return calm
  const own = idleTorque(machine, speed) + friction(rotor, speed * ratio) * ratio * belt.efficiency
  // meanTorque knows how many surges a step holds, the last perhaps cut short.
  const share = (meanTorque(phase) - calm) / surge.torque || 0
  return Math.sqrt((1 - share) * (calm + own) ** 2 + share * (calm + surge.torque + own) ** 2) - own
}

/** The job's marks, the hardest first. */
export function mapMarks(job: Job): readonly MapMark[] {
  const plant = assemble(job.parts)
  const marks = new Map<string, MapMark>()
  job.duty.phases.forEach((phase, n) => {
    const calm = meanTorque({ ...phase, surge: null })
    const high = calm + (phase.surge?.torque ?? 0)
    if (!(phase.speed > 0) || !(high > 0)) return
    const name = phase.name.trim() || `step ${n + 1}`
    const key = JSON.stringify([name, phase.speed, calm, phase.surge])
    if (marks.has(key)) return
    marks.set(key, { phase: n, name, speed: phase.speed, torque: heatTorque(plant, phase), low: calm, high })
  })
  return [...marks.values()].sort((a, b) => b.torque - a.torque).slice(0, MOST_MARKS)
}
