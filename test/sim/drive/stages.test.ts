// What is told of each stage and step of a drive, at the input where it can be mended.
import { describe, expect, it } from 'vitest'
import { beltOf, ratio } from '../../../sim/parts/belt.ts'
import { read } from '../../../sim/read.ts'
import { type Changes, scenario } from '../../jobs.ts'
import { problemsOf } from '../problems.ts'

const PULLEYS = { 'belt.motorPulley': '3 in', 'belt.machinePulley': '9 in', 'belt.centreDistance': null }
const TWO = { ...PULLEYS, 'belt.jackshaftLarge': '6 in', 'belt.jackshaftSmall': '3 in', 'belt.section': 'A' }
const notes = (changes: Changes) => {
  const found = read(scenario(changes))
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  return found.notes
    .filter(({ path }) => path.startsWith('belt.'))
    .map(({ path, wrong, wouldDo }) => `${path}: ${wrong} ${wouldDo}`)
}
const pathsOf = (changes: Changes, words: string) =>
  notes(changes).flatMap((note) => (note.includes(words) ? [note.slice(0, note.indexOf(':'))] : []))

describe('a pulley too small for its belt', () => {
  const small = (changes: Changes) => pathsOf({ ...TWO, ...changes }, 'bends round')
  it.each<[string, Changes, readonly string[]]>([
    ['none', {}, []],
    ['the motor’s', { 'belt.motorPulley': '2 in' }, ['belt.motorPulley']],
    ['driven by the motor', { 'belt.jackshaftLarge': '2 in' }, ['belt.jackshaftLarge']],
    ['driving the machine', { 'belt.jackshaftSmall': '2 in' }, ['belt.jackshaftSmall']],
    ['the machine’s', { 'belt.machinePulley': '2 in' }, ['belt.machinePulley']],
  ])('%s', (_, changes, paths) => {
    expect(small(changes)).toEqual(paths)
  })
  it('is called driving or driven', () => {
    expect(notes({ ...TWO, 'belt.machinePulley': '2 in' }).join()).toContain(
      'The driven pulley, 50.8 mm (2 in)',
    )
    expect(notes({ ...TWO, 'belt.motorPulley': '2 in' }).join()).toContain(
      'The driving pulley, 50.8 mm (2 in)',
    )
  })
})

it('a first stage whose length and centres do not go together is told at its own length', () => {
  const odd = { 'belt.jackshaftLength': '40 in', 'belt.jackshaftCentres': '20 in' }
  expect(pathsOf({ ...TWO, ...odd }, 'is given')).toEqual(['belt.jackshaftLength'])
})

describe('where none is sold that goes round', () => {
  const HUGE = { 'belt.motorPulley': '2 m', 'belt.machinePulley': '2.5 m' }
  it('none is offered to measured shafts', () => {
    const odd = (changes: Changes) =>
      notes({ ...PULLEYS, 'belt.length': '60 in', 'belt.centreDistance': '12 in', ...changes }).join()
    expect(odd({})).toMatch(/left where they are\. Of those that are sold .* fits\. Or leave/)
    expect(odd({ ...HUGE, 'belt.length': '15 m', 'belt.centreDistance': '3 m' })).toMatch(
      /left where they are\. Or leave/,
    )
  })
  it('nor to a belt that is too short', () => {
    const [{ wouldDo, offers }] = problemsOf({ ...PULLEYS, ...HUGE, 'belt.length': '4 m' })
    expect(wouldDo).toBe('Smaller pulleys, or leave the length open.')
    expect(offers).toBeUndefined()
  })
})

it('the step that is furthest off is told, longer or shorter', () => {
  const worst = (...steps: readonly (readonly [string, string])[]) =>
    notes({
      ...PULLEYS,
      'belt.length': '60 in',
      'belt.steps': steps.map(([driving, driven]) => ({ driving, driven })),
    }).join()
  expect(worst(['4 in', '8 in'], ['5 in', '6 in'])).toMatch(/on step 3 it would have to be [\d.]+ % shorter/)
  expect(worst(['5 in', '10 in'], ['4 in', '8 in'])).toMatch(/on step 2 it would have to be [\d.]+ % longer/)
})

it('a belt as written lies on the step in use; on one that is not there, on the first; one that cannot be read is none', () => {
  const belt = { motorPulley: '3 in', machinePulley: '9 in', steps: [{ driving: '4 in', driven: '8 in' }] }
  const on = (step: string) => ratio(beltOf({ ...belt, step })!)
  expect([on('1'), on('2'), on('7')].map((each) => Number(each.toFixed(9)))).toEqual([3, 2, 3])
  expect(beltOf({ motorPulley: '3 in' })).toBeNull()
})
