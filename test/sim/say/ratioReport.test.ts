// The ratio study as plain text: what stands in the table is what the study holds, and every kind of line has its words.
import { describe, expect, it } from 'vitest'
import { finish } from '../../../sim/run.ts'
import { percent, ratioText, told } from '../../../sim/say/number.ts'
import { windowSentence } from '../../../sim/say/ratio.ts'
import { ratioLines, shownPoints } from '../../../sim/say/ratioReport.ts'
import type { Units } from '../../../sim/say/units.ts'
import { type RatioStudy, ratioStudy } from '../../../sim/studies/ratio.ts'
import { DECIDED } from '../../../sim/studies/ratio/fits.ts'
import { type Changes, type Demo, demo, scenario } from '../../jobs.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

const COARSE = { points: 4, close: 0.03, proposals: 2 }
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
function studyOf(changes: Changes | Demo, options = COARSE): RatioStudy {
  const study = finish(ratioStudy(typeof changes === 'string' ? demo(changes) : scenario(changes), options))
  if (!study.ok) throw new Error(JSON.stringify(study.problems))
  return study
}
const lines = (study: RatioStudy, units: Units = US) => ratioLines('Title', study, units).map(plain)

describe('the saw, which needs two stages', () => {
  const saw = studyOf('bandSaw')
  it.each([US, METRIC, FAHRENHEIT])('table and sentences are the study’s, in %o', (units) => {
    const told_ = lines(saw, units)
    expect(told_.slice(0, 2)).toEqual(['Title', plain(windowSentence(saw, units))])
    const head = told_.findIndex((line) => line.startsWith('  Ratio '))
    const shown = shownPoints(saw)
    expect(shown).toContain(saw.present)
    for (const [n, point] of shown.entries()) {
      const row = told_[head + 1 + n]
      for (const text of [
        ratioText(point.ratio),
        told(point.topSpeed, 'angular speed', units),
        told(point.hottestWindingC, 'temperature', units),
        point.sag === null ? '—' : percent(point.sag),
      ])
        expect(row).toContain(plain(text))
      const against =
        point.faults.length + point.beltFaults.filter(({ kind }) => DECIDED.includes(kind)).length
      expect(/ works$/.test(row), row).toBe(against === 0)
    }
    const stages = told_.slice(told_.indexOf('Two stages through a jackshaft') + 1)
    expect(stages.length).toBeGreaterThan(0)
    expect(stages[0]).toMatch(
      /^ {2}\S.* to .*, then .* to .*: [\d.]+ : 1; hottest winding .*; (one|\d+) pulleys? to buy$/,
    )
    expect(told_.join('\n')).not.toMatch(/NaN|undefined|Infinity|null/)
  })
})

it('steps of the pulleys, each with what becomes of the job on it', () => {
  const study = studyOf({
    'heat.cooling': 'shaft fan',
    'belt.steps': [{ driving: '1.5 in', driven: '9 in' }],
  })
  const told_ = lines(study)
  const steps = told_.slice(told_.indexOf('Steps the pulleys have, run through the whole job') + 1)
  expect(steps[0]).toMatch(/^ {2}Step 1 \(in use\): 2\.5 in to 10 in, 4 : 1; /)
  expect(steps[1]).toMatch(/^ {2}Step 2: 1\.5 in to 9 in, 6 : 1; /)
  for (const [n, { trial }] of study.steps.entries())
    expect(steps[n].includes('works; hottest winding'), steps[n]).toBe(trial.faults.length === 0)
})

it('a V-belt’s pair names its belt, its pull and what is to buy', () => {
  const told_ = lines(studyOf({ 'heat.cooling': 'shaft fan', 'belt.section': 'A' }))
  expect(told_).toContain('Pulleys that are sold, run through the whole job')
  expect(told_.join('\n')).toMatch(
    /\d in to \S+ in: [\d.]+ : 1, \S+ in belt at \S+ in between centres; hottest winding \d+ °C, sag \d+ %; pulls each shaft with [\d.]+ lbf; (nothing|one pulley|2 pulleys) to buy/,
  )
})

it('says so where nothing that is sold would do', () => {
  const hopeless = studyOf({ 'duty.phases.2.torque': '60 lbf·ft' }, { ...COARSE, proposals: 0 })
  expect(lines(hopeless).at(-1)).toBe('No pulleys that are sold do the job.')
})

it('toothed pulleys come by teeth', () => {
  const toothed = studyOf({ 'belt.section': 'timing' }, { ...COARSE, proposals: 0 })
  expect(lines(toothed)).toContain('Toothed pulleys come by teeth: take the ones nearest to these diameters.')
})
