// Kloss's curve: its limits, the circuit it comes from, and how it is drawn on to the locked rotor.
import { describe, expect, it } from 'vitest'
import { breakdownSlip, inductionTorque, kloss } from '../../../sim/rival/kloss.ts'
import { highest, near } from '../physics/lab.ts'
import { induction } from './old.ts'

describe('the law', () => {
  it('is 1 at breakdown slip, and nowhere more', () => {
    expect(kloss(0.2, 0.2)).toBe(1)
    near(
      highest((slip) => kloss(slip, 0.2), 0, 1),
      0.2,
      1e-4,
    )
  })
  it('is a straight line at small slip: 2 s / sb', () => {
    near(kloss(1e-6, 0.2), 1e-5, 1e-9)
    near(kloss(2e-4, 0.2) / kloss(1e-4, 0.2), 2, 1e-5)
    expect(kloss(0, 0.2)).toBe(0)
  })
  it('falls as 2 sb / s far beyond it', () => near(kloss(1, 1e-4), 2e-4, 1e-7))

  it('is the torque of a motor without stator resistance (Γ circuit: T ∝ (R/s) / ((R/s)² + X²))', () => {
    const [R, X] = [0.15, 0.25]
    const torque = (slip: number) => R / slip / ((R / slip) ** 2 + X * X)
    const most = 1 / (2 * X)
    for (const slip of [0.01, 0.04, 0.3, 0.6, 1]) near(kloss(slip, R / X), torque(slip) / most, 1e-12)
    // Full load at 4 % slip gives the summit back.
    near(breakdownSlip(0.04, most / torque(0.04)), R / X, 1e-12)
  })
})

const kinds = ['single-phase', 'three-phase'] as const
const motors = kinds.flatMap((kind) =>
  [
    ['1/4 hp', '1140 rpm'],
    ['3/4 hp', '1725 rpm'],
    ['1 hp', '1050 rpm'],
    ['2 hp', '3450 rpm'],
    ['5 hp', '1425 rpm'],
  ].map(([power, speed]) => [kind, power, speed] as const),
)
describe.each(motors)('%s %s %s', (kind, power, speed) => {
  const motor = induction({ kind, power, speed })
  const at = (slip: number) => inductionTorque(motor, motor.synchronous * (1 - slip))
  it('full load at plate speed, nothing at the speed of the field, breakdown at its slip', () => {
    near(inductionTorque(motor, motor.speed), motor.fullLoad, 1e-9)
    expect(at(0)).toBe(0)
    near(at(motor.breakdownSlip), motor.breakdown, 1e-9)
    expect(motor.breakdownSlip).toBeLessThan(1)
  })
  it('the locked rotor at standstill; never under pull-up beyond breakdown; no jump', () => {
    near(inductionTorque(motor, 0), motor.locked, 1e-12)
    const slips = Array.from({ length: 2001 }, (_, n) => n / 2000)
    const torques = slips.map(at)
    slips.forEach((slip, n) => {
      if (slip > motor.breakdownSlip) expect(torques[n]).toBeGreaterThanOrEqual(motor.pullUp)
      if (n > 0) expect(Math.abs(torques[n] - torques[n - 1])).toBeLessThan(0.06 * motor.breakdown)
    })
  })
})

it('a plate that gives its torques is believed', () => {
  const motor = induction({
    power: '1 hp',
    speed: '1725 rpm',
    lockedTorque: '150 %',
    breakdownTorque: '220 %',
  })
  near(motor.locked / motor.fullLoad, 1.5, 1e-12)
  near(motor.breakdown / motor.fullLoad, 2.2, 1e-12)
  near(inductionTorque(motor, motor.speed), motor.fullLoad, 1e-9)
  expect(motor.sources).toMatchObject({ locked: 'given', breakdown: 'given' })
})
