// Textbook examples of cutting through the product's own cuts; each case names its source.
import { describe, expect, it } from 'vitest'
import { spindleSpeed, surfaceSpeed } from '../../../sim/cuts/spindle.ts'
import { kienzle } from '../../../sim/handbook/kienzle.ts'
import { GRIP } from '../../../sim/handbook/roughLoads.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { publishedCase } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'
import { ask, hpMinutes } from './ask.ts'

type Numbers = Record<string, number>
const hp = (watts: number) => toUnit(watts, 'hp')

// Textbook cases are as transcribed in public companions; printed pages not seen.

describe('P63: turning a rod', () => {
  // Kalpakjian & Schmid, Manufacturing Engineering and Technology, Ex 22.1.
  const { inputs, published, recomputed } = publishedCase<
    { d0_in: number; d1_in: number; rpm: number; feed_in_min: number },
    Numbers,
    Numbers
  >('P63')
  const { d0_in, d1_in, rpm, feed_in_min } = inputs
  const energy = hpMinutes(4 / 2.73)
  const answer = ask('turning', {
    diameter: `${d0_in} in`,
    depth: `${(d0_in - d1_in) / 2} in`,
    feed: `${feed_in_min / rpm} in`,
    spindle: `${rpm} rpm`,
    energy,
  })
  const arm = fromUnit((d0_in + d1_in) / 4, 'in')

  it('removal rate, power and force, 2 %', () => {
    const rate = answer.power / (Number(energy.slice(0, -2)) * 1e6)
    near((rate * 60) / fromUnit(1, 'in') ** 3, published.MRR_in3_min, 0.02)
    near(hp(answer.power), published.hp, 0.02)
    near(toUnit(answer.torque / arm, 'lbf'), published.Fc_lb, 0.02)
  })

  it('and to ten digits what the sum gives; its torque was worked out with 5252', () => {
    near(hp(answer.power), recomputed.hp, 1e-10)
    near((toUnit(answer.torque, 'lbf·ft') * 5252) / (33_000 / (2 * Math.PI)), recomputed.T_lbft, 1e-10)
    near(toUnit(answer.torque / arm, 'lbf'), recomputed.Fc_lb, 1e-10)
  })
})

it('P65: slab milling mild steel, 0.2 %', () => {
  // Kalpakjian & Schmid, Ex 23.1. The cutter's diameter plays no part.
  const { inputs, published } = publishedCase<Numbers, Numbers>('P65')
  const answer = ask('milling', {
    width: `${inputs.w_in} in`,
    depth: `${inputs.d_in} in`,
    tooth: `${inputs.f_tooth} in`,
    teeth: `${inputs.n}`,
    spindle: `${inputs.rpm} rpm`,
    diameter: '2 in',
    energy: hpMinutes(inputs.u),
  })
  near(hp(answer.power), published.hp, 0.002)
  near(toUnit(answer.torque, 'lbf·ft'), published.T_lbft, 0.002)
  near(hp(answer.power) / inputs.u, published.MRR, 0.002)
})

it('P66: face milling aluminium by table feed, 0.1 %', () => {
  // Kalpakjian & Schmid, Ex 23.2; 1.1 W·s/mm³ is 1.1 kJ a cm³. The spindle speed plays no part in the power.
  const { inputs, published } = publishedCase<Numbers, Numbers>('P66')
  const answer = ask('milling', {
    width: `${inputs.w} mm`,
    depth: `${inputs.d} mm`,
    feed: `${inputs.v_m_min / 60} m/s`,
    spindle: '100 rpm',
    diameter: '150 mm',
    energy: `${inputs.u} kJ`,
  })
  near(answer.power / 1000, published.kW, 0.001)
  near((answer.power / inputs.u) * 60, published.MRR_mm3_min, 0.001)
})

