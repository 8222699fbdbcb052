// Heat against closed forms: oracles O02 (two nodes), O04 (runaway), O05 (time to trip), O19 (shaft fan), O20 (switch lag).
import { describe, expect, it } from 'vitest'
import { STATE } from '../../../sim/plant.ts'
import type { Crossing } from '../../../sim/solve/advance.ts'
import { oracle } from '../../checks/files.ts'
import {
  type Changes,
  ENDLESS,
  flatOut,
  follow,
  holding,
  look,
  near,
  plantWith,
  precisely,
  runTrial,
  timeOf,
  zero,
} from './lab.ts'

type Numbers = Record<string, number>

/** A motor held still at a current by its limit, so that its heat is the oracle's. */
const held = (i: number, more: Changes): Changes => ({
  ...more,
  supply: { volts: 1e4 },
  controller: { currentLimit: i },
  rotor: { inertia: ENDLESS },
  winding: { inductance: 1, ...more.winding },
})

/**
 * Copper of a coefficient α at 20 °C. Ours has the zero point of IEC 60034-1, 235 K below 0 °C; both are straight
 * lines, so a thermometer moved by 1/α − 255 K and a resistance of 255 α R20 make them the same one.
 */
const copper = (alpha: number, R20: number) => ({ resistance: 255 * alpha * R20, moved: 1 / alpha - 255 })

/** Copper of no resistance to speak of: the heat then comes from the brushes, and knows no temperature. */
const NO_COPPER = 1e-12

const rising = (state: number, level: number): Crossing => ({ state, level, direction: 1 })

