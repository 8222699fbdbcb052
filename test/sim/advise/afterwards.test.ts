// What is said once cures were run: nothing where all is well, the price of less reduction, what to measure, and in which order.
import { expect, it } from 'vitest'
import { ALL_WELL, adviceWords } from '../../../sim/say/advice.ts'
import { adviceLines } from '../../../sim/say/adviceReport.ts'
import { adviceOf, wellMade } from './cases.ts'

const SHORT = { 'duty.repeatFor': '26 min' }
const US = { system: 'us', temperature: '°C' } as const
const names = (...given: Parameters<typeof adviceOf>) => adviceOf(...given).findings.map(({ name }) => name)

it('is quiet where all is well', () => {
  const advice = adviceOf(
    wellMade('appleMill', { ...SHORT, 'belt.machinePulley': '14 in', 'supply.earth': 'yes' }),
    true,
  )
  expect(advice.findings).toEqual([])
  expect(adviceLines(adviceWords(advice, US))).toEqual([`  ${ALL_WELL}`])
})

it('what hurts people or may stands first; what another cure makes an end of stands after it and offers no second cure but for hands', () => {
  const { findings } = adviceOf(wellMade('appleMill', { 'heat.cooling': 'none', 'duty.repeatFor': '90 min' }))
  const [restarts, earth, fan, late] = findings
  expect([fan.name, fan.severity, fan.after]).toEqual(['fanMissing', 'damage', null])
  expect([restarts.name, restarts.severity, restarts.after]).toEqual(['restarts', 'danger', 'fanMissing'])
  expect([earth.name, earth.severity]).toEqual(['earthUnknown', 'unknown'])
  expect(restarts.cures.map(({ changes }) => changes)).toEqual([{ 'cutoff.leads': 'no-volt release' }])
  expect(restarts.cures[0].outcome!.openFor).toBeNull()
  expect([late.name, late.after, late.cures]).toEqual(['lateCutoff', 'fanMissing', []])
})

it('less reduction is warned of where the drive is in trouble and it would be worse: amps squared, by hand', () => {
  const hot = { 'heat.cooling': 'none', 'duty.repeatFor': '1 h' }
  const found = adviceOf(wellMade('appleMill', hot)).findings.find(({ name }) => name === 'lessReduction')!
  const { ratio, amps, now, heat, opens, opensNow } = found.evidence
  expect(ratio.value).toBeCloseTo(2, 9)
  expect(heat.value).toBeCloseTo((amps.value / now.value) ** 2, 12)
  expect(opens.value).toBeLessThan(opensNow.value)
  expect(names(wellMade('appleMill', SHORT))).not.toContain('lessReduction')
})

it('what to measure is said where a guess decides, and not where it is measured or the answer is clear', () => {
  const near = wellMade('appleMill', { 'heat.air': '35 °C', 'duty.repeatFor': '1 h' })
  expect(names(near, true)).toContain('doubt')
  expect(names(near)).not.toContain('doubt')
  expect(names(wellMade('appleMill', { ...SHORT, 'heat.cooling': 'blower' }), true)).not.toContain('doubt')
})

it('no cure pulls what follows from it over another danger', () => {
  const { findings } = adviceOf(
    wellMade('appleMill', {
      'plate.speed': '9000 rpm',
      'plate.mass': '3 kg',
      'cutoff.leads': 'not connected',
      'supply.earth': 'no',
      'duty.repeatFor': '26 min',
    }),
  )
  expect(findings.slice(0, 3).map(({ name }) => name)).toEqual(['notConnected', 'noEarth', 'horsepower'])
  const stalls = findings.find(({ name }) => name === 'stalls')!
  expect(stalls.after).toBe('horsepower')
})

it('no danger, and no earth that nobody knows of, is left out of the few that are told', () => {
  const { findings, ...rest } = adviceOf(
    wellMade('appleMill', {
      'heat.cooling': 'none',
      'duty.repeatFor': '90 min',
      'rotor.flywheel': '0.006 kg·m²',
      'bench.flywheelDiameter': '500 mm',
    }),
  )
  const told = adviceWords({ findings, ...rest }, US)
  const perilous = told.filter(({ severity }) => severity === 'danger' || severity === 'unknown')
  expect(perilous.length).toBe(3)
  const lines = adviceLines(told, 1).join('\n')
  for (const { headline } of perilous) expect(lines).toContain(headline)
  expect(lines).not.toContain(told[3].headline)
  expect(lines).toContain(`and ${told.length - 3} more;`)
})

it('a cure that is found leaves no motor too small', () => {
  expect(names(wellMade('appleMill', { ...SHORT, 'belt.machinePulley': '5 in' }))).not.toContain('tooSmall')
})
