// Where a surface over a grid stands above a level: rings, by marching squares, straight between neighbours.
import type { Polyline } from './label.ts'

/** Middles of a square's sides, in halves from the sample before it: left, right, top, bottom. */
const SIDES = { l: [1, 2], r: [3, 2], t: [2, 1], b: [2, 3] } as const
/** By the corners that stand above (bits: bottom left, bottom right, top right, top left): from side to side, above on one hand. */
const CUTS = ['', 'bl', 'rb', 'rl', 'tr', 'bltr', 'tb', 'tl', 'lt', 'bt', 'ltrb', 'rt', 'lr', 'br', 'lb', '']

/**
 * The rings around all of at least `level` in a grid of nx × ny finite values, row by row: sample (i, j) lies at
 * (i + ½, j + ½), all beyond the grid is below, and a ring there keeps to the grid's edge. A ring does not repeat its
 * first point; those around holes run the other way.
 */
export function ringsAbove(values: ArrayLike<number>, nx: number, ny: number, level: number): Polyline[] {
  const above = (i: number, j: number): boolean =>
    i >= 0 && j >= 0 && i < nx && j < ny && values[j * nx + i] >= level
  const width = 2 * nx + 2
  const next = new Map<number, number>()
  for (let j = -1; j < ny; j++)
    for (let i = -1; i < nx; i++) {
      const corners = [above(i, j + 1), above(i + 1, j + 1), above(i + 1, j), above(i, j)]
      const cut = CUTS[corners.reduce((bits, is, n) => bits | (is ? 1 << n : 0), 0)]
      const [from, to, from2, to2] = [...cut].map((side) => {
        const [x, y] = SIDES[side as keyof typeof SIDES]
        return (2 * j + y) * width + 2 * i + x
      })
      if (from !== undefined) next.set(from, to)
      if (from2 !== undefined) next.set(from2, to2)
    }
  /** A middle of a side, moved to where the level is between the samples on either hand. */
  const moved = (at: number): readonly [number, number] => {
    const [x, y] = [(at % width) / 2, Math.floor(at / width) / 2]
    const along = Number.isInteger(x)
    const [place, most] = along ? [x, nx] : [y, ny]
    if (place === 0 || place === most) return [x, y]
    const second = Math.floor(y) * nx + Math.floor(x)
    const first = values[second - (along ? 1 : nx)]
    const to = place - 0.5 + (level - first) / (values[second] - first)
    return along ? [to, y] : [x, to]
  }
  const rings: Polyline[] = []
  for (const start of next.keys()) {
    const ring: (readonly [number, number])[] = []
    for (let at: number | undefined = start; at !== undefined && next.has(at); ) {
      ring.push(moved(at))
      const to = next.get(at)
      next.delete(at)
      at = to
    }
    rings.push(ring)
  }
  return rings
}