it('P67: surface grinding, 0.2 %, and its press lies in our band', () => {
  // Kalpakjian & Schmid, Ex 25.2.
  const { inputs, published } = publishedCase<Numbers, Numbers>('P67')
  const answer = ask('wheelGrinding', {
    diameter: `${inputs.D_in} in`,
    spindle: `${inputs.rpm} rpm`,
    width: `${inputs.w_in} in`,
    depth: `${inputs.d_in} in`,
    feed: `${(inputs.v_in_min * fromUnit(1, 'in')) / 60} m/s`,
    energy: hpMinutes(inputs.u),
  })
  near(hp(answer.power), published.hp_implied, 0.002)
  near(toUnit(answer.torque / fromUnit(inputs.D_in / 2, 'in'), 'lbf'), published.Fc_lb, 0.002)
  const grip = published.Fc_lb / published.Fn_lb
  expect(grip).toBeGreaterThan(GRIP.low)
  expect(grip).toBeLessThan(GRIP.high)
})

it('P68: force on a chip by Kienzle’s law, 0.6 %', () => {
  // Ghosh & Mallik, Manufacturing Science, Ex 4.5, p. 196.
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P68')
  const row = { kc11: inputs.U0 * 1e9, mc: 0.4 }
  const force = kienzle(row, inputs.t1 / 1e3) * (inputs.t1 / 1e3) * (inputs.w / 1e3)
  near(force, published.Fc_N, 0.006)
  near(force, recomputed.Fc_N, 1e-10)
})

it('P74: power of turning from Ks in kgf/mm², 0.1 %', () => {
  // Formula sheet for turning (source incomplete: maker and date not given).
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P74')
  const { Ks_medium_carbon, vc, ap, f, eta } = inputs
  const force = fromUnit(Ks_medium_carbon, 'kgf')
  const diameter = 80
  const answer = ask('turning', {
    diameter: `${diameter} mm`,
    depth: `${ap} mm`,
    feed: `${f} mm`,
    // The sheet's speed is that of the chip, in the middle of the depth.
    spindle: `${toUnit(spindleSpeed(vc / 60, (diameter - ap) / 1000), 'rpm')} rpm`,
    energy: `${force} J`,
  })
  const kW = (Ks_medium_carbon * vc * ap * f) / published.const_6120 / eta
  near(answer.power / eta / 1000, kW, 0.001)
  near(kW, recomputed.Pc_kW, 1e-9)
  near(answer.torque / ((diameter - ap) / 2000), recomputed.Fc_N, 1e-9)
  near((Ks_medium_carbon * vc * ap * f) / (answer.power / 1000), recomputed.exact_const, 1e-9)
})

it('P43: a brake arm holds a motor, 0.1 %', () => {
  // Guru & Hiziroglu, Ex 6.8, p. 385; the book takes 746 W a horsepower and 9.81 m/s².
  const { inputs, published } = publishedCase<Numbers, Numbers>('P43')
  const answer = ask('force', {
    force: `${published.scale_kg} kgf`,
    radius: `${inputs.arm_m} m`,
    spindle: `${inputs.rpm} rpm`,
  })
  near(hp(answer.power), inputs.hp, 0.001)
})

it('P57: torque, surface speed and speed on the other pulley, 0.1 %', () => {
  // Wentzell, Ex 14.1, p. 306; the book takes 63 000 where 63 025 is meant.
  const { inputs, published } = publishedCase<Numbers, Numbers>('P57')
  const answer = ask('torque', { torque: `${published.T_lbin} lbf·in`, spindle: `${inputs.rpm} rpm` })
  near(hp(answer.power), inputs.hp, 0.001)
  const belt = surfaceSpeed(fromUnit(inputs.rpm, 'rpm'), fromUnit(inputs.D1, 'in'))
  near(toUnit(belt, 'ft/min'), published.fpm, 1e-6)
  near(toUnit(spindleSpeed(belt, fromUnit(inputs.D2, 'in')), 'rpm'), published.rpm2, 1e-12)
})
