// Figures of odd jobs: what did not happen, insulation life, the hardest step, spells, a motor held still.
import { describe, expect, it } from 'vitest'
import { hardestPhase, judge, openSpells, phaseAt } from '../../sim/judge.ts'
import type { Phase } from '../../sim/duty.ts'
import type { At, Mark } from '../../sim/trace.ts'
import { publishedCase } from '../checks/files.ts'
import { job, traceOf } from '../jobs.ts'
import { judged } from './judged.ts'

const mill = judged({}, 'appleMill')
const saw = judged({}, 'bandSaw')

const near = (value: number, wanted: number, relative: number) =>
  expect(Math.abs(value - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(
    relative * Math.abs(wanted),
  )

describe('what did not happen', () => {
  const { figures } = judged(
    { 'heat.cooling': 'shaft fan', 'duty.repeatFor': '10 min', 'duty.phases.2.torque': '1 N·m' },
    'appleMill',
  )
  it('is null, and what was left is told', () => {
    expect(figures).toMatchObject({
      firstOpening: null,
      firstOpenFor: null,
      timesOpen: 0,
      classPassed: null,
      stalled: null,
      delivered: 1,
    })
    expect(figures.cutoffMargin).toBeCloseTo(120 - figures.hottestSwitchC.value, 12)
    expect(figures.speedMissed).toBe(false)
    expect(figures.work.got).toBeCloseTo(figures.work.asked, 9)
  })
  it('without a cutoff there is no margin to it', () => {
    expect(
      judged({ 'cutoff.fitted': 'none', 'duty.repeatFor': '1 min' }, 'appleMill').figures.cutoffMargin,
    ).toBeNull()
  })
  it('open all along, nothing is got, drawn or slow', () => {
    const { figures: open } = judged({ 'duty.start': '140 °C', 'duty.repeatFor': '5 min' }, 'appleMill')
    expect(open).toMatchObject({
      firstOpenFor: null,
      delivered: 0,
      workAmps: 0,
      outletAmps: 0,
      slowest: null,
    })
    expect(open.work).toMatchObject({ phase: 2, got: 0 })
    expect(open.work.asked).toBeCloseTo(120, 9)
  })
  it('a duty of rest asks nothing, and all of that is delivered', () => {
    const { figures: rest } = judged(
      { 'duty.phases': [{ name: 'rest', lasts: '1 min' }], 'duty.repeatFor': '5 min' },
      'appleMill',
    )
    expect(rest).toMatchObject({ delivered: 1, slowest: null, workAmps: 0, outletAmps: 0, rmsAmps: 0 })
  })
})

it('what was not reached was not delivered', () => {
  const given = job({
    'cutoff.fitted': 'none',
    'controller.currentLimit': '60 A',
    'duty.phases.2.torque': '60 N·m',
    'heat.windingCapacity': '100 J/K',
  })
  const trace = traceOf(given)
  expect(trace.ending.kind).toBe('destroyed')
  const figures = judge(given, trace)
  expect(figures.reached).toBeLessThan(600)
  // Of 45 cycles (7 min of 8 asked; the last half full) it got two minutes and what it had of the third step.
  expect(figures.delivered * 22 * 420).toBeLessThan(900)
  // Held still at the limit for the most of it, it got only what came before.
  const still = trace.marks.reduce(
    (sum, mark) => (mark.kind === 'stalled' ? sum + mark.until - mark.t : sum),
    0,
  )
  expect(still).toBeGreaterThan(1)
  expect(figures.work.got).toBeCloseTo(figures.reached - 180 - still, 6)
})

describe('life', () => {
  // Kosow, Examples 13.1 to 13.6 (ten-degree rule; as transcribed in a public companion, printed page not seen).
  const { inputs, published } = publishedCase<
    { class_limits: Record<'A' | 'B' | 'F', number> },
    { factor: number[] }
  >('P40')
  const { A, B, F } = inputs.class_limits
  /** Life factor of a winding so many kelvin under (or over) its class. */
  const lifeAt = (under: number) => {
    const { given, trace, figures } = saw
    const peak: At = { value: figures.classLimitC - under, t: 0 }
    return judge(given, { ...trace, peaks: { ...trace.peaks, windingC: peak } }).life
  }
  it('halves with every 10 K, as in the four published examples', () => {
    const unders = [A - 125, A - 75, B - A, F - 172]
    unders.forEach((under, index) => {
      const life = lifeAt(under)
      near(life < 1 ? 1 / life : life, published.factor[index], 2e-3)
    })
    expect(lifeAt(0)).toBe(1)
  })
})

describe('the hardest step', () => {
  const step = (changes: Partial<Phase>): Phase => ({
    name: '',
    seconds: 60,
    speed: 10,
    cut: { kind: 'torque', torque: 1 },
    surge: null,
    ...changes,
  })
  it('takes most work out of the motor: torque, speed and time together', () => {
    expect(hardestPhase([step({}), step({ seconds: 120 }), step({ speed: 11 })])).toBe(1)
    expect(
      hardestPhase([step({}), step({ surge: { torque: 10, every: 2, lasts: 1 } }), step({ seconds: 200 })]),
    ).toBe(1)
  })
  it('is the longest one where nothing is cut', () => {
    const idle = { kind: 'torque', torque: 0 } as const
    expect(hardestPhase([step({ cut: idle }), step({ cut: idle, seconds: 61 })])).toBe(1)
    expect(hardestPhase([step({ speed: 0 })])).toBe(0)
  })
})

it('stretches with the cutoff open run from opening to reclosing, or to the end', () => {
  const marks: Mark[] = [
    { kind: 'opens', t: 10, phase: 0 },
    { kind: 'stalled', t: 12, until: 15 },
    { kind: 'recloses', t: 20, phase: 0 },
    { kind: 'opens', t: 50, phase: 0 },
  ]
  expect(openSpells(marks, 60)).toEqual([
    [10, 20],
    [50, 60],
  ])
  expect(openSpells([], 60)).toEqual([])
})

it('the phase at a time is found by walking the cycle', () => {
  const { given } = mill
  expect([0, 119, 120, 179, 180, 479, 480, 599.9, 600, 10799].map((t) => phaseAt(given, t))).toEqual([
    0, 0, 1, 1, 2, 2, 0, 0, 1, 2,
  ])
})

it('a motor held still draws what it draws: its mean amps are never over its peak', () => {
  const { figures, given } = judged(
    { 'duty.phases.2.torque': '200 N·m', 'duty.repeatFor': '16 min', 'cutoff.fitted': 'none' },
    'appleMill',
  )
  expect(figures.stalled).not.toBeNull()
  expect(figures.work.got).toBeLessThan(60)
  expect(figures.workAmps).toBeLessThanOrEqual(given.parts.controller.currentLimit * 1.01)
  expect(figures.workAmps).toBeGreaterThan(0.5 * given.parts.controller.currentLimit)
})
