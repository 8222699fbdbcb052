// Cast iron: the table that was read against Kienzle's law from memory.
import { describe, expect, it } from 'vitest'
import { metalEnergy } from '../../../sim/cuts/metal.ts'
import { CAST_IRON, castIron, KIENZLE, kienzle } from '../../../sim/handbook/kienzle.ts'
import { publishedCase } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'

describe('P73: specific force of EN-GJL-250 against feed, edge at 45°', () => {
  // Lathe-chuck manual (source incomplete: maker and date not given).
  const { inputs, recomputed } = publishedCase<
    { feed_mm: number[]; kc_kN_mm2: number[] },
    unknown,
    { fitted_mc: number; fitted_kc11_N_mm2: number }
  >('P73')
  const chips = inputs.feed_mm.map((feed) => (feed / 1000) * Math.SQRT1_2)

  it('the rows come back exactly', () => {
    chips.forEach((chip, n) => {
      near(castIron(chip) / 1e9, inputs.kc_kN_mm2[n], 1e-12)
    })
    expect(CAST_IRON.rows).toHaveLength(inputs.feed_mm.length)
  })

  it('Kienzle’s law fitted to them has the constants worked out apart', () => {
    const x = chips.map((chip) => Math.log(chip * 1000))
    const y = chips.map((chip) => Math.log(castIron(chip) / 1e6))
    const mean = (list: number[]) => list.reduce((a, b) => a + b) / list.length
    const slope =
      x.reduce((all, one, n) => all + (one - mean(x)) * (y[n] - mean(y)), 0) /
      x.reduce((all, one) => all + (one - mean(x)) ** 2, 0)
    near(-slope, recomputed.fitted_mc, 1e-10)
    near(Math.exp(mean(y) - slope * mean(x)), recomputed.fitted_kc11_N_mm2, 1e-10)
  })

  it('the constants from memory lie within 3 % of the fit, and their curve within 6 % of the table', () => {
    const { kc11, mc } = KIENZLE['GG-25']
    near(kc11 / 1e6, recomputed.fitted_kc11_N_mm2, 0.03)
    expect(Math.abs(mc - recomputed.fitted_mc)).toBeLessThan(0.02)
    for (const chip of chips) near(kienzle(KIENZLE['GG-25'], chip), castIron(chip), 0.06)
  })

  it('falls all the way, ends included', () => {
    let before = Number.POSITIVE_INFINITY
    for (let chip = 0.02e-3; chip < 3e-3; chip *= 1.1) {
      expect(castIron(chip)).toBeLessThan(before)
      before = castIron(chip)
    }
  })

  it('is the row a cut in cast iron uses', () => {
    const { energy, row, standing } = metalEnergy({ material: 'cast iron', edge: 'sharp' }, chips[2])
    near(energy, 1.6e9, 1e-12)
    expect(row).toContain('EN-GJL-250')
    expect(standing).toBe('read')
  })
})
