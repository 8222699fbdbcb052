// Heat numbers from mass and rating: the scale by a second method, warm-ups against closed forms, and what is clamped.
import { describe, expect, it } from 'vitest'
import { USUAL } from '../../../sim/identify/assume.ts'
import { identify, type MotorReadings } from '../../../sim/identify/motor.ts'
import { warmUp } from '../../../sim/identify/warmUp.ts'
import { STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { oracle } from '../../checks/files.ts'
import { job } from '../../jobs.ts'
import { near, partsWith } from '../physics/lab.ts'
import { APPLE_MILL, BAND_SAW, BOWL_LATHE, known, motor } from './motors.ts'

type Numbers = Record<string, number>
const rpm = (value: number) => (value * Math.PI) / 30
const HP = 745.6998715822702

/**
 * The scale by other means: losses held, both temperatures solved by hand, losses taken anew, until they stay; and
 * the scale by halving. Fan on the shaft, running at its full speed; °C, W, N·m.
 */
function scaleByHand(
  { resistance, constant, brushDrop, dryFriction, windage }: Numbers,
  torque: number,
  speed: number,
  formFactor: number,
  limit: number,
  fan = 1,
): number {
  const lost = dryFriction * Math.tanh(speed / 0.5) + windage * speed
  const g = (fan * speed ** 2) / (speed ** 2 + 1) ** 0.6 / speed ** 0.8
  const settles = (scale: number): number => {
    let [winding, frame] = [40, 40]
    for (let n = 0; n < 5000; n++) {
      const amps = (torque + lost) / (constant * (1 - 0.002 * (frame - 20)))
      const half = (lost * speed + brushDrop * amps) / 2
      const copperHeat = (formFactor ** 2 * resistance * (235 + winding) * amps ** 2) / 255
      const [across, air, out] = [1.5 * scale, (0.3 + 3.5 * g) * scale, (1.2 + 0.6 * g) * scale]
      // Rise of the winding over the air, from both balances: the frame's gives its own in terms of the winding's.
      const rise =
        (copperHeat + half + (across * half) / (across + out)) / (across + air - across ** 2 / (across + out))
      const before = winding
      winding = 40 + rise
      frame = 40 + (half + across * rise) / (across + out)
      if (winding > 500) return 500
      if (Math.abs(winding - before) < 1e-12) break
    }
    return winding
  }
  let [small, large] = [0.01, 20]
  for (let n = 0; n < 60; n++) {
    const scale = Math.sqrt(small * large)
    if (settles(scale) > limit) small = scale
    else large = scale
  }
  return large
}

describe('the scale', () => {
  const cases: [string, MotorReadings, number, number, number, number][] = [
    ['apple mill', motor(APPLE_MILL), (0.9 * HP) / rpm(4000), rpm(4000), 1.05, 120],
    ['bowl lathe', motor(BOWL_LATHE), (1.3 * HP) / rpm(5800), rpm(5800), 1.05, 120],
    ['class F', motor(APPLE_MILL, {}, { insulation: 'F' }), (0.9 * HP) / rpm(4000), rpm(4000), 1.05, 145],
    [
      'form factor printed',
      motor({ ...APPLE_MILL, formFactor: '1.2' }),
      (0.9 * HP) / rpm(4000),
      rpm(4000),
      1.2,
      120,
    ],
    [
      'no continuous line: 60 % of plate power',
      motor({ ...APPLE_MILL, continuousPower: undefined }),
      (0.96 * HP) / rpm(4000),
      rpm(4000),
      1.05,
      120,
    ],
    [
      'industrial 90 V, CONT: all of it, on lumpy current',
      motor({
        volts: '90 V',
        amps: '5 A',
        power: '0.5 hp',
        speed: '1800 rpm',
        duty: 'continuous',
        mass: '7 kg',
      }),
      (0.5 * HP) / rpm(1800),
      rpm(1800),
      1.4,
      120,
    ],
  ]

  it.each(cases)('%s', (_, readings, torque, speed, formFactor, limit) => {
    const { numbers, thermal, continuousTorque } = identify(readings, USUAL)!
    near(continuousTorque, torque, 1e-9)
    expect(thermal.formFactor).toBe(formFactor)
    near(thermal.asked, scaleByHand({ ...numbers }, torque, speed, formFactor, limit), 1e-6)
  })

  it('of the apple mill is 0.5717, and the conductances keep their pattern', () => {
    const { numbers, thermal } = identify(motor(APPLE_MILL), USUAL)!
    expect(thermal.used.toFixed(4)).toBe('0.5717')
    expect(thermal.used).toBe(thermal.asked)
    near(numbers.windingToFrame, 1.5 * thermal.used, 1e-12)
    near(numbers.windingToAir, 0.3 * thermal.used, 1e-12)
    near(numbers.windingToFanAir, 3.5 * thermal.used, 1e-12)
    near(numbers.frameToAir, 1.2 * thermal.used, 1e-12)
    near(numbers.frameToFanAir, 0.6 * thermal.used, 1e-12)
    near(numbers.windingCapacity, 600, 1e-12)
    near(numbers.frameCapacity, 1800, 1e-12)
  })

  it('beyond 1.6 or 0.6 of the usual for its mass is clamped', () => {
    const saw = identify(motor(BAND_SAW), USUAL)!.thermal
    near(saw.usual, 0.25 * 2 ** (2 / 3), 1e-12)
    near(saw.used, 1.6 * saw.usual, 1e-12)
    expect(saw.asked).toBeGreaterThan(1.9 * saw.used)
    const heavy = identify(motor({ ...APPLE_MILL, mass: '20 kg' }), USUAL)!.thermal
    near(heavy.used, 0.6 * heavy.usual, 1e-12)
    near(heavy.asked, 0.57166, 1e-4)
  })

  it('continuous amps stand for a continuous power that is not printed', () => {
    const { continuousPower: _, ...plate } = APPLE_MILL
    const one = identify(motor({ ...plate, continuousAmps: '7.5 A' }), USUAL)!
    near(one.continuousTorque, one.numbers.constant * 0.94 * (7.5 - 0.91), 1e-12)
    // The torque of half the load amps is half the torque.
    near(one.continuousTorque / one.point.torque, 6.59 / 12.09, 1e-9)
  })

  it('a rating held for minutes asks less cooling than one held all day, and for a day as much', () => {
    const asked = (continuousFor: string) =>
      identify(motor({ ...APPLE_MILL, continuousFor }), USUAL)!.thermal.asked
    const allDay = identify(motor(APPLE_MILL), USUAL)!.thermal.asked
    expect(asked('10 min')).toBeLessThan(asked('30 min'))
    expect(asked('30 min')).toBeLessThan(0.95 * allDay)
    near(asked('24 h'), allDay, 1e-4)
  })

  it('a light motor rated for a day is worked out as quickly as any', () => {
    // A fixed step of its winding’s few seconds would take millions of them.
    const { mass } = known(motor({ ...APPLE_MILL, mass: '0.05 kg', continuousFor: '24 h' })).motor
    expect(mass).toBe(0.05)
  })
})

describe('a warm-up', () => {
  it('O02: winding and housing, steady losses', () => {
    const { inputs, answers } = oracle<Numbers, { const_loss: Numbers }>('O02')
    const { Cw, Ch, Rwh, Rha, I, R20, Ph, Ta } = inputs
    // Both losses as friction, since that knows no temperature: the winding's share is what its copper would lose.
    const copperHeat = I * I * R20
    const { winding, rotor, heat } = partsWith({
      winding: { resistance: 1e-12, constant: 1 },
      rotor: { dryFriction: (copperHeat + Ph) / 100 },
      heat: {
        windingCapacity: Cw,
        frameCapacity: Ch,
        windingToFrame: 1 / Rwh,
        frameToAir: 1 / Rha,
        frictionShare: copperHeat / (copperHeat + Ph),
      },
    })
    const warm = (seconds: number) =>
      warmUp(winding, rotor, heat, { speed: 100, torque: 0, formFactor: 1, air: Ta }, seconds)
    near(warm(600), answers.const_loss.Tw_600s, 1e-6)
    near(warm(1800), answers.const_loss.Tw_1800s, 1e-6)
    near(warm(1e5), answers.const_loss.Tw_ss, 1e-6)
  })

  it('as the plant warms up at held speed, copper and magnets included: 0.05 K', () => {
    const one = job({
      'controller.holds': 'speed feedback',
      'controller.ramp': '100000 rpm/s',
      'controller.currentLimit': '500 A',
      'supply.volts': '400 V',
      'rotor.inertia': '0.000001 kg·m²',
      'belt.machinePulley': '2.5 in',
      'belt.centreDistance': null,
      'belt.efficiency': '100 %',
      'machine.drag': '0 N·m',
      'machine.inertia': '0 kg·m²',
      'cutoff.fitted': 'none',
      duty: {
        phases: [{ name: 'held', lasts: '1 h', speed: '2500 rpm', torque: '1.4 N·m' }],
        repeatFor: '1 h',
      },
    })
    const { winding, rotor, heat, supply } = one.parts
    const held = { speed: rpm(2500), torque: 1.4, formFactor: supply.formFactor!, air: heat.air }
    const times = [60, 600, 1800, 3500]
    const { samples } = finish(run({ ...one, accuracy: 'precise' }, { samples: times }))
    times.forEach((t, n) => {
      const off = samples[n][STATE.windingC] - warmUp(winding, rotor, heat, held, t)
      expect(Math.abs(off), `${off} K at ${t} s`).toBeLessThan(0.05)
    })
    expect(samples[3][STATE.windingC]).toBeGreaterThan(heat.air + 50)
  })

  it.each([
    // JOB.md f: from cold, 20 min time constant; a peak of 1.67, 2.17 or 2.5 times reaches the all-day rise.
    [1.67, 8.9],
    [2.17, 4.8],
    [2.5, 3.5],
  ])('at %d times the amps one node reaches its all-day rise in %d min', (peak, minutes) => {
    // Friction heat alone, peak squared times what would settle at 80 K through 1 W/K.
    const { winding, rotor, heat } = partsWith({
      rotor: { dryFriction: (peak ** 2 * 80) / 100 },
      heat: { windingCapacity: 1200, frameCapacity: 1e9, windingToAir: 1, frictionShare: 1 },
      winding: { resistance: 1e-12, constant: 1 },
    })
    const warm = (min: number) =>
      warmUp(winding, rotor, heat, { speed: 100, torque: 0, formFactor: 1, air: 40 }, 60 * min)
    expect(warm(minutes - 0.05)).toBeLessThan(120)
    expect(warm(minutes + 0.05)).toBeGreaterThan(120)
  })

  it('that runs away ends at 500 °C', () => {
    const { winding, rotor, heat } = partsWith({
      winding: { constant: 0.3 },
      heat: { air: 25, windingCapacity: 300, frameCapacity: 900, windingToFrame: 1, frameToAir: 1 },
    })
    expect(warmUp(winding, rotor, heat, { speed: 100, torque: 6, formFactor: 1, air: 25 }, 36_000)).toBe(500)
  })
})
