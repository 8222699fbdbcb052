// Heating and cooling of published motors as one lump: run forward by the product, compared with the printed answers.
import { describe, it } from 'vitest'
import { temperatureByResistance } from '../../../sim/handbook/materials.ts'
import { STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { operatingPoint } from '../../../sim/steady/operating.ts'
import { cold, held } from '../../../sim/studies/limits/held.ts'
import { oracle, publishedCase } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'
import {
  bodyJob,
  LIMIT_C,
  phase,
  rest,
  SPEED,
  torqueFor,
  USUAL,
  shortTimeFactor,
  withConstant,
} from './body.ts'

type Numbers = Record<string, number>
const HOUR = 3600

describe('a motor as a lump: where it settles, and its time constant', () => {
  /** Rise in settled air of 20 °C, K; and the time to 63.2 % of it, s, by a run to the class in air that leaves so much. */
  function lump(watts: number, conductance: number, capacity: number) {
    const running = capacity / conductance
    const settled = operatingPoint(
      bodyJob({ running, conductance }, [phase(1, 1)]).parts,
      SPEED,
      torqueFor(watts),
    )
    const rise = settled.warm!.windingC - 20
    const reached = rise * -Math.expm1(-1)
    const job = bodyJob({ running, conductance, air: LIMIT_C - reached }, [phase(1, 1)])
    const torque = allDayTorque(job.parts, SPEED).torque / -Math.expm1(-1)
    return { rise, tau: finish(held(job, phase(1, torque), cold(job), 24 * HOUR)).seconds }
  }
  it.each([
    ['P16, Pillai: A First Course on Electrical Drives, Ex 7.1 p. 140, 0.2 %', 'P16', 1, 0.002],
    // A metric horsepower.
    ['P19, J. B. Gupta Ex 45 p. 144 (as transcribed in a public companion), 0.1 %', 'P19', 735.5, 0.001],
  ])('%s', (_name, id, watt, share) => {
    const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>(id)
    const { D, L, mass, c, h, eta } = inputs
    const loss = (inputs.P_out_W ?? inputs.P_PS * watt) * (1 / eta - 1)
    // The mantle alone gives off heat.
    const { rise, tau } = lump(loss, h * Math.PI * D * L, mass * c)
    near(rise, published.rise_K, share)
    near(tau, published.tau_s ?? recomputed.tau_s, share)
  })
})

describe('heating curves: the product runs them forward', () => {
  /** Rises over air of 20 °C at these times, h, of a body held at what would settle at `final`. */
  function rises(final: number, tau: number, hours: readonly number[], startC = 20): number[] {
    const job = bodyJob({ running: tau * HOUR }, [phase(24 * HOUR, torqueFor(USUAL * final))], startC)
    const { samples } = finish(run(job, { samples: hours.map((each) => each * HOUR) }))
    return samples.map((states) => states[STATE.windingC] - 20)
  }
  /** One hour's load over the continuous one. */
  const hour = (tau: number, share: number) => shortTimeFactor(withConstant(tau * HOUR, share), HOUR)

  it('O15: two readings and the one-hour load', () => {
    const { inputs, answers } = oracle<Numbers, Numbers>('O15')
    const [first, second] = rises(answers.theta_f, answers.tau_h, [inputs.t1_h, 2 * inputs.t1_h])
    near(first, inputs.th1, 1e-4)
    near(second, inputs.th2, 1e-4)
    near(hour(answers.tau_h, 0), answers.one_hour_factor_a0, 1e-5)
    near(hour(answers.tau_h, 1), answers.one_hour_factor_a1, 1e-5)
  })

  it('O17: winding temperature by resistance', () => {
    const { inputs, answers } = oracle<Numbers, Numbers>('O17')
    near(temperatureByResistance(inputs.R1, inputs.R2, inputs.th1), answers.T_hot_IEC_235, 1e-11)
  })

  // P20, P29 to P32 as transcribed in a public companion; printed pages not seen.
  it('P20, J. B. Gupta Ex 47 p. 145, 0.5 %', () => {
    const { inputs, published } = publishedCase<Numbers, Numbers>('P20')
    const [first, second] = rises(published.theta_f, published.tau_h, [1, 2])
    near(first, inputs.rise_1h, 0.005)
    near(second, inputs.rise_2h, 0.005)
    near(hour(published.tau_h, 1), published.one_hour_factor, 0.005)
  })

  it('P29, Theraja Ex 45.12: one-hour rating of 20 kW for a rise of 50 K, 0.1 %', () => {
    const { inputs, published } = publishedCase<Numbers, Numbers>('P29')
    // Through two rises a, b at t and 2t goes one curve: it settles at a²/(2a − b), with −t/ln(b/a − 1).
    const { rise_1h: a, rise_2h: b, limit } = inputs
    const [final, tau] = [a ** 2 / (2 * a - b), -1 / Math.log(b / a - 1)]
    const [first, second] = rises(final, tau, [1, 2])
    near(first, a, 1e-4)
    near(second, b, 1e-4)
    near(inputs.P * Math.sqrt(limit / final) * hour(tau, 0), published.P_kW, 0.001)
  })

  it('P30, Theraja Ex 45.13: the rise it settles at, and cooling at rest, 0.5 %', () => {
    const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P30')
    const [first, second, settled] = rises(published.theta_f, recomputed.tau_heat_h, [1, 2, 23])
    near(first, inputs.rise_1h, 0.005)
    near(second, inputs.rise_2h, 0.005)
    near(settled, published.theta_f, 0.005)
    const hot = inputs.Ta + published.theta_f
    const cooling = bodyJob({ running: published.tau_cool_h * HOUR, air: inputs.Ta }, [rest(1.5 * HOUR)], hot)
    const { samples } = finish(run(cooling, { samples: [1.5 * HOUR] }))
    near(samples[0][STATE.windingC], inputs['T_after_1.5h_off'], 0.005)
  })

  it('P31, Theraja Ex 45.14: temperature after a time, from warm, 0.1 %', () => {
    const { inputs, published } = publishedCase<Numbers, Numbers>('P31')
    const [rise] = rises(inputs.theta_f, inputs.tau_h, [inputs.t_h], 20 + inputs.theta_0)
    near(inputs.Ta + rise, published.T, 0.001)
  })

  it('P32, Theraja Ex 45.15: two readings, and an hour of overload, 0.2 %', () => {
    const { inputs, published } = publishedCase<Numbers, Numbers>('P32')
    const [first, second] = rises(published.theta_f, published.tau_h, [1, 2])
    near(first, inputs.rise_1h, 0.002)
    near(second, inputs.rise_2h, 0.002)
    near(rises(inputs.theta_f_overload, published.tau_h, [1])[0], published.rise_1h_overload, 0.002)
  })
})
