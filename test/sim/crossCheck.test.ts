// The second opinion agrees on reference runs, with the outside reference too; and a skewed one is noticed.
import { afterEach, expect, it, vi } from 'vitest'
import { COMPARED, type CrossCheck, compare, crossCheck, type Made, momentsOf } from '../../sim/crossCheck.ts'
import type { Job } from '../../sim/job.ts'
import { STATE } from '../../sim/plant.ts'
import { finish, type Run, run } from '../../sim/run.ts'
import type { Stepper } from '../../sim/solve/stepper.ts'
import type { System } from '../../sim/solve/system.ts'
import { reference } from '../workers/jobs.ts'

/** What the second method is made to see: winding and current that answer so many times as fast. */
const skew = vi.hoisted(() => ({ warming: 1, current: 1 }))
afterEach(() => {
  skew.warming = skew.current = 1
})
vi.mock('../../sim/solve/odex.ts', async (original) => {
  const { extrapolation } = await original<typeof import('../../sim/solve/odex.ts')>()
  const skewed = (system: System, ...rest: [never, never]): Stepper => {
    const rates: System['rates'] = (t, y, out) => {
      system.rates(t, y, out)
      out[STATE.windingC] *= skew.warming
      out[STATE.current] *= skew.current
    }
    return extrapolation(Object.assign(Object.create(system) as System, { rates }), ...rest)
  }
  return { extrapolation: skewed }
})

/** What both methods keep to, K, rad/s and A. The current's share is the library's own: see crossCheck. */
const BAND = { windingC: 0.02, frameC: 0.02, switchC: 0.02, speed: 0.5, current: 0.15 }
const outside = ({ differences }: CrossCheck) =>
  COMPARED.filter((name) => !(differences[name].value < BAND[name]))

it.each(['fan-lost', 'stall-at-limit'])('agrees on %s, and both with its reference', (name) => {
  const { job, expected } = reference(name)
  const opens = expected.events[0][1]
  const result = finish(crossCheck(job))
  expect(outside(result)).toEqual([])
  for (const { opening, reached, ending } of [result.shown, result.second]) {
    expect(Math.abs(opening! - opens) / opens).toBeLessThan(1e-4)
    expect(reached).toBe(opening)
    expect(ending).toEqual({ kind: 'finished' })
  }
  expect(result.openingDifference).toBe(Math.abs(result.shown.opening! - result.second.opening!))
  expect(result.moments).toBeGreaterThan(400)
  expect(result.until / opens).toBeCloseTo(1, 2)
  // Two methods, not one twice: they differ, and the second one toils.
  for (const at of Object.values(result.differences)) expect(at.value).toBeGreaterThan(0)
  expect(result.second.effort.rates).toBeGreaterThan(20 * result.shown.effort.rates)
})

it("judges what is shown: the job as it stands, by the product's own method", () => {
  const { job } = reference('stall-at-limit')
  const { shown, second } = finish(crossCheck(job))
  const { trace } = finish(run(job, { toFirstOpening: true }))
  expect(shown).toMatchObject({ method: 'rosenbrock', accuracy: 'default', effort: trace.effort })
  expect(shown.opening).toBe(trace.marks.find(({ kind }) => kind === 'opens')?.t)
  expect(second).toMatchObject({ method: 'extrapolation', accuracy: 'reference' })
  expect(finish(crossCheck(reference('two-speeds', 'precise').job, { until: 5 })).shown.accuracy).toBe(
    'precise',
  )
})

it('goes to the end where nothing opens, or as far as it is told', () => {
  const { job } = reference('sag-compensated')
  const whole = finish(crossCheck(job))
  expect(outside(whole)).toEqual([])
  expect(whole).toMatchObject({
    until: 600,
    openingDifference: null,
    shown: { reached: 600, opening: null },
    second: { reached: 600, opening: null },
  })
  expect(finish(crossCheck(job, { until: 20 }))).toMatchObject({ until: 20, second: { reached: 20 } })
  expect(finish(crossCheck(job, { until: 0 }))).toMatchObject({
    until: 0,
    moments: 0,
    second: { reached: 0 },
  })
})

