// The grid asked on the page: what it starts with, what a choice changes, when it is another one, how it is shaded.
import { expect, it } from 'vitest'
import { canonical } from '../../sim/job.ts'
import { read } from '../../sim/read.ts'
import { inputAt } from '../../sim/scenario.ts'
import { FIGURE_NAMES, type FigureName } from '../../sim/studies/figures.ts'
import type { GridPoint } from '../../sim/studies/grid.ts'
import { axisInputs, axisRead, changeGrid, COUNTS, gridOf, rangeAround } from '../../ui/change/grid.ts'
import { edit } from '../../ui/change/inputs.ts'
import { placeOf, shadesOf } from '../../ui/plot/gridShade.ts'
import { AS_FOUND, chosenOf, type State } from '../../ui/store.ts'
import { gridKeeper } from '../../ui/study/grid.ts'
import { granted } from '../../ui/wishes.ts'
import { state } from './demo.ts'

/** The state as the runner leaves it: read, and asked. */
function asked(now: State): State {
  const reading = read(now.scenario, chosenOf(now))
  return {
    ...now,
    readings: new Map([[now.chosen, reading]]),
    asked: new Map(reading.ok ? [[now.chosen, canonical(reading.job)]] : []),
  }
}
const first = asked(state())

it('starts with the pulley against the torque of the hardest step, around what is there', () => {
  const { x, y, figure } = gridOf(first)
  expect([x.path, y.path, figure]).toEqual(['belt.machinePulley', 'duty.phases.2.torque', 'firstOpening'])
  for (const [axis, name] of [
    [x, 'x'],
    [y, 'y'],
  ] as const) {
    const read = axisRead(first.scenario, axis, name)
    if ('wrong' in read) throw new Error(read.wrong)
    expect(read.texts).toHaveLength(COUNTS[name])
    expect(placeOf(first.scenario, read, inputAt(first.scenario, axis.path)!.text)).not.toBeNull()
  }
})

it('every input offered has a range that reads, or words', () => {
  const inputs = axisInputs(first.scenario)
  expect(inputs.length).toBeGreaterThan(30)
  for (const input of inputs) {
    const axis = axisRead(
      first.scenario,
      { path: input.path, range: rangeAround(input, first.settings.units) },
      'x',
    )
    expect('wrong' in axis ? `${input.path}: ${axis.wrong}` : '').toBe('')
  }
})

it('another input starts with a range around what it has; a range and a figure are kept as chosen', () => {
  const air = granted(first, { kind: 'grid', x: { path: 'heat.air' } })
  expect(air.grid!.x).toEqual({ path: 'heat.air', range: expect.stringMatching(/^\d+\.\.\d+ °C$/) })
  expect(air.grid!.y).toEqual(gridOf(first).y)
  const ranged = changeGrid(air, { x: { range: '0..50 °C' }, figure: 'peakAmps' })
  expect(ranged.grid).toMatchObject({ x: { path: 'heat.air', range: '0..50 °C' }, figure: 'peakAmps' })
})

it('is another grid with another job or axis, the same with another figure, none while an axis does not read', () => {
  const key = gridKeeper.key(first)
  expect(key).not.toBeNull()
  expect(gridKeeper.key(changeGrid(first, { figure: 'sag' }))).toBe(key)
  expect(gridKeeper.key(changeGrid(first, { x: { range: '8..9 in' } }))).not.toBe(key)
  expect(gridKeeper.key(asked(edit(first, { 'heat.air': '35 °C' })))).not.toBe(key)
  expect(gridKeeper.key(changeGrid(first, { x: { range: '9..8 in' } }))).toBeNull()
  expect(gridKeeper.key(changeGrid(first, { y: { path: 'belt.machinePulley' } }))).toBeNull()
  expect(gridKeeper.key({ ...first, asked: new Map([[`not ${AS_FOUND}`, 'x']]) })).toBeNull()
})

it('shades from the least to the most, and leaves what has no number plain', () => {
  const none = Object.fromEntries(FIGURE_NAMES.map((name) => [name, null])) as Record<
    FigureName,
    number | null
  >
  const point = (sag: number | null): GridPoint => ({ ok: true, figures: { ...none, sag }, trouble: null })
  const refused: GridPoint = { ok: false, problem: { path: '', wrong: '', wouldDo: '' } }
  const shades = shadesOf([point(0.1), point(0.3), point(0.2), point(null), refused, undefined], 'sag')
  expect(shades[0]).toBe(0)
  expect(shades[2]).toBe(shades[1] / 2)
  expect(shades.slice(3)).toEqual([0, 0, 0])
  expect(shadesOf([point(0.1), point(0.1)], 'sag')).toEqual([0, 0])
})

it('finds the place of what stands in the job, if it is on the axis', () => {
  const axis = { path: 'belt.machinePulley', texts: ['6 in', '8 in', '10 in'] }
  expect(placeOf(first.scenario, axis, '205 mm')).toBe(1)
  expect(placeOf(first.scenario, axis, '13 in')).toBeNull()
  expect(placeOf(first.scenario, { path: 'heat.cooling', texts: ['none', 'blower'] }, 'blower')).toBe(1)
  expect(placeOf(first.scenario, { path: 'heat.cooling', texts: ['none'] }, 'blower')).toBeNull()
})
