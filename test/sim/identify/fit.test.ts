// Fits of warm-up logs: the twin's motors found again, what a log cannot settle, and what it is refused for.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Fit, fitWarmUp } from '../../../sim/identify/fit.ts'
import { HEAT_NUMBERS, type HeatNumber } from '../../../sim/identify/heatPath.ts'
import { type Log, readLog } from '../../../sim/identify/log.ts'
import { METERS, type Protocol, RECOMMENDED, type Trial, trial } from './warmUpTwin.ts'

const DOUBT = { amps: METERS.ampsGain, resistance: METERS.resistance, friction: METERS.friction }
const EXACT = { kelvin: 0.02, jitter: 0, ohms: 1e-4, ampsGain: 0, resistance: 0, friction: 0 }
const SURE = { amps: 0, resistance: 0, friction: 0 }
const WITH_OHMS: Protocol = { ...RECOMMENDED, ohms: true }
/** Seeds by cooling: fan on the shaft, no fan, enclosed. */
const [FAN, NONE, ENCLOSED] = [3, 1, 2]

/** The fit of a log. Throws where it is refused. */
function fitted(log: Log, { motor }: Trial, doubt = DOUBT, held?: number): Fit {
  const fit = fitWarmUp(log, motor, doubt, held)
  if (!fit.ok) throw new Error(`${fit.wrong} ${fit.wouldDo}`)
  return fit
}
const refusal = (log: Log, { motor }: Trial) => {
  const fit = fitWarmUp(log, motor, DOUBT)
  if (fit.ok) throw new Error('was fitted')
  return fit
}
const off = (fit: Fit, { truth }: Trial, name: HeatNumber) => fit.numbers[name]!.value / truth[name] - 1
/** How far two fits of the same log lie apart, as a share of the whole band. */
const apart = (a: Fit, b: Fit, name: HeatNumber) =>
  Math.abs(Math.log(a.numbers[name]!.value / b.numbers[name]!.value)) /
  Math.log(b.numbers[name]!.high / b.numbers[name]!.low)
/** The log with a column changed, or cut to some rows. */
const changed = (log: Log, name: keyof Log, change: (value: number, row: number) => number): Log => ({
  ...log,
  [name]: (log[name] as Float64Array).map(change),
})
function cut(log: Log, from: number, to: number): Log {
  const columns = Object.entries(log).map(([name, value]) => [
    name,
    value instanceof Float64Array ? value.slice(from, to) : value,
  ])
  return { ...Object.fromEntries(columns), rows: Math.min(to, log.rows) - from }
}

describe('the motor of a clean log is found again', () => {
  // The one-page plant, other code and another integrator; friction, ohms and amps as they are.
  it.each([
    ['no fan', NONE, 0.05],
    ['enclosed', ENCLOSED, 0.03],
    ['fan', FAN, 0.05],
  ])('%s', (_, seed, within) => {
    const one = trial(seed, WITH_OHMS, EXACT)
    const fit = fitted(one.log, one, SURE)
    for (const name of ['windingCapacity', 'frameCapacity', 'windingToFrame'] as const)
      expect(Math.abs(off(fit, one, name)), name).toBeLessThan(within)
    expect(fit.frameMiss).toBeLessThan(0.05)
    expect(Object.keys(fit.numbers)).toHaveLength(seed === ENCLOSED ? 4 : 7)
  })
})

describe('bands (how often true values lie in them: test/campaigns/warmUp.ts)', () => {
  it('a meter that may be off more widens every number', () => {
    const one = trial(NONE, WITH_OHMS)
    const [good, poor] = [DOUBT, { ...DOUBT, resistance: 0.3 }].map((doubt) => fitted(one.log, one, doubt))
    for (const name of HEAT_NUMBERS) {
      const width = (fit: Fit) => fit.numbers[name]!.high / fit.numbers[name]!.low
      expect(width(poor), name).toBeGreaterThan(width(good))
    }
    expect(poor.next.join()).toContain('30 %')
    expect(good.next.join()).not.toContain('ohms')
  })

  it('is the same every time, and lies in order', () => {
    const one = trial(FAN, RECOMMENDED)
    const fit = fitted(one.log, one)
    expect(fitted(one.log, one)).toEqual(fit)
    for (const { low, value, high } of Object.values(fit.numbers)) {
      expect(low).toBeLessThan(value)
      expect(value).toBeLessThan(high)
    }
  })
})

describe('what the log leaves open', () => {
  const one = trial(NONE, WITH_OHMS)

  it('heating alone: the parts keep the proportions of the motor’s own numbers, and the cooling-off is asked for', () => {
    const protocol = { ...RECOMMENDED, heating: 7200, cooling: 0 }
    const heating = trial(NONE, protocol)
    const fit = fitted(heating.log, heating)
    for (const name of ['windingCapacity', 'windingToFrame', 'windingToAir'] as const)
      expect(fit.numbers[name]!.settled, name).toBe(false)
    expect(fit.next.join()).toContain('Log the cooling-off too: 20 minutes after switching off')
    // The whole is settled all the same, as well as the heat that went in is known.
    const clean = trial(NONE, protocol, EXACT)
    const { numbers } = fitted(clean.log, clean, SURE)
    const stored = (value: (name: HeatNumber) => number) => value('windingCapacity') + value('frameCapacity')
    const found = stored((name) => numbers[name]!.value)
    expect(Math.abs(found / stored((name) => clean.truth[name]) - 1)).toBeLessThan(0.05)
  })

  it('can alone with cooling-off: ohms are asked for; with ohms the winding is settled', () => {
    const blind = changed(one.log, 'ohms', () => Number.NaN)
    expect(fitted(blind, one).next.join()).toContain('Read the winding’s ohms cold')
    const fit = fitted(one.log, one)
    expect(fit.numbers.windingCapacity!.settled).toBe(true)
    expect(fit.numbers.windingToFrame!.settled).toBe(true)
    expect(fit.windingMiss).not.toBeNull()
    expect(fitted(blind, one).windingMiss).toBeNull()
  })

  it('winding ohms alone will do', () => {
    const fit = fitted(
      changed(one.log, 'frameC', () => Number.NaN),
      one,
    )
    expect(fit.frameMiss).toBeNull()
    expect(Math.abs(off(fit, one, 'windingCapacity'))).toBeLessThan(0.4)
  })
})

