// The ribbons: the whole job of every variant, one bar each, with its stops.
import { type SVGTemplateResult, svg } from 'lit'
import { openSpells } from '../../sim/judge.ts'
import { clockTime, duration } from '../../sim/say/number.ts'
import type { Table } from './chart.ts'
import { columnMost } from './columns.ts'
import { textWidth } from './label.ts'
import { hatchPattern } from './layers/hatch.ts'
import { lineSample } from './layers/readout.ts'
import { ribbonMark, stretches } from './layers/ribbon.ts'
import { timeTicks } from './time.ts'
import { TICK_ROOM, type View } from './view.ts'
import { ribbonWords } from './words.ts'

const BAR = 14
const GAP = 10
const TOP = 7
/** A job this long counts in hours, s. */
const LONG = 7200

export interface Ribbons {
  readonly height: number
  /** Top and bottom of the frame around the part shown, px. */
  readonly frame: readonly [number, number]
  readonly still: SVGTemplateResult
  readonly words: string
  readonly table: () => Table
}

/** A name cut to a width (px) with an ellipsis. */
export function shortened(name: string, width: number, type: number): string {
  if (textWidth(name, type) <= width) return name
  let length = name.length
  while (length > 1 && textWidth(`${name.slice(0, length)}…`, type) > width) length--
  return `${name.slice(0, length).trimEnd()}…`
}

/** The bars of all variants over the whole job. */
export function ribbons(view: View): Ribbons {
  const { variants, active, left, right, end, narrow, row, k, type } = view
  const x = (t: number) => left + ((right - left) * t) / end
  const pitch = narrow ? BAR + GAP : Math.max(BAR + GAP, row + 2)
  const barTop = (n: number) => TOP + n * pitch
  const bottom = barTop(variants.length - 1) + BAR
  const most = Math.max(2, (right - left) / (TICK_ROOM * k))
  const bars = variants.map((variant, n) => {
    const { time, columns } = variant.trace
    const columnsC = columnMost(time, columns.switchC, 0, end, Math.round(right - left))
    const spells = openSpells(variant.trace.marks, variant.job.duty.seconds).map(
      ([from, until]) => [x(from), x(until)] as const,
    )
    const middle = barTop(n) + BAR / 2
    const name = svg`
      <text class="label strong ${variant.series}" x=${right + 36} y=${middle} dy="0.34em">
        <title>${variant.name}</title>${shortened(variant.name, view.width - right - 36, type)}</text>`
    return svg`
      ${ribbonMark(stretches(columnsC, left), spells, { left, right: x(variant.job.duty.seconds), top: barTop(n), height: BAR })}
      ${lineSample(variant.series, variant === active, narrow ? left - 28 : right + 10, middle)}
      ${narrow ? '' : name}`
  })
  const ticks = timeTicks(0, end, most, end >= LONG ? 3600 : 0).map(({ t, text }) => {
    const anchor = t === 0 ? 'start' : x(t) > right - 16 ? 'end' : 'middle'
    return svg`<text class="tick" x=${x(t)} y=${bottom + 22 * k} text-anchor=${anchor}>${text}</text>`
  })
  return {
    height: bottom + 28 * k,
    frame: [2, bottom + 5],
    words: ribbonWords(view),
    table: () => ({
      head: ['Variant', 'Cutoff opens', 'Recloses', 'Stays open'],
      rows: variants.flatMap(({ name: variant, trace, job }) => {
        const { seconds } = job.duty
        const spells = openSpells(trace.marks, seconds)
        if (spells.length === 0) return [[variant, 'never', '–', '–']]
        return spells.map(([from, until]) => [
          variant,
          clockTime(from),
          until < seconds ? clockTime(until) : 'not within the job',
          duration(until - from),
        ])
      }),
    }),
    still: svg`<defs>${hatchPattern}</defs>${bars}${ticks}`,
  }
}
