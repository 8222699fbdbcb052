// What is said of a supply that no run can judge: AC, and a bare bridge. No number of a controller they have not got.
import { describe, expect, it } from 'vitest'
import { bridgeIdle } from '../../../sim/advise/bridge.ts'
import { judge } from '../../../sim/judge.ts'
import { ratio } from '../../../sim/parts/belt.ts'
import { toUnit } from '../../../sim/quantity.ts'
import { answerOf } from '../../../sim/say/answer.ts'
import { jobReport } from '../../../sim/say/report.ts'
import { type Changes, job, traceOf } from '../../jobs.ts'
import { METRIC, US, visible } from './units.ts'

const reported = (changes: Changes) => {
  const given = job({ 'duty.repeatFor': '26 min', ...changes })
  const trace = traceOf(given)
  const figures = judge(given, trace)
  const text = (units = US) =>
    visible(jobReport('x', { job: given, trace, figures, notes: [], check: null }, units))
  return { given, figures, text }
}

describe('AC', () => {
  const { given, figures, text } = reported({ 'supply.kind': 'ac' })

  it('turns nothing, whatever the pulleys; no amps, no degrees, no reduction are told', () => {
    expect(answerOf(given, figures, US)).toMatchObject({
      verdict: 'No',
      sentence: expect.stringMatching(/^No\. On AC/),
    })
    for (const report of [text(), text(METRIC)]) {
      expect(report).not.toMatch(/\d[~ ]A\b|More reduction|Hottest frame|25~°C|0~rpm/)
      expect(report).toContain('0:00  it hums, and does not turn')
    }
  })
})

describe('a bare bridge', () => {
  const { given, figures, text } = reported({ 'supply.kind': 'bare bridge', 'supply.formFactor': null })

  it('is no, with the speed it runs up to at the spindle by the ratio', () => {
    const { verdict, sentence, support } = answerOf(given, figures, US)
    const rpm = toUnit(bridgeIdle(given.parts) / ratio(given.parts.belt), 'rpm')
    expect(verdict).toBe('No')
    const [told] = /up to ([\d\u202f\u00a0]+?).rpm/.exec(sentence)?.slice(1) ?? []
    expect(Number(told.replaceAll(/\D/g, ''))).toBeCloseTo(Number(rpm.toPrecision(3)), 9)
    expect(support).toContain('neither knob nor current limit')
  })

  it('is told no speed that was asked of it and no limit that was reached', () => {
    expect(text()).not.toMatch(/current limit reached|rpm asked|the 350 asked|controller’s limit/)
    expect(text()).toContain('nothing limits it')
    const ruled = reported({ 'supply.kind': 'phase control with choke', 'supply.formFactor': null })
    expect(ruled.text()).toMatch(/the 350 asked/)
  })
})
