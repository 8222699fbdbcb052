// Points as the path of an SVG: a line through them, and the area between two lines. Coordinates to a tenth of a px.
import type { Polyline } from './label.ts'

type Point = Polyline[number]

const tenth = (value: number): number => Math.round(value * 10) / 10
const text = ([x, y]: Point): string => `${tenth(x)},${tenth(y)}`

/** A line through points, broken where one is null; a point alone is closed, so that a round cap shows it. '' for none. */
export function linePath(points: readonly (Point | null)[]): string {
  let path = ''
  let run = 0
  const end = () => {
    if (run === 1) path += 'Z'
    run = 0
  }
  for (const point of points) {
    if (point === null) end()
    else path += `${run++ === 0 ? 'M' : 'L'}${text(point)}`
  }
  end()
  return path
}

/** The area between two lines of as many points, the second read backwards; '' for none. */
export const areaPath = (line: Polyline, back: Polyline): string =>
  line.length === 0 ? '' : `M${[...line, ...back.toReversed()].map(text).join('L')}Z`
