// Work and rest: every limit by direct runs on both sides of it, what must be monotone, and the careful end by sampling.
import { describe, expect, it } from 'vitest'
import type { Phase } from '../../../sim/duty.ts'
import { restFor } from '../../../sim/duty/patterns.ts'
import type { Job } from '../../../sim/job.ts'
import { judge, openSpells } from '../../../sim/judge.ts'
import { read } from '../../../sim/read.ts'
import { finish, run } from '../../../sim/run.ts'
import { type Scenario, withChange } from '../../../sim/scenario.ts'
import { steadyLimits, runLimits } from '../../../sim/studies/limits/alone.ts'
import { bracket, crossing } from '../../../sim/studies/limits/crossing.ts'
import { doubted } from '../../../sim/studies/limits/doubted.ts'
import { evened } from '../../../sim/studies/limits/evened.ts'
import { cold, held, rested } from '../../../sim/studies/limits/held.ts'
import {
  biggestCut,
  longestWork,
  restOf,
  scaled,
  shortestRest,
  type Turns,
  withRest,
} from '../../../sim/studies/limits/turns.ts'
import { type LimitsStudy, limitsStudy } from '../../../sim/studies/limits.ts'
import { type Changes, demo, job as given, scenario } from '../../jobs.ts'

const HOUR = 3600

/** Everything stays in order: the cutoff closed, the class kept. */
function inOrder(job: Job, phases: readonly Phase[], seconds: number): boolean {
  const { trace } = finish(run({ ...job, duty: { ...job.duty, phases, seconds } }))
  const { firstOpening, classPassed, ending } = judge(job, trace)
  return firstOpening === null && classPassed === null && ending.kind === 'finished'
}
/** The class is kept, and in the last phase the cutoff stays closed: what it does in a rest is the rest's. */
function lastInOrder(job: Job, phases: readonly Phase[]): boolean {
  const seconds = sum(phases)
  const { trace } = finish(run({ ...job, duty: { ...job.duty, phases, seconds } }))
  const began = seconds - phases[phases.length - 1].seconds
  const open = openSpells(trace.marks, seconds).some(([, until]) => until > began)
  return !open && judge(job, trace).classPassed === null
}
const sum = (phases: readonly Phase[]) => phases.reduce((total, { seconds }) => total + seconds, 0)

const steps = (cut: Changes, rest = '3 min') => ({
  duty: {
    phases: [
      { name: 'loading', lasts: '1 min', speed: '350 rpm' },
      { name: 'cutting', lasts: '4 min', speed: '350 rpm', ...cut },
      { name: 'rest', lasts: rest },
    ],
    repeatFor: '2 h',
  },
})
const late = { 'cutoff.opensAt': '118 °C', 'cutoff.reclosesAt': '80 °C' }
const early = { 'cutoff.opensAt': '55 °C', 'cutoff.reclosesAt': '40 °C' }
const surge = { torque: '3 N·m', every: '20 s', lasts: '4 s' }
const JOBS: readonly (readonly [string, 'opens' | 'class', Job])[] = [
  ['the class', 'class', given({ ...late, ...steps({ torque: '8 N·m' }) })],
  ['the cutoff', 'opens', given({ ...early, ...steps({ torque: '8 N·m' }) })],
  ['the cutoff, with surges', 'opens', given({ ...early, ...steps({ torque: '7 N·m', surge }) })],
  ['no fan', 'class', given({ ...late, 'heat.cooling': 'none', ...steps({ power: '250 W' }, '6 min') })],
]

