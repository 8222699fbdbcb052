// Form factors: the handbook's values, and what they cost in heat.
import { expect, it } from 'vitest'
import { FORM_FACTORS, RATED_FORM_FACTORS } from '../../../sim/handbook/formFactor.ts'
import { settle } from '../../../sim/steady.ts'
import { oracle, publishedCase } from '../../checks/files.ts'
import { look, near, partsWith, plantWith, zero } from '../physics/lab.ts'

type Numbers = Record<string, number>
const { answers } = oracle<unknown, Numbers>('O11')
const rows = Object.values({ ...FORM_FACTORS, ...RATED_FORM_FACTORS })

it('lie between their bounds, and none under 1', () => {
  for (const { value, low, high } of rows) {
    expect(low).toBeGreaterThanOrEqual(1)
    expect(value).toBeGreaterThanOrEqual(low)
    expect(value).toBeLessThanOrEqual(high)
  }
})

it('filtered 1.05 to 1.10, PWM at most 1.05, unfiltered from 1.37 (drive handbook)', () => {
  expect(FORM_FACTORS['phase control with choke']).toMatchObject({ low: 1.05, high: 1.1 })
  expect(FORM_FACTORS.pwm.high).toBe(1.05)
  expect(FORM_FACTORS['phase control'].low).toBe(1.37)
  expect(FORM_FACTORS.battery).toMatchObject({ value: 1, low: 1, high: 1 })
})

it('P50, O11: an unfiltered bridge lies between a full wave and a half wave on a resistance', () => {
  // Bimbhra, Power Electronics, ch. 6, as transcribed in a public companion; closed forms.
  const half = publishedCase<unknown, { FF: number }>('P50').published.FF
  near(half, answers.half_wave_FF, 1e-4)
  for (const { value } of [FORM_FACTORS['phase control'], RATED_FORM_FACTORS.industrial]) {
    expect(value).toBeGreaterThan(answers.full_wave_FF)
    expect(value).toBeLessThan(half)
  }
})

it.each([
  [answers.full_wave_FF, answers.full_wave_heating_FF2],
  [1.4, answers['FF_1.40_squared']],
  [1.05, answers['FF_1.05_squared']],
])('O11: a current of form factor %d heats the plant’s copper %d times', (formFactor, heats) => {
  const plant = plantWith({ supply: { formFactor } })
  near(look(plant, { i: 5 }).flow('copper') / look(plantWith({}), { i: 5 }).flow('copper'), heats, 1e-9)
})

it('O11: and allows so much less torque at the same temperature', () => {
  const { winding, rotor, heat } = partsWith({ heat: { air: 40, windingToAir: 2, frameToAir: 1 } })
  const most = (formFactor: number) =>
    zero(
      (torque) =>
        (settle(winding, rotor, heat, { speed: 0, torque, formFactor, air: 40 })?.windingC ?? 1e3) - 120,
      0,
      10,
    )
  near(most(1.4) / most(1.05), answers['torque_1.40_vs_1.05_equal_heat'], 1e-6)
  near(most(1.4) / most(1), answers['FF_1.40_equal_heating_torque'], 1e-6)
})
