// A slack belt: how tight it would have to be, and whether belt and bearing stand that.
import { beltFaults, builtStages } from '../drive/limits.ts'
import { greatestShaftPull, USUAL_BEARING } from '../handbook/bearing.ts'
import { type Belt, slipStages, stagesOf } from '../parts/belt.ts'
import { writeQuantity } from '../quantity.ts'
import type { Case } from './case.ts'
import type { Pulled } from './levers.ts'

/** A belt is fitted for half as much again as the worst that is asked (PHYSICS.md §4). */
const IN_HAND = 1.5

/** Tension that carries the worst of the work with something in hand. */
export interface Tension {
  /** Torque at the spindle that it then carries, standing still, N·m. */
  readonly carries: number
  /** Of the hardest pulled stage: pull of each strand, and of both on its shafts, N. */
  readonly strand: number
  readonly shafts: number
}

/** The tension a slipping belt wants; null where it may not slip, or belt or bearing would not stand it. */
export function tension({ job, work, motorSpeed }: Case): Tension | null {
  const { belt } = job.parts
  const slip = slipStages(belt)
  if (!slip) return null
  // One figure says what all stages carry: the one that lifts off most decides.
  const carries = Math.max(
    ...slip.map(
      ({ grip, lever, mass, perSpeed }) =>
        IN_HAND * work.peak + mass * (perSpeed * motorSpeed) ** 2 * grip * lever,
    ),
  )
  const tight: Belt = { ...belt, carries, carriesAt: undefined }
  const turns = stagesOf(tight).map((stage) => stage.turns)
  const strands = slipStages(tight)!.map(({ installed }) => installed)
  const pulls = builtStages(tight, motorSpeed).map(({ pull }) => pull!)
  const isTooMuch =
    beltFaults(tight, motorSpeed, work.mean).some(({ kind }) => kind === 'load') ||
    pulls.some((pull, stage) => pull > greatestShaftPull(USUAL_BEARING, motorSpeed * turns[stage]))
  if (isTooMuch) return null
  const hardest = pulls.indexOf(Math.max(...pulls))
  return { carries, strand: strands[hardest], shafts: pulls[hardest] }
}

/** The belt tightened, where belt and bearing stand it. */
export function tightened(one: Case): Pulled | null {
  const wanted = tension(one)
  if (!wanted) return null
  const carries = writeQuantity(Number(wanted.carries.toPrecision(3)), 'N·m')
  return { name: 'Belt tightened', changes: { 'belt.carries': carries } }
}
