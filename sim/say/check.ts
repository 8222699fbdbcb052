// What the second method found, in a sentence.
import type { CrossCheck } from '../crossCheck.ts'
import { brief, duration, NBSP } from './number.ts'
import type { Units } from './units.ts'

/** A temperature difference to two significant digits: these are small, and whole degrees would hide them. */
function kelvin(value: number, units: Units): string {
  const shown = units.temperature === '°F' ? value * 1.8 : value
  return `${brief(Number(shown.toPrecision(2)))}${NBSP}${units.temperature}`
}

/** The largest differences between the two methods, up to where they were compared. */
export function checkWords(check: CrossCheck, units: Units): string {
  const { differences, moments, until, shown, second, openingDifference } = check
  if (moments === 0)
    return `The second method got nowhere (${second.ending.kind}), so there is nothing to compare.`
  const hottest = Math.max(differences.windingC.value, differences.frameC.value, differences.switchC.value)
  if (!Object.values(differences).every(({ value }) => Number.isFinite(value)))
    return `One of the two methods lost its numbers within the first ${duration(until)}: nothing is confirmed.`
  const rpm = (differences.speed.value * 30) / Math.PI
  const effort = Math.round(second.effort.rates / Math.max(1, shown.effort.rates))
  const apart =
    openingDifference !== null
      ? ` The cutoff opens ${brief(Number(openingDifference.toPrecision(2)))}${NBSP}s apart.`
      : shown.opening === null && second.opening === null
        ? ''
        : ' Only one of them sees the cutoff open: it is too close to call.'
  return (
    `An unrelated method, over the first ${duration(until)} and ${effort} times the work, differs by at most ` +
    `${kelvin(hottest, units)}, ${brief(Number(rpm.toPrecision(2)))}${NBSP}rpm at the motor and ` +
    `${brief(Number(differences.current.value.toPrecision(2)))}${NBSP}A.${apart}`
  )
}
