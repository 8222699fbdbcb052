// The machine against hand calculation; and that no cut ever drives the spindle.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Cut, cutTorque, idleTorque, type Machine } from '../../../sim/parts/machine.ts'

const torque: Cut = { kind: 'torque', torque: 6 }
const power: Cut = { kind: 'power', power: 300, fullAbove: 10 }
const fan: Cut = { kind: 'fan', coefficient: 0.002 }

describe('the cut', () => {
  it('of a torque is that torque, once the spindle turns', () => {
    expect(cutTorque(torque, 0, 30)).toBeCloseTo(6, 12)
    expect(cutTorque(torque, 0, 1)).toBeCloseTo(6 * 0.761594155955765, 12)
  })
  it('of a power is power over speed: 300 W at 30 rad/s is 10 N·m', () => {
    expect(cutTorque(power, 0, 30)).toBeCloseTo(10, 12)
  })
  it('of a power asks no more torque below its full speed than at it: 300 W / 10 rad/s', () => {
    expect(cutTorque(power, 0, 10)).toBeCloseTo(30, 6)
    expect(cutTorque(power, 0, 5)).toBeCloseTo(30 * Math.tanh(5), 12)
    expect(cutTorque(power, 0, -30)).toBeCloseTo(-30, 12)
  })
  it('of a fan grows as speed squared: 0.002 × 50²', () => {
    expect(cutTorque(fan, 0, 50)).toBeCloseTo(5, 12)
    expect(cutTorque(fan, 0, -50)).toBeCloseTo(-5, 12)
  })
  it('is added to by a surge of torque, in every kind', () => {
    for (const cut of [torque, power, fan])
      expect(cutTorque(cut, 2, 30) - cutTorque(cut, 0, 30)).toBeCloseTo(2, 12)
  })
  it('opposes motion only: its power is never below nothing, and nothing at standstill', () => {
    const speed = fc.double({ min: -1000, max: 1000, noNaN: true })
    const surge = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(fc.constantFrom(torque, power, fan), surge, speed, (cut, extra, ws) => {
        expect(cutTorque(cut, extra, ws) * ws).toBeGreaterThanOrEqual(0)
        expect(Math.abs(cutTorque(cut, extra, 0))).toBe(0)
      }),
      { seed: 11, numRuns: 500 },
    )
  })
})

describe('idling', () => {
  const machine: Machine = { kind: 'mill', inertia: 0.2, drag: 0.8, windage: 0.01, acceptedSag: 0.2 }
  it('takes the drag and what grows with speed: 0.8 + 0.01 × 40', () => {
    expect(idleTorque(machine, 40)).toBeCloseTo(1.2, 12)
    expect(idleTorque(machine, -40)).toBeCloseTo(-1.2, 12)
  })
  it('fades out through standstill: tanh 1 of the drag at 0.5 rad/s', () => {
    expect(idleTorque(machine, 0)).toBe(0)
    expect(idleTorque(machine, 0.5)).toBeCloseTo(0.8 * 0.761594155955765 + 0.005, 12)
  })
})
