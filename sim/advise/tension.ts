// A slack belt: how tight it would have to be, and whether belt and bearing stand that.
import { shaftPull } from '../belting/grip.ts'
import { smallWrap } from '../belting/geometry.ts'
import { greatestShaftPull, USUAL_BEARING } from '../handbook/bearing.ts'
import { slipStages, stagesOf } from '../parts/belt.ts'
import { BELT_SECTIONS } from '../handbook/beltSections.ts'
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
  if (!slip || belt.section === undefined || belt.section === 'not said') return null
  const { stands, ribs } = BELT_SECTIONS[belt.section]
  // One figure says what all stages carry: the one that lifts off most decides.
  const carries = Math.max(
    ...slip.map(
      ({ grip, lever, mass, perSpeed }) =>
        IN_HAND * work.peak + mass * (perSpeed * motorSpeed) ** 2 * grip * lever,
    ),
  )
  const stages = stagesOf(belt).map(({ driving, driven, centres, turns }, stage) => {
    const { grip, lever } = slip[stage]
    const strand = carries / (grip * lever)
    return {
      strand,
      tight: strand + work.mean / lever / 2,
      shafts: shaftPull(strand, smallWrap(driving, driven, centres)),
      most: greatestShaftPull(USUAL_BEARING, motorSpeed * turns),
    }
  })
  if (stages.some(({ tight, shafts, most }) => tight > stands * (belt.ribs ?? ribs) || shafts > most))
    return null
  const { strand, shafts } = stages.reduce((a, b) => (b.shafts > a.shafts ? b : a))
  return { carries, strand, shafts }
}

/** The belt tightened, where belt and bearing stand it. */
export function tightened(one: Case): Pulled | null {
  const wanted = tension(one)
  if (!wanted) return null
  const carries = writeQuantity(Number(wanted.carries.toPrecision(3)), 'N·m')
  return { name: 'Belt tightened', changes: { 'belt.carries': carries } }
}
