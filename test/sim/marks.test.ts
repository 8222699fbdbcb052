// Marks found in made-up columns, where what should be found is plain to see.
import { describe, expect, it } from 'vitest'
import { afterRamp, atLimit, marksOf, settledRows, spells } from '../../sim/marks.ts'
import { CHANNELS, type Columns, type Mark, SUMS } from '../../sim/trace.ts'
import { ratio } from '../../sim/parts/belt.ts'
import { job } from '../jobs.ts'

const given = job({ 'controller.currentLimit': '20 A', 'machine.acceptedSag': '20 %' })

/** Columns of `count` rows, a tenth of a second apart, from a rule for each channel; the rest stays 0. */
function made(count: number, rules: Partial<Record<(typeof CHANNELS)[number], (t: number) => number>>) {
  const time = Float64Array.from({ length: count }, (_, row) => row / 10)
  const columns = Object.fromEntries(
    [...CHANNELS, ...SUMS].map((name) => {
      const rule = (rules as Record<string, ((t: number) => number) | undefined>)[name]
      return [name, rule ? time.map(rule) : new Float64Array(count)]
    }),
  ) as Columns
  return { time, columns }
}
const marked = (rules: Parameters<typeof made>[1], switching: readonly Mark[] = []) => {
  // A spindle that nothing is said of follows the motor.
  const n = ratio(given.parts.belt)
  const { speed } = rules
  const { time, columns } = made(1000, { ...(speed ? { spindle: (t) => speed(t) / n } : {}), ...rules })
  return marksOf(given, time, columns, switching)
}
const within = (from: number, until: number) => (t: number) => t >= from - 1e-9 && t <= until + 1e-9

describe('spells', () => {
  const time = Float64Array.of(0, 1, 2, 3, 4, 5)
  it('are stretches of rows, from the first row to the last', () => {
    const holds = (row: number) => row !== 2 && row !== 3
    expect(spells(time, holds, 0)).toEqual([
      { from: 0, until: 1, first: 0, last: 1 },
      { from: 4, until: 5, first: 4, last: 5 },
    ])
  })
  it('shorter than asked are left out', () => {
    expect(spells(time, (row) => row < 2 || row > 2, 2)).toEqual([{ from: 3, until: 5, first: 3, last: 5 }])
    expect(spells(time, (row) => row === 3, 0)).toEqual([{ from: 3, until: 3, first: 3, last: 3 }])
  })
  it('of nothing are none', () => {
    expect(spells(time, () => false, 0)).toEqual([])
    expect(spells(new Float64Array(0), () => true, 0)).toEqual([])
  })
})

describe('at the limit', () => {
  it('is within half a per cent of it', () => {
    const { columns } = made(3, { current: (t) => [19.89, 19.91, 20][Math.round(t * 10)] })
    expect([0, 1, 2].map((row) => atLimit(given, columns, row))).toEqual([false, true, true])
  })
  it('is marked from the first row to the last, each time', () => {
    const marks = marked({ current: (t) => (within(10, 12)(t) || within(50, 50.5)(t) ? 20 : 5) })
    expect(marks).toEqual([
      { kind: 'limit reached', t: 10, until: 12 },
      { kind: 'limit reached', t: 50, until: 50.5 },
    ])
  })
  it('for a single row is no stretch', () => {
    expect(marked({ current: (t) => (within(10, 10)(t) ? 20 : 5) })).toEqual([])
  })
})

describe('settled', () => {
  it('is driven at one asked speed for over a second', () => {
    const { time, columns } = made(100, { asked: (t) => (t < 2 ? 50 * t : t < 6 ? 100 : 0) })
    expect(afterRamp(columns, 0)).toBe(false)
    expect(afterRamp(columns, 10)).toBe(false)
    expect(afterRamp(columns, 30)).toBe(true)
    expect(afterRamp(columns, 80)).toBe(false)
    const settled = settledRows(time, columns)
    const at = [...time].filter((_, row) => settled[row] === 1)
    expect(at[0]).toBeCloseTo(3.1, 9)
    expect(at.at(-1)).toBeCloseTo(5.9, 9)
    expect(at).toHaveLength(29)
  })
})

describe('belt slips', () => {
  const n = ratio(given.parts.belt)
  const slipping = (share: number) => (t: number) => (100 * (within(20, 21)(t) ? 1 - share : 1)) / n
  it('is marked where the spindle falls behind, with the worst of it', () => {
    const marks = marked({ asked: () => 100, speed: () => 100, spindle: slipping(0.15) })
    expect(marks).toEqual([{ kind: 'belt slips', t: 20, until: 21, worst: expect.closeTo(0.15, 9) }])
  })
  it('is not marked for creep', () => {
    expect(marked({ asked: () => 100, speed: () => 100, spindle: slipping(0.04) })).toEqual([])
  })
})

describe('speed not reached', () => {
  const asked = () => 100
  it('is marked where it sags under what is accepted, with its lowest', () => {
    const speed = (t: number) => (within(20, 30)(t) ? 60 + Math.abs(t - 25) : 98)
    expect(marked({ asked, speed })).toEqual([
      { kind: 'speed not reached', t: 20, until: 30, lowest: 60, asked: 100 },
    ])
  })
  it('is not marked above what is accepted, nor in the second after the ramp, nor for a moment', () => {
    expect(marked({ asked, speed: () => 81 })).toEqual([])
    expect(marked({ asked, speed: (t) => (t <= 1 ? 10 : 100) })).toEqual([])
    expect(marked({ asked, speed: (t) => (within(20, 20.1)(t) ? 10 : 100) })).toEqual([])
    expect(marked({ asked: () => 0, speed: () => 0 })).toEqual([])
  })
})

describe('stalled', () => {
  it('is slower than 2 % of what is asked for a second', () => {
    const marks = marked({ asked: () => 100, speed: (t) => (within(40, 43)(t) ? 1 : 100) })
    expect(marks).toContainEqual({ kind: 'stalled', t: 40, until: 43 })
    expect(marks.map(({ kind }) => kind)).toEqual(['speed not reached', 'stalled'])
  })
  it('is so from a second on', () => {
    const marks = marked({ asked: () => 100, speed: (t) => (within(40, 41.1)(t) ? 1 : 100) })
    expect(marks).toContainEqual({ kind: 'stalled', t: 40, until: 41.1 })
  })
  it('is not a moment’s standstill, nor crawling', () => {
    const kinds = (speed: (t: number) => number) =>
      marked({ asked: () => 100, speed }).map(({ kind }) => kind)
    expect(kinds((t) => (within(40, 40.8)(t) ? 1 : 100))).toEqual(['speed not reached'])
    expect(kinds((t) => (within(40, 43)(t) ? 3 : 100))).toEqual(['speed not reached'])
  })
})

describe('class passed', () => {
  // Class B: 40 °C air and 80 K rise by resistance (maker's manual quoting IEC 60034-1).
  it('is marked once, where the winding first gets hotter than its class', () => {
    expect(marked({ windingC: (t) => 100 + t })).toEqual([{ kind: 'class passed', t: 20.1, limitC: 120 }])
    expect(marked({ windingC: () => 120 })).toEqual([])
  })
})

it('all marks come in order of time, the switch’s among them', () => {
  const opens: Mark = { kind: 'opens', t: 35, phase: 1 }
  const kinds = marked({ windingC: (t) => 100 + t, current: (t) => (within(30, 31)(t) ? 20 : 5) }, [
    opens,
  ]).map(({ kind }) => kind)
  expect(kinds).toEqual(['class passed', 'limit reached', 'opens'])
})
