// Belt geometry and grip against closed forms and textbook examples.
import { describe, expect, it } from 'vitest'
import { beltLength, beltSpeed, centresFor, leastCentres, smallWrap } from '../../../sim/belting/geometry.ts'
import { capstan, greatestPull, installedFor } from '../../../sim/belting/grip.ts'
import { rimSpeedFor, rimStress } from '../../../sim/belting/rim.ts'
import { slipCapacity, slipStage, slipTorque } from '../../../sim/belting/slip.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { oracle, publishedCase } from '../../checks/files.ts'

const degrees = (angle: number) => (angle * Math.PI) / 180
const near = (value: number, wanted: number, share: number) => {
  expect(Number.isFinite(value)).toBe(true)
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(share)
}

describe('O09, an open belt', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O09')
  const [d, D, C] = [inputs.d_mm, inputs.D_mm, inputs.C_mm].map((size) => size / 1000)
  it('has its exact length, and centres back from a length', () => {
    near(beltLength(d, D, C), answers.L_exact_mm / 1000, 1e-11)
    near(beltLength(D, d, C), answers.L_exact_mm / 1000, 1e-11)
    near(centresFor(1.2192, d, D)!, answers['C_exact_for_L_1219.2mm'] / 1000, 1e-11)
  })
  it('is longer than the handbook’s approximation by what the oracle says', () => {
    const approximate = 2 * C + (Math.PI * (D + d)) / 2 + (D - d) ** 2 / (4 * C)
    near(approximate - beltLength(d, D, C), answers.approx_minus_exact_mm / 1000, 1e-8)
    near(approximate, answers.L_approx_mm / 1000, 1e-11)
  })
  it('just round pulleys that touch it has them touch; shorter, it goes round nothing', () => {
    const touching = beltLength(d, D, leastCentres(d, D))
    expect(centresFor(touching, d, D)).toBe((d + D) / 2)
    expect(centresFor(touching * (1 - 1e-9), d, D)).toBeNull()
    near(centresFor(touching * (1 + 1e-9), d, D)!, (d + D) / 2, 1e-6)
    // However long, it comes near half its own length.
    near(centresFor(1000, d, D)!, 500, 1e-3)
  })
  it('wraps its small pulley', () => {
    near(smallWrap(d, D, C), degrees(answers.wrap_small_deg), 1e-11)
    near(2 * Math.PI - smallWrap(D, d, C), degrees(answers.wrap_large_deg), 1e-11)
  })
  it('carries its pull between the strands the oracle gives', () => {
    const speed = fromUnit(inputs.n1_rpm, 'rpm')
    const v = beltSpeed(d, speed)
    near(v, answers.belt_speed_m_s, 1e-11)
    const e = capstan(inputs.mu, smallWrap(d, D, C), degrees(inputs.groove_angle_deg))
    near(e, answers.tension_ratio, 1e-10)
    const pull = inputs.P_W / v
    near(pull, answers.F_effective_N, 1e-11)
    // Strands T1 and T2 on the point of slipping: T1 + T2 = 2 F0, T1 − T2 = the pull.
    const installed = installedFor(pull, e, inputs.m_kg_per_m, v)
    near(installed, (answers.T1_N + answers.T2_N) / 2, 1e-10)
    near(greatestPull({ capstan: e, mass: inputs.m_kg_per_m, installed }, v), pull, 1e-12)
  })
})

it('centres and length are each other’s inverse, and a belt too short is refused', () => {
  for (const [d, D] of [
    [0.05, 0.05],
    [0.02, 0.4],
    [0.1, 0.12],
  ])
    for (const share of [1.0001, 1.5, 3, 20]) {
      const centres = leastCentres(d, D) * share
      near(centresFor(beltLength(d, D, centres), d, D)!, centres, 1e-9)
    }
  expect(centresFor(0.5, 0.2, 0.4)).toBeNull()
})

