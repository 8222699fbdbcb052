// Work and rest on the page: which step is looked at, and ready-made duties put in place of the steps.
import { expect, it } from 'vitest'
import { DUTY_TYPES } from '../../sim/handbook/dutyTypes.ts'
import { read } from '../../sim/read.ts'
import { withVariant } from '../../sim/scenario.ts'
import { AS_FOUND, type State } from '../../ui/store.ts'
import { cutPicked, limitsKeeper } from '../../ui/study/limits.ts'
import { granted } from '../../ui/wishes.ts'
import { state as fresh } from './demo.ts'

/** The page's state with the job as found read. */
const state = (): State => {
  const now = fresh()
  return { ...now, readings: new Map([[AS_FOUND, read(now.scenario)]]) }
}

/** The steps of the job as found, [seconds, whether it runs, torque]. */
function steps({ scenario }: State) {
  const reading = read(scenario)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  const { phases, seconds } = reading.job.duty
  return {
    seconds,
    phases: phases.map(({ seconds, speed, cut }) => [
      seconds,
      speed > 0,
      'torque' in cut ? cut.torque : null,
    ]),
  }
}

it('every ready-made duty puts the hardest cut in place of the steps, and undo brings them back', () => {
  const before = state()
  const [, , [, , torque]] = steps(before).phases
  for (const { name, work, rest } of DUTY_TYPES) {
    const after = granted(before, { kind: 'duty pattern', type: name })
    const { phases, seconds } = steps(after)
    const hours = 8 * 3600
    expect(phases[0]).toEqual([expect.closeTo(Math.min(work, hours), 6), true, torque])
    expect(phases.slice(1)).toEqual(rest > 0 && rest < Infinity ? [[expect.closeTo(rest, 6), false, 0]] : [])
    expect(seconds).toBeCloseTo(name.startsWith('S2') ? work : hours, 6)
    expect(after.undo).toContain(name)
  }
  expect(granted(before, { kind: 'duty pattern', type: 'S9' })).toBe(before)
})

it('changes of variants follow the cut to its new place; those of other steps and of lengths go', () => {
  const before = state()
  const changes = {
    'duty.phases.2.speed': '300 rpm',
    'duty.phases.2.lasts': '9 min',
    'duty.phases.0.speed': '100 rpm',
    'duty.repeatFor': '1 h',
    'heat.cooling': 'blower',
  }
  const varied: State = { ...before, variants: [{ id: 'variant 1', name: 'x', changes }] }
  const after = granted(varied, { kind: 'duty pattern', type: 'S3 25 %' })
  expect(after.variants[0].changes).toEqual({ 'duty.phases.0.speed': '300 rpm', 'heat.cooling': 'blower' })
  expect(read(withVariant(after.scenario, after.variants[0])).ok).toBe(true)
})

it('a step is picked by name while the job has it and it runs; another is another study', () => {
  const now = { ...state(), asked: new Map([[AS_FOUND, 'k']]) }
  expect(cutPicked(now)).toBeUndefined()
  const picked = granted(now, { kind: 'limits cut', phase: 'loading' })
  expect(cutPicked(picked)).toBe('loading')
  expect(limitsKeeper.key(picked)).not.toBe(limitsKeeper.key(now))
  for (const phase of ['rest', 'no such step'])
    expect(cutPicked(granted(now, { kind: 'limits cut', phase }))).toBeUndefined()
})
