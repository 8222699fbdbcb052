// The temperature chart: the switch of every variant, winding and frame of the active one, and the limits they meet.
import { svg } from 'lit'
import { openSpells } from '../../sim/judge.ts'
import { classLimitC } from '../../sim/handbook/insulation.ts'
import { clockTime, show } from '../../sim/say/number.ts'
import { unitFor } from '../../sim/say/units.ts'
import { type Channel, valueAt } from '../../sim/trace.ts'
import { type Chart, clipShape, type Level, levelTexts, tableTimes } from './chart.ts'
import { gridMark, timeTickMarks, valueTicks } from './layers/axis.ts'
import { hatchMark, hatchPattern } from './layers/hatch.ts'
import { labelMarks } from './layers/labels.ts'
import { limitMark } from './layers/limit.ts'
import { lineMark, polyline } from './layers/line.ts'
import { mostRead, pointsMark, readingPoints } from './layers/points.ts'
import { placeLabels } from './label.ts'
import { exact } from './reduce.ts'
import { temperatureFloor, valueAxis } from './scales.ts'
import { endOf, type Shown } from './shown.ts'
import { loggedWanted, namesWanted, tripsIn, tripsWanted } from './temperatureLabels.ts'
import { tripMark } from './layers/tripMark.ts'
import { boxOf, scalesIn, type View, within } from './view.ts'
import { temperatureWords } from './words.ts'

const HEIGHT = 250

/** Highest and lowest temperature of a variant that its lines reach, °C. */
const reach = ({ trace: { peaks, columns } }: Shown, active: boolean): number[] => [
  peaks.switchC.value,
  columns.switchC[0] ?? 20,
  ...(active ? [peaks.windingC.value, peaks.frameC.value] : []),
]

/** Temperatures over time. */
export function temperatureChart(view: View): Chart {
  const { variants, active, units, log } = view
  const unit = unitFor('temperature', units)
  const { cutoff, winding } = active.job.parts
  const classC = classLimitC(winding.insulation)
  const reached = [
    ...variants.flatMap((variant) => reach(variant, variant === active)),
    ...(log ? [mostRead(log.frameC), mostRead(log.windingC)] : []),
  ].filter(Number.isFinite)
  const limits = [classC, ...(cutoff.fitted === 'none' ? [] : [cutoff.opensAt])]
  const axis = valueAxis(temperatureFloor(Math.min(20, ...reached)), Math.max(...limits, ...reached), unit)
  const { box, height } = boxOf(view, HEIGHT, true)
  const scales = scalesIn(view, box, axis)

  const lineOf = (variant: Shown, channel: Channel) => polyline(exact(variant.trace, channel, view), scales)
  const others = variants
    .filter((variant) => variant !== active)
    .map((variant) => ({ variant, line: lineOf(variant, 'switchC') }))
  const own = {
    winding: lineOf(active, 'windingC'),
    frame: lineOf(active, 'frameC'),
    switch: lineOf(active, 'switchC'),
  }
  const canRead = log ? readingPoints(log.time, log.frameC, scales) : []
  const lines = [own.switch, own.winding, own.frame, ...others.map(({ line }) => line)]

  const degrees = (value: number) => show(value, 'temperature', units).number
  // In order of weight: on a phone the first takes the best place.
  const opens = { text: `cutoff opens ${degrees(cutoff.opensAt)}`, look: 'bad strong', value: cutoff.opensAt }
  const recloses = { text: `recloses ${degrees(cutoff.reclosesAt)}`, look: 'quiet', value: cutoff.reclosesAt }
  const levels: Level[] = [
    ...(cutoff.fitted === 'none' ? [] : [opens]),
    { text: `winding limit ${degrees(classC)}`, look: 'bad', value: classC },
    ...(cutoff.fitted === 'self-reset' ? [recloses] : []),
  ]

  const levelLines = levels.map(
    ({ value }) =>
      [
        [box.left, scales.y(value)],
        [box.right, scales.y(value)],
      ] as const,
  )
  const trips = variants.toReversed().flatMap((variant) => tripsIn(variant, variant === active, view, scales))
  trips.sort((a, b) => Number(a.active) - Number(b.active))
  const rings = trips.map(({ rect }) => rect)
  // Limits come first: a line without its name says nothing.
  const limitTexts = levelTexts(view, scales, levels, lines, rings)
  const events = tripsWanted(trips, view)
  const eventPlaces = placeLabels(events, limitTexts.taken, lines, within(box))
  const taken = [...limitTexts.taken, ...eventPlaces.filter((place) => place !== undefined)]
  const names = [...namesWanted(view, box, own, others), ...loggedWanted(view, box, canRead, lines)]
  const namePlaces = placeLabels(names, taken, [...lines, ...levelLines], within(box))

  const at = (variant: Shown, channel: Channel, t: number) =>
    degrees(t > endOf(variant) + 1 ? Number.NaN : valueAt(variant.trace, channel, t))
  return {
    ...{
      id: 'temperature',
      title: 'Temperature',
      height,
      scales,
      reads: 'switch ',
      words: temperatureWords(view),
    },
    ...{
      unit,
      hint: `heavy line: cutoff switch, thin: winding, dots: frame${canRead.length > 0 ? ', rings: can as logged' : ''}`,
    },
    readings: (t) =>
      variants.map((variant) => ({
        series: variant.series,
        active: variant === active,
        text: at(variant, 'switchC', t),
      })),
    table: () => ({
      head: [
        'Time',
        ...['Winding', 'Frame'].map((part) => `${part}, ${active.name}, ${unit}`),
        ...variants.map(({ name }) => `Switch, ${name}, ${unit}`),
      ],
      rows: tableTimes(view.from, view.to).map((t) => [
        clockTime(t),
        at(active, 'windingC', t),
        at(active, 'frameC', t),
        ...variants.map((variant) => at(variant, 'switchC', t)),
      ]),
    }),
    still: svg`
      <defs>${hatchPattern}${clipShape('temperature', scales)}</defs>
      ${gridMark(scales, axis, view.times)}
      ${hatchMark(openSpells(active.trace.marks, active.job.duty.seconds), scales)}
      ${valueTicks(scales, axis)}
      ${timeTickMarks(scales, view.times, 20 * view.k)}
      ${limitMark(classC, scales, 'warning')}
      ${cutoff.fitted === 'none' ? '' : limitMark(cutoff.opensAt, scales, 'hard')}
      ${cutoff.fitted === 'self-reset' ? limitMark(cutoff.reclosesAt, scales, 'other') : ''}
      <g clip-path="url(#clip-temperature)">
        ${others.map(({ variant, line }) => lineMark(line, variant.series, 'series'))}
        ${lineMark(own.frame, active.series, 'dots')}
        ${lineMark(own.winding, active.series, 'thin')}
        ${lineMark(own.switch, active.series, 'heavy')}
        ${log ? pointsMark(readingPoints(log.time, log.windingC, scales), 'winding') : ''}
        ${pointsMark(canRead)}
      </g>`,
    over: svg`
      ${limitTexts.marks}
      ${labelMarks(names, namePlaces)}
      ${trips.map(({ cx, cy, open, series, active: heavy }) => tripMark(cx, cy, open, series, heavy))}
      ${labelMarks(events, eventPlaces)}`,
  }
}
