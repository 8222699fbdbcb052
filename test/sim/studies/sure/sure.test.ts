// How sure: the same by seed and however it is cut into stretches; nothing doubtful is no doubt.
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { finish } from '../../../../sim/run.ts'
import type { Scenario } from '../../../../sim/scenario.ts'
import { sure, surePoints, type SureSpec, sureSpec } from '../../../../sim/studies/sure.ts'

const saw = JSON.parse(
  readFileSync(new URL('../../../../scenarios/bandSaw.json', import.meta.url), 'utf8'),
) as Scenario
const specOf = (options: Parameters<typeof sureSpec>[1]): SureSpec => {
  const spec = sureSpec(saw, options)
  if (!('study' in spec)) throw new Error('refused')
  return spec
}

it('is the same in one stretch and in many, another by another seed', () => {
  const spec = specOf({ samples: 12 })
  const whole = finish(surePoints.points(spec, 0, 13))
  const parts = [0, 1, 5, 6].map((from, n) => finish(surePoints.points(spec, from, [1, 5, 6, 13][n])))
  expect(parts.flat()).toEqual(whole)
  expect(finish(surePoints.points(specOf({ samples: 12, seed: 2 }), 1, 13))).not.toEqual(whole.slice(1))
})

it('shares add up, dots are in order, and the seed’s band holds the values as given', () => {
  const found = finish(sure(specOf({ samples: 60 })))!
  expect(Object.values(found.fates).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9)
  const times = found.dots.map(({ t }) => t ?? Infinity)
  expect(times).toHaveLength(40)
  expect(times.toSorted((a, b) => a - b)).toEqual(times)
  expect(found.given.fate).toBe('opens')
  expect(found.t.low!).toBeLessThan(found.given.t!)
  expect(found.t.high!).toBeGreaterThan(found.given.t!)
  expect(found.settling.some(({ gain }) => gain > 0.1)).toBe(true)
})

it('a plain draw comes to a like band', () => {
  const even = finish(sure(specOf({ samples: 120 })))!
  const plain = finish(sure(specOf({ samples: 240, draw: 'plain' })))!
  expect(even.t.mid! / plain.t.mid!).toBeGreaterThan(0.75)
  expect(even.t.mid! / plain.t.mid!).toBeLessThan(1.33)
})
