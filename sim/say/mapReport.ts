// The map as a table of round speeds and torques, and as the lines of a terminal.
import { fromUnit, toUnit } from '../quantity.ts'
import type { HeatMap, MapPanel } from '../studies/map.ts'
import { type MapPoint, warming } from '../studies/map/warming.ts'
import { COOLING_TITLE, endText, heatNote, panelSentence, untilWords } from './map.ts'
import { show } from './number.ts'
import { type Units, unitFor } from './units.ts'

export interface MapTable {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** Round values of a range in a unit, about so many; SI. */
function rounds(low: number, high: number, count: number, unit: string): number[] {
  const [from, to] = [toUnit(low, unit), toUnit(high, unit)]
  const raw = (to - from) / count
  const size = 10 ** Math.floor(Math.log10(raw))
  const step = size * [1, 2, 5, 10].find((each) => each * size >= raw)!
  const first = Math.ceil(from / step - 1e-9)
  const last = Math.floor(to / step + 1e-9)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => fromUnit((first + n) * step, unit))
}

/** A cell: the time, with a mark for what else there is. */
const cell = (point: MapPoint): string => {
  const { ends, classAt, limit, limitedAt } = point
  const hot = ends !== 'class' && classAt < Infinity ? '*' : ''
  const stands =
    limit === 'stall' || limit === 'current' || (limitedAt < Infinity && ends !== null) ? '!' : ''
  return `${ends === 'burns' ? 'burns ' : ''}${endText(point)}${hot}${stands}${limit === 'voltage' ? 'v' : ''}${limit === 'slip' ? 's' : ''}`
}

const SPEEDS = 7
const TORQUES = 9
export const CELL_NOTE =
  'min:s. * the winding passes its class first; ! the current limit takes its speed; v the volts do not reach the speed; s the belt slips.'

/** Speeds across, torques down, the highest at the top. */
export function mapTable(map: HeatMap, panel: MapPanel, units: Units): MapTable {
  const unit = unitFor('torque', units)
  const speeds = rounds(map.speeds[0], map.speeds[map.speeds.length - 1], SPEEDS, 'rpm')
  const torques = rounds(0, map.torques[map.torques.length - 1], TORQUES, unit)
  const columns = speeds.map((speed) => {
    const motor = warming(map.parts, speed, panel.cooling)
    return torques.map((torque) => cell(motor.point(torque)))
  })
  return {
    head: [unit, ...speeds.map((speed) => `${show(speed, 'angular speed', units).number} rpm`)],
    rows: torques
      .map((torque, n) => [show(torque, 'torque', units).number, ...columns.map((column) => column[n])])
      .reverse(),
  }
}

/** The lines of a terminal. */
export function mapLines(title: string, map: HeatMap, units: Units): readonly string[] {
  return [
    title,
    `${untilWords(map)}, running without a pause from cold. Spindle speed across, torque of the cut down.`,
    ...map.panels.flatMap((panel) => {
      const { head, rows } = mapTable(map, panel, units)
      const widths = head.map((text, n) => Math.max(text.length, ...rows.map((row) => row[n].length)))
      const line = (cells: readonly string[]) =>
        `  ${cells.map((text, n) => text.padStart(widths[n])).join('  ')}`
      return [
        '',
        COOLING_TITLE[panel.cooling],
        line(head),
        ...rows.map(line),
        panelSentence(map, panel, units),
      ]
    }),
    '',
    CELL_NOTE,
    heatNote(map, units),
  ].filter((text, n, all) => text !== '' || n < all.length - 1)
}
