// The air of each kind of cooling, against hand calculation.
import { describe, expect, it } from 'vitest'
import { airAt, flowPerSpeed, fullFan, type Heat } from '../../../sim/parts/heat.ts'

const heat: Heat = {
  cooling: 'shaft fan',
  air: 25,
  airflow: 0.5,
  airPath: 1,
  stir: 0.2,
  windingCapacity: 600,
  frameCapacity: 1800,
  windingToFrame: 0.9,
  windingToAir: 0.3,
  windingToFanAir: 3.5,
  frameToAir: 1.2,
  frameToFanAir: 0.6,
  fanSpeed: 400,
  fanExponent: 0.8,
  frictionShare: 0.5,
  brushShare: 0.5,
}
const look = (changes: Partial<Heat>, w: number) => {
  const full = { ...heat, ...changes }
  const air = { windingToAir: Number.NaN, frameToAir: Number.NaN }
  airAt(full, fullFan(full), w, air)
  return air
}
/** 0.5^0.8, by hand: exp(−0.8 ln 2). */
const HALF = 0.574349177498517

describe('shaft fan', () => {
  it('gives all its air at its full speed, less 0.6/ω² for the rounding of |ω| through standstill', () => {
    const { windingToAir, frameToAir } = look({}, 400)
    expect(windingToAir).toBeCloseTo(0.3 + 3.5 * (1 - 0.6 / 160000), 8)
    expect(frameToAir).toBeCloseTo(1.2 + 0.6 * (1 - 0.6 / 160000), 8)
    expect(windingToAir).toBeLessThan(3.8)
  })
  it('gives 0.5^0.8 = 57 % of it at half speed', () => {
    expect(look({}, 200).windingToAir).toBeCloseTo(0.3 + 3.5 * HALF, 4)
  })
  it('gives none at standstill, and the same either way round', () => {
    expect(look({}, 0)).toEqual({ windingToAir: 0.3, frameToAir: 1.2 })
    expect(look({}, -150)).toEqual(look({}, 150))
  })
  it('follows its exponent: at a quarter speed 0.25^0.5 is a half', () => {
    expect(look({ fanExponent: 0.5 }, 100).windingToAir).toBeCloseTo(0.3 + 1.75, 3)
  })
})

describe('blower', () => {
  it('gives its airflow to the power 0.8, whatever the motor’s speed', () => {
    for (const w of [0, 10, 400])
      expect(look({ cooling: 'blower' }, w).windingToAir).toBeCloseTo(0.3 + 3.5 * HALF, 12)
    expect(look({ cooling: 'blower', airflow: 1 }, 0).windingToAir).toBeCloseTo(3.8, 12)
    expect(look({ cooling: 'blower', airflow: 0 }, 400)).toEqual({ windingToAir: 0.3, frameToAir: 1.2 })
  })
})

describe('no fan', () => {
  it('leaves what the rotor stirs: 20 % of the fan', () => {
    expect(look({ cooling: 'none' }, 400).windingToAir).toBeCloseTo(0.3 + 0.2 * 3.5, 4)
    expect(look({ cooling: 'none' }, 400).frameToAir).toBeCloseTo(1.2 + 0.2 * 0.6, 4)
  })
  it('without stirring is still air', () => {
    expect(look({ cooling: 'none', stir: 0 }, 400)).toEqual({ windingToAir: 0.3, frameToAir: 1.2 })
  })
})

describe('enclosed', () => {
  it('gives the winding no air at all, and the frame still air', () => {
    expect(look({ cooling: 'enclosed' }, 400)).toEqual({ windingToAir: 0, frameToAir: 1.2 })
  })
  it('with an outer fan blows on the frame alone', () => {
    const air = look({ cooling: 'enclosed, outer fan' }, 400)
    expect(air.windingToAir).toBe(0)
    expect(air.frameToAir).toBeCloseTo(1.8, 5)
  })
})

it('a dirty air path takes from the winding’s air, still or blown, and leaves the frame alone', () => {
  const clean = look({}, 400)
  const dirty = look({ airPath: 0.25 }, 400)
  expect(dirty.windingToAir).toBeCloseTo(clean.windingToAir / 4, 12)
  expect(dirty.frameToAir).toBe(clean.frameToAir)
})

it.each(['shaft fan', 'none', 'enclosed, outer fan', 'blower', 'enclosed'] as const)(
  'with %s the flow grows with speed as the air does by differences',
  (cooling) => {
    for (const w of [0.3, 5, 60, 400]) {
      const [less, here, more] = [w * (1 - 1e-5), w, w * (1 + 1e-5)].map(
        (at) => look({ cooling }, at).frameToAir,
      )
      const blown = here - 1.2
      const share = blown === 0 ? 0 : (more - less) / (2e-5 * w) / blown
      const wanted = flowPerSpeed({ ...heat, cooling }, w)
      // A blower blows the same at any speed.
      if (cooling === 'blower') expect([more - less, wanted]).toEqual([0, 0])
      else expect(Math.abs(share / (wanted || 1) - (wanted === 0 ? 0 : 1))).toBeLessThan(1e-4)
    }
  },
)
