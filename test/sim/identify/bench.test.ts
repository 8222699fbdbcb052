// Bench readings into numbers: generated readings come back, what each reading tells, and how it narrows the bands.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../sim/identify/assume.ts'
import { identify } from '../../../sim/identify/motor.ts'
import { oracle } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'
import { APPLE_MILL, known, motor } from './motors.ts'

type Numbers = Record<string, number>
type Bench = Parameters<typeof motor>[1] & object
const rpm = (value: number) => (value * Math.PI) / 30

describe('O16: readings made from k, R and friction give them back', () => {
  const { inputs, answers } = oracle<Numbers, Record<string, Numbers>>('O16')
  const spin = [{ speed: '1000 rpm', volts: `${answers.backdrive_1000rpm_V} V` }]
  const locked = [{ volts: '20 V', amps: `${answers.locked_20V.I_A} A` }]
  const running = [60, 90, 120].map((volts) => {
    const { I_A, n_rpm } = answers[`noload_${volts}V`]
    return { volts: `${volts} V`, amps: `${I_A} A`, speed: `${n_rpm} rpm` }
  })
  // The oracle leaves brush drop out.
  const back = (bench: Bench) => known(motor(APPLE_MILL, bench, { given: { brushDrop: 0 } })).numbers

  it('all readings: k, R, friction that does not grow with speed', () => {
    const { constant, resistance, dryFriction, windage } = back({ spin, locked, running })
    near(constant, inputs.k, 1e-10)
    near(resistance, inputs.R, 1e-10)
    near(dryFriction, inputs.Tf, 1e-8)
    expect(windage * rpm(4000)).toBeLessThan(1e-8)
  })

  it('without the drill: the constant from speeds read running free', () => {
    const { constant, resistance, dryFriction } = back({ locked, running })
    near(constant, inputs.k, 1e-10)
    near(resistance, inputs.R, 1e-10)
    near(dryFriction, inputs.Tf, 1e-8)
  })

  it('without the speeds: those follow from volts, ohms and the drill', () => {
    const { dryFriction } = back({
      spin,
      locked,
      running: running.map(({ volts, amps }) => ({ volts, amps })),
    })
    near(dryFriction, inputs.Tf, 1e-8)
  })

  it('without ohms: free running and the plate’s own volts and amps at load', () => {
    // A plate of the same motor, cold: 10 A at 120 V.
    const speed = (120 - 10 * inputs.R) / inputs.k
    const plate = { volts: '120 V', amps: '10 A', speed: `${speed} rad/s`, values: 'cold' }
    const { constant, resistance } = known(motor(plate, { running }, { given: { brushDrop: 0 } })).numbers
    near(constant, inputs.k, 1e-10)
    near(resistance, inputs.R, 1e-8)
  })

  it('in a warm room the same readings are a motor of less resistance and more flux at 20 °C', () => {
    const { constant, resistance } = back({ spin, locked, running, roomC: '35 °C' })
    near(constant, inputs.k / (1 - 0.002 * 15), 1e-10)
    near(resistance, (inputs.R * 255) / 270, 1e-10)
    near(back({ locked, running, roomC: '35 °C' }).constant, constant, 1e-10)
  })
})

