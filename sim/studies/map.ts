// The map: minutes until the cutoff opens, at any held speed and torque from cold, with the fan and without.
import type { Job } from '../job.ts'
import type { Heat } from '../parts/heat.ts'
import type { Parts } from '../plant.ts'
import { reachOf } from './map/axes.ts'
import { type MapColumn, mapColumn } from './map/column.ts'
import { type MapMark, mapMarks } from './map/marks.ts'
import { type MapPoint, warming } from './map/warming.ts'
import type { Pointwise } from './pointwise.ts'

export type Cooling = Heat['cooling']

/** What a map is worked out from. Column n is speed n % speeds of cooling ⌊n / speeds⌋. */
export interface MapSpec {
  readonly study: 'map'
  readonly parts: Parts
  /** As it is; and beside it the other way, where there is one. */
  readonly coolings: readonly Cooling[]
  /** Spindle speeds, rad/s, and torques of the cut, N·m, ascending, torques from 0. */
  readonly speeds: readonly number[]
  readonly torques: readonly number[]
}

/** With one cooling: columns by speed. */
export interface MapPanel {
  readonly cooling: Cooling
  readonly columns: readonly MapColumn[]
  /** The job's marks, each held without a pause, in their order. */
  readonly marks: readonly MapPoint[]
  /** True where a hundredth of the torque decides between some time and never: then a time is worth nothing. */
  readonly edges: readonly boolean[]
}

export interface HeatMap extends Pick<MapSpec, 'parts' | 'speeds' | 'torques'> {
  readonly panels: readonly MapPanel[]
  readonly marks: readonly MapMark[]
  /** With no cutoff fitted the minutes are those until the winding passes its class. */
  readonly fitted: boolean
}

/** The cooling to set beside each. */
const BESIDE: Readonly<Record<Cooling, Cooling>> = {
  none: 'shaft fan',
  'shaft fan': 'none',
  blower: 'none',
  enclosed: 'enclosed, outer fan',
  'enclosed, outer fan': 'enclosed',
}

/** Columns and rows of the page's map. */
export const GRID = { speeds: 60, torques: 40 } as const

const evenly = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, n) => from + ((to - from) * n) / (count - 1))

/** The map of a job as fitted, and with the cooling beside it. */
export function mapSpec(job: Job, count: { speeds: number; torques: number } = GRID): MapSpec {
  const { parts } = job
  const coolings = [parts.heat.cooling, BESIDE[parts.heat.cooling]]
  const { slowest, fastest, top } = reachOf(job, coolings, mapMarks(job))
  return {
    study: 'map',
    parts,
    coolings,
    speeds: evenly(slowest, fastest, count.speeds),
    torques: evenly(0, top, count.torques),
  }
}

/** Points in one request: a tenth of a second's work at the most. */
const AT_ONCE = 600

export const mapPoints: Pointwise<MapSpec, MapColumn> = {
  count: ({ coolings, speeds }) => coolings.length * speeds.length,
  atOnce: ({ torques }) => Math.max(1, Math.floor(AT_ONCE / torques.length)),
  *points({ parts, coolings, speeds, torques }, from, until) {
    const columns: MapColumn[] = []
    for (let n = from; n < until; n++) {
      const cooling = coolings[Math.floor(n / speeds.length)]
      columns.push(mapColumn(parts, cooling, speeds[n % speeds.length], torques))
      yield { t: n + 1 - from, of: until - from }
    }
    return columns
  },
}

/** How near to never a time is worth nothing, as a share of the torque. */
const NEAR = 0.01

/** The map made up from its columns, with the job's marks on it. */
export function heatMap(job: Job, spec: MapSpec, columns: readonly MapColumn[]): HeatMap {
  const { parts, coolings, speeds, torques } = spec
  const marks = mapMarks(job)
  const fitted = parts.cutoff.fitted !== 'none'
  const panels = coolings.map((cooling, c) => ({
    cooling,
    columns: columns.slice(c * speeds.length, (c + 1) * speeds.length),
    marks: marks.map(({ speed, torque }) => mapPoint(parts, cooling, speed, torque)),
    edges: marks.map(({ speed, torque }) => {
      const [less, more] = [1 - NEAR, 1 + NEAR].map((times) =>
        mapPoint(parts, cooling, speed, torque * times),
      )
      return (less.seconds === Infinity) !== (more.seconds === Infinity)
    }),
  }))
  return { parts, speeds, torques, panels, marks, fitted }
}

/** Any point of a map, worked out by itself. rad/s and N·m at the spindle. */
export const mapPoint = (parts: Parts, cooling: Cooling, speed: number, torque: number): MapPoint =>
  warming(parts, speed, cooling).point(torque)
