// The gallery's data: frozen and thawed it is the same, thinned it draws the same, and it still is what the studies make today.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { carryOut } from '../../sim/carryOut.ts'
import { read } from '../../sim/read.ts'
import { againstOld } from '../../sim/rival/picture.ts'
import { finish } from '../../sim/run.ts'
import { limitsStudy } from '../../sim/studies/limits.ts'
import { heatMap, mapSpec } from '../../sim/studies/map.ts'
import { points } from '../../sim/studies/points.ts'
import { ratioStudy } from '../../sim/studies/ratio.ts'
import { sureOf, sureSpec } from '../../sim/studies/sure.ts'
import { CHANNELS, type Trace, valueAt } from '../../sim/trace.ts'
import { freeze, thaw } from '../../ui/gallery/frozen.ts'
import { type FrozenJob, type FrozenStudies, MADE } from '../../ui/gallery/made.ts'
import { thin } from '../../ui/gallery/thin.ts'
import { root } from '../house/tree.ts'
import { example } from './demo.ts'

const data = (name: string) =>
  thaw(JSON.parse(readFileSync(join(root, `ui/gallery/data/${name}.json`), 'utf8')))

it('what is frozen thaws to the same, to six digits', () => {
  const whole = {
    ...{ never: Infinity, below: -Infinity, none: Number.NaN, third: 1 / 3, big: 123456789, gone: undefined },
    column: Float64Array.of(0, 0.1 + 0.2, Infinity),
    list: [{ number: 'seven', on: true }, null, { number: 1 }],
  }
  expect(thaw(JSON.parse(JSON.stringify(freeze(whole))))).toEqual({
    ...{ never: Infinity, below: -Infinity, none: Number.NaN, third: 0.333333, big: 123456789 },
    column: Float64Array.of(0, 0.3, Infinity),
    list: [{ number: 'seven', on: true }, null, { number: 1 }],
  })
})

/** Furthest a channel of one trace is from another at the other's rows, as a share of its range. Jumps are left out. */
function furthest(one: Trace, other: Trace): number {
  const { time, columns } = other
  return Math.max(
    ...CHANNELS.map((name) => {
      const column = columns[name]
      const range = Math.max(...column) - Math.min(...column) || 1
      return column.reduce((most, value, row) => {
        if (time[row] === time[row - 1] || time[row] === time[row + 1]) return most
        return Math.max(most, Math.abs(valueAt(one, name, time[row]) - value) / range)
      }, 0)
    }),
  )
}

it('a thinned run has a third of the rows and draws the same', () => {
  const reading = read(example('bandSaw'))
  if (!reading.ok) throw new Error('the band saw reads')
  const { trace } = finish(carryOut(reading.job, { direct: true }))
  const thinned = thin(trace)
  expect(thinned.time.length).toBeLessThan(trace.time.length / 3)
  expect(furthest(thinned, trace)).toBeLessThan(0.02)
  expect(
    furthest({ ...thinned, columns: { ...thinned.columns, speed: thinned.columns.load } }, trace),
  ).toBeGreaterThan(0.02)
  expect(thinned.time.at(-1)).toBe(trace.time.at(-1))
})

/** Names of a record and, two rooms deep, of what it holds; null and empty lists may stand for anything. */
function shape(value: unknown, deep = 2): unknown {
  if (Array.isArray(value)) return value.length === 0 ? null : [shape(value[0], deep)]
  if (value === null || typeof value !== 'object' || value instanceof Float64Array) return typeof value
  if (deep === 0) return 'object'
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, each]) =>
      each === undefined ? [] : [[name, shape(each, deep - 1)]],
    ),
  )
}
const alike = (one: unknown, other: unknown): boolean => {
  if (one === null || other === null || one === 'object' || other === 'object') return true
  if (Array.isArray(one) && Array.isArray(other)) return alike(one[0], other[0])
  if (typeof one !== 'object' || typeof other !== 'object') return typeof one === typeof other
  const [a, b] = [one, other] as Record<string, unknown>[]
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])]
  return names.every((name) => name in a && name in b && alike(a[name], b[name]))
}

it('the frozen data are of the kind that runs and studies make today: else npm run gallery:freeze', () => {
  for (const name of Object.keys(MADE)) {
    const { scenario, outcomes } = data(name) as FrozenJob
    const reading = read(scenario)
    expect(reading.ok, name).toBe(true)
    for (const { trace } of outcomes) expect(trace.time.length, name).toBeGreaterThan(100)
  }
  const saw = example('bandSaw')
  const reading = read(saw)
  if (!reading.ok) throw new Error('the band saw reads')
  const { job } = reading
  const { trace, figures } = finish(carryOut(job, { direct: true }))
  const spec = mapSpec(job, { speeds: 3, torques: 3 })
  const sure = sureSpec(saw, { samples: 4 })
  if ('ok' in sure) throw new Error('the band saw reads')
  const frozen = data('studies') as FrozenStudies
  const pairs: [string, unknown, unknown][] = [
    ['outcome', { trace: { ...trace, checkpoints: [] }, figures }, (data('saw') as FrozenJob).outcomes[0]],
    ['map', heatMap(job, spec, finish(points<'map'>(spec))), frozen.map.saw],
    ['ratio', finish(ratioStudy(saw, { points: 3, proposals: 1 })), frozen.ratio.saw],
    ['against', finish(againstOld(job, null)), frozen.against.alone],
    ['limits', finish(limitsStudy(saw)), frozen.limits.mill],
    ['sure', sureOf(sure, finish(points<'sure'>(sure))), frozen.sure.mill],
  ]
  for (const [name, fresh, kept] of pairs) expect(alike(shape(fresh), shape(kept)), name).toBe(true)
  expect(alike(shape({ ...frozen.sure.mill, more: 1 }), shape(frozen.sure.mill))).toBe(false)
})
