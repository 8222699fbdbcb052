// Limits in which the plant must become a simpler one, and changes of a job that change nothing.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import type { Job } from '../../../sim/job.ts'
import { type Parts, STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'
import { type Changes, near, plantWith } from './lab.ts'
import { follow, holding } from './trial.ts'

type Run = ReturnType<typeof execute>

const job = (name: string): Job =>
  referenceJob(references.base, references.runs.find((one) => one.name === name)!, 'precise')

const withParts = (one: Job, changes: Changes): Job => {
  const parts = Object.entries(one.parts).map(([name, part]) => [
    name,
    part && { ...part, ...changes[name as keyof Parts] },
  ])
  return { ...one, parts: Object.fromEntries(parts) as Parts }
}

const execute = (one: Job, until: number, samples: readonly number[]) => finish(run(one, { until, samples }))

const HOT = [STATE.windingC, STATE.frameC, STATE.switchC]

/** Largest difference of a temperature between samples, K. */
const apart = (one: Run, other: Run): number =>
  Math.max(...one.samples.flatMap((state, n) => HOT.map((h) => Math.abs(state[h] - other.samples[n][h]))))

const openings = ({ trace }: Run) =>
  trace.marks.filter(({ kind }) => kind === 'opens' || kind === 'recloses').map(({ t }) => t)

const times = [4, 29, 60, 150, 300]

describe('a rigid belt', () => {
  const usual = job('fan-lost')
  const { rotor, machine, belt } = usual.parts

  it('inertia may sit at either end, by the ratio squared', () => {
    const moved = withParts(usual, {
      rotor: { flywheel: rotor.flywheel + machine.inertia / belt.machinePulley ** 2 },
      machine: { inertia: 0 },
    })
    const other = withParts(usual, { machine: { inertia: 0 } })
    expect(apart(execute(usual, 300, times), execute(moved, 300, times))).toBeLessThan(1e-6)
    expect(apart(execute(usual, 300, times), execute(other, 300, times))).toBeGreaterThan(0.02)
  })

  it('two stages are one of the product of their ratios', () => {
    const stages = withParts(usual, {
      belt: { motorPulley: 0.05, jackshaftLarge: 0.1, jackshaftSmall: 0.08, machinePulley: 0.12 },
    })
    expect(apart(execute(usual, 300, times), execute(stages, 300, times))).toBeLessThan(1e-6)
  })
})

describe('no flywheel', () => {
  it('is where ever lighter ones lead, in proportion to their inertia', () => {
    const usual = job('surges')
    const bare = execute(withParts(usual, { rotor: { flywheel: 0 } }), 60, [4, 21.5, 60])
    const off = (flywheel: number) =>
      apart(bare, execute(withParts(usual, { rotor: { flywheel } }), 60, [4, 21.5, 60]))
    near(off(0.004) / off(0.002), 2, 0.1)
    near(off(0.002) / off(0.001), 2, 0.1)
    expect(off(1e-6)).toBeLessThan(2e-3)
  })
})

describe('no fan', () => {
  const lost = execute(job('fan-lost'), 300, times)
  const same: [string, Changes][] = [
    [
      'a shaft fan that moves no air',
      { heat: { cooling: 'shaft fan', windingToFanAir: 0, frameToFanAir: 0 } },
    ],
    ['a shaft fan whose full speed is never neared', { heat: { cooling: 'shaft fan', fanSpeed: 1e12 } }],
    ['a blower switched off', { heat: { cooling: 'blower', airflow: 0 } }],
    [
      'an enclosed motor, where still air took nothing from the winding',
      { heat: { cooling: 'enclosed', windingToAir: 0 } },
    ],
  ]

  it.each(same)('is %s', (name, changes) => {
    const other = execute(withParts(job('fan-lost'), changes), 300, times)
    const still = name.startsWith('an enclosed')
      ? execute(withParts(job('fan-lost'), { heat: { windingToAir: 0 } }), 300, times)
      : lost
    expect(apart(still, other)).toBeLessThan(1e-4)
  })

  it('is hotter than a fan', () => {
    const fan = execute(withParts(job('fan-lost'), { heat: { cooling: 'shaft fan' } }), 300, times)
    expect(lost.samples.at(-1)![STATE.windingC]).toBeGreaterThan(fan.samples.at(-1)![STATE.windingC] + 10)
  })
})

describe('no inductance', () => {
  const [volts, resistance, constant, inertia, windage] = [120, 0.9, 0.28, 0.006, 0.0006]
  // Without inductance the current follows at once, and the speed is a single exponential.
  const damping = windage + constant ** 2 / resistance
  const wanted = (t: number) =>
    ((constant * volts) / resistance / damping) * (1 - Math.exp((-damping * t) / inertia))
  const off = (inductance: number) => {
    const plant = plantWith({
      supply: { volts },
      winding: { resistance, constant, inductance },
      rotor: { inertia, windage },
    })
    const [state] = follow(plant, holding(0, 20), [0.05]).states
    return Math.abs(state[STATE.speed] - wanted(0.05))
  }

  it('is where ever smaller ones lead, in proportion', () => {
    near(off(2e-4) / off(1e-4), 2, 0.02)
    near(off(2e-5) / off(1e-5), 2, 0.02)
    expect(off(1e-8)).toBeLessThan(1e-4)
  })

  it('and a whole job goes there', () => {
    const at = (inductance: number) =>
      execute(withParts(job('fan-lost'), { winding: { inductance } }), 300, times)
    const tiny = at(2e-5)
    expect(tiny.trace.ending.kind).toBe('finished')
    expect(apart(at(6e-3), tiny)).toBeLessThan(0.01)
    expect(apart(at(6e-3), tiny)).toBeGreaterThan(0.002)
    expect(apart(at(2e-4), tiny)).toBeLessThan(0.001)
  })
})

describe('a phase in pieces', () => {
  const usual = job('fan-lost')
  const [start, cut, ...rest] = usual.duty.phases
  const split = (...lengths: number[]): Job => {
    const phases = [start, ...lengths.map((seconds) => ({ ...cut, seconds })), ...rest]
    return { ...usual, duty: { ...usual.duty, phases } }
  }
  const all = [600, 1500, 2700]
  const whole = execute(usual, 2700, all)

  it('changes nothing but the solver’s steps', () => {
    const pieces = execute(split(10.3, 0.7, 13), 2700, all)
    expect(apart(whole, pieces)).toBeLessThan(0.005)
    expect(openings(whole).length).toBe(5)
    expect(openings(pieces).length).toBe(5)
    openings(whole).forEach((t, n) => {
      near(openings(pieces)[n], t, 2e-5)
    })
  })

  it('changes nothing at all where a piece has no length', () => {
    const pieces = execute(split(0, 24, 1e-10), 2700, all)
    expect(apart(whole, pieces)).toBe(0)
    expect(openings(pieces)).toEqual(openings(whole))
  })

  it('would change something were a piece longer', () => {
    expect(apart(whole, execute(split(10.3, 0.8, 13), 2700, all))).toBeGreaterThan(0.02)
  })
})

describe('a rest before it all', () => {
  const later = 137.31
  const usual = job('stall-at-limit')
  const shifted: Job = {
    ...usual,
    duty: {
      ...usual.duty,
      seconds: usual.duty.seconds + later,
      phases: [{ ...usual.duty.phases[1], speed: 0, seconds: later }, ...usual.duty.phases],
    },
  }

  it('shifts time and nothing else', () => {
    const all = [29, 120, 600, 900]
    const now = execute(usual, 900, all)
    const then = execute(
      shifted,
      900 + later,
      all.map((t) => t + later),
    )
    expect(apart(now, then)).toBeLessThan(0.005)
    expect(openings(now).length).toBe(4)
    openings(now).forEach((t, n) => {
      near(openings(then)[n] - later, t, 2e-5)
    })
  })
})
