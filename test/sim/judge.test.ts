// Figures worked out a second time, by brute force over the columns of real runs.
import { describe, expect, it } from 'vitest'
import type { Job } from '../../sim/job.ts'
import { type Figures, hardestPhase, judge, openSpells, phaseAt } from '../../sim/judge.ts'
import type { Phase } from '../../sim/duty.ts'
import type { At, Mark, Trace } from '../../sim/trace.ts'
import { publishedCase } from '../checks/files.ts'
import { type Changes, type Demo, job, traceOf } from '../jobs.ts'

interface Case {
  readonly given: Job
  readonly trace: Trace
  readonly figures: Figures
}
const judged = (changes: Changes, name: Demo): Case => {
  const given = job(changes, name)
  const trace = traceOf(given)
  return { given, trace, figures: judge(given, trace) }
}

const mill = judged({}, 'appleMill')
const lathe = judged({ 'duty.repeatFor': '45 min' }, 'bowlLathe')
const saw = judged({}, 'bandSaw')
const cases: [string, Case][] = [
  ['apple mill', mill],
  ['bowl lathe', lathe],
  ['band saw', saw],
]

/** Sums something over all pairs of neighbouring rows: Δt and the numbers of both. */
function over({ trace }: Case, weigh: (seconds: number, row: number) => number): number {
  const { time } = trace
  let sum = 0
  for (let row = 0; row + 1 < time.length; row++) sum += weigh(time[row + 1] - time[row], row)
  return sum
}
/** Phase of the duty between a row and the next, found by walking the cycle. */
function phaseOf({ given, trace }: Case, row: number): number {
  const cycle = given.duty.phases.reduce((sum, { seconds }) => sum + seconds, 0)
  let into = ((trace.time[row] + trace.time[row + 1]) / 2) % cycle
  return given.duty.phases.findIndex(({ seconds }) => {
    into -= seconds
    return into < 0
  })
}
const near = (value: number, wanted: number, relative: number) =>
  expect(Math.abs(value - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(
    relative * Math.abs(wanted),
  )

describe.each(cases)('%s', (_, one) => {
  const { given, trace, figures } = one
  const { columns, time } = trace
  const ratio =
    columns.asked.reduce((a, b) => Math.max(a, b)) / Math.max(...given.duty.phases.map(({ speed }) => speed))
  /** The controller drives between this row and the next: something is asked, or has just begun to be. */
  const driven = (row: number) => columns.asked[row] > 0 || columns.asked[row + 1] > 0

  it('delivers the share of running time in which it is driven', () => {
    const asked = over(one, (dt, row) => (given.duty.phases[phaseOf(one, row)].speed > 0 ? dt : 0))
    const got = over(one, (dt, row) => (driven(row) ? dt : 0))
    // Right after an opening or a reclosing one step may fall on either side.
    near(figures.delivered * asked, got, 2e-3)
    expect(figures.delivered).toBeLessThan(1)
  })

  it('does so much of its hardest step', () => {
    const { phase, asked, got } = figures.work
    near(
      asked,
      over(one, (dt, row) => (phaseOf(one, row) === phase ? dt : 0)),
      1e-3,
    )
    near(
      got,
      over(one, (dt, row) => (phaseOf(one, row) === phase && driven(row) ? dt : 0)),
      3e-3,
    )
  })

  it('draws its mean current there, and its heating current over the whole', () => {
    const { phase, got } = figures.work
    const amps = columns.current
    const charge = over(one, (dt, row) =>
      phaseOf(one, row) === phase ? (dt * (amps[row] + amps[row + 1])) / 2 : 0,
    )
    near(figures.workAmps, charge / got, 5e-3)
    // A constant form factor of 1.05 in all three jobs.
    const squares = over(one, (dt, row) => (dt * 1.05 ** 2 * (amps[row] ** 2 + amps[row + 1] ** 2)) / 2)
    near(figures.rmsAmps, Math.sqrt(squares / time[time.length - 1]), 5e-3)
    near(
      figures.peakAmps.value,
      amps.reduce((a, b) => Math.max(a, b)),
      1e-12,
    )
    expect(amps[time.indexOf(figures.peakAmps.t)]).toBeGreaterThan(0)
  })

  it('draws its mean from the outlet there', () => {
    const { phase, got } = figures.work
    const { supply } = given.parts
    const power = over(one, (dt, row) =>
      phaseOf(one, row) === phase && driven(row) && dt > 0
        ? Math.max(0, columns.taken[row + 1] - columns.taken[row])
        : 0,
    )
    const volts = supply.kind === 'battery' ? supply.volts : 0.95 * 0.65 * supply.lineVolts
    near(figures.outletAmps, power / got / volts, 5e-3)
  })

  it('is hottest where its columns are', () => {
    for (const [name, found] of [
      ['windingC', figures.hottestWindingC],
      ['frameC', figures.hottestFrameC],
      ['switchC', figures.hottestSwitchC],
    ] as const) {
      const most = columns[name].reduce((a, b) => Math.max(a, b))
      expect(found.value).toBeGreaterThanOrEqual(most)
      expect(found.value - most).toBeLessThan(0.5)
    }
    expect(figures.classMargin).toBeCloseTo(120 - figures.hottestWindingC.value, 9)
    const hot = columns.windingC.findIndex((value) => value > 120)
    expect(figures.classPassed).toBeGreaterThanOrEqual(time[hot - 1])
    expect(figures.classPassed).toBeLessThanOrEqual(time[hot])
    // Class B: hot spot 130 °C and 50 K over it, where solder and slots go (common practice, no source).
    expect(figures).toMatchObject({ classLimitC: 120, damageC: 180 })
  })

  it('is slowest, against what is asked, a second after its ramps at the earliest', () => {
    let slowest = { share: Infinity, t: Number.NaN, speed: Number.NaN }
    let since = 0
    for (let row = 1; row < time.length; row++) {
      if (columns.asked[row] <= 0 || columns.asked[row] !== columns.asked[row - 1]) since = time[row]
      else if (time[row] - since > 1) {
        const share = columns.speed[row] / columns.asked[row]
        if (share < slowest.share) slowest = { share, t: time[row], speed: columns.speed[row] }
      }
    }
    expect(figures.slowest?.t).toBe(slowest.t)
    near(figures.slowest!.value, Math.max(0, slowest.speed) / ratio, 1e-9)
    near(1 - figures.slowest!.sag, Math.max(0, slowest.share), 1e-9)
  })

  it('is so long at its current limit, and so long of that after its ramps', () => {
    const most = 0.995 * given.parts.controller.currentLimit
    // Straight between rows, this share of the way lies at the limit.
    const at = (row: number) => {
      const [a, b] = [columns.current[row] - most, columns.current[row + 1] - most]
      if (a >= 0 && b >= 0) return 1
      return a < 0 && b < 0 ? 0 : Math.max(a, b) / Math.abs(a - b)
    }
    const level = (row: number) =>
      row > 0 && columns.asked[row] > 0 && columns.asked[row] === columns.asked[row - 1]
    expect(figures.limitSeconds).toBeCloseTo(
      over(one, (dt, row) => dt * at(row)),
      6,
    )
    // In the cut is after the ramp, and once the speed has arrived: never more than after the ramp alone.
    const afterRamps = over(one, (dt, row) => (level(row) && level(row + 1) ? dt * at(row) : 0))
    expect(figures.limitedInCut).toBeLessThanOrEqual(afterRamps + 1e-6)
  })

  it('opens when and as often as its marks say', () => {
    const opens = trace.marks.filter(({ kind }) => kind === 'opens')
    const [first] = opens
    const again = trace.marks.find(({ kind }) => kind === 'recloses')!
    expect(figures.timesOpen).toBe(opens.length)
    expect(figures.firstOpening).toMatchObject({ t: first.t })
    expect(figures.firstOpenFor).toBe(again.t - first.t)
    expect(figures.cutoffMargin).toBeNull()
  })

  it('spends what it takes, and works what the cut asks', () => {
    const { taken, work, ...losses } = figures.energy
    near(
      work,
      over(
        one,
        (dt, row) =>
          (dt * (columns.load[row] * columns.speed[row] + columns.load[row + 1] * columns.speed[row + 1])) /
          2 /
          ratio,
      ),
      5e-3,
    )
    const out = work + Object.values(losses).reduce((a, b) => a + b, 0)
    // What is not spent turns with the rotor, or was lost in the controller: little.
    expect(out).toBeLessThanOrEqual(taken * 1.002)
    expect(out).toBeGreaterThan(taken * 0.98)
  })
})

it('the three jobs tell different limits', () => {
  expect(lathe.figures.limitedInCut).toBeGreaterThan(100)
  expect(saw.figures.limitedInCut).toBeLessThan(0.01)
  expect(saw.figures.speedMissed).toBe(true)
})

describe('what did not happen', () => {
  const { figures } = judged(
    { 'heat.cooling': 'shaft fan', 'duty.repeatFor': '10 min', 'duty.phases.2.torque': '1 N·m' },
    'appleMill',
  )
  it('is null, and what was left is told', () => {
    expect(figures).toMatchObject({
      firstOpening: null,
      firstOpenFor: null,
      timesOpen: 0,
      classPassed: null,
      stalled: null,
      delivered: 1,
    })
    expect(figures.cutoffMargin).toBeCloseTo(120 - figures.hottestSwitchC.value, 12)
    expect(figures.speedMissed).toBe(false)
    expect(figures.work.got).toBeCloseTo(figures.work.asked, 9)
  })
  it('without a cutoff there is no margin to it', () => {
    expect(
      judged({ 'cutoff.fitted': 'none', 'duty.repeatFor': '1 min' }, 'appleMill').figures.cutoffMargin,
    ).toBeNull()
  })
  it('open all along, nothing is got, drawn or slow', () => {
    const { figures: open } = judged({ 'duty.start': '140 °C', 'duty.repeatFor': '5 min' }, 'appleMill')
    expect(open).toMatchObject({
      firstOpenFor: null,
      delivered: 0,
      workAmps: 0,
      outletAmps: 0,
      slowest: null,
    })
    expect(open.work).toMatchObject({ phase: 2, got: 0 })
    expect(open.work.asked).toBeCloseTo(120, 9)
  })
  it('a duty of rest asks nothing, and all of that is delivered', () => {
    const { figures: rest } = judged(
      { 'duty.phases': [{ name: 'rest', lasts: '1 min' }], 'duty.repeatFor': '5 min' },
      'appleMill',
    )
    expect(rest).toMatchObject({ delivered: 1, slowest: null, workAmps: 0, outletAmps: 0, rmsAmps: 0 })
  })
})

it('what was not reached was not delivered', () => {
  const given = job({
    'cutoff.fitted': 'none',
    'controller.currentLimit': '60 A',
    'duty.phases.2.torque': '60 N·m',
    'heat.windingCapacity': '100 J/K',
  })
  const trace = traceOf(given)
  expect(trace.ending.kind).toBe('destroyed')
  const figures = judge(given, trace)
  expect(figures.reached).toBeLessThan(600)
  // Of 45 cycles (7 min of 8 asked; the last half full) it got two minutes and what it had of the third step.
  expect(figures.delivered * 22 * 420).toBeLessThan(900)
  // Held still at the limit for the most of it, it got only what came before.
  const still = trace.marks.reduce(
    (sum, mark) => (mark.kind === 'stalled' ? sum + mark.until - mark.t : sum),
    0,
  )
  expect(still).toBeGreaterThan(1)
  expect(figures.work.got).toBeCloseTo(figures.reached - 180 - still, 6)
})

describe('life', () => {
  // Kosow, Examples 13.1 to 13.6 (ten-degree rule; as transcribed in a public companion, printed page not seen).
  const { inputs, published } = publishedCase<
    { class_limits: Record<'A' | 'B' | 'F', number> },
    { factor: number[] }
  >('P40')
  const { A, B, F } = inputs.class_limits
  /** Life factor of a winding so many kelvin under (or over) its class. */
  const lifeAt = (under: number) => {
    const { given, trace, figures } = saw
    const peak: At = { value: figures.classLimitC - under, t: 0 }
    return judge(given, { ...trace, peaks: { ...trace.peaks, windingC: peak } }).life
  }
  it('halves with every 10 K, as in the four published examples', () => {
    const unders = [A - 125, A - 75, B - A, F - 172]
    unders.forEach((under, index) => {
      const life = lifeAt(under)
      near(life < 1 ? 1 / life : life, published.factor[index], 2e-3)
    })
    expect(lifeAt(0)).toBe(1)
  })
})

describe('the hardest step', () => {
  const step = (changes: Partial<Phase>): Phase => ({
    name: '',
    seconds: 60,
    speed: 10,
    cut: { kind: 'torque', torque: 1 },
    surge: null,
    ...changes,
  })
  it('takes most work out of the motor: torque, speed and time together', () => {
    expect(hardestPhase([step({}), step({ seconds: 120 }), step({ speed: 11 })])).toBe(1)
    expect(
      hardestPhase([step({}), step({ surge: { torque: 10, every: 2, lasts: 1 } }), step({ seconds: 200 })]),
    ).toBe(1)
  })
  it('is the longest one where nothing is cut', () => {
    const idle = { kind: 'torque', torque: 0 } as const
    expect(hardestPhase([step({ cut: idle }), step({ cut: idle, seconds: 61 })])).toBe(1)
    expect(hardestPhase([step({ speed: 0 })])).toBe(0)
  })
})

it('stretches with the cutoff open run from opening to reclosing, or to the end', () => {
  const marks: Mark[] = [
    { kind: 'opens', t: 10, phase: 0 },
    { kind: 'stalled', t: 12, until: 15 },
    { kind: 'recloses', t: 20, phase: 0 },
    { kind: 'opens', t: 50, phase: 0 },
  ]
  expect(openSpells(marks, 60)).toEqual([
    [10, 20],
    [50, 60],
  ])
  expect(openSpells([], 60)).toEqual([])
})

it('the phase at a time is found by walking the cycle', () => {
  const { given } = mill
  expect([0, 119, 120, 179, 180, 479, 480, 599.9, 600, 10799].map((t) => phaseAt(given, t))).toEqual([
    0, 0, 1, 1, 2, 2, 0, 0, 1, 2,
  ])
})

it('a motor held still draws what it draws: its mean amps are never over its peak', () => {
  const { figures, given } = judged(
    { 'duty.phases.2.torque': '200 N·m', 'duty.repeatFor': '16 min', 'cutoff.fitted': 'none' },
    'appleMill',
  )
  expect(figures.stalled).not.toBeNull()
  expect(figures.work.got).toBeLessThan(60)
  expect(figures.workAmps).toBeLessThanOrEqual(given.parts.controller.currentLimit * 1.01)
  expect(figures.workAmps).toBeGreaterThan(0.5 * given.parts.controller.currentLimit)
})
