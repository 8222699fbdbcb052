// Published motors and worked examples through the product's own functions; each case names its source.
import { describe, expect, it } from 'vitest'
import { resistanceAt } from '../../../sim/parts/winding.ts'
import { STATE } from '../../../sim/plant.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { publishedCase } from '../../checks/files.ts'
import { currentAt, ENDLESS, follow, highest, holding, look, near, plantWith, settled, zero } from './lab.ts'

type Numbers = Record<string, number>
const speed = (rpm: number) => fromUnit(rpm, 'rpm')
const rpm = (w: number) => toUnit(w, 'rpm')
const torque = (value: number) => ({ kind: 'torque', torque: value }) as const

describe('P01 Fitzgerald, Kingsley & Umans, Electric Machinery 6e, Example 7.9', () => {
  // As transcribed in a public companion; printed page not seen.
  interface Inputs {
    Ra: number
    no_load: { V: number; I: number; rpm: number }
    load: { V: number; rpm: number }
  }
  const { inputs, published, recomputed } = publishedCase<Inputs, Numbers, Numbers>('P01')
  const { Ra, no_load, load } = inputs
  const motor = (volts: number, constant: number, dryFriction = 0) =>
    plantWith({ supply: { volts }, winding: { resistance: Ra, constant }, rotor: { dryFriction } })
  const idle = { i: no_load.I, w: speed(no_load.rpm) }
  const Km = zero((k) => look(motor(no_load.V, k), idle).currentRate, 0.01, 1)
  const friction = zero((T) => look(motor(no_load.V, Km, T), idle).spare, 0, 10)
  const Prot = look(motor(no_load.V, Km, friction), idle).flow('friction')

  it('motor constant and no-load loss, 1 %', () => {
    near(Km, published.Km, 0.01)
    near(Km, recomputed.Km, 1e-9)
    near(Prot, published.P_rot_W, 0.01)
    near(Prot, recomputed.P_rot_W, 1e-9)
  })

  it('shaft power under load, 4 % (the book rounds the constant to 0.22: with that, 0.1 %)', () => {
    const w = speed(load.rpm)
    // The book holds the loss in watts; our friction is a torque, so it is set for the loaded speed.
    const shaft = (k: number) => {
      const loaded = motor(load.V, k, Prot / w)
      return look(loaded, { w, i: currentAt(loaded, { w }) }).spare * w
    }
    near(shaft(Km), published.P_shaft_W, 0.04)
    near(shaft(Km), recomputed.P_shaft_unrounded_K_W, 1e-9)
    near(shaft(published.Km), published.P_shaft_W, 1e-3)
  })
})

describe('P03 Guru & Hiziroglu, Electric Machinery and Transformers, Example 12.2', () => {
  // As transcribed in a public companion; printed page not seen.
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P03')

  it('the flux that carries this load at this speed, 0.3 %', () => {
    const w = speed(inputs.rpm)
    const motor = (constant: number) =>
      plantWith({
        supply: { volts: inputs.V },
        winding: { resistance: inputs.Ra, constant },
        rotor: { dryFriction: inputs.P_rot / w },
      })
    const cut = { kind: 'power', power: inputs.P_out, fullAbove: 1 } as const
    const k = zero((k) => look(motor(k), { w, cut, i: currentAt(motor(k), { w }) }).spare, 0.5, 0.63)
    near(k, recomputed.k, 1e-9)
    near((1000 * k) / inputs.Ka, published.flux_mWb, 0.003)
  })
})

