// Whatever the job, the width and the size of text: nothing written stands on anything written, all of it in the picture.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { annotate } from '../../../ui/drawing/annotations.ts'
import { footPlaces } from '../../../ui/drawing/drawing.ts'
import type { Drive } from '../../../ui/drawing/drive.ts'
import { insetLabels } from '../../../ui/drawing/insetLabels.ts'
import { fixedBoxes } from '../../../ui/drawing/setter.ts'
import { ROW, type Frame, type Sheet } from '../../../ui/drawing/sheet.ts'
import type { Rect } from '../../../ui/plot/label.ts'
import type { Units } from '../../../sim/say/units.ts'
import { DESKTOP, laidOut, PHONE, TWO_STAGES } from './jobs.ts'

interface Written extends Rect {
  readonly what: string
}

/** All that is written in a drawing. */
function written(drive: Drive, sheet: Sheet, units: Units): Written[] {
  const { k, inset, key, controller, controllerText } = sheet
  const { tags, speeds } = annotate(drive, sheet, units)
  const foot = footPlaces(sheet, drive, units)
  const row = ROW * k
  return [
    { what: 'title', x: 0, y: 1, width: 250 * k, height: row },
    ...insetLabels(drive, sheet).map(({ name, at, width }) => ({
      what: name,
      x: at.x - width / 2 + 1,
      y: at.y - row / 2,
      width: width - 2,
      height: row + (name === 'brushes' ? 0 : 18 * k),
    })),
    { what: 'key', ...key },
    { what: 'controller', ...controller },
    { what: 'controller text', ...controllerText },
    ...tags.map(({ box, text }) => ({ what: `tag ${text}`, ...box })),
    ...speeds.map(({ box }, n) => ({ what: n === 0 ? 'motor speed' : 'spindle speed', ...box })),
    { what: 'scale', x: 0, y: foot.words.y - row / 2, width: foot.words.x + foot.words.width, height: row },
    {
      what: 'machine',
      x: foot.name.x - foot.name.width / 2,
      y: foot.name.y - row / 2,
      width: foot.name.width,
      height: row,
    },
  ].map((each) => ({ ...each, inset: each.y < inset.y + inset.height }))
}

const SLACK = 0.01
const touch = (a: Rect, b: Rect): boolean =>
  a.x + SLACK < b.x + b.width &&
  b.x + SLACK < a.x + a.width &&
  a.y + SLACK < b.y + b.height &&
  b.y + SLACK < a.y + a.height

/** What is amiss, in words; empty where nothing is. */
function amiss(drive: Drive, sheet: Sheet, units: Units): string[] {
  const all = written(drive, sheet, units)
  const out = all
    .filter(
      ({ x, y, width, height }) =>
        x < -SLACK || y < -SLACK || x + width > sheet.width + SLACK || y + height > sheet.height + SLACK,
    )
    .map(({ what }) => `${what} leaves the picture`)
  const over = all.flatMap((a, n) =>
    all
      .slice(n + 1)
      .filter((b) => touch(a, b))
      .map((b) => `${a.what} on ${b.what}`),
  )
  return [...out, ...over]
}

const US: Units = { system: 'us', temperature: '°C' }
const length = (low: number, high: number) =>
  fc
    .double({ min: Math.log(low), max: Math.log(high), noNaN: true })
    .map((x) => `${Math.exp(x).toPrecision(3)} mm`)

