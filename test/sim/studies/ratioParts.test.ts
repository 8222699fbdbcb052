// The pieces of a ratio study on made-up ratios: windows, narrow ones too, stock belts, pairs and jackshafts.
import { describe, expect, it } from 'vitest'
import { beltLength } from '../../../sim/belting/geometry.ts'
import { STOCK_LENGTHS, STOCK_PULLEYS } from '../../../sim/handbook/beltSections.ts'
import type { Belt } from '../../../sim/parts/belt.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish } from '../../../sim/run.ts'
import { asTight } from '../../../sim/studies/ratio/change.ts'
import { spread, tryGrid } from '../../../sim/studies/ratio/grid.ts'
import { twoStagesWithin } from '../../../sim/studies/ratio/jackshaft.ts'
import { beltFaults, builtStages } from '../../../sim/drive/limits.ts'
import { stockBelt } from '../../../sim/belting/stock.ts'
import { pairsWithin } from '../../../sim/studies/ratio/pairs.ts'
import { wellInside } from '../../../sim/studies/ratio/proposals.ts'
import type { Fault } from '../../../sim/studies/ratio/trial.ts'
import { type Tried, windowOf } from '../../../sim/studies/ratio/window.ts'

import { jobOf, scenario } from '../../jobs.ts'

const inch = (size: number) => fromUnit(size, 'in')
const degrees = (angle: number) => (angle * 180) / Math.PI

/** A job that works between two ratios: too hot below, short of volts above. */
const made = (low: number, high: number) =>
  // biome-ignore lint/correctness/useYield: nothing to run.
  function* (ratio: number): Generator<never, Tried<Fault>> {
    return { ratio, why: ratio < low ? ['hot'] : ratio > high ? ['reach'] : [] }
  }

describe('a window', () => {
  const windowAt = (low: number, high: number, now: number) => {
    const attempt = made(low, high)
    const tried = finish(tryGrid({ low: 1, high: 16, count: 5, now, least: 0.1 }, attempt))
    return finish(windowOf(tried, now, 0.01, attempt))
  }
  it('has its edges where they are, sharp to the share asked for', () => {
    const found = windowAt(3.7, 11, 4)!
    expect(found.low).toMatchObject({ why: ['hot'] })
    expect(found.high).toMatchObject({ why: ['reach'] })
    for (const [edge, at] of [
      [found.low, 3.7],
      [found.high, 11],
    ] as const) {
      expect(Math.min(edge.ratio, edge.beyond!)).toBeLessThanOrEqual(at)
      expect(Math.max(edge.ratio, edge.beyond!)).toBeGreaterThanOrEqual(at)
      expect(Math.abs(Math.log(edge.ratio / edge.beyond!))).toBeLessThanOrEqual(0.01)
    }
  })
  it('is found between two ratios of the grid', () => {
    const found = windowAt(5.1, 5.5, 4)!
    expect(found.low.ratio).toBeGreaterThanOrEqual(5.1)
    expect(found.high.ratio).toBeLessThanOrEqual(5.5)
  })
  it('is open where all that was tried works, and is looked for under the grid', () => {
    expect(windowAt(0.3, 20, 4)).toMatchObject({
      low: { why: ['hot'] },
      high: { ratio: 16, beyond: null, why: [] },
    })
    expect(windowAt(0.01, 20, 4)!.low.beyond).toBeNull()
  })
  it('is none where none works', () => {
    expect(windowAt(12, 11, 4)).toBeNull()
  })
  it('is the one nearest to the present ratio', () => {
    // biome-ignore lint/correctness/useYield: nothing to run.
    const attempt = function* (ratio: number): Generator<never, Tried<Fault>> {
      return { ratio, why: ratio > 1.5 && ratio < 6 ? ['sags'] : [] }
    }
    const tried = spread(1, 16, 5).map((ratio) => finish(attempt(ratio)))
    expect(finish(windowOf(tried, 9, 0.01, attempt))!.low).toMatchObject({ why: ['sags'] })
    expect(finish(windowOf(tried, 1.1, 0.01, attempt))!.high).toMatchObject({ why: ['sags'] })
  })
  it('keeps its proposals well inside, but for an edge nobody found', () => {
    const edge = (ratio: number, beyond: number | null) => ({ ratio, beyond, why: [] })
    const closed = { low: edge(4, 3.98), high: edge(10, 10.1) }
    expect([4.2, 5, 9.5].map((each) => wellInside(each, closed))).toEqual([false, true, false])
    expect(wellInside(4.2, { ...closed, low: edge(4, null) })).toBe(true)
  })
})

const belt: Belt = {
  motorPulley: inch(2.5),
  machinePulley: inch(10),
  centreDistance: inch(23),
  efficiency: 0.95,
}

