// What a belt itself stands: wrap, smallest pulley, belt and rim speed, room between the shafts, pull on them.
import { beltLength, beltSpeed, smallWrap } from '../belting/geometry.ts'
import { shaftPull } from '../belting/grip.ts'
import { BALANCED_SPEED, CAST_RIM_SPEED, LEAST_WRAP } from '../handbook/beltSections.ts'
import { type Belt, sectionOf, type Stage, slipStages, stagesOf } from '../parts/belt.ts'

export type BeltLimit =
  | 'touch'
  | 'wrap'
  | 'small driving'
  | 'small driven'
  | 'load'
  | 'balance'
  | 'rim'
  | 'steep'

/** A limit that is passed: in which stage, by what, and what would do (m, rad, N, m/s, or a ratio). */
export interface BeltFault {
  readonly kind: BeltLimit
  readonly stage: number
  readonly value: number
  readonly limit: number
}

/** A stage as it would be built: m, rad, m/s, N; pull on each shaft null where no belt section is said. */
export interface BuiltStage {
  readonly driving: number
  readonly driven: number
  readonly centres: number
  readonly length: number
  readonly wrap: number
  readonly speed: number
  readonly pull: number | null
}

/** One stage does about this much before the small pulley gets too small or wraps too little (common practice). */
export const STEEPEST = 6
/** Pulleys need this much between their rims, m (common practice). */
const CLEARANCE = 0.005

/** The smallest pulley of the belt said, m; 0 where none is said. */
export const smallestOf = (belt: Belt): number => sectionOf(belt)?.smallest ?? 0

/** The stages of a belt with the motor at a speed, rad/s. */
export function builtStages(belt: Belt, motor: number): readonly BuiltStage[] {
  const grips = slipStages(belt)
  return stagesOf(belt).map(({ driving, driven, centres, turns }, index) => {
    const wrap = smallWrap(driving, driven, centres)
    return {
      driving,
      driven,
      centres,
      length: beltLength(driving, driven, centres),
      wrap,
      speed: beltSpeed(driving, motor * turns),
      pull: grips ? shaftPull(grips[index].installed, wrap) : null,
    }
  })
}

/** Room a stage was given, m; null where nobody measured it. */
const given = (belt: Belt, index: number, stages: readonly Stage[]): number | null =>
  (index === stages.length - 1 ? belt.centreDistance : belt.jackshaftCentres) ?? null

/** Pull of each stage's tight strand with a torque of the spindle, N, and what the belt stands; null: not known. */
function strands(belt: Belt, torque: number): readonly { pull: number; stands: number }[] | null {
  const stages = slipStages(belt)
  const section = sectionOf(belt)
  if (!stages || !section) return null
  const { stands, ribs } = section
  return stages.map(({ installed, lever }) => ({
    pull: installed + torque / lever / 2,
    stands: stands * (belt.ribs ?? ribs),
  }))
}

/** Every limit a belt passes with the motor at its fastest (rad/s) and its hardest work at the spindle, on average (N·m). */
export function beltFaults(belt: Belt, motor: number, torque: number): readonly BeltFault[] {
  const pulls = strands(belt, torque)
  const stages = stagesOf(belt)
  const smallest = smallestOf(belt)
  return builtStages(belt, motor).flatMap(({ driving, driven, wrap, speed }, stage) => {
    const room = given(belt, stage, stages)
    const apart = (driving + driven) / 2 + CLEARANCE
    const { pull, stands } = pulls?.[stage] ?? { pull: 0, stands: Infinity }
    const steps = Math.max(driven / driving, driving / driven)
    const passed: readonly (readonly [boolean, BeltLimit, number, number])[] = [
      [room !== null && room < apart, 'touch', room ?? 0, apart],
      [wrap < LEAST_WRAP, 'wrap', wrap, LEAST_WRAP],
      [driving < smallest, 'small driving', driving, smallest],
      [driven < smallest, 'small driven', driven, smallest],
      [pull > stands, 'load', pull, stands],
      [speed > CAST_RIM_SPEED, 'rim', speed, CAST_RIM_SPEED],
      [speed > BALANCED_SPEED && speed <= CAST_RIM_SPEED, 'balance', speed, BALANCED_SPEED],
      [steps > STEEPEST * (1 + 1e-9), 'steep', steps, STEEPEST],
    ]
    return passed.flatMap(([is, kind, value, limit]) => (is ? [{ kind, stage, value, limit }] : []))
  })
}
