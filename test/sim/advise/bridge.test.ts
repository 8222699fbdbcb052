// The bare bridge against the sine averaged by brute force: current flows while the sine stands over the back-EMF.
import { expect, it } from 'vitest'
import { BRIDGE_MEAN, bridgeEmf } from '../../../sim/advise/bridge.ts'

const meanOver = (emf: number): number => {
  const count = 200_000
  let sum = 0
  for (let n = 0; n < count; n++) sum += Math.max(0, Math.sin((Math.PI * (n + 0.5)) / count) - emf)
  return sum / count
}

it.each([0.001, 0.007, 0.05, 0.2, 0.5])('a drop of %d of the peak', (drop) => {
  expect(meanOver(bridgeEmf(drop))).toBeCloseTo(drop, 7)
})

it('runs up towards the peak: a third faster than steady DC of the same rms volts at light load (common practice)', () => {
  // 1 A through 1.2 Ω on 170 V: 0.7 % of the peak.
  expect(bridgeEmf(0.007) * Math.SQRT2).toBeCloseTo(1.34, 1)
  expect(bridgeEmf(1e-9)).toBeCloseTo(1, 5)
})

it('stands where the drop is the whole mean of the sine', () => {
  expect(BRIDGE_MEAN / Math.SQRT2).toBeCloseTo(2 / Math.PI, 12)
  expect(bridgeEmf(2 / Math.PI)).toBeCloseTo(0, 6)
  expect(bridgeEmf(0.9)).toBe(0)
})
