// Heat against closed forms: oracles O02 (two nodes), O04 (runaway), O19 (what a shaft fan is worth).
import { describe, it } from 'vitest'
import { STATE } from '../../../sim/plant.ts'
import { oracle } from '../../checks/files.ts'
import { look, near, plantWith, zero } from './lab.ts'
import { copper, flatOut, follow, held, holding, NO_COPPER, precisely, rising, runTrial } from './trial.ts'

type Numbers = Record<string, number>

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
    near(
      zero((i) => gain(i, 200) - gain(i, 100), 1, 100),
      wanted.I_critical_A,
      1e-9,
    )
    near(steady(0.5 * wanted.I_critical_A), wanted['T_at_0.5Icrit'], 1e-9)
    near(steady(0.7 * wanted.I_critical_A), wanted['T_at_0.7Icrit'], 1e-9)
    near(
      zero((i) => gain(i, 155), 1, 100),
      wanted.I_for_155C,
      1e-9,
    )
    near(
      zero((i) => gain(i, 130), 1, 100),
      wanted.I_for_130C,
      1e-9,
    )
    near(steady(8), wanted.T_at_8A, 1e-9)
    near(
      Ta + look(plant, { i: 8, windingC: Ta + moved }).flow('copper') / G,
      wanted.T_at_8A_ignoring_feedback,
      1e-9,
    )
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
