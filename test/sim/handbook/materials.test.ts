// Copper and magnets as they warm: values with their sources.
import { describe, expect, it } from 'vitest'
import { copperRatio, fluxRatio, MAGNETS, temperatureByResistance } from '../../../sim/handbook/materials.ts'
import { near } from '../physics/lab.ts'

describe('copper: 235 K, IEC 60034-1', () => {
  it('is 1 at 20 °C, 310/255 at 75 °C', () => {
    expect(copperRatio(20)).toBe(1)
    near(copperRatio(75), 310 / 255, 1e-15)
    expect(copperRatio(-235)).toBe(0)
  })

  it('tells a temperature by resistance, and back', () => {
    near(temperatureByResistance(1, copperRatio(120) / copperRatio(25), 25), 120, 1e-12)
    expect(temperatureByResistance(1.3, 1.3, 22)).toBeCloseTo(22, 12)
  })
})

describe('magnets', () => {
  it.each([
    // Magnet maker's tables: ferrite −0.20 %/K, NdFeB −0.09 to −0.12 %/K; AlNiCo from memory.
    ['ferrite', -0.002, 0.8],
    ['NdFeB', -0.0011, 0.89],
    ['AlNiCo', -0.0002, 0.98],
  ] as const)('%s lose %d a kelvin: at 120 °C %d is left', (name, perKelvin, left) => {
    expect(MAGNETS[name].perKelvin).toBe(perKelvin)
    expect(fluxRatio(name, 20)).toBe(1)
    near(fluxRatio(name, 120), left, 1e-12)
  })

  it('a motor 100 K hotter in the winding and 60 K in the magnets needs 1.8 times the copper heat', () => {
    // JOB.md e 13: +39 % ohms and −12 % flux at the same torque.
    expect(copperRatio(120).toFixed(2)).toBe('1.39')
    expect(fluxRatio('ferrite', 80)).toBeCloseTo(0.88, 12)
    expect((copperRatio(120) / fluxRatio('ferrite', 80) ** 2).toFixed(1)).toBe('1.8')
  })
})
