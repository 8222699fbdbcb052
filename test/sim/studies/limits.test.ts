// Work and rest: every limit by direct runs on both sides of it, what must be monotone, and the careful end by sampling.
import { describe, expect, it } from 'vitest'
import type { Phase } from '../../../sim/duty.ts'
import { restFor } from '../../../sim/duty/patterns.ts'
import type { Job } from '../../../sim/job.ts'
import { judge, openSpells } from '../../../sim/judge.ts'
import { finish, run } from '../../../sim/run.ts'
import { steadyLimits, runLimits } from '../../../sim/studies/limits/alone.ts'
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
import { job as given } from '../../jobs.ts'
import { early, steps } from './limitsDuty.ts'

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

const late = { 'cutoff.opensAt': '118 °C', 'cutoff.reclosesAt': '80 °C' }
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
