// What the plate and the bench say against themselves and each other: a sentence each, with both numbers.
import { necAmperes } from '../handbook/necAmperes.ts'
import { toUnit } from '../quantity.ts'
import type { Problem } from '../problem.ts'
import { USUAL } from './assume.ts'
import { type KnownMotor, know, sound } from './known.ts'
import { identify, type Motor, type MotorReadings } from './motor.ts'
import { pointOf } from './point.ts'

const text = (value: number, unit: string, digits = 3): string =>
  `${Number(toUnit(value, unit).toPrecision(digits))} ${unit}`
const percent = (share: number): string => `${Math.round(share * 100)} %`

/** Efficiencies between which a plate is believed at once. */
const EFFICIENCY = { low: 0.5, high: 0.9 }
/** Amps over the table's for the same horsepower and volts between which they are plausible (common practice). */
const NEC_BAND = { low: 0.6, high: 1.4 }
/** Peak over continuous power seen on plates, at most. */
const PEAK_RATIO = 2.5
/** Share of plate volts lost in a usual winding. */
const DROP = { low: 0.05, high: 0.25 }
/** No-load amps over plate amps. */
const NO_LOAD = { low: 0.04, high: 0.1 }
/** Watts printed beside horsepower agree within this. */
const SAME_POWER = 0.05

/** Why plate and bench make no motor at all. */
function impossible(readings: MotorReadings): Problem[] {
  const { plate } = readings
  const point = pointOf(plate, USUAL)
  if (!point) {
    const given = (['volts', 'amps', 'power'] as const).filter((name) => plate[name] !== undefined)
    return [
      {
        path: `plate.${(['power', 'amps', 'volts'] as const).find((name) => plate[name] === undefined) ?? 'power'}`,
        wrong: `The plate gives ${given.length === 0 ? 'neither volts, amps nor power' : `only ${given.join(' and ')}`}.`,
        wouldDo: 'Two of volts, amps and power make a motor.',
      },
    ]
  }
  const motor = identify(readings, USUAL)
  const back = motor ? motor.numbers.constant * point.speed : Number.NaN
  if (motor && !(motor.numbers.resistance > 0))
    return [
      {
        path: 'plate.power',
        wrong: `Plate power is more than volts times amps allow: ${text(point.power, 'hp')} at ${text(point.speed, 'rpm')} and ${text(point.amps, 'A')} needs ${text(back, 'V')} before any loss, and the plate gives ${text(point.volts, 'V')}.`,
        wouldDo: 'Check the decimal point, or leave the power open.',
      },
    ]
  if (motor && !(motor.noLoadAmps < point.amps))
    return [
      {
        path: 'bench.running',
        wrong: `It draws ${text(motor.noLoadAmps, 'A')} running free, and the plate gives ${text(point.amps, 'A')} at full load.`,
        wouldDo: 'Check that the clamp was on one motor lead, and the plate’s amps.',
      },
    ]
  return [
    {
      path: 'plate.speed',
      wrong: `These readings make no motor: at ${text(point.speed, 'rpm')} nothing is left of ${text(point.volts, 'V')} for it to turn by.`,
      wouldDo: 'Check speed, volts and ohms.',
    },
  ]
}

