// Insulation classes: hot spots, rises and the limits that follow.
import { describe, expect, it } from 'vitest'
import {
  classLimitC,
  damageC,
  INSULATION,
  type InsulationClass,
  RATED_AIR_C,
} from '../../../sim/handbook/insulation.ts'

// Hot spot: EASA handbook. Rise by resistance over 40 °C air: maker's manual quoting IEC 60034-1; A and E from memory.
// Damage is likely 50 K over the hot spot: common practice, no source.
const CLASSES: [InsulationClass, number, number, number, number][] = [
  ['A', 105, 60, 100, 155],
  ['E', 120, 75, 115, 170],
  ['B', 130, 80, 120, 180],
  ['F', 155, 105, 145, 205],
  ['H', 180, 125, 165, 230],
]

describe.each(CLASSES)('class %s', (name, hotSpot, rise, limit, damage) => {
  it(`hot spot ${hotSpot} °C, rise ${rise} K: average at most ${limit} °C`, () => {
    expect(INSULATION[name]).toMatchObject({ hotSpotC: hotSpot, rise })
    expect(classLimitC(name)).toBe(limit)
    expect(damageC(name)).toBe(damage)
  })
  it('leaves 5 to 15 K between the average and the hot spot', () => {
    // IEC 60034-1's rises allow for 5 K in A, E and 10 to 15 K in B, F, H.
    const over = hotSpot - RATED_AIR_C - rise
    expect(over).toBeGreaterThanOrEqual(5)
    expect(over).toBeLessThanOrEqual(15)
  })
  it('says how well it is known', () => {
    expect(INSULATION[name].standing).toBe(name === 'A' || name === 'E' ? 'memory' : 'read')
  })
})

it('there are no other classes', () => {
  expect(Object.keys(INSULATION)).toEqual(CLASSES.map(([name]) => name))
})
