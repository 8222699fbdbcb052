// The grid study: each cell is the job with both texts put in, judged as it would be alone.
import { describe, expect, it } from 'vitest'
import { figuresOf } from '../../../sim/carryOut.ts'
import { read } from '../../../sim/read.ts'
import { finish } from '../../../sim/run.ts'
import { FIGURE_NAMES, FIGURES } from '../../../sim/studies/figures.ts'
import { changesAt, type GridSpec, gridSpec } from '../../../sim/studies/grid.ts'
import { axisOf, spaced } from '../../../sim/studies/grid/axis.ts'
import { countOf, points, stretchesOf } from '../../../sim/studies/points.ts'
import { boundsOf } from '../../../sim/reading.ts'
import { inputAt, inputsOf, type Scenario } from '../../../sim/scenario.ts'
import { mayBeAxis } from '../../../sim/studies/grid/axis.ts'
import { scenario } from '../../jobs.ts'

const given = scenario({ 'duty.repeatFor': '40 min' })

const gridOf = (whole: Scenario, x: readonly [string, string], y: readonly [string, string]): GridSpec => {
  const [along, down] = [x, y].map(([path, range]) => axisOf(whole, path, range, 2))
  if ('wrong' in along || 'wrong' in down) throw new Error(JSON.stringify([along, down]))
  const spec = gridSpec(whole, undefined, along, down)
  if ('ok' in spec) throw new Error('refused')
  return spec
}

function grid(
  x: readonly [string, string | null, number?],
  y: readonly [string, string | null, number?],
): GridSpec {
  const [along, down] = [x, y].map(([path, range, count = 3]) => axisOf(given, path, range, count))
  if ('wrong' in along || 'wrong' in down) throw new Error(JSON.stringify([along, down]))
  const spec = gridSpec(given, undefined, along, down)
  if ('ok' in spec) throw new Error('refused')
  return spec
}

describe('a cell', () => {
  it('is the job with both texts put in', () => {
    const spec = grid(['belt.machinePulley', '8in..12in'], ['heat.cooling', 'none, blower'])
    expect(spec.x.texts).toEqual(['8 in', '10 in', '12 in'])
    const found = finish(points<'grid'>(spec))
    expect(found).toHaveLength(6)
    expect(changesAt(spec, 4)).toEqual({ 'belt.machinePulley': '10 in', 'heat.cooling': 'blower' })
    found.forEach((point, n) => {
      const reading = read(given, { name: 'tried', changes: changesAt(spec, n) })
      if (!reading.ok || !point.ok) throw new Error('refused')
      const alone = finish(figuresOf(reading.job))
      for (const name of FIGURE_NAMES)
        expect(point.figures[name], name).toBe(FIGURES[name].of(alone, reading.job))
    })
    const hottest = found.map((point) => (point.ok ? point.figures.hottestWinding! : 0))
    expect(hottest[3]).toBeLessThan(hottest[0])
    expect(hottest[2]).toBeLessThan(hottest[0])
  })

  it('is the same whatever stretch it is done in', () => {
    const spec = grid(['heat.air', '10..40 °C', 4], ['belt.machinePulley', '8in, 11in'])
    const whole = finish(points<'grid'>(spec))
    expect(countOf(spec)).toBe(8)
    const apart = stretchesOf(spec).flatMap(({ from, until }) => [
      ...finish(points<'grid'>(spec, from, until)),
    ])
    expect(apart).toEqual(whole)
    expect(finish(points<'grid'>(spec, 3, 5))).toEqual(whole.slice(3, 5))
  })

  it('says why there is no job, and what is worse than its figures', () => {
    const spec = grid(['cutoff.reclosesAt', '60..140 °C', 2], ['belt.machinePulley', '1in, 10in'])
    const found = finish(points<'grid'>(spec))
    expect(found.map(({ ok }) => ok)).toEqual([true, false, true, false])
    expect(found[1]).toMatchObject({ ok: false, problem: { path: 'cutoff.reclosesAt' } })
    expect(found[0]).toMatchObject({ trouble: 'stalls' })
    expect(found[2]).toMatchObject({ trouble: null })
  })

  it('burnt is told for what it is', () => {
    const bare = scenario({
      'cutoff.fitted': 'none',
      'controller.currentLimit': '40 A',
      'duty.phases': [{ name: 'cut', lasts: '1 h', speed: '350 rpm', torque: '1 N·m' }],
      'duty.repeatFor': '1 h',
    })
    const spec = gridOf(bare, ['duty.phases.0.torque', '1 N·m, 40 N·m'], ['heat.air', '10 °C, 20 °C'])
    const [whole, hot] = finish(points<'grid'>(spec))
    expect(whole).toMatchObject({ trouble: null })
    expect(hot).toMatchObject({ trouble: 'burnt' })
  })

  it('of a job that rests nothing has a share of what is taken, and no speed is held', () => {
    const rest = scenario({ 'duty.phases': [{ name: 'rest', lasts: '1 min' }], 'duty.repeatFor': '1 min' })
    const [cold] = finish(
      points<'grid'>(gridOf(rest, ['heat.air', '10 °C, 20 °C'], ['duty.repeatFor', '1 min, 2 min'])),
    )
    expect(cold.ok && cold.figures).toMatchObject({
      energyTaken: 0,
      efficiency: null,
      slowest: null,
      sag: null,
    })
  })

  it('tells its progress in points, forwards', () => {
    const spec = grid(['heat.air', '10..40 °C', 2], ['belt.machinePulley', '8in, 11in'])
    const told = [...points<'grid'>(spec)]
    expect(told.every(({ of }) => of === 4)).toBe(true)
    const done = told.map(({ t }) => t)
    expect(done).toEqual(done.toSorted((a, b) => a - b))
    expect(done.at(-1)).toBe(4)
  })
})