describe('O02: winding and housing, a step of loss', () => {
  const { inputs, answers } = oracle<Numbers, { const_loss: Numbers; copper_feedback: Numbers }>('O02')
  const { Cw, Ch, Rwh, Rha, I, R20, alpha20, Ph, Ta } = inputs
  const heat = { windingCapacity: Cw, frameCapacity: Ch, windingToFrame: 1 / Rwh, frameToAir: 1 / Rha }
  const ohms = copper(alpha20, R20)
  const cases = [
    {
      name: 'const_loss',
      moved: 0,
      changes: held(I, {
        winding: { resistance: NO_COPPER, brushDrop: (I * I * R20 + Ph) / I },
        heat: { ...heat, air: Ta, brushShare: (I * I * R20) / (I * I * R20 + Ph) },
      }),
    },
    {
      name: 'copper_feedback',
      moved: ohms.moved,
      changes: held(I, {
        winding: { resistance: ohms.resistance, brushDrop: Ph / I },
        heat: { ...heat, air: Ta + ohms.moved, brushShare: 0 },
      }),
    },
  ] as const

  describe.each(cases)('$name', ({ name, moved, changes }) => {
    const wanted = answers[name]
    const plant = plantWith(changes)
    const start = Ta + moved
    const at = (windingC: number, frameC: number) =>
      look(plant, { i: I, windingC: windingC + moved, frameC: frameC + moved })

    it('settles, and how fast', () => {
      const origin = at(0, 0)
      const byWinding = at(100, 0)
      const byFrame = at(0, 100)
      const a = (byWinding.windingRate - origin.windingRate) / 100
      const b = (byFrame.windingRate - origin.windingRate) / 100
      const c = (byWinding.frameRate - origin.frameRate) / 100
      const d = (byFrame.frameRate - origin.frameRate) / 100
      const middle = (a + d) / 2
      const half = Math.sqrt(middle ** 2 - (a * d - b * c))
      near(-1 / (middle - half), wanted.tau_fast_s, 1e-9)
      near(-1 / (middle + half), wanted.tau_slow_s, 1e-9)
      const frame = (windingC: number) => zero((frameC) => at(windingC, frameC).frameRate, 0, 1e3)
      const Tw = zero((windingC) => at(windingC, frame(windingC)).windingRate, 0, 1e3)
      near(Tw, wanted.Tw_ss, 1e-9)
      near(frame(Tw), wanted.Th_ss, 1e-9)
    })

    it('warms along the curve: 1e-6 when stepped finely', () => {
      const { states } = follow(plant, holding(I, start), [600, 1800])
      near(states[0][STATE.windingC] - moved, wanted.Tw_600s, 1e-6)
      near(states[0][STATE.frameC] - moved, wanted.Th_600s, 1e-6)
      near(states[1][STATE.windingC] - moved, wanted.Tw_1800s, 1e-6)
      near(states[1][STATE.frameC] - moved, wanted.Th_1800s, 1e-6)
      const when = (state: number, level: number) =>
        follow(plant, holding(I, start), [1e4], [rising(state, level + moved)]).crossed
      near(when(STATE.windingC, 110), wanted.t_Tw_110C_s, 1e-6)
      near(when(STATE.frameC, 75), wanted.t_Th_75C_s, 1e-6)
    })

    it('a run warms along it within the "precise" tolerance', () => {
      const { samples } = runTrial({
        changes,
        flowing: I,
        startC: start,
        phases: [flatOut(1800)],
        seconds: 1800,
        samples: [600, 1800],
      })
      precisely(samples[0], { windingC: wanted.Tw_600s + moved, frameC: wanted.Th_600s + moved })
      precisely(samples[1], { windingC: wanted.Tw_1800s + moved, frameC: wanted.Th_1800s + moved })
    })
  })
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
    const plant = plantWith({
      winding: { resistance },
      heat: { air: Ta + moved, windingCapacity: 1, windingToAir: G },
    })
    const gain = (i: number, windingC: number) => look(plant, { i, windingC: windingC + moved }).windingRate
    const steady = (i: number) => zero((windingC) => gain(i, windingC), 0, 1e4)
    near(zero((i) => gain(i, 200) - gain(i, 100), 1, 100), wanted.I_critical_A, 1e-9)
    near(steady(0.5 * wanted.I_critical_A), wanted['T_at_0.5Icrit'], 1e-9)
    near(steady(0.7 * wanted.I_critical_A), wanted['T_at_0.7Icrit'], 1e-9)
    near(zero((i) => gain(i, 155), 1, 100), wanted.I_for_155C, 1e-9)
    near(zero((i) => gain(i, 130), 1, 100), wanted.I_for_130C, 1e-9)
    near(steady(8), wanted.T_at_8A, 1e-9)
    near(Ta + look(plant, { i: 8, windingC: Ta + moved }).flow('copper') / G, wanted.T_at_8A_ignoring_feedback, 1e-9)
  })
})

describe('O05: time from the air’s temperature to the switch’s', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O05')
  const { C, G, R20, alpha20, Ta, Ttrip } = inputs
  const { resistance, moved } = copper(alpha20, R20)
  const changes = (i: number) =>
    held(i, {
      winding: { resistance },
      heat: { air: Ta + moved, windingCapacity: C, windingToAir: G },
      cutoff: { fitted: 'manual reset', opensAt: Ttrip + moved },
    })
  const amps = [...[8, 9, 10, 12, 15, 20, 30].map((i) => [`I=${i}A_s`, i] as const), ['I=Icrit_s', answers.I_crit_A] as const]

  it.each(amps)('%s', (name, i) => {
    const [wanted, start] = [answers[name], Ta + moved]
    const levels = [rising(STATE.windingC, Ttrip + moved)]
    near(follow(plantWith(changes(i)), holding(i, start), [1e4], levels).crossed, wanted, 1e-6)
    // The run's switch feels the winding alone, 1 µs late.
    const trial = { changes: changes(i), flowing: i, startC: start, phases: [flatOut(6000)], seconds: 6000 }
    near(timeOf(runTrial(trial), 'opens'), wanted, 1e-5)
  })

  it('the current under which it never opens', () => {
    const plant = plantWith(changes(8))
    const least = zero((i) => look(plant, { i, windingC: Ttrip + moved }).windingRate, 1, 100)
    near(least, answers.I_min_that_ever_trips_A, 1e-9)
  })

  it('with nothing lost to the air', () => {
    const { windingRate } = look(plantWith(changes(30)), { i: 30, windingC: Ta + moved })
    // The copper warms on the way: heat grows in a straight line with temperature, so time goes by the logarithmic mean.
    const last = look(plantWith({ ...changes(30), heat: { windingCapacity: C } }), { i: 30, windingC: Ttrip + moved })
    const mean = (last.windingRate - windingRate) / Math.log(last.windingRate / windingRate)
    near((Ttrip - Ta) / mean, answers['adiabatic_I=30A_s'], 1e-6)
  })
})

