// The exact path along a log against the closed form of two nodes (oracle O02), in one step and in many.
import { describe, expect, it } from 'vitest'
import type { Drive } from '../../../sim/identify/heatDrive.ts'
import { type Conditions, heatPath } from '../../../sim/identify/heatPath.ts'
import { oracle } from '../../checks/files.ts'

type Numbers = Record<string, number>
const { inputs, answers } = oracle<Numbers, Record<'const_loss' | 'copper_feedback', Numbers>>('O02')
const { Cw, Ch, Rwh, Rha, I, R20, alpha20, Ph, Ta } = inputs
const numbers = {
  windingCapacity: Cw,
  frameCapacity: Ch,
  windingToFrame: 1 / Rwh,
  windingToAir: 0,
  windingToFanAir: 0,
  frameToAir: 1 / Rha,
  frameToFanAir: 0,
}
const loss = I * I * R20

/** A path: heat into winding and frame (W), copper heat for each kelvin over −235 °C (W/K), start and air (°C). */
function path(
  times: readonly number[],
  { winding = 0, frame = 0, perKelvin = 0, startC = Ta, on = times.map(() => 1), before = 0.5 },
) {
  const column = (value: number) => new Float64Array(times.length).fill(value)
  const drive: Drive = {
    time: Float64Array.from(times),
    copper: column(perKelvin).map((value, row) => value * on[row]),
    brushes: column(0),
    friction: column(winding + frame).map((value, row) => value * on[row]),
    windingStill: column(1),
    windingFan: column(0),
    frameStill: column(1),
    frameFan: column(0),
    running: Uint8Array.from(on),
    speed: column(1),
  }
  const conditions: Conditions = {
    airC: column(startC),
    airOffset: 0,
    windingC: startC,
    frameC: startC,
    copper: column(1),
    brushes: 1,
    friction: 1,
    shares: { frictionShare: winding / (winding + frame), brushShare: 0.5 },
    first: column(before),
  }
  const [windingC, frameC] = [column(0), column(0)]
  heatPath(drive, numbers, conditions, windingC, frameC)
  return [windingC[times.length - 1], frameC[times.length - 1]]
}

describe.each([
  ['in one step', 1],
  ['in many', 37],
])('%s', (_, steps) => {
  const times = (end: number) => Array.from({ length: steps + 1 }, (_, n) => (end * n) / steps)

  it.each([600, 1800])('O02, constant loss, after %i s', (end) => {
    const [winding, frame] = path(times(end), { winding: loss, frame: Ph })
    expect(winding).toBeCloseTo(answers.const_loss[`Tw_${end}s`], 8)
    expect(frame).toBeCloseTo(answers.const_loss[`Th_${end}s`], 8)
  })

  it.each([600, 1800])('O02, copper that warms, after %i s', (end) => {
    // R20 [1 + α(T − 20)] is R20 α (235 + T + moved): the same copper, on a thermometer moved by 1/α − 255 K.
    const moved = 1 / alpha20 - 255
    const [winding, frame] = path(times(end), {
      frame: Ph,
      perKelvin: loss * alpha20,
      startC: Ta + moved,
    })
    expect(winding - moved).toBeCloseTo(answers.copper_feedback[`Tw_${end}s`], 8)
    expect(frame - moved).toBeCloseTo(answers.copper_feedback[`Th_${end}s`], 8)
  })
})

it('switched off between two readings: as if readings stood just before and just after', () => {
  const heat = { winding: loss, frame: Ph, perKelvin: 0.2 }
  const sought = path([0, 300, 400, 700], { ...heat, on: [1, 1, 0, 0], before: 0.3 })
  const read = path([0, 300, 330, 330, 400, 700], { ...heat, on: [1, 1, 1, 0, 0, 0] })
  sought.forEach((end, n) => {
    expect(end).toBeCloseTo(read[n], 9)
  })
})
