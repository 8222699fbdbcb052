// The motor against closed forms: oracles O01 (voltage step), O07 (sag, stall, best points), O08 (energy of a run-up).
import { describe, expect, it } from 'vitest'
import { STATE } from '../../../sim/plant.ts'
import { oracle } from '../../checks/files.ts'
import { type Changes, currentAt, highest, look, near, plantWith, settled } from './lab.ts'
import { copper, flatOut, follow, holding, precisely, runTrial } from './trial.ts'

type Numbers = Record<string, number>
const rpm = 30 / Math.PI

describe('O01: linear motor, voltage step from rest', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O01')
  const changes: Changes = {
    supply: { volts: inputs.V },
    winding: { resistance: inputs.R_ohm, inductance: inputs.L_H, constant: inputs.k },
    rotor: { inertia: inputs.J, windage: inputs.b },
  }
  const plant = plantWith(changes)

  it('the two poles and both time constants lie in the rates', () => {
    const still = look(plant, {})
    const amps = look(plant, { i: 1 })
    const turning = look(plant, { w: 1 })
    const a = amps.currentRate - still.currentRate
    const b = turning.currentRate - still.currentRate
    const c = amps.speedRate - still.speedRate
    const d = turning.speedRate - still.speedRate
    const middle = (a + d) / 2
    const half = Math.sqrt(middle ** 2 - (a * d - b * c))
    near(middle + half, answers.pole_slow_1_per_s, 1e-9)
    near(middle - half, answers.pole_fast_1_per_s, 1e-9)
    near(-1 / a, answers.tau_elec_s, 1e-9)
    // Speed-feedback gains are made from the mechanical time constant R J/k².
    near((plant.gains.proportional * 0.1) / inputs.k, answers.tau_mech_s, 1e-9)
  })

  it('settles at the steady speed and current', () => {
    const { i, w } = settled(plant)
    near(w, answers.w_ss_rad_s, 1e-9)
    near(w * rpm, answers.n_ss_rpm, 1e-9)
    near(i, answers.i_ss_A, 1e-9)
  })

  const times = [answers.t_i_peak_s, 0.05, answers.t63_s, 0.2]

  it('follows the curve to 1e-6 when stepped finely', () => {
    const { states } = follow(plant, holding(0, 20), times)
    const [peak, early, t63, late] = states
    near(peak[STATE.current], answers.i_peak_A, 1e-6)
    expect(Math.abs(look(plant, { i: peak[0], w: peak[1] }).currentRate) * inputs.L_H).toBeLessThan(
      1e-6 * inputs.V,
    )
    near(early[STATE.speed], answers['w_at_0.05s'], 1e-6)
    near(early[STATE.current], answers['i_at_0.05s'], 1e-6)
    near(t63[STATE.speed], answers.w_ss_rad_s * (1 - Math.exp(-1)), 1e-6)
    near(late[STATE.speed], answers['w_at_0.2s'], 1e-6)
    near(late[STATE.current], answers['i_at_0.2s'], 1e-6)
  })

  it('a run follows it within the "precise" tolerance', () => {
    const { samples } = runTrial({ changes, phases: [flatOut(1)], seconds: 1, samples: times })
    precisely(samples[0], { current: answers.i_peak_A })
    precisely(samples[1], { speed: answers['w_at_0.05s'], current: answers['i_at_0.05s'] })
    precisely(samples[2], { speed: answers.w_ss_rad_s * (1 - Math.exp(-1)) })
    precisely(samples[3], { speed: answers['w_at_0.2s'], current: answers['i_at_0.2s'] })
  })
})

