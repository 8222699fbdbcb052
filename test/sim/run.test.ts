// The run as its caller sees it: progress, endings, the cutoff, checkpoints, and rows that stand where they should.
import { describe, expect, it } from 'vitest'
import { finish, type Progress, run } from '../../sim/run.ts'
import { rowAt, valueAt } from '../../sim/trace.ts'
import { job, traceOf } from '../jobs.ts'
import { end, last, mill, milled, NAMES, same, steady } from './milled.ts'

describe('progress', () => {
  it('never goes back, and is of the whole', () => {
    const work = run(mill)
    const seen: Progress[] = []
    for (let next = work.next(); !next.done; next = work.next()) seen.push(next.value)
    expect(seen.length).toBeGreaterThan(50)
    seen.forEach(({ t, of }, index) => {
      expect(of).toBe(10800)
      expect(t).toBeGreaterThanOrEqual(index === 0 ? 0 : seen[index - 1].t)
      expect(t).toBeLessThanOrEqual(of)
    })
  })
})

describe('the trace', () => {
  it('runs from the start to the very end, in order of time, with a number in every place', () => {
    expect(milled.ending).toEqual({ kind: 'finished' })
    expect(milled.time[0]).toBe(0)
    expect(end(milled)).toBe(10800)
    expect(milled.time.every((t, row) => row === 0 || t >= milled.time[row - 1])).toBe(true)
    expect(milled.bucket).toBe(0)
    for (const name of NAMES) {
      expect(milled.columns[name]).toHaveLength(milled.time.length)
      expect(milled.columns[name].every(Number.isFinite)).toBe(true)
    }
  })

  it('has two rows at a jump: the end of a phase is a row of both', () => {
    for (const edge of [120, 180, 480, 3 * 480 + 120]) {
      const rows = [...milled.time.keys()].filter((row) => milled.time[row] === edge)
      expect(rows.length, `at ${edge} s`).toBeGreaterThanOrEqual(2)
    }
    const [before, after] = [...milled.time.keys()].filter((row) => milled.time[row] === 120)
    expect(milled.columns.asked[before]).toBeGreaterThan(100)
    expect(milled.columns.asked[after]).toBe(0)
    // States do not jump.
    for (const name of ['speed', 'current', 'windingC', 'frameC', 'switchC'] as const)
      expect(milled.columns[name][after]).toBe(milled.columns[name][before])
  })

  it('is the same to the last bit when run again', () => {
    const again = traceOf(job())
    expect(again.marks).toEqual(milled.marks)
    expect(again.effort).toEqual(milled.effort)
    expect(again.peaks).toEqual(milled.peaks)
    expect(same(again.time, milled.time)).toBe(true)
    for (const name of NAMES) expect(same(again.columns[name], milled.columns[name]), name).toBe(true)
  })

  it('has sums that never shrink, but for what flows back', () => {
    for (const name of ['charge', 'heating', 'copper', 'brushes', 'friction', 'work', 'outlet'] as const) {
      const sum = milled.columns[name]
      const worst = sum.reduce((most, value, row) => Math.max(most, row === 0 ? 0 : sum[row - 1] - value), 0)
      expect(worst, name).toBeLessThanOrEqual(1e-6 * last(milled, name))
    }
  })

  it('has peaks at least as high as any row, and no higher than a step can hide', () => {
    for (const name of ['windingC', 'frameC', 'switchC'] as const) {
      const most = milled.columns[name].reduce((a, b) => Math.max(a, b))
      expect(milled.peaks[name].value).toBeGreaterThanOrEqual(most)
      expect(milled.peaks[name].value - most).toBeLessThan(0.5)
      expect(valueAt(milled, name, milled.peaks[name].t)).toBeCloseTo(milled.peaks[name].value, 0)
    }
  })
})

