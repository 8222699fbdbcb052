// Published loads in turns: what a body of a long time constant settles at is their root mean square.
import { describe, expect, it } from 'vitest'
import { steadyCycle } from '../../../sim/cycles/steady.ts'
import type { Phase } from '../../../sim/duty.ts'
import { judge } from '../../../sim/judge.ts'
import { finish, run } from '../../../sim/run.ts'
import { oracle, publishedCase } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'
import { bodyJob, CONSTANT, phase, rest, torqueFor, USUAL } from './body.ts'

type Numbers = Record<string, number>

describe('root-mean-square loads: what a body of a long time constant settles at in short turns', () => {
  /** A level load, or one that rises from a to b; in minutes. Load 0 may be a rest. */
  type Step = readonly [from: number, to: number, minutes: number]
  /** Heats as the square of a load that rises from a to b: their mean. */
  const square = ([a, b]: Step) => (a * a + a * b + b * b) / 3
  /** A minute is ten here, so that stopping takes no time; and the heat hardly moves within a turn. */
  const LONG = 600
  const TAU = 1e7

  /** Load that is held for good with the same heat. `stops`: at load 0 it stands, where it cools `slower` times as slowly. */
  function equivalent(steps: readonly Step[], stops: boolean, slower = 1): number {
    const heat = (50 * USUAL) / Math.max(...steps.map(square))
    const phases = steps.map((each): Phase => {
      const seconds = each[2] * LONG
      return stops && each[1] === 0 && each[0] === 0
        ? rest(seconds)
        : phase(seconds, torqueFor(heat * square(each)))
    })
    const job = bodyJob({ running: TAU, resting: slower * TAU }, phases)
    const { z, peaks } = finish(steadyCycle(job))!
    expect(peaks[0] - z[0]).toBeLessThan(0.5)
    return Math.sqrt((USUAL * ((z[0] + peaks[0]) / 2 - 20)) / heat)
  }
  const { answers } = oracle<unknown, Numbers>('O18')

  it('P25, J. B. Gupta Ex 57 and 58 p. 152 (as transcribed in a public companion)', () => {
    const { inputs, published, recomputed } = publishedCase<Record<string, number[]>, Numbers, Numbers>('P25')
    const power = equivalent(
      inputs.kW.map((kW, n) => [kW, kW, inputs.min[n]]),
      false,
    )
    near(power, published.P_rms_kW, 0.001)
    near(power, answers.gupta_57, 0.001)
    const torque = equivalent(
      inputs.T.map((each, n) => [each, each, inputs.T_min[n]]),
      false,
    )
    near(torque, recomputed.T_rms, 0.001)
    near(torque, answers.gupta_58_T, 0.001)
    near(torque * ((Number(inputs.rpm) * Math.PI) / 30), published.P_from_Trms_W, 0.001)
    // And the amps: a motor's heating value of the current goes with them.
    const job = bodyJob(
      { running: TAU },
      inputs.T.map((each, n) => phase(inputs.T_min[n] * LONG, each / 10)),
    )
    const smooth = { ...job, parts: { ...job.parts, supply: { ...job.parts.supply, formFactor: 1 } } }
    const { trace } = finish(run(smooth))
    near(judge(smooth, trace).rmsAmps * CONSTANT * 10, recomputed.T_rms, 0.002)
  })

  // Loads and times of the next are not in the file: those of P34 are read in a public companion's solutions, the
  // others are from memory; that each gives its answer to the last digit says they are the right ones.
  it('P34, Theraja Ex 45.1: a fan on the shaft, so a rest counts for a third; printed in whole kW, 1 %', () => {
    const { published, recomputed } = publishedCase<unknown, Numbers, Numbers>('P34')
    const found = equivalent(
      [
        [100, 100, 10],
        [75, 75, 10],
        [50, 50, 20],
        [0, 0, 20],
      ],
      true,
      3,
    )
    near(found, published.rms, 0.01)
    near(found, recomputed.rms, 0.001)
    near(found, answers.theraja_45_1, 0.001)
  })

  it('P35, Theraja Ex 45.4', () => {
    const { published } = publishedCase<unknown, Numbers>('P35')
    const steps: readonly Step[] = [
      [100, 100, 10],
      [0, 0, 5],
      [60, 60, 8],
      [0, 0, 4],
    ]
    near(equivalent(steps, false), published.rms, 0.001)
    near(equivalent(steps, true), answers.theraja_45_4, 0.001)
  })

  it('P36, Theraja Ex 45.5: a load that rises from nothing', () => {
    const { published } = publishedCase<unknown, Numbers>('P36')
    const found = equivalent(
      [
        [0, 100, 5],
        [50, 50, 10],
        [0, 0, 3],
      ],
      true,
    )
    near(found, published.rms, 0.001)
    near(found, answers.theraja_45_5, 0.001)
  })

  it('P37, Theraja Ex 45.6: the last load comes back to the supply, and heats all the same', () => {
    const { published } = publishedCase<unknown, Numbers>('P37')
    const found = equivalent(
      [
        [200, 400, 4],
        [300, 300, 2],
        [50, 0, 1],
        [0, 0, 1],
      ],
      true,
    )
    near(found, published.rms, 0.001)
    near(found, answers.theraja_45_6, 0.001)
  })

  it('P39, Dubey Ex 4.3 p. 53: power comes back here too', () => {
    const { published } = publishedCase<unknown, Numbers>('P39')
    const found = equivalent(
      [
        [0, 400, 5],
        [500, 500, 5],
        [400, 400, 4],
        [0, 0, 2],
      ],
      true,
    )
    near(found, published.rms, 0.001)
    near(found, answers.dubey_4_3, 0.001)
  })

  it('O18, Kosow Ex 13-7: the same with a rest that counts for a third, and plain', () => {
    const steps: readonly Step[] = [
      [200, 200, 5],
      [20, 20, 5],
      [0, 0, 10],
      [100, 100, 10],
    ]
    near(equivalent(steps, true, 3), answers.kosow_13_7, 0.001)
    near(equivalent(steps, true), answers.kosow_13_7_plain, 0.001)
  })
})
