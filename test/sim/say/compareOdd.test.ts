// The comparison where it is not as usual: a speed out of reach, nothing to give, no rest, a DC motor, other mains.
import { describe, expect, it } from 'vitest'
import { against, type Comparison, compare, type Met } from '../../../sim/rival/compare.ts'
import {
  compareSentence,
  dutyWords,
  nearestMet,
  platesWords,
  stepWords,
  verdictWords,
} from '../../../sim/say/compare.ts'
import { compareReport } from '../../../sim/say/compareReport.ts'
import { compareRows } from '../../../sim/say/compareRows.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { type Changes, job } from '../../jobs.ts'
import { direct, induction } from '../rival/old.ts'
import { METRIC } from './units.ts'

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
const AC = { power: '3/4 hp', speed: '1725 rpm', steps: [{ spindle: '350 rpm' }, { spindle: '900 rpm' }] }
const DC = { power: '1 hp', speed: '2500 rpm', volts: '90 V', steps: [{ spindle: '350 rpm' }] }
const mill = job({})
const usual = compare(mill, induction(AC))
const rpm = (speed: number) => fromUnit(speed, 'rpm')

describe('which of its speeds', () => {
  it('the nearest to the heaviest step, wherever it stands; the first where nothing is cut', () => {
    const at = (asked: number | null): number =>
      Math.round(
        nearestMet({ ...usual, asked: asked === null ? null : { ...usual.asked!, speed: rpm(asked) } })
          .speed / rpm(1),
      )
    expect([at(300), at(1000), at(null)]).toEqual([350, 900, 350])
  })

  it('each as a step of its own; one out of reach says so, in every sentence', () => {
    const step = (top: number) => plain(stepWords({ ...usual, top: rpm(top) }, 1, METRIC))
    expect(step(1000)).toMatch(
      /^Step 2, 900 rpm: the old one held [\d.]+ N·m all day; this one holds [\d.]+ with the fan and [\d.]+ without\.$/,
    )
    expect(step(800)).toMatch(/all day; this one does not turn so fast\.$/)
    expect(plain(verdictWords(usual.met[1], mill, rpm(800), METRIC))).toBe(
      'This one does not reach 900 rpm through its belt: its top is 800 rpm.',
    )
    expect(plain(compareSentence({ ...usual, top: rpm(300) }, METRIC))).toMatch(/its top is 300 rpm\.$/)
  })
})

it('nothing to give on either side is said, and no verdict stands without its claims', () => {
  const claims = (motor: number, old: number): Met['against'] => {
    const one = against(motor, old)
    return { allDay: one, minutes: one, seconds: one, start: one }
  }
  const said = (motor: number, old: number) =>
    plain(verdictWords({ ...usual.met[0], against: claims(motor, old) }, mill, usual.top, METRIC))
  const all = (what: string) =>
    `all day (${what}), for minutes (${what}), for seconds (${what}) and from standstill (${what}).`
  expect(said(3, 0)).toBe(
    `At 350 rpm this motor, without a fan, is stronger ${all('where the old one had nothing')}`,
  )
  expect(said(0, 3)).toBe(`At 350 rpm this motor, without a fan, is weaker ${all('it has nothing')}`)
  expect(said(3, 3)).toBe(
    'At 350 rpm this motor, without a fan, is as strong all day, for minutes, for seconds and from standstill.',
  )
})

describe('the duty', () => {
  const step = { lasts: '5 min', speed: '350 rpm', torque: '4 N·m' }
  const words = (phases: readonly Changes[]) =>
    plain(dutyWords(compare(job({ 'duty.phases': phases }), induction(AC)), METRIC))
  it('without a rest, and of a step without a name; its heaviest step, wherever that stands', () => {
    expect(words([{ ...step, name: '' }])).toBe('The cut averages 4.0 N·m.')
    const light = { ...step, name: 'trimming', torque: '1 N·m' }
    expect(words([light, { ...step, name: 'sawing' }])).toBe('Sawing averages 4.0 N·m, 5 min in 10 min.')
    expect(words([{ ...step, name: 'sawing' }, light])).toBe('Sawing averages 4.0 N·m, 5 min in 10 min.')
  })
  it('that cuts nothing asks nothing, and has no row', () => {
    const idle = job({ 'duty.phases': [{ name: 'idle', lasts: '5 min', speed: '350 rpm' }] })
    const comparison = compare(idle, direct(DC))
    expect(comparison.asked).toBeNull()
    expect(dutyWords(comparison, METRIC)).toBe('')
    const labels = compareRows(comparison.met[0], idle, comparison.rival, METRIC).map(({ label }) => label)
    expect(labels).not.toContain('For this duty')
    expect(
      compareRows(compare(mill, direct(DC)).met[0], mill, direct(DC), METRIC).map(({ label }) => label),
    ).toContain('For this duty')
  })
})

describe('the plates', () => {
  const plates = (changes: Changes, old = AC) => {
    const one = job(changes)
    return plain(platesWords(compare(one, induction(old)), one, METRIC))
  }
  it('of one speed need no gearing; of two, the faster comes to more, whosever it is', () => {
    expect(plates({ 'plate.power': '1 hp', 'plate.speed': '1725 rpm' })).toBe(
      'By the plates this motor’s 746 W at 1 725 rpm is 4.1 N·m at its shaft, the old one’s 559 W at 1 725 rpm is 3.1 N·m.',
    )
    expect(plates({ 'plate.power': '1 hp', 'plate.speed': '900 rpm' })).toMatch(
      /Geared 1\.9 : 1 to the same 900 rpm, the old one comes to 5\.9 N·m\.$/,
    )
  })
  it('that say too little are not compared, and the report has no such line', () => {
    expect(plates({ 'plate.power': null })).toBe('')
    const bare = job({ 'plate.power': null })
    expect(compareReport('Mill', compare(bare, induction(AC)), bare, METRIC)).not.toContain('By the plates')
    expect(compareReport('Mill', usual, mill, METRIC)).toContain('By the plates')
  })
})

describe('what stands behind the old motor’s torques', () => {
  const report = (comparison: Comparison, one = mill) => plain(compareReport('Mill', comparison, one, METRIC))
  it('a standard for 60 Hz, and that it is borrowed on 50', () => {
    expect(report(usual)).toContain('the least that the standard allows.')
    expect(report(compare(mill, induction({ ...AC, speed: '1425 rpm' })))).toContain(
      'the least that the standard allows, though on 60 Hz.',
    )
  })
  it('a DC motor’s its plate; drag is spoken of where there is some', () => {
    const still = job({ 'machine.drag': '0 N·m' })
    const text = report(compare(still, direct(DC)), still)
    expect(text).toContain('The old motor’s heat is estimated from its plate, as this one’s is.')
    expect(text).not.toMatch(/standard|service factor|own drag/)
    expect(report(usual)).toMatch(/own drag, 0\.8 N·m, is taken off both\./)
  })
  it('with a fan running, the row of the other cooling says there is none', () => {
    const fanned = job({ 'heat.cooling': 'shaft fan' })
    const rows = compareRows(compare(fanned, induction(AC)).met[0], fanned, induction(AC), METRIC)
    expect(rows.map(({ label }) => label).slice(0, 3)).toEqual([
      'All day',
      '  with a blower',
      '  without a fan',
    ])
  })
})