describe('O19: what a shaft fan is worth at part speed', () => {
  const { answers } = oracle<unknown, Record<string, Numbers>>('O19')
  // Our law is smooth through standstill; so far above 1 rad/s it is the plain power to 1e-8.
  const full = 1e5
  it.each(Object.keys(answers))('%s', (name) => {
    const [g0, m, share] = /g0=(.*) m=(.*) n\/n0=(.*)/.exec(name)!.slice(1).map(Number)
    const plant = plantWith({
      heat: {
        cooling: 'shaft fan',
        fanSpeed: full,
        fanExponent: m,
        windingCapacity: 1,
        windingToAir: g0,
        windingToFanAir: 1 - g0,
      },
    })
    const removed = (w: number) => -look(plant, { w, windingC: 120 }).windingRate
    near(removed(share * full) / removed(full), answers[name].G_ratio, 1e-6)
    const allowed = (w: number) => zero((i) => look(plant, { w, i, windingC: 120 }).windingRate, 0, 1e3)
    near(allowed(share * full) / allowed(full), answers[name].torque_ratio_equal_rise, 1e-6)
  })
})

describe('O20: the switch feels the housing late', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O20')
  const { theta_inf_K: rise, tau_s: tau, tau_switch_s: lag, theta_trip_K: trip } = inputs
  const i = 8
  const changes = (opensAt: number, late: number): Changes =>
    held(i, {
      winding: { resistance: NO_COPPER, brushDrop: rise / i },
      heat: { frameCapacity: tau, frameToAir: 1, brushShare: 0 },
      cutoff: { fitted: 'manual reset', opensAt: 20 + opensAt, windingShare: 0, lag: late },
    })
  const trial = (opensAt: number, late: number) =>
    runTrial({ changes: changes(opensAt, late), flowing: i, phases: [flatOut(6000)], seconds: 6000 })

  it('opening and its tolerance: 1e-6 when stepped finely, 1e-4 in a run', () => {
    const plant = plantWith(changes(trip, lag))
    const when = (state: number, level: number) =>
      follow(plant, holding(i, 20), [1e4], [rising(state, 20 + level)]).crossed
    near(when(STATE.frameC, trip), answers.t_housing_at_trip_s, 1e-6)
    near(when(STATE.switchC, trip), answers.t_switch_opens_s, 1e-6)
    near(when(STATE.switchC, trip - 5), answers['tolerance_-5K_s'], 1e-6)
    near(when(STATE.switchC, trip + 5), answers['tolerance_+5K_s'], 1e-6)
    near(timeOf(trial(trip, lag), 'opens'), answers.t_switch_opens_s, 1e-4)
    near(timeOf(trial(trip - 5, lag), 'opens'), answers['tolerance_-5K_s'], 1e-4)
    near(timeOf(trial(trip + 5, lag), 'opens'), answers['tolerance_+5K_s'], 1e-4)
  })

  it('the housing has gone past by then', () => {
    const plant = plantWith(changes(trip, lag))
    const [state] = follow(plant, holding(i, 20), [answers.t_switch_opens_s]).states
    near(state[STATE.frameC] - 20 - trip, answers.overshoot_of_housing_K, 1e-6)
    expect(state[STATE.switchC] - 20).toBeCloseTo(trip, 6)
  })
})
