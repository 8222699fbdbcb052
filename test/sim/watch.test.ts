// What a run shows as it goes, in made-up columns where what should be found is plain to see.
import { describe, expect, it } from 'vitest'
import { ratio } from '../../sim/parts/belt.ts'
import { finish, run } from '../../sim/run.ts'
import { spellKeeper } from '../../sim/spells.ts'
import { CHANNELS, type Columns, type Mark, SUMS } from '../../sim/trace.ts'
import { watched } from '../../sim/watch.ts'
import { job } from '../jobs.ts'

const given = job({ 'controller.currentLimit': '20 A', 'machine.acceptedSag': '20 %' })
const n = ratio(given.parts.belt)

type Rules = Partial<Record<(typeof CHANNELS)[number], (t: number) => number>>

/** A thousand rows, a tenth of a second apart, from a rule for each channel; the rest stays 0. */
function seen(rules: Rules, switching: readonly Mark[] = []) {
  const time = Float64Array.from({ length: 1000 }, (_, row) => row / 10)
  // A spindle that nothing is said of follows the motor, and what is asked is what is wanted.
  const { speed, asked } = rules
  const all: Rules = {
    ...(speed ? { spindle: (t) => speed(t) / n } : {}),
    ...(asked ? { target: asked } : {}),
    ...rules,
  }
  const columns = Object.fromEntries(
    [...CHANNELS, ...SUMS].map((name) => {
      const rule = (all as Record<string, ((t: number) => number) | undefined>)[name]
      return [name, rule ? time.map(rule) : new Float64Array(time.length)]
    }),
  ) as Columns
  return watched(given, time, columns, switching)
}
const marked = (rules: Rules, switching: readonly Mark[] = []) => seen(rules, switching).marks
const within = (from: number, until: number) => (t: number) => t >= from - 1e-9 && t <= until + 1e-9
const close = (value: number) => expect.closeTo(value, 6)

describe('spells', () => {
  const kept = (
    least: number,
    rows: readonly (readonly [t: number, measure: number, counts?: boolean])[],
  ) => {
    const found: [number, number, number][] = []
    const keeper = spellKeeper(least, (from, until, worst) => found.push([from, until, worst]))
    for (const [t, measure, counts = true] of rows) keeper.row(t, measure, counts, measure)
    keeper.finish()
    return found
  }
  it('begin and end where the measure crosses zero, between rows', () => {
    expect(
      kept(0, [
        [0, -1],
        [1, 3],
        [2, 1],
        [3, -1],
      ]),
    ).toEqual([[0.25, 2.5, 3]])
  })
  it('run to the last row, and start at the first', () => {
    expect(
      kept(0, [
        [0, 1],
        [1, 2],
        [5, 1],
      ]),
    ).toEqual([[0, 5, 2]])
  })
  it('are not drawn across a jump, nor where they do not count', () => {
    expect(
      kept(0, [
        [0, -1],
        [1, -1],
        [1, 2],
        [2, 2],
        [2, -1],
        [3, -1],
      ]),
    ).toEqual([[1, 2, 2]])
    expect(
      kept(0, [
        [0, 1, false],
        [1, 1],
        [2, 1],
        [3, 1, false],
      ]),
    ).toEqual([[1, 3, 1]])
  })
  it('shorter than asked are left out, and of nothing are none', () => {
    expect(
      kept(2, [
        [0, -1],
        [1, 1],
        [2, -1],
        [3, -1],
      ]),
    ).toEqual([])
    expect(kept(0, [])).toEqual([])
  })
})

describe('at the limit', () => {
  it('is within half a per cent of it, each time', () => {
    const { marks, driving } = seen({
      current: (t) => (within(10, 12)(t) || within(50, 50.5)(t) ? 19.91 : 19.89),
    })
    expect(marks).toEqual([
      { kind: 'limit reached', t: close(9.95), until: close(12.05) },
      { kind: 'limit reached', t: close(49.95), until: close(50.55) },
    ])
    expect(driving.limitSeconds).toBeCloseTo(2.7, 6)
  })
  it('in the cut counts only once the speed has arrived', () => {
    const speed = (t: number) => Math.min(100, 10 * t)
    const { driving } = seen({
      asked: () => 100,
      speed,
      current: (t) => (t <= 5 || within(20, 21)(t) ? 20 : 5),
    })
    expect(driving.limitSeconds).toBeGreaterThan(6)
    expect(driving.limitedInCut).toBeCloseTo(1, 0)
  })
})

describe('belt slips', () => {
  const slipping = (share: number) => (t: number) => (100 * (within(20, 21)(t) ? 1 - share : 1)) / n
  it('is marked where the spindle falls behind, with the worst of it', () => {
    const [mark] = marked({ asked: () => 100, speed: () => 100, spindle: slipping(0.15) })
    expect(mark).toMatchObject({ kind: 'belt slips', worst: close(0.15) })
    expect(mark.t).toBeGreaterThan(19.9)
    expect(mark.kind === 'belt slips' && mark.until - mark.t).toBeCloseTo(1, 0)
  })
  it('is not marked for creep', () => {
    expect(marked({ asked: () => 100, speed: () => 100, spindle: slipping(0.04) })).toEqual([])
  })
})

