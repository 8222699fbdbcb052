// Energy is kept: over every run of runs.json, what goes in comes out as heat and work or is stored, to 1e-3.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import { assemble } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'

/** Largest share of the energy taken by which a balance may fail to close. */
const CLOSED = 1e-3

/** Two balances of a run, J. */
function balances(reference: (typeof references.runs)[number]) {
  const job = referenceJob(references.base, reference, 'precise')
  const { trace } = finish(run(job))
  const { columns, time } = trace
  const sum = (name: keyof typeof columns) => columns[name].at(-1)!
  const { inertia, inductance, heat, winding } = assemble(job.parts)
  const { startC } = job.duty
  // Electrical and mechanical. `taken` is (v + L(di/dt − f)) i + (FF² − 1) R i²: with the controller off it is below
  // zero where the inductance gives back its energy, and that share is lost in the controller.
  const outs = ['copper', 'brushes', 'friction', 'belt', 'idle', 'work'] as const
  const stored = (inertia / 2) * sum('speed') ** 2 + (inductance / 2) * sum('current') ** 2
  // Heat. Here brushes give Vb |i|, not Vb tanh(i/0.05) i: by so much more.
  const brushHeat = winding.brushDrop * sum('charge')
  const kept =
    heat.windingCapacity * (sum('windingC') - startC) + heat.frameCapacity * (sum('frameC') - startC)
  return {
    seconds: time.at(-1)!,
    taken: sum('taken'),
    outs: Object.fromEntries(outs.map((name) => [name, sum(name)])),
    stored,
    heatIn: sum('copper') + sum('friction') + brushHeat,
    kept,
    toAir: sum('toAir'),
    brushExcess: brushHeat - sum('brushes'),
    brushDrop: winding.brushDrop,
  }
}

const total = (values: Record<string, number>) => Object.values(values).reduce((a, b) => a + b, 0)

describe.each(references.runs)('$name', (reference) => {
  const found = balances(reference)
  const { taken, outs, stored, heatIn, kept, toAir, seconds } = found

  it('in = heat + work + stored', () => {
    expect(taken).toBeGreaterThan(0)
    expect(Math.abs(taken - total(outs) - stored)).toBeLessThanOrEqual(CLOSED * taken)
  })

  it('heat put in = heat kept + heat to the air', () => {
    expect(Math.abs(heatIn - kept - toAir)).toBeLessThanOrEqual(CLOSED * heatIn)
  })

  it('brush heat exceeds brush loss by the rounding of its knee, and no more', () => {
    // i (1 − tanh(i/0.05)) is nowhere above 0.0139 A.
    expect(found.brushExcess).toBeGreaterThanOrEqual(-1e-6 * taken)
    expect(found.brushExcess).toBeLessThanOrEqual(0.0139 * found.brushDrop * seconds)
  })

  it.each(Object.keys(outs))('the balance would notice %s', (name) => {
    const without = total({ ...outs, [name]: 0 })
    // Drag and belt loss are small in a stall: there they may hide under the tolerance.
    if (outs[name] > 2 * CLOSED * taken)
      expect(Math.abs(taken - without - stored)).toBeGreaterThan(CLOSED * taken)
    else expect(reference.name).toBe('stall-at-limit')
  })
})
