// What is known of a motor, in words: a line for each number, and its torque all day and at its plate.
import { describe, expect, it } from 'vitest'
import { bandWords, motorLines, MOTOR_NUMBERS, originWords, torqueWords } from '../../../sim/say/motor.ts'
import { unitsOf } from '../../../sim/quantity.ts'
import { APPLE_MILL, BAND_SAW, BOWL_LATHE, known, motor } from '../identify/motors.ts'
import { METRIC, US, visible } from './units.ts'

const mill = known(motor(APPLE_MILL, { ohms: ['1.1 Ω', '1.2 Ω'] }, { given: { flywheel: 0 } }))
const lines = (units: typeof US) =>
  motorLines(mill.known, units).map(({ label, value, band, origin }) =>
    visible([label, value, band, origin].join(' | ')),
  )

describe('a line for each number', () => {
  it('says value, band and origin, constant and resistance first', () => {
    expect(lines(METRIC).slice(0, 3)).toEqual([
      'Motor constant, cold | 26.9~V/krpm | 25.7 to 28.6~V/krpm | From the plate: plate volts less the measured resistance’s share, over plate speed.',
      'Winding resistance, cold | 1.1~Ω | 1.04 to 1.16~Ω | Measured: ohms between the leads, lowest.',
      'Brush drop | 1.5~V | 0.75 to 2.25~V | Estimated: usual for its volts.',
    ])
  })

  it('leaves the band empty where there is no doubt', () => {
    expect(lines(METRIC)).toContain('Flywheel inertia | 0~kg·m² |  | Given in the job.')
  })

  it('in the reader’s units', () => {
    expect(lines(METRIC).find((line) => line.startsWith('Rotor'))).toMatch(
      /^Rotor inertia \| 0\.00119~kg·m² \|/,
    )
    expect(lines(US).find((line) => line.startsWith('Rotor'))).toMatch(/^Rotor inertia \| 0\.0282~lb·ft² \|/)
  })

  it('every number of the motor once, with a unit of its own dimension', () => {
    expect(lines(US)).toHaveLength(Object.keys(mill.numbers).length)
    expect(Object.keys(MOTOR_NUMBERS).toSorted()).toEqual(Object.keys(mill.numbers).toSorted())
    for (const { dimension } of Object.values(MOTOR_NUMBERS))
      expect(unitsOf(dimension).length).toBeGreaterThan(0)
    expect(new Set(Object.values(MOTOR_NUMBERS).map(({ label }) => label)).size).toBe(15)
  })

  it('bands of small numbers keep three digits; equal ends are one value', () => {
    const band = (low: number, high: number) =>
      visible(bandWords({ value: low, low, high, from: 'measured', how: 'x' }, 'viscous friction', US))
    expect(band(8.39e-5, 3.92e-4)).toBe('0.0000839 to 0.000392~N·m·s/rad')
    expect(band(2e-4, 2.00001e-4)).toBe('0.0002~N·m·s/rad')
  })

  it('every origin is a sentence', () => {
    for (const one of Object.values(mill.known)) expect(originWords(one)).toMatch(/^[A-Z].*[^.]\.$/)
  })
})

describe('torque', () => {
  const words = (readings: ReturnType<typeof motor>, units = METRIC) =>
    visible(torqueWords(known(readings).motor, units))

  it('at the plate’s power and all day, and the copper heat between', () => {
    // 1.6 and 0.9 hp at 4000 rpm: 2.85 and 1.60 N·m. Amps 13, and 0.91 + 12.09 · 0.9/1.6 = 7.71: squared, 2.8 times.
    expect(words(motor(APPLE_MILL))).toBe(
      'The plate’s power at 4_000~rpm is a torque of 2.8~N·m; all day it is 1.6~N·m. Between them lies 2.8 times the copper heat.',
    )
    expect(words(motor(APPLE_MILL), US)).toMatch(/torque of 2\.1~lbf·ft; all day it is 1\.2~lbf·ft\./)
  })

  it.each([
    // JOB.md f: peaks of 1.67 to 2.5 times are 2.8 to 6.3 times the copper heat, no-load amps left out.
    [1.67, '2.8'],
    [2.17, '4.7'],
    [2.5, '6.2'],
  ])('a peak of %d times is %s times the copper heat', (peak, heat) => {
    const plate = { ...APPLE_MILL, continuousPower: `${1.6 / peak} hp` }
    const running = [{ volts: '120 V', amps: '0.001 A' }]
    expect(words(motor(plate, { running }))).toContain(`lies ${heat} times the copper heat`)
    // No-load amps flow at any load, so with the usual 7 % it is less.
    expect(words(motor(plate))).not.toContain(`lies ${heat} times`)
  })

  it('of a plate marked CONT is all day', () => {
    const { continuousPower: _, ...plate } = APPLE_MILL
    expect(words(motor({ ...plate, duty: 'continuous' }))).toBe(
      'The plate’s power at 4_000~rpm is a torque of 2.8~N·m, all day.',
    )
  })

  it('all day at another speed says so', () => {
    expect(words(motor({ ...BOWL_LATHE, continuousSpeed: '4000 rpm' }))).toMatch(
      /all day it is 2\.3~N·m at 4_000~rpm\./,
    )
    expect(words(motor(BAND_SAW))).not.toMatch(/all day it is .* at /)
  })

  it('held for minutes is not called all day', () => {
    expect(words(motor({ ...APPLE_MILL, continuousFor: '30 min' }))).toMatch(/; for 30~min it is 1\.6~N·m\./)
  })
})
