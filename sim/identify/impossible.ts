// Why plate and bench make no motor at all: the first thing that cannot be, with both numbers.
import { copperRatio, fluxRatio } from '../handbook/materials.ts'
import type { Problem } from '../problem.ts'
import { USUAL } from './assume.ts'
import { identify, type Motor, type MotorReadings, plateTemperatures } from './motor.ts'
import { pointOf } from './point.ts'
import { text } from './words.ts'

/** Where a measured or given resistance, or constant, stands. */
export const resistancePath = ({ given }: MotorReadings, { told }: Motor): string =>
  given.resistance !== undefined
    ? 'winding.resistance'
    : told.resistance === 'held'
      ? 'bench.locked'
      : 'bench.ohms'
export const constantPath = ({ given }: MotorReadings, { told }: Motor): string =>
  given.constant !== undefined
    ? 'winding.constant'
    : told.constant === 'spin'
      ? 'bench.spin'
      : 'bench.running'

function tooLittle({ plate }: MotorReadings): Problem {
  const given = (['volts', 'amps', 'power'] as const).filter((name) => plate[name] !== undefined)
  const missing = (['power', 'amps', 'volts'] as const).find((name) => plate[name] === undefined)
  return {
    path: `plate.${missing}`,
    wrong: `The plate gives ${given.length === 0 ? 'neither volts, amps nor power' : `only ${given.join(' and ')}`}.`,
    wouldDo: 'Two of volts, amps and power make a motor.',
  }
}

/** Ohms or shaft-held volts that leave nothing for the winding. */
function noWinding({ bench, given }: MotorReadings, { told, numbers }: Motor): Problem {
  if (told.resistance === 'ohms')
    return {
      path: 'bench.leadOhms',
      wrong: `The probes touching read ${text(bench.leadOhms, 'Ω')}, and with the winding ${text(Math.min(...bench.ohms), 'Ω')}: that leaves it nothing.`,
      wouldDo: 'Read both again, or hold the shaft and read volts at 2 to 5 A.',
    }
  const lowest = Math.min(...bench.locked.map(({ volts }) => volts))
  if (given.brushDrop !== undefined && !(given.brushDrop < lowest))
    return {
      path: 'winding.brushDrop',
      wrong: `Brushes that take ${text(numbers.brushDrop, 'V')} leave the winding nothing of ${text(lowest, 'V')}, shaft held.`,
      wouldDo: 'Leave the brush drop open.',
    }
  const byAmps = bench.locked.toSorted((a, b) => a.amps - b.amps)
  const [least, most] = [byAmps[0], byAmps[byAmps.length - 1]]
  return {
    path: 'bench.locked',
    wrong: `Held still it took ${text(least.volts, 'V')} at ${text(least.amps, 'A')} and ${text(most.volts, 'V')} at ${text(most.amps, 'A')}.`,
    wouldDo: 'More amps take more volts: check that they are not swapped.',
  }
}

/** Why there is no motor; only for readings that make none. */
export function impossible(readings: MotorReadings): Problem {
  const point = pointOf(readings.plate, USUAL)
  const motor = point && identify(readings, USUAL)
  if (!motor) return tooLittle(readings)
  const { numbers, noLoadAmps, told } = motor
  const measuredOhms = told.resistance !== 'plate' || readings.given.resistance !== undefined
  const measuredVolts = told.constant !== 'plate' || readings.given.constant !== undefined
  const volts = text(point.volts, 'V')
  if (measuredOhms && !(numbers.resistance > 0)) return noWinding(readings, motor)
  if (!(numbers.brushDrop < point.volts))
    return {
      path:
        readings.given.brushDrop !== undefined
          ? 'winding.brushDrop'
          : told.brushDrop === 'held'
            ? 'bench.locked'
            : 'plate.volts',
      wrong: `Brushes that take ${text(numbers.brushDrop, 'V')} leave nothing of the plate’s ${volts}.`,
      wouldDo: 'Check the plate’s volts, and what was read with the shaft held.',
    }
  if (!(noLoadAmps < point.amps))
    return {
      path: 'bench.running',
      wrong: `It draws ${text(noLoadAmps, 'A')} running free, and the plate gives ${text(point.amps, 'A')} at full load.`,
      wouldDo: 'Check that the clamp was on one motor lead, and the plate’s amps.',
    }
  if (told.constant === 'free' && readings.given.constant === undefined && !(numbers.constant > 0)) {
    const { volts, amps } = readings.bench.running.find(({ speed }) => speed)!
    return {
      path: 'bench.running',
      wrong: `Running free at ${text(volts, 'V')}, brushes (${text(numbers.brushDrop, 'V')}) and winding (${text(numbers.resistance, 'Ω')} at ${text(amps, 'A')}) leave it nothing to turn by.`,
      wouldDo: 'Read it at more volts.',
    }
  }
  // What the plate tells, it tells of a warm motor.
  const { windingC, frameC } = plateTemperatures(readings.plate, USUAL)
  if (measuredOhms)
    return {
      path: resistancePath(readings, motor),
      wrong: `${text(numbers.resistance, 'Ω')} and its brushes take ${text(copperRatio(windingC) * numbers.resistance * point.amps + numbers.brushDrop, 'V')} at the plate’s ${text(point.amps, 'A')}, and the plate gives ${volts}: nothing is left to turn by.`,
      wouldDo: 'Check the ohms, or leave them open.',
    }
  const back = text(fluxRatio(readings.magnets, frameC) * numbers.constant * point.speed, 'V')
  if (measuredVolts)
    return {
      path: constantPath(readings, motor),
      wrong: `It makes ${back} at the plate’s ${text(point.speed, 'rpm')}, its brushes take ${text(numbers.brushDrop, 'V')}, and the plate gives ${volts} to drive it.`,
      wouldDo: 'Check the speed it was read at, and the plate’s.',
    }
  return {
    path: 'plate.power',
    wrong: `Plate power is more than volts times amps allow: ${text(point.power, 'hp')} at ${text(point.speed, 'rpm')} and ${text(point.amps, 'A')} needs ${back} and its brushes ${text(numbers.brushDrop, 'V')}, and the plate gives ${volts}.`,
    wouldDo: 'Check the decimal point, or leave the power open.',
  }
}