describe('speed not reached', () => {
  const asked = () => 100
  it('is marked where it sags under what is accepted, with its lowest', () => {
    const speed = (t: number) => 98 - 38 * Math.max(0, 1 - Math.abs(t - 25) / 5)
    const { marks, driving } = seen({ asked, speed })
    expect(marks).toEqual([
      {
        kind: 'speed not reached',
        t: close(25 - 5 + 90 / 38),
        until: close(25 + 5 - 90 / 38),
        lowest: close(60),
        asked: 100,
      },
    ])
    expect(driving.slowest).toEqual({ t: 25, got: close(60), target: 100 })
  })
  it('is not marked above what is accepted, nor on the way up, nor for a moment', () => {
    expect(marked({ asked, speed: () => 81 })).toEqual([])
    expect(marked({ asked, speed: (t) => Math.min(100, 10 * t) })).toEqual([])
    expect(marked({ asked, speed: (t) => (within(20, 20.1)(t) ? 75 : 100) })).toEqual([])
    expect(marked({ asked: () => 0, speed: () => 0 })).toEqual([])
  })
  it('running up is no sag: a flywheel that takes twenty seconds counts from when it is there', () => {
    const { marks, driving } = seen({ asked, speed: (t) => Math.min(99, 5 * t) })
    expect(marks).toEqual([])
    expect(driving.slowest?.got).toBeGreaterThan(97)
  })
  it('a speed that is never got to is, from when it was asked to the end of the step', () => {
    const late: Rules = {
      target: (t) => (within(10, 50)(t) ? 100 : 0),
      asked: (t) => (within(10, 50)(t) ? Math.min(100, t - 10) : 0),
      speed: (t) => (within(10, 50)(t) ? t - 10 : 0),
    }
    const { marks, driving } = seen(late)
    expect(marks).toEqual([
      { kind: 'speed not reached', t: close(10), until: close(50.1), lowest: close(40), asked: 100 },
    ])
    expect(driving.slowest).toMatchObject({ got: close(40), target: 100 })
    // Cut short by the cutoff it was on its way, and nobody can say.
    const opens: Mark = { kind: 'opens', t: 50.1, phase: 0 }
    expect(seen(late, [opens])).toEqual({
      marks: [opens],
      driving: { slowest: null, limitSeconds: 0, limitedInCut: 0 },
    })
  })
})

describe('stalled', () => {
  const kinds = (speed: (t: number) => number, top = 100) =>
    marked({ asked: () => top, speed }).map(({ kind }) => kind)
  it('is slower than 2 % of what is asked for a second', () => {
    expect(kinds((t) => (within(40, 43)(t) ? 1 : 100))).toEqual(['speed not reached', 'stalled'])
  })
  it('is not a moment’s standstill, nor crawling, nor turning at a speed anyone would call turning', () => {
    expect(kinds((t) => (within(40, 40.7)(t) ? 1 : 100))).toEqual(['speed not reached'])
    expect(kinds((t) => (within(40, 43)(t) ? 3 : 100))).toEqual(['speed not reached'])
    expect(kinds((t) => (within(40, 43)(t) ? 125 : 6000), 6000 + 500)).toEqual(['speed not reached'])
  })
})

describe('class passed', () => {
  // Class B: 40 °C air and 80 K rise by resistance (maker's manual quoting IEC 60034-1).
  it('is marked once, where the winding gets hotter than its class', () => {
    expect(marked({ windingC: (t) => 100.05 + t })).toEqual([
      { kind: 'class passed', t: close(19.95), limitC: 120 },
    ])
    expect(marked({ windingC: () => 120 })).toEqual([])
  })
})

it('all marks come in order of time, the switch’s among them', () => {
  const opens: Mark = { kind: 'opens', t: 35, phase: 1 }
  const rules: Rules = { windingC: (t) => 100 + t, current: (t) => (within(30, 31)(t) ? 20 : 5) }
  expect(marked(rules, [opens]).map(({ kind }) => kind)).toEqual(['class passed', 'limit reached', 'opens'])
})

it('a ramp too slow for its step is a speed not reached, though nothing else is wrong', () => {
  const slow = job({ 'controller.ramp': '4 rpm/s', 'heat.cooling': 'shaft fan', 'duty.repeatFor': '16 min' })
  const { marks, driving } = finish(run(slow)).trace
  expect(marks.some(({ kind }) => kind === 'speed not reached')).toBe(true)
  expect(driving.slowest!.got / driving.slowest!.target).toBeLessThan(0.5)
})
