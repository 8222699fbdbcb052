// A motor from its plate: sums of PHYSICS.md §3 by hand, textbook examples, data sheets taken as plates, and guesses.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../sim/identify/assume.ts'
import { identify } from '../../../sim/identify/motor.ts'
import { pointOf } from '../../../sim/identify/point.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { publishedCase } from '../../checks/files.ts'
import { currentAt, near, plantWith } from '../physics/lab.ts'
import { APPLE_MILL, known, motor } from './motors.ts'

type Numbers = Record<string, number>
const rpm = (value: number) => (value * Math.PI) / 30
const hp = (value: number) => value * 550 * 0.3048 * 0.45359237 * 9.80665
const pointAt = (plate: Parameters<typeof motor>[0]) => pointOf(motor(plate).plate, USUAL)!

describe('the apple mill’s plate, worked out by hand', () => {
  // 120 V 13 A 1.6 hp 4000 rpm: winding 75 °C (copper 310/255), frame 50 °C (ferrite 0.94), brushes 1.5 V, no-load 7 %.
  const torque = hp(1.6) / rpm(4000)
  const warm = torque / (13 * 0.93)

  it('resistance and constant', () => {
    const { numbers } = known(motor(APPLE_MILL))
    near(numbers.constant, warm / 0.94, 1e-12)
    expect(numbers.constant).toBeCloseTo(0.25063, 5)
    near(numbers.resistance, ((118.5 - warm * rpm(4000)) / 13) * (255 / 310), 1e-12)
    expect(numbers.resistance).toBeCloseTo(1.2537, 4)
    expect(numbers.brushDrop).toBe(1.5)
  })

  it('friction: half of k times the no-load amps, and half over the no-load speed', () => {
    const { dryFriction, windage, resistance } = known(motor(APPLE_MILL)).numbers
    near(dryFriction, (warm * 0.91) / 2, 1e-12)
    near(windage, dryFriction / ((118.5 - resistance * 0.91) / warm), 1e-12)
  })

  it('with ohms measured, the constant is what volts they leave, over the speed', () => {
    const { numbers } = known(motor(APPLE_MILL, { ohms: ['1.2 Ω', '1.4 Ω', '1.3 Ω'], leadOhms: '0.1 Ω' }))
    near(numbers.resistance, 1.1, 1e-12)
    near(numbers.constant, (118.5 - 1.1 * (310 / 255) * 13) / rpm(4000) / 0.94, 1e-12)
  })

  it('with ohms measured in a cold room, they are more at 20 °C', () => {
    near(
      known(motor(APPLE_MILL, { ohms: ['1.1 Ω'], roomC: '5 °C' })).numbers.resistance,
      (1.1 * 255) / 240,
      1e-12,
    )
  })

  it('spun by a drill, the resistance is what volts are left, over the amps', () => {
    const { numbers } = known(motor(APPLE_MILL, { spin: [{ speed: '1000 rpm', volts: '26 V' }] }))
    near(numbers.constant, 26 / rpm(1000), 1e-12)
    near(numbers.resistance, ((118.5 - numbers.constant * 0.94 * rpm(4000)) / 13) * (255 / 310), 1e-12)
  })

  it('neodymium and AlNiCo lose less when warm', () => {
    const cold = (magnets: 'NdFeB' | 'AlNiCo') => known(motor(APPLE_MILL, {}, { magnets })).numbers.constant
    near(cold('NdFeB'), warm / (1 - 0.0011 * 30), 1e-12)
    near(cold('AlNiCo'), warm / (1 - 0.0002 * 30), 1e-12)
  })

  it('a usual rotor: 6e-5 times mass to 5/3; 4 kg for each kW of volts times amps where none was weighed', () => {
    near(known(motor(APPLE_MILL)).numbers.inertia, 6e-5 * 6 ** (5 / 3), 1e-12)
    const { mass, numbers } = known(motor({ ...APPLE_MILL, mass: undefined })).motor
    near(mass, 6.24, 1e-12)
    near(numbers.inertia, 6e-5 * 6.24 ** (5 / 3), 1e-12)
  })

  it.each([
    ['12 V', 0.6],
    ['24 V', 0.6],
    ['36 V', 1],
    ['48 V', 1],
    ['90 V', 1.5],
    ['180 V', 1.5],
  ])('brushes of a %s motor take %d V', (volts, drop) => {
    expect(identify(motor({ volts, amps: '5 A' }), USUAL)!.numbers.brushDrop).toBe(drop)
  })
})

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

describe('what the plate leaves out', () => {
  it('amps and power come from an efficiency of 77 %', () => {
    const noAmps = pointAt({ volts: '110 V', power: '4 hp', speed: '4200 rpm' })
    near(noAmps.amps, hp(4) / (110 * 0.77), 1e-12)
    expect(noAmps.guessed).toEqual(['amps'])
    const noPower = pointAt({ volts: '110 V', amps: '27 A', speed: '4200 rpm' })
    near(noPower.power, 110 * 27 * 0.77, 1e-12)
    expect(noPower.guessed).toEqual(['power'])
    const noVolts = pointAt({ amps: '10 A', power: '1 hp', speed: '4200 rpm' })
    near(noVolts.volts, hp(1) / 7.7, 1e-12)
    expect(noVolts.guessed).toEqual(['volts'])
  })

  it.each([
    ['24 V', 2800],
    ['90 V', 5000],
  ])('the speed of a %s motor is taken as %d rpm', (volts, speed) => {
    const point = pointAt({ volts, amps: '10 A', power: '150 W' })
    near(point.speed, rpm(speed), 1e-12)
    expect(point.guessed).toEqual(['speed'])
  })

  it('watts printed beside horsepower are taken for it', () => {
    near(pointAt({ volts: '130 V', power: '2.75 hp', printedWatts: '1492 W' }).power, 1492, 1e-12)
  })

  it.each([[{}], [{ volts: '12 V' }], [{ speed: '4000 rpm', amps: '5 A' }]])('%j is too little', (plate) => {
    expect(pointOf(motor(plate).plate, USUAL)).toBeNull()
    expect(identify(motor(plate), USUAL)).toBeNull()
  })

  it('a speed not printed follows from the constant, once that is measured: by ohms, or by power', () => {
    // Made from a motor of 0.25 V·s/rad and 1.2 Ω, at 75 °C and 50 °C: 400 rad/s at 120 V and what amps that takes.
    const amps = (120 - 1.5 - 0.25 * 0.94 * 400) / (1.2 * (310 / 255))
    const power = 0.25 * 0.94 * (0.93 * amps) * 400
    const plate = { volts: '120 V', amps: `${amps} A` }
    const spin = [{ speed: '100 rad/s', volts: '25 V' }]
    const both = known(motor(plate, { spin, ohms: ['1.2 Ω'] })).motor.point
    expect(both.guessed).toEqual([])
    near(both.speed, 400, 1e-12)
    near(both.power, power, 1e-12)
    const one = known(motor({ ...plate, power: `${power} W` }, { spin }))
    expect(one.motor.point.guessed).toEqual([])
    near(one.motor.point.speed, 400, 1e-12)
    near(one.numbers.resistance, 1.2, 1e-12)
    // With the constant alone, power stays a guess.
    expect(known(motor(plate, { spin })).motor.point.guessed).toEqual(['power'])
    // And a power not printed follows from the constant.
    near(known(motor({ ...plate, speed: '400 rad/s' }, { spin })).motor.point.power, power, 1e-12)
  })
})
