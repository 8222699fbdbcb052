// The belt's ratio from its pulleys.
import { expect, it } from 'vitest'
import { type Belt, ratio } from '../../../sim/parts/belt.ts'

const belt: Belt = { motorPulley: 0.0635, machinePulley: 0.254, efficiency: 0.95 }

it('is the driven over the driving pulley: 10 in on 2.5 in is 4 : 1', () => {
  expect(ratio(belt)).toBeCloseTo(4, 12)
})
it('multiplies over two stages: 2 in to 6 in, then 2 in to 10 in, is 3 × 5 = 15 : 1', () => {
  const two = {
    ...belt,
    motorPulley: 0.0508,
    jackshaftLarge: 0.1524,
    jackshaftSmall: 0.0508,
    machinePulley: 0.254,
  }
  expect(ratio(two)).toBeCloseTo(15, 12)
})
it('is that of a single stage while only one jackshaft pulley is known', () => {
  expect(ratio({ ...belt, jackshaftLarge: 0.15 })).toBeCloseTo(4, 12)
  expect(ratio({ ...belt, jackshaftSmall: 0.15 })).toBeCloseTo(4, 12)
})