describe('the duty', () => {
  it('asks the phase’s speed at the motor, after the ramp', () => {
    // 350 rpm at the spindle, 4 : 1, at 900 rpm/s: there after 1.5556 s.
    const asked = (350 * 4 * Math.PI) / 30
    expect(valueAt(milled, 'asked', 0)).toBe(0)
    expect(valueAt(milled, 'asked', 1)).toBeCloseTo(30 * Math.PI, 6)
    expect(valueAt(milled, 'asked', 1.56)).toBeCloseTo(asked, 9)
    expect(valueAt(milled, 'asked', 119)).toBeCloseTo(asked, 9)
  })

  it('surges to the second: 3.5 lbf·ft more for 3 s every 12 s, from the step’s start', () => {
    const load = (t: number) => valueAt(milled, 'load', 180 + t) / 4.745362819
    for (const [t, times] of [
      [13, 2],
      [14.99, 2],
      [15.01, 1],
      [23.99, 1],
      [24.01, 2],
    ])
      expect(load(t), `${t} s`).toBeCloseTo(times, 3)
  })

  it('cuts a surge off at the end of its step', () => {
    const surge = { torque: '2 N·m', every: '4 s', lasts: '3 s' }
    const step = { name: 'cut', lasts: '10 s', speed: '350 rpm', torque: '1 N·m', surge }
    const after = { name: 'idle', lasts: '10 s', speed: '350 rpm' }
    const trace = traceOf(job({ 'duty.phases': [step, after], 'duty.repeatFor': '40 s' }))
    expect(valueAt(trace, 'load', 9.99)).toBeCloseTo(3, 6)
    expect(valueAt(trace, 'load', 10.01)).toBe(0)
    expect(valueAt(trace, 'load', 27.5)).toBeCloseTo(1, 6)
    expect(valueAt(trace, 'load', 29.5)).toBeCloseTo(3, 6)
  })

  it('a step at no speed coasts: nothing asked, no volts, the current gone, the speed falling', () => {
    const trace = traceOf(
      steady(
        { speed: '350 rpm' },
        { 'duty.phases.1': { name: 'rest', lasts: '10 s' }, 'duty.repeatFor': '70 s' },
      ),
    )
    const at = (name: (typeof NAMES)[number], t: number) => valueAt(trace, name, t)
    expect(at('speed', 60)).toBeGreaterThan(140)
    for (const t of [60.1, 62, 69]) {
      expect(at('asked', t)).toBe(0)
      expect(at('volts', t)).toBe(0)
      expect(at('current', t)).toBeLessThan(1e-3)
    }
    expect(at('speed', 61)).toBeLessThan(at('speed', 60))
    expect(at('speed', 62)).toBeLessThan(at('speed', 61))
    expect(at('charge', 69) - at('charge', 61)).toBeLessThan(1e-6)
  })

  it('after a rest too short to come to a stop, begins again at the speed there is, and with a fresh integrator', () => {
    const work = { name: 'work', lasts: '10 s', speed: '350 rpm', torque: '3 N·m' }
    const phases = [work, { name: 'rest', lasts: '50 ms' }, work]
    const given = job({
      'controller.holds': 'speed feedback',
      'duty.phases': phases,
      'duty.repeatFor': '20 s',
    })
    const { trace, samples } = finish(run(given, { samples: [10, 10.0499, 10.0501] }))
    const integrator = samples.map((state) => Math.abs(state[2]))
    expect(integrator[0]).toBeGreaterThan(5)
    // Off, it fades with 0.1 s; on again, it starts from nothing.
    expect(integrator[1] / integrator[0]).toBeCloseTo(Math.exp(-0.499), 2)
    expect(integrator[2]).toBeLessThan(integrator[0] / 100)
    const again = rowAt(trace.time, 10.05)
    expect(trace.time[again]).toBeCloseTo(10.05, 12)
    expect(trace.columns.asked[again]).toBe(trace.columns.speed[again])
    expect(trace.columns.speed[again]).toBeGreaterThan(100)
  })

  it('may be shorter than one step, or end within a cycle', () => {
    for (const seconds of [7.25, 333.5]) {
      const trace = traceOf(job({ 'duty.repeatFor': `${seconds} s` }))
      expect(trace.ending.kind).toBe('finished')
      expect(end(trace)).toBe(seconds)
      const row = rowAt(milled.time, seconds)
      expect(valueAt(trace, 'windingC', seconds)).toBeCloseTo(valueAt(milled, 'windingC', seconds), 1)
      expect(row).toBeGreaterThan(0)
    }
  })

  it('steps of no length are passed over', () => {
    const nothing = { name: 'nothing', lasts: '0 s', speed: '350 rpm' }
    const phases = [
      nothing,
      { name: 'a', lasts: '30 s', speed: '350 rpm' },
      nothing,
      { name: 'b', lasts: '30 s' },
      nothing,
    ]
    const padded = traceOf(job({ 'duty.phases': phases, 'duty.repeatFor': '3 min' }))
    const plain = traceOf(job({ 'duty.phases': [phases[1], phases[3]], 'duty.repeatFor': '3 min' }))
    expect(same(padded.time, plain.time)).toBe(true)
    for (const name of NAMES) expect(same(padded.columns[name], plain.columns[name]), name).toBe(true)
  })
})
