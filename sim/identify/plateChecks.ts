// The plate against itself, and against what such motors usually are: a sentence for each doubt, with both numbers.
import { necAmperes } from '../handbook/necAmperes.ts'
import type { Plate } from '../parts/plate.ts'
import type { Problem } from '../problem.ts'
import { toUnit } from '../quantity.ts'
import { ASSUMPTIONS } from './assume.ts'
import type { Motor, MotorReadings } from './motor.ts'
import { printsContinuous } from './origins.ts'
import { percent, text } from './words.ts'

/** Efficiencies between which a plate is believed at once (common practice, no source). */
const EFFICIENCY = { low: 0.5, high: 0.9 }
/** Amps over the table's for the same horsepower and volts between which they are plausible (common practice). */
const NEC_BAND = { low: 0.6, high: 1.4 }
/** Peak over continuous power seen on plates, at most. */
const PEAK_RATIO = 2.5
/** Share of plate volts lost in a usual winding (common practice, no source). */
const DROP = { low: 0.05, high: 0.25 }
/** Watts printed beside horsepower agree within this. */
const SAME_POWER = 0.05

type Check = (readings: MotorReadings, motor: Motor) => Problem | null

const short = (value: number, digits: number): number => Number(value.toPrecision(digits))

/** Power out against volts times amps. */
function efficiency(path: string, out: number, volts: number, amps: number): Problem | null {
  const share = out / (volts * amps)
  if (share >= EFFICIENCY.low && share <= EFFICIENCY.high) return null
  const high = share > EFFICIENCY.high
  const into = `${text(volts, 'V')} at ${text(amps, 'A')} is ${text(volts * amps, 'hp')}`
  return {
    path,
    wrong: `${text(out, 'hp')} out is ${high ? 'a lot' : 'little'} for what goes in: ${into}, so ${percent(share, 3)} comes out.`,
    wouldDo: high
      ? 'Usual is 70 to 85 %. Check the decimal point; a horsepower that is a boast is better left open.'
      : 'Usual is 70 to 85 %. The amps may belong to another duty than the power.',
  }
}

/** True where power and amps are both printed. */
const prints = ({ power, printedWatts, amps }: Plate): boolean =>
  (power ?? printedWatts) !== undefined && amps !== undefined

const plateEfficiency: Check = ({ plate }, { point: { volts, amps, power } }) =>
  prints(plate) && plate.volts !== undefined ? efficiency('plate.power', power, volts, amps) : null

const continuousEfficiency: Check = ({ plate }, { point }) =>
  plate.continuousPower === undefined || plate.continuousAmps === undefined
    ? null
    : efficiency('plate.continuousAmps', plate.continuousPower, point.volts, plate.continuousAmps)

const wattsBesideHorsepower: Check = ({ plate: { power, printedWatts } }) => {
  if (power === undefined || printedWatts === undefined) return null
  const apart = power / printedWatts - 1
  if (Math.abs(apart) <= SAME_POWER) return null
  return {
    path: 'plate.printedWatts',
    wrong: `The plate says ${text(power, 'hp')} and ${text(printedWatts, 'W')}, which is ${text(printedWatts, 'hp')}: they differ by ${percent(Math.abs(apart))}.`,
    wouldDo: `The watts are used.${apart > 0 ? ' The horsepower is likely a peak.' : ''}`,
  }
}

const tableAmps: Check = ({ plate }, { point: { volts, amps, power } }) => {
  if (!prints(plate)) return null
  const table = necAmperes(toUnit(power, 'hp'), volts)
  if (table === null || (amps >= NEC_BAND.low * table && amps <= NEC_BAND.high * table)) return null
  return {
    path: 'plate.amps',
    wrong: `${text(amps, 'A')} is unusual for ${text(power, 'hp')} at ${text(volts, 'V')}: the NEC table (430.247) gives ${text(table, 'A')}.`,
    wouldDo: 'The power may be a peak and the amps all day, or the other way round.',
  }
}

