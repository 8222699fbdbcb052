// Two real motors: published readings against the plant with the published constants, and through identification.
import { describe, expect, it } from 'vitest'
import { ABSOLUTE, evaluate, type Mode, type Plant, STATE, STATES, TYPICAL } from '../../../sim/plant.ts'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import { measuredRecord } from '../../checks/files.ts'
import { near, plantWith, settled } from '../physics/lab.ts'
import { known, motor, said } from './motors.ts'

interface Table {
  readonly rows: readonly (readonly number[])[]
}
type Numbers = Record<string, number>

const unit = (value: number, symbol: string) => `${value} ${symbol}`
const freeRuns = ({ rows }: Table) =>
  rows.map(([V, A, w]) => ({ volts: unit(V, 'V'), amps: unit(A, 'A'), speed: unit(w, 'rad/s') }))

/** Motor speed at times (s) after switching off at w0 (rad/s), by the product's rates and stepper. */
function coast(plant: Plant, w0: number, times: readonly number[]): number[] {
  const off: Mode = { on: false, asked: 0, slope: 0, target: 0, cut: { kind: 'torque', torque: 0 }, surge: 0 }
  const stepper = rosenbrock(
    {
      size: STATES,
      typical: TYPICAL,
      autonomous: true,
      rates: (t, y, out) => evaluate(plant, off, t, y, out),
    },
    { relative: 1e-8, absolute: ABSOLUTE.map((size) => size * 1e-5) },
  )
  stepper.start(0, Float64Array.of(0, w0, 0, 20, 20, 20), 1e-4)
  return times.map((time) => {
    while (stepper.t < time) {
      const failure = stepper.step(time)
      if (failure) throw new Error(failure)
    }
    return stepper.y[STATE.speed]
  })
}

describe('M1: a small 12 V gearmotor with an added mass, referred to its output shaft', () => {
  // E. A. A. Coelho, Univ. Federal de Uberlândia, “Measuring DC motor parameters” (2023), Tables II and III and the
  // coast-down figure.
  const record = measuredRecord<{
    stated: Numbers
    running: Table
    driven_open_circuit: Table
    coast_down: Table
  }>('M1')
  const { R_ohm, L_H, kE, kT, B, T_coulomb, J } = record.stated
  const plant = (rotor: { dryFriction: number; windage: number }, volts = 12) =>
    plantWith({
      supply: { volts },
      winding: { resistance: R_ohm, inductance: L_H, constant: (kE + kT) / 2 },
      rotor: { inertia: J, ...rotor },
    })
  const stated = { dryFriction: T_coulomb, windage: B }

  it.each(record.running.rows)(
    'runs free at %d V: %d A, %d rad/s, within 3 % and 4 % (9 % at 10.6 V)',
    (V, A, speed) => {
      const { i, w } = settled(plant(stated, V), {}, 40)
      near(w, speed, 0.03)
      near(i, A, V === 10.6 ? 0.09 : 0.04)
    },
  )

  const [times, speeds] = [0, 1].map((column) => record.coast_down.rows.map((row) => row[column]))
  const missed = (rotor: { dryFriction: number; windage: number }) =>
    Math.max(...coast(plant(rotor), speeds[0], times).map((w, n) => Math.abs(w - speeds[n])))

  it('coasts down within 0.6 rad/s of the figure, and stands at 0.63 ± 0.05 s', () => {
    expect(missed(stated)).toBeLessThan(0.6)
    const fine = Array.from({ length: 800 }, (_, n) => n / 1000)
    // Half an encoder count is standing.
    const stands = fine[coast(plant(stated), speeds[0], fine).findIndex((w) => w < 0.317 / 2)]
    expect(Math.abs(stands - 0.63)).toBeLessThan(0.05)
  })

  it('does not with either friction alone: 1.4 and 2.5 rad/s off', () => {
    // Each alone as the running points have it: torque from their mean current; drag from that at their mean speed.
    const [amps, w] = [1, 2].map((c) => record.running.rows.reduce((sum, row) => sum + row[c] / 3, 0))
    expect(missed({ dryFriction: kT * amps, windage: 0 })).toBeGreaterThan(1.3)
    expect(missed({ dryFriction: 0, windage: (kT * amps) / w })).toBeGreaterThan(2.4)
  })

  describe('its constants back from its tables', () => {
    // No plate is published: volts and an amperage are all that identification asks of one. Its ohms are the stated.
    const readings = motor(
      { volts: '12 V', amps: '1 A' },
      {
        ohms: [unit(R_ohm, 'Ω')],
        running: freeRuns(record.running),
        spin: record.driven_open_circuit.rows.map(([w, V]) => ({
          speed: unit(w, 'rad/s'),
          volts: unit(V, 'V'),
        })),
        coast: record.coast_down.rows.map(([t, w]) => ({ time: unit(t, 's'), speed: unit(w, 'rad/s') })),
        coastedWith: 'bare shaft',
      },
    )
    const { numbers, known: bands } = known(readings)
    it.each([
      ['constant', kE, 0.01],
      ['resistance', R_ohm, 1e-12],
      ['dryFriction', T_coulomb, 0.02],
      ['windage', B, 0.1],
      ['inertia', J, 0.05],
    ] as const)('%s %d, within %d, and in its band', (name, value, tolerance) => {
      near(numbers[name], value, tolerance)
      expect(bands[name].from).toBe('measured')
      expect(bands[name].low).toBeLessThanOrEqual(value)
      expect(bands[name].high).toBeGreaterThanOrEqual(value)
    })
    it('its bands say something', () => {
      expect(bands.constant.high / bands.constant.low).toBeLessThan(1.1)
      expect(bands.inertia.high / bands.inertia.low).toBeLessThan(1.5)
    })
  })
})

