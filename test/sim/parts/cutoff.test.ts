// The cutoff's sense element against hand calculation, by place.
import { expect, it } from 'vitest'
import { type Cutoff, senseRate } from '../../../sim/parts/cutoff.ts'

const cutoff: Cutoff = { fitted: 'self-reset', opensAt: 120, reclosesAt: 87, place: 'brush end' }

// Winding 150 °C, frame 90 °C, switch 80 °C.
it.each([
  ['shell', (0.1 * 150 + 0.9 * 90 - 80) / 90],
  ['brush end', (0.4 * 150 + 0.6 * 90 - 80) / 45],
  ['magnet', (0.25 * 150 + 0.75 * 90 - 80) / 60],
] as const)('%s: %d K/s', (place, rate) => {
  expect(senseRate({ ...cutoff, place }, 150, 90, 80)).toBeCloseTo(rate, 12)
})

it('a share and a lag that are given go before those of the place', () => {
  expect(senseRate({ ...cutoff, windingShare: 0.5, lag: 10 }, 150, 90, 80)).toBeCloseTo(4, 12)
  expect(senseRate({ ...cutoff, windingShare: 0 }, 150, 90, 80)).toBeCloseTo(10 / 45, 12)
})

it('rests where the switch is as warm as what it feels', () => {
  expect(senseRate(cutoff, 150, 90, 114)).toBeCloseTo(0, 12)
  expect(senseRate(cutoff, 150, 90, 130)).toBeLessThan(0)
})
