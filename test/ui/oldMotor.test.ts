// The old motor's little form: its fields, their problems, and what it is read as; none of it goes into the job.
import { expect, it } from 'vitest'
import { editOld, oldInput, oldProblem, oldPulley, readOld, takesStep } from '../../ui/change/oldMotor.ts'
import { NO_OLD_MOTOR } from '../../ui/change/noOldMotor.ts'
import { toSave } from '../../ui/change/job.ts'
import { granted } from '../../ui/wishes.ts'
import { example, state } from './demo.ts'

const edited = (texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce(
    (now, [name, text]) => granted(now, { kind: 'edit', path: `rival.${name}`, text }),
    state(),
  )

it('is typed into the page and not into the job', () => {
  const now = edited({ power: '3/4 hp', speed: '1725 rpm' })
  expect(now.old).toEqual({ ...NO_OLD_MOTOR, power: '3/4 hp', speed: '1725 rpm' })
  expect(toSave(now)).toEqual(example('appleMill'))
  expect(editOld(state(), 'plate.power', '1 hp')).toBeNull()
})

it('is no motor until power and speed are told', () => {
  expect(readOld(NO_OLD_MOTOR)).toBeNull()
  expect(readOld({ ...NO_OLD_MOTOR, power: '1 hp' })).toBeNull()
  const read = readOld({ ...NO_OLD_MOTOR, power: '1 hp', speed: '1725 rpm' })
  expect(read?.ok && read.rival).toMatchObject({ kind: 'single-phase', poles: 4, steps: [{ ratio: 1 }] })
})

it('its pulleys gear it: 2 in on 10 in is 5 to 1', () => {
  const read = readOld({
    ...NO_OLD_MOTOR,
    power: '1 hp',
    speed: '1725 rpm',
    steps: [{ motorPulley: '2 in', machinePulley: '10 in' }],
  })
  expect(read?.ok && read.rival.steps[0].ratio).toBeCloseTo(5, 12)
})

const field = (name: 'power' | 'speed') => oldInput(NO_OLD_MOTOR, name)!

it('a problem stands at its field', () => {
  const wrong = readOld({ ...NO_OLD_MOTOR, power: '1 hp', speed: 'fast' })
  if (wrong?.ok !== false) throw new Error('it was read')
  expect(oldProblem(wrong.problems, field('speed'))?.path).toBe('speed')
  expect(oldProblem(wrong.problems, field('power'))).toBeNull()
})

it('each field has its label', () => {
  expect(field('power').field.label).toBe('Power on its plate')
  expect(oldPulley(NO_OLD_MOTOR, 0, 'machinePulley')?.field.label).toBe('Old machine pulley')
})

const STEPPED = {
  power: '1 hp',
  speed: '1725 rpm',
  'steps.0.motorPulley': '2 in',
  'steps.0.machinePulley': '10 in',
} as const

it('a step more: named by its step, none while it is empty, amiss while it is half, then a ratio of its own', () => {
  const two = granted(edited(STEPPED), { kind: 'add old step' })
  expect(two.old.steps).toHaveLength(2)
  expect(oldPulley(two.old, 1, 'motorPulley')).toMatchObject({
    path: 'rival.steps.1.motorPulley',
    field: { label: 'Old motor pulley, step 2' },
  })
  const read = readOld(two.old)
  expect(read?.ok && read.rival.steps).toHaveLength(1)
  const half = granted(two, { kind: 'edit', path: 'rival.steps.1.motorPulley', text: '4 in' })
  const wrong = readOld(half.old)
  if (wrong?.ok !== false) throw new Error('it was read')
  expect(oldProblem(wrong.problems, oldPulley(half.old, 1, 'machinePulley')!)?.wrong).toContain('pulleys')
  expect(oldProblem(wrong.problems, oldPulley(half.old, 0, 'machinePulley')!)).toBeNull()
  const whole = granted(half, { kind: 'edit', path: 'rival.steps.1.machinePulley', text: '8 in' })
  const both = readOld(whole.old)
  expect(both?.ok && both.rival.steps.map(({ ratio }) => Number(ratio.toFixed(9)))).toEqual([5, 2])
})

it('twelve steps at the most; taken away from the last to the first, which stays', () => {
  let now = edited(STEPPED)
  for (let n = 0; n < 20; n++) now = granted(now, { kind: 'add old step' })
  expect([now.old.steps.length, takesStep(now.old)]).toEqual([12, false])
  for (let n = 0; n < 20; n++)
    now = granted(now, { kind: 'remove old step', index: now.old.steps.length - 1 })
  expect(now.old.steps).toEqual([{ motorPulley: '2 in', machinePulley: '10 in' }])
  expect(granted(now, { kind: 'remove old step', index: 7 }).old).toBe(now.old)
})

it('a path that names no field of it changes nothing', () => {
  for (const path of ['rival.mains', 'rival.steps.1.motorPulley', 'rival.steps.0.spindle', 'rival.power.x'])
    expect(editOld(state(), path, '1')).toBeNull()
})