describe('pulleys that are sold', () => {
  it('pairs lie within the range, are stock or there already, and fewest to buy come first', () => {
    const pairs = pairsWithin(belt, { low: 3.8, high: 5 })
    expect(pairs.length).toBeGreaterThan(10)
    expect(pairs[0]).toMatchObject({
      driving: belt.motorPulley,
      driven: belt.machinePulley,
      buys: 0,
      length: null,
    })
    for (let n = 1; n < pairs.length; n++) expect(pairs[n].buys).toBeGreaterThanOrEqual(pairs[n - 1].buys)
    for (const { driving, driven, ratio, length, centres, buys } of pairs) {
      expect(ratio).toBeCloseTo(driven / driving, 12)
      expect(ratio).toBeGreaterThanOrEqual(3.8)
      expect(ratio).toBeLessThanOrEqual(5)
      if (buys === 0) continue
      expect(STOCK_LENGTHS).toContain(length)
      expect(beltLength(driving, driven, centres!)).toBeCloseTo(length!, 9)
      // Sold by the inch, and over 80 in by fives: the shafts move by half of half of that, and a little.
      expect(Math.abs(centres! - inch(23))).toBeLessThan(inch(length! > inch(80) ? 1.4 : 0.5))
    }
  })
  it('none asks more than 6 of one stage', () => {
    const steps = pairsWithin(belt, { low: 2, high: 12 }).map(({ ratio }) => ratio)
    expect(Math.max(...steps)).toBeCloseTo(6, 9)
  })
  it('none is smaller than its belt bends round', () => {
    const pairs = pairsWithin({ ...belt, section: 'A' }, { low: 2, high: 6 })
    expect(Math.min(...pairs.map(({ driving }) => driving))).toBeGreaterThanOrEqual(0.071)
  })
  it('a belt of 64 in on 2.5 and 12 in runs at about 19 in, by the handbook’s approximation', () => {
    const { length, centres } = stockBelt(inch(2.5), inch(12), inch(20))!
    // L ≈ 2C + 1.57 (D + d) + (D − d)²/4C (Machinery's Handbook, V-belt length).
    const approximate = 2 * centres + 1.57 * inch(14.5) + inch(9.5) ** 2 / (4 * centres)
    expect(approximate / length).toBeCloseTo(1, 3)
  })
  it('two stages: the product of their steps, each of 6 at the most, sold or there', () => {
    const found = twoStagesWithin(belt, { low: 20, high: 30 })
    expect(found.length).toBeGreaterThan(10)
    for (const { pulleys, ratio, steps, buys } of found) {
      expect(ratio).toBeCloseTo((pulleys[1] / pulleys[0]) * (pulleys[3] / pulleys[2]), 12)
      expect(ratio).toBeGreaterThanOrEqual(20)
      expect(ratio).toBeLessThanOrEqual(30)
      expect(Math.max(...steps)).toBeLessThanOrEqual(6 + 1e-6)
      for (const size of pulleys) expect([...STOCK_PULLEYS, inch(2.5), inch(10)]).toContainEqual(size)
      expect(buys).toBeGreaterThanOrEqual(2)
    }
    const kept = twoStagesWithin(
      { ...belt, jackshaftLarge: inch(12), jackshaftSmall: inch(2) },
      { low: 20, high: 30 },
    )
    expect(kept[0].buys).toBe(0)
    expect(kept[0].ratio).toBeCloseTo(24, 9)
  })
})

describe('limits of the belt', () => {
  const kinds = (changes: Partial<Belt>, motor = 200) =>
    beltFaults({ ...belt, ...changes }, motor, 0).map(({ kind }) => kind)
  it.each<[string, Partial<Belt>, number, string[]]>([
    ['an easy drive', {}, 200, []],
    [
      '17 in centres and 20 in of pulley: 118°',
      { machinePulley: inch(20), centreDistance: inch(17) },
      200,
      ['wrap', 'steep'],
    ],
    [
      '16 in of pulley on 9 in of room',
      { machinePulley: inch(15), centreDistance: inch(8.7) },
      200,
      ['touch', 'wrap'],
    ],
    ['a 2.5 in pulley on a B belt', { section: 'B' }, 200, ['small driving']],
    [
      'a 2 in machine pulley on an A belt',
      { section: 'A', motorPulley: inch(6), machinePulley: inch(2) },
      200,
      ['small driven'],
    ],
    ['31 m/s', {}, 31 / inch(1.25), ['balance']],
    ['34 m/s', {}, 34 / inch(1.25), ['rim']],
  ])('%s', (_, changes, motor, wanted) => {
    expect(kinds(changes, motor)).toEqual(wanted)
  })
  it('the stage as built: wrap, length, and a pull on the shafts that carries its torque', () => {
    const [stage] = builtStages({ ...belt, section: 'A', carries: 12 }, 200)
    expect(degrees(stage.wrap)).toBeCloseTo(180 - 2 * degrees(Math.asin(7.5 / 46)), 9)
    expect(stage.speed).toBeCloseTo(200 * inch(1.25), 12)
    // The strands' pulls differ by 2 T/D; installed both pull alike, each at least half of that.
    expect(stage.pull!).toBeGreaterThan((2 * 12) / inch(10))
    expect(builtStages(belt, 200)[0].pull).toBeNull()
  })
})

it('a belt that is said to slip at a torque is as tight on other pulleys', () => {
  const whole = scenario({
    'belt.section': '4L',
    'belt.motorPulley': '2 in',
    'belt.machinePulley': '12 in',
    'belt.centreDistance': '18 in',
    'belt.carries': '20 N·m',
  })
  const { belt } = jobOf(whole).parts
  const text = asTight(whole, belt, { 'belt.machinePulley': '18.4 in' })['belt.carries']!
  // By hand: wrap 180° − 2 asin((D − d)/2C), E = exp(0.3 θ / sin 19°), torque as D (E − 1)/(E + 1).
  const carried = (machine: number) => {
    const e = Math.exp((0.3 * (Math.PI - 2 * Math.asin((machine - 2) / 36))) / Math.sin((19 * Math.PI) / 180))
    return (machine * (e - 1)) / (e + 1)
  }
  expect(Number.parseFloat(text)).toBeCloseTo((20 * carried(18.4)) / carried(12), 1)
  expect(Math.round(Number.parseFloat(text))).toBe(28)
  // As the reader fits it, it is fitted anew for each ratio.
  const fitted = scenario({ 'belt.section': '4L' })
  expect(asTight(fitted, jobOf(fitted).parts.belt, { 'belt.machinePulley': '12 in' })).toEqual({
    'belt.machinePulley': '12 in',
  })
})