describe.each([
  ['P04', 'C40-D-400FX, 120 V'],
  ['P06', 'C21-H-175FX, 36 V'],
])('%s data sheet of a PM servo motor, %s (source incomplete: maker or date not given)', (id) => {
  const sheet = publishedCase<Record<string, number | string>, Numbers, Numbers>(id)
  const { published, recomputed } = sheet
  const given = (name: string) => Number(sheet.inputs[name])
  // The sheet's terms: no brush drop, resistance at 25 °C whatever the load, magnets cold.
  const at = { windingC: 25, frameC: 20 }
  const constant = fromUnit(given('Ke_V_per_krpm'), 'V/krpm')
  const winding = { resistance: (given('Rt') * 255) / 260, constant }
  const supply = { volts: given('V') }
  // The sheet neglects what the no-load current drops in the resistance: its speeds are those of a motor without friction.
  const free = plantWith({ supply, winding })
  const rubbing = plantWith({ supply, winding, rotor: { dryFriction: constant * given('I0') } })
  const loads = [
    [fromUnit(given('T1_ozin'), 'ozf·in'), 'T1'],
    [fromUnit(given('T2_ozin'), 'ozf·in'), 'T2'],
  ] as const

  it.each(loads)('speed at %d N·m, 0.1 %', (load, name) => {
    const { w } = settled(free, { ...at, cut: torque(load) })
    near(rpm(w), published[`rpm_${name}`], 1e-3)
    near(rpm(w), recomputed[`rpm_${name}`], 1e-9)
    // Our own motor, whose no-load current does drop volts, is slower by I0 R/k.
    const slower = w - settled(rubbing, { ...at, cut: torque(load) }).w
    near(slower, (given('I0') * given('Rt')) / constant, 1e-6)
  })

  it.each(loads)('temperature rise at %d N·m from the whole loss, 2 %', (load, name) => {
    const { w } = settled(free, { ...at, cut: torque(load) })
    const cut = torque(load)
    const i = zero((amps) => look(rubbing, { ...at, w, cut, i: amps }).spare, 0, 100)
    near(i, recomputed[`I_${name}`], 1e-9)
    const { flow } = look(rubbing, { ...at, w, cut, i })
    const loss = flow('taken') - flow('work')
    const box = plantWith({ heat: { air: 25, frameToAir: 1 / given('Rth_K_W') } })
    const rise = zero((K) => look(box, { frameC: 25 + K }).flow('toAir') - loss, 0, 1e3)
    near(rise, published[`rise_${name}_K`], 0.02)
    near(rise, recomputed[`rise_${name}_K`], 1e-9)
  })

  it('stall, 0.2 %', () => {
    const i = currentAt(free, { ...at, w: 0 })
    // P06 prints its current to two figures only: 7.8 A.
    const digits = String(published.I_stall_A).replace('.', '').length
    if (digits > 2) near(i, published.I_stall_A, 0.002)
    else expect(Number(i.toPrecision(digits))).toBe(published.I_stall_A)
    near(i, recomputed.I_stall_A, 1e-9)
    near(toUnit(look(free, { ...at, i, w: 0 }).spare, 'ozf·in'), published.T_stall_ozin, 0.002)
  })

  it('resistance at 105 °C, as printed', () => {
    expect(resistanceAt(free.winding, 105).toFixed(2)).toBe(published.R_hot_105C.toFixed(2))
  })
})

describe('P07, P08, P09 current that warms the winding to its limit', () => {
  // Motor data quoted in public repositories (source incomplete: maker or date not given).
  const limit = (id: string) => {
    const { inputs, published } = publishedCase<Numbers, Numbers>(id)
    const { Rwh, Rha, Ta, Tmax } = { ...inputs, Rwh: Number(inputs.Rwh), Rha: Number(inputs.Rha) }
    const plant = plantWith({
      winding: { resistance: (Number(inputs.R25) * 255) / 260 },
      heat: { air: Ta, windingCapacity: 1, frameCapacity: 1, windingToFrame: 1 / Rwh, frameToAir: 1 / Rha },
    })
    const at = (i: number, frameC: number) => look(plant, { i, windingC: Tmax, frameC })
    const frame = zero((frameC) => at(0, frameC).frameRate, Ta, Tmax)
    return { found: zero((i) => at(i, frame).windingRate, 0, 100), published: published.I_nominal_A }
  }

  it('P07, 1 %', () => {
    const { found, published } = limit('P07')
    near(found, published, 0.01)
  })

  it.each(['P08', 'P09'])('%s is an upper bound: its sheet also counts no-load loss and brushes', (id) => {
    const { found, published } = limit(id)
    expect(found).toBeGreaterThan(published)
    expect(found).toBeLessThan(1.2 * published)
  })
})

describe('P10 48 V motor data (source incomplete: maker or date not given)', () => {
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P10')
  const plant = plantWith({
    supply: { volts: inputs.V },
    winding: { resistance: inputs.R, constant: inputs.kM },
    rotor: { inertia: fromUnit(inputs.J_gcm2, 'g·cm²'), dryFriction: inputs.kM * inputs.I0 },
  })
  const running = (load: number) => settled(plant, { cut: torque(load) })

  it('no-load speed, stall, gradient and mechanical time constant, 1.5 %', () => {
    near(rpm(running(0).w), published.n0, 0.015)
    near(rpm(running(0).w), recomputed.n0, 1e-9)
    const i = currentAt(plant, { w: 0 })
    near(i, published.stall_A, 0.015)
    near(look(plant, { i, w: 0 }).spare, published.stall_Nm, 0.015)
    near(rpm(running(0).w - running(1).w) / 1000, published.gradient_rpm_per_mNm, 0.015)
    near((plant.gains.proportional * 100) / inputs.kM, published.tau_m_ms, 0.015)
  })

  it('best efficiency: a known disagreement, ours is the formula’s 0.908 where 0.88 is printed', () => {
    const efficiency = (load: number) => {
      const { flow } = look(plant, { ...running(load), cut: torque(load) })
      return flow('work') / flow('taken')
    }
    const best = efficiency(highest(efficiency, 0.1, 4))
    near(best, recomputed.eta_max, 1e-9)
    expect(best).toBeGreaterThan(published.eta_max)
  })
})

