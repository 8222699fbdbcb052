// The steady turn against closed forms (O03, P12), against long runs, and where there is none.
import { describe, expect, it } from 'vitest'
import { cycles } from '../../../sim/cycles.ts'
import { type SteadyCycle, steadyCycle } from '../../../sim/cycles/steady.ts'
import { heatOf } from '../../../sim/cycles/turn.ts'
import { cycleSeconds, type Phase } from '../../../sim/duty.ts'
import type { Job } from '../../../sim/job.ts'
import { finish, run } from '../../../sim/run.ts'
import { oracle, publishedCase } from '../../checks/files.ts'
import { type Changes, ENDLESS, partsWith } from '../physics/lab.ts'
import { closed, duty } from './duties.ts'

const steady = (job: Job) => finish(steadyCycle(job))
const found = (job: Job): SteadyCycle => {
  const one = steady(job)
  if (!one) throw new Error('there is no steady turn')
  return one
}
const near = (values: Float64Array, wanted: Float64Array, most: number) => {
  for (const [h, value] of wanted.entries()) expect(Math.abs(values[h] - value)).toBeLessThanOrEqual(most)
}

const phase = (seconds: number, speed: number, torque = 0): Phase => ({
  name: '',
  seconds,
  speed,
  cut: { kind: 'torque', torque },
  surge: null,
})

const trial = (changes: Changes, phases: readonly Phase[], turns: number, startC = 20): Job => ({
  parts: partsWith(changes),
  plate: {},
  duty: { phases, seconds: turns * phases.reduce((sum, { seconds }) => sum + seconds, 0), startC },
  accuracy: 'precise',
})

/** A frame that stays as the air, whatever flows into it. */
const cold = { frameCapacity: 1e8, frameToAir: 1e6 }

/** A light motor with its speed held: up and down in milliseconds. Its copper makes no heat. */
const SPEED = 300
const light: Changes = {
  supply: { volts: 1e3, formFactor: 0 },
  controller: { holds: 'speed feedback', response: 0.02 },
  rotor: { inertia: 1e-5 },
}

describe('O03: on and off, warming faster than cooling since the fan stops', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O03')
  const { theta_inf_K: rise, tau_heat_min, tau_cool_min, t_on_min, t_off_min } = inputs
  // 1 W/K at rest; the shaft fan adds what shortens the time constant. All the heat is friction's.
  const fan = tau_cool_min / tau_heat_min - 1
  const job = (turns: number) =>
    trial(
      {
        ...light,
        rotor: { inertia: 1e-5, dryFriction: (rise * (1 + fan)) / SPEED },
        heat: {
          ...cold,
          cooling: 'shaft fan',
          fanSpeed: SPEED,
          frictionShare: 1,
          windingCapacity: 60 * tau_cool_min,
          windingToAir: 1,
          windingToFanAir: fan,
        },
      },
      [phase(60 * t_on_min, SPEED), phase(60 * t_off_min, 0)],
      turns,
    )

  it('settles between the two temperatures of the closed form', () => {
    const { z, peaks } = found(job(40))
    expect(Math.abs(z[0] - 20 - answers.theta_min_K)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(peaks[0] - 20 - answers.theta_max_K)).toBeLessThanOrEqual(0.01)
  })

  it('comes there by turns, from a first peak, in as many cycles', () => {
    const { computed } = finish(cycles(job(400)))
    expect(Math.abs(computed[0].turn.peaks[0] - 20 - answers.first_cycle_peak_K)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(computed.at(-1)!.turn.peaks[0] - 20 - answers.theta_max_K)).toBeLessThanOrEqual(0.01)
    const enough = finish(cycles(job(answers.cycles_to_99pct))).computed.at(-1)!.turn.peaks[0] - 20
    expect(enough).toBeGreaterThanOrEqual(0.99 * answers.theta_max_K)
    expect(computed.length).toBeLessThan(20)
  })
})

