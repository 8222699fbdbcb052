// The run as its caller sees it: progress, endings, the cutoff, checkpoints, and rows that stand where they should.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../sim/job.ts'
import { finish, type Progress, run } from '../../sim/run.ts'
import { CHANNELS, rowAt, SUMS, type Trace, valueAt } from '../../sim/trace.ts'
import { type Changes, job, traceOf } from '../jobs.ts'

const NAMES = [...CHANNELS, ...SUMS]
/** The apple mill's three hours: four openings, in both working steps. */
const mill = job()
const milled = traceOf(mill)

/** The mill at one step only. */
const steady = (step: Changes, changes: Changes = {}) =>
  job({ 'duty.phases': [{ name: 'work', lasts: '1 min', ...step }], 'duty.repeatFor': '1 min', ...changes })
/** True where two columns are the same to the last bit. */
const same = (a: Float64Array, b: Float64Array) =>
  Buffer.from(a.buffer, a.byteOffset, a.byteLength).equals(Buffer.from(b.buffer, b.byteOffset, b.byteLength))
const kinds = ({ marks }: Trace) => marks.map(({ kind }) => kind)
const switching = ({ marks }: Trace) => marks.filter(({ kind }) => kind === 'opens' || kind === 'recloses')
const end = ({ time }: Trace) => time[time.length - 1]
const last = (trace: Trace, name: (typeof NAMES)[number]) => trace.columns[name][trace.time.length - 1]

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

describe('the cutoff', () => {
  it('opens and recloses in turn, and no current flows between', () => {
    const marks = switching(milled)
    expect(marks.length).toBeGreaterThan(5)
    marks.forEach(({ kind }, index) => {
      expect(kind).toBe(index % 2 === 0 ? 'opens' : 'recloses')
    })
    marks.forEach(({ t, kind }, index) => {
      expect(valueAt(milled, 'switchC', t)).toBeCloseTo(kind === 'opens' ? 120 : 87, 3)
      if (kind !== 'opens') return
      const until = marks[index + 1]?.t ?? 10800
      expect(valueAt(milled, 'charge', until) - valueAt(milled, 'charge', t + 0.1)).toBeLessThan(1e-3)
    })
  })

  it('says in which phase', () => {
    for (const mark of milled.marks) {
      if (mark.kind !== 'opens' && mark.kind !== 'recloses') continue
      const into = mark.t % 480
      expect(mark.phase, `${mark.kind} ${into} s into the cycle`).toBe(into < 120 ? 0 : into < 180 ? 1 : 2)
    }
  })

  it('is open from the start where the motor starts hotter than it opens', () => {
    const trace = traceOf(job({ 'duty.start': '130 °C', 'duty.repeatFor': '2 h' }))
    const [opens, recloses] = switching(trace)
    expect(opens).toEqual({ kind: 'opens', t: 0, phase: 0 })
    expect(recloses.t).toBeGreaterThan(60)
    expect(valueAt(trace, 'charge', recloses.t)).toBe(0)
    expect(last(trace, 'charge')).toBeGreaterThan(0)
    expect(kinds(traceOf(job({ 'duty.start': '119 °C', 'duty.repeatFor': '10 s' })))).not.toContain('opens')
  })

  it('with manual reset stays open', () => {
    const trace = traceOf(job({ 'cutoff.fitted': 'manual reset' }))
    expect(switching(trace)).toEqual([switching(milled)[0]])
    expect(trace.ending.kind).toBe('finished')
    expect(last(trace, 'switchC')).toBeLessThan(87)
    expect(last(trace, 'charge')).toBeCloseTo(valueAt(trace, 'charge', switching(trace)[0].t + 1), 6)
  })

  it('that is not fitted never opens', () => {
    const trace = traceOf(job({ 'cutoff.fitted': 'none', 'duty.repeatFor': '70 min' }))
    expect(switching(trace)).toEqual([])
    expect(trace.peaks.switchC.value).toBeGreaterThan(120)
  })

  it('on reclosing the controller starts from the speed there is', () => {
    const { t } = switching(milled).find(({ kind, t }) => kind === 'recloses' && t % 480 > 180)!
    expect(valueAt(milled, 'asked', t + 0.5)).toBeLessThan(60)
    expect(valueAt(milled, 'asked', t + 2)).toBeCloseTo((350 * 4 * Math.PI) / 30, 6)
  })
})

