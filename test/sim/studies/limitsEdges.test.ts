// Work and rest at the edges of what is asked: no rest, a light cut, doubts that leave no job, a belt that slips.
import { describe, expect, it } from 'vitest'
import { read } from '../../../sim/read.ts'
import { finish } from '../../../sim/run.ts'
import { STATE } from '../../../sim/plant.ts'
import { type LimitsOptions, limitsStudy } from '../../../sim/studies/limits.ts'
import { carefulJobs } from '../../../sim/studies/limits/careful.ts'
import { doubted } from '../../../sim/studies/limits/doubted.ts'
import { cold, held } from '../../../sim/studies/limits/held.ts'
import { scaled } from '../../../sim/studies/limits/turns.ts'
import { type Changes, job, scenario } from '../../jobs.ts'
import { early, steps } from './limitsDuty.ts'

const studyOf = (changes: Changes, options: LimitsOptions = {}) => {
  const study = finish(limitsStudy(scenario(changes), options))
  if (!study.ok) throw new Error(JSON.stringify(study.problems))
  return study
}
const one = (cut: Changes) => ({
  'duty.phases': [{ name: 'cutting', lasts: '4 min', speed: '350 rpm', ...cut }],
  'duty.repeatFor': '2 h',
})

describe('which step', () => {
  const wouldDo = (phase: string) => {
    const refused = finish(limitsStudy(scenario(steps({ torque: '8 N·m' })), { phase }))
    return refused.ok ? [] : refused.problems
  }
  it('a name near none is told all there are, one near one that one, and a rest has no limits of work', () => {
    expect(wouldDo('xxxxxxxx')).toEqual([
      {
        path: 'duty.phases',
        wrong: 'No step is called “xxxxxxxx”.',
        wouldDo: 'Known: “loading”, “cutting”, “rest”.',
      },
    ])
    expect(wouldDo('cuting')[0].wouldDo).toBe('Did you mean “cutting”?')
    expect(wouldDo('rest')[0]).toMatchObject({ wrong: 'A rest has no limits of work.' })
  })
})

it('a variant is put in first; what the reader refuses is refused', () => {
  const variant = { name: 'torn', changes: { 'heat.air': 'hot' } }
  const refused = finish(limitsStudy(scenario(), { variant }))
  expect(refused.ok ? [] : refused.problems.map(({ path }) => path)).toEqual(['heat.air'])
})

describe('which rest', () => {
  it('a job without one is asked after ten minutes; no rest at all leaves nothing to go on with', () => {
    const heavy = one({ torque: '8 N·m' })
    const study = studyOf(heavy)
    expect(study.cycleRest).toBe(0)
    expect(study.asGiven.again!.rest).toBe(600)
    expect(study.asGiven.again!.seconds).toBeGreaterThan(60)
    const { rest, seconds } = studyOf(heavy, { rest: 0 }).asGiven.again!
    expect(rest).toBe(0)
    expect(seconds).toBeLessThan(1)
  })
})

