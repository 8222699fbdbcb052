// The lessons: the ratios they state, recomputed; every sheet whole in both unit systems; the runs bear them out.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { judge } from '../../sim/judge.ts'
import { LESSONS, type LessonName, lessonFacts } from '../../sim/lessons.ts'
import { read, readFile } from '../../sim/read.ts'
import { finish, run } from '../../sim/run.ts'
import { lessonSheet } from '../../sim/say/lessons.ts'
import { variantsOf } from '../../sim/scenario.ts'
import { root } from '../house/tree.ts'

function lesson(name: LessonName) {
  const found = readFile(readFileSync(join(root, 'scenarios/lessons', `${name}.json`), 'utf8'))
  if (!found.ok) throw new Error(`${name} is no job file`)
  const variants = variantsOf(found.scenario)
  const jobs = [undefined, ...variants].map((variant) => {
    const reading = read(found.scenario, variant)
    if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.problems)}`)
    expect(reading.notes).toEqual([])
    return reading.job
  })
  const names = ['As found', ...variants.map((variant) => variant.name)]
  return { jobs, names, facts: lessonFacts(name, jobs) }
}

it('gearing: 2 : 1 more reduction halves the amps of the cut and quarters their copper heat, cold (common practice, no source)', () => {
  const [one, two, four] = lesson('gearing').facts
  for (const [a, b] of [
    [one, two],
    [two, four],
  ]) {
    expect(a.load.value / b.load.value).toBeCloseTo(2, 9)
    expect(a.copper.value / b.copper.value).toBeCloseTo(4, 9)
    // Rpm lost at the spindle: by the square of the ratio, exactly.
    expect(a.lost.value / b.lost.value).toBeCloseTo(4, 1)
  }
  // The shaft fan: what air carries goes with a power of speed under one, over still air (PHYSICS.md §1).
  expect(four.air.value / one.air.value).toBeLessThan(four.motor.value / one.motor.value)
})

it('horsepower: equal power at twice the speed is half the torque, and twice the reduction makes them equal', () => {
  const [slow, fast, geared] = lesson('horsepower').facts
  // 745.7 W / 314.16 rad/s, by hand 2.374 N·m.
  expect(slow.torque.value).toBeCloseTo(2.3736, 3)
  expect(slow.torque.value / fast.torque.value).toBeCloseTo(2, 9)
  expect(slow.allDay.value).toBeGreaterThan(slow.asked.value)
  expect(fast.allDay.value).toBeLessThan(fast.asked.value)
  expect(geared.allDay.value / slow.allDay.value).toBeCloseTo(1, 2)
})

it('fan: air goes with speed; JOB.md’s fifth of speed carries 0.8 powers of it, over still air', () => {
  const { facts, jobs } = lesson('fan')
  const [own, gone, blown] = facts
  const { heat } = jobs[0].parts
  const share = own.speed.value
  expect(share).toBeCloseTo(0.207, 3)
  const still = heat.windingToAir
  expect(own.carried.value).toBeCloseTo(
    (still + heat.windingToFanAir * share ** 0.8) / (still + heat.windingToFanAir),
    3,
  )
  expect(gone.carried.value).toBeLessThan(own.carried.value)
  // The law is smoothed through standstill: 1e-6 of it at full speed.
  expect(blown.carried.value).toBeCloseTo(1, 5)
  expect(own.allDay.value).toBeGreaterThan(own.asked.value)
  expect(gone.winding.value).toBe(Number.POSITIVE_INFINITY)
})

it('peak: the square of power is heat, and the minutes are those of a whole run', () => {
  const { facts, jobs } = lesson('peak')
  const [large, small] = facts
  // 2.2/1.3 = 1.692; squared 2.864.
  expect(large.share.value).toBeCloseTo(2.2 / 1.3, 9)
  expect(large.heat.value).toBeCloseTo(2.8639, 4)
  expect(small.lasts.value).toBe(Number.POSITIVE_INFINITY)
  const { classPassed } = judge(jobs[0], finish(run(jobs[0])).trace)
  // A run begins with its ramp, and holds its speed a little less well: within a few seconds.
  expect(Math.abs((classPassed ?? 0) - large.lasts.value)).toBeLessThan(0.03 * large.lasts.value)
  expect(judge(jobs[1], finish(run(jobs[1])).trace).classPassed).toBeNull()
})

it('fuse: 1.5 times the amps are 2.25 times the heat; fewer amps than the plate’s are too many, slow and without a fan', () => {
  const { facts, jobs } = lesson('fuse')
  const [bare, guarded] = facts
  // The cutoff feels it late: a whole run passes the class before it opens.
  const whole = judge(jobs[1], finish(run(jobs[1])).trace)
  expect(guarded.opens.value).toBe(whole.firstOpening?.t)
  expect(guarded.winding.value).toBeGreaterThan(guarded.class.value)
  expect(whole.classPassed).toBeLessThan(guarded.opens.value)
  expect(bare.opens.value).toBe(Number.POSITIVE_INFINITY)
  expect(bare.limitHeat.value).toBe(2.25)
  expect(bare.amps.value).toBeLessThan(bare.rated.value)
  expect(bare.lasts.value).toBeLessThan(600)
})

describe.each(LESSONS)('%s', (name) => {
  const { facts, names } = lesson(name)
  it.each(['us', 'metric'] as const)('is a whole sheet in %s units', (system) => {
    const sheet = lessonSheet(name, facts, names, { system, temperature: '°C' })
    expect(sheet.rows.every((row) => row.length === names.length + 1)).toBe(true)
    expect(sheet.questions.length).toBeGreaterThanOrEqual(4)
    const text = JSON.stringify(sheet)
    expect(text).not.toMatch(/NaN|undefined|Infinity|—/)
    for (const { ask, answer } of sheet.questions) {
      expect(ask).toMatch(/\?$/)
      expect(answer).toMatch(/[.]$/)
    }
  })
})

describe('answers follow the numbers, were the lesson’s job another', () => {
  /** The answers with a number of one of the jobs replaced. */
  const answers = (name: LessonName, at: number, changes: Readonly<Record<string, number>>) => {
    const { facts, names } = lesson(name)
    const columns = facts.map((each, n) =>
      n === at
        ? {
            ...each,
            ...Object.fromEntries(
              Object.entries(changes).map(([key, value]) => [key, { ...each[key], value }]),
            ),
          }
        : each,
    )
    return lessonSheet(name, columns, names, { system: 'metric', temperature: '°C' })
      .questions.map(({ answer }) => answer.replaceAll('\u00a0', ' '))
      .join('\n')
  }
  it('a winding without its fan runs away or settles', () => {
    expect(answers('fan', 1, { winding: Number.POSITIVE_INFINITY })).toContain('settles nowhere')
    expect(answers('fan', 1, { winding: 140 })).toContain('without either it settles at 140 °C.')
  })
  it('the continuous power lasts for good, or as long as it does', () => {
    expect(answers('peak', 1, { lasts: Number.POSITIVE_INFINITY })).toContain('As long as you like: ')
    expect(answers('peak', 1, { lasts: 1200 })).toContain('20 min: ')
  })
  it('a cutoff opens in time, or too late', () => {
    expect(answers('fuse', 1, { winding: 119, class: 120 })).toContain('at 119 °C, and that is in time.')
    expect(answers('fuse', 1, { winding: 121, class: 120 })).toContain('at 121 °C, and that is too late:')
  })
})