describe.each(JOBS)('limited by %s', (_name, ends, job) => {
  const cut = 1
  const { phases } = job.duty
  const phase = phases[cut]
  const turns: Turns = { phases, cut }
  const limits = finish(runLimits(job, phase, restOf(phases)))
  const idle = { ...phase, cut: { kind: 'torque', torque: 0 } as const, surge: null }
  /** A machine is started before it cuts. */
  const start = { ...idle, seconds: 1.5 }

  it('from cold: a twentieth less is in order, a twentieth more is not', () => {
    const { seconds, ends: by } = limits.cold!
    expect(by).toBe(ends)
    const alone = (times: number) => {
      const long = { ...phase, seconds: times * seconds }
      return inOrder(job, [start, long], start.seconds + long.seconds)
    }
    expect([alone(0.95), alone(1.05)]).toEqual([true, false])
  })

  it('after a rest: as long again as it says, no longer', () => {
    const { rest, seconds } = limits.again!
    const again = (times: number) => {
      const all = [
        start,
        { ...phase, seconds: 0.995 * limits.cold!.seconds },
        restFor(rest),
        start,
        { ...phase, seconds: Math.max(1, times * seconds) },
      ]
      return lastInOrder(job, all)
    }
    // Nothing at all where the cutoff is still open.
    expect([seconds === 0 || again(0.9), again(1.1)]).toEqual([true, false])
  })

  it('the rest before the next run, standing and running free: a twentieth more will do, a twentieth less not', () => {
    const { run: next, standing, free } = limits.next!
    expect(next).toBeLessThanOrEqual(phase.seconds)
    for (const [rest, kind] of [
      [standing, restFor(1)],
      [free, idle],
    ] as const) {
      if (rest === null) continue
      const does = (times: number) => {
        const all = [
          start,
          { ...phase, seconds: 0.995 * limits.cold!.seconds },
          { ...kind, seconds: times * rest },
          start,
          { ...phase, seconds: next },
        ]
        return lastInOrder(job, all)
      }
      expect([does(1.05), does(0.95)]).toEqual([true, false])
    }
  })

  it('in turns for twelve hours: a twentieth more work, less rest or more cut is too much; less, more, less is not', () => {
    const long = (changed: readonly Phase[]) => inOrder(job, changed, 12 * HOUR)
    const work = finish(longestWork(job, turns)) as number
    const at = (seconds: number) => phases.map((each, n) => (n === cut ? { ...each, seconds } : each))
    expect([long(at(0.95 * work)), long(at(1.05 * work))]).toEqual([true, false])
    const rest = finish(shortestRest(job, turns)) as number
    expect([long(withRest(turns, 1.05 * rest)), long(withRest(turns, 0.95 * rest))]).toEqual([true, false])
    const factor = finish(biggestCut(job, turns)) as number
    const big = (by: number) => phases.map((each, n) => (n === cut ? scaled(each, by) : each))
    expect([long(big(0.95 * factor)), long(big(1.05 * factor))]).toEqual([true, false])
  })
})

describe('what must be so', () => {
  const [, , job] = JOBS[1]
  const phase = job.duty.phases[1]

  it('the longer the rest, the longer the next run; the longer the run, the hotter', () => {
    const { states } = finish(held(job, phase, cold(job), 8 * HOUR))
    let before = -1
    for (const rest of [60, 300, 1200, 4 * HOUR]) {
      const after = finish(rested(job, restFor(rest), states))
      const seconds = after === null ? 0 : finish(held(job, phase, after, 8 * HOUR)).seconds
      expect(seconds).toBeGreaterThanOrEqual(before)
      if (before > 0) expect(seconds).toBeGreaterThan(before)
      before = seconds
    }
    // After a night it is as from cold.
    const morning = finish(rested(job, restFor(48 * HOUR), states))!
    const fresh = finish(held(job, phase, cold(job), 8 * HOUR)).seconds
    expect(finish(held(job, phase, morning, 8 * HOUR)).seconds).toBeCloseTo(fresh, 0)
    let hot = 0
    for (const share of [0.1, 0.4, 0.7, 1]) {
      const { windingC, ends } = finish(held(job, phase, cold(job), share * 0.99 * fresh))
      expect(ends).toBeNull()
      expect(windingC).toBeGreaterThan(hot)
      hot = windingC
    }
  })

  it('a bigger cut: shorter from cold, shorter in turns, more rest', () => {
    const found = [0.7, 0.8, 0.9].map((factor) => {
      const bigger = scaled(phase, factor)
      const turns: Turns = { phases: job.duty.phases.map((each, n) => (n === 1 ? bigger : each)), cut: 1 }
      return {
        cold: finish(runLimits(job, bigger, 60)).cold!.seconds,
        work: finish(longestWork(job, turns)) as number,
        rest: finish(shortestRest(job, turns)) as number,
      }
    })
    for (let n = 1; n < found.length; n++) {
      expect(found[n].cold).toBeLessThan(found[n - 1].cold)
      expect(found[n].work).toBeLessThan(found[n - 1].work)
      expect(found[n].rest).toBeGreaterThan(found[n - 1].rest)
    }
  })

  it('a light cut is held all day and needs no rest; a hopeless one finds none', () => {
    const light = given({ ...late, ...steps({ torque: '1 N·m' }) })
    const turns = (of: Job): Turns => ({ phases: of.duty.phases, cut: 1 })
    expect(finish(runLimits(light, light.duty.phases[1], 60))).toMatchObject({
      cold: null,
      again: null,
      next: null,
    })
    expect(finish(longestWork(light, turns(light)))).toBe('any')
    expect(finish(shortestRest(light, turns(light)))).toBe('any')
    expect(finish(biggestCut(light, turns(light)))).toBeGreaterThan(1)
    const { allDay, lowest } = steadyLimits(light, light.duty.phases[1])
    expect(allDay.torque).toBeGreaterThan(1)
    expect(lowest).not.toBeNull()
    // The cutoff opens in mere idling: no work is short enough, no cut small enough; and no rest long enough.
    const hopeless = given({
      'cutoff.opensAt': '42 °C',
      'cutoff.reclosesAt': '30 °C',
      'heat.air': '40 °C',
      ...steps({ torque: '8 N·m' }),
    })
    expect(finish(longestWork(hopeless, turns(hopeless)))).toBe('none')
    expect(finish(biggestCut(hopeless, turns(hopeless)))).toBe('none')
    expect(finish(shortestRest(hopeless, turns(hopeless)))).toBe('none')
  })

  it('a duty without a rest is given one after the cut; all rests are stretched alike', () => {
    const turns: Turns = {
      phases: [
        { ...phase, seconds: 60 },
        { ...phase, seconds: 30 },
      ],
      cut: 0,
    }
    expect(withRest(turns, 40).map(({ speed, seconds }) => [speed > 0, seconds])).toEqual([
      [true, 60],
      [false, 40],
      [true, 30],
    ])
    const two: Turns = { phases: [restFor(10), phase, restFor(30)], cut: 1 }
    expect(withRest(two, 80).map(({ seconds }) => seconds)).toEqual([20, phase.seconds, 60])
  })

  it('surges evened out keep the mean square of the torque', () => {
    const even = evened({
      ...phase,
      cut: { kind: 'torque', torque: 3 },
      surge: { torque: 4, every: 10, lasts: 2.5 },
    })
    expect(even.surge).toBeNull()
    expect(even.cut).toEqual({ kind: 'torque', torque: Math.sqrt(0.75 * 9 + 0.25 * 49) })
    expect(evened(phase)).toBe(phase)
  })
})

