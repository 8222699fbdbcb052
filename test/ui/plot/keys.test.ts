// Keys: where each moves the scrubber and the frame, and that both stay inside the job.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { handleKey, movedWindow, scrubKey, windowHolding } from '../../../ui/plot/keys.ts'

const track = { at: 1410, end: 10800, cycle: 480, events: [1420.4, 2260.2] }

it('moves the scrubber by 5 s, a minute, a duty cycle, to the ends and the events', () => {
  const to = (key: string, shift = false, at = 1410) => scrubKey(key, shift, { ...track, at })
  expect([to('ArrowRight'), to('ArrowLeft'), to('ArrowRight', true), to('ArrowLeft', true)]).toEqual([
    1415, 1405, 1470, 1350,
  ])
  expect([to('PageUp'), to('PageDown'), to('Home'), to('End')]).toEqual([1890, 930, 0, 10800])
  expect([to(']'), to('['), to(']', false, 1420.4), to('[', false, 2260.2), to(']', false, 5000)]).toEqual([
    1420.4, 1410, 2260.2, 1420.4, 5000,
  ])
  expect(to('a')).toBeUndefined()
})

it('lands on whole steps after a drag, and stops at the ends', () => {
  expect(scrubKey('ArrowRight', false, { ...track, at: 1412 })).toBe(1415)
  expect(scrubKey('ArrowLeft', false, { ...track, at: 1412 })).toBe(1410)
  expect(scrubKey('ArrowLeft', false, { ...track, at: 0 })).toBe(0)
  expect(scrubKey('ArrowRight', true, { ...track, at: 10790 })).toBe(10800)
})

it('moves the frame by 10 s or a minute, never out of the job nor under a minute', () => {
  expect([handleKey('ArrowRight', false), handleKey('ArrowLeft', true), handleKey('x', false)]).toEqual([
    10,
    -60,
    undefined,
  ])
  const frame = { from: 600, to: 3600 }
  expect(movedWindow(frame, 'from', -700, 10800)).toEqual({ from: 0, to: 3600 })
  expect(movedWindow(frame, 'from', 2990, 10800)).toEqual({ from: 3540, to: 3600 })
  expect(movedWindow(frame, 'to', -9000, 10800)).toEqual({ from: 600, to: 660 })
  expect(movedWindow(frame, 'all', 9000, 10800)).toEqual({ from: 7800, to: 10800 })
  fc.assert(
    fc.property(
      fc.constantFrom('from', 'to', 'all'),
      fc.oneof(fc.double({ min: -2e4, max: 2e4, noNaN: true }), fc.constantFrom(-Infinity, Infinity)),
      (what, by) => {
        const { from, to } = movedWindow(frame, what, by, 10800)
        expect(from).toBeGreaterThanOrEqual(0)
        expect(to).toBeLessThanOrEqual(10800)
        expect(to - from).toBeGreaterThanOrEqual(60 - 1e-9)
      },
    ),
  )
})

it('shifts the frame just so far that it holds the moment', () => {
  const frame = { from: 600, to: 3600 }
  expect(windowHolding(1000, frame, 10800)).toBe(frame)
  expect(windowHolding(4000, frame, 10800)).toEqual({ from: 1000, to: 4000 })
  expect(windowHolding(0, frame, 10800)).toEqual({ from: 0, to: 3000 })
})
