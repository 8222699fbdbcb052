// Figures worked out a second time, by brute force over the columns of real runs.
import { describe, expect, it } from 'vitest'
import { type Case, judged } from './judged.ts'

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
