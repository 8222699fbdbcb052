// Where labels go: each takes the clearest of its spots; labels in a gutter are pushed apart.

/** A rectangle, px. */
export interface Rect {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** A polyline, px, from left to right. */
export type Polyline = readonly (readonly [number, number])[]

/** First point at or right of x; the line's length where there is none. */
export function firstFrom(line: Polyline, x: number): number {
  let low = 0
  let high = line.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (line[middle][0] < x) low = middle + 1
    else high = middle
  }
  return low
}

/** A label and the top left corners it would accept, best first. */
export interface Wanted {
  readonly text: string
  readonly width: number
  readonly height: number
  readonly spots: readonly (readonly [number, number])[]
}

/** Width of a text, px, estimated: an average letter is a little over half as wide as the type is high. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.54

const overlap = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

/** True where the segment from a to b touches the rectangle (clipping by parameter). */
export function crosses(
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  r: Rect,
): boolean {
  let enter = 0
  let leave = 1
  const sides = [
    [ax - bx, ax - r.x],
    [bx - ax, r.x + r.width - ax],
    [ay - by, ay - r.y],
    [by - ay, r.y + r.height - ay],
  ]
  for (const [run, room] of sides) {
    if (run === 0) {
      if (room < 0) return false
    } else if (run < 0) enter = Math.max(enter, room / run)
    else leave = Math.min(leave, room / run)
  }
  return enter <= leave
}

/** How many lines cross a rectangle. */
function crossings(rect: Rect, lines: readonly Polyline[]): number {
  let count = 0
  for (const line of lines) {
    const right = rect.x + rect.width
    for (let n = Math.max(1, firstFrom(line, rect.x)); n < line.length && line[n - 1][0] <= right; n++) {
      if (!crosses(line[n - 1], line[n], rect)) continue
      count++
      break
    }
  }
  return count
}

/**
 * Places labels one after the other: within the bounds, on no taken place and no earlier label, over as few lines as
 * can be. Undefined where a label has no such spot: it is left out rather than printed over another.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  taken: readonly Rect[],
  lines: readonly Polyline[],
  bounds: Rect,
): (Rect | undefined)[] {
  const occupied = [...taken]
  return wanted.map(({ width, height, spots }) => {
    let best: Rect | undefined
    let fewest = Number.POSITIVE_INFINITY
    for (const [x, y] of spots) {
      const rect = { x, y, width, height }
      const inside =
        x >= bounds.x &&
        y >= bounds.y &&
        x + width <= bounds.x + bounds.width &&
        y + height <= bounds.y + bounds.height
      if (!inside || occupied.some((other) => overlap(rect, other))) continue
      const count = crossings(rect, lines)
      if (count < fewest) [best, fewest] = [rect, count]
      if (count === 0) break
    }
    if (best) occupied.push(best)
    return best
  })
}

/**
 * Pushes the middles of labels of one height apart, each as near its wish as the order allows, within [top, bottom].
 * Where they do not all fit, they overlap evenly rather than leave the range.
 */
export function pushApart(wishes: readonly number[], height: number, top: number, bottom: number): number[] {
  const order = wishes.map((_wish, index) => index).sort((a, b) => wishes[a] - wishes[b])
  const room = Math.min(height, wishes.length > 1 ? (bottom - top - height) / (wishes.length - 1) : height)
  const placed = [...wishes]
  let least = top + height / 2
  for (const index of order) {
    placed[index] = Math.max(least, wishes[index])
    least = placed[index] + room
  }
  let most = bottom - height / 2
  for (const index of order.reverse()) {
    placed[index] = Math.min(most, placed[index])
    most = placed[index] - room
  }
  return placed
}
