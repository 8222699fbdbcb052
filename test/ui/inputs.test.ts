// Edits go where they should: the job while it is as found, else the chosen variant alone, and only where they differ.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { inputAt } from '../../sim/scenario.ts'
import { changeCut } from '../../ui/change/cuts.ts'
import { asked, changeSurge, edit } from '../../ui/change/inputs.ts'
import { addStep, removeStep } from '../../ui/change/steps.ts'
import { choose } from '../../ui/change/variants.ts'
import { state } from './demo.ts'

const textAt = (scenario: unknown, path: string) => inputAt(scenario, path)?.text

it('an edit of the job as found is every variant’s, and a value of its own stays', () => {
  const before = state()
  const after = edit(before, { 'belt.motorPulley': '3 in' })
  expect(textAt(after.scenario, 'belt.motorPulley')).toBe('3 in')
  expect(after.variants).toEqual(before.variants)
  expect(textAt(before.scenario, 'belt.motorPulley')).toBe('2.5 in')
})

it('an edit of a variant is that variant’s alone, and goes again when it says what is there anyway', () => {
  const chosen = choose(state(), 'variant 1')
  const edited = edit(chosen, { 'belt.machinePulley': '12 in' })
  expect(edited.scenario).toBe(chosen.scenario)
  expect(edited.variants[0].changes).toEqual({ 'heat.cooling': 'shaft fan', 'belt.machinePulley': '12 in' })
  expect(edited.variants[1]).toBe(chosen.variants[1])
  expect(edit(edited, { 'belt.machinePulley': '10 in' }).variants[0].changes).toEqual({
    'heat.cooling': 'shaft fan',
  })
})

it('the text that is there already changes nothing', () => {
  const now = state()
  expect(edit(now, { 'belt.machinePulley': '10 in' })).toBe(now)
})

it('an emptied field returns to its usual value', () => {
  const after = edit(state(), { 'controller.ramp': null })
  expect(inputAt(after.scenario, 'controller.ramp')).toMatchObject({ text: '900 rpm/s', usual: true })
})

it('another kind of cut keeps the torque at the asked speed', () => {
  // 3.5 lbf·ft = 4.745 N·m at 350 rpm = 36.65 rad/s: 174 W, by hand.
  const power = changeCut(state(), 2, 'power')
  expect(textAt(power.scenario, 'duty.phases.2.torque')).toBe('')
  expect(textAt(power.scenario, 'duty.phases.2.power')).toBe('169 W')
  const back = changeCut(power, 2, 'fanTorque')
  expect(textAt(back.scenario, 'duty.phases.2.fanTorque')).toBe('4.61 N·m')
  expect(read(back.scenario).ok).toBe(true)
  expect(textAt(changeCut(back, 2, 'none').scenario, 'duty.phases.2.fanTorque')).toBe('')
})

it('surges come and go, on the job and on a variant, and both read', () => {
  for (const id of ['as found', 'variant 1']) {
    const off = changeSurge(choose(state(), id), 2, false)
    expect(asked(off).duty.phases[2].surge).toBeUndefined()
    expect(read(asked(off)).ok).toBe(true)
    const on = changeSurge(off, 2, true)
    expect(asked(on).duty.phases[2].surge).toBeDefined()
    expect(read(asked(on)).ok).toBe(true)
  }
})

it('steps are added and removed for every variant, and changes follow the step they belong to', () => {
  const chosen = edit(choose(state(), 'variant 1'), {
    'duty.phases.2.torque': '2 N·m',
    'duty.phases.0.lasts': '3 min',
  })
  const fewer = removeStep(chosen, 1)
  expect(fewer.scenario.duty.phases).toHaveLength(2)
  expect(fewer.variants[0].changes).toMatchObject({
    'duty.phases.1.torque': '2 N·m',
    'duty.phases.0.lasts': '3 min',
  })
  expect(fewer.variants[0].changes['duty.phases.2.torque']).toBeUndefined()
  expect(removeStep(chosen, 2).variants[0].changes['duty.phases.2.torque']).toBeUndefined()
  const more = addStep(fewer)
  expect(more.scenario.duty.phases).toHaveLength(3)
  expect(read(more.scenario, more.variants[0]).ok).toBe(true)
})

it('the last step stays', () => {
  let now = state()
  for (let n = 0; n < 5; n++) now = removeStep(now, 0)
  expect(now.scenario.duty.phases).toHaveLength(1)
})
