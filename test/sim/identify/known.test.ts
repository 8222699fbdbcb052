// Any plate and bench: a motor with ordered bands, or a sentence; and what the bands are made of.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { complaints } from '../../../sim/identify/complaints.ts'
import { doubtsOf } from '../../../sim/identify/doubts.ts'
import { USUAL } from '../../../sim/identify/assume.ts'
import { know } from '../../../sim/identify/known.ts'
import { near } from '../physics/lab.ts'
import { anyMotor } from './anyMotor.ts'
import { APPLE_MILL, known, motor } from './motors.ts'

const seed = 3141

describe('any plate and bench', () => {
  it('give a finite motor with ordered bands, or say why not', () => {
    let [motors, refused] = [0, 0]
    fc.assert(
      fc.property(anyMotor, (readings) => {
        const found = know(readings)
        const said = complaints(readings)
        for (const { path, wrong, wouldDo } of said) {
          expect(path).toMatch(/^(plate|bench|winding|rotor|heat)\.[a-zA-Z]+$/)
          expect(`${wrong} ${wouldDo}`).not.toMatch(/NaN|Infinity|undefined|null|\de\+/)
          expect(wrong).toMatch(/\.$/)
          expect(wouldDo).toMatch(/[.?]$/)
        }
        if (!found) {
          refused++
          expect(said).toHaveLength(1)
          return
        }
        motors++
        for (const [name, { value, low, high }] of Object.entries(found.known)) {
          expect(Number.isFinite(high), name).toBe(true)
          expect(0 <= low && low <= value && value <= high, `${name}: ${low}, ${value}, ${high}`).toBe(true)
        }
      }),
      { seed, numRuns: 150 },
    )
    // Both ways were met, or the property says nothing.
    expect(motors).toBeGreaterThan(20)
    expect(refused).toBeGreaterThan(20)
  })
})

describe('a band', () => {
  it('is made of every doubt by itself, in squares', () => {
    // A spun constant rests on the drill and its meter alone: 2 % either way.
    const { low, value, high } = known(motor(APPLE_MILL, { spin: [{ speed: '1000 rpm', volts: '26 V' }] }))
      .known.constant
    near(high / value, 1.02, 1e-12)
    near(low / value, 0.98, 1e-12)
    // Ohms on the meter's 2 % and 0.05 Ω of last digit and contact.
    const ohms = known(motor(APPLE_MILL, { ohms: ['1 Ω'] })).known.resistance
    near(ohms.high, 1 + Math.hypot(0.02, 0.05), 1e-12)
  })

  it('of brush drop is half its size', () => {
    const { low, high } = known(motor(APPLE_MILL)).known.brushDrop
    near(low, 0.75, 1e-12)
    near(high, 2.25, 1e-12)
  })

  it('of a given number has no width, and narrows what follows', () => {
    const free = known(motor(APPLE_MILL)).known
    const { resistance, constant } = known(motor(APPLE_MILL, {}, { given: { resistance: 1.25 } })).known
    expect([resistance.low, resistance.high, resistance.from]).toEqual([1.25, 1.25, 'given'])
    expect(constant.high / constant.low).toBeLessThan(0.95 * (free.constant.high / free.constant.low))
  })

  it('of plate resistance spans a factor of two: a plate tells ohms poorly', () => {
    const { low, high } = known(motor(APPLE_MILL)).known.resistance
    expect(high / low).toBeGreaterThan(2)
  })

  it('says when it rests on a guess', () => {
    const { speed: _, ...plate } = APPLE_MILL
    const { constant, fanSpeed } = known(motor(plate)).known
    expect(constant.from).toBe('estimated')
    expect(constant.how).toBe('plate torque over plate amps less no-load amps; its rpm guessed')
    expect(fanSpeed.how).toBe('usual speed for its volts')
    // Seen on such plates: 3750 to 6750 rpm about 5000.
    near(fanSpeed.high / fanSpeed.value, 1.35, 1e-12)
    near(fanSpeed.low / fanSpeed.value, 0.75, 1e-12)
  })

  it('does not hold a doubt that has no bearing', () => {
    const names = (readings: ReturnType<typeof motor>) => doubtsOf(readings).map(({ name }) => name)
    expect(names(motor(APPLE_MILL)).filter((name) => name.startsWith('bench'))).toEqual([])
    expect(names(motor({ volts: '12 V', amps: '1 A' })).filter((name) => name.startsWith('plate.'))).toEqual([
      'plate.volts',
      'plate.amps',
    ])
  })

  it('has its value in the middle: each doubt as read changes nothing', () => {
    const readings = motor(
      { ...APPLE_MILL, printedWatts: '1190 W', continuousAmps: '7 A' },
      {
        ohms: ['1.1 Ω', '1.2 Ω'],
        spin: [{ speed: '1000 rpm', volts: '26 V' }],
        locked: [2, 3, 5].map((i) => ({ volts: `${1.2 + i} V`, amps: `${i} A` })),
        running: [40, 120].map((u) => ({
          volts: `${u} V`,
          amps: `${0.5 + u / 400} A`,
          speed: `${4 * u} rad/s`,
        })),
        coast: [0, 4].map((t) => ({ time: `${t} s`, speed: `${400 - 60 * t} rad/s` })),
        flywheelMass: '1 kg',
        flywheelDiameter: '120 mm',
      },
    )
    const basis = { readings, assume: USUAL }
    const doubts = doubtsOf(readings)
    expect(doubts.length).toBeGreaterThan(25)
    for (const doubt of doubts) {
      expect(doubt.at(basis, 0), doubt.name).toEqual(basis)
      expect(doubt.at(basis, 1), doubt.name).not.toEqual(basis)
      expect(doubt.at(basis, -1), doubt.name).not.toEqual(basis)
    }
  })
})