describe('P42 J. B. Gupta, Elements of Electric Drives, Ex 5', () => {
  // As transcribed in a public companion; printed page not seen.
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P42')

  it('speed at a lower voltage and the same torque, 0.1 %', () => {
    const motor = (volts: number, constant: number) =>
      plantWith({ supply: { volts }, winding: { resistance: inputs.Ra, constant } })
    const first = { i: inputs.I, w: speed(inputs.rpm) }
    const k = zero((constant) => look(motor(inputs.V1, constant), first).currentRate, 0.1, 10)
    const load = look(motor(inputs.V1, k), first).spare
    const { w, i } = settled(motor(inputs.V2, k), { cut: torque(load) })
    near(rpm(w), published.rpm2, 1e-3)
    near(rpm(w), recomputed.rpm2, 1e-9)
    near(i, inputs.I, 1e-9)
  })
})

describe('P51 Langsdorf, Theory of Alternating-Current Machinery: copper loss from 20 to 75 °C', () => {
  // As transcribed in a public companion; printed page not seen. The book's constant is 234.5, ours 235: 0.1 % allows it.
  const { inputs, published } = publishedCase<{ P20: number; T: [number, number] }, Numbers>('P51')

  it('the same current, 0.1 %', () => {
    const [cold, hot] = inputs.T
    const plant = plantWith({ winding: { resistance: inputs.P20 } })
    near(look(plant, { i: 1, windingC: cold }).flow('copper'), inputs.P20, 1e-12)
    near(look(plant, { i: 1, windingC: hot }).flow('copper'), published.P75, 1e-3)
  })
})

describe('P71 Fuchs & Masoum, Power Quality in Power Systems and Electrical Machines, Eq. 6-39', () => {
  // As transcribed in a public companion; printed page not seen.
  const { inputs, published } = publishedCase<Numbers, Numbers>('P71')

  it('time to 95 % of the final temperature, 0.1 %', () => {
    const tau = 3600 * inputs.tau_h
    const i = 10
    const plant = plantWith({
      supply: { volts: 1e4 },
      controller: { currentLimit: i },
      rotor: { inertia: ENDLESS },
      winding: { resistance: 1e-12, brushDrop: (inputs.T_final - inputs.Ta) / i },
      heat: { air: inputs.Ta, frameCapacity: tau, frameToAir: 1, brushShare: 0 },
    })
    const level = { state: STATE.frameC, level: 0.95 * inputs.T_final, direction: 1 } as const
    const { crossed } = follow(plant, holding(i, inputs.Ta), [1e5], [level])
    near(crossed / tau, published.t_over_tau, 1e-3)
    near(crossed / 3600, published.t_h, 1e-3)
  })
})

describe('P75 Chapman, Electric Machinery Fundamentals, Example 9-1', () => {
  // Statement and answers read on a question page; printed page not seen. Constant flux: the equations of our motor.
  // The page's torque at 100 A, 188.9, is 0.5 % under the book's rounded 190; the product is held to the page.
  interface Inputs {
    V: number
    rpm0: number
    Ra: number
    Rf: number
    I_L: number[]
  }
  const { inputs, published, recomputed } = publishedCase<
    Inputs,
    { rpm: (number | string)[]; T_Nm: number[] },
    { rpm: number[]; T_Nm: number[] }
  >('P75')
  const plant = plantWith({
    supply: { volts: inputs.V },
    winding: { resistance: inputs.Ra, constant: inputs.V / speed(inputs.rpm0) },
  })

  it.each(inputs.I_L.map((amps, n) => [amps, n]))('line current %d A: speed and torque, 0.3 %', (amps, n) => {
    const i = amps - inputs.V / inputs.Rf
    const w = zero((at) => look(plant, { i, w: at }).currentRate, 1, 200)
    const load = look(plant, { i, w }).spare
    near(rpm(w), Number.parseFloat(String(published.rpm[n])), 0.003)
    near(rpm(w), recomputed.rpm[n], 1e-9)
    near(load, published.T_Nm[n], 0.003)
    near(load, recomputed.T_Nm[n], 1e-9)
    near(settled(plant, { cut: torque(load) }).w, w, 1e-9)
  })
})
