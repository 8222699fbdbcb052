// The map as a study: its marks are where the answer is, its points come in any stretches, what it costs, and any job has one.
import { describe, expect, it } from 'vitest'
import { finish } from '../../../sim/run.ts'
import { mapColumn } from '../../../sim/studies/map/column.ts'
import { mapMarks } from '../../../sim/studies/map/marks.ts'
import { countOf, points, stretchesOf } from '../../../sim/studies/points.ts'
import { warming } from '../../../sim/studies/map/warming.ts'
import { heatMap, mapPoint, mapSpec } from '../../../sim/studies/map.ts'
import { mapLines } from '../../../sim/say/mapReport.ts'
import { job } from '../../jobs.ts'
import { near } from '../physics/lab.ts'
import { endOf, heldJob, jobs } from './heldRuns.ts'

const [mill] = jobs

describe('the marks are where the answer is', () => {
  it.each(jobs)('a step with its surges, run on without a pause, opens when its mark says: %#', (job) => {
    const [mark] = mapMarks(job)
    const phase = job.duty.phases[mark.phase]
    const { cooling } = job.parts.heat
    const whole = heldJob(job, cooling, mark.speed, 0)
    const surging = { ...whole, duty: { ...whole.duty, phases: [{ ...phase, seconds: whole.duty.seconds }] } }
    near(mapPoint(job.parts, cooling, mark.speed, mark.torque).seconds, endOf(surging), 5e-3)
    expect(mark.torque).toBeGreaterThanOrEqual(mark.low)
    expect(mark.torque).toBeLessThanOrEqual(mark.high)
  })

  it('heats as more than the mean torque does, and as itself where there is no surge', () => {
    const [milling] = mapMarks(mill)
    const { low, high, torque } = milling
    expect(torque).toBeGreaterThan(low + (high - low) / 4)
    const [cutting] = mapMarks(jobs[1])
    expect(cutting).toMatchObject({ low: 17, torque: 17, high: 17 })
  })
})

describe('as a study of points', () => {
  const spec = mapSpec(mill, { speeds: 5, torques: 6 })

  it('is the same in whatever stretches', () => {
    const whole = finish(points<'map'>(spec))
    const parts = [0, 1, 4, 9].flatMap((from, n, all) => finish(points<'map'>(spec, from, all[n + 1] ?? 10)))
    expect(parts).toEqual(whole)
    expect(countOf<'map'>(spec)).toBe(10)
    expect(stretchesOf(spec)).toHaveLength(1)
    const map = heatMap(mill, spec, whole)
    expect(map.panels.map(({ cooling }) => cooling)).toEqual(['none', 'shaft fan'])
    expect(map.panels[0].marks[0].seconds).toBeLessThan(map.panels[1].marks[0].seconds)
  })

  it('torques asked one after the other settle as each does asked alone', () => {
    for (const one of jobs) {
      const { parts, coolings, speeds, torques } = mapSpec(one, { speeds: 7, torques: 13 })
      for (const speed of speeds) {
        const motor = warming(parts, speed, coolings[0])
        const settled = torques.map((torque) => motor.settles(torque))
        expect(settled).toEqual(torques.map((torque) => warming(parts, speed, coolings[0]).settles(torque)))
      }
    }
  })

  it('the line of never lies between the torques that last for good and those that end', () => {
    for (const one of jobs) {
      const { parts, coolings, speeds, torques } = mapSpec(one, { speeds: 7, torques: 13 })
      for (const speed of speeds) {
        const { seconds, never } = mapColumn(parts, coolings[0], speed, torques)
        torques.forEach((torque, n) => {
          if (Math.abs(torque - never) > 0.01 * torques[12])
            expect(seconds[n] === Infinity).toBe(torque < never)
        })
      }
    }
  })

  it('60 × 40 with one cooling costs no more than eighty looks at the drive a point', () => {
    const { parts, coolings, speeds, torques } = mapSpec(mill)
    expect([speeds.length, torques.length]).toEqual([60, 40])
    const cost = speeds
      .filter((_, n) => n % 6 === 0)
      .reduce((sum, speed) => sum + mapColumn(parts, coolings[0], speed, torques).evaluations, 0)
    expect(cost / 400).toBeLessThan(80)
    expect(cost / 400).toBeGreaterThan(40)
  })
})

describe('any job has a map: nothing throws, nothing is no number', () => {
  it.each([
    { 'supply.kind': 'ac' },
    { 'supply.volts': '1 V' },
    { 'heat.air': '60 °C', 'cutoff.opensAt': '45 °C', 'cutoff.reclosesAt': '30 °C' },
    { 'controller.currentLimit': '0.1 A' },
    { 'controller.currentLimit': '500 A' },
    { 'controller.holds': 'fixed voltage', 'supply.resistance': '20 Ω' },
    { 'machine.drag': '5000 N·m' },
    { 'belt.carries': '2 N·m' },
    { duty: { phases: [{ name: 'rest', lasts: '5 min' }], repeatFor: '1 h' } },
  ])('%o', (changes) => {
    const one = job(changes)
    const spec = mapSpec(one, { speeds: 4, torques: 6 })
    const map = heatMap(one, spec, finish(points<'map'>(spec)))
    for (const { columns } of map.panels)
      for (const { seconds, speed, classAt, limitedAt, never, cool, most, short } of columns)
        for (const value of [...seconds, ...speed, ...classAt, ...limitedAt, never, cool, most, short])
          expect(value).toBeGreaterThanOrEqual(0)
    expect(mapLines('Any', map, { system: 'us', temperature: '°C' }).join('\n')).not.toMatch(
      /NaN|undefined|—/,
    )
  })
})
