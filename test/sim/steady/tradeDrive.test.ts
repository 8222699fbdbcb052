// Rows of JOB.md (f) for the drive that no other test holds: a small controller, a current limit's heat, a slow fan.
import { describe, expect, it } from 'vitest'
import { type Air, airAt, fullFan } from '../../../sim/parts/heat.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { heatLeft } from '../../../sim/steady.ts'
import { topSpeed } from '../../../sim/steady/operating.ts'
import { shortTimeTorque } from '../../../sim/steady/shortTime.ts'
import { near, partsWith } from '../physics/lab.ts'

describe('110 V, 4 hp in, 4200 rpm behind a controller of 90 V, 400 W', () => {
  const plateAmps = fromUnit(4, 'hp') / 110
  const allowed = 400 / 90
  const constant = 110 / fromUnit(4200, 'rpm')
  const behind = (currentLimit: number) =>
    partsWith({
      supply: { volts: 90 },
      controller: { holds: 'speed feedback', currentLimit },
      winding: { resistance: 0.3, constant },
    })

  it('27 A on the plate, 4.4 A allowed, 3436 rpm', () => {
    expect([Math.round(plateAmps), allowed.toFixed(1)]).toEqual([27, '4.4'])
    expect(Math.round(toUnit(topSpeed(behind(allowed)), 'rpm'))).toBe(3436)
  })

  it('the controller is the limit: its amps times the constant, a sixth of what the plate allows', () => {
    const half = fromUnit(2000, 'rpm')
    const most = shortTimeTorque(behind(allowed), half, 60)
    expect(most.limit).toBe('current')
    near(most.amps, allowed, 1e-6)
    near(most.torque, constant * allowed, 1e-6)
    near(shortTimeTorque(behind(plateAmps), half, 60).torque / most.torque, plateAmps / allowed, 1e-6)
  })
})

it('1.5 times the amps are 2.25 times the heat in the copper', () => {
  const { winding, rotor, heat } = partsWith({ winding: { resistance: 0.8, constant: 0.2 } })
  const copper = (torque: number) =>
    heatLeft(winding, rotor, heat, { speed: 100, torque, formFactor: 1, air: 20 })(90, 20)[0]
  near(copper(1.5) / copper(1), 2.25, 1e-12)
  // 5 A in 0.8 Ω, 70 K warmer: 0.393 % a kelvin.
  near(copper(1), 25 * 0.8 * (1 + 0.00393 * 70), 1e-3)
})

it('a shaft fan at 400 of 1800 rpm: 22 % of the air, and 30 to 47 % of the heat carried away by exponent', () => {
  // Common practice, no source: air goes as speed, the heat it takes as air to the 0.8 down to the 0.5.
  const carried = (fanExponent: number, speed: number) => {
    const { heat } = partsWith({
      heat: { cooling: 'shaft fan', windingToFanAir: 1, fanSpeed: fromUnit(1800, 'rpm'), fanExponent },
    })
    const air: Air = { windingToAir: 0, frameToAir: 0 }
    airAt(heat, fullFan(heat), fromUnit(speed, 'rpm'), air)
    return air.windingToAir
  }
  expect([1, 0.8, 0.5].map((exponent) => Math.round(100 * carried(exponent, 400)))).toEqual([22, 30, 47])
  for (const exponent of [1, 0.8, 0.5]) near(carried(exponent, 1800), 1, 1e-4)
})
