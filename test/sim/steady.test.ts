// Where a motor settles: oracles, and a run of the plant long enough to get there.
import { describe, expect, it } from 'vitest'
import type { Heat } from '../../sim/parts/heat.ts'
import type { Rotor } from '../../sim/parts/rotor.ts'
import type { Winding } from '../../sim/parts/winding.ts'
import { STATE } from '../../sim/plant.ts'
import { finish, run } from '../../sim/run.ts'
import { heatLeft, settle } from '../../sim/steady.ts'
import { oracle } from '../checks/files.ts'
import { job } from '../jobs.ts'
import { near, partsWith, zero } from './physics/lab.ts'
import { copper } from './physics/trial.ts'

type Numbers = Record<string, number>

/** Parts as a settling motor needs them: nothing but what is changed. */
function bare(changes: { winding?: Partial<Winding>; rotor?: Partial<Rotor>; heat?: Partial<Heat> }) {
  const { winding, rotor, heat } = partsWith(changes)
  return { winding, rotor, heat }
}

it('O06: the largest torque whose winding stays within its limit', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O06')
  const { Rwh, Rha, Tmax, Ta, R20, alpha20, k20, kb_per_K, T_friction, P_rot_W } = inputs
  expect(kb_per_K).toBe(-0.002)
  const speed = P_rot_W / T_friction
  const { winding, rotor, heat } = bare({
    // Our copper has the same resistance at the limit, where it is asked; friction enters at the housing.
    winding: { resistance: (R20 * (1 + alpha20 * (Tmax - 20)) * 255) / (235 + Tmax), constant: k20 },
    rotor: { dryFriction: T_friction },
    heat: { air: Ta, windingToFrame: 1 / Rwh, frameToAir: 1 / Rha, frictionShare: 0 },
  })
  const at = (torque: number) => settle(winding, rotor, heat, { speed, torque, formFactor: 1, air: Ta })
  const most = zero((torque) => (at(torque)?.windingC ?? 1e3) - Tmax, 0, 3)
  near(most, answers.T_cont_Nm, 1e-8)
  near(at(most)!.amps, answers.I_cont_A, 1e-8)
  near(at(most)!.frameC, answers.T_housing_C, 1e-8)
})

describe('O04: fixed current, and when it runs away', () => {
  const { inputs, answers } = oracle<Numbers, Record<string, Numbers>>('O04')
  const { G_W_per_K: G, R20, Ta } = inputs
  it.each([
    ['alpha20_0.00393', 0.00393],
    ['IEC_235', 1 / 255],
    ['NEMA_234.5', 1 / 254.5],
  ])('%s', (name, alpha) => {
    const wanted = answers[name]
    const { resistance, moved } = copper(alpha, R20)
    const air = Ta + moved
    // A frame that stays at the air's temperature: so a held torque is a held current.
    const { winding, rotor, heat } = bare({
      winding: { resistance, constant: 0.3 },
      heat: { air, windingToAir: G, frameToAir: 1 },
    })
    const at = (amps: number) =>
      settle(winding, rotor, heat, {
        speed: 0,
        torque: amps * 0.3 * (1 - 0.002 * (air - 20)),
        formFactor: 1,
        air,
      })
    near(at(8)!.windingC - moved, wanted.T_at_8A, 1e-9)
    near(at(0.5 * wanted.I_critical_A)!.windingC - moved, wanted['T_at_0.5Icrit'], 1e-9)
    near(at(0.7 * wanted.I_critical_A)!.windingC - moved, wanted['T_at_0.7Icrit'], 1e-9)
    // 0.8 of the critical current would settle beyond 400 °C: as good as a runaway. At it nothing settles.
    expect(at(0.8 * wanted.I_critical_A)).toBeNull()
    expect(at(1.0001 * wanted.I_critical_A)).toBeNull()
    expect(at(10 * wanted.I_critical_A)).toBeNull()
  })
})

it('O02: winding and housing with copper feedback settle where they should', () => {
  const { inputs, answers } = oracle<Numbers, { copper_feedback: Numbers }>('O02')
  const { Rwh, Rha, I, R20, alpha20, Ph, Ta } = inputs
  const { resistance, moved } = copper(alpha20, R20)
  const { winding, rotor, heat } = bare({
    winding: { resistance, brushDrop: Ph / I, constant: 0.3, magnets: 'AlNiCo' },
    heat: { air: Ta + moved, windingToFrame: 1 / Rwh, frameToAir: 1 / Rha, brushShare: 0 },
  })
  const wanted = answers.copper_feedback
  // The current is held, not the torque: so the torque is that of the magnets at the answer.
  const torque = I * 0.3 * (1 - 0.0002 * (wanted.Th_ss + moved - 20))
  const found = settle(winding, rotor, heat, { speed: 0, torque, formFactor: 1, air: Ta + moved })!
  near(found.windingC - moved, wanted.Tw_ss, 1e-8)
  near(found.frameC - moved, wanted.Th_ss, 1e-8)
  near(found.amps, I, 1e-9)
})

describe('a long run of the plant at held speed ends there, 0.05 K', () => {
  it.each([
    ['shaft fan', 1.4, {}],
    ['none', 0.6, {}],
    ['enclosed', 0.3, { 'heat.frictionShare': '30 %', 'heat.brushShare': '80 %' }],
    ['blower', 1.6, { 'supply.formFactor': '1.2' }],
  ])('%s, %d N·m', (cooling, torque, changes) => {
    const speed = 2500
    const one = job({
      'controller.holds': 'speed feedback',
      'belt.machinePulley': '2.5 in',
      'belt.centreDistance': null,
      'belt.efficiency': '100 %',
      'machine.drag': '0 N·m',
      'heat.cooling': cooling,
      'cutoff.fitted': 'none',
      duty: {
        phases: [{ name: 'held', lasts: '30 h', speed: `${speed} rpm`, torque: `${torque} N·m` }],
        repeatFor: '30 h',
      },
      ...changes,
    })
    const { winding, rotor, heat, supply } = one.parts
    const held = {
      speed: (speed * Math.PI) / 30,
      torque,
      formFactor: supply.formFactor!,
      air: heat.air,
    }
    const { samples } = finish(run({ ...one, accuracy: 'precise' }, { samples: [30 * 3600 - 1] }))
    const found = settle(winding, rotor, heat, held)!
    expect(Math.abs(samples[0][STATE.windingC] - found.windingC)).toBeLessThan(0.05)
    expect(Math.abs(samples[0][STATE.frameC] - found.frameC)).toBeLessThan(0.05)
    expect(Math.abs(samples[0][STATE.current] - found.amps)).toBeLessThan(1e-3)
    // It did warm up: else the two would agree on nothing.
    expect(found.windingC).toBeGreaterThan(heat.air + 20)
    const [w, f] = heatLeft(winding, rotor, heat, held)(found.windingC, found.frameC)
    expect(Math.abs(w) + Math.abs(f)).toBeLessThan(1e-6)
  })
})
