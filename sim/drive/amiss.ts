// Belt inputs that are each in order and do not go together: a step that is not there, a belt that goes round nothing.
import { beltLength, leastCentres } from '../belting/geometry.ts'
import { stockBelt } from '../belting/stock.ts'
import { hasJackshaft, onStep, type ReadBelt, type Step } from '../parts/belt.ts'
import type { Problem } from '../problem.ts'
import { toUnit } from '../quantity.ts'
import { both } from './sizes.ts'

function tooShort(path: string, length: number | undefined, one: number, other: number): Problem[] {
  const least = beltLength(one, other, leastCentres(one, other))
  if (length === undefined || length >= least) return []
  const usual = stockBelt(one, other, one + other)?.length
  return [
    {
      path,
      wrong: `A belt of ${both(length)} is too short for pulleys of ${both(one)} and ${both(other)}: with their rims touching they need ${both(least)}.`,
      wouldDo:
        usual === undefined
          ? 'Smaller pulleys, or leave the length open.'
          : `Of those that are sold ${both(usual)} gives the usual room. Or smaller pulleys, or leave it open.`,
      ...(usual === undefined ? {} : { offers: [`${Number(toUnit(usual, 'in').toPrecision(4))} in`] }),
    },
  ]
}

/** The step in use, where there is none such. */
function noStep({ step, steps }: ReadBelt): Problem[] {
  if (!isNumber(step)) return []
  const count = 1 + (steps?.length ?? 0)
  if (Number.isInteger(step) && step <= count) return []
  return [
    {
      path: 'belt.step',
      wrong: Number.isInteger(step)
        ? `There is no step ${step}: the pulleys have ${count === 1 ? 'only one' : count}.`
        : `Steps are counted: ${step} is none.`,
      wouldDo: count === 1 ? 'Add its pair of pulleys to the steps, or leave this open.' : `1 to ${count}.`,
      offers: Array.from({ length: count }, (_, index) => String(index + 1)),
    },
  ]
}

const isNumber = (value: unknown): value is number => typeof value === 'number'
const isOpen = (value: unknown): boolean => value === undefined || isNumber(value)

/** True where every size of the belt could be read: else its own inputs say why, and no more is told. */
function isRead(group: unknown): group is ReadBelt {
  if (typeof group !== 'object' || group === null) return false
  const belt = group as Record<keyof ReadBelt, unknown>
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall, length, jackshaftLength, steps } = belt
  const pairs: readonly unknown[] = Array.isArray(steps) ? steps : []
  return (
    [motorPulley, machinePulley].every(isNumber) &&
    [jackshaftLarge, jackshaftSmall, length, jackshaftLength].every(isOpen) &&
    pairs.every((pair) => isNumber((pair as Step | null)?.driving) && isNumber((pair as Step).driven))
  )
}

/** Everything amiss in the belt of a scenario as read, SI. */
export function beltAmiss(group: unknown): Problem[] {
  if (!isRead(group)) return []
  const found = noStep(group)
  if (found.length > 0) return found
  const belt = onStep(group)
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall } = belt
  if (!hasJackshaft(belt)) return tooShort('belt.length', belt.length, motorPulley, machinePulley)
  return [
    ...tooShort('belt.jackshaftLength', belt.jackshaftLength, motorPulley, jackshaftLarge as number),
    ...tooShort('belt.length', belt.length, jackshaftSmall as number, machinePulley),
  ]
}
