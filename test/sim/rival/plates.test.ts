// Horsepower against horsepower says nothing: torque from power and speed, on the same pulley and geared.
import { describe, expect, it } from 'vitest'
import { fromUnit } from '../../../sim/quantity.ts'
import { besides, geared } from '../../../sim/rival/plates.ts'
import { plateTorque } from '../../../sim/rival/rival.ts'
import { near } from '../physics/lab.ts'

const plate = (hp: number, rpm: number) => ({ power: fromUnit(hp, 'hp'), speed: fromUnit(rpm, 'rpm') })

describe('JOB (f), worked by hand: N·m to the digits given', () => {
  it('1 hp 6000 rpm against 1/3 hp 1725 rpm: 1.19 and 1.38; through 3.5:1 4.15', () => {
    const { torque, otherTorque } = besides(plate(1, 6000), plate(1 / 3, 1725))
    expect(torque.toFixed(2)).toBe('1.19')
    expect(otherTorque.toFixed(2)).toBe('1.38')
    expect(geared(plate(1, 6000), 3.5, 1).toFixed(2)).toBe('4.15')
  })
  it('1/3 hp 1720 rpm against 1 hp 3450 rpm on a pulley of half the size: 1.38 and 4.13', () => {
    expect(plateTorque(fromUnit(1 / 3, 'hp'), fromUnit(1720, 'rpm')).toFixed(2)).toBe('1.38')
    expect(geared(plate(1, 3450), 2, 1).toFixed(2)).toBe('4.13')
  })
})

describe('two plates of the same horsepower', () => {
  const fast = plate(1, 6000)
  const slow = plate(1, 1725)
  it('the slower has more torque by as much as it is slower', () => {
    const { torque, otherTorque, ratio, faster } = besides(fast, slow)
    near(otherTorque / torque, 6000 / 1725, 1e-12)
    near(ratio, 6000 / 1725, 1e-12)
    expect(faster).toBe('one')
  })
  it('geared to the same speed they are one motor, but for the belt', () => {
    near(besides(fast, slow).geared, besides(fast, slow).otherTorque, 1e-12)
    near(besides(fast, slow, 0.95).geared, 0.95 * besides(fast, slow).otherTorque, 1e-12)
  })
  it('either may be named first', () => {
    const [a, b] = [besides(fast, slow), besides(slow, fast)]
    expect([a.torque, a.otherTorque, a.ratio, a.geared]).toEqual([b.otherTorque, b.torque, b.ratio, b.geared])
    expect(b.faster).toBe('other')
  })
})
