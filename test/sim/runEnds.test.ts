// How a run is interrupted and ends: the cutoff, endings, samples asked for, checkpoints.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../sim/job.ts'
import { finish, run } from '../../sim/run.ts'
import { type Trace, valueAt } from '../../sim/trace.ts'
import { job, traceOf } from '../jobs.ts'
import { end, last, mill, milled, NAMES, same, steady } from './milled.ts'

const kinds = ({ marks }: Trace) => marks.map(({ kind }) => kind)
const switching = ({ marks }: Trace) => marks.filter(({ kind }) => kind === 'opens' || kind === 'recloses')

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
