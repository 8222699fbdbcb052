// Speed lost in the cut: by each kind of controller another cure, and what an amp costs; and advice of a variant, or of none.
import { describe, expect, it } from 'vitest'
import { advise, caseFor } from '../../../sim/advise.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish } from '../../../sim/run.ts'
import type { Changes } from '../../jobs.ts'
import { caseOf, drafts, wellMade } from './cases.ts'

const SHORT = { 'duty.repeatFor': '8 min' }
const sags = (changes: Changes) => {
  const scenario = wellMade('appleMill', { ...SHORT, 'machine.acceptedSag': '1 %', ...changes })
  const found = drafts(scenario).find(({ name }) => name === 'sags')!
  const one = caseOf(scenario)
  const { winding, supply } = one.job.parts
  // Copper by 235 + T, ferrite by 0.2 % a kelvin over 20 °C; the controller makes up for so much of the cold ohms.
  const warm = winding.resistance * ((235 + one.now.hottestWindingC) / 255) + supply.resistance
  const constant = winding.constant * (1 - 0.002 * (one.now.hottestFrameC - 20))
  const lost = (madeUp: number) => (warm - madeUp * winding.resistance) / constant / one.ratio
  return { levers: found.levers, perAmp: found.evidence.perAmp.value, lost }
}

describe('in a cut', () => {
  it('a fixed voltage makes up for nothing: compensation is tried first', () => {
    const { levers, perAmp, lost } = sags({ 'controller.holds': 'fixed voltage' })
    expect(levers).toEqual(['compensation', 'more reduction', 'most reduction', 'feedback'])
    expect(perAmp).toBeCloseTo(lost(0), 3)
  })
  it('compensation makes up for its share of the cold ohms', () => {
    const { levers, perAmp, lost } = sags({ 'controller.compensation': '50 %' })
    expect(levers).not.toContain('compensation')
    expect(perAmp).toBeCloseTo(lost(0.5), 3)
  })
  it('feedback loses nothing to ohms: what it cannot hold, it has not the volts or amps for', () => {
    const { perAmp } = sags({ 'controller.holds': 'speed feedback', 'controller.currentLimit': '11 A' })
    expect(perAmp).toBe(0)
  })
})

describe('whose job', () => {
  it('a variant’s, with its changes in it', () => {
    const variant = {
      name: 'slow',
      changes: { 'duty.phases.2.speed': '200 rpm', 'duty.phases.0.speed': '200 rpm' },
    }
    const one = finish(caseFor(wellMade('appleMill', SHORT), { variant }))
    expect('ok' in one ? null : one.fastest).toBeCloseTo(fromUnit(200, 'rpm'), 9)
  })
  it('what the reader refuses has no case and no advice', () => {
    const bad = wellMade('appleMill', { ...SHORT, 'supply.volts': 'many' })
    const refusal = { ok: false, problems: [{ path: 'supply.volts' }] }
    expect(finish(caseFor(bad))).toMatchObject(refusal)
    expect(finish(advise(bad))).toMatchObject(refusal)
  })
})

it('a step without a name goes by its number; a cut of power is at its greatest by its mean and its surge', () => {
  const step = { name: ' ', lasts: '5 min', speed: '350 rpm', power: '100 W' }
  const { work } = caseOf(wellMade('appleMill', { ...SHORT, 'duty.phases': [step] }))
  expect(work.name).toBe('step 1')
  const drag = work.mean - 100 / fromUnit(350, 'rpm')
  expect(work.peak).toBeCloseTo(100 / fromUnit(350, 'rpm') + drag, 9)
})