// Textbook examples as transcribed in a public companion; the printed pages were not seen.
describe('published', () => {
  it('P56, Wentzell, Machine Design, Ex 14.2: centres, belt speed and wrap', () => {
    const { inputs, recomputed, published } = publishedCase<
      Record<string, number>,
      Record<string, number>,
      Record<string, number>
    >('P56')
    const [d, D, L] = [inputs.D1, inputs.D2, inputs.L].map((size) => fromUnit(size, 'in'))
    const centres = centresFor(L, d, D)!
    near(toUnit(centres, 'in'), published.C_in, 1e-3)
    // Re-computed by the handbook's formula, which is short of the exact length by a few millionths here.
    near(toUnit(centres, 'in'), recomputed.C_in, 1e-6)
    near(toUnit(beltSpeed(d, fromUnit(inputs.rpm, 'rpm')), 'ft/min'), published.fpm, 1e-3)
    near(smallWrap(d, D, centres), degrees(published.wrap_deg), 1e-3)
  })
  it('P58, Khurmi & Gupta, Theory of Machines, Ex 11.17: what two V-belts carry, and the speed that carries most', () => {
    const { inputs, published } = publishedCase<
      Record<string, number>,
      Record<string, number>,
      Record<string, number>
    >('P58')
    const area = inputs.A_mm2 * 1e-6
    const mass = inputs.rho * area
    const greatest = inputs.sigma_MPa * 1e6 * area
    const e = capstan(inputs.mu, degrees(inputs.theta_deg), degrees(inputs.groove_deg))
    // The book limits the tight strand: T1 − Tc = (T − Tc), T2 − Tc = that over e.
    const power = (speed: number) => {
      const v = beltSpeed(inputs.d_mm / 1000, speed)
      const centrifugal = mass * v * v
      const installed = (greatest + centrifugal + (greatest - centrifugal) / e) / 2
      return 2 * greatestPull({ capstan: e, mass, installed }, v) * v
    }
    near(power(fromUnit(inputs.rpm, 'rpm')) / 1000, published.P_kW, 1e-3)
    const best = fromUnit(published.rpm_maxP, 'rpm')
    expect(power(best)).toBeGreaterThan(power(best * 1.01))
    expect(power(best)).toBeGreaterThan(power(best * 0.99))
  })
  it('P59 and P60, Khurmi & Gupta, Ex 11.18 and 11.4: a V-belt at its best speed, a flat belt', () => {
    const v = publishedCase<Record<string, number>, Record<string, number>, Record<string, number>>('P59')
    const greatest = v.inputs.sigma_MPa * 1e6 * v.inputs.A_mm2 * 1e-6
    const speed = Math.sqrt(greatest / (3 * v.inputs.m))
    const centrifugal = greatest / 3
    const e = capstan(v.inputs.mu, degrees(v.inputs.theta_deg), degrees(v.inputs.groove_deg))
    const installed = (greatest + centrifugal + (greatest - centrifugal) / e) / 2
    near(
      (greatestPull({ capstan: e, mass: v.inputs.m, installed }, speed) * speed) / 1000,
      v.published.P_kW,
      2e-3,
    )

    const flat = publishedCase<Record<string, number>, Record<string, number>, Record<string, number>>('P60')
    const { d, rpm, mu, theta_deg, T1 } = flat.inputs
    const grip = capstan(mu, degrees(theta_deg), Math.PI)
    const pull = greatestPull({ capstan: grip, mass: 0, installed: (T1 + T1 / grip) / 2 }, 0)
    near((pull * beltSpeed(d, fromUnit(rpm, 'rpm'))) / 1000, flat.published.P_kW, 2e-3)
  })
})

it('P61, Khurmi & Gupta, Ex 11.1: two stages multiply, and 2 % of slip in each', () => {
  const { inputs, published } = publishedCase<{ N1: number; d: number[] }, Record<string, number>, unknown>(
    'P61',
  )
  const [engine, shaft, second, dynamo] = inputs.d
  // Driven by the large pulleys here, so the "motor" of our ratio is the engine.
  const belt = {
    motorPulley: engine,
    jackshaftLarge: shaft,
    jackshaftSmall: second,
    machinePulley: dynamo,
    efficiency: 1,
  }
  near(inputs.N1 / ratio(belt), published.no_slip, 1e-12)
  near((inputs.N1 / ratio(belt)) * 0.98 ** 2, published.slip, 1e-3)
})

it('P62 and O13: a rim at its stress', () => {
  const { inputs, published } = publishedCase<
    Record<string, number>,
    Record<string, number>,
    Record<string, number>
  >('P62')
  const v = rimSpeedFor(inputs.sigma_MPa * 1e6, inputs.rho)
  const { answers, inputs: given } = oracle<Record<string, number>, Record<string, number>>('O13')
  near(v, answers.v_for_sigma_6MPa_rho7250, 1e-11)
  near((2 * v) / fromUnit(inputs.rpm, 'rpm'), published.D_m_implied, 1e-3)
  near((2 * v) / fromUnit(inputs.rpm, 'rpm'), answers.D_for_that_v_at_600rpm_m, 1e-11)
  near(rimStress(given.rho, given.v_6000fpm), answers.sigma_rim_Pa, 1e-11)
  near(beltSpeed(0.12, fromUnit(5000, 'rpm')), answers.rim_speed_120mm_at_5000rpm, 1e-11)
})

describe('slip', () => {
  it('creeps 1 % at half capacity (common practice, no source)', () => {
    near(slipTorque(10, 100, 99), 5, 2e-3)
  })
  it('never carries more than its capacity, either way', () => {
    for (const slip of [-3, -0.5, -0.01, 0, 0.01, 0.5, 3]) {
      const torque = slipTorque(7, 40, 40 * (1 - slip))
      expect(Math.abs(torque)).toBeLessThanOrEqual(7)
      expect(Math.sign(torque)).toBe(Math.sign(slip))
    }
  })
  it('a stage fitted to a torque carries just that standing still, and less at speed', () => {
    const stage = slipStage(8, 0.1, 0.03, 0.12, 20)
    near(slipCapacity([stage], 0), 20, 1e-12)
    const v = 0.03 * 400
    near(slipCapacity([stage], 400), 20 - 0.1 * v * v * stage.grip * 0.12, 1e-12)
    expect(slipCapacity([stage], 1e5)).toBe(0)
    near(slipCapacity([stage, slipStage(8, 0.1, 0.03, 0.12, 9)], 0), 9, 1e-12)
  })
})
