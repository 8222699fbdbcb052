// The report and the stations' rows: everything is in them, and names are only text.
import { describe, expect, it } from 'vitest'
import { judge } from '../../../sim/judge.ts'
import { cautionOf, jobReport } from '../../../sim/say/report.ts'
import { STATIONS, type Station, stationRows } from '../../../sim/say/stations.ts'
import type { Units } from '../../../sim/say/units.ts'
import { type Changes, type Demo, job, traceOf } from '../../jobs.ts'
import { FAHRENHEIT, METRIC, US, visible } from './units.ts'

const given = job({ 'duty.repeatFor': '1 h' })
const trace = traceOf(given)
const figures = judge(given, trace)
const note = { path: 'controller.compensation', wrong: 'It hunts.', wouldDo: 'Turn it down.' }
const report = (units: Units = US) =>
  visible(jobReport('The mill', { job: given, trace, figures, notes: [note], check: null }, units))

describe('the report', () => {
  it('holds the answer, the figures, what limits, what happens, notes and the caution', () => {
    const text = report()
    expect(text).toMatch(/^The mill\n\nNo\. The cutoff opens 54~min/)
    for (const part of [
      'Hottest winding',
      'What limits\n  ✗ heat',
      'What happens\n',
      'end of the job',
      'Worth a look\n  controller.compensation: It hunts. Turn it down.',
      visible(cautionOf(given)),
    ])
      expect(text).toContain(part)
    expect(text).not.toMatch(/NaN|undefined|Infinity|—|\[object/)
  })

  it('tells where the energy went, to the last per cent or two', () => {
    const shares = [...report().matchAll(/of that, .+?(\d+)~%/g)].map(([, share]) => Number(share))
    expect(shares).toHaveLength(6)
    expect(shares.reduce((a, b) => a + b, 0)).toBeGreaterThan(96)
    expect(shares.reduce((a, b) => a + b, 0)).toBeLessThan(104)
  })

  it('is in the units that are chosen', () => {
    expect(report(FAHRENHEIT)).toMatch(/class B limit 248~°F/)
    expect(report(FAHRENHEIT)).not.toContain('°C')
    expect(report(METRIC)).not.toContain('°F')
  })

  it('of a life beyond telling says so', () => {
    const life = (value: number) =>
      /Insulation life +(.+?) times/.exec(
        jobReport(
          'x',
          { job: given, trace, figures: { ...figures, life: value }, notes: [], check: null },
          US,
        ),
      )?.[1]
    expect([2 ** 40, 3.678, 0.0264, 1e-9].map(life)).toEqual(['over 999', '3.7', '0.026', 'under 0.001'])
  })

  it('of hundreds of events shows the first and the last', () => {
    const marks = Array.from({ length: 300 }, (_, n) => ({ kind: 'opens', t: n * 10, phase: 0 }) as const)
    const text = jobReport(
      'x',
      { job: given, trace: { ...trace, marks }, figures, notes: [], check: null },
      US,
    )
    expect(text.match(/cutoff opens, during/g)).toHaveLength(23)
    expect(text).toContain('and 277 more; --json lists them all')
    expect(text).toContain('end of the job')
  })
})

describe('stations', () => {
  const rows = (station: Station, units: Units = US, changes: Changes = {}, name: Demo = 'appleMill') =>
    stationRows(station, job(changes, name), units).map(({ label, value }) => visible(`${label}: ${value}`))

  it('of the mill', () => {
    expect(rows('supply')).toEqual([
      'Outlet: 120~V, 15.0~A',
      'To the motor: up to 120~V',
      'Current limit: 18.0~A',
      'Holds speed by: sag compensation, 80~%',
    ])
    expect(rows('belt')).toEqual([
      'Motor pulley: 2.5~in',
      'Machine pulley: 10~in',
      'Ratio: 4~:~1',
      'Belt loss: 5~%',
    ])
    expect(rows('machine')).toEqual([
      'Wanted: 350~rpm at the spindle',
      'The cut: 4.4~lbf·ft on average, with surges',
      'Duty: loading 2~min, rest 1~min, milling 5~min',
      'Repeated: for 3~h',
    ])
    expect(rows('motor').slice(0, 3)).toEqual([
      'Plate: 1.6~hp, 4_000~rpm, 120~V, 13.0~A',
      'Winding: 1.25~Ω, 26.2~V/krpm',
      'Cooling: no fan',
    ])
  })
  it('in metric units', () => {
    expect(rows('belt', METRIC).slice(0, 2)).toEqual(['Motor pulley: 63.5~mm', 'Machine pulley: 254~mm'])
    expect(rows('machine', METRIC)[1]).toBe('The cut: 5.9~N·m on average, with surges')
    expect(rows('motor', METRIC)[0]).toContain('1_190~W')
  })
  it('tell a jackshaft, a missing plate, no cutoff, fractions of horsepower, and many steps', () => {
    expect(rows('belt', US, {}, 'bandSaw')[1]).toBe('Jackshaft: 6~in, then 2~in')
    expect(rows('motor', US, { plate: null })[0]).toBe('Plate: not read')
    expect(rows('motor', US, { 'cutoff.fitted': 'none' })[3]).toBe('Cutoff: none')
    expect(rows('motor', US, { 'cutoff.fitted': 'manual reset' })[3]).toBe('Cutoff: 120~°C, manual reset')
    expect(rows('motor', US, { 'plate.power': '3/4 hp' })[0]).toMatch(/^Plate: ¾~hp, /)
    const steps = Array.from({ length: 6 }, () => ({ name: '', lasts: '1 min' }))
    expect(rows('machine', US, { 'duty.phases': steps })[2]).toBe(
      'Duty: step 1~min, step 1~min, step 1~min, step 1~min, …',
    )
  })
})

describe('hostile names', () => {
  const hostile = [
    '<script>alert(1)</script>',
    '#{7*7}',
    '%s %d',
    '__proto__',
    'NaN',
    '$&',
    '\\u0000',
    '"; rm -rf ~',
  ]
  it.each(hostile)('%s is only text', (name) => {
    const named = job({ 'duty.phases.2.name': name, 'duty.repeatFor': '1 h' })
    const text = jobReport(name, { job: named, trace, figures, notes: [], check: null }, US)
    expect(text.startsWith(`${name}\n`)).toBe(true)
    expect(text).toContain(`, during ${name},`)
    expect(text).toContain(`Average current, ${name}`)
    expect(stationRows('machine', named, US)[2].value).toContain(name)
  })
  it('every station has a heading', () => {
    expect(Object.keys(STATIONS)).toEqual(['supply', 'motor', 'belt', 'machine'])
  })
})
