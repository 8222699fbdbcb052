// A motor from plates whose answer is published: plates worked by hand, textbook examples, data sheets taken as plates.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../sim/identify/assume.ts'
import { identify } from '../../../sim/identify/motor.ts'
import { pointOf } from '../../../sim/identify/point.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { publishedCase } from '../../checks/files.ts'
import { currentAt, near, plantWith } from '../physics/lab.ts'
import { known, motor } from './motors.ts'

type Numbers = Record<string, number>
const pointAt = (plate: Parameters<typeof motor>[0]) => pointOf(motor(plate).plate, USUAL)!

describe('130 V, 17.2 A, 7099 rpm, 2.5 hp', () => {
  // Worked by hand from a plate as for a cold motor without brush drop (JOB.md f): so are the values below.
  const plate = { volts: '130 V', amps: '17.2 A', speed: '7099 rpm', power: '2.5 hp' }

  it('torque 2.51 N·m, efficiency 83 %', () => {
    const { torque, power } = pointAt(plate)
    expect(torque.toFixed(2)).toBe('2.51')
    expect((power / (130 * 17.2)).toFixed(2)).toBe('0.83')
  })

  it.each([
    ['0.7 A', 0.152, 0.99],
    ['1.0 A', 0.155, 0.87],
    ['1.5 A', 0.16, 0.65],
  ])('no-load %s: k %d, R %d', (amps, k, R) => {
    const running = [{ volts: '130 V', amps }]
    const { numbers } = known(motor({ ...plate, values: 'cold' }, { running }, { given: { brushDrop: 0 } }))
    expect(Number(numbers.constant.toFixed(3))).toBe(k)
    expect(Number(numbers.resistance.toFixed(2))).toBe(R)
    // Read as the plate of a warm motor with brushes, the same numbers are a stronger one with less resistance.
    const warm = known(motor(plate, { running })).numbers
    near(warm.constant, numbers.constant / 0.94, 1e-12)
    expect(warm.resistance).toBeLessThan(0.85 * numbers.resistance)
  })
})

describe('torque from horsepower and speed', () => {
  it.each([
    // JOB.md f: the small fast "1 hp" pulls less than the big slow third.
    ['1 hp', '6000 rpm', 1.19],
    ['0.3333333 hp', '1725 rpm', 1.38],
    ['0.3333333 hp', '1720 rpm', 1.38],
    ['1 hp', '3450 rpm', 2.06],
  ])('%s at %s: %d N·m', (power, speed, torque) => {
    expect(Number(pointAt({ volts: '90 V', power, speed }).torque.toFixed(2))).toBe(torque)
  })

  it('P45: shaft and developed torque, and the power developed', () => {
    // Hubert, Electric Machines, Ex 10.10 p. 427, as transcribed in a public companion: the armature takes the amps
    // less those of its field; no brush drop, resistance as it is when hot.
    const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P45')
    const amps = inputs.I_T - inputs.V / inputs.Rf
    const { numbers, point } = identify(
      motor(
        {
          volts: `${inputs.V} V`,
          amps: `${amps} A`,
          power: `${inputs.hp} hp`,
          speed: `${inputs.rpm} rpm`,
          values: 'cold',
        },
        {},
        { given: { resistance: inputs.Racir, brushDrop: 0 } },
      ),
      USUAL,
    )!
    near(toUnit(point.torque, 'lbf·ft'), published.T_shaft_lbft, 5e-4)
    near(numbers.constant * point.speed * amps, published.P_mech_W, 5e-4)
    near(toUnit(numbers.constant * amps, 'lbf·ft'), published.T_dev_lbft, 5e-4)
    near(numbers.constant * point.speed * amps, recomputed.P_mech_W, 1e-9)
  })

  it('P46: rated torque, and the current of a locked rotor', () => {
    // Hubert, Ex 10.12 p. 433, as transcribed in a public companion.
    const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P46')
    const { torque } = pointAt({
      volts: `${inputs.V} V`,
      power: `${inputs.hp} hp`,
      speed: `${inputs.rpm} rpm`,
    })
    near(toUnit(torque, 'lbf·ft'), published.T_rated_lbft, 5e-4)
    const plant = plantWith({ supply: { volts: inputs.V }, winding: { resistance: inputs.Racir } })
    near(currentAt(plant, { w: 0 }), published.I_locked_A, 5e-4)
    near(currentAt(plant, { w: 0 }), recomputed.I_locked_A, 1e-9)
  })
})

describe.each([
  ['P04', 'C40-D-400FX, 120 V'],
  ['P06', 'C21-H-175FX, 36 V'],
])(
  '%s data sheet of a PM servo motor, %s, taken as a plate (source incomplete: maker or date not given)',
  (id) => {
    const { inputs, published, recomputed } = publishedCase<
      Record<string, number | string>,
      Numbers,
      Numbers
    >(id)
    const given = (name: string) => Number(inputs[name])
    const constant = fromUnit(given('Ke_V_per_krpm'), 'V/krpm')
    const plate = (load: 'T1' | 'T2') => ({
      volts: `${given('V')} V`,
      amps: `${recomputed[`I_${load}`]} A`,
      power: `${recomputed[`Pout_${load}`]} W`,
      speed: `${published[`rpm_${load}`]} rpm`,
      values: 'cold',
    })

    it('at its second load point: constant and terminal resistance lie in the stated bands', () => {
      const amps = recomputed.I_T2
      const { constant: k, resistance: R, brushDrop } = known(motor(plate('T2'))).known
      expect(k.low).toBeLessThan(constant)
      expect(k.high).toBeGreaterThan(constant)
      // Between the leads: winding and brushes together.
      expect(R.low + brushDrop.value / amps).toBeLessThan(given('Rt'))
      expect(R.high + brushDrop.value / amps).toBeGreaterThan(given('Rt'))
      // Bands that say something.
      expect(k.high / k.low).toBeLessThan(1.2)
      // With no drop of their own the winding is all there is between the leads.
      const all = known(motor(plate('T2'), {}, { given: { brushDrop: 0 } })).known.resistance
      expect(all.low).toBeLessThan(given('Rt'))
      expect(all.high).toBeGreaterThan(given('Rt'))
    })

    it('at its first load point, with its no-load amps read, the constant is right', () => {
      const running = [{ volts: `${given('V')} V`, amps: `${given('I0')} A` }]
      const off = (bench: object) =>
        Math.abs(known(motor(plate('T1'), bench)).numbers.constant / constant - 1)
      expect(off({ running })).toBeLessThan(1e-3)
      // So light a load leaves the usual share far off.
      expect(off({})).toBeGreaterThan(0.05)
    })
  },
)
