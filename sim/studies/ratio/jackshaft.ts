// Two stages through a jackshaft, for ratios that one stage cannot do.
import type { Belt } from '../../parts/belt.ts'
import { type Changes, twoStage } from './change.ts'
import { smallestOf, STEEPEST } from '../../drive/limits.ts'
import { choices, isSame, offMiddle, type Range } from './pairs.ts'

/** Four pulleys from motor to machine, m, and the ratios they make. */
export interface TwoStages {
  readonly pulleys: readonly [number, number, number, number]
  readonly ratio: number
  readonly steps: readonly [number, number]
  /** Pulleys to buy. */
  readonly buys: number
  readonly changes: Changes
}

type Sized = Pick<TwoStages, 'pulleys' | 'ratio' | 'steps' | 'buys'>

/** A step of less is not worth a shaft. */
const LEAST_STEP = 1.25
/** What size weighs against an even split and the middle of the range (no source: a matter of taste). */
const SIZE = 0.4
/** Most that are handed on. */
const MOST = 100

const isStep = (step: number): boolean => step >= LEAST_STEP && step <= STEEPEST * (1 + 1e-9)

/** Drives of two stages within a range, best first: few to buy, then even steps, small pulleys and the middle. */
export function twoStagesWithin(belt: Belt, range: Range): readonly TwoStages[] {
  const least = smallestOf(belt)
  const present = [belt.motorPulley, belt.jackshaftLarge, belt.jackshaftSmall, belt.machinePulley]
  const [motors, larges, smalls, machines] = present.map((size) => choices(size, least))
  const bought = (size: number, place: number): number =>
    present[place] !== undefined && isSame(size, present[place]) ? 0 : 1

  const score = ({ pulleys, ratio, steps }: Sized): number =>
    offMiddle(ratio, range) +
    Math.abs(Math.log(steps[0] / steps[1])) +
    SIZE * Math.log(pulleys[1] + pulleys[3])
  const found: { stages: Sized; score: number }[] = []
  for (const motor of motors)
    for (const large of larges.filter((size) => isStep(size / motor)))
      for (const machine of machines)
        for (const small of smalls.filter((size) => isStep(machine / size))) {
          const steps = [large / motor, machine / small] as const
          const ratio = steps[0] * steps[1]
          if (ratio < range.low || ratio > range.high) continue
          const pulleys = [motor, large, small, machine] as const
          const buys = pulleys.reduce((sum, size, place) => sum + bought(size, place), 0)
          const stages = { pulleys, ratio, steps, buys }
          found.push({ stages, score: score(stages) })
        }
  return found
    .sort((a, b) => a.stages.buys - b.stages.buys || a.score - b.score)
    .slice(0, MOST)
    .map(({ stages }) => ({ ...stages, changes: twoStage(belt, stages.pulleys) }))
}
