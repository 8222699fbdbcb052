// Speed and integrator ride along: until they come round no turn counts, and then they are told ahead.
import { describe, expect, it } from 'vitest'
import { alongWay, NO_DRIFT, settled, underWay } from '../../../sim/cycles/riding.ts'
import { coldStart, heatOf, type Turn, turner, withHeat } from '../../../sim/cycles/turn.ts'
import type { Job } from '../../../sim/job.ts'
import { STATE, STATES } from '../../../sim/plant.ts'
import { finish } from '../../../sim/run.ts'
import { closed, duty } from './duties.ts'

const named = (wanted: string) => closed.find(([name]) => name === wanted)![1]
/** The first turns of a job, run one after the other. */
function turnsOf(job: Job, count: number): Turn[] {
  const turns = turner(job)
  const made: Turn[] = []
  for (let n = 0; n < count; n++) made.push(finish(turns.turn(made[n - 1]?.end ?? coldStart(job, STATES)))!)
  return made
}

describe('coming round', () => {
  it('a drive that rests is under way at once', () => {
    const [first] = turnsOf(named('one-minute cycle'), 1)
    expect(underWay(first, null)).toBe(true)
  })

  it('a heavy flywheel takes turns', () => {
    const turns = turnsOf(named('flywheel that takes turns to come up'), 12)
    const round = turns.map((turn, n) => underWay(turn, turns[n - 1] ?? null))
    expect(round.slice(0, 3)).toEqual([false, false, false])
    expect(round.at(-1)).toBe(true)
  })

  it('from one and the same heat it comes round with a few turns, or says that it does not', () => {
    const idle = duty(8, { Jfly: 0.1 }, [
      [20, 380, 6],
      [40, 380, 0],
    ])
    const turn = finish(settled(turner(idle), turnsOf(idle, 3)[2].end, NO_DRIFT, true))!
    expect(Math.abs(turn.end.states[STATE.speed] - turn.start.states[STATE.speed])).toBeLessThanOrEqual(0.002)
    const heavy = duty(8, { Jfly: 40 }, [
      [50, 300, 4],
      [10, 0, 0],
    ])
    expect(finish(settled(turner(heavy), coldStart(heavy, STATES), NO_DRIFT, true))).toBeNull()
  })
})

describe('told ahead', () => {
  it('the speed at a start to come is that of the run, and nearer to it than the last one known', () => {
    // Volts held: the speed goes with the heat of copper and magnets.
    const turns = turnsOf(named('never at rest, volts held'), 12)
    const [prior, last, before, wanted] = [3, 5, 6, 7].map((n) => turns[n])
    const z = heatOf(wanted.start.states)
    const told = alongWay({ prior, last, turns: 2 }, heatOf(before.start.states), z)
    const off = (start: Turn['start']) =>
      Math.abs(start.states[STATE.speed] - wanted.start.states[STATE.speed])
    expect(off(told)).toBeLessThan(0.2 * off(withHeat(last.end, z)))
    expect(heatOf(told.states)).toEqual(z)
  })
})
