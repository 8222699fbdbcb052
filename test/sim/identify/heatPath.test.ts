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

/** Heat into winding and frame for good, and copper heat for each kelvin over −235 °C: W, W, W/K. */
function ends(times: number[], winding: number, frame: number, perKelvin: number, startC: number) {
  const column = (value: number) => new Float64Array(times.length).fill(value)
  const drive: Drive = {
    time: Float64Array.from(times),
    copper: column(perKelvin),
    brushes: column(0),
    friction: column(winding + frame),
    windingStill: column(1),
    windingFan: column(0),
    frameStill: column(1),
    frameFan: column(0),
    running: new Uint8Array(times.length).fill(1),
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
    first: column(0.5),
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
    const [winding, frame] = ends(times(end), loss, Ph, 0, Ta)
    expect(winding).toBeCloseTo(answers.const_loss[`Tw_${end}s`], 8)
    expect(frame).toBeCloseTo(answers.const_loss[`Th_${end}s`], 8)
  })

  it.each([600, 1800])('O02, copper that warms, after %i s', (end) => {
    // R20 [1 + α(T − 20)] is R20 α (235 + T + moved): the same copper, on a thermometer moved by 1/α − 255 K.
    const moved = 1 / alpha20 - 255
    const [winding, frame] = ends(times(end), 0, Ph, loss * alpha20, Ta + moved)
    expect(winding - moved).toBeCloseTo(answers.copper_feedback[`Tw_${end}s`], 8)
    expect(frame - moved).toBeCloseTo(answers.copper_feedback[`Th_${end}s`], 8)
  })
})
