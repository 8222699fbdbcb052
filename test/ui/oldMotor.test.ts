// The old motor's little form: its fields, their problems, and what it is read as; none of it goes into the job.
import { expect, it } from 'vitest'
import { editOld, NO_OLD_MOTOR, oldInput, oldProblem, readOld } from '../../ui/change/oldMotor.ts'
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
    motorPulley: '2 in',
    machinePulley: '10 in',
  })
  expect(read?.ok && read.rival.steps[0].ratio).toBeCloseTo(5, 12)
})

it('a problem stands at its field', () => {
  const wrong = readOld({ ...NO_OLD_MOTOR, power: '1 hp', speed: 'fast' })
  if (wrong?.ok !== false) throw new Error('it was read')
  expect(oldProblem(wrong.problems, 'speed')?.path).toBe('speed')
  expect(oldProblem(wrong.problems, 'power')).toBeNull()
  const half = readOld({ ...NO_OLD_MOTOR, power: '1 hp', speed: '1725 rpm', motorPulley: '2 in' })
  expect(half?.ok === false && oldProblem(half.problems, 'machinePulley')?.wrong).toContain('pulleys')
})

it('each field has its label', () => {
  expect(oldInput(NO_OLD_MOTOR, 'power')?.field.label).toBe('Power on its plate')
  expect(oldInput(NO_OLD_MOTOR, 'machinePulley')?.field.label).toBe('Old machine pulley')
})
