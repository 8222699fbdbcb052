// The search of the limits: it ends on the side that holds, and brackets what it looks for.
import { describe, expect, it } from 'vitest'
import { finish } from '../../../sim/run.ts'
import { bracket, crossing } from '../../../sim/studies/limits/crossing.ts'

describe('the search', () => {
  const of = (f: (x: number) => number) =>
    // biome-ignore lint/correctness/useYield: answered at once.
    function* (x: number) {
      return f(x)
    }
  it('ends on the side that holds, near the crossing, from either side, over a cliff too', () => {
    for (const f of [(x: number) => 3 - x ** 3, (x: number) => (x < 1.4422 ? 5 : Number.NEGATIVE_INFINITY)]) {
      const x = finish(crossing(of(f), { x: 0.1, left: f(0.1) }, { x: 7, left: f(7) }, 1e-6))
      expect(f(x)).toBeGreaterThanOrEqual(0)
      expect(Math.abs(x - 3 ** (1 / 3))).toBeLessThan(1e-4)
      const mirrored = (y: number) => f(-y)
      const y = finish(crossing(of(mirrored), { x: -0.1, left: f(0.1) }, { x: -7, left: f(7) }, 1e-6))
      expect(Math.abs(y + 3 ** (1 / 3))).toBeLessThan(1e-4)
    }
  })
  it('brackets upwards and downwards, and says where there is nothing to bracket', () => {
    const up = finish(
      bracket(
        of((x) => 10 - x),
        1,
        0.1,
        100,
        2,
      ),
    )
    expect(up).toMatchObject({ good: 8, bad: 16 })
    expect(
      finish(
        bracket(
          of((x) => 10 - x),
          100,
          0.1,
          100,
          2,
        ),
      ),
    ).toMatchObject({ good: 6.25, bad: 12.5 })
    expect(
      finish(
        bracket(
          of(() => 1),
          1,
          0.1,
          100,
          2,
        ),
      ),
    ).toBe('always')
    expect(
      finish(
        bracket(
          of(() => -1),
          1,
          0.1,
          100,
          2,
        ),
      ),
    ).toBe('never')
  })
})
