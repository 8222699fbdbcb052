// Belt inputs that are each in order and do not go together: a step that is not there, a belt that goes round nothing.
import { beltLength, leastCentres } from '../belting/geometry.ts'
import { shortestStock, stockBelt } from '../belting/stock.ts'
import { type Belt, hasJackshaft } from '../parts/belt.ts'
import type { Problem } from '../problem.ts'
import { toUnit } from '../quantity.ts'
import { both } from './sizes.ts'

function tooShort(path: string, length: number | undefined, one: number, other: number): Problem[] {
  const least = beltLength(one, other, leastCentres(one, other))
  if (length === undefined || length >= least) return []
  const usual = stockBelt(one, other, one + other)?.length ?? shortestStock(one, other)
  return [
    {
      path,
      wrong: `A belt of ${both(length)} is too short for pulleys of ${both(one)} and ${both(other)}: with their rims touching they need ${both(least)}.`,
      wouldDo:
        usual === null
          ? 'Smaller pulleys, or leave the length open.'
          : `Of those that are sold ${both(usual)} gives the usual room. Or smaller pulleys, or leave it open.`,
      ...(usual === null ? {} : { offers: [`${Number(toUnit(usual, 'in').toPrecision(4))} in`] }),
    },
  ]
}

/** The step in use, where there is none such. */
function noStep(given: { readonly step?: unknown; readonly steps?: unknown }): Problem[] {
  const { step, steps } = given
  if (typeof step !== 'number') return []
  const count = 1 + (Array.isArray(steps) ? steps.length : 0)
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

/** Everything amiss in the belt as read, SI; null: it could not be read, and its own inputs say why. */
export function beltAmiss(read: Parameters<typeof noStep>[0], belt: Belt | null): Problem[] {
  const found = noStep(read)
  if (!belt || found.length > 0) return found
  const { motorPulley, machinePulley, jackshaftLarge, jackshaftSmall } = belt
  if (!hasJackshaft(belt)) return tooShort('belt.length', belt.length, motorPulley, machinePulley)
  return [
    ...tooShort('belt.jackshaftLength', belt.jackshaftLength, motorPulley, jackshaftLarge as number),
    ...tooShort('belt.length', belt.length, jackshaftSmall as number, machinePulley),
  ]
}
