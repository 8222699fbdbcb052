// The trace of a run by turns: rows for all the job, turns that were run to the bit, any turn again from its start.
import { describe, expect, it } from 'vitest'
import { carryOut } from '../../../sim/carryOut.ts'
import { cycles } from '../../../sim/cycles.ts'
import { startOf, wholeTrace } from '../../../sim/cycles/whole.ts'
import type { Job } from '../../../sim/job.ts'
import { judge } from '../../../sim/judge.ts'
import { MOST_ROWS } from '../../../sim/recorder.ts'
import { finish, run } from '../../../sim/run.ts'
import { CHANNELS, SUMS, type Trace, valueAt } from '../../../sim/trace.ts'
import { closed, duty, opening } from './duties.ts'

const job = duty(8)
const made = finish(cycles(job))
const trace = finish(wholeTrace(job, made))
const wanted = finish(run(job)).trace
const HOT = ['windingC', 'frameC', 'switchC'] as const

/** Largest difference between two traces at moments spread over the job, K. */
function apart(a: Trace, b: Trace, seconds: number): number {
  let worst = 0
  for (let n = 0; n < 4000; n++) {
    const t = seconds * ((n * 0.618033988749895) % 1)
    for (const name of HOT) worst = Math.max(worst, Math.abs(valueAt(a, name, t) - valueAt(b, name, t)))
  }
  return worst
}

describe('the whole trace', () => {
  it('runs from the start to the end in order of time, with a number in every place', () => {
    expect(trace.time[0]).toBe(0)
    expect(trace.time.at(-1)).toBe(8 * 3600)
    expect(trace.bucket).toBe(0)
    expect(trace.time.every((t, row) => row === 0 || t >= trace.time[row - 1])).toBe(true)
    for (const name of [...CHANNELS, ...SUMS]) {
      expect(trace.columns[name]).toHaveLength(trace.time.length)
      expect(trace.columns[name].every(Number.isFinite), name).toBe(true)
    }
  })

  it('has the rows of the turns that were run, to the bit', () => {
    for (const { turn, t } of made.computed.slice(1)) {
      const first = trace.time.indexOf(t, trace.time.indexOf(t) + 1)
      for (const name of CHANNELS)
        expect(trace.columns[name].slice(first, first + turn.trace.time.length), name).toEqual(
          turn.trace.columns[name],
        )
    }
  })

  // Rows are joined by straight lines: where a run takes long steps, two sets of rows differ by the bend between.
  it.each<[string, Job, number]>([
    ['one-minute cycle', job, 0.06],
    ['starts hot', duty(4, {}, undefined, 100), 0.06],
    ['never at rest', closed.find(([name]) => name === 'never at rest, volts held')![1], 0.06],
    ['opens', opening.find(([name]) => name === 'manual reset')![1], 0.06],
  ])('lies along the direct one: %s', (_name, one, most) => {
    const whole = finish(wholeTrace(one, finish(cycles(one))))
    expect(apart(whole, finish(run(one)).trace, one.duty.seconds)).toBeLessThanOrEqual(most)
  })

  it('has sums that go on through every turn', () => {
    for (const share of [0.1, 0.35, 0.8, 1])
      for (const name of ['charge', 'heating', 'taken', 'copper', 'work'] as const) {
        const [a, b] = [trace, wanted].map((one) => valueAt(one, name, share * 8 * 3600))
        expect(Math.abs(a / b - 1), name).toBeLessThanOrEqual(2e-4)
      }
  })

  it('can be taken up again where a turn was run', () => {
    for (const { t, sums } of trace.checkpoints)
      SUMS.forEach((name, f) => {
        expect(sums[f], `${name} ${t}`).toBeCloseTo(valueAt(trace, name, t), 6)
      })
    expect(trace.checkpoints.map(({ t }) => t)).toEqual(made.computed.map(({ t }) => t))
  })

  it('has the marks of the direct one', () => {
    const one = opening[0][1]
    const [a, b] = [finish(wholeTrace(one, finish(cycles(one)))), finish(run(one)).trace]
    for (const kind of ['opens', 'recloses', 'class passed'] as const)
      expect(a.marks.filter((mark) => mark.kind === kind).length, kind).toBe(
        b.marks.filter((mark) => mark.kind === kind).length,
      )
  })

  it('is judged like the direct one', () => {
    const [a, b] = [judge(job, trace), judge(job, wanted)]
    expect(Math.abs(a.rmsAmps / b.rmsAmps - 1)).toBeLessThanOrEqual(1e-4)
    expect(Math.abs(a.workAmps / b.workAmps - 1)).toBeLessThanOrEqual(1e-3)
    expect(a.delivered).toBe(b.delivered)
  })

  it('of a month keeps to the cap, with least and most of each skipped turn', () => {
    const month = duty(30 * 24)
    const long = finish(wholeTrace(month, finish(cycles(month))))
    expect(long.time.length).toBeLessThanOrEqual(MOST_ROWS)
    expect(long.bucket).toBeGreaterThanOrEqual(60)
    expect(long.time.at(-1)).toBe(30 * 24 * 3600)
    const late = long.time.findIndex((t) => t > 29 * 24 * 3600)
    const some = [...long.columns.speed.slice(late, late + 50)]
    expect(Math.max(...some)).toBeGreaterThan(370)
    expect(Math.min(...some)).toBeLessThan(1)
  })
})

describe('any turn from its start', () => {
  it('skipped or not, it is the turn of the direct run', () => {
    for (const n of [0, 1, 5, 17, 100, 333, 479]) {
      const from = startOf(made, n)!
      expect(from.t).toBe(n * 60)
      const again = finish(run(job, { from, until: (n + 1) * 60 })).trace
      for (const into of [2, 10, 29, 40, 59])
        for (const name of HOT) {
          const t = n * 60 + into
          expect(
            Math.abs(valueAt(again, name, t) - valueAt(wanted, name, t)),
            `${name} ${t}`,
          ).toBeLessThanOrEqual(0.06)
        }
    }
    expect(startOf(made, 480)).toBeNull()
  })
})

describe('carried out', () => {
  it('by turns where the duty repeats often, and says which were run', () => {
    const { trace: whole, figures, skipping } = finish(carryOut(job))
    expect(skipping!.of).toBe(480)
    expect(skipping!.directFrom).toBeNull()
    expect(skipping!.computed).toEqual(made.computed.map(({ n }) => n))
    expect(skipping!.computed.length).toBeLessThan(20)
    expect(figures.reached).toBe(8 * 3600)
    expect(whole.effort).toEqual(made.effort)
    expect(finish(carryOut(opening[0][1])).skipping!.directFrom).toBeGreaterThan(0)
  })

  it('directly where it does not', () => {
    for (const seconds of [600, 59]) {
      const short = { ...job, duty: { ...job.duty, seconds } }
      const out = finish(carryOut(short))
      const { trace: plain } = finish(run(short))
      expect(out.skipping).toBeNull()
      expect(out.trace).toEqual(plain)
      expect(out.figures).toEqual(judge(short, plain))
    }
  })
})
