// The doubts: every reading and assumption that may be off, and how the readings look when it is.
import type { Bench } from '../parts/bench.ts'
import type { Plate } from '../parts/plate.ts'
import { ASSUMPTIONS, type Assumed, type AssumptionName, between } from './assume.ts'
import type { MotorReadings } from './motor.ts'

/** Readings and assumptions together: what identification starts from. */
export interface Basis {
  readonly readings: MotorReadings
  readonly assume: Assumed
}

export interface Doubt {
  readonly name: string
  readonly about: string
  /** The basis with this doubt at its low end (−1), as read (0) or at its high end (1) of an 8-in-10 band. */
  readonly at: (basis: Basis, where: number) => Basis
}

/** How far a printed or read value is usually off, as a share (common practice, no source). */
const PRINTED: Partial<Record<keyof Plate, number>> = {
  volts: 0.02,
  amps: 0.03,
  power: 0.05,
  speed: 0.03,
  continuousPower: 0.05,
  continuousSpeed: 0.03,
  mass: 0.03,
}
const METER = 0.02
const CLAMP = 0.04
const STOPWATCH = 0.05

const assumption = (name: AssumptionName): Doubt => {
  const { low, usual, high, about } = ASSUMPTIONS[name]
  return {
    name,
    about,
    at: ({ readings, assume }, where) => ({
      readings,
      assume: { ...assume, [name]: between(low, usual, high, where) },
    }),
  }
}

const printed = (name: keyof Plate, share: number): Doubt => ({
  name: `plate.${name}`,
  about: `plate ${name}`,
  at: ({ readings, assume }, where) => ({
    assume,
    readings: {
      ...readings,
      plate: { ...readings.plate, [name]: (readings.plate[name] as number) * (1 + where * share) },
    },
  }),
})

const onBench = (name: string, about: string, change: (bench: Bench, where: number) => Bench): Doubt => ({
  name: `bench.${name}`,
  about,
  at: ({ readings, assume }, where) => ({
    assume,
    readings: { ...readings, bench: change(readings.bench, where) },
  }),
})

/** Every doubt that bears on these readings. */
export function doubtsOf({ plate, bench }: MotorReadings): Doubt[] {
  const found: Doubt[] = (Object.keys(ASSUMPTIONS) as AssumptionName[]).map(assumption)
  for (const [name, share] of Object.entries(PRINTED) as [keyof Plate, number][])
    if (plate[name] !== undefined) found.push(printed(name, share))
  if (bench.ohms.length > 0) {
    const lowest = Math.min(...bench.ohms)
    const mean = bench.ohms.reduce((sum, r) => sum + r, 0) / bench.ohms.length
    // The lowest is brush contact at its best; what the shaft positions differ by is how well that is known.
    const share = Math.hypot(METER, (mean - lowest) / 2 / lowest)
    found.push(
      onBench('ohms', 'ohms between the leads', (b, where) => ({
        ...b,
        ohms: b.ohms.map((r) => r * (1 + where * share)),
      })),
    )
  }
  if (bench.locked.length > 0)
    found.push(
      onBench('locked', 'volts at amps, shaft held', (b, where) => ({
        ...b,
        locked: b.locked.map(({ volts, amps }) => ({
          volts: volts * (1 + where * Math.hypot(METER, CLAMP)),
          amps,
        })),
      })),
    )
  if (bench.spin.length > 0)
    found.push(
      onBench('spin', 'volts made by turning', (b, where) => ({
        ...b,
        spin: b.spin.map(({ speed, volts }) => ({ speed, volts: volts * (1 + where * METER) })),
      })),
    )
  if (bench.running.length > 0)
    found.push(
      onBench('running', 'amps running free', (b, where) => ({
        ...b,
        running: b.running.map((run) => ({ ...run, amps: run.amps * (1 + where * CLAMP) })),
      })),
    )
  if (bench.coast.length > 0)
    found.push(
      onBench('coast', 'coast-down times', (b, where) => ({
        ...b,
        coast: b.coast.map(({ time, speed }) => ({ time: time * (1 + where * STOPWATCH), speed })),
      })),
    )
  if (bench.flywheelMass !== undefined)
    found.push(
      onBench('flywheelMass', 'flywheel mass and shape', (b, where) => ({
        ...b,
        flywheelMass: (b.flywheelMass ?? 0) * (1 + where * 0.1),
      })),
    )
  return found
}