describe('a cut', () => {
  it('that takes more speed than is accepted, and does not stall, is told the speed it leaves', () => {
    const { slower, phase } = studyOf({
      ...one({ torque: '3 N·m' }),
      'controller.holds': 'fixed voltage',
      'machine.acceptedSag': '2 %',
    })
    expect(slower).toBeGreaterThan(0.5 * phase.speed)
    expect(slower).toBeLessThan(0.98 * phase.speed)
  })

  it('so light that work and rest are as you like still has a careful end: that of a bigger cut', () => {
    const { asGiven, careful } = studyOf({ ...steps({ torque: '1 N·m' }), 'cutoff.opensAt': '118 °C' })
    expect([asGiven.work, asGiven.rest]).toEqual(['any', 'any'])
    expect(careful.cut).toBeGreaterThan(1)
    expect(careful.cut).toBeLessThan(asGiven.cut as number)
  })

  it('some times as big: torque, power or a fan’s torque at every speed, surges too', () => {
    const phase = (cut: Changes) =>
      job(one({ ...cut, surge: { torque: '2 N·m', every: '10 s', lasts: '1 s' } })).duty.phases[0]
    const fan = phase({ fanTorque: '3 N·m' })
    expect(scaled(phase({ torque: '3 N·m' }), 2)).toMatchObject({ cut: { torque: 6 }, surge: { torque: 4 } })
    expect(scaled(phase({ power: '100 W' }), 2).cut).toMatchObject({ kind: 'power', power: 200 })
    expect(fan.cut.kind === 'fan' && scaled(fan, 2).cut).toEqual({
      kind: 'fan',
      coefficient: fan.cut.kind === 'fan' ? 2 * fan.cut.coefficient : 0,
    })
  })

  it('with a belt that slips starts at its speed, spindle and all', () => {
    const slipping = job({
      ...early,
      ...one({ torque: '8 N·m' }),
      'belt.section': 'A',
      'belt.carries': '40 N·m',
    })
    const tight = job({ ...early, ...one({ torque: '8 N·m' }) })
    const [phase] = slipping.duty.phases
    const begun = finish(held(slipping, phase, cold(slipping), 0.05)).states
    expect(begun[STATE.spindle] / phase.speed).toBeGreaterThan(0.9)
    const [a, b] = [slipping, tight].map((each) => finish(held(each, phase, cold(each), 3600)))
    expect([a.ends, b.ends]).toEqual(['opens', 'opens'])
    expect(Math.abs(a.seconds / b.seconds - 1)).toBeLessThan(0.02)
  })
})

describe('doubts', () => {
  const doubtsOf = (changes: Changes) => {
    const whole = scenario(changes)
    const reading = read(whole)
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
    return doubted(whole, reading, (each) => each)
  }

  it('an end of a band that leaves no job is no job, and the other end is still asked', () => {
    // At 55 °C it would open no more than 5 K over where it recloses, which the reader refuses.
    const doubts = doubtsOf({
      'cutoff.opensAt': { value: '90 °C', low: '55 °C', high: '100 °C' },
      'cutoff.reclosesAt': '52 °C',
    })
    const end = (side: number) => doubts.at(new Map([['cutoff.opensAt', side]]))
    expect(end(-1)).toBeNull()
    expect(end(1)!.parts.cutoff.opensAt).toBeCloseTo(100, 9)
    // Asked for how little it opens at, its high end is the worse: there it stands, and alone.
    const [{ where, job }] = finish(
      carefulJobs(doubts, [
        // biome-ignore lint/correctness/useYield: answered at once.
        function* (asked) {
          return -asked.parts.cutoff.opensAt
        },
      ]),
    )
    expect([...where]).toEqual([['cutoff.opensAt', 1]])
    expect(job.parts.cutoff.opensAt).toBeCloseTo(100, 9)
  })

  it('one that stops the answer from being one weighs as much as the worst other', () => {
    const doubts = doubtsOf({
      'heat.air': { value: '25 °C', low: '20 °C', high: '30 °C' },
      'cutoff.opensAt': { value: '100 °C', low: '95 °C', high: '105 °C' },
    })
    // biome-ignore lint/correctness/useYield: answered at once.
    const opens = function* ({ parts }: typeof doubts.job) {
      return parts.heat.air > 29 ? Number.NEGATIVE_INFINITY : parts.cutoff.opensAt
    }
    const [{ where }] = finish(carefulJobs(doubts, [opens]))
    expect(where.get('heat.air')).toBeCloseTo(Math.SQRT1_2, 12)
    expect(where.get('cutoff.opensAt')).toBeCloseTo(-Math.SQRT1_2, 12)
    // Alone it goes the whole way.
    const alone = doubtsOf({ 'heat.air': { value: '25 °C', low: '20 °C', high: '30 °C' } })
    expect([...finish(carefulJobs(alone, [opens]))[0].where]).toEqual([['heat.air', 1]])
  })
})
