// The second opinion: explicit extrapolation from a library, on the same plant, against the product's own solver.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import type { Job } from '../../../sim/job.ts'
import { STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'

const job = (name: string): Job =>
  referenceJob(references.base, references.runs.find((one) => one.name === name)!, 'precise')

/**
 * Temperatures and speed agree within both methods' tolerances. The current of the explicit one trembles at the edge of
 * its stability by some ten times its tolerance of 1 mA; against the one-page plant it is this one that does.
 */
function agree(one: Float64Array, other: Float64Array): void {
  for (const [state, allowed] of [
    [STATE.current, 0.02],
    [STATE.speed, 0.01],
    [STATE.windingC, 0.002],
    [STATE.frameC, 0.002],
    [STATE.switchC, 0.002],
  ] as const)
    expect(Math.abs(one[state] - other[state])).toBeLessThanOrEqual(allowed)
}

describe.each(['surges', 'lumpy-supply', 'ungeared-hot-room', 'power-load'])(
  '%s, the first minute',
  (name) => {
    it('the same states', () => {
      const options = { until: 60, samples: [1, 4, 20, 21.5, 35, 50, 60] }
      const own = finish(run(job(name), options))
      const other = finish(run(job(name), { ...options, method: 'extrapolation' }))
      expect(own.trace.ending.kind).toBe('finished')
      expect(other.trace.ending.kind).toBe('finished')
      // Not one solver twice: the explicit one works far harder on a stiff plant.
      expect(other.trace.effort.rates).toBeGreaterThan(3 * own.trace.effort.rates)
      options.samples.forEach((_, n) => {
        agree(own.samples[n], other.samples[n])
      })
    })
  },
)

it('the first opening, at the current limit', () => {
  const options = { toFirstOpening: true }
  const [own, other] = [
    finish(run(job('stall-at-limit'), options)),
    finish(run(job('stall-at-limit'), { ...options, method: 'extrapolation' })),
  ]
  const opening = ({ trace }: typeof own) => trace.marks.find((mark) => mark.kind === 'opens')!.t
  expect(Math.abs(opening(own) / opening(other) - 1)).toBeLessThanOrEqual(1e-4)
})
