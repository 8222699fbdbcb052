// A job carried out: the figures of the direct run by a part of its evaluations, and any skipped turn run when looked at.
import { describe, expect, it } from 'vitest'
import { carryOut, figuresOf, openingOf } from '../../sim/carryOut.ts'
import { cycles } from '../../sim/cycles.ts'
import { type Part, skippedIn } from '../../sim/cycles/exact.ts'
import { startOf } from '../../sim/cycles/whole.ts'
import { finish, run } from '../../sim/run.ts'
import { skippingWords } from '../../sim/say/skipping.ts'
import { valueAt } from '../../sim/trace.ts'
import { duty } from './cycles/duties.ts'
import { job as given } from '../jobs.ts'

const job = duty(8)
const quick = finish(carryOut(job))
const direct = finish(carryOut(job, { direct: true }))

describe('by turns', () => {
  it('takes a fifteenth of the evaluations of the direct run, and says which turns they were', () => {
    expect(direct.skipping).toBeNull()
    expect(direct.trace.effort.rates).toBeLessThan(600_000)
    expect(quick.trace.effort.rates).toBeLessThan(15_000)
    expect(quick.trace.effort.rates * 15).toBeLessThan(direct.trace.effort.rates)
    expect(quick.skipping!.computed.length).toBeLessThan(20)
    expect(skippingWords(quick.skipping!)).toMatch(
      /^1\d of 480 cycles computed; the rest follow from them\.$/,
    )
  })

  it.each([
    ['the current limit', { 'controller.currentLimit': '5.2 A' }, 'limitSeconds'],
    ['a slipping belt', { 'belt.carries': '3 N·m', 'belt.section': 'A' }, 'slipSeconds'],
  ] as const)('has the energy and the times of the direct run: %s', (_name, changes, seen) => {
    const hard = given({ 'duty.repeatFor': '8 h', 'heat.cooling': 'blower', ...changes })
    const [a, b] = [finish(carryOut(hard)), finish(carryOut(hard, { direct: true }))]
    expect(a.skipping).not.toBeNull()
    const [f, g] = [a.figures, b.figures]
    expect(g[seen]).toBeGreaterThan(100)
    for (const name of Object.keys(g.energy) as (keyof typeof g.energy)[])
      expect(Math.abs(f.energy[name] - g.energy[name]) / g.energy.taken, name).toBeLessThan(1e-4)
    for (const name of ['limitSeconds', 'limitedInCut', 'slipSeconds'] as const)
      expect(Math.abs(f[name] - g[name]) / 28800, name).toBeLessThan(1e-4)
  })

  it('a job that only rests is carried out whole, and takes and loses nothing', () => {
    const rest = given({
      'duty.phases': [{ name: 'rest', lasts: '1 min' }],
      'duty.repeatFor': '8 h',
      'duty.start': '60 °C',
    })
    const { figures, skipping } = finish(carryOut(rest))
    expect(skipping).not.toBeNull()
    expect(figures).toMatchObject({ delivered: 1, workAmps: 0, outletAmps: 0, slowest: null, rmsAmps: 0 })
    expect(finish(openingOf(rest))).toBeNull()
    expect(finish(openingOf(rest, true))).toBeNull()
  })

  it.each([
    ['stalls', { 'belt.machinePulley': '1 in', 'heat.cooling': 'blower' }],
    ['opens', { 'heat.air': '10 °C' }],
  ] as const)('has the mean amps of the direct run where it %s', (_name, changes) => {
    const hard = given({ 'duty.repeatFor': '5 h', ...changes })
    const [f, g] = [finish(carryOut(hard)).figures, finish(carryOut(hard, { direct: true })).figures]
    expect(g.stalled !== null || g.firstOpening !== null).toBe(true)
    for (const name of ['workAmps', 'outletAmps'] as const)
      expect(Math.abs(f[name] / g[name] - 1), name).toBeLessThan(2e-3)
  })

  it('gives the same figures without the rows', () => {
    expect(finish(figuresOf(job))).toEqual(quick.figures)
  })

  it('is not done for a job that is to be precise', () => {
    const precise = { ...duty(0.5), accuracy: 'precise' } as const
    expect(finish(carryOut(precise)).skipping).toBeNull()
  })

  it('says when every turn from some moment on was run, and nothing where all were', () => {
    const early = finish(carryOut(given({ 'duty.repeatFor': '3 h' })))
    const { computed } = early.skipping ?? { computed: [] }
    if (early.skipping)
      expect(skippingWords(early.skipping)).toMatch(/ of 23 cycles computed; from .* on, every one; the rest/)
    expect(computed.length).toBeLessThan(23)
  })
})

describe('looked at closely', () => {
  const { computed, seconds } = quick.skipping!
  const skippedTurn = Array.from({ length: 480 }, (_, n) => n).find((n) => n > 200 && !computed.includes(n))!
  const close: Part = { from: skippedTurn * seconds + 5, until: (skippedTurn + 2) * seconds - 5 }
  const near = finish(carryOut(job, { close }))

  it('shows the rows of the direct run there, and the same everywhere else', () => {
    const t = close.from
    const from = startOf(finish(cycles(job)), skippedTurn)!
    const { time, columns } = finish(run(job, { from, until: from.t + seconds })).trace
    const first = near.trace.time.lastIndexOf(from.t)
    for (const name of ['speed', 'current', 'windingC', 'switchC'] as const) {
      expect(near.trace.columns[name].slice(first, first + time.length), name).toEqual(columns[name])
      expect(quick.trace.columns[name].slice(first, first + time.length), name).not.toEqual(columns[name])
    }
    for (const into of [0.1, 1, 3, 15, 29, 31, 44]) {
      expect(valueAt(near.trace, 'speed', t + into)).toBeCloseTo(valueAt(direct.trace, 'speed', t + into), 1)
      expect(
        Math.abs(valueAt(near.trace, 'windingC', t + into) - valueAt(direct.trace, 'windingC', t + into)),
      ).toBeLessThan(0.05)
    }
    const before = quick.trace.time.findLastIndex((at) => at < skippedTurn * seconds)
    expect(near.trace.time.slice(0, before)).toEqual(quick.trace.time.slice(0, before))
    expect(near.trace.time.every((at, row, all) => row === 0 || at >= all[row - 1])).toBe(true)
    expect(near.figures).toEqual(quick.figures)
    for (const name of ['charge', 'work', 'taken'] as const)
      expect(near.trace.columns[name].at(-1)! / quick.trace.columns[name].at(-1)!).toBeCloseTo(1, 5)
  })

  it('means turns that were skipped, and few of them', () => {
    const part = (from: number, until: number) => skippedIn(computed, seconds, { from, until })
    expect(part(close.from, close.until)).toContain(skippedTurn)
    expect(part(0, 8 * 3600)).toEqual([])
    expect(part(0, seconds)).toEqual([])
    expect(part(skippedTurn * seconds, (skippedTurn + 1) * seconds)).toEqual([skippedTurn])
    // Beyond the last that was run there is nothing to tell: the rest was run directly.
    expect(skippedIn([0, 1, 5], 60, { from: 300, until: 900 })).toEqual([])
    expect(skippedIn([], 60, { from: 0, until: 900 })).toEqual([])
    expect(skippedIn([0, 1, 5], 60, { from: 100, until: 200 })).toEqual([2, 3])
  })
})
