// The one-page plant's integrator by itself: its order under halving, its error estimate, and that it damps what is stiff.
import { expect, it } from 'vitest'
import { step, type Vector } from './implicitStep.ts'

/** A pendulum: no closed form is needed, halving tells the order. */
const pendulum = (_: number, [angle, rate]: Vector): Vector => [rate, -Math.sin(angle)]

function swing(steps: number): Vector {
  let y = [1, 0]
  for (let n = 0; n < steps; n++) y = step(pendulum, n / steps, y, 2 / steps, [1, 1], 1e-13)!.y
  return y
}

it('is of order four: half the step, a sixteenth of the error', () => {
  const fine = swing(320)
  const off = (steps: number) => Math.hypot(...swing(steps).map((value, n) => value - fine[n]))
  const order = Math.log2(off(10) / off(20))
  expect(order).toBeGreaterThan(3.7)
  expect(order).toBeLessThan(4.4)
})

it('says no less than its true error on a short step', () => {
  const h = 0.2
  const { y, error } = step(pendulum, 0, [1, 0], h, [1, 1], 1e-9)!
  let fine = [1, 0]
  for (let n = 0; n < 50; n++) fine = step(pendulum, 0, fine, h / 50, [1, 1], 1e-13)!.y
  const truth = Math.max(
    ...y.map((value, n) => Math.abs(value - fine[n]) / (1e-9 * (1 + Math.abs([1, 0][n])))),
  )
  expect(error).toBeGreaterThan(truth)
})

it('damps a decay a million times faster than the step', () => {
  const { y } = step((_, [value]) => [-1e6 * value], 0, [1], 1, [1], 1e-6)!
  expect(Math.abs(y[0])).toBeLessThan(1e-3)
})

it('follows inputs that move with time', () => {
  // dy/dt = 4 t³ is met exactly by a method of order four.
  const { y } = step((t) => [4 * t ** 3], 1, [0], 2, [1], 1e-6)!
  expect(y[0]).toBeCloseTo(80, 10)
})