describe('the search', () => {
  const of = (f: (x: number) => number) =>
    // biome-ignore lint/correctness/useYield: answered at once.
    function* (x: number) {
      return f(x)
    }
  it('ends on the side that holds, near the crossing, from either side, over a cliff too', () => {
    for (const f of [(x: number) => 3 - x ** 3, (x: number) => (x < 1.4422 ? 5 : Number.NEGATIVE_INFINITY)]) {
      const x = finish(crossing(of(f), { x: 0.1, left: f(0.1) }, { x: 7, left: f(7) }, 1e-6))
      expect(f(x)).toBeGreaterThanOrEqual(0)
      expect(Math.abs(x - 3 ** (1 / 3))).toBeLessThan(1e-4)
      const mirrored = (y: number) => f(-y)
      const y = finish(crossing(of(mirrored), { x: -0.1, left: f(0.1) }, { x: -7, left: f(7) }, 1e-6))
      expect(Math.abs(y + 3 ** (1 / 3))).toBeLessThan(1e-4)
    }
  })
  it('brackets upwards and downwards, and says where there is nothing to bracket', () => {
    const up = finish(
      bracket(
        of((x) => 10 - x),
        1,
        0.1,
        100,
        2,
      ),
    )
    expect(up).toMatchObject({ good: 8, bad: 16 })
    expect(
      finish(
        bracket(
          of((x) => 10 - x),
          100,
          0.1,
          100,
          2,
        ),
      ),
    ).toMatchObject({ good: 6.25, bad: 12.5 })
    expect(
      finish(
        bracket(
          of(() => 1),
          1,
          0.1,
          100,
          2,
        ),
      ),
    ).toBe('always')
    expect(
      finish(
        bracket(
          of(() => -1),
          1,
          0.1,
          100,
          2,
        ),
      ),
    ).toBe('never')
  })
})

