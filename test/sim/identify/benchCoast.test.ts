// Coast-down of a motor, and what each reading narrows.
import { describe, expect, it } from 'vitest'
import { coasting } from '../../../sim/identify/bench.ts'
import type { MotorNumber } from '../../../sim/identify/motor.ts'
import { near } from '../physics/lab.ts'
import { APPLE_MILL, known, motor } from './motors.ts'

type Bench = Parameters<typeof motor>[1] & object

describe('coast-down', () => {
  const friction = { dry: 0.1, windage: 2e-4 }
  // With the drill these free runs give just that friction.
  const bench: Bench = {
    spin: [{ speed: '100 rad/s', volts: '25 V' }],
    running: [230, 470].map((speed) => ({
      volts: `${speed / 4} V`,
      amps: `${(0.1 + 2e-4 * speed) / 0.25} A`,
      speed: `${speed} rad/s`,
    })),
  }
  /** J dω/dt = −dry − windage ω in closed form. */
  const speedAfter = (t: number, inertia: number) => (400 + 500) * Math.exp((-2e-4 * t) / inertia) - 500
  const coast = [0, 2, 5, 8].map((t) => ({ time: `${t} s`, speed: `${speedAfter(t, 0.004)} rad/s` }))

  it('the curve', () => {
    near(coasting(400, 5, 0.004, friction), speedAfter(5, 0.004), 1e-12)
    expect(coasting(400, 30, 0.004, friction)).toBe(0)
    near(coasting(400, 5, 0.004, { dry: 0.1, windage: 0 }), 400 - 0.5 / 0.004, 1e-12)
    near(coasting(400, 5, 0.004, { dry: 0, windage: 2e-4 }), 400 * Math.exp(-0.25), 1e-12)
  })

  it('on a bare shaft gives the rotor', () => {
    const { inertia, flywheel } = known(
      motor(APPLE_MILL, { ...bench, coast, coastedWith: 'bare shaft' }),
    ).numbers
    near(inertia, 0.004, 1e-6)
    expect(flywheel).toBe(0)
  })

  it('with a weighed flywheel gives the rotor, with another one the flywheel', () => {
    const disc = { flywheelMass: '1.2 kg', flywheelDiameter: '130 mm' }
    const weighed = known(motor(APPLE_MILL, { ...bench, coast, ...disc })).numbers
    near(weighed.flywheel, 0.5 * 1.2 * 0.065 ** 2, 1e-12)
    near(weighed.inertia + weighed.flywheel, 0.004, 1e-6)
    const other = known(motor(APPLE_MILL, { ...bench, coast })).numbers
    near(other.inertia, 6e-5 * 6 ** (5 / 3), 1e-12)
    near(other.inertia + other.flywheel, 0.004, 1e-6)
    const rim = known(motor(APPLE_MILL, { ...disc, flywheelShape: 'rim' })).numbers
    near(rim.flywheel, 0.7 * 1.2 * 0.065 ** 2, 1e-12)
  })

  it('of a flywheel given as none is all the rotor’s', () => {
    const { inertia } = known(motor(APPLE_MILL, { ...bench, coast }, { given: { flywheel: 0 } })).numbers
    near(inertia, 0.004, 1e-6)
  })

  it.each([
    ['one reading', [{ time: '0 s', speed: '400 rad/s' }]],
    [
      'readings at one moment',
      [
        { time: '1 s', speed: '400 rad/s' },
        { time: '1 s', speed: '300 rad/s' },
      ],
    ],
    [
      'a motor at rest',
      [
        { time: '0 s', speed: '0 rad/s' },
        { time: '3 s', speed: '0 rad/s' },
      ],
    ],
  ])('%s tells nothing', (_, readings) => {
    const one = known(motor(APPLE_MILL, { ...bench, coast: readings }))
    near(one.numbers.inertia, 6e-5 * 6 ** (5 / 3), 1e-12)
    expect(one.known.inertia.from).toBe('estimated')
  })
})