describe('O07: speed sag under a cut', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O07')
  const { resistance, moved } = copper(0.00393, inputs.R)
  const plant = plantWith({
    supply: { volts: inputs.V },
    winding: { resistance, constant: inputs.k, magnets: 'ferrite' },
    rotor: { dryFriction: inputs.Tf },
  })
  const cold = { windingC: 20 + moved, frameC: 20 }
  const hot = { windingC: inputs.winding_temp_C + moved, frameC: 20 + inputs.magnet_temp_rise_K }
  const at = (torque: number, warmth: typeof cold) =>
    settled(plant, { ...warmth, cut: { kind: 'torque', torque } })
  const speed = (torque: number, warmth: typeof cold) => at(torque, warmth).w * rpm

  it('cold: speeds, slope and sag', () => {
    near(speed(0, cold), answers.n_T0, 1e-9)
    near(speed(2, cold), answers.n_T2Nm, 1e-9)
    near((speed(2, cold) - speed(0, cold)) / 2, answers.slope_rpm_per_Nm, 1e-9)
    near(speed(0, cold) - speed(2, cold), answers.sag_rpm_0_to_2Nm, 1e-9)
    near(100 * (1 - speed(2, cold) / speed(0, cold)), answers.sag_percent, 1e-9)
    near(at(2, cold).i, answers.I_at_2Nm_A, 1e-9)
  })

  it('hot: more resistance, weaker magnets', () => {
    near(-look(plant, { ...hot, i: 1 }).currentRate * plant.inductance + inputs.V, answers.hot_R, 1e-9)
    near(look(plant, { ...hot, i: 1 }).spare, answers.hot_k, 1e-9)
    near(speed(0, hot), answers.hot_n_T0, 1e-9)
    near(speed(2, hot), answers.hot_n_T2, 1e-9)
    near((speed(2, hot) - speed(0, hot)) / 2, answers.hot_slope, 1e-9)
  })

  it('stall: where the speed line meets zero', () => {
    near(currentAt(plant, { ...cold, w: 0 }), answers.I_stall_A, 1e-9)
    const [slow, fast] = [at(25, cold).w, at(5, cold).w]
    near(25 + (20 * slow) / (fast - slow), answers.T_stall_Nm, 1e-9)
  })

  it('most power out, and best efficiency', () => {
    const power = (torque: number) => torque * at(torque, cold).w
    // A parabola through three points: its top.
    const [a, b, c] = [power(10), power(15), power(20)]
    const top = 15 - (2.5 * (c - a)) / (a - 2 * b + c)
    near(top, answers.T_at_P_out_max, 1e-9)
    near(power(top), answers.P_out_max_W, 1e-9)

    const efficiency = (torque: number) => {
      const { flow } = look(plant, { ...cold, ...at(torque, cold), cut: { kind: 'torque', torque } })
      return flow('work') / flow('taken')
    }
    const best = highest(efficiency, 1, 6)
    near(efficiency(best), answers.eta_max, 1e-9)
    near(at(best, cold).i, answers.I_at_eta_max_A, 1e-6)
  })
})

describe('O08: a run-up without load heats the winding by what it stores in the wheel', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O08')
  const changes: Changes = {
    supply: { volts: inputs.V },
    winding: { resistance: inputs.R, inductance: inputs.L, constant: inputs.k },
    rotor: { inertia: inputs.J },
    heat: { windingCapacity: 600 },
  }

  it('whatever the resistance does on the way', () => {
    const { states } = follow(plantWith(changes), holding(0, 20), [10])
    near(states[0][STATE.speed], answers.w0, 1e-6)
    near(states[0][STATE.windingC] - 20, answers.winding_rise_K_if_Cw_600J_per_K, 1e-6)
  })

  it('in the sums of a run, 1e-4', () => {
    const { trace } = runTrial({ changes, phases: [flatOut(10)], seconds: 10 })
    near(trace.columns.copper.at(-1)!, answers.E_resistor_J, 1e-4)
    near(trace.columns.taken.at(-1)!, answers.E_supply_J, 1e-4)
    near((inputs.J / 2) * trace.columns.speed.at(-1)! ** 2, answers.KE_J, 1e-4)
  })
})
