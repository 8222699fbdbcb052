// The ratio study: each demonstration's window and pulleys, confirmed by full runs on both sides of each edge.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../../sim/job.ts'
import { judge } from '../../../sim/judge.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish, run } from '../../../sim/run.ts'
import { variantsOf, withVariant } from '../../../sim/scenario.ts'
import { type RatioStudy, ratioStudy } from '../../../sim/studies/ratio.ts'
import { type Changes, DEMOS, type Demo, demo, jobOf, scenario } from '../../jobs.ts'

const COARSE = { points: 4, close: 0.03, proposals: 1 }
const studyOf = (...given: Parameters<typeof ratioStudy>): RatioStudy => {
  const study = finish(ratioStudy(...given))
  if (!study.ok) throw new Error(JSON.stringify(study.problems))
  return study
}

/** Worked out when first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** The demonstration at a ratio, changed by hand: the last pulley alone. */
const geared = (name: Demo, wanted: number): Job => {
  const present = jobOf(demo(name)).parts.belt
  const text = `${((present.machinePulley * wanted) / ratio(present)) * 1000} mm`
  return jobOf(demo(name), { name: 'geared', changes: { 'belt.machinePulley': text } })
}

/** What a full run, turn for turn and with its cutoff, holds against a job. */
function against(job: Job): string[] {
  const { trace } = finish(run(job))
  const { firstOpening, classPassed, stalled, speedMissed, ending } = judge(job, trace)
  const asked = Math.max(...job.duty.phases.map(({ speed }) => speed))
  // While it is cold: warm magnets are weaker, and the motor runs a little faster.
  const cold = trace.time.findIndex((t) => t > 30)
  const fastest = Math.max(...trace.columns.spindle.subarray(0, cold))
  return [
    firstOpening && 'opens',
    classPassed !== null && 'hot',
    stalled !== null && 'stalls',
    fastest < 0.995 * asked && 'reach',
    speedMissed && 'sags',
    ending.kind !== 'finished' && 'ends',
  ].filter((fault) => typeof fault === 'string')
}

/** Each demonstration's study, from a little under the ratio it has now. */
const studies = Object.fromEntries(
  DEMOS.map((name) => {
    const low = ratio(jobOf(demo(name)).parts.belt) / 1.5
    return [name, once(() => studyOf(demo(name), { ...COARSE, low }))]
  }),
) as Record<Demo, () => RatioStudy>

describe.each(DEMOS)('%s', (name) => {
  const study = studies[name]
  it('has a window of ratios for its duty, too hot or sagging below, short of volts above', () => {
    const { points, duty, present } = study()
    const ratios = points.map((point) => point.ratio)
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b))
    expect(['hot', 'opens', 'sags']).toContain(duty!.low.why[0])
    expect(duty!.high.why[0]).toBe('reach')
    expect(present.faults).toContain('opens')
  })
  it('works inside each edge in a full run, and fails for that reason just beyond', () => {
    const { low, high } = study().duty!
    expect(low.ratio / low.beyond!).toBeLessThan(Math.exp(COARSE.close) + 1e-9)
    expect(high.beyond! / high.ratio).toBeLessThan(Math.exp(COARSE.close) + 1e-9)
    expect(against(geared(name, low.ratio))).toEqual([])
    expect(against(geared(name, low.beyond!))).toEqual(low.why)
    expect(against(geared(name, high.ratio))).toEqual([])
    // The grid's reach is of a motor that idles cold; a run shows it once it is clearly beyond.
    expect(against(geared(name, 1.02 * high.beyond!))).toContain('reach')
  })
  it('names pulleys that are sold, within the window, and they do the job in a full run', () => {
    const { duty, window, pairs, twoStages } = study()
    const [proposal] = [...pairs, ...twoStages]
    const there = jobOf(demo(name), proposal.variant)
    expect(ratio(there.parts.belt)).toBeCloseTo(proposal.ratio, 9)
    const { low, high } = window ?? duty!
    expect(proposal.ratio).toBeGreaterThanOrEqual(low.ratio)
    expect(proposal.ratio).toBeLessThanOrEqual(high.ratio)
    expect(against(there)).toEqual([])
    expect(proposal.trial.beltFaults).toEqual([])
  })
})