describe('logs with something amiss', () => {
  const one = trial(NONE, RECOMMENDED)
  const { log } = one
  const plain = fitted(log, one)

  it('a slip of the pen counts little, and is told', () => {
    const slipped = fitted(
      changed(log, 'frameC', (value, row) => (row === 30 ? 10 * value : value)),
      one,
    )
    for (const name of HEAT_NUMBERS) expect(apart(slipped, plain, name), name).toBeLessThan(0.25)
    expect(slipped.notes.join()).toContain('at 30 min')
  })

  it('rpm not logged: from the volts, or as held', () => {
    const { winding } = one.motor
    const blind = changed(log, 'speed', () => Number.NaN)
    expect(refusal(blind, one).wouldDo).toContain('Record motor rpm')
    const speed = log.speed[20]
    const volts = log.amps.map((i, row) =>
      i > 0 ? winding.constant * log.speed[row] + 1.5 + winding.resistance * 1.15 * i : 0,
    )
    for (const fit of [fitted({ ...blind, volts }, one), fitted(blind, one, DOUBT, speed)])
      for (const name of HEAT_NUMBERS) expect(apart(fit, plain, name), name).toBeLessThan(0.1)
  })

  it('a reading a second gives the same numbers, within their bands', () => {
    const often = trial(NONE, { ...RECOMMENDED, every: 2 })
    const fit = fitted(often.log, often)
    expect(fit.frameC).toHaveLength(2701)
    expect(fit.frameMiss).toBeLessThan(0.6)
    for (const name of HEAT_NUMBERS) {
      expect(fit.numbers[name]!.low, name).toBeLessThan(plain.numbers[name]!.high)
      expect(fit.numbers[name]!.high, name).toBeGreaterThan(plain.numbers[name]!.low)
    }
  }, 60_000)

  it('a motor still warm at the start is noticed, and its air taken from the job', () => {
    const warm = cut(log, 30, log.rows)
    const fit = fitted(warm, one)
    expect(fit.notes.join()).toContain('still warm')
  })

  it.each<[string, (log: Log) => Log, string, string]>([
    ['no amps', (l) => changed(l, 'amps', () => Number.NaN), 'no amps', 'Record amps'],
    ['never ran', (l) => changed(l, 'amps', () => 0), 'never ran', 'warm-up'],
    ['constant temperature', (l) => changed(l, 'frameC', () => 21), 'only 0.0 K', '15 K'],
    ['warmed by little', (l) => changed(l, 'frameC', (t) => 21 + (t - 21) / 20), 'warmed by only', '15 K'],
    ['too short', (l) => cut(l, 0, 9), 'still warming when the log ended at 8 min', 'cooling-off too'],
    ['upside down', (l) => changed(l, 'frameC', (t) => 130 - t), 'do not follow', 'one motor lead'],
    ['hundredfold amps', (l) => changed(l, 'amps', (i) => 100 * i), 'more than ten times', 'DC'],
    ['too few readings', (l) => cut(l, 0, 4), '4 readings', 'a minute'],
  ])('refused: %s', (_, change, wrong, wouldDo) => {
    const found = refusal(change(log), one)
    expect(found.wrong).toContain(wrong)
    expect(found.wouldDo).toContain(wouldDo)
  })
})

it('any log that can be read gives finite numbers in order, or two sentences', () => {
  const { motor } = trial(FAN, RECOMMENDED)
  const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const row = fc.tuple(fc.integer({ min: 0, max: 200 }), within(-3, 3), within(0.7, 1.3), within(500, 5000))
  const shape = fc.record({
    amps: within(3, 20),
    rise: within(5, 120),
    tau: within(100, 3000),
    on: within(0.2, 1),
  })
  let fits = 0
  fc.assert(
    fc.property(fc.array(row, { minLength: 12, maxLength: 60 }), shape, (rows, { amps, rise, tau, on }) => {
      let time = 0
      let can = 20
      const text = rows
        .map(([step, scatter, share, rpm], n) => {
          const running = n < on * rows.length
          time += step
          can += ((running ? 20 + rise : 20) - can) * -Math.expm1(-step / tau)
          return [time, can + scatter, running ? amps * share : 0, running ? rpm : 0].join(',')
        })
        .join('\n')
      const read = readLog(`s,can °C,amps,rpm\n${text}`)
      if (!read.ok) return
      const fit = fitWarmUp(read.log, motor)
      if (!fit.ok) {
        expect(fit.wrong).toMatch(/\.$/)
        expect(fit.wouldDo).toMatch(/\.$/)
        return
      }
      fits++
      for (const { low, value, high } of Object.values(fit.numbers))
        expect(low > 0 && low <= value && value <= high && high < 1e9).toBe(true)
      expect([...fit.frameC, ...fit.windingC].every(Number.isFinite)).toBe(true)
    }),
    { seed: 31, numRuns: 250 },
  )
  expect(fits).toBeGreaterThan(50)
}, 120_000)
