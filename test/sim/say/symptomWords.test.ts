// A symptom in words: whether the numbers explain it, with both of them, or what the job does not say.
import { describe, expect, it } from 'vitest'
import type { Evidence } from '../../../sim/advise/finding.ts'
import type { Symptom } from '../../../sim/advise/symptoms/names.ts'
import { suspectWords, verdictWords } from '../../../sim/say/symptoms.ts'
import { METRIC } from './units.ts'

const fact = (value: number, dimension: Evidence['dimension']): Evidence => ({ value, dimension, source: '' })
const said = (symptom: Symptom, explained: boolean | null, evidence: Readonly<Record<string, Evidence>>) =>
  verdictWords({ symptom, explained, evidence, suspects: [] }, METRIC).replaceAll('\u00a0', ' ')

describe('a belt that squeals', () => {
  const asked = fact(9, 'torque')
  it('carries so much and is asked for more or less; slips; or is not known', () => {
    expect(said('squeals', true, { carries: fact(6, 'torque'), asked })).toBe(
      'The load explains it: the belt carries 6.0 N·m at the spindle, and 9.0 N·m is asked.',
    )
    expect(said('squeals', false, { carries: fact(20, 'torque'), asked })).toMatch(
      /^A fault, not the load: the belt/,
    )
    expect(said('squeals', true, { asked })).toBe('The load explains it: it slips at 9.0 N·m.')
    expect(said('squeals', null, { asked })).toBe(
      'This job does not say: no belt is named, or none that slips; 9.0 N·m is asked of it.',
    )
  })
})

it('a spindle that bogs down has lost speed, where that is known; one that hums never had any', () => {
  const both = { most: fact(20, 'torque'), asked: fact(12, 'torque') }
  expect(said('bogs', false, { ...both, sag: fact(0.25, 'share') })).toBe(
    'A fault, not the load: 20.0 N·m is the most it can give at a standstill, and 12.0 N·m is asked; 25 % of the speed is lost.',
  )
  expect(said('bogs', false, both)).toMatch(/12\.0 N·m is asked\.$/)
  expect(said('hums', false, { ...both, sag: fact(0.25, 'share') })).toMatch(/12\.0 N·m is asked\.$/)
})

it('what trips: the cutoff after a time, or never; or the breaker where no cutoff does', () => {
  expect(said('trips', true, { opens: fact(1417, 'time') })).toBe(
    'The load explains it: by this job’s numbers the cutoff opens after 23 min 40 s.',
  )
  expect(said('trips', false, { switch: fact(90, 'temperature') })).toBe(
    'A fault, not the load: by this job’s numbers the cutoff gets to 90 °C and never opens.',
  )
  expect(
    said('trips', null, {
      outlet: fact(9, 'current'),
      breaker: fact(15, 'current'),
      winding: fact(101, 'temperature'),
    }),
  ).toMatch(
    /^This job does not say: its cutoff stops nothing; .* takes 9\.0 A at a breaker of 15\.0 A, and the winding gets to 101 °C\.$/,
  )
})

it('a suspect stands as found, as a part to look at, or as what the numbers do not show', () => {
  const standing = (finding: 'slips' | null, fault: boolean) =>
    suspectWords({ cause: 'tension', finding, fault, share: 0.5 }).standing
  expect([standing('slips', true), standing(null, true), standing(null, false)]).toEqual([
    'found in this job',
    'a part to look at',
    'not in this job’s numbers',
  ])
})
