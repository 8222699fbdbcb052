// Capacitors against the closed form, and at their worst as IEC 60204-1 would have it looked at.
import { expect, it } from 'vitest'
import { dischargeTime, longestDischarge } from '../../../sim/advise/discharge.ts'
import { oracle } from '../../checks/files.ts'

interface Inputs {
  C_F: number
  R_ohm: number[]
  V0: number[]
}

it('O14: seconds to 60 V, closed form', () => {
  const { inputs, answers } = oracle<Inputs, Record<string, number>>('O14')
  const [low, high] = inputs.V0
  for (const R of inputs.R_ohm) {
    expect(dischargeTime(inputs.C_F, R, low) / answers[`t_${R}ohm_170V`]).toBeCloseTo(1, 9)
    expect(dischargeTime(inputs.C_F, R, high) / answers[`t_${R}ohm_325V`]).toBeCloseTo(1, 9)
  }
  // IEC 60204-1, 6.2.4: 60 V within 5 s of switching off.
  expect(dischargeTime(inputs.C_F, answers.R_max_for_5s_170V_1000uF, low)).toBeCloseTo(5, 9)
})

it('under 60 V there is nothing to wait for; at its worst mains are 10 % high and the capacitor holds 20 % more', () => {
  expect(dischargeTime(1e-3, 1e5, 60)).toBe(0)
  expect(dischargeTime(1e-3, 1e5, 48)).toBe(0)
  // √2 × 120 V × 1.1 = 186.7 V; 1.2 mF; 10 kΩ: 12 s × ln(3.111) = 13.62 s, by hand.
  expect(longestDischarge(1e-3, 1e4, 120)).toBeCloseTo(13.62, 2)
})