const continuousShare: Check = ({ plate }, { point }) => {
  const byAmps = plate.continuousPower === undefined
  const [most, allDay, unit] = byAmps
    ? [point.amps, plate.continuousAmps, 'A']
    : [point.power, plate.continuousPower, 'hp']
  const ratio = most / (allDay ?? most)
  if (allDay === undefined || (ratio >= 1 && ratio <= PEAK_RATIO)) return null
  return {
    path: byAmps ? 'plate.continuousAmps' : 'plate.continuousPower',
    wrong: `The plate’s ${text(most, unit)} is ${short(ratio, 3)} times its continuous ${text(allDay, unit)}.`,
    wouldDo:
      ratio < 1 ? 'The continuous one is the smaller: are they swapped?' : 'Plates show 1.67 to 2.5 times.',
  }
}

const windingDrop: Check = ({ given }, { point, numbers: { resistance }, told }) => {
  const drop = (resistance * point.amps) / point.volts
  if (drop >= DROP.low && drop <= DROP.high) return null
  const known = told.resistance !== 'plate' || given.resistance !== undefined
  return {
    path: 'plate.speed',
    wrong: `The winding would take ${percent(drop, 3)} of the plate’s ${text(point.volts, 'V')} (${text(resistance, 'Ω')} at ${text(point.amps, 'A')}).`,
    wouldDo: known
      ? '5 to 25 % is usual. Check the ohms and the plate’s amps.'
      : '5 to 25 % is usual. Measure the ohms: the plate tells them poorly.',
  }
}

const lineOf = ({ continuousPower, continuousAmps }: Plate): string =>
  continuousPower !== undefined ? 'continuousPower' : continuousAmps !== undefined ? 'continuousAmps' : 'duty'

/** Said only where the plate prints a continuous line, or the mass it is held against. */
const fits: Check = ({ plate, given }, { thermal: { asked, used, usual }, mass }) => {
  const printed = printsContinuous(plate)
  if (asked === used || given.windingToFrame !== undefined) return null
  if (!printed && plate.mass === undefined) return null
  return {
    path: `plate.${printed ? lineOf(plate) : 'mass'}`,
    wrong: `${printed ? 'The continuous line' : '60 % of plate power all day'} does not fit a motor this size: it asks for ${short(asked / usual, 2)} times the cooling of a usual motor of ${text(mass, 'kg')}.`,
    wouldDo: `${short(used / usual, 2)} times is taken. Check ${printed ? 'the continuous power and' : 'power, amps and'} the mass; warm it up and log it to know.`,
  }
}

const { efficiency: usual, guessedSpeed } = ASSUMPTIONS
const byEfficiency = `From an efficiency of ${percent(usual.usual)}.`
const asPower = { low: usual.low / usual.usual, high: usual.high / usual.usual, wouldDo: byEfficiency }
const asAmps = { low: usual.usual / usual.high, high: usual.usual / usual.low, wouldDo: byEfficiency }

/** How each guess is told, and its band over its value. */
const GUESS = {
  volts: { ...asAmps, what: 'volts', unit: 'V' },
  amps: { ...asAmps, what: 'amps', unit: 'A' },
  power: { ...asPower, what: 'power', unit: 'W' },
  speed: {
    low: guessedSpeed.low,
    high: guessedSpeed.high,
    wouldDo: 'Spin it with a drill and read volts and rpm: its speed then follows.',
    what: 'rpm',
    unit: 'rpm',
  },
} as const

/** What the plate leaves out and was filled in. */
function guesses({ given }: MotorReadings, { point, numbers }: Motor): Problem[] {
  // Where every number is given nothing rests on a guess.
  if (Object.keys(numbers).every((name) => name in given)) return []
  return point.guessed.map((name) => {
    const { low, high, wouldDo, what, unit } = GUESS[name]
    const value = point[name]
    return {
      path: `plate.${name}`,
      wrong: `No ${what} on the plate: ${text(value, unit)} is taken, likely ${short(toUnit(low * value, unit), 3)} to ${text(high * value, unit)}.`,
      wouldDo,
    }
  })
}

const CHECKS: readonly Check[] = [
  plateEfficiency,
  continuousEfficiency,
  wattsBesideHorsepower,
  tableAmps,
  continuousShare,
  windingDrop,
  fits,
]

/** Every doubt about the plate of a motor. */
export const plateChecks = (readings: MotorReadings, motor: Motor): Problem[] => [
  ...guesses(readings, motor),
  ...CHECKS.flatMap((check) => check(readings, motor) ?? []),
]
