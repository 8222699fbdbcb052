// A belt that slips, in the plant: bounded by its grip, its loss accounted for, and rigid when it cannot slip.
import { expect, it } from 'vitest'
import { type ReferenceRun, referenceJob } from '../../../scenarios/referenceRuns.ts'
import { slipCapacity, slipTorque } from '../../../sim/belting/slip.ts'
import type { Job } from '../../../sim/job.ts'
import { assemble, evaluate, FLOW, readings, STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'

const reference = (name: string): ReferenceRun => {
  const found = references.runs.find((each) => each.name === name)
  if (!found) throw new Error(`runs.json has no ${name}`)
  return found
}

/** A reference job driven by a classical A belt that slips at a torque at the spindle, N·m. */
function slipping(name: string, carries: number, seconds?: number): Job {
  const job = rigid(name)
  const { belt } = job.parts
  const machinePulley = 0.08 * belt.machinePulley
  return {
    ...job,
    parts: { ...job.parts, belt: { ...belt, motorPulley: 0.08, machinePulley, section: 'A', carries } },
    duty: { ...job.duty, seconds: seconds ?? job.duty.seconds },
  }
}
const rigid = (name: string): Job => referenceJob(references.base, reference(name), 'precise')

/** Without loss: with it the rigid plant leaves out what it costs to turn the spindle up. */
function lossless(job: Job): Job {
  return { ...job, parts: { ...job.parts, belt: { ...job.parts.belt, efficiency: 1 } } }
}
const surges = () => finish(run(slipping('surges', 9, 300))).trace

it('carries no more than its capacity, while the spindle slows and the motor does not', () => {
  const job = slipping('surges', 9, 300)
  const { slip, ratio } = assemble(job.parts)
  expect(slip).not.toBeNull()
  const { columns, marks } = surges()
  let greatest = 0
  columns.speed.forEach((speed, row) => {
    const capacity = slipCapacity(slip!, speed)
    const torque = slipTorque(capacity, speed / ratio, columns.spindle[row])
    greatest = Math.max(greatest, Math.abs(torque) / capacity)
  })
  expect(greatest).toBeLessThanOrEqual(1)
  expect(greatest).toBeGreaterThan(0.99)
  // The surge asks 11 N·m and more of a belt that carries 9.
  const slips = marks.filter((mark) => mark.kind === 'belt slips')
  expect(slips.length).toBeGreaterThan(10)
  const last = slips.at(-1)!
  const during = columns.spindle.filter((_, row) => columns.asked[row] > 290)
  expect(Math.min(...during)).toBeLessThan((0.8 * 300) / ratio)
  expect(last.kind === 'belt slips' && last.worst).toBeGreaterThan(0.2)
})

it('what the belt loses is its slip and what its efficiency costs: energy in is heat, work and motion', () => {
  const job = slipping('surges', 9, 300)
  const { inertia } = assemble(job.parts)
  const { columns, time } = surges()
  const end = time.length - 1
  const sum = (name: 'taken' | 'copper' | 'brushes' | 'friction' | 'belt' | 'idle' | 'work') =>
    columns[name][end]
  const stored =
    (inertia * columns.speed[end] ** 2 + job.parts.machine.inertia * columns.spindle[end] ** 2) / 2
  const out =
    sum('copper') + sum('brushes') + sum('friction') + sum('belt') + sum('idle') + sum('work') + stored
  expect(Math.abs(out / sum('taken') - 1)).toBeLessThan(1e-3)
  // A belt that cannot slip loses only its 5 %.
  const gripping = finish(run(slipping('surges', 9000, 300))).trace.columns
  expect(sum('belt')).toBeGreaterThan(2 * gripping.belt[gripping.belt.length - 1])
})

it('at every slip the belt loses the torque it carries times the speed it loses', () => {
  const plant = assemble(lossless(slipping('surges', 9)).parts)
  for (const slip of [0, 0.005, 0.05, 0.6, 1]) {
    const y = new Float64Array(plant.states)
    y[STATE.speed] = 300
    y[STATE.spindle] = (300 / plant.ratio) * (1 - slip)
    const read = readings()
    const cut = { kind: 'torque', torque: 5 } as const
    const mode = { on: true, asked: 300, slope: 0, target: 300, cut, surge: 0 }
    evaluate(plant, mode, 0, y, new Float64Array(plant.states), read)
    const carried = 9 * Math.tanh(slip / 0.0182)
    const most = slipCapacity(plant.slip!, 300) / 9
    expect(read.flows[FLOW.belt]).toBeCloseTo(most * carried * (300 / plant.ratio) * slip, 8)
  }
})

it.each(['shaft-fan', 'surges', 'coast-restart', 'open-loop-sag'])(
  'held ever tighter, %s comes out as the rigid run',
  (name) => {
    const stiff = finish(run(lossless(rigid(name)))).trace
    const tight = finish(run(lossless(slipping(name, 9000)))).trace
    for (const part of ['windingC', 'frameC', 'switchC'] as const)
      expect(Math.abs(tight.peaks[part].value - stiff.peaks[part].value)).toBeLessThan(0.02)
    expect(tight.marks.filter(({ kind }) => kind === 'belt slips')).toEqual([])
    expect(tight.effort.rates).toBeLessThan(2.5 * stiff.effort.rates)
  },
)
