// The winding, magnets and brushes against hand calculation.
import { describe, expect, it } from 'vitest'
import {
  brushVolts,
  constantAt,
  inductanceOf,
  resistanceAt,
  type Winding,
} from '../../../sim/parts/winding.ts'

const winding: Winding = {
  resistance: 0.8,
  constant: 0.25,
  magnets: 'ferrite',
  brushDrop: 1.5,
  insulation: 'B',
}

describe('copper', () => {
  it('is as given at 20 °C and 355/255 of that at 120 °C (IEC 60034-1: 235 for copper)', () => {
    expect(resistanceAt(winding, 20)).toBe(0.8)
    expect(resistanceAt(winding, 120)).toBeCloseTo((0.8 * 355) / 255, 15)
    expect(resistanceAt(winding, 120)).toBeCloseTo(1.113725, 6)
  })
  it('follows a straight line to nothing at −235 °C', () => {
    expect(resistanceAt(winding, -235)).toBe(0)
    expect(resistanceAt(winding, 70)).toBeCloseTo(
      (resistanceAt(winding, 20) + resistanceAt(winding, 120)) / 2,
      15,
    )
  })
})

describe('magnets', () => {
  it.each([
    ['ferrite', 70, 0.225], // 50 K × −0.20 %/K: a magnet maker's table
    ['ferrite', 120, 0.2],
    ['NdFeB', 120, 0.2225], // 100 K × −0.11 %/K: within the maker's −0.09 to −0.12
    ['AlNiCo', 120, 0.245], // 100 K × −0.02 %/K: from memory
  ] as const)('%s at %d °C', (magnets, frameC, constant) => {
    expect(constantAt({ ...winding, magnets }, 20)).toBe(0.25)
    expect(constantAt({ ...winding, magnets }, frameC)).toBeCloseTo(constant, 12)
  })
})

describe('brushes', () => {
  it('drop their volts at working currents, either way round', () => {
    expect(brushVolts(winding, 5)).toBeCloseTo(1.5, 12)
    expect(brushVolts(winding, -5)).toBeCloseTo(-1.5, 12)
  })
  it('pass smoothly through no current: tanh 1 of it at 0.05 A', () => {
    expect(brushVolts(winding, 0)).toBe(0)
    expect(brushVolts(winding, 0.05)).toBeCloseTo(1.5 * 0.761594155955765, 12)
  })
})

describe('inductance', () => {
  it('is as measured, or 5 ms times the resistance', () => {
    expect(inductanceOf({ ...winding, inductance: 0.0031 })).toBe(0.0031)
    expect(inductanceOf(winding)).toBeCloseTo(0.004, 15)
  })
})
