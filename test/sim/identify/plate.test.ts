// A motor from its plate: sums of PHYSICS.md §3 by hand, and what is taken where the plate leaves something out.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../sim/identify/assume.ts'
import { identify } from '../../../sim/identify/motor.ts'
import { pointOf } from '../../../sim/identify/point.ts'
import { near } from '../physics/lab.ts'
import { APPLE_MILL, known, motor } from './motors.ts'

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
