// What the job asks, as marks on the map: each step that cuts, by the steady torque that would heat as much.
import { meanTorque, type Phase } from '../../duty.ts'
import type { Job } from '../../job.ts'
import { friction } from '../../parts/rotor.ts'
import { constantAt, resistanceAt } from '../../parts/winding.ts'
import { assemble, type Plant } from '../../plant.ts'
import { root } from '../../solve/root.ts'
import { lumpiness } from '../../steady/operating.ts'
import { type WarmingDrive, warmingDrive } from './drive.ts'
import { turning } from './heating.ts'

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

/** A motor at work, as its plate has it (PHYSICS.md §3), °C. */
const WARM = { windingC: 75, frameC: 50 } as const
/** Found to this share of the surge. */
const PRECISION = 1e-6

/** Amps at a torque, and what they heat the warm motor with, W: copper, brushes and friction; amps up to `most`. */
function atTorque(plant: Plant, drive: WarmingDrive, torque: number, asked: number, most: number) {
  const { winding, rotor } = plant
  drive.torque = torque
  drive.find(asked, 0, WARM.windingC, WARM.frameC)
  const amps = Math.min(drive.amps, most)
  const perSquare = lumpiness(plant, amps, drive.speed) * resistanceAt(winding, WARM.windingC)
  const heat = perSquare * amps * amps + winding.brushDrop * amps + friction(rotor, drive.speed) * drive.speed
  return { heat, wanted: drive.amps, amps, perSquare, speed: drive.speed }
}

/**
 * The steady torque of the cut, N·m at the spindle, that heats as a step does on average, with its surges at their
 * share of the time. Copper heat goes by the square of the amps: it lies above the mean torque. What turns slows down
 * into a surge and lends it torque, which it takes back afterwards; a surge over the current limit is made up for at
 * the limit.
 */
function heatTorque(plant: Plant, phase: Phase): number {
  const { surge, speed } = phase
  const calm = meanTorque({ ...phase, surge: null })
  if (!surge || surge.torque === 0) return calm
  const drive = warmingDrive(plant)
  const limit = plant.controller.currentLimit
  const at = (torque: number, most = limit) => atTorque(plant, drive, torque, speed * plant.ratio, most)
  const high = calm + surge.torque
  const [below, above] = [at(calm), at(high)]
  // meanTorque knows how many surges a step holds, the last perhaps cut short.
  const share = (meanTorque(phase) - calm) / surge.torque
  const longer = (above.wanted - below.amps) / (above.amps - below.amps)
  const spent = Math.min(1, share * Math.max(1, longer || 1))
  // Amps that follow a step with a lag miss their square by the step times what was lent, A·s, once a surge.
  const lent = (turning(plant) * (below.speed - above.speed)) / constantAt(plant.winding, WARM.frameC)
  const spared = (above.perSquare * (above.amps - below.amps) * lent) / surge.every
  const mean = (1 - spent) * below.heat + spent * above.heat - (longer > 1 ? 0 : spared)
  const over = (torque: number) => at(torque, Infinity).heat - mean
  const [atCalm, atHigh] = [over(calm), over(high)]
  return atCalm < 0 && atHigh > 0 ? root(over, calm, high, atCalm, atHigh, PRECISION * surge.torque) : high
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
