// One scale for every part of the drive line; a stated one for the motor cut open; nothing out of the picture.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cutReach } from '../../../ui/drawing/cutaway.ts'
import { shellDiameter } from '../../../ui/drawing/drive.ts'
import { distance } from '../../../ui/drawing/runs.ts'
import { scaleBar } from '../../../ui/drawing/scaleBar.ts'
import { DESKTOP, laidOut, PHONE, TWO_STAGES } from './jobs.ts'

const INCH = 0.0254

it('pulleys, centres and shell of the demo are drawn to one scale', () => {
  for (const frame of [DESKTOP, PHONE]) {
    const { sheet } = laidOut({}, frame)
    const { scale, stages, shell } = sheet.placement
    const [{ driving, driven, shortened }] = stages
    expect((2 * driving.r) / scale).toBeCloseTo(2.5 * INCH, 9)
    expect((2 * driven.r) / scale).toBeCloseTo(10 * INCH, 9)
    expect(distance(driving.at, driven.at) / scale).toBeCloseTo(23 * INCH, 9)
    expect((2 * shell.r) / scale).toBeCloseTo(shellDiameter(5), 9)
    expect(shortened).toBe(false)
    expect(sheet.cutScale / scale).toBeCloseTo(sheet.times, 9)
    expect(sheet.times).toBeGreaterThanOrEqual(2)
  }
})

it('the cut motor is as many times larger as is said, and stays in its box', () => {
  for (const cooling of ['none', 'blower', 'enclosed', 'enclosed, outer fan'])
    for (const mass of [0.6, 2, 5, 7.5, 12, 60, 300])
      for (const frame of [DESKTOP, PHONE]) {
        const { drive, sheet } = laidOut({ 'heat.cooling': cooling }, frame, mass)
        const { cut, cutScale, times, inset, placement } = sheet
        expect(cutScale / placement.scale).toBeCloseTo(times, 9)
        expect(times % 0.5).toBe(0)
        const { left, right } = cutReach(cooling)
        const unit = cutScale * drive.shell
        expect(cut.x - left * unit).toBeGreaterThan(inset.x)
        expect(cut.x + right * unit).toBeLessThan(inset.x + inset.width)
        expect(unit).toBeLessThan(inset.height)
      }
})

it('both stages of a jackshaft share the scale and the shaft', () => {
  const { sheet } = laidOut(TWO_STAGES)
  const { scale, stages } = sheet.placement
  const [one, two] = stages
  expect(distance(one.driving.at, one.driven.at) / scale).toBeCloseTo(14 * INCH, 9)
  expect(distance(two.driving.at, two.driven.at) / scale).toBeCloseTo(12 * INCH, 9)
  expect(one.driven.at).toEqual(two.driving.at)
  expect((2 * one.driven.r) / scale).toBeCloseTo(9 * INCH, 9)
  expect((2 * two.driving.r) / scale).toBeCloseTo(2 * INCH, 9)
})

it('centres very far apart are drawn nearer, and that is known', () => {
  const { sheet } = laidOut({
    'belt.motorPulley': '4 in',
    'belt.machinePulley': '4 in',
    'belt.centreDistance': '10 m',
  })
  const { scale, stages } = sheet.placement
  expect(stages[0].shortened).toBe(true)
  expect(distance(stages[0].driving.at, stages[0].driven.at) / scale).toBeLessThan(1)
  expect((2 * stages[0].driven.r) / scale).toBeCloseTo(4 * INCH, 9)
  expect(stages[0].driven.r).toBeGreaterThan(12)
})

it('an open or wrong pulley leaves a stand-in and spoils no other', () => {
  const { drive } = laidOut({ 'belt.machinePulley': null, 'belt.motorPulley': '3 in' })
  expect(drive.machinePulley.value).toBeNull()
  expect(drive.stages[0].driving).toBeCloseTo(3 * INCH, 12)
  expect(drive.stages[0].driven).toBeGreaterThan(0)
  const wrong = laidOut({ 'belt.machinePulley': '-3 in' }).drive
  expect(wrong.machinePulley.value).toBeNull()
  expect(wrong.motorPulley.value).toBeCloseTo(2.5 * INCH, 12)
})

it('a motor of 5 kg is as wide as they are', () => {
  // Motors of small treadmills: 4 to 6 kg, 90 to 105 mm across (common practice, no source).
  expect(shellDiameter(5)).toBeGreaterThan(0.085)
  expect(shellDiameter(5)).toBeLessThan(0.11)
})

it('the scale bar is a round length of the reader’s units, as long as it says', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 40, max: 4000, noNaN: true }),
      fc.constantFrom('us', 'metric'),
      (scale, system) => {
        const { length, text } = scaleBar(scale, 190, { system, temperature: '°C' })
        const [number, unit] = text.split('\u00a0')
        const metres = Number(number) * { in: INCH, mm: 0.001, m: 1 }[unit as 'in' | 'mm' | 'm']
        expect(length / scale).toBeCloseTo(metres, 9)
        expect(length).toBeLessThanOrEqual(190)
        expect(length).toBeGreaterThan(190 / 2.6)
      },
    ),
    { seed: 44 },
  )
})
