// What is known of a motor: each number with its 8-in-10 band, where it came from, and how.
import { USUAL } from './assume.ts'
import { type Basis, doubtsOf } from './doubts.ts'
import { identify, type Motor, type MotorNumber, type MotorNumbers, type MotorReadings } from './motor.ts'

export type From = 'measured' | 'plate' | 'estimated' | 'given'

export interface Known {
  /** SI. */
  readonly value: number
  /** The value lies between these 8 times in 10. */
  readonly low: number
  readonly high: number
  readonly from: From
  readonly how: string
}

export type KnownMotor = Readonly<Record<MotorNumber, Known>>

/** True where every number is finite and none is below nothing; resistance and constant are more than nothing. */
export const sound = (motor: Motor | null): motor is Motor =>
  motor !== null &&
  Object.values(motor.numbers).every((value) => Number.isFinite(value) && value >= 0) &&
  motor.numbers.resistance > 0 &&
  motor.numbers.constant > 0

/** Where each number came from. */
export function origins({
  plate,
  bench,
  given,
}: MotorReadings): Readonly<Record<MotorNumber, { from: From; how: string }>> {
  const leads = bench.clamp === 'motor lead'
  const held = leads && bench.locked.length > 0
  const ohms = held || bench.ohms.length > 0
  const spun = bench.spin.length > 0
  const free = leads && bench.running.length > 0
  const measured = (how: string) => ({ from: 'measured' as const, how })
  const fromPlate = (how: string) => ({ from: 'plate' as const, how })
  const estimated = (how: string) => ({ from: 'estimated' as const, how })
  const friction = free ? measured('amps running free') : estimated('no-load amps of 7 % of plate amps')
  const mass = plate.mass === undefined ? 'a mass of 4 kg for each kW of plate volts times amps' : 'its mass'
  const conductance = estimated(
    plate.continuousPower === undefined && plate.duty === 'not printed'
      ? 'a usual pattern, scaled so that 60 % of plate power settles at the class limit'
      : 'a usual pattern, scaled so that the continuous rating settles at the class limit',
  )
  const origin: Record<MotorNumber, { from: From; how: string }> = {
    resistance: ohms
      ? measured(held ? 'volts at amps, shaft held' : 'ohms between the leads, lowest')
      : spun
        ? fromPlate('plate volts less the volts it makes by turning, measured')
        : fromPlate('plate volts less the volts it makes by turning'),
    constant: spun
      ? measured('volts made by turning')
      : ohms
        ? fromPlate('plate volts less the measured resistance’s share, over plate speed')
        : fromPlate('plate torque over plate amps less no-load amps'),
    brushDrop:
      held && bench.locked.length >= 3
        ? measured('volts at amps, shaft held')
        : estimated('usual for its volts'),
    dryFriction: friction,
    windage: friction,
    inertia: bench.coast.length > 0 ? measured('coast-down') : estimated(mass),
    flywheel:
      bench.flywheelMass !== undefined || bench.coast.length > 0
        ? measured(bench.flywheelMass === undefined ? 'coast-down' : 'its mass and diameter')
        : estimated('none given'),
    windingCapacity: estimated(mass),
    frameCapacity: estimated(mass),
    windingToFrame: conductance,
    windingToAir: conductance,
    windingToFanAir: conductance,
    frameToAir: conductance,
    frameToFanAir: conductance,
    fanSpeed: plate.speed === undefined ? estimated('usual speed for its volts') : fromPlate('plate speed'),
  }
  for (const name of Object.keys(given) as MotorNumber[])
    origin[name] = { from: 'given', how: 'given in the job' }
  return origin
}

/**
 * The motor with the band of each number: every doubt is taken to both ends of its own band by itself, and what it
 * does to a number is added up in squares, up and down apart. Null where the readings make no motor.
 */
export function know(readings: MotorReadings): { motor: Motor; known: KnownMotor } | null {
  const basis: Basis = { readings, assume: USUAL }
  const motor = identify(readings, USUAL)
  if (!sound(motor)) return null
  const names = Object.keys(motor.numbers) as MotorNumber[]
  const up = new Map<MotorNumber, number>()
  const down = new Map<MotorNumber, number>()
  for (const doubt of doubtsOf(readings)) {
    const ends = [-1, 1].map((where) => {
      const moved = doubt.at(basis, where)
      return identify(moved.readings, moved.assume)?.numbers ?? null
    })
    for (const name of names) {
      const value = motor.numbers[name]
      const shifts = ends.map((numbers) => shift(numbers, name, value))
      const rise = Math.max(0, ...shifts)
      const fall = Math.max(0, ...shifts.map((s) => -s))
      up.set(name, (up.get(name) ?? 0) + rise * rise)
      down.set(name, (down.get(name) ?? 0) + fall * fall)
    }
  }
  const origin = origins(readings)
  const known = Object.fromEntries(
    names.map((name): [MotorNumber, Known] => {
      const value = motor.numbers[name]
      return [
        name,
        {
          value,
          low: value * Math.exp(-Math.sqrt(down.get(name) ?? 0)),
          high: value * Math.exp(Math.sqrt(up.get(name) ?? 0)),
          ...origin[name],
        },
      ]
    }),
  ) as KnownMotor
  return { motor, known }
}

/** Furthest one doubt may push a number: a factor of ten. Further, the readings say nothing about it. */
const FARTHEST = Math.log(10)

/** How far a number moved, in logarithm: bands are factors, and stay above nothing. */
function shift(numbers: MotorNumbers | null, name: MotorNumber, value: number): number {
  if (value === 0) return 0
  const moved = numbers?.[name]
  if (moved === undefined || !(moved > 0)) return -FARTHEST
  return Math.min(Math.max(Math.log(moved / value), -FARTHEST), FARTHEST)
}
