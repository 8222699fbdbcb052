// Two stages through a jackshaft, for ratios that one stage cannot do.
import type { Belt } from '../../parts/belt.ts'
import { type Changes, twoStage } from './change.ts'
import { smallestOf, STEEPEST } from './limits.ts'
import { choices, offMiddle, type Range } from './pairs.ts'

/** Four pulleys from motor to machine, m, and the ratios they make. */
export interface TwoStages {
  readonly pulleys: readonly [number, number, number, number]
  readonly ratio: number
  readonly steps: readonly [number, number]
  readonly buys: number
  readonly changes: Changes
}

/** A step of less is not worth a shaft. */
const LEAST_STEP = 1.25
/** What an inch of pulley weighs against an even split and the middle of the range (no source: a matter of taste). */
const SIZE = 0.4

/** Drives of two stages within a range, best first: few to buy, even steps, small pulleys, the middle of the range. */
export function twoStagesWithin(belt: Belt, range: Range): readonly TwoStages[] {
  const least = smallestOf(belt)
  const first = choices(belt.motorPulley, least)
  const last = choices(belt.machinePulley, least)
  const shaft = choices(undefined, least)
  const found: (TwoStages & { score: number })[] = []
  const isStep = (step: number) => step >= LEAST_STEP && step <= STEEPEST
  for (const motor of first)
    for (const large of shaft) {
      const one = large / motor
      if (!isStep(one)) continue
      for (const machine of last) {
        // Only the jackshaft pulley that comes nearest to the middle with these three.
        let best: { small: number; off: number } | null = null
        for (const small of shaft) {
          const two = machine / small
          const ratio = one * two
          if (!isStep(two) || ratio < range.low || ratio > range.high) continue
          const off = offMiddle(ratio, range)
          if (!best || off < best.off) best = { small, off }
        }
        if (!best) continue
        const two = machine / best.small
        const pulleys = [motor, large, best.small, machine] as const
        const buys = 2 + Number(motor !== belt.motorPulley) + Number(machine !== belt.machinePulley)
        found.push({
          pulleys,
          ratio: one * two,
          steps: [one, two],
          buys,
          changes: twoStage(belt, pulleys),
          score: best.off + Math.abs(Math.log(one / two)) + SIZE * Math.log(large + machine),
        })
      }
    }
  return found.sort((a, b) => a.buys - b.buys || a.score - b.score).map(({ score: _, ...stages }) => stages)
}
