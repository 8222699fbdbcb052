// A step's cut from the work itself: chosen, its kind changed, its one speed kept, left again; in the job and in a variant.
import { describe, expect, it } from 'vitest'
import { type CutName, CUTS } from '../../sim/cuts/index.ts'
import { meanTorque } from '../../sim/duty.ts'
import { read } from '../../sim/read.ts'
import { givenAt, inputAt, withChange } from '../../sim/scenario.ts'
import { changeCut, changeWork } from '../../ui/change/cuts.ts'
import { asked, edit } from '../../ui/change/inputs.ts'
import { choose } from '../../ui/change/variants.ts'
import type { State } from '../../ui/store.ts'
import { granted } from '../../ui/wishes.ts'
import { state } from './demo.ts'

const STEP = 'duty.phases.2'
const textAt = (now: State, path: string) => inputAt(asked(now), `${STEP}.${path}`)?.text
const phaseOf = (now: State) => {
  const reading = read(asked(now))
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return { ...reading.job.duty.phases[2], named: reading.cuts[0] }
}
const typed = (now: State, path: string, text: string | null) =>
  granted(now, { kind: 'edit', path: `${STEP}.${path}`, text })

describe.each(['as found', 'variant 1'])('of %s', (id) => {
  const start = choose(state(), id)
  const cut = changeCut(start, 2, 'cut')

  it('begins as turning, at the speed the step has, in place of its torque', () => {
    expect(givenAt(asked(cut), `${STEP}.cut.kind`)).toBe('turning')
    expect(givenAt(asked(cut), `${STEP}.torque`)).toBeUndefined()
    expect(textAt(cut, 'speed')).toBe('350 rpm')
    expect(phaseOf(cut).named).toMatchObject({ phase: 2, kind: 'turning', speed: phaseOf(start).speed })
  })

  it.each(Object.keys(CUTS) as CutName[])('every kind begins with an example that reads: %s', (work) => {
    const now = granted(cut, { kind: 'work', index: 2, work })
    expect(phaseOf(now).named.kind).toBe(work)
    // And back again, nothing left of it.
    expect(asked(changeWork(now, 2, 'turning'))).toEqual(asked(cut))
    // A step that rests is given a speed.
    const rest = changeWork(edit(start, { [`${STEP}.speed`]: null }), 2, work)
    expect(phaseOf(rest).speed).toBeGreaterThan(0)
  })

  it('of spindle speed and surface speed the newer stands', () => {
    const surface = typed(cut, 'cut.speed', '30 m/min')
    expect([textAt(surface, 'cut.speed'), givenAt(asked(surface), `${STEP}.speed`)]).toEqual([
      '30 m/min',
      undefined,
    ])
    expect(phaseOf(surface).speed).toBeCloseTo(20, 12)
    const spindle = typed(surface, 'speed', '200 rpm')
    expect([textAt(spindle, 'cut.speed'), textAt(spindle, 'speed')]).toEqual(['', '200 rpm'])
    // Emptied, it takes nothing with it.
    expect(textAt(typed(surface, 'cut.speed', null), 'cut.speed')).toBe('')
  })

  it('an input is edited by its path, and the torque follows', () => {
    const deeper = typed(cut, 'cut.depth', '2 mm')
    expect(
      meanTorque({ ...phaseOf(deeper), surge: null }) / meanTorque({ ...phaseOf(cut), surge: null }),
    ).toBeCloseTo((2 * 24) / 24.5, 9)
    const without = read(asked(typed(cut, 'cut.depth', null)))
    expect(without.ok ? [] : without.problems.map(({ path }) => path)).toEqual([`${STEP}.cut.depth`])
  })

  it('left for a torque, a power or a fan it leaves the same torque and speed', () => {
    const surface = typed(cut, 'cut.speed', '30 m/min')
    const before = phaseOf(surface)
    for (const kind of ['torque', 'power', 'fanTorque'] as const) {
      const after = phaseOf(changeCut(surface, 2, kind))
      expect(after.named).toBeUndefined()
      expect(after.speed / before.speed).toBeCloseTo(1, 3)
      expect(meanTorque(after) / meanTorque(before)).toBeCloseTo(1, 2)
    }
    const idle = changeCut(surface, 2, 'none')
    expect(givenAt(asked(idle), `${STEP}.cut`)).toBeUndefined()
    expect(phaseOf(idle).cut).toEqual({ kind: 'torque', torque: 0 })
  })
})

describe('a job that names a cut itself', () => {
  const own = { kind: 'turning', depth: { value: '1 mm', source: 'rule' }, feed: '0.1 mm', diameter: '50 mm' }
  const start = state()
  const scenario = [
    [`${STEP}.torque`, null],
    [`${STEP}.cut`, own],
  ].reduce((now, [path, value]) => withChange(now, path as string, value), start.scenario)
  const variant = choose({ ...start, scenario }, 'variant 1')
  const changes = (now: State) => Object.keys(now.variants[0].changes).filter((path) => path.startsWith(STEP))

  it('a variant of another kind takes the group out first, and comes back to no change at all', () => {
    const force = changeWork(variant, 2, 'force')
    expect(changes(force)).toEqual([
      `${STEP}.cut`,
      `${STEP}.cut.kind`,
      `${STEP}.cut.force`,
      `${STEP}.cut.radius`,
    ])
    expect(phaseOf(force).named.kind).toBe('force')
    const back = changeWork(force, 2, 'turning')
    expect(changes(back)).toEqual([])
    expect(asked(back).duty.phases[2]).toEqual(scenario.duty.phases[2])
  })

  it('a variant without it keeps it in the job', () => {
    const torque = changeCut(variant, 2, 'torque')
    expect(changes(torque)).toEqual([`${STEP}.cut`, `${STEP}.torque`])
    expect(phaseOf(torque).named).toBeUndefined()
    expect(torque.scenario).toBe(scenario)
    expect(changes(changeCut(torque, 2, 'cut'))).toEqual([])
  })
})
