// The motor's own friction against hand calculation.
import { expect, it } from 'vitest'
import { friction, type Rotor } from '../../../sim/parts/rotor.ts'

const rotor: Rotor = { inertia: 0.001, flywheel: 0.004, dryFriction: 0.1, windage: 0.0002 }

it('is dry friction and windage at speed: 0.1 N·m + 0.0002 × 400', () => {
  expect(friction(rotor, 400)).toBeCloseTo(0.18, 12)
})
it('opposes motion either way, and is nothing at standstill', () => {
  expect(friction(rotor, -400)).toBeCloseTo(-0.18, 12)
  expect(friction(rotor, 0)).toBe(0)
})
it('fades out under 0.5 rad/s: tanh 1 of the dry part there', () => {
  expect(friction(rotor, 0.5)).toBeCloseTo(0.1 * 0.761594155955765 + 0.0001, 12)
})
