// The ratio study on drives that are not plain: steps, lengths and jackshafts settled, belts that bar every ratio, no work.
import { describe, expect, it } from 'vitest'
import type { Belt } from '../../../sim/parts/belt.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish } from '../../../sim/run.ts'
import { withVariant } from '../../../sim/scenario.ts'
import { jobWith, settled } from '../../../sim/studies/ratio/change.ts'
import { fitting } from '../../../sim/studies/ratio/fits.ts'
import { pairProposals } from '../../../sim/studies/ratio/proposals.ts'
import { trial } from '../../../sim/studies/ratio/trial.ts'
import { ratioStudy } from '../../../sim/studies/ratio.ts'
import { type Changes, job, jobOf, scenario } from '../../jobs.ts'

const inch = (size: number) => fromUnit(size, 'in')
const PULLEYS = { 'belt.motorPulley': '3 in', 'belt.machinePulley': '9 in', 'belt.centreDistance': null }
const STEP = { 'belt.steps': [{ driving: '4 in', driven: '8 in' }], 'belt.step': '2' }
const TWO = { 'belt.jackshaftLarge': '6 in', 'belt.jackshaftSmall': '2 in' }

describe('a belt told by its pulleys and centres alone', () => {
  const alone = (changes: Changes) => settled(job({ ...PULLEYS, ...changes }).parts.belt)
  it('nothing where neither step nor length is said, or the step is the first', () => {
    expect(alone({})).toEqual({})
    expect(alone({ ...STEP, 'belt.step': null })).toEqual({})
    expect(alone({ ...STEP, 'belt.step': '1' })).toEqual({})
  })
  it('a step by its pulleys, where the steps are', () => {
    expect(alone(STEP)).toEqual({
      'belt.step': null,
      'belt.motorPulley': '4 in',
      'belt.machinePulley': '8 in',
    })
    expect(alone({ ...TWO, ...STEP })).toEqual({
      'belt.step': null,
      'belt.jackshaftSmall': '4 in',
      'belt.machinePulley': '8 in',
    })
  })
  it('a length by the centres it gives, of either stage; the drive stays what it is', () => {
    for (const changes of [
      { 'belt.length': '60 in' },
      { ...TWO, 'belt.jackshaftLength': '40 in' },
      { ...STEP, 'belt.length': '60 in' },
    ]) {
      const before = job({ ...PULLEYS, ...changes }).parts.belt
      const whole = scenario({ ...PULLEYS, ...changes })
      const after = jobOf(withVariant(whole, { name: 'settled', changes: settled(before) })).parts.belt
      expect(ratio(after)).toBeCloseTo(ratio(before), 12)
      expect([after.length, after.jackshaftLength]).toEqual([undefined, undefined])
    }
    expect(alone({ 'belt.length': '60 in' })['belt.centreDistance']).toMatch(/^20\.35\d* in$/)
    expect(alone({ ...TWO, 'belt.jackshaftLength': '40 in' })['belt.jackshaftCentres']).toMatch(
      /^12\.8\d* in$/,
    )
  })
  it('changes that the reader refuses make no job', () => {
    expect(jobWith(scenario(), { 'belt.machinePulley': '1 mm' })).toBeNull()
  })
})

describe('the part of a window that the belt can be given', () => {
  const belt: Belt = {
    motorPulley: inch(2.5),
    machinePulley: inch(10),
    centreDistance: inch(23),
    efficiency: 0.95,
  }
  const edge = (at: number, beyond: number | null) => ({ ratio: at, beyond, why: [] })
  const fits = (changes: Partial<Belt>, low: number, high: number) =>
    finish(
      fitting({ ...belt, ...changes }, { low: edge(low, low * 0.99), high: edge(high, null) }, 4, 30, 1e-3),
    )
  it('is all of it where no limit is passed, keeping the edges the duty has', () => {
    expect(fits({}, 3, 5)).toEqual({ low: edge(3, 3 * 0.99), high: edge(5, null) })
  })
  it('ends where the wrap does, or the driven pulley is too small for the belt', () => {
    expect(fits({}, 3, 12)!.high).toMatchObject({ why: ['wrap'] })
    expect(fits({ section: 'A', motorPulley: inch(6), machinePulley: inch(24) }, 0.3, 2)!.low).toMatchObject({
      why: ['small driven'],
    })
  })
  it('is none where the pulleys never fit between the shafts', () => {
    expect(fits({ centreDistance: inch(4) }, 4, 6)).toBeNull()
  })
})

describe('pulleys that are tried and do not do it', () => {
  const offered = (changes: Changes) => {
    const whole = scenario({ 'heat.cooling': 'shaft fan', 'duty.repeatFor': '24 min', ...changes })
    const window = { low: { ratio: 3.5, beyond: null, why: [] }, high: { ratio: 4.5, beyond: null, why: [] } }
    const told = <T>(work: Generator<never, T>) => work
    const offer = {
      scenario: whole,
      base: undefined,
      belt: jobOf(whole).parts.belt,
      most: 1,
      told: told as never,
    }
    return finish(pairProposals(offer, window))
  }
  it('are left out, and after two for each one wanted no more are tried', () => {
    expect(offered({})).toHaveLength(1)
    expect(offered({ 'duty.phases.2.torque': '40 lbf·ft' })).toEqual([])
  })
})

it('a trial of a job that rests has no speed to lose', () => {
  const rest = { 'duty.phases': [{ name: 'rest', lasts: '1 min' }], 'duty.repeatFor': '1 min' }
  expect(finish(trial(job(rest)))).toMatchObject({ sag: null, slowest: null, faults: [] })
  const study = finish(ratioStudy(scenario(rest), { points: 3, proposals: 0 }))
  if (!study.ok) throw new Error('refused')
  expect(study.asked.fastest).toBe(0)
  expect(study.present.ratio).toBeCloseTo(4, 9)
  expect(study.duty).toMatchObject({ high: { beyond: null } })
})