describe('the study', () => {
  const studyOf = (...asked: Parameters<typeof limitsStudy>): LimitsStudy => {
    const study = finish(limitsStudy(...asked))
    if (!study.ok) throw new Error(JSON.stringify(study.problems))
    return study
  }
  const saw = demo('bandSaw')
  const study = studyOf(saw)

  it('takes the hardest step and the rest of the cycle; its own limits are those of the job', () => {
    const reading = read(saw)
    if (!reading.ok) throw new Error()
    expect(study.phase.name).toBe('cutting')
    expect(study.cycleRest).toBe(120)
    const { cold: run, next } = finish(runLimits(reading.job, study.phase, 120))
    expect(study.asGiven).toMatchObject({ cold: run, next })
  })

  it('the careful end is the worse one, and the same again on a second asking', () => {
    const { asGiven, careful } = study
    expect(careful.allDay.torque).toBeLessThan(asGiven.allDay.torque)
    expect(careful.cold!.seconds).toBeLessThan(asGiven.cold!.seconds)
    expect(careful.again!.seconds).toBeLessThan(asGiven.again!.seconds)
    expect(careful.work).toBeLessThan(asGiven.work as number)
    expect(careful.cut).toBeLessThan(asGiven.cut as number)
    expect(studyOf(saw)).toEqual(study)
  })

  it('in one of ten motors that these readings allow it is worse still: by sampling', () => {
    const reading = read(saw)
    if (!reading.ok) throw new Error()
    const doubts = doubted(saw, reading, (job) => job)
    // A linear congruential generator and the sum of twelve: as good as normal here. A band of 8 in 10 is 1.28 of it.
    let seed = 20_240_611
    const uniform = () => {
      seed = (1_664_525 * seed + 1_013_904_223) % 2 ** 32
      return seed / 2 ** 32
    }
    const normal = () =>
      Array.from({ length: 12 }, uniform).reduce((total, each) => total + each, -6) / 1.2816
    const worse = { allDay: 0, cold: 0 }
    const N = 250
    for (let n = 0; n < N; n++) {
      const job = doubts.at(new Map(doubts.names.map((name) => [name, normal()])))
      if (!job) throw new Error('no motor')
      if (steadyLimits(job, study.phase).allDay.torque < study.careful.allDay.torque) worse.allDay++
      const most = study.careful.cold!.seconds
      if (finish(held(job, study.phase, cold(job), most)).ends !== null) worse.cold++
    }
    // 10 in 100; what bends does to it, and the samples’ own scatter of 2, aside.
    for (const count of Object.values(worse)) {
      expect(count / N).toBeGreaterThan(0.05)
      expect(count / N).toBeLessThan(0.16)
    }
  })

  /** Without the bands written beside its inputs. */
  const bare = (whole: Scenario): Scenario =>
    JSON.parse(JSON.stringify(whole, (key, value) => (key === 'low' || key === 'high' ? undefined : value)))

  it('a band written beside an input counts; a motor with every number given has no other doubt', () => {
    const sure = bare(scenario({ ...early, ...steps({ torque: '8 N·m' }) }))
    const none = studyOf(sure)
    expect(none.careful).toEqual(none.asGiven)
    const unsure = withChange(sure, 'duty.phases.1.torque', { value: '8 N·m', low: '6 N·m', high: '10 N·m' })
    // Only the torque is doubted: the careful job is that of 10 N·m.
    const heavy = studyOf(withChange(sure, 'duty.phases.1.torque', '10 N·m'))
    const found = studyOf(unsure)
    expect(found.asGiven).toEqual(none.asGiven)
    expect(found.careful.cold!.seconds).toBeCloseTo(heavy.asGiven.cold!.seconds, 6)
  })

  it('another step, another rest, a ready-made duty; and a step that is not there', () => {
    const light = studyOf(saw, { phase: 'setting up', rest: 900 })
    expect(light.phase.name).toBe('setting up')
    expect(light.asGiven.cold).toBeNull()
    // No work of its own lasts, since the other step opens the cutoff: the careful end is asked at the rest that does.
    expect(light.asGiven.work).toBe('none')
    expect(light.careful.rest).not.toBe(light.asGiven.rest)
    expect(light.slower).toBeNull()
    const stalled = studyOf(withChange(saw, 'duty.phases.1.torque', '80 N·m'))
    expect(stalled.slower).toBe(0)
    const { duty, phase } = studyOf(saw, {
      type: { name: '', about: '', work: 90, rest: 510, source: '', standing: 'memory' },
    })
    expect(duty.phases.map(({ seconds }) => seconds)).toEqual([90, 510])
    expect(phase.cut).toEqual(study.phase.cut)
    for (const name of ['cuting', 'rest']) {
      const refused = finish(limitsStudy(saw, { phase: name }))
      expect(refused.ok).toBe(false)
      if (!refused.ok) expect(refused.problems[0].wouldDo).toMatch(/cutting|runs/)
    }
  })
})
