// The map as lines and areas: bands of minutes, the line of never, and where amps or volts set an end.
import { contours } from 'd3'
import type { HeatMap, MapPanel } from '../../sim/studies/map.ts'
import { heatColour } from './heat.ts'
import type { Polyline } from './label.ts'

/** Minutes at which a band begins; and its colour, on the heat scale: how soon heat stops it. */
export const LEVELS = [90, 40, 20, 10, 5, 2] as const
const BAND_C = [72, 84, 96, 108, 122, 142] as const
/** Of the band between 90 min and never. */
const SLOWEST_C = 52

export const bandColour = (level: number): string => heatColour(level < 0 ? SLOWEST_C : BAND_C[level])

export interface Field {
  /** Outline of everything that ever ends it, and of what the amps do not hold. SVG paths, px. */
  readonly ends: string
  readonly over: string
  /** Of what ends sooner than each level; '' where nothing does. */
  readonly bands: readonly string[]
  /** Lines to draw and to keep labels off, px: never, class, amps, volts, each in pieces; and the levels. */
  readonly never: readonly Polyline[]
  readonly cool: readonly Polyline[]
  readonly most: Polyline
  readonly short: readonly Polyline[]
  readonly levels: readonly Polyline[]
}

const pathOf = (line: Polyline): string => line.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join('L')

/** Runs of columns for which a line is there. */
function pieces(there: readonly boolean[], at: (n: number) => readonly [number, number]): Polyline[] {
  const found: (readonly [number, number])[][] = []
  there.forEach((is, n) => {
    if (!is) return
    if (n === 0 || !there[n - 1]) found.push([])
    found[found.length - 1].push(at(n))
  })
  return found.filter((piece) => piece.length > 1)
}

/** The field of a panel; x: rad/s → px, y: N·m → px. */
export function fieldOf(
  map: HeatMap,
  { columns }: MapPanel,
  x: (speed: number) => number,
  y: (torque: number) => number,
): Field {
  const { speeds, torques } = map
  const [nx, ny] = [speeds.length, torques.length]
  const top = torques[ny - 1]
  const clip = (torque: number) => Math.min(top, Math.max(0, torque))
  const at = (of: (n: number) => number) => (n: number) => [x(speeds[n]), y(clip(of(n)))] as const
  const along = (of: (n: number) => number): Polyline => speeds.map((_, n) => at(of)(n))
  // Never, as far as the amps reach: what they do not hold has a region of its own.
  const safe = (n: number) => Math.min(columns[n].never, columns[n].most)
  const ceiling = [`${x(speeds[nx - 1])},${y(top)}`, `${x(speeds[0])},${y(top)}`].join('L')

  // A rate, since never is then nothing at all and the surface has no cliff there.
  const rate = new Float64Array(nx * ny)
  for (let i = 0; i < nx; i++) for (let j = 0; j < ny; j++) rate[j * nx + i] = 60 / columns[i].seconds[j]
  const place = ([gx, gy]: readonly number[]) =>
    [
      x(speeds[0] + ((gx - 0.5) / (nx - 1)) * (speeds[nx - 1] - speeds[0])),
      y(((gy - 0.5) / (ny - 1)) * top),
    ] as const
  const rings = contours().size([nx, ny])
  const bands = LEVELS.map((minutes) =>
    rings
      .contour([...rate], 1 / minutes)
      .coordinates.flatMap((polygon) => polygon.map((ring) => `M${pathOf(ring.map(place))}Z`))
      .join(''),
  )
  const levels = LEVELS.map((minutes): Polyline => {
    const found: (readonly [number, number])[] = []
    columns.forEach(({ seconds, most }, n) => {
      const j = seconds.findIndex((t) => t <= minutes * 60)
      if (j < 1 || torques[j] > most) return
      const [a, b] = [60 / seconds[j - 1], 60 / seconds[j]]
      const share = (1 / minutes - a) / (b - a)
      found.push([x(speeds[n]), y(torques[j - 1] + share * (torques[j] - torques[j - 1]))])
    })
    return found
  })
  return {
    ends: `M${pathOf(along(safe))}L${ceiling}Z`,
    over: `M${pathOf(along((n) => columns[n].most))}L${ceiling}Z`,
    bands,
    never: pieces(
      columns.map(({ never, most }) => never < most && never < top),
      at(safe),
    ),
    cool: pieces(
      columns.map(
        ({ cool, never, most }) => map.fitted && cool > 0 && cool < never && cool < Math.min(most, top),
      ),
      at((n) => columns[n].cool),
    ),
    most: along((n) => columns[n].most),
    short: pieces(
      columns.map(({ short }) => short < top),
      at((n) => columns[n].short),
    ),
    levels,
  }
}