describe('volts at amps, shaft held', () => {
  const held = (pairs: readonly [number, number][]): Bench => ({
    locked: pairs.map(([amps, volts]) => ({ amps: `${amps} A`, volts: `${volts} V` })),
  })
  const numbers = (pairs: readonly [number, number][], plate: object = APPLE_MILL) =>
    known(motor(plate, held(pairs))).numbers

  it('three or more over a factor of two part brush drop and resistance', () => {
    const { resistance, brushDrop } = numbers([
      [2, 1.1 + 2 * 0.9],
      [3, 1.1 + 3 * 0.9],
      [5, 1.1 + 5 * 0.9],
    ])
    near(resistance, 0.9, 1e-12)
    near(brushDrop, 1.1, 1e-12)
  })

  it('fewer, or closer together, have the usual brush drop taken off', () => {
    for (const amps of [[3], [2, 5], [3, 3.5, 4]]) {
      const { resistance, brushDrop } = numbers(amps.map((i) => [i, 2.1 + i * 0.9]))
      // They took 2.1 V, the usual is 1.5 V: the rest is left in the resistance.
      near(resistance, amps.reduce((sum, i) => sum + (0.6 + i * 0.9) / i, 0) / amps.length, 1e-12)
      expect(brushDrop).toBe(1.5)
    }
  })

  it('are known as far as they scatter about their line, as regression has it', () => {
    const pairs: [number, number][] = [
      [2, 3.1],
      [3, 3.9],
      [4, 5],
      [6, 6.6],
    ]
    const { known: bands, numbers: found } = known(motor(APPLE_MILL, held(pairs)))
    // By hand: middle 3.75 A, sum of squares 8.75 A², slope 7.75/8.75, offset 4.65 − 3.75 slope; scatter on two degrees.
    const slope = 7.75 / 8.75
    const offset = 4.65 - 3.75 * slope
    near(found.resistance, slope, 1e-12)
    near(found.brushDrop, offset, 1e-12)
    const scatter = Math.sqrt(pairs.reduce((sum, [i, u]) => sum + (u - offset - slope * i) ** 2, 0) / 2)
    const each = Math.hypot(1.28 * scatter, 0.02 * 4.65)
    const gain = Math.hypot(0.02, 0.04)
    const band = (...shares: number[]) => Math.exp(Math.hypot(...shares.map((share) => Math.log(1 + share))))
    near(bands.resistance.high / slope, band(gain, each / Math.sqrt(8.75) / slope), 1e-12)
    near(
      bands.brushDrop.high / offset,
      band(gain, (3.75 * each) / Math.sqrt(8.75) / offset, each / 2 / offset),
      1e-12,
    )
  })

  it('a brush drop under nothing is none', () => {
    const { resistance, brushDrop } = numbers([
      [2, 1.78],
      [4, 3.6],
      [6, 5.4],
    ])
    expect(brushDrop).toBe(0)
    near(resistance, (2 * 1.78 + 4 * 3.6 + 6 * 5.4) / 56, 1e-12)
    // It is known only as far as the readings tell.
    expect(
      known(
        motor(
          APPLE_MILL,
          held([
            [2, 1.78],
            [4, 3.6],
            [6, 5.4],
          ]),
        ),
      ).known.brushDrop.high,
    ).toBeGreaterThan(0.02)
  })

  it.each([
    [0.533, 5.834, 0.091],
    [0.638, 7.35, 0.087],
  ])('stalled, %d V at %d A: %d Ω between the leads', (volts, amps, ohms) => {
    // JOB.md f, read on a small 12 V motor.
    const plate = { volts: '12 V', amps: '15 A' }
    const readings = motor(plate, held([[amps, volts]]), { given: { brushDrop: 0 } })
    expect(Number(known(readings).numbers.resistance.toFixed(3))).toBe(ohms)
    // The usual 0.6 V of such brushes would leave the winding nothing: they take half at most.
    const open = numbers([[amps, volts]], plate)
    near(open.resistance, volts / 2 / amps, 1e-12)
    near(open.brushDrop, volts / 2, 1e-12)
  })

  it('goes before ohms between the leads', () => {
    const { numbers, known: all } = known(motor(APPLE_MILL, { ...held([[3, 1.5 + 2.7]]), ohms: ['1.4 Ω'] }))
    near(numbers.resistance, 0.9, 1e-12)
    expect(all.resistance.how).toBe('volts at amps, shaft held')
  })
})

describe('amps running free', () => {
  const free = (readings: readonly [number, number, number][]): Bench => ({
    running: readings.map(([volts, amps, speed]) => ({
      volts: `${volts} V`,
      amps: `${amps} A`,
      speed: `${speed} rad/s`,
    })),
  })
  const spin = [{ speed: '100 rad/s', volts: '25 V' }]
  const numbers = (readings: readonly [number, number, number][]) =>
    known(motor(APPLE_MILL, { ...free(readings), spin })).numbers

  it('at two speeds part friction that grows with speed from the rest', () => {
    const amps = (speed: number) => (0.1 + 2e-4 * speed) / 0.25
    const { dryFriction, windage } = numbers([
      [60, amps(230), 230],
      [120, amps(470), 470],
    ])
    near(dryFriction, 0.1, 1e-10)
    near(windage, 2e-4, 1e-10)
  })

  it('at one speed, or two alike, half each', () => {
    const { dryFriction, windage } = numbers([
      [110, 0.8, 430],
      [120, 0.8, 470],
    ])
    near(dryFriction, 0.1, 1e-10)
    near(windage, 0.1 / 450, 1e-10)
  })

  it('neither is ever less than nothing', () => {
    const falling = numbers([
      [60, 0.9, 230],
      [120, 0.8, 470],
    ])
    expect(falling.windage).toBe(0)
    near(falling.dryFriction, 0.85 * 0.25, 1e-10)
    const steep = numbers([
      [60, 0.3, 230],
      [120, 0.8, 470],
    ])
    expect(steep.dryFriction).toBe(0)
    near(steep.windage, (0.25 * (0.3 * 230 + 0.8 * 470)) / (230 ** 2 + 470 ** 2), 1e-10)
  })

  it('nearest to plate volts is the no-load current', () => {
    expect(
      identify(
        motor(
          APPLE_MILL,
          free([
            [24, 0.5, 90],
            [110, 0.8, 430],
          ]),
        ),
        USUAL,
      )!.noLoadAmps,
    ).toBe(0.8)
  })

  it.each(['wall', 'controller input'])('amps read at the %s are left out', (clamp) => {
    const bench = { ...free([[120, 3, 470]]), clamp }
    expect(known(motor(APPLE_MILL, bench)).numbers).toEqual(known(motor(APPLE_MILL)).numbers)
  })
})
