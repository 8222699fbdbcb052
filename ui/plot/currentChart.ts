// The current chart: what the motor draws, against what the controller gives and the plate allows.
import { svg } from 'lit'
import { openSpells } from '../../sim/judge.ts'
import { brief, clockTime, grouped } from '../../sim/say/number.ts'
import { unitFor } from '../../sim/say/units.ts'
import { valueAt } from '../../sim/trace.ts'
import { type Chart, clipShape, levelTexts, tableTimes } from './chart.ts'
import { gridMark, valueTicks } from './layers/axis.ts'
import { bandMark } from './layers/band.ts'
import { hatchMark, hatchPattern } from './layers/hatch.ts'
import { limitMark } from './layers/limit.ts'
import { lineMark, polyline } from './layers/line.ts'
import { mostRead, pointsMark, readingPoints } from './layers/points.ts'
import { surging } from './reduce.ts'
import { valueAxis } from './scales.ts'
import { endOf, type Shown } from './shown.ts'
import { boxOf, greatestOf, scalesIn, type View } from './view.ts'
import { currentWords } from './words.ts'

const HEIGHT = 132
/** A controller limit beyond this many times what is drawn is named but not drawn: the lines would lie flat. */
const FARTHEST = 3.5

/** Motor current over time. */
export function currentChart(view: View): Chart {
  const { variants, active, units, log } = view
  const unit = unitFor('current', units)
  const { currentLimit } = active.job.parts.controller
  const plate = active.job.plate.amps
  const drawnMost = Math.max(
    ...variants.map(({ trace }) => greatestOf(trace).current),
    plate ?? 0,
    log ? mostRead(log.amps) : 0,
  )
  const far = currentLimit > FARTHEST * drawnMost
  const axis = valueAxis(0, far ? drawnMost : Math.max(drawnMost, currentLimit), unit)
  const { box, height } = boxOf(view, HEIGHT, false)
  const scales = scalesIn(view, box, axis)

  const drawn = variants.map((variant) => {
    const { line, bands } = surging(variant.trace, variant.job.duty, 'current', view, 'charge')
    return { variant, line: polyline(line, scales), bands }
  })
  const heavyLast = [...drawn].sort((a, b) => Number(a.variant.active) - Number(b.variant.active))
  const banded = drawn.find(({ variant }) => variant === active)?.bands ?? []
  const levels = [
    {
      text: `controller limit ${brief(currentLimit)}${far ? ' ↑' : ''}`,
      look: 'bad',
      value: far ? axis.high : currentLimit,
    },
    ...(plate === undefined ? [] : [{ text: `plate ${brief(plate)}`, look: 'quiet', value: plate }]),
  ]
  const reading = (variant: Shown, t: number) =>
    t > endOf(variant) + 1 ? '—' : grouped(valueAt(variant.trace, 'current', t), 1)
  return {
    ...{
      id: 'current',
      title: 'Motor current',
      unit,
      hint: '',
      height,
      scales,
      reads: '',
      words: currentWords(view),
    },
    readings: (t) =>
      variants.map((variant) => ({
        series: variant.series,
        active: variant === active,
        text: reading(variant, t),
      })),
    table: () => ({
      head: ['Time', ...variants.map(({ name }) => `${name}, ${unit}`)],
      rows: tableTimes(view.from, view.to).map((t) => [
        clockTime(t),
        ...variants.map((variant) => reading(variant, t)),
      ]),
    }),
    still: svg`
      <defs>${hatchPattern}${clipShape('current', scales)}</defs>
      ${gridMark(scales, axis, view.times)}
      ${hatchMark(openSpells(active.trace.marks, active.job.duty.seconds), scales)}
      ${valueTicks(scales, axis)}
      ${far ? '' : limitMark(currentLimit, scales, 'hard')}
      ${plate === undefined ? '' : limitMark(plate, scales, 'other')}
      <g clip-path="url(#clip-current)">
        ${bandMark(banded, scales, active.series)}
        ${heavyLast.map(({ variant, line }) => lineMark(line, variant.series, variant === active ? 'heavy' : 'series'))}
        ${log ? pointsMark(readingPoints(log.time, log.amps, scales)) : ''}
      </g>`,
    over: levelTexts(
      view,
      scales,
      levels,
      drawn.map(({ line }) => line),
    ).marks,
  }
}
