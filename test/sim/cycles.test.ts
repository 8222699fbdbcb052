// Envelope following held against the direct run: temperatures, peaks, openings, figures, cost, and where it must not jump.
import { describe, expect, it } from 'vitest'
import { type CycleRun, cycles } from '../../sim/cycles.ts'
import type { Job } from '../../sim/job.ts'
import { type Figures, judge } from '../../sim/judge.ts'
import { judgeCycles } from '../../sim/judgeCycles.ts'
import { finish, type Progress, run } from '../../sim/run.ts'
import type { Trace } from '../../sim/trace.ts'
import { closed, direct, duty, opening, starts, worst } from './cycles/duties.ts'

const followed = (job: Job) => finish(cycles(job))
const switching = ({ marks }: Trace) => marks.filter(({ kind }) => kind === 'opens' || kind === 'recloses')
const firstOf = ({ marks }: Pick<Trace, 'marks'>) =>
  marks.find(({ kind }) => kind === 'opens')?.t ?? Number.NaN
const spent = ({ effort }: CycleRun | Trace) => effort.rates
const minute = closed[0][1]

/** Numbers by path, times of peaks left out: on a plateau any turn may hold the highest. */
function numbers(value: unknown, path = ''): [string, unknown][] {
  if (typeof value !== 'object' || value === null) return [[path, value]]
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 't' ? [] : numbers(inner, `${path}.${key}`),
  )
}

/**
 * How far figures may differ: 1e-3 of their size. What is read from single rows differs by more: a spike of current
 * between two rows, the row at which a speed has arrived, and the ends of a limit, a few ms a turn.
 */
function expectSame(found: Figures, wanted: Figures, turns: number) {
  const loose: Readonly<Record<string, number>> = {
    '.peakAmps.value': 0.03 * wanted.peakAmps.value,
    '.limitSeconds': 3e-3 * turns,
    '.limitedInCut': 3e-3 * turns,
    '.slowest.sag': 1e-3,
  }
  const other = new Map(numbers(found))
  for (const [path, value] of numbers(wanted)) {
    const ours = other.get(path)
    if (typeof value !== 'number') expect(ours, path).toEqual(value)
    else
      expect(Math.abs((ours as number) - value), `${path} ${ours} against ${value}`).toBeLessThanOrEqual(
        1e-4 + (loose[path] ?? 0) + 1e-3 * Math.abs(value),
      )
  }
}

