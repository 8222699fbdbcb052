// How sure: the same by seed and however it is cut into stretches; what is measured tells no more. Bands: test/campaigns/sure.
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { finish } from '../../../../sim/run.ts'
import type { Scenario } from '../../../../sim/scenario.ts'
import { sure, sureOf, surePoints, type SureSpec, sureSpec } from '../../../../sim/studies/sure.ts'

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

it('what is to be measured stands in order of what its band leaves', () => {
  const found = finish(sure(specOf({ samples: 60 })))!
  const open = found.settling.filter(({ known }) => !known)
  expect(open.length).toBe(found.estimated)
  const gains = open.map(({ gain }) => gain)
  expect(gains.toSorted((a, b) => b - a)).toEqual(gains)
  expect(gains.every((gain) => gain >= 0 && gain <= 1)).toBe(true)
  // The best narrows the band that is shown, and narrows it more than the last.
  const width = ({ low, high }: { low: number | null; high: number | null }) =>
    Math.log((high ?? 7200) / (low ?? 7200))
  expect(width(open[0])).toBeLessThan(width(open.at(-1)!))
  expect(width(open[0])).toBeLessThan(width(found.t))
})

/** Every quantity of a part of a job file with itself for bounds. */
function certain(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(certain)
  if (typeof part === 'string') return /^\d/.test(part) ? { value: part, low: part, high: part } : part
  if (typeof part !== 'object' || part === null) return part
  if ('value' in part) return certain((part as { value: unknown }).value)
  return Object.fromEntries(Object.entries(part).map(([key, each]) => [key, certain(each)]))
}

it('everything measured: every sample is the job as given, and nothing is left to measure', () => {
  const file = new URL('../../../given/appleMill.json', import.meta.url)
  const { format, name, plate, bench, variants, ...given } = JSON.parse(readFileSync(file, 'utf8'))
  const parts = certain({
    ...given,
    heat: { ...given.heat, stir: '0.2', fanExponent: '0.75', frictionShare: '0.5', brushShare: '0.5' },
    cutoff: { ...given.cutoff, windingShare: '0.3', lag: '45 s' },
    duty: { ...given.duty, repeatFor: '40 min' },
  })
  const scenario = { format, name, ...(parts as object) } as Scenario
  const spec = sureSpec(scenario, { samples: 12 })
  if ('ok' in spec) throw new Error(JSON.stringify(spec.problems))
  const [as, ...points] = finish(surePoints.points(spec, 0, 13))
  for (const point of points) expect(point).toEqual(as)
  const found = sureOf(spec, [as, ...points])!
  expect(found.estimated).toBe(0)
  expect(found.settling.length).toBeGreaterThan(5)
  expect(found.settling.every(({ known, gain }) => known && gain === 0)).toBe(true)
  expect(found.windingC.low).toBe(found.windingC.high)
})
