// The duty: surge edges where they are said to be, and mean torques against brute force.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cycleSeconds, meanTorque, type Phase, phaseSeconds, surgeAt } from '../../sim/duty.ts'
import type { Cut } from '../../sim/parts/machine.ts'

const phase = (changes: Partial<Phase> = {}): Phase => ({
  name: '',
  seconds: 60,
  speed: 10,
  cut: { kind: 'torque', torque: 4 },
  surge: null,
  ...changes,
})
const surging = (every: number, lasts: number, seconds = 60) =>
  phase({ seconds, surge: { torque: 3, every, lasts } })

describe('surges', () => {
  it('begin at n · every and end at n · every + lasts, exactly', () => {
    const milling = surging(12, 3)
    expect(surgeAt(milling, 0)).toEqual({ torque: 3, until: 3 })
    expect(surgeAt(milling, 2.999999)).toEqual({ torque: 3, until: 3 })
    expect(surgeAt(milling, 3)).toEqual({ torque: 0, until: 12 })
    expect(surgeAt(milling, 11.9)).toEqual({ torque: 0, until: 12 })
    expect(surgeAt(milling, 12)).toEqual({ torque: 3, until: 15 })
  })

  it('a step without them has no edge', () => {
    expect(surgeAt(phase(), 5)).toEqual({ torque: 0, until: Infinity })
  })

  it('followed edge by edge they neither stick nor drift: after a million they begin where a product says', () => {
    // 0.1 and 0.03 are no binary fractions: adding them up goes astray, as the last line shows.
    const quick = surging(0.1, 0.03, 1e6)
    let t = 0
    let added = 0
    for (let n = 0; n < 1e6; n++) {
      const now = surgeAt(quick, t)
      if (now.torque !== 3) throw new Error(`no surge at ${t}, number ${n}`)
      if (now.until !== n * 0.1 + 0.03) throw new Error(`surge ${n} ends at ${now.until}`)
      const pause = surgeAt(quick, now.until)
      if (pause.torque !== 0 || !(pause.until > now.until)) throw new Error(`stuck at ${now.until}`)
      t = pause.until
      added += 0.1
    }
    expect(t).toBe(1e6 * 0.1)
    expect(added).not.toBe(1e6 * 0.1)
  })

  it('always end later than now', () => {
    const time = fc.double({ min: 0, max: 2.6e6, noNaN: true })
    const every = fc.double({ min: 0.05, max: 1e5, noNaN: true })
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true })
    fc.assert(
      fc.property(every, share, time, (e, s, t) => {
        expect(surgeAt(surging(e, e * s, 2.6e6), t).until).toBeGreaterThan(t)
      }),
      { seed: 3, numRuns: 2000 },
    )
  })
})

/** Integral of the surges over a step, from edge to edge, cut at the step's end. N·m·s */
function integral(surged: Phase): number {
  let sum = 0
  for (let t = 0; t < surged.seconds; ) {
    const { torque, until } = surgeAt(surged, t)
    const end = Math.min(until, surged.seconds)
    sum += torque * (end - t)
    t = end
  }
  return sum
}

describe('mean torque', () => {
  it('counts a surge that the step’s end cuts short: 3 + 3 + 2 of 10 s', () => {
    expect(meanTorque(surging(4, 3, 10))).toBeCloseTo(4 + (3 * 8) / 10, 12)
    expect(meanTorque(surging(4, 3, 9))).toBeCloseTo(4 + (3 * 7) / 9, 12)
    expect(meanTorque(surging(60, 3, 10))).toBeCloseTo(4 + (3 * 3) / 10, 12)
    expect(meanTorque(surging(60, 30, 10))).toBeCloseTo(7, 12)
  })

  it('is the brute-force integral over the step', () => {
    const every = fc.double({ min: 0.05, max: 100, noNaN: true })
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true })
    fc.assert(
      fc.property(every, share, fc.double({ min: 0.1, max: 500, noNaN: true }), (e, s, seconds) => {
        const surged = surging(e, e * s, seconds)
        expect(meanTorque(surged) * seconds).toBeCloseTo(4 * seconds + integral(surged), 4)
      }),
      { seed: 5, numRuns: 500 },
    )
  })

  it.each<[string, Cut, number]>([
    ['a torque', { kind: 'torque', torque: 4 }, 4],
    ['a power, at the asked speed: 200 W / 10 rad/s', { kind: 'power', power: 200, fullAbove: 2.5 }, 20],
    ['a power, never under its full speed', { kind: 'power', power: 200, fullAbove: 20 }, 10],
    ['a fan, at the asked speed: 0.05 · 10²', { kind: 'fan', coefficient: 0.05 }, 5],
  ])('of %s', (_, cut, torque) => {
    expect(meanTorque(phase({ cut }))).toBeCloseTo(torque, 12)
  })

  it('of a step without length is that of its cut', () => {
    expect(meanTorque(surging(4, 3, 0))).toBe(4)
  })
})

describe('lengths', () => {
  it('a step of a nanosecond or less is skipped', () => {
    expect(phaseSeconds(phase({ seconds: 1e-9 }))).toBe(0)
    expect(phaseSeconds(phase({ seconds: 2e-9 }))).toBe(2e-9)
    expect(phaseSeconds(phase({ seconds: 0 }))).toBe(0)
  })
  it('a cycle is as long as its steps', () => {
    const phases = [phase({ seconds: 120 }), phase({ seconds: 1e-10 }), phase({ seconds: 60 })]
    expect(cycleSeconds({ phases, seconds: 3600, startC: 25 })).toBe(180)
  })
})
