// Plates and benches at random, within the bounds of their fields: possible, impossible and half filled in.
import fc from 'fast-check'
import type { MotorReadings } from '../../../sim/identify/motor.ts'
import { BenchFields } from '../../../sim/parts/bench.ts'
import { PlateFields } from '../../../sim/parts/plate.ts'
import * as v from 'valibot'

/** A quantity between bounds, even in its logarithm. */
const size = (low: number, high: number, unit: string) =>
  fc
    .double({ min: Math.log(low), max: Math.log(high), noNaN: true })
    .map((log) => `${Math.min(Math.max(Math.exp(log), low), high)} ${unit}`)
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined, freq: 2 })
const few = <T>(of: fc.Arbitrary<T>) => fc.oneof(fc.constant([]), fc.array(of, { maxLength: 5 }))

/** Half of them somewhere near a motor; the others anywhere. */
const near = (low: number, high: number, min: number, max: number, unit: string) =>
  fc.oneof({ arbitrary: size(low, high, unit), weight: 3 }, size(min, max, unit))

export const anyPlate = fc.record({
  volts: maybe(near(12, 180, 1, 400, 'V')),
  amps: maybe(near(2, 40, 0.05, 500, 'A')),
  power: maybe(near(50, 3000, 1, 50_000, 'W')),
  speed: maybe(near(1500, 7000, 50, 12_000, 'rpm')),
  printedWatts: maybe(near(50, 3000, 1, 50_000, 'W')),
  values: fc.constantFrom('warm', 'cold'),
  continuousPower: maybe(near(50, 2000, 1, 50_000, 'W')),
  continuousSpeed: maybe(size(50, 12_000, 'rpm')),
  continuousAmps: maybe(near(1, 20, 0.05, 500, 'A')),
  continuousFor: fc.option(size(1, 1440, 'min'), { nil: undefined, freq: 5 }),
  duty: fc.constantFrom('not printed', 'continuous'),
  formFactor: maybe(size(1, 2.5, '')),
  soldWith: fc.constantFrom('shaft fan', 'none', 'enclosed', 'enclosed, outer fan'),
  mass: maybe(near(1, 20, 0.05, 500, 'kg')),
})

const turning = fc.oneof(fc.constant('0 rpm'), size(1, 30_000, 'rpm'))
export const anyBench = fc.record({
  ohms: few(near(0.1, 5, 0.001, 1000, 'Ω')),
  leadOhms: fc.oneof(fc.constant('0 Ω'), size(0.01, 10, 'Ω')),
  roomC: fc.double({ min: -30, max: 120, noNaN: true }).map((c) => `${c} °C`),
  locked: few(fc.record({ volts: near(1, 10, 0.001, 400, 'V'), amps: near(1, 10, 0.001, 500, 'A') })),
  spin: few(fc.record({ speed: turning, volts: size(0.001, 400, 'V') })),
  running: few(
    fc.record({ volts: size(0.001, 400, 'V'), amps: size(0.001, 500, 'A'), speed: maybe(turning) }),
  ),
  clamp: fc.constantFrom('motor lead', 'motor lead', 'wall', 'controller input'),
  coast: few(fc.record({ time: size(0.1, 3600, 's'), speed: turning })),
  coastedWith: fc.constantFrom('flywheel', 'bare shaft'),
  flywheelMass: maybe(size(0.01, 200, 'kg')),
  flywheelDiameter: maybe(size(0.01, 2, 'm')),
  flywheelShape: fc.constantFrom('disc', 'rim'),
})

export const anyMotor: fc.Arbitrary<MotorReadings> = fc
  .tuple(
    anyPlate,
    fc.oneof(fc.constant({}), anyBench),
    fc.constantFrom('ferrite', 'NdFeB', 'AlNiCo'),
    fc.constantFrom('A', 'E', 'B', 'F', 'H'),
  )
  .map(([plate, bench, magnets, insulation]) => ({
    plate: v.parse(PlateFields, plate),
    bench: v.parse(BenchFields, bench),
    magnets,
    insulation,
    given: {},
    heat: { frictionShare: 0.5, brushShare: 0.5, fanExponent: 0.8 },
  }))
