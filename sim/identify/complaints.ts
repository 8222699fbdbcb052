// What plate and bench say against themselves and each other: a sentence each, with both numbers.
import type { Bench } from '../parts/bench.ts'
import type { Problem } from '../problem.ts'
import { USUAL } from './assume.ts'
import { constantPath, impossible, resistancePath } from './impossible.ts'
import { know, sound } from './known.ts'
import { identify, type Motor, type MotorReadings } from './motor.ts'
import { plateChecks } from './plateChecks.ts'
import { percent, text } from './words.ts'

/** No-load amps over plate amps (common practice, no source). */
const NO_LOAD = { low: 0.04, high: 0.1 }

function noLoad({ point, noLoadAmps, told }: Motor): Problem[] {
  const share = noLoadAmps / point.amps
  if (told.friction === 'usual' || (share >= NO_LOAD.low && share <= NO_LOAD.high)) return []
  return [
    {
      path: 'bench.running',
      wrong: `It draws ${text(noLoadAmps, 'A')} running free, ${percent(share, 3)} of the plate’s ${text(point.amps, 'A')}.`,
      wouldDo:
        share > NO_LOAD.high
          ? '4 to 10 % is usual. Tight brushes or bearings, or a plate that is not at full load.'
          : '4 to 10 % is usual. Check where the clamp was.',
    },
  ]
}

/** Which way a bench reading lies from the plate, and the likely cause. */
const CAUSES = {
  resistance: {
    higher:
      'Brush film adds ohms: turn the shaft and take the lowest, or hold it and read volts at 2 to 5 A. Or the plate’s power is a boast.',
    lower: 'Take the probes’ ohms off once only; the plate’s amps and power may belong to two duties.',
  },
  constant: {
    higher: 'The plate’s speed may be a no-load speed.',
    lower: 'Weak magnets, a speed read too high, or a plate’s power that is a boast.',
  },
} as const

const NOTHING_READ: Partial<Bench> = { ohms: [], locked: [], spin: [], running: [], coast: [] }

/**
 * The bench against the plate: named where the bands do not meet, and only where the plate prints what it takes: a
 * guess cannot be wrong. Speed has no part in the resistance.
 */
function benchAgainstPlate(readings: MotorReadings, { told }: Motor): Problem[] {
  const alone = { ...readings, bench: { ...readings.bench, ...NOTHING_READ } }
  const guessed = identify(alone, USUAL)?.point.guessed ?? []
  const read = (['resistance', 'constant'] as const).filter(
    (name) =>
      told[name] !== 'plate' &&
      readings.given[name] === undefined &&
      guessed.every((what) => name === 'resistance' && what === 'speed'),
  )
  const [bench, plate] = read.length > 0 ? [know(readings), know(alone)] : [null, null]
  if (!bench || !plate) return []
  const units = { resistance: 'Ω', constant: 'V/krpm' } as const
  const paths = { resistance: resistancePath, constant: constantPath } as const
  return read.flatMap((name) => {
    const [own, printed, unit] = [bench.known[name], plate.known[name], units[name]]
    if (own.low <= printed.high && own.high >= printed.low) return []
    const way = own.value > printed.value ? 'higher' : 'lower'
    return [
      {
        path: paths[name](readings, bench.motor),
        wrong: `The bench says ${text(own.value, unit)}, and the plate ${text(printed.value, unit)} (${text(printed.low, unit)} to ${text(printed.high, unit)}).`,
        wouldDo: `The bench is used. ${CAUSES[name][way]}`,
      },
    ]
  })
}

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

/** Every complaint about a motor's readings; an impossible motor's reason alone. */
export function complaints(readings: MotorReadings): Problem[] {
  const motor = identify(readings, USUAL)
  if (!sound(motor)) return [impossible(readings)]
  return [
    ...plateChecks(readings, motor),
    ...noLoad(motor),
    ...benchAgainstPlate(readings, motor),
    ...unused(readings),
  ]
}
