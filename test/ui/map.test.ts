// The map on the page: where its lines lie, where keys lead, and what a point becomes as a variant.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { finish } from '../../sim/run.ts'
import { heatMap, mapPoint, mapSpec } from '../../sim/studies/map.ts'
import { points } from '../../sim/studies/points.ts'
import { mapTry } from '../../ui/change/mapTry.ts'
import { mapDrawing, mapKey } from '../../ui/plot/mapChart.ts'
import { fieldOf, LEVELS } from '../../ui/plot/mapField.ts'
import { example } from './demo.ts'

const scenario = example('appleMill')
const reading = read(scenario)
if (!reading.ok) throw new Error('the example does not read')
const { job } = reading
const spec = mapSpec(job, { speeds: 12, torques: 24 })
const map = heatMap(job, spec, finish(points<'map'>(spec)))
const us = { system: 'us', temperature: '°C' } as const

it('a contour lies where a point by itself takes so many minutes', () => {
  const { levels } = fieldOf(
    map,
    map.panels[0],
    (speed) => speed,
    (torque) => torque,
  )
  for (const minutes of [10, 20]) {
    const line = levels[LEVELS.indexOf(minutes as 10)]
    expect(line.length).toBeGreaterThan(5)
    for (const [speed, torque] of line.slice(2))
      expect(mapPoint(job.parts, 'none', speed, torque).seconds / 60 / minutes).toBeCloseTo(1, 1)
  }
})

it('the line of never lies under every contour, and the class line under it', () => {
  const { never, cool, levels } = fieldOf(
    map,
    map.panels[0],
    (speed) => speed,
    (torque) => torque,
  )
  expect(never).toHaveLength(1)
  const line = new Map(never[0].map(([speed, torque]) => [speed, torque]))
  for (const level of levels)
    for (const [speed, torque] of level) expect(torque).toBeGreaterThan(line.get(speed) ?? Infinity)
  for (const [speed, torque] of cool[0]) expect(torque).toBeLessThan(line.get(speed) ?? 0)
})

it('a press finds its speed and torque again', () => {
  const drawing = mapDrawing(map, 0, us, 600, 1)!
  const { speed, torque } = drawing.at(drawing.x(40), 200)
  expect(speed).toBeCloseTo(40, 9)
  expect(torque).toBeGreaterThan(0)
  expect(drawing.at(-50, 9999)).toEqual({ speed: map.speeds[0], torque: 0 })
  expect(mapDrawing(map, 0, us, 100, 1)).toBeNull()
})

it('keys go by a hundredth of the range, by a tenth with Shift, and stay on the map', () => {
  const at = { speed: map.speeds[0], torque: 1 }
  const range = map.speeds[11] - map.speeds[0]
  expect(mapKey('ArrowRight', false, at, map)?.speed).toBeCloseTo(at.speed + range / 100, 9)
  expect(mapKey('ArrowRight', true, at, map)?.speed).toBeCloseTo(at.speed + range / 10, 9)
  expect(mapKey('ArrowUp', false, at, map)?.torque).toBeCloseTo(1 + map.torques[23] / 100, 9)
  expect(mapKey('ArrowLeft', false, at, map)).toEqual(at)
  expect(mapKey('PageDown', false, at, map)?.torque).toBe(0)
  expect(mapKey('End', false, at, map)?.speed).toBe(map.speeds[11])
  expect(mapKey('x', false, at, map)).toBeUndefined()
})

it('a point becomes a variant that reads: its step steady at that speed and torque, with the other cooling', () => {
  const { wish } = mapTry(scenario, map.marks[0].phase, 40, 8, 'shaft fan', us)
  if (wish.kind !== 'try') throw new Error('no try')
  const tried = read(scenario, { name: wish.name, changes: wish.changes })
  if (!tried.ok) throw new Error(JSON.stringify(tried.problems))
  const phase = tried.job.duty.phases[2]
  expect(phase.surge).toBeNull()
  expect(phase.speed).toBeCloseTo(40, 1)
  expect(phase.cut).toMatchObject({ kind: 'torque' })
  expect(phase.cut.kind === 'torque' && phase.cut.torque).toBeCloseTo(8, 1)
  expect(tried.job.parts.heat.cooling).toBe('shaft fan')
  expect(tried.job.duty.phases[0]).toEqual(job.duty.phases[0])
})
