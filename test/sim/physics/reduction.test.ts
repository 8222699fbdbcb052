// Twice the reduction at the same cut: half the load's amps, a quarter of its copper heat, cold (common practice, no source).
import { describe, expect, it } from 'vitest'
import { assemble, evaluate, FLOW, readings, STATE } from '../../../sim/plant.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { driveAt } from '../../../sim/steady/drive.ts'
import { job } from '../../jobs.ts'

const COLD = 25
const HELD = 20
const TORQUE = 6

/** Amps, less those that it takes to turn with nothing to cut, and the copper heat those amps make, W. */
function loadOf(machinePulley: string) {
  const { parts } = job({
    'controller.holds': 'speed feedback',
    'controller.compensation': null,
    'belt.machinePulley': machinePulley,
    'heat.air': `${COLD} °C`,
  })
  const plant = assemble(parts)
  const at = (torque: number) => driveAt(plant, HELD * plant.ratio, torque, COLD, COLD)
  const loaded = at(TORQUE)
  expect(loaded.limit).toBe('none')
  const amps = loaded.amps - at(0).amps
  const y = new Float64Array(plant.states)
  y[STATE.current] = amps
  y[STATE.speed] = loaded.motor
  for (const state of [STATE.windingC, STATE.frameC, STATE.switchC]) y[state] = COLD
  const read = readings()
  const mode = {
    on: true,
    asked: loaded.motor,
    slope: 0,
    target: loaded.motor,
    cut: { kind: 'torque', torque: TORQUE },
    surge: 0,
  } as const
  evaluate(plant, mode, 0, y, new Float64Array(plant.states), read)
  return { amps, copper: read.flows[FLOW.copper], ratio: plant.ratio }
}

describe('twice the reduction', () => {
  const once = loadOf('5 in')
  const twice = loadOf('10 in')
  it('halves the amps that the load takes, and quarters the copper heat of those', () => {
    expect(twice.ratio / once.ratio).toBeCloseTo(2, 12)
    expect(once.amps).toBeGreaterThan(1)
    expect(twice.amps / once.amps).toBeCloseTo(0.5, 9)
    expect(twice.copper / once.copper).toBeCloseTo(0.25, 9)
  })
})

it('two stages are the product of one-stage ratios', () => {
  const belt = { motorPulley: 0.07, machinePulley: 0.31, efficiency: 0.9 }
  const two = { ...belt, jackshaftLarge: 0.19, jackshaftSmall: 0.06 }
  const first = ratio({ ...belt, machinePulley: 0.19 })
  const last = ratio({ ...belt, motorPulley: 0.06 })
  expect(ratio(two) / (first * last)).toBeCloseTo(1, 14)
})