describe('M2: a disc-armature servo motor', () => {
  // Aalborg University, student report of 28 Feb 2017, appendices on resistance, torque and back-EMF tests.
  const record = measuredRecord<{
    stated: Numbers
    running_no_load: Table
    locked: Table
    locked_torque: Table
  }>('M2')
  const bench = {
    running: freeRuns(record.running_no_load),
    locked: record.locked.rows.map(([V, A]) => ({ volts: unit(V, 'V'), amps: unit(A, 'A') })),
  }
  // No plate is published; the torque test goes to 10 A, twelve is then about full load.
  const plate = { volts: '36 V', amps: '12 A' }
  const { numbers, known: bands } = known(motor(plate, bench))

  it('the brush drop is found: V = 0.72 I + 0.65', () => {
    expect(numbers.resistance.toFixed(2)).toBe('0.72')
    expect(numbers.brushDrop.toFixed(2)).toBe('0.65')
    expect(bands.brushDrop.from).toBe('measured')
    // The running readings' own line has 0.66 V.
    expect(bands.brushDrop.low).toBeLessThan(0.66)
    expect(bands.brushDrop.high).toBeGreaterThan(0.66)
    // Volts over amps alone would be up to twice that resistance.
    const each = record.locked.rows.map(([V, A]) => V / A)
    expect(Math.max(...each)).toBeGreaterThan(2 * numbers.resistance)
    expect(Math.min(...each)).toBeGreaterThan(1.05 * numbers.resistance)
  })

  it('the constant follows from speeds running free: 0.0328 by the running line', () => {
    near(numbers.constant, 0.0328, 0.02)
    expect(bands.constant.low).toBeLessThan(0.0328)
    expect(bands.constant.high).toBeGreaterThan(0.0328)
    // The three the report gives differ by 12 % of one another, so no closer.
    for (const name of ['kT', 'kE_text', 'kE_model_table']) near(numbers.constant, record.stated[name], 0.14)
  })

  it('runs free in the plant as it did on the bench: 1.5 % of speed from 5 V, 4 % of amps', () => {
    for (const [V, A, w] of record.running_no_load.rows.filter(([volts]) => volts >= 5)) {
      const found = settled(
        plantWith({
          supply: { volts: V },
          winding: {
            resistance: numbers.resistance,
            constant: numbers.constant,
            brushDrop: numbers.brushDrop,
          },
          rotor: { dryFriction: numbers.dryFriction, windage: numbers.windage },
        }),
        {},
        500,
      )
      near(found.w, w, 0.015)
      near(found.i, A, 0.04)
    }
  })

  it('is not called faulty', () => {
    expect(said(motor(plate, bench)).filter((sentence) => !sentence.startsWith('No rpm'))).toEqual([])
    // Nor held for dirty brushes or weak magnets by any plate that such a motor may have.
    for (const volts of ['24 V', '36 V', '48 V'])
      for (const amps of ['6 A', '9 A', '12 A']) {
        const readings = motor({ volts, amps }, bench)
        expect([...said(readings, 'bench.locked'), ...said(readings, 'bench.ohms')]).toEqual([])
        expect(
          said(readings, 'bench.running').filter((sentence) => sentence.startsWith('The bench')),
        ).toEqual([])
      }
  })
})