describe('endings', () => {
  it('a winding at 300 °C is destroyed, and there the run stops', () => {
    const trace = traceOf(
      steady(
        { speed: '350 rpm', torque: '40 N·m', lasts: '1 h' },
        { 'cutoff.fitted': 'none', 'controller.currentLimit': '40 A', 'duty.repeatFor': '1 h' },
      ),
    )
    expect(trace.ending).toEqual({ kind: 'destroyed', t: end(trace) })
    expect(end(trace)).toBeGreaterThan(30)
    expect(end(trace)).toBeLessThan(3600)
    expect(last(trace, 'windingC')).toBeCloseTo(300, 3)
    expect(kinds(trace)).toContain('class passed')
  })

  it('a speed out of reach is run at what the volts give', () => {
    const trace = traceOf(steady({ speed: '6000 rpm' }, { 'controller.holds': 'fixed voltage' }))
    expect(trace.ending.kind).toBe('finished')
    expect(last(trace, 'volts')).toBeCloseTo(120, 6)
    // 120 V over the cold 0.2502 V·s/rad is 480 rad/s, less what friction and warmth take or give.
    expect(last(trace, 'speed')).toBeGreaterThan(440)
    expect(last(trace, 'speed')).toBeLessThan(500)
    expect(kinds(trace)).toContain('speed not reached')
  })

  it('a cut too strong stalls at the current limit', () => {
    const trace = traceOf(steady({ speed: '350 rpm', torque: '60 N·m' }))
    expect(kinds(trace)).toEqual(expect.arrayContaining(['limit reached', 'stalled']))
    expect(last(trace, 'current')).toBeCloseTo(18, 2)
  })

  it('may be set: at a time, or at the first opening', () => {
    expect(end(finish(run(mill, { until: 100 })).trace)).toBe(100)
    expect(end(finish(run(mill, { until: 1e9 })).trace)).toBe(10800)
    const { trace } = finish(run(mill, { toFirstOpening: true }))
    expect(switching(trace)).toEqual([switching(milled)[0]])
    expect(end(trace)).toBe(switching(milled)[0].t)
    expect(trace.ending.kind).toBe('finished')
  })
})

describe('samples', () => {
  it('are the states at the asked times, as far as the run got', () => {
    const times = [0, 0.5, 120, 1000.25, 5000, 10800]
    const { samples, trace } = finish(run(mill, { samples: times }))
    expect(samples).toHaveLength(times.length)
    times.forEach((t, index) => {
      // Columns are straight between rows, samples exact: they part by the bend of the longest steps.
      expect(samples[index][3]).toBeCloseTo(valueAt(trace, 'windingC', t), 0)
      expect(Math.abs(samples[index][5] - valueAt(trace, 'switchC', t))).toBeLessThan(0.2)
    })
    expect(finish(run(mill, { samples: times, until: 200 })).samples).toHaveLength(3)
  })
})

describe('checkpoints', () => {
  it('come in order and are not too many', () => {
    const times = milled.checkpoints.map(({ t }) => t)
    expect(times.length).toBeGreaterThan(20)
    expect(times.length).toBeLessThanOrEqual(401)
    expect(times).toEqual([...times].sort((a, b) => a - b))
  })

  it.each([0.4, 0.9])('taken up at %d of the way, the run goes on as it did, to the last bit', (share) => {
    const from = milled.checkpoints[Math.floor(share * milled.checkpoints.length)]
    const { trace } = finish(run(mill, { from }))
    expect(from.t).toBeGreaterThan(1000)
    expect(trace.ending).toEqual(milled.ending)
    expect(switching(trace)).toEqual(switching(milled).filter(({ t }) => t > from.t))
    // The whole run has a row at the checkpoint for the phase before it, which the tail has not.
    const first = milled.time.length - trace.time.length
    expect(milled.time[first]).toBe(from.t)
    expect(same(trace.time, milled.time.subarray(first))).toBe(true)
    for (const name of NAMES) expect(trace.columns[name], name).toEqual(milled.columns[name].subarray(first))
  })

  it('leave the checkpoint as it was', () => {
    const from = milled.checkpoints[3]
    const copy = structuredClone(from)
    finish(run(mill, { from, until: from.t + 100 }))
    expect(from).toEqual(copy)
  })
})

it('the job is not touched: it may be frozen, and is', () => {
  expect(Object.isFrozen(mill.parts)).toBe(true)
  const thawed: Job = structuredClone(mill)
  const copy = structuredClone(thawed)
  finish(run(thawed, { until: 300 }))
  expect(thawed).toEqual(copy)
})
