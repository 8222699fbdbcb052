// The doubts: every reading and assumption that may be off, and how the readings look when it is.
import type { Bench } from '../parts/bench.ts'
import type { Plate } from '../parts/plate.ts'
import { ASSUMPTIONS, type Assumed, type AssumptionName, assumedAt } from './assume.ts'
import { heldPoints, partsBrushes } from './bench.ts'
import type { MotorReadings } from './motor.ts'
import { line, type Points } from './regress.ts'

/** Readings and assumptions together: what identification starts from. */
export interface Basis {
  readonly readings: MotorReadings
  readonly assume: Assumed
}

export interface Doubt {
  readonly name: string
  readonly about: string
  /** The basis with this doubt at its low end (−1), as read (0) or at its high end (1) of an 8-in-10 band; or further out. */
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
  printedWatts: 0.05,
  continuousAmps: 0.03,
}
const METER = 0.02
const CLAMP = 0.04
const STOPWATCH = 0.05
const SCALES_AND_SHAPE = 0.1
/** An ohmmeter's last digit and its probes' contact, Ω (common practice, no source). */
const PROBES = 0.05
/** Half-width of an 8-in-10 band in standard deviations. */
const EIGHT_IN_TEN = 1.28

const assumption = (name: AssumptionName): Doubt => {
  return {
    name,
    about: ASSUMPTIONS[name].about,
    at: ({ readings, assume }, where) => ({
      readings,
      assume: { ...assume, [name]: assumedAt(name, where) },
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

/**
 * How far each reading may be off by itself, whatever the others are: as a tilt of their line and as a lift of all
 * of it, each at 8 in 10. What they scatter about the line, and what a meter reads them to. Needs two x at least.
 */
function strays(points: Points): { tilt: (x: number) => number; lift: number } {
  const { scatter, middle, reach } = line(points)
  const mean = points.reduce((sum, [, y]) => sum + y, 0) / points.length
  const each = Math.hypot(EIGHT_IN_TEN * scatter, METER * mean)
  return { tilt: (x) => (each * (x - middle)) / reach, lift: each / Math.sqrt(points.length) }
}

function ohmsDoubts({ ohms }: Bench): Doubt[] {
  if (ohms.length === 0) return []
  const lowest = Math.min(...ohms)
  const mean = ohms.reduce((sum, r) => sum + r, 0) / ohms.length
  // The lowest is brush contact at its best; what the shaft positions differ by is how well that is known.
  const off = Math.hypot(METER * lowest, (mean - lowest) / 2, PROBES)
  return [
    onBench('ohms', 'ohms between the leads', (bench, where) => ({
      ...bench,
      ohms: bench.ohms.map((r) => r + where * off),
    })),
  ]
}

function heldDoubts(bench: Bench): Doubt[] {
  if (bench.locked.length === 0) return []
  const held = (name: string, change: (volts: number, amps: number) => number): Doubt =>
    onBench(name, 'volts at amps, shaft held', (b, where) => ({
      ...b,
      locked: b.locked.map(({ volts, amps }) => ({ volts: volts + where * change(volts, amps), amps })),
    }))
  const gain = Math.hypot(METER, CLAMP)
  if (partsBrushes(bench)) {
    const { tilt, lift } = strays(heldPoints(bench))
    return [
      held('locked', (volts) => gain * volts),
      held('locked tilt', (_, amps) => tilt(amps)),
      held('locked lift', () => lift),
    ]
  }
  const each = bench.locked.map(({ volts, amps }) => volts / amps)
  const mean = each.reduce((sum, r) => sum + r, 0) / each.length
  const share = Math.hypot(gain, (mean - Math.min(...each)) / mean)
  return [held('locked', (volts) => share * volts)]
}

function freeDoubts({ running }: Bench): Doubt[] {
  if (running.length === 0) return []
  const free = (name: string, change: (amps: number, volts: number) => number): Doubt =>
    onBench(name, 'amps running free', (b, where) => ({
      ...b,
      running: b.running.map((run) => ({
        ...run,
        amps: Math.max(0, run.amps + where * change(run.amps, run.volts)),
      })),
    }))
  const found = [
    free('running', (amps) => CLAMP * amps),
    onBench('running speed', 'volts and speed running free', (b, where) => ({
      ...b,
      running: b.running.map((run) => ({ ...run, speed: run.speed && run.speed * (1 + where * METER) })),
    })),
  ]
  if (new Set(running.map(({ volts }) => volts)).size < 2) return found
  // Volts stand for speeds here: those may not have been read, and go with them.
  const { tilt, lift } = strays(running.map(({ volts, amps }) => [volts, amps]))
  return [...found, free('running tilt', (_, volts) => tilt(volts)), free('running lift', () => lift)]
}

/** Every doubt that bears on these readings. */
export function doubtsOf({ plate, bench }: MotorReadings): Doubt[] {
  const found: Doubt[] = (Object.keys(ASSUMPTIONS) as AssumptionName[]).map(assumption)
  for (const [name, share] of Object.entries(PRINTED) as [keyof Plate, number][])
    if (plate[name] !== undefined) found.push(printed(name, share))
  found.push(...ohmsDoubts(bench), ...heldDoubts(bench), ...freeDoubts(bench))
  if (bench.spin.length > 0)
    found.push(
      onBench('spin', 'volts made by turning', (b, where) => ({
        ...b,
        spin: b.spin.map(({ speed, volts }) => ({ speed, volts: volts * (1 + where * METER) })),
      })),
    )
  if (bench.coast.length > 0)
    found.push(
      onBench('coast', 'coast-down times', (b, where) => ({
        ...b,
        coast: b.coast.map(({ time, speed }) => ({ time: time * (1 + where * STOPWATCH), speed })),
      })),
    )
  const { flywheelMass } = bench
  if (flywheelMass !== undefined)
    found.push(
      onBench('flywheelMass', 'flywheel mass and shape', (b, where) => ({
        ...b,
        flywheelMass: flywheelMass * (1 + where * SCALES_AND_SHAPE),
      })),
    )
  return found
}