const jobs = fc.record({
  'belt.motorPulley': length(6, 2900),
  'belt.machinePulley': length(6, 2900),
  'belt.centreDistance': fc.option(length(21, 9900)),
  'belt.jackshaftLarge': fc.option(length(6, 2900)),
  'belt.jackshaftSmall': fc.option(length(6, 2900)),
  'belt.jackshaftCentres': fc.option(length(21, 9900)),
  'machine.kind': fc.constantFrom('mill', 'lathe', 'saw', 'grinder', 'wheel', 'drill', 'other'),
  'heat.cooling': fc.constantFrom('shaft fan', 'blower', 'none', 'enclosed', 'enclosed, outer fan'),
  'cutoff.place': fc.constantFrom('shell', 'brush end', 'magnet'),
})
const frames: fc.Arbitrary<Frame> = fc.oneof(
  fc.record({
    width: fc.integer({ min: 600, max: 1060 }),
    k: fc.constantFrom(1, 1.25),
    narrow: fc.constant(false),
  }),
  fc.record({
    width: fc.integer({ min: 328, max: 727 }),
    k: fc.constantFrom(1, 1.25),
    narrow: fc.constant(true),
  }),
)

it('in seeded jobs of every kind, width and text size', () => {
  fc.assert(
    fc.property(
      jobs,
      frames,
      fc.double({ min: 0.1, max: 400, noNaN: true }),
      fc.constantFrom<Units>(US, { system: 'metric', temperature: '°F' }),
      (texts, frame, mass, units) => {
        const { drive, sheet } = laidOut(texts, frame, mass)
        expect(amiss(drive, sheet, units)).toEqual([])
      },
    ),
    { seed: 45, numRuns: 300 },
  )
})

it('in the jobs people have, and six extreme ones', () => {
  const all: Record<string, string | null>[] = [
    {},
    {
      'machine.kind': 'lathe',
      'belt.machinePulley': '6 in',
      'belt.motorPulley': '2 in',
      'heat.cooling': 'shaft fan',
    },
    { ...TWO_STAGES, 'machine.kind': 'saw' },
    { 'belt.motorPulley': '4 in', 'belt.machinePulley': '4 in' },
    { ...TWO_STAGES, 'machine.kind': 'grinder' },
    { 'belt.centreDistance': '1 in', 'belt.motorPulley': '10 in' },
    { 'belt.centreDistance': '10 m', 'belt.motorPulley': '2 in', 'belt.machinePulley': '3 in' },
    { 'belt.motorPulley': '8 mm', 'belt.machinePulley': '3 m', 'belt.centreDistance': '5 m' },
    { 'belt.motorPulley': null, 'belt.machinePulley': null, 'belt.centreDistance': null },
  ]
  for (const texts of all)
    for (const frame of [
      DESKTOP,
      PHONE,
      { ...DESKTOP, width: 722, k: 1.25 },
      { ...PHONE, width: 328, k: 1.25 },
    ]) {
      const { drive, sheet } = laidOut(texts, frame)
      expect({ texts, frame, amiss: amiss(drive, sheet, US) }).toEqual({ texts, frame, amiss: [] })
    }
})

it('every part of the drive line stays in the picture, over its floor and off the inset', () => {
  fc.assert(
    fc.property(jobs, frames, fc.double({ min: 0.1, max: 400, noNaN: true }), (texts, frame, mass) => {
      const { sheet } = laidOut(texts, frame, mass)
      const { stages, shell, machine, scale } = sheet.placement
      expect(scale).toBeGreaterThan(0)
      const boxes = [shell, ...stages.flatMap(({ driving, driven }) => [driving, driven])].map(
        ({ at, r }) => ({
          ...{ x: at.x - r, y: at.y - r, width: 2 * r, height: 2 * r },
        }),
      )
      for (const box of [...boxes, machine]) {
        expect(box.x).toBeGreaterThan(-0.1)
        expect(box.x + box.width).toBeLessThan(sheet.width + 0.1)
        expect(box.y + box.height).toBeLessThan(sheet.placement.floor + 0.1)
        expect(touch({ ...box, x: box.x + 0.1, y: box.y + 0.1 }, sheet.inset)).toBe(false)
      }
    }),
    { seed: 46, numRuns: 200 },
  )
})

it('fixed places are told to whoever sets labels', () => {
  const { sheet } = laidOut()
  for (const box of [sheet.inset, sheet.key, sheet.controller, sheet.controllerText])
    expect(fixedBoxes(sheet)).toContainEqual(box)
})