describe.each(closed)('%s', (_name, job) => {
  const ours = followed(job)
  const wanted = direct(job)

  it('is within 0.05 K of the direct run at every turn, those skipped too', () => {
    const { error, turns } = worst(ours, wanted)
    expect(turns).toBe(starts(job).length)
    expect(error).toBeLessThanOrEqual(0.05)
  })

  it('has its peaks within 0.05 K', () => {
    for (const name of ['windingC', 'frameC', 'switchC'] as const)
      expect(Math.abs(ours.peaks[name].value - wanted.trace.peaks[name].value), name).toBeLessThanOrEqual(
        0.05,
      )
  })

  it('comes to the same figures', () => {
    expectSame(judgeCycles(job, ours), judge(job, wanted.trace), starts(job).length)
  })

  it('skips most turns, at a fifth of the cost or less', () => {
    expect(ours.computed.length).toBeLessThan(starts(job).length / 4)
    expect(spent(ours)).toBeLessThan(spent(wanted.trace) / 5)
    expect(ours.computed.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(starts(job).length, 6)
  })
})

describe.each(opening)('%s', (_name, job) => {
  const ours = followed(job)
  const { trace } = direct(job)

  it('first opens at the same time, to 1e-3, and as often', () => {
    expect(Math.abs(firstOf({ marks: ours.switching }) / firstOf(trace) - 1)).toBeLessThanOrEqual(1e-3)
    expect(ours.switching.map(({ kind }) => kind)).toEqual(switching(trace).map(({ kind }) => kind))
    expect(ours.ending).toEqual(trace.ending)
  })

  it('from the turn before on, every turn is run', () => {
    const last = ours.computed.at(-1)!
    const { tail, seconds } = ours
    expect(tail!.time[0]).toBeCloseTo((last.n + 1) * seconds, 6)
    expect(firstOf(tail!)).toBeGreaterThan(tail!.time[0])
  })

  it('stops at the opening if that is all that is asked', () => {
    const { tail, switching } = finish(cycles(job, { toFirstOpening: true }))
    expect(switching).toHaveLength(1)
    expect(tail!.time.at(-1)).toBe(switching[0].t)
  })
})

describe('cost, in evaluations of the plant', () => {
  it('8 h of the one-minute cycle: at most 15 k, readings left aside; a thirtieth of the direct run', () => {
    const ours = followed(minute)
    expect(spent(ours)).toBeLessThanOrEqual(15_000)
    expect(spent(ours)).toBeGreaterThan(5_000)
    expect(spent(finish(run(minute)).trace) / spent(ours)).toBeGreaterThan(30)
  })

  it('hardly grows with the length of the job', () => {
    const week = followed(duty(7 * 24))
    expect(spent(week)).toBeLessThan(1.2 * spent(followed(minute)))
    expect(week.reached).toBe(7 * 24 * 3600)
  })

  it('a tighter tolerance costs more and errs less', () => {
    const wanted = direct(minute)
    const [fine, coarse] = [0.002, 0.1].map((tolerance) => finish(cycles(minute, { tolerance })))
    expect(spent(fine)).toBeGreaterThan(spent(coarse))
    expect(worst(fine, wanted).error).toBeLessThan(worst(coarse, wanted).error / 3)
  })
})

describe('near the opening temperature', () => {
  // The one-minute cycle settles with its switch peaks at 63.29 °C.
  const at = (Topen: number) => duty(8, { Topen, Tclose: 50 })

  it('a duty whose peaks stay 0.4 K short of it is jumped to the end', () => {
    const ours = followed(at(63.7))
    expect(ours.tail).toBeNull()
    expect(ours.switching).toEqual([])
  })

  it('one whose peaks graze it is run directly, and does not open', () => {
    const ours = followed(at(63.4))
    const from = ours.tail!.time[0]
    expect(from).toBeLessThan(3 * 3600)
    expect(ours.switching).toEqual([])
    expect(switching(direct(at(63.4)).trace)).toEqual([])
  })

  it('no turn within 0.3 K of it was skipped', () => {
    const job = at(63.4)
    const ours = followed(job)
    const { trace, samples } = direct(job)
    expect(trace.peaks.switchC.value).toBeGreaterThan(63.1)
    const last = ours.computed.at(-1)!
    expect(last.turn.peaks[2]).toBeLessThanOrEqual(63.1)
    expect(samples.length).toBeGreaterThan(last.n)
  })

  it('one that passes it opens in the same turn', () => {
    const ours = followed(at(62))
    const wanted = firstOf(direct(at(62)).trace)
    expect(Math.abs(firstOf({ marks: ours.switching }) / wanted - 1)).toBeLessThanOrEqual(1e-3)
  })

  it('hotter at the start than it opens at: nothing is jumped', () => {
    const job = duty(2, {}, undefined, 120)
    const ours = followed(job)
    expect(ours.computed).toEqual([])
    expect(ours.switching[0]).toEqual({ kind: 'opens', t: 0, phase: 0 })
    expect(ours.tail!.marks).toEqual(finish(run(job)).trace.marks)
  })
})

describe('other ends', () => {
  it('a winding that burns out does so at the same time', () => {
    const job = duty(8, { fan: 'none', Topen: 400 }, [
      [40, 300, 9],
      [20, 0, 0],
    ])
    const ours = followed(job)
    const { trace } = direct(job)
    expect(trace.ending.kind).toBe('destroyed')
    expect(ours.ending.kind).toBe('destroyed')
    expect(Math.abs(ours.reached / trace.time.at(-1)! - 1)).toBeLessThanOrEqual(1e-3)
    expect(ours.computed.length).toBeLessThan(starts(job).length / 2)
  })

  it('a last turn cut short is run directly to the end', () => {
    const job = { ...minute, duty: { ...minute.duty, seconds: 8 * 3600 - 25 } }
    const ours = followed(job)
    const wanted = finish(run(job)).trace
    expect(ours.tail!.time[0]).toBe(8 * 3600 - 60)
    expect(ours.tail!.time.at(-1)).toBe(8 * 3600 - 25)
    for (const name of ['windingC', 'frameC', 'switchC', 'speed'] as const)
      expect(ours.tail!.columns[name].at(-1)).toBeCloseTo(wanted.columns[name].at(-1)!, 1)
    expectSame(judgeCycles(job, ours), judge(job, wanted), 480)
  })

  it('a duty that fits in no turn is one direct run', () => {
    const job = { ...minute, duty: { ...minute.duty, seconds: 40 } }
    const ours = followed(job)
    expect(ours.computed).toEqual([])
    expect(ours.tail).toEqual(finish(run(job)).trace)
  })

  it('a class passed among turns that would be skipped is dated by the turn in which it is', () => {
    const job = duty(8, { Topen: 400 }, [
      [40, 300, 8.2],
      [20, 0, 0],
    ])
    const dated = ({ classPassed }: Figures) => classPassed ?? Number.NaN
    const wanted = dated(judge(job, finish(run(job)).trace))
    expect(wanted).toBeGreaterThan(3600)
    expect(Math.abs(dated(judgeCycles(job, followed(job))) - wanted)).toBeLessThanOrEqual(0.1)
  })

  it('a peak among turns that would be skipped is found in the turn in which it is', () => {
    const job = duty(
      3,
      { mode: 'open', Imax: 9, Jfly: 0, fan: 'blower', Gfan: 1, Vmax: 130 },
      [
        [2.925, 420, 0.4457],
        [9.525, 420, 7.3088],
        [14.05, 300, 5.4623],
        [16.225, 380, 5.5988],
      ],
      70,
    )
    const ours = followed(job)
    const { peaks } = finish(run(job)).trace
    for (const name of ['windingC', 'frameC', 'switchC'] as const) {
      expect(Math.abs(ours.peaks[name].value - peaks[name].value), name).toBeLessThanOrEqual(0.02)
      expect(Math.abs(ours.peaks[name].t - peaks[name].t), name).toBeLessThanOrEqual(1)
    }
  })
})

describe('as it goes', () => {
  it('tells of progress that never goes back', () => {
    const work = cycles(opening[0][1])
    const seen: Progress[] = []
    for (let next = work.next(); !next.done; next = work.next()) seen.push(next.value)
    expect(seen.length).toBeGreaterThan(10)
    seen.forEach(({ t, of }, index) => {
      expect(of).toBe(3 * 3600)
      expect(t).toBeGreaterThanOrEqual(index === 0 ? 0 : seen[index - 1].t)
      expect(t).toBeLessThanOrEqual(of)
    })
  })

  it('is the same to the last bit when run again', () => {
    expect(followed(duty(8))).toEqual(followed(duty(8)))
  })
})
