// Axes: round ticks, three to five of them, from the right floor, in the reader's unit.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { roundStep, scalesFor, temperatureFloor, valueAxis } from '../../../ui/plot/scales.ts'
import { exactClock, exactWords, timeTicks } from '../../../ui/plot/time.ts'

const texts = (low: number, high: number, unit: string) =>
  valueAxis(low, high, unit).ticks.map(({ text }) => text)

it('sets temperatures from 20 °C, or its °F, at round ticks', () => {
  expect(texts(20, 155, '°C')).toEqual(['20', '40', '80', '120', '160'])
  expect(texts(20, 155, '°F')).toEqual(['68', '100', '200', '300'])
  expect(texts(temperatureFloor(4), 120, '°C')[0]).toBe('0')
  expect(temperatureFloor(-3)).toBe(-10)
  expect(temperatureFloor(25)).toBe(20)
})

it('sets speed and current from 0', () => {
  expect(texts(0, (380 * Math.PI) / 30, 'rpm')).toEqual(['0', '100', '200', '300', '400'])
  expect(texts(0, 30, 'A')).toEqual(['0', '10', '20', '30'])
  expect(texts(0, 0.9, 'A')).toEqual(['0.0', '0.2', '0.4', '0.6', '0.8'])
  expect(texts(0, (4100 * Math.PI) / 30, 'rpm')).toEqual([
    '0',
    '1\u202f000',
    '2\u202f000',
    '3\u202f000',
    '4\u202f000',
  ])
})

it('holds every value and has two to five ticks, whatever the range', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (high) => {
      const axis = valueAxis(0, high, 'A')
      expect(axis.high).toBeGreaterThan(high)
      expect(axis.high).toBeLessThan(1.6 * high + 1e-9)
      expect(axis.ticks.length).toBeGreaterThanOrEqual(2)
      expect(axis.ticks.length).toBeLessThanOrEqual(5)
      expect(roundStep(0, high)).toBeLessThanOrEqual(high)
    }),
  )
})

it('maps corners to corners', () => {
  const box = { left: 50, right: 450, top: 10, bottom: 110 }
  const { x, y } = scalesFor(box, 600, 1000, { low: 20, high: 120, ticks: [] })
  expect([x(600), x(1000), y(20), y(120), x(700), y(70)]).toEqual([50, 450, 110, 10, 150, 60])
})

it('ticks minutes by ten on a sheet, by fifteen on a phone, hours over the job', () => {
  expect(timeTicks(0, 3600, 11).map(({ text }) => text)).toEqual([
    '0\u00a0min',
    '10',
    '20',
    '30',
    '40',
    '50',
    '60',
  ])
  expect(timeTicks(0, 2700, 3.2).map(({ t }) => t)).toEqual([0, 900, 1800, 2700])
  expect(timeTicks(0, 10800, 11, 3600).map(({ text }) => text)).toEqual([
    '0\u00a0h',
    '1\u00a0h',
    '2\u00a0h',
    '3\u00a0h',
  ])
  expect(timeTicks(1403, 1470, 8).map(({ text }) => text)).toEqual([
    '23:30',
    '23:40',
    '23:50',
    '24:00',
    '24:10',
    '24:20',
    '24:30',
  ])
  expect(timeTicks(4000, 7600, 11)[0]).toEqual({ t: 4200, text: '70\u00a0min' })
})

it('tells the scrubber’s time to the second', () => {
  expect([0, 59, 60, 1415, 3599.7, 5025].map(exactClock)).toEqual([
    '0:00',
    '0:59',
    '1:00',
    '23:35',
    '1:00:00',
    '1:23:45',
  ])
  expect([0, 42, 60, 1410, 3605, 7200].map(exactWords)).toEqual([
    '0 s',
    '42 s',
    '1 min',
    '23 min 30 s',
    '1 h 5 s',
    '2 h',
  ])
})
