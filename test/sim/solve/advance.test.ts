// Crossings found within a step against closed forms, with both steppers.
import { describe, expect, it } from 'vitest'
import { advance, type Crossing, type Move } from '../../../sim/solve/advance.ts'
import { extrapolation } from '../../../sim/solve/odex.ts'
import { rosenbrock } from '../../../sim/solve/rosenbrock.ts'
import type { Stepper } from '../../../sim/solve/stepper.ts'
import type { System } from '../../../sim/solve/system.ts'
import { ball, oscillator, system, tolerance } from './problems.ts'

/** Moves until something other than a step happens. */
function until(stepper: Stepper, tEnd: number, watch: Crossing[]): Move {
  for (;;) {
    const move = advance(stepper, tEnd, watch)
    if (move.kind !== 'step') return move
  }
}

/** All crossings up to tEnd, starting again from each. */
function crossings(stepper: Stepper, tEnd: number, watch: Crossing[]) {
  const found: { index: number; t: number }[] = []
  for (;;) {
    const move = until(stepper, tEnd, watch)
    if (move.kind !== 'crossing') return { found, end: move }
    found.push({ index: move.index, t: move.t })
    stepper.start(move.t, move.y, stepper.nextStep)
  }
}

const g = 9.81

describe.each([
  ['rosenbrock', rosenbrock],
  ['extrapolation', extrapolation],
])('advance with %s', (_, method) => {
  function begun(problem: System, y0: number[], relative: number, firstStep = 0.1) {
    const stepper = method(problem, tolerance(problem.size, relative))
    stepper.start(0, Float64Array.from(y0), firstStep)
    return stepper
  }

  it('finds when a ball lands, and how fast', () => {
    const move = until(begun(ball(g), [2, 5], 1e-6), 10, [{ state: 0, level: 0, direction: -1 }])
    const landing = (5 + Math.sqrt(25 + 4 * g)) / g
    expect(move.kind).toBe('crossing')
    if (move.kind !== 'crossing') return
    expect(Math.abs(move.t - landing)).toBeLessThan(1e-9)
    expect(move.y[0]).toBe(0)
    expect(Math.abs(move.y[1] - (5 - g * landing))).toBeLessThan(1e-8)
  })

  it('finds when a body warms through a level', () => {
    // T′ = (80 − T)/300 from 20: through 65 at 300 ln 4.
    const warming = system(1, (_, y, out) => {
      out[0] = (80 - y[0]) / 300
    })
    const move = until(begun(warming, [20], 1e-8), 3600, [{ state: 0, level: 65, direction: 1 }])
    expect(move.kind === 'crossing' && Math.abs(move.t - 300 * Math.log(4))).toBeLessThan(1e-3)
    const closer = until(begun(warming, [20], 1e-10), 3600, [{ state: 0, level: 65, direction: 1 }])
    expect(closer.kind === 'crossing' && Math.abs(closer.t - 300 * Math.log(4))).toBeLessThan(1e-5)
  })

  it('finds every passage of an oscillator through zero, each once, in the right direction', () => {
    const watch: Crossing[] = [
      { state: 0, level: 0, direction: -1 },
      { state: 0, level: 0, direction: 1 },
    ]
    const { found, end } = crossings(begun(oscillator, [1, 0], 1e-9), 100, watch)
    expect(end.kind).toBe('edge')
    // cos t = 0 at π/2 + kπ, falling first.
    expect(found.length).toBe(32)
    for (const [k, { index, t }] of found.entries()) {
      expect(index).toBe(k % 2)
      expect(Math.abs(t - (k + 0.5) * Math.PI)).toBeLessThan(1e-6)
    }
  })

  /** One step takes the whole flight: thrown at 10 m/s, the top is at 50/g after 10/g s. */
  const flight = () => begun(ball(g), [0, 10], 1e3, 10)
  const top = 50 / g

  it('finds two crossings inside one step, one after the other', () => {
    const stepper = flight()
    const rising = advance(stepper, 2, [{ state: 0, level: 5, direction: 1 }])
    expect(stepper.t).toBe(2)
    expect(stepper.y[0]).toBeLessThan(5)
    const dip = Math.sqrt(100 - 2 * g * 5)
    expect(rising.kind === 'crossing' && Math.abs(rising.t - (10 - dip) / g)).toBeLessThan(1e-7)
    const falling = advance(flight(), 2, [{ state: 0, level: 5, direction: -1 }])
    expect(falling.kind === 'crossing' && Math.abs(falling.t - (10 + dip) / g)).toBeLessThan(1e-7)
  })

  it('tells a graze from a miss', () => {
    const just = advance(flight(), 2, [{ state: 0, level: top - 1e-6, direction: 1 }])
    expect(just.kind === 'crossing' && Math.abs(just.t - 10 / g)).toBeLessThan(1e-3)
    expect(advance(flight(), 2, [{ state: 0, level: top + 1e-6, direction: 1 }]).kind).toBe('edge')
  })

  it('takes the earliest of several, and the first named of two at once', () => {
    const watch: Crossing[] = [
      { state: 0, level: 5, direction: -1 },
      { state: 1, level: 8, direction: -1 },
      { state: 0, level: 5, direction: 1 },
      { state: 1, level: 8, direction: -1 },
    ]
    const move = advance(flight(), 2, watch)
    expect(move.kind === 'crossing' && move.index).toBe(1)
    expect(move.kind === 'crossing' && Math.abs(move.t - 2 / g)).toBeLessThan(1e-7)
  })

  it('does not cross a level it starts on, but crosses it on the way back', () => {
    const up = until(begun(ball(g), [3, 5], 1e-6), 0.9, [{ state: 0, level: 3, direction: 1 }])
    expect(up.kind).toBe('edge')
    const back = until(begun(ball(g), [3, 5], 1e-6), 2, [{ state: 0, level: 3, direction: -1 }])
    expect(back.kind === 'crossing' && Math.abs(back.t - 10 / g)).toBeLessThan(1e-7)
    // Down first, then up through the level within the same step.
    const bounce = begun(ball(-g), [3, -5], 1e3, 10)
    const rising = advance(bounce, 2, [{ state: 0, level: 3, direction: 1 }])
    expect(rising.kind === 'crossing' && Math.abs(rising.t - 10 / g)).toBeLessThan(1e-7)
  })

  it('crosses a level it ends on exactly', () => {
    const stepper = begun(oscillator, [1, 0], 1e-4)
    stepper.step(0.5)
    const level = stepper.y[0]
    const move = (at: number) =>
      advance(begun(oscillator, [1, 0], 1e-4), 0.5, [{ state: 0, level: at, direction: -1 }])
    expect(move(level)).toMatchObject({ kind: 'crossing', t: stepper.t })
    expect(move(level - 1e-15).kind).not.toBe('crossing')
  })

  it('finds both sides of a hump and a dip in one step', () => {
    // y = 2t³ − 3t² + 1.1 t turns at 0.24 and 0.76 and passes 0.11 three times. With t = 1/2 + x that is
    // x³ − 0.2 x = 0.03: three real roots by the trigonometric formula.
    const cubic = system(2, (_, y, out) => {
      out[0] = 1
      out[1] = 6 * y[0] * y[0] - 6 * y[0] + 1.1
    })
    const angle = Math.acos(((3 * 0.03) / (2 * 0.2)) * Math.sqrt(3 / 0.2)) / 3
    const roots = [2, 1, 0].map((k) => 0.5 + 2 * Math.sqrt(0.2 / 3) * Math.cos(angle - (2 * Math.PI * k) / 3))
    const find = (tEnd: number, direction: 1 | -1) => {
      const move = advance(begun(cubic, [0, 0], 1e4, 10), tEnd, [{ state: 1, level: 0.11, direction }])
      return move.kind === 'crossing' ? move.t : Number.NaN
    }
    expect(Math.abs(find(1, 1) - roots[0])).toBeLessThan(1e-6)
    expect(Math.abs(find(1, -1) - roots[1])).toBeLessThan(1e-6)
    expect(find(0.2, -1)).toBe(Number.NaN)
  })

  it('stands still at the edge, and passes a failure on', () => {
    const stepper = begun(oscillator, [1, 0], 1e-3)
    expect(until(stepper, 1, [])).toEqual({ kind: 'edge' })
    expect(stepper.t).toBe(1)
    const { steps } = stepper.effort
    expect(advance(stepper, 1, [])).toEqual({ kind: 'edge' })
    expect(stepper.effort.steps).toBe(steps)
    const nothing = system(1, (_, __, out) => {
      out[0] = Number.NaN
    })
    expect(advance(begun(nothing, [1], 1e-3), 1, [])).toEqual({ kind: 'failed', why: 'not finite' })
  })
})
