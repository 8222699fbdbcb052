// The speed chart: what the spindle was asked, and what it got.
import { svg } from 'lit'
import { openSpells } from '../../sim/judge.ts'
import { clockTime, show } from '../../sim/say/number.ts'
import { unitFor } from '../../sim/say/units.ts'
import { valueAt } from '../../sim/trace.ts'
import { type Chart, clipShape, levelTexts, tableTimes } from './chart.ts'
import type { Points } from './columns.ts'
import { gridMark, valueTicks } from './layers/axis.ts'
import { bandMark } from './layers/band.ts'
import { hatchMark, hatchPattern } from './layers/hatch.ts'
import { lineMark, polyline } from './layers/line.ts'
import { slipMark, slipSpells } from './layers/slip.ts'
import { mostRead, pointsMark, readingPoints } from './layers/points.ts'
import { exact, surging } from './reduce.ts'
import { valueAxis } from './scales.ts'
import { endOf, type Shown } from './shown.ts'
import { boxOf, greatestOf, scalesIn, type View } from './view.ts'
import { speedWords } from './words.ts'

const HEIGHT = 126

const divided = ({ t, value }: Points, by: number): Points => ({ t, value: value.map((speed) => speed / by) })
/** Speed of the spindle, got or asked, at a moment, rad/s; not a number after the run's end. */
const at = (variant: Shown, channel: 'spindle' | 'asked', t: number): number =>
  t > endOf(variant) + 1
    ? Number.NaN
    : valueAt(variant.trace, channel, t) / (channel === 'asked' ? variant.ratio : 1)

/** Speed at the spindle over time. */
export function speedChart(view: View): Chart {
  const { variants, active, units, narrow, log } = view
  const unit = unitFor('angular speed', units)
  const logged = log ? mostRead(log.speed) / active.ratio : 0
  const most = Math.max(logged, ...variants.map(({ trace, ratio }) => greatestOf(trace).speed / ratio))
  const axis = valueAxis(0, most, unit)
  const { box, height } = boxOf(view, HEIGHT, false)
  const scales = scalesIn(view, box, axis)

  const drawn = variants.map((variant) => {
    const { line, bands } = surging(variant.trace, variant.job.duty, 'spindle', view)
    return { variant, series: variant.series, line: polyline(line, scales), bands }
  })
  const heavyLast = [...drawn].sort((a, b) => Number(a.variant.active) - Number(b.variant.active))
  const asked = polyline(divided(exact(active.trace, 'asked', view), active.ratio), scales)
  const banded = drawn.find(({ variant }) => variant === active)?.bands ?? []
  const surges = active.job.duty.phases.some(({ surge }) => surge !== null)
  const speeds = new Set(active.job.duty.phases.map(({ speed }) => speed).filter((speed) => speed > 0))
  const highest = Math.max(0, ...speeds)
  const text = speeds.size === 1 ? `asked ${show(highest, 'angular speed', units).number}` : 'dotted: asked'
  const slips = slipSpells(active.trace.marks, view)
  const levels = narrow
    ? []
    : [
        { text, look: 'quiet', value: highest },
        ...(banded.length > 0
          ? [{ text: `shaded: ${surges ? 'surges' : 'least to most'}`, look: 'quiet', value: highest }]
          : []),
      ]

  const reading = (variant: Shown, t: number) =>
    show(Math.max(0, at(variant, 'spindle', t)), 'angular speed', units).number
  return {
    ...{ id: 'speed', title: 'Speed at the spindle', height, scales, reads: '', words: speedWords(view) },
    ...{
      unit,
      hint: [...(narrow ? ['dotted: asked'] : []), ...(slips.length > 0 ? ['red bar: belt slips'] : [])].join(
        ' · ',
      ),
    },
    readings: (t) =>
      variants.map((variant) => ({
        series: variant.series,
        active: variant === active,
        text: reading(variant, t),
      })),
    table: () => ({
      head: ['Time', `Asked, ${unit}`, ...variants.map(({ name }) => `${name}, ${unit}`)],
      rows: tableTimes(view.from, view.to).map((t) => [
        clockTime(t),
        show(at(active, 'asked', t), 'angular speed', units).number,
        ...variants.map((variant) => reading(variant, t)),
      ]),
    }),
    still: svg`
      <defs>${hatchPattern}${clipShape('speed', scales)}</defs>
      ${gridMark(scales, axis, view.times)}
      ${hatchMark(openSpells(active.trace.marks, active.job.duty.seconds), scales)}
      ${valueTicks(scales, axis)}
      <g clip-path="url(#clip-speed)">
        ${bandMark(banded, scales, active.series)}
        ${heavyLast.map(({ series, line, variant }) => lineMark(line, series, variant === active ? 'heavy' : 'series'))}
        ${lineMark(asked, active.series, 'asked')}
        ${slipMark(slips, scales)}
        ${log ? pointsMark(readingPoints(log.time, log.speed, scales, (speed) => speed / active.ratio)) : ''}
      </g>`,
    over: levelTexts(view, scales, levels).marks,
  }
}
