// The drive in rows: where its centres are from, the belt that is sold, who is pulled, and every step.
import { describe, expect, it } from 'vitest'
import { driveLines, driveRows } from '../../../sim/say/drive.ts'
import { type Changes, job } from '../../jobs.ts'
import { METRIC, US, visible } from './units.ts'

const PULLEYS = { 'belt.motorPulley': '3 in', 'belt.machinePulley': '9 in', 'belt.centreDistance': null }
const TWO = { 'belt.jackshaftLarge': '6 in', 'belt.jackshaftSmall': '2 in' }
/** The value of each stage's row of this label. */
const said = (changes: Changes, label: string, units = US) =>
  driveRows(job({ ...PULLEYS, ...changes }), units).map(({ rows }) =>
    visible(rows.find((row) => row.label === label)?.value ?? '—'),
  )

describe('centres', () => {
  // 60 in round 3 and 9 in: b = 2 · 60 − 12 π, (b + √(b² − 8 · 6²))/8 = 20.35 in; 40 round 3 and 6: 12.85 (handbook approximation).
  it('as measured, from the belt, or the diameters together; each stage by itself', () => {
    const between = (changes: Changes) => said(changes, 'Between centres')
    expect(between({ 'belt.centreDistance': '20 in' })).toEqual(['20~in'])
    expect(between({ 'belt.length': '60 in' })).toEqual(['20.4~in (from the belt)'])
    expect(between({})).toEqual(['12~in (not measured: the diameters together)'])
    expect(between({ ...TWO, 'belt.jackshaftLength': '40 in', 'belt.centreDistance': '15 in' })).toEqual([
      '12.8~in (from the belt)',
      '15~in',
    ])
  })
})

describe('the belt that is sold nearest', () => {
  it('is this one where the length is one that is sold, else another with its centres; none goes round a wheel', () => {
    const nearest = (changes: Changes) => said(changes, 'Sold nearest')
    expect(nearest({ 'belt.length': '60 in' })).toEqual(['60~in, this one'])
    expect(nearest({ 'belt.length': '60.4 in' })).toEqual(['60~in, at 20.35~in between centres'])
    expect(nearest({ 'belt.machinePulley': '3 m' })).toEqual(['none goes round'])
  })
})

describe('the pull on the shafts', () => {
  const belt = { 'belt.section': 'A', 'belt.carries': '20 N·m' }
  it('names the shafts of each stage', () => {
    const labels = (changes: Changes) =>
      driveRows(job({ ...PULLEYS, ...belt, ...changes }), METRIC).flatMap(({ rows }) =>
        rows.flatMap(({ label }) => (label.startsWith('Pulls') ? [label] : [])),
      )
    expect(labels({})).toEqual(['Pulls motor and machine shaft'])
    expect(labels(TWO)).toEqual(['Pulls motor shaft and jackshaft', 'Pulls jackshaft and machine shaft'])
  })

  it('standing still all day is that of the belt as fitted, at work as at rest', () => {
    const rest = { 'duty.phases': [{ name: 'rest', lasts: '1 h' }], 'duty.repeatFor': '1 h' }
    const [pull] = said({ ...belt, ...rest }, 'Pulls motor and machine shaft', METRIC)
    const [, still, working] = /^(\d+~N) at rest, up to (\d+~N) at work$/.exec(pull)!
    expect(working).toBe(still)
    const [busy] = said(belt, 'Pulls motor and machine shaft', METRIC)
    expect(busy.startsWith(`${still} at rest`)).toBe(true)
    expect(busy).not.toBe(pull)
  })

  it('of a belt that is not said, or of teeth, is not known, and why stands once, at the last stage', () => {
    const why = (changes: Changes) => said(changes, 'Pull on the shafts')
    expect(why({})).toEqual(['say which belt it is'])
    expect(why(TWO)).toEqual(['—', 'say which belt it is'])
    expect(why({ 'belt.section': 'timing' })).toEqual([
      'follows from how it is fitted, and what it carries is not known',
    ])
  })
})

describe('steps', () => {
  const steps = {
    'belt.length': '60 in',
    'belt.steps': [
      { driving: '4 in', driven: '8 in' },
      { driving: '2 in', driven: '6 in' },
      { driving: '5 in', driven: '12 in' },
    ],
    'belt.step': '2',
  }
  it('each with its ratio, and what one belt makes of it', () => {
    const lines = driveLines(job({ ...PULLEYS, ...steps }), US).map(visible)
    expect(lines.slice(lines.indexOf('  Steps'))).toMatchInlineSnapshot(`
      [
        "  Steps",
        "  Step 1               3~in to 9~in, 3~:~1; the belt fits",
        "  Step 2               4~in to 8~in, 2~:~1; in use",
        "  Step 3               2~in to 6~in, 3~:~1; wants a belt 10~% shorter",
        "  Step 4               5~in to 12~in, 2.4~:~1; wants a belt 14~% longer",
      ]
    `)
  })
  it('after a jackshaft, where the steps are; and no such rows without steps', () => {
    const lines = driveLines(job({ ...PULLEYS, ...TWO, ...steps, 'belt.length': null }), US).map(visible)
    expect(lines.at(-4)).toMatch(/^ {2}Step 1 +2~in to 9~in after the jackshaft, 9~:~1; wants a belt/)
    expect(driveLines(job(PULLEYS), US).join()).not.toContain('Step')
  })
})