describe('P12: one body, two loads, never at rest (Dubey, Fundamentals of Electrical Drives 2e, Ex 4.1)', () => {
  type Numbers = Record<string, number>
  const { inputs, published, recomputed } = publishedCase<Numbers, Numbers, Numbers>('P12')
  const { tau_s, theta_min, theta_noload_ss, t_on_s, t_off_s } = inputs
  // Brush heat is straight in the current: 1 W/K, 10 V; friction alone makes the no-load heat.
  const [constant, drop] = [0.3, 10]
  const amps = (watts: number) => watts / drop
  const idle = amps(theta_noload_ss)
  const job = (loaded: number) =>
    trial(
      {
        ...light,
        winding: { constant, brushDrop: drop },
        rotor: { inertia: 1e-5, dryFriction: constant * idle },
        heat: { ...cold, windingCapacity: tau_s, windingToAir: 1, brushShare: 1, frictionShare: 0 },
      },
      [phase(t_on_s, SPEED, constant * (amps(loaded) - idle)), phase(t_off_s, SPEED)],
      100,
    )

  it('swings between the published temperatures', () => {
    const { z, peaks } = found(job(recomputed.theta_ss_loaded))
    expect(Math.abs(z[0] - 20 - theta_min)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(peaks[0] - 20 - recomputed.theta_max)).toBeLessThanOrEqual(0.02)
    // The published temperatures have three figures.
    const byBook = found(job(published.theta_ss_loaded))
    expect(Math.abs(byBook.peaks[0] - 20 - published.theta_max)).toBeLessThanOrEqual(0.05)
    expect(Math.abs(byBook.z[0] - 20 - theta_min)).toBeLessThanOrEqual(0.05)
  })

  it('so does a run of it', () => {
    const given = job(recomputed.theta_ss_loaded)
    const { samples } = finish(run(given, { samples: [2700, 2710] }))
    expect(Math.abs(samples[0][3] - 20 - theta_min)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(samples[1][3] - 20 - recomputed.theta_max)).toBeLessThanOrEqual(0.02)
  })
})

describe('against the end of a long run', () => {
  it.each(closed)('%s', (_name, job) => {
    const { z, peaks } = found(job)
    const end = finish(cycles({ ...job, duty: { ...job.duty, seconds: 96 * 3600 } })).computed.at(-1)!
    near(z, heatOf(end.turn.start.states), 0.02)
    near(peaks, end.turn.peaks, 0.02)
  })

  it('directly, 48 h of the 10 min cycle', () => {
    const [, job] = closed.find(([name]) => name === '10 min cycle')!
    const seconds = 48 * 3600
    const { samples } = finish(
      run({ ...job, duty: { ...job.duty, seconds } }, { samples: [seconds - cycleSeconds(job.duty)] }),
    )
    const { z } = found(job)
    near(z, heatOf(samples[0]), 0.02)
  })
})

describe('what it says', () => {
  it('takes a handful of tries, and a job like it fewer still', () => {
    const first = found(duty(8))
    expect(first.tries).toBeLessThanOrEqual(5)
    expect(first.effort.rates).toBeLessThanOrEqual(8_000)
    const hotter = duty(8, { Ta: 27 })
    const again = finish(steadyCycle(hotter, first.near))!
    expect(again.effort.rates).toBeLessThan(first.effort.rates * 0.8)
    near(again.z, found(hotter).z, 0.02)
  })

  it('bridges the cutoff: peaks above its opening are told', () => {
    const { peaks } = found(duty(8, { Topen: 60, Tclose: 40 }))
    expect(peaks[2]).toBeCloseTo(found(duty(8)).peaks[2], 6)
    expect(peaks[2]).toBeGreaterThan(60)
  })

  it('its start is one from which a run comes back', () => {
    const job = duty(8)
    const { start, z } = found(job)
    const { trace } = finish(run(job, { from: start, until: cycleSeconds(job.duty) }))
    near(heatOf(trace.checkpoints.at(-1)!.states), z, 0.002)
  })

  it('there is none where heat runs away', () => {
    expect(
      steady(
        duty(8, { fan: 'none' }, [
          [40, 300, 9],
          [20, 0, 0],
        ]),
      ),
    ).toBeNull()
    // Copper at a fixed current: beyond √(G·255/R20) = 11.9 A its heat grows faster than it is carried away.
    const job = (limit: number) =>
      trial(
        {
          supply: { volts: 1e4 },
          controller: { currentLimit: limit },
          rotor: { inertia: ENDLESS },
          winding: { inductance: 1, resistance: 0.9 },
          heat: { ...cold, windingCapacity: 100, windingToAir: 0.5 },
        },
        [phase(60, 1e6)],
        10,
      )
    expect(steady(job(13))).toBeNull()
    // 8 A settle: T = Ta + I²R20(1 + (Ta − 20)/255)/(G − I²R20/255).
    const loss = 8 * 8 * 0.9
    expect(found(job(8)).z[0]).toBeCloseTo(20 + loss / (0.5 - loss / 255), 1)
  })
})