/** The plate against itself. */
function plateAlone(readings: MotorReadings, motor: Motor): Problem[] {
  const { plate } = readings
  const { point, noLoadAmps, numbers, thermal } = motor
  const found: Problem[] = []
  const input = point.volts * point.amps
  if (point.guessed.length === 0 || (plate.volts && plate.amps && plate.power)) {
    const efficiency = point.power / input
    if (efficiency > EFFICIENCY.high)
      found.push({
        path: 'plate.power',
        wrong: `Plate power is more than volts times amps allow: ${text(point.power, 'hp')} out, and ${text(point.volts, 'V')} at ${text(point.amps, 'A')} is ${text(input, 'hp')} before losses.`,
        wouldDo: 'Check the decimal point. The horsepower may be a boast: then leave it open.',
      })
    else if (efficiency < EFFICIENCY.low)
      found.push({
        path: 'plate.power',
        wrong: `Plate power is little for what goes in: ${text(point.power, 'hp')} out of ${text(input, 'hp')}, ${percent(efficiency)}.`,
        wouldDo: 'Usual is 70 to 85 %. The amps may belong to another duty than the power.',
      })
  }
  if (
    plate.printedWatts !== undefined &&
    plate.power !== undefined &&
    Math.abs(plate.power / plate.printedWatts - 1) > SAME_POWER
  )
    found.push({
      path: 'plate.printedWatts',
      wrong: `The plate says ${text(plate.power, 'hp')} and ${text(plate.printedWatts, 'W')}, which is ${text(plate.printedWatts, 'hp')}: they differ by ${percent(plate.power / plate.printedWatts - 1)}.`,
      wouldDo: 'The watts are used. The horsepower is likely a peak.',
    })
  const hp = toUnit(point.power, 'hp')
  const table = plate.amps !== undefined && plate.power !== undefined ? necAmperes(hp, point.volts) : null
  if (table !== null && (point.amps < NEC_BAND.low * table || point.amps > NEC_BAND.high * table))
    found.push({
      path: 'plate.amps',
      wrong: `${text(point.amps, 'A')} is unusual for ${text(point.power, 'hp')} at ${text(point.volts, 'V')}: the NEC table (430.247) gives ${text(table, 'A')}.`,
      wouldDo: 'The power may be a peak and the amps all day, or the other way round.',
    })
  if (plate.continuousPower !== undefined) {
    const ratio = point.power / plate.continuousPower
    if (ratio > PEAK_RATIO || ratio < 1)
      found.push({
        path: 'plate.continuousPower',
        wrong: `Plate power is ${Number(ratio.toPrecision(3))} times the continuous power (${text(point.power, 'hp')} and ${text(plate.continuousPower, 'hp')}).`,
        wouldDo:
          ratio < 1
            ? 'The continuous one is the smaller: are they swapped?'
            : 'Plates show 1.67 to 2.5 times.',
      })
  }
  const drop = (numbers.resistance * point.amps) / point.volts
  if (drop < DROP.low || drop > DROP.high)
    found.push({
      path: 'plate.speed',
      wrong: `The winding would take ${percent(drop)} of the plate’s ${text(point.volts, 'V')} (${text(numbers.resistance, 'Ω')} at ${text(point.amps, 'A')}).`,
      wouldDo: '5 to 25 % is usual. Measure the ohms: the plate tells them poorly.',
    })
  const share = noLoadAmps / point.amps
  if (readings.bench.running.length > 0 && (share < NO_LOAD.low || share > NO_LOAD.high))
    found.push({
      path: 'bench.running',
      wrong: `It draws ${text(noLoadAmps, 'A')} running free, ${percent(share)} of the plate’s ${text(point.amps, 'A')}.`,
      wouldDo:
        share > NO_LOAD.high
          ? '4 to 10 % is usual. Tight brushes or bearings, or a plate that is not at full load.'
          : '4 to 10 % is usual. Check where the clamp was.',
    })
  if (Math.abs(thermal.asked / thermal.used - 1) > 1e-6)
    found.push({
      path: plate.continuousPower === undefined ? 'plate.power' : 'plate.continuousPower',
      wrong: `The continuous line does not fit a motor this size: it asks for ${Number((thermal.asked / thermal.usual).toPrecision(2))} times the cooling of a usual motor of ${text(motor.mass, 'kg')}.`,
      wouldDo: `${Number((thermal.used / thermal.usual).toPrecision(2))} times is taken. Check the continuous power and the mass; warm it up and log it to know.`,
    })
  return found
}

/** Which way a bench reading lies from the plate, and the likely cause. */
const CAUSES: Readonly<Record<'resistance' | 'constant', { higher: string; lower: string }>> = {
  resistance: {
    higher:
      'Brush film or dirty contact adds ohms: turn the shaft and take the lowest, or read volts at 2 to 5 A with the shaft held.',
    lower: 'Subtract nothing twice, and check that the plate’s amps and power belong to the same duty.',
  },
  constant: {
    higher: 'The plate’s speed may be a no-load speed, or its power a peak.',
    lower: 'Weak magnets, or a drill slower than its rating: read the rpm at the shaft.',
  },
}

/** The bench against the plate: named where the bands do not meet. */
function benchAgainstPlate(readings: MotorReadings, known: KnownMotor): Problem[] {
  const empty = parseBenchless(readings)
  const plateOnly = know(empty)
  if (!plateOnly) return []
  const found: Problem[] = []
  const units = { resistance: 'Ω', constant: 'V/krpm' } as const
  const paths = {
    resistance: readings.bench.locked.length > 0 ? 'bench.locked' : 'bench.ohms',
    constant: 'bench.spin',
  } as const
  for (const name of ['resistance', 'constant'] as const) {
    const bench = known[name]
    const plate = plateOnly.known[name]
    if (bench.from !== 'measured' || (bench.low <= plate.high && bench.high >= plate.low)) continue
    const unit = units[name]
    const way = bench.value > plate.value ? 'higher' : 'lower'
    found.push({
      path: paths[name],
      wrong: `The bench says ${text(bench.value, unit)}, and the plate ${text(plate.value, unit)} (${text(plate.low, unit)} to ${text(plate.high, unit)}).`,
      wouldDo: `The bench is used. ${CAUSES[name][way]}`,
    })
  }
  return found
}

const parseBenchless = (readings: MotorReadings): MotorReadings => ({
  ...readings,
  bench: { ...readings.bench, ohms: [], locked: [], spin: [], running: [], coast: [] },
})

/** Readings that were given and cannot be used. */
function unused({ bench }: MotorReadings): Problem[] {
  if (bench.clamp === 'motor lead' || (bench.running.length === 0 && bench.locked.length === 0)) return []
  const where = bench.clamp === 'wall' ? 'At the wall' : 'Before the controller'
  return [
    {
      path: 'bench.clamp',
      wrong: `${where} the amps are not the motor’s: a controller trades volts for amps, and lumpy current fools the meter.`,
      wouldDo: 'These amps are left out. Clamp round one motor lead, meter on DC.',
    },
  ]
}

/** Every complaint about a motor's readings; an impossible motor's reasons alone. */
export function complaints(readings: MotorReadings): Problem[] {
  const motor = identify(readings, USUAL)
  if (!sound(motor)) return impossible(readings)
  const known = know(readings)
  return [
    ...plateAlone(readings, motor),
    ...(known ? benchAgainstPlate(readings, known.known) : []),
    ...unused(readings),
  ]
}