it('the apple mill’s upper edge is the wrap: 120° at 23 in between centres, in the textbook’s formula', () => {
  const { window } = studies.appleMill()
  expect(window!.high.why).toEqual(['wrap'])
  const wrap = (reduction: number) =>
    180 - (2 * Math.asin((2.5 * reduction - 2.5) / (2 * 23)) * 180) / Math.PI
  expect(wrap(window!.high.ratio)).toBeGreaterThanOrEqual(120)
  expect(wrap(window!.high.beyond!)).toBeLessThan(120)
})

/** A short job: three turns of the apple mill, with its fan. */
const short = (changes: Changes = {}) =>
  scenario({
    'heat.cooling': 'shaft fan',
    'duty.repeatFor': '24 min',
    'belt.centreDistance': null,
    ...changes,
  })
const QUICK = { points: 5, close: 0.05, proposals: 1 }

describe('a short job', () => {
  it('a point shows the sag, heat and speeds of its own run', () => {
    const { points } = studyOf(short(), { ...QUICK, low: 4, high: 6, points: 2, proposals: 0 })
    const six = points.at(-1)!
    const job = jobOf(short({ 'belt.machinePulley': '15 in' }))
    const figures = judge(job, finish(run(job)).trace)
    expect(six.ratio).toBeCloseTo(6, 9)
    expect(six.hottestWindingC).toBeCloseTo(figures.hottestWindingC.value, 1)
    expect(six.hottestSwitchC).toBeCloseTo(figures.hottestSwitchC.value, 1)
    expect(six.sag).toBeCloseTo(figures.slowest!.sag, 4)
    expect(six.machinePulley).toBeCloseTo(fromUnit(15, 'in'), 9)
  })
  it('starts from a variant, and its proposals keep what that changes', () => {
    const [variant] = variantsOf(demo('appleMill'))
    const study = studyOf(short({ 'heat.cooling': 'none' }), { ...QUICK, variant })
    expect(study.pairs[0].variant.changes).toMatchObject(variant.changes)
    const there = withVariant(short({ 'heat.cooling': 'none' }), study.pairs[0].variant)
    expect(jobOf(there).parts.heat.cooling).toBe('shaft fan')
  })
  it('a pulley too small for its belt bars every pair on it; the belt slips where it carries too little', () => {
    const study = studyOf(
      short({ 'belt.section': 'B', 'belt.carries': '6 N·m', 'belt.machinePulley': '10 in' }),
      QUICK,
    )
    expect(study.present.beltFaults.map(({ kind }) => kind)).toContain('small driving')
    expect(study.present.faults).toContain('slips')
    for (const { ratio: each, faults } of study.points) if (each >= 4) expect(faults).toContain('slips')
    expect([study.duty, study.window, study.pairs, study.twoStages]).toEqual([null, null, [], []])
  })
  it('asks for two stages where the motor must turn far faster than the spindle, and they make the ratio', () => {
    const slow = short({
      'duty.phases.0.speed': '70 rpm',
      'duty.phases.2.speed': '70 rpm',
      'duty.phases.2.torque': '16 N·m',
      'duty.phases.2.surge': null,
    })
    const { pairs, twoStages, duty } = studyOf(slow, QUICK)
    expect(duty!.low.ratio).toBeGreaterThan(6)
    expect(pairs).toEqual([])
    const [{ steps, ratio: made, pulleys, variant, trial }] = twoStages
    expect(steps[0] * steps[1]).toBeCloseTo(made, 12)
    expect(Math.max(...steps)).toBeLessThanOrEqual(6 + 1e-6)
    expect((pulleys[1] * pulleys[3]) / (pulleys[0] * pulleys[2])).toBeCloseTo(made, 12)
    const job = jobOf(slow, variant)
    expect(ratio(job.parts.belt)).toBeCloseTo(made, 9)
    // Each stage takes its share: two at 95 %.
    expect(job.parts.belt.efficiency).toBeCloseTo(0.9025, 2)
    expect(trial.faults).toEqual([])
  })
  it('refuses what the reader refuses', () => {
    const refused = finish(ratioStudy(short({ 'supply.volts': 'many' })))
    expect(refused).toMatchObject({ ok: false, problems: [{ path: 'supply.volts' }] })
  })
  it('tells how far it has got', () => {
    const work = ratioStudy(short(), { ...QUICK, proposals: 0 })
    let before = 0
    for (let next = work.next(); !next.done; next = work.next()) {
      expect(next.value.t).toBeGreaterThanOrEqual(before)
      expect(next.value.t).toBeLessThanOrEqual(next.value.of)
      before = next.value.t
    }
    expect(before).toBeGreaterThan(24 * 60)
  })
})
