// The duty's clock: it never drifts, and it never stands still.
import { describe, expect, it } from 'vitest'
import { clock, nextPhase, phaseNow, phaseOver } from '../../sim/clock.ts'
import { cycleSeconds, type Duty } from '../../sim/duty.ts'

const dutyOf = (...lengths: number[]): Duty => ({
  phases: lengths.map((seconds, index) => ({
    name: String(index),
    seconds,
    speed: 0,
    cut: { kind: 'torque', torque: 0 },
    surge: null,
  })),
  seconds: 1e9,
  startC: 20,
})

describe('clock', () => {
  it('after a million cycles stands where a product says; adding lengths up would not', () => {
    const duty = dutyOf(0.1, 0.2, 1 / 3)
    const now = clock()
    let added = 0
    for (let n = 0; n < 3e6; n++) {
      added += duty.phases[now.phase].seconds
      nextPhase(duty, now, cycleSeconds(duty))
    }
    expect(now).toEqual({ phase: 0, cycles: 1e6, phaseStart: 1e6 * cycleSeconds(duty) })
    expect(added).not.toBe(now.phaseStart)
    nextPhase(duty, now, cycleSeconds(duty))
    expect(now).toEqual({ phase: 1, cycles: 1e6, phaseStart: 1e6 * cycleSeconds(duty) + 0.1 })
  })

  it('goes through the phases in order and begins again', () => {
    const duty = dutyOf(120, 60, 300)
    const now = clock()
    const seen: string[] = []
    for (let n = 0; n < 5; n++) {
      seen.push(`${phaseNow(duty, now).name} at ${now.phaseStart}`)
      nextPhase(duty, now, cycleSeconds(duty))
    }
    expect(seen).toEqual(['0 at 0', '1 at 120', '2 at 180', '0 at 480', '1 at 600'])
  })

  it('a phase is over at its end, or so near it that no step fits; not a microsecond before', () => {
    const duty = dutyOf(120, 60)
    const now = clock()
    expect(phaseOver(duty, now, 0)).toBe(false)
    expect(phaseOver(duty, now, 120 - 1e-6)).toBe(false)
    expect(phaseOver(duty, now, 120 - 1e-8)).toBe(true)
    expect(phaseOver(duty, now, 120)).toBe(true)
    nextPhase(duty, now, cycleSeconds(duty))
    expect(phaseOver(duty, now, 120)).toBe(false)
    expect(phaseOver(duty, now, 180)).toBe(true)
  })

  it('a phase that is skipped is over at once, and takes no time', () => {
    const duty = dutyOf(10, 1e-9, 0, 20)
    const now = clock()
    nextPhase(duty, now, cycleSeconds(duty))
    for (const phase of [1, 2]) {
      expect(now.phase).toBe(phase)
      expect(phaseOver(duty, now, 10)).toBe(true)
      nextPhase(duty, now, cycleSeconds(duty))
    }
    expect(now).toEqual({ phase: 3, cycles: 0, phaseStart: 10 })
  })

  it('a phase is over at its end after a month of cycles too, and lasts', () => {
    const duty = dutyOf(0.7, 0.3)
    const now = { phase: 0, cycles: 2_592_000, phaseStart: 2_592_000 * cycleSeconds(duty) }
    expect(phaseOver(duty, now, now.phaseStart + 0.7)).toBe(true)
    expect(phaseOver(duty, now, now.phaseStart + 0.69)).toBe(false)
  })
})