describe('each reading narrows the band of what it measures, and of what follows from it', () => {
  const spin = [{ speed: '1000 rpm', volts: '26 V' }]
  const free = (volts: number) => ({ volts: `${volts} V`, amps: `${0.55 + 0.0025 * volts} A` })
  const width = (bench: Bench, name: MotorNumber) => {
    const { low, high } = known(motor(APPLE_MILL, bench)).known[name]
    return Math.log(high / low)
  }
  const coast = [0, 2, 4].map((t) => ({ time: `${t} s`, speed: `${400 - 70 * t} rad/s` }))
  const held = [2, 3, 4, 5].map((i) => ({ amps: `${i} A`, volts: `${1.3 + 1.1 * i} V` }))

  it.each<[string, Bench, Bench, MotorNumber, number]>([
    ['ohms', {}, { ohms: ['1.1 Ω', '1.2 Ω'] }, 'resistance', 0.25],
    ['ohms', {}, { ohms: ['1.1 Ω', '1.2 Ω'] }, 'constant', 0.7],
    ['shaft held', {}, { locked: held.slice(3) }, 'resistance', 0.5],
    ['shaft held, four times', { locked: held.slice(3) }, { locked: held }, 'resistance', 0.8],
    ['shaft held, four times', {}, { locked: held }, 'brushDrop', 0.7],
    ['a drill', {}, { spin }, 'constant', 0.3],
    ['a drill', {}, { spin }, 'resistance', 0.8],
    ['no-load amps', {}, { running: [free(120)] }, 'dryFriction', 0.9],
    ['no-load amps', {}, { running: [free(120)] }, 'constant', 0.95],
    ['no-load amps and speed', {}, { running: [{ ...free(120), speed: '450 rad/s' }] }, 'constant', 0.4],
    [
      'no-load amps at a second voltage',
      { running: [free(120)], spin },
      { running: [free(120), free(40)], spin },
      'dryFriction',
      0.5,
    ],
    [
      'coast-down',
      { running: [free(120)], spin },
      { running: [free(120)], spin, coast, coastedWith: 'bare shaft' },
      'inertia',
      0.5,
    ],
  ])('%s: %#', (_, before, after, name, least) => {
    expect(width(after, name) / width(before, name)).toBeLessThan(least)
    expect(width(after, name)).toBeGreaterThan(0.01)
  })

  it('ohms read on a motor of tenths of an ohm are known to a digit of the meter only', () => {
    const { low, high } = known(
      motor({ volts: '24 V', amps: '19 A', power: '350 W', speed: '2600 rpm' }, { ohms: ['0.2 Ω'] }),
    ).known.resistance
    expect(low).toBeLessThan(0.16)
    expect(high).toBeGreaterThan(0.24)
  })

  it('says where each number came from', () => {
    const how = (bench: Bench, name: MotorNumber) => {
      const { from, how } = known(motor(APPLE_MILL, bench)).known[name]
      return `${from}: ${how}`
    }
    expect(how({}, 'constant')).toBe('plate: plate torque over plate amps less no-load amps')
    expect(how({ spin }, 'constant')).toBe('measured: volts made by turning')
    expect(how({ running: [{ ...free(120), speed: '450 rad/s' }] }, 'constant')).toBe(
      'measured: volts and speed running free',
    )
    expect(how({ ohms: ['1.1 Ω'] }, 'constant')).toMatch(/^plate: .*measured resistance’s share/)
    expect(how({ ohms: ['1.1 Ω'] }, 'resistance')).toBe('measured: ohms between the leads, lowest')
    expect(how({ spin }, 'resistance')).toMatch(/^plate: .*, measured$/)
    expect(how({ locked: held }, 'brushDrop')).toMatch(/^measured/)
    // Three at one current tell no brush drop apart.
    expect(how({ locked: [held[0], held[0], held[0]] }, 'brushDrop')).toMatch(/^estimated/)
    expect(how({ running: [free(120)] }, 'windage')).toMatch(/^measured/)
    expect(how({ running: [free(120)], clamp: 'wall' }, 'windage')).toMatch(/^estimated/)
    expect(how({ coast, coastedWith: 'bare shaft' }, 'inertia')).toBe('measured: coast-down')
    expect(how({ coast }, 'flywheel')).toBe('measured: coast-down')
    expect(how({ coast, coastedWith: 'bare shaft' }, 'flywheel')).toBe('estimated: none given')
    expect(how({ flywheelMass: '1 kg', flywheelDiameter: '120 mm' }, 'flywheel')).toBe(
      'measured: its mass and diameter',
    )
    expect(how({ flywheelMass: '1 kg' }, 'flywheel')).toBe('estimated: none given')
  })
})
