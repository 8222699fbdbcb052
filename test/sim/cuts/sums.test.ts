// Sums worked by hand, one for each way a cut is put together.
import { expect, it } from 'vitest'
import { metalEnergy } from '../../../sim/cuts/metal.ts'
import { near } from '../physics/lab.ts'
import { ask } from './ask.ts'

const turn = (rpm: number) => (rpm * Math.PI) / 30

it('a chip thinner than 0.02 mm or thicker than 1 mm takes the energy of the nearer', () => {
  for (const material of ['alloy HB 200-220', 'cast iron', 'brass'] as const) {
    const at = (chip: number) => metalEnergy({ material, edge: 'sharp' }, chip).energy
    expect(at(0.001e-3)).toBe(at(0.02e-3))
    expect(at(3e-3)).toBe(at(1e-3))
    expect(at(0.02e-3)).toBeGreaterThan(at(0.021e-3))
  }
})

it('aluminium in a 1 mm chip: 765 N/mm² sharp, 1.3 times that in fair use', () => {
  near(metalEnergy({ material: 'aluminium', edge: 'sharp' }, 1e-3).energy, 765e6, 1e-12)
  near(metalEnergy({ material: 'aluminium', edge: 'used' }, 1e-3).energy, 1.3 * 765e6, 1e-12)
})

it('milling 20 by 2 mm, four teeth of 0.1 mm at 600 rpm: 4 mm/s of table feed, 0.1 mm chips', () => {
  const { power } = ask('milling', {
    material: 'plain carbon HB 140-160',
    edge: 'sharp',
    width: '20 mm',
    depth: '2 mm',
    tooth: '0.1 mm',
    diameter: '20 mm',
    spindle: '600 rpm',
  })
  near(power, 2.02 * 3 ** 0.2 * 20 * 2 * 4, 1e-12)
})

it('sawing 50 mm by 60 mm in 2 min, 5 mm pitch, 0.5 m/s: chips of 5 µm count as 20 µm', () => {
  const saw = {
    width: '50 mm',
    height: '60 mm',
    kerf: '1 mm',
    diameter: '250 mm',
    speed: '0.5 m/s',
    edge: 'sharp',
  }
  const thin = ask('sawingMetal', { ...saw, lasts: '2 min', pitch: '5 mm' })
  near(thin.power, (1.88 * 15 ** 0.2 * 1 * 50 * 60) / 120, 1e-12)
  // In 5 s with 25 mm from tooth to tooth: 12 mm/s × 25 mm ÷ 500 mm/s = 0.6 mm.
  const thick = ask('sawingMetal', { ...saw, lasts: '5 s', pitch: '25 mm' })
  near(thick.power, (1.88 * 2 ** -0.2 * 1 * 50 * 60) / 5, 1e-12)
})

it('100 N on a belt over a 100 mm wheel: 0.3 to 0.8 of it at 50 mm', () => {
  const { low, high } = ask('beltGrinding', {
    press: '100 N',
    width: '50 mm',
    diameter: '100 mm',
    speed: '20 m/s',
  })
  near(low, 0.3 * 100 * 0.05, 1e-12)
  near(high, 0.8 * 100 * 0.05, 1e-12)
})

it('100 N on a 200 mm grinding wheel: 0.3 to 0.8 of it at 100 mm', () => {
  const { low, high } = ask('wheelGrinding', { press: '100 N', diameter: '200 mm', spindle: '2800 rpm' })
  near(low, 0.3 * 100 * 0.1, 1e-12)
  near(high, 0.8 * 100 * 0.1, 1e-12)
})

it('wood at an energy of one’s own: 40 J/cm³ × 1.5 mm × 100 mm × 50 mm/s is 300 W', () => {
  const { power, standing } = ask('sawingWood', {
    energy: '40 J',
    height: '100 mm',
    feed: '0.05 m/s',
    diameter: '350 mm',
    spindle: '800 rpm',
  })
  near(power, 300, 1e-12)
  expect(standing).toBe('given')
})

it('a 10 mm drill at 0.2 mm in low-carbon steel: 2.22 × 100 × (0.63 + 3.368)/100 = 8.88 N·m', () => {
  // A tool maker's formula, K d² (0.630 + 16.84 f)/100 (source incomplete: maker not named here).
  const { torque } = ask('drilling', { edge: 'sharp', diameter: '10 mm', feed: '0.2 mm', spindle: '400 rpm' })
  near(torque, 8.88, 1e-3)
})

it('flat blades of 200 mm at 300 rpm in water: 3 to 6 times 1000 × 5³ × 0.2⁵ = 40 W', () => {
  const { low, high, speed } = ask('stirring', {
    paddle: 'flat blades',
    diameter: '200 mm',
    spindle: '300 rpm',
  })
  near(speed, turn(300), 1e-12)
  near(low * speed, 120, 1e-9)
  near(high * speed, 240, 1e-9)
})
