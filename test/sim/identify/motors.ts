// Motors for tests of identification: plates and bench readings written as people write them.
import * as v from 'valibot'
import { complaints } from '../../../sim/identify/complaints.ts'
import { know } from '../../../sim/identify/known.ts'
import type { MotorReadings } from '../../../sim/identify/motor.ts'
import { BenchFields } from '../../../sim/parts/bench.ts'
import { PlateFields } from '../../../sim/parts/plate.ts'

type Plate = v.InferInput<typeof PlateFields>
type Bench = v.InferInput<typeof BenchFields>

/** Readings of plate and bench; ferrite, class B and the usual shares of heat unless told otherwise. */
export const motor = (plate: Plate, bench: Bench = {}, more: Partial<MotorReadings> = {}): MotorReadings => ({
  plate: v.parse(PlateFields, plate),
  bench: v.parse(BenchFields, bench),
  magnets: 'ferrite',
  insulation: 'B',
  given: {},
  heat: { frictionShare: 0.5, brushShare: 0.5, fanExponent: 0.8 },
  ...more,
})

/** What is known of them. Throws where they make no motor: a slip in the test. */
export function known(readings: MotorReadings) {
  const found = know(readings)
  if (!found) throw new Error(JSON.stringify(complaints(readings)))
  return { ...found, numbers: found.motor.numbers }
}

/** The sentences of the complaints at a path; all of them without one. */
export const said = (readings: MotorReadings, path?: string): string[] =>
  complaints(readings)
    .filter((each) => path === undefined || each.path === path)
    .map(({ wrong, wouldDo }) => `${wrong} ${wouldDo}`)

/** Invented plates, after those of the demonstrations: these stay as they are. */
export const APPLE_MILL = {
  volts: '120 V',
  amps: '13 A',
  power: '1.6 hp',
  speed: '4000 rpm',
  continuousPower: '0.9 hp',
  mass: '6 kg',
}
export const BOWL_LATHE = {
  volts: '130 V',
  amps: '16 A',
  power: '2.2 hp',
  speed: '5800 rpm',
  continuousPower: '1.3 hp',
  mass: '7 kg',
}
export const BAND_SAW = {
  volts: '24 V',
  amps: '19 A',
  power: '350 W',
  speed: '2600 rpm',
  continuousPower: '210 W',
  mass: '2 kg',
  soldWith: 'enclosed',
}
