// Readings that make no motor: each says why, with both numbers, and nothing else.
import { expect, it } from 'vitest'
import { complaints } from '../../../sim/identify/complaints.ts'
import { know } from '../../../sim/identify/known.ts'
import type { MotorNumbers } from '../../../sim/identify/motor.ts'
import { APPLE_MILL, motor } from './motors.ts'

type Plate = Parameters<typeof motor>[0]
type Bench = Parameters<typeof motor>[1] & object

it.each<[string, Plate, Bench, Partial<MotorNumbers>, string, RegExp]>([
  [
    'an empty plate',
    { volts: undefined, amps: undefined, power: undefined },
    {},
    {},
    'plate.power',
    /neither volts, amps nor power\. Two of/,
  ],
  ['volts alone', { amps: undefined, power: undefined }, {}, {}, 'plate.power', /gives only volts\./],
  // JOB.md f: 4 hp at 110 V are 27 A going in, so 4 hp do not come out.
  [
    'horsepower that goes in',
    { volts: '110 V', amps: '27 A', power: '4 hp', speed: '4200 rpm' },
    {},
    {},
    'plate.power',
    /4 hp at 4200 rpm and 27 A needs 119 V and its brushes 1\.5 V, and the plate gives 110 V\./,
  ],
  [
    'no-load amps over plate amps',
    {},
    { running: [{ volts: '120 V', amps: '14 A' }] },
    {},
    'bench.running',
    /draws 14 A running free, and the plate gives 13 A/,
  ],
  [
    'a drill’s speed read ten times too low',
    {},
    { spin: [{ speed: '1000 rpm', volts: '260 V' }] },
    {},
    'bench.spin',
    /makes 978 V at the plate’s 4000 rpm, its brushes take 1\.5 V, and the plate gives 120 V/,
  ],
  [
    'far too many ohms',
    {},
    { ohms: ['12 Ω'] },
    {},
    'bench.ohms',
    /12 Ω and its brushes take 191 V at the plate’s 13 A, and the plate gives 120 V/,
  ],
  [
    'ohms of the probes over those of the winding',
    {},
    { ohms: ['0.3 Ω'], leadOhms: '0.4 Ω' },
    {},
    'bench.leadOhms',
    /touching read 0\.4 Ω, and with the winding 0\.3 Ω/,
  ],
  [
    'brushes that take more than the plate has, by what was read with the shaft held',
    { volts: '12 V' },
    { locked: [2, 4, 8].map((i) => ({ volts: `${13 + 0.2 * i} V`, amps: `${i} A` })) },
    {},
    'bench.locked',
    /Brushes that take 13 V leave nothing of the plate’s 12 V\./,
  ],
  [
    'volts and amps swapped',
    {},
    { locked: [2, 5, 8].map((i) => ({ volts: `${8 - 0.9 * i} V`, amps: `${i} A` })) },
    {},
    'bench.locked',
    /took 6\.2 V at 2 A and 0\.8 V at 8 A.*swapped/,
  ],
  [
    'a given brush drop over the volts it was held at',
    {},
    { locked: [{ volts: '1 V', amps: '2 A' }] },
    { brushDrop: 1.5 },
    'winding.brushDrop',
    /1\.5 V leave the winding nothing of 1 V/,
  ],
  [
    'volts too few for a free run',
    {},
    { ohms: ['1.2 Ω'], running: [{ volts: '2 V', amps: '0.7 A', speed: '20 rpm' }] },
    {},
    'bench.running',
    /^Running free at 2 V, brushes \(1\.5 V\) and winding \(1\.2 Ω at 0\.7 A\) leave it nothing/,
  ],
  [
    'a given brush drop over plate volts',
    { volts: '3 V', amps: '2 A', power: '4 W' },
    {},
    { brushDrop: 5 },
    'winding.brushDrop',
    /^Brushes that take 5 V leave nothing of the plate’s 3 V/,
  ],
  [
    'a given resistance',
    {},
    {},
    { resistance: 20 },
    'winding.resistance',
    /^20 Ω and its brushes take 318 V/,
  ],
  ['a given constant', {}, {}, { constant: 2 }, 'winding.constant', /^It makes 787 V/],
])('%s', (_, plate, bench, given, path, wrong) => {
  const readings = motor({ ...APPLE_MILL, ...plate }, bench, { given })
  expect(know(readings)).toBeNull()
  const [only, ...more] = complaints(readings)
  expect(more).toEqual([])
  expect(only.path).toBe(path)
  expect(`${only.wrong} ${only.wouldDo}`).toMatch(wrong)
})