it('notices a winding that warms one part in a hundred faster', () => {
  skew.warming = 1.01
  const { job } = reference('stall-at-limit')
  const result = finish(crossCheck(job))
  expect(outside(result)).toEqual(['windingC', 'frameC', 'switchC'])
  // It opens sooner, by less than a hundredth: the switch itself lags.
  expect(result.openingDifference! / result.shown.opening!).toBeGreaterThan(0.001)
  expect(result.second.opening).toBeLessThan(result.shown.opening!)
})

it('notices a current that answers differently', () => {
  skew.current = 0.5
  expect(outside(finish(crossCheck(reference('coast-restart').job, { until: 60 })))).toContain('current')
})

it('says it when the second does not open, and does not wait for ever', () => {
  skew.warming = 0.5
  const { job } = reference('stall-at-limit')
  const { shown, second, openingDifference } = finish(crossCheck(job))
  expect(openingDifference).toBeNull()
  expect(second.opening).toBeNull()
  expect(second.reached).toBeGreaterThan(shown.opening!)
  expect(second.reached).toBeLessThan(1.1 * shown.opening!)
})

/** A run with these samples of current and winding, and nothing else of interest. */
function made(samples: [current: number, windingC: number][]): Made {
  const { trace } = finish(run(reference('two-speeds').job, { until: 1 }))
  const states = samples.map(([current, windingC]) => Float64Array.of(current, 0, 0, windingC, 0, 0))
  return { trace, samples: states, method: 'rosenbrock', accuracy: 'default' } satisfies Run & Made
}

it('finds the largest difference and its moment, either way, as far as both got', () => {
  const a = made([
    [1, 20],
    [2, 30],
    [3, 40],
    [9, 90],
  ])
  const b = made([
    [1.5, 20],
    [1, 30.5],
    [3, 38],
  ])
  const { differences, moments, until } = compare([0, 10, 20, 30], a, b)
  expect({ moments, until }).toEqual({ moments: 3, until: 20 })
  expect(differences.current).toEqual({ value: 1, t: 10 })
  expect(differences.windingC).toEqual({ value: 2, t: 20 })
  expect(differences.frameC).toEqual({ value: 0, t: 0 })
})

it('does not pass over what is not a number', () => {
  const { differences } = compare(
    [0, 1, 2],
    made([
      [1, 20],
      [Number.NaN, 20],
      [5, 20],
    ]),
    made([
      [1, 20],
      [1, 20],
      [1, 20],
    ]),
  )
  expect(differences.current).toEqual({ value: Number.NaN, t: 1 })
})

const job: Job = reference('shaft-fan').job
const cycle = 60

it('compares at every phase end, and at moments all over the cycle', () => {
  const moments = momentsOf(job, 600)
  expect(moments).toEqual([...new Set(moments)].sort((a, b) => a - b))
  for (let start = 0; start < 600; start += cycle)
    for (const end of [5, 29, 40, 60]) expect(moments).toContain(start + end)
  expect(Math.min(...moments)).toBe(0)
  expect(Math.max(...moments)).toBe(600)
  // Even in a job whose four-hundredth is a whole number of cycles.
  const long = momentsOf(job, 400 * cycle).filter((t) => ![5, 29, 40, 0].includes(t % cycle))
  const twelfths = new Set(long.map((t) => Math.floor((12 * (t % cycle)) / cycle)))
  expect(twelfths.size).toBe(12)
})

it('keeps the moments few, and every kind of phase end among them', () => {
  const moments = momentsOf(job, 3000 * cycle)
  expect(moments.length).toBeLessThanOrEqual(801)
  const kinds = moments.map((t) => t % cycle)
  for (const end of [5, 29, 40, 0]) expect(kinds.filter((at) => at === end).length).toBeGreaterThan(50)
})