describe('an axis', () => {
  const wrong = (path: string, range: string | null, count = 3) => {
    const axis = axisOf(given, path, range, count)
    if (!('wrong' in axis)) throw new Error('taken')
    return `${axis.wrong} ${axis.wouldDo}`
  }

  it('takes a range with its unit once or twice, a list, or all words of a choice', () => {
    const texts = (path: string, range: string | null, count = 3) => {
      const axis = axisOf(given, path, range, count)
      return 'texts' in axis ? axis.texts : axis
    }
    expect(texts('heat.air', '10..40degC', 4)).toEqual(['10 °C', '20 °C', '30 °C', '40 °C'])
    expect(texts('heat.air', '50 °F .. 30 °C', 2)).toEqual(['10 °C', '30 °C'])
    expect(texts('duty.phases.0.lasts', '30 s, 1 min')).toEqual(['30 s', '1 min'])
    expect(texts('heat.cooling', null)).toHaveLength(5)
    expect(texts('heat.cooling', 'none, blower')).toEqual(['none', 'blower'])
  })

  it('refuses what makes none, with what would do', () => {
    expect(wrong('belt.machinPulley', '8in..9in')).toContain('Did you mean belt.machinePulley?')
    expect(wrong('name', 'a, b')).toContain('No input')
    expect(wrong('duty.phases.77.lasts', '1 s..2 s')).toContain('No input')
    expect(wrong('heat.air', null)).toContain('range')
    expect(wrong('heat.air', '40..10 °C')).toContain('does not rise')
    expect(wrong('heat.air', '10 in..40 in')).toContain('temperature')
    expect(wrong('heat.air', '10..400 °C')).toContain('°C')
    expect(wrong('heat.air', '20 °C')).toBe('1 value makes no axis. From 2 to 60.')
    expect(wrong('heat.air', '0..40 °C', 61)).toBe('61 values make no axis. From 2 to 60.')
    expect(wrong('heat.air', '0..20..40 °C')).toMatch(
      /^"0\.\.20\.\.40 °C" is no range\. A range such as -30 °C\.\.70 °C, or/,
    )
    expect(wrong('heat.air', 'cold..40 °C')).toMatch(/^"cold" does not begin with a number\./)
    expect(wrong('heat.cooling', ', ,')).toBe('0 values make no axis. From 2 to 60.')
    expect(wrong('heat.colling', 'none, blower')).toContain('Did you mean heat.cooling?')
    expect(wrong('heat.cooling', 'none, breeze')).toContain('breeze')
  })

  it('writes its values as short as tells them apart', () => {
    expect(spaced(0.2, 0.4, 4, 'm')).toEqual(['0.2 m', '0.267 m', '0.333 m', '0.4 m'])
    expect(new Set(spaced(1000, 1000.3, 4, 'N·m')).size).toBe(4)
  })

  it('may be any number or choice of the job: each reads back at both ends of its range', () => {
    const inputs = inputsOf(given).filter(mayBeAxis)
    expect(inputs.length).toBeGreaterThan(40)
    for (const { path, field } of inputs) {
      const range = field.kind === 'quantity' ? `${field.low} .. ${field.high}` : null
      if (field.kind === 'quantity') expect(boundsOf(field).low).toBeLessThan(boundsOf(field).high)
      expect(axisOf(given, path, range, 2), path).toHaveProperty('texts')
      expect(inputAt(given, path)).not.toBeNull()
    }
  })

  it('a variant is put in first, and what the reader refuses is refused', () => {
    const [x, y] = [
      axisOf(given, 'heat.air', '10..40 °C', 3),
      axisOf(given, 'belt.machinePulley', '8..9 in', 2),
    ]
    if ('wrong' in x || 'wrong' in y) throw new Error('no axis')
    const at = (volts: string) => gridSpec(given, { name: 'other', changes: { 'supply.volts': volts } }, x, y)
    const spec = at('100 V')
    expect('study' in spec && inputAt(spec.scenario, 'supply.volts')?.text).toBe('100 V')
    expect(at('12 furlongs')).toMatchObject({ ok: false, problems: [{ path: 'supply.volts' }] })
  })

  it('two of one input make no grid', () => {
    const axis = axisOf(given, 'heat.air', '10..40 °C', 3)
    if ('wrong' in axis) throw new Error('no axis')
    expect(gridSpec(given, undefined, axis, axis)).toMatchObject({ ok: false })
  })
})
