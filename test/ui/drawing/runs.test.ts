// The belt drawn against closed-form geometry: tangents at right angles to their radii, and the handbook's belt length.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { beltLength, smallWrap } from '../../../sim/belting/geometry.ts'
import { beltPath, distance, runsOf, type Wheel } from '../../../ui/drawing/runs.ts'

const wheels = fc
  .record({
    one: fc.double({ min: 0.5, max: 300, noNaN: true }),
    other: fc.double({ min: 0.5, max: 300, noNaN: true }),
    apart: fc.double({ min: 1.001, max: 12, noNaN: true }),
    angle: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
  })
  .map(({ one, other, apart, angle }): [Wheel, Wheel] => {
    const far = (one + other) * apart
    return [
      { at: { x: 17, y: -5 }, r: one },
      { at: { x: 17 + far * Math.cos(angle), y: -5 + far * Math.sin(angle) }, r: other },
    ]
  })

it('ends of the straight runs lie on the circles, and the runs are tangent to both', () => {
  fc.assert(
    fc.property(wheels, ([one, other]) => {
      for (const [a, b] of runsOf(one, other).straight) {
        const long = distance(a, b)
        for (const [wheel, p] of [
          [one, a],
          [other, b],
        ] as const) {
          expect(distance(wheel.at, p)).toBeCloseTo(wheel.r, 9)
          const along =
            ((p.x - wheel.at.x) * (b.x - a.x) + (p.y - wheel.at.y) * (b.y - a.y)) / (wheel.r * long)
          expect(Math.abs(along)).toBeLessThan(1e-7)
        }
      }
    }),
    { seed: 41 },
  )
})

it('the runs do not cross: both ends of one lie on the same side of the line of centres', () => {
  fc.assert(
    fc.property(wheels, ([one, other]) => {
      const side = (x: number, y: number) =>
        Math.sign((other.at.x - one.at.x) * (y - one.at.y) - (other.at.y - one.at.y) * (x - one.at.x))
      const [first, second] = runsOf(one, other).straight.map(([a, b]) => [side(a.x, a.y), side(b.x, b.y)])
      expect(first[0]).toBe(first[1])
      expect(second[0]).toBe(second[1])
      expect(first[0]).toBe(-second[0])
    }),
    { seed: 42 },
  )
})

it('straight runs and arcs together are as long as the belt of the handbook', () => {
  fc.assert(
    fc.property(wheels, ([one, other]) => {
      const { straight, wraps } = runsOf(one, other)
      const whole =
        straight.reduce((sum, [a, b]) => sum + distance(a, b), 0) + one.r * wraps[0] + other.r * wraps[1]
      const centres = distance(one.at, other.at)
      expect(whole / beltLength(2 * one.r, 2 * other.r, centres)).toBeCloseTo(1, 10)
      expect(Math.min(...wraps)).toBeCloseTo(smallWrap(2 * one.r, 2 * other.r, centres), 12)
    }),
    { seed: 43 },
  )
})

/** Length of a path of lines and circular arcs, each arc walked from its ends, radius and flags. */
function pathLength(path: string): number {
  let at: [number, number] = [0, 0]
  let first = at
  let sum = 0
  for (const [, letter, rest] of path.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const n = rest.trim().split(/\s+/).map(Number)
    const to: [number, number] = letter === 'Z' ? first : [n[n.length - 2], n[n.length - 1]]
    const chord = Math.hypot(to[0] - at[0], to[1] - at[1])
    if (letter === 'A') {
      const angle = 2 * Math.asin(Math.min(1, chord / (2 * n[0])))
      sum += n[0] * (n[3] === 1 ? 2 * Math.PI - angle : angle)
    } else if (letter !== 'M') sum += chord
    if (letter === 'M') first = to
    at = to
  }
  return sum
}

it('the path drawn is that belt, to the hundredth of a pixel it is written in', () => {
  for (const [small, large, centres] of [
    [20, 80, 220],
    [80, 20, 220],
    [60, 61, 300],
    [5, 140, 160],
  ]) {
    const one: Wheel = { at: { x: 100, y: 400 }, r: small }
    const other: Wheel = { at: { x: 100 + centres * 0.6, y: 400 - centres * 0.8 }, r: large }
    const long = beltLength(2 * small, 2 * large, centres)
    expect(Math.abs(pathLength(beltPath(one, other)) - long)).toBeLessThan(0.25)
  }
})
