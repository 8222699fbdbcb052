// Torque over spindle speed: this motor all day and for seconds, the old motor's curve, and what the job asks.
import { type SVGTemplateResult, svg } from 'lit'
import type { Job } from '../../sim/job.ts'
import type { AgainstOld } from '../../sim/rival/picture.ts'
import type { Curve } from '../../sim/rival/strength.ts'
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import { grouped, show, told } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { Table } from './chart.ts'
import { placeLabels, type Polyline, textWidth, type Wanted } from './label.ts'
import { areaPath, linePath } from './path.ts'
import { even } from './scale.ts'
import { roundStep, valueAxis } from './scales.ts'
import { askedPoints, linesOf, onCurve, torqueWords } from './torqueLines.ts'
import { alongLine } from './view.ts'

const NARROW = 760
const HEIGHT = 290
/** Seconds may reach far over everything else: the axis goes no higher than so many times the rest. */
const OVER_REST = 2.4

export interface TorqueDrawing {
  readonly height: number
  /** Spindle speed (rad/s) at px from the left, and px of a speed; kept within the axis. */
  readonly speedAt: (x: number) => number
  readonly x: (speed: number) => number
  /** The cross-hair at a spindle speed, and what it reads. */
  readonly cross: (speed: number) => SVGTemplateResult
  readonly read: (speed: number) => string
  readonly drawn: SVGTemplateResult
  readonly words: string
  readonly table: () => Table
}

/** The drawing; null where there is no room for it. */
export function torqueDrawing(
  picture: AgainstOld,
  job: Job,
  units: Units,
  width: number,
  k: number,
): TorqueDrawing | null {
  const narrow = width < NARROW
  const box = {
    left: Math.round(48 * k),
    right: width - (narrow ? 12 : 24),
    top: 14,
    bottom: 14 + HEIGHT * k,
  }
  if (box.right - box.left < 80) return null
  const unit = unitFor('torque', units)
  const lines = linesOf(picture, job, units)
  const asked = askedPoints(job)
  const most = (curve: Curve) => curve.torque.reduce((a, b) => Math.max(a, b), 0)
  const rest = Math.max(
    ...asked.map(({ torque }) => torque),
    ...lines.filter(({ look }) => look !== 'seconds').map(({ curve }) => most(curve)),
    1e-3,
  )
  const axis = valueAxis(0, Math.min(OVER_REST * rest, Math.max(rest, most(picture.seconds))), unit)
  const x = even([0, picture.fastest], [box.left, box.right])
  const y = even([0, axis.high], [box.bottom, box.top])
  const fastest = toUnit(picture.fastest, 'rpm')
  const step = roundStep(0, fastest, Math.max(3, Math.floor((box.right - box.left) / (90 * k))))
  const speeds = Array.from({ length: Math.floor(fastest / step + 1e-9) + 1 }, (_, n) => n * step)

  const pixels = lines.map(
    ({ curve }): Polyline => [...curve.speed].map((speed, n) => [x(speed), y(curve.torque[n])]),
  )
  const now = picture.allDay.find(({ cooling }) => cooling === job.parts.heat.cooling)?.curve
  const under = (line: Polyline) =>
    areaPath(
      line,
      line.map(([at]) => [at, box.bottom]),
    )

  const row = 18 * k
  const rects = asked.map(({ speed, torque }) => ({
    x: x(speed) - 8,
    y: y(torque) - 8,
    width: 16,
    height: 16,
  }))
  const size = (text: string) => ({ width: textWidth(text, 13 * k) * 1.08, height: row })
  const pointLabels = asked.map(({ name, speed, torque }): Wanted => {
    const one = size(name)
    const middle = y(torque) - row / 2
    return {
      text: name,
      ...one,
      spots: [
        [x(speed) + 12, middle],
        [x(speed) - 12 - one.width, middle],
        [x(speed) + 12, middle + row],
        [x(speed) - 12 - one.width, middle + row],
      ],
    }
  })
  const lineLabels = lines.map(({ name }, n): Wanted => {
    const one = size(name)
    // The old motor's line falls steeply: beside it there is more room than along it.
    const points = pixels[n]
    const along = alongLine(
      points,
      pixels.filter((_, other) => other !== n),
      { ...box },
      one,
    )
    const summit = points.reduce((a, b) => (b[1] < a[1] ? b : a), points[0])
    const beside = [0, 1, 2, 3].map((down) => [summit[0] + 14, summit[1] + down * row] as const)
    return { text: name, ...one, spots: lines[n].look.startsWith('D') ? [...beside, ...along] : along }
  })
  const bounds = {
    x: box.left,
    y: box.top - row,
    width: box.right - box.left,
    height: box.bottom - box.top + row,
  }
  const places = placeLabels([...pointLabels, ...lineLabels], rects, pixels, bounds)
  const looks = [...asked.map(() => 'strong'), ...lines.map(({ label }) => label)]

  const torqueText = (value: number | null) => (value === null ? '–' : show(value, 'torque', units).number)
  return {
    height: box.bottom + 2 * row + 8,
    x,
    speedAt: (at) => Math.min(picture.fastest, Math.max(0, x.at(at))),
    read: (speed) => torqueWords(lines, speed, units),
    cross: (speed) => svg`
      <line class="scrubber" x1=${x(speed)} x2=${x(speed)} y1=${box.top} y2=${box.bottom} />
      ${lines.map(({ curve }) => {
        const torque = onCurve(curve, speed)
        return torque !== null && torque <= axis.high
          ? svg`<circle class="crossing" cx=${x(speed)} cy=${y(torque)} r="4" />`
          : svg``
      })}`,
    words: `Torque at the spindle over its speed. ${asked
      .map(
        ({ name, speed, torque }) =>
          `The job asks ${told(torque, 'torque', units)} at ${told(speed, 'angular speed', units)} (${name})`,
      )
      .join('; ')}. There, ${asked.length > 0 ? torqueWords(lines, asked[0].speed, units) : ''}.`,
    table: () => ({
      head: ['Spindle, rpm', ...lines.map(({ name }) => `${name}, ${unit}`)],
      rows: speeds.map((rpm) => [
        grouped(rpm, 0),
        ...lines.map(({ curve }) => torqueText(onCurve(curve, fromUnit(rpm, 'rpm')))),
      ]),
    }),
    drawn: svg`
      <clipPath id="clip-torque"><rect x=${box.left} y=${box.top - 2} width=${box.right - box.left} height=${box.bottom - box.top + 4} /></clipPath>
      <g class="grid">
        ${axis.ticks.map(({ value }) => svg`<line x1=${box.left} x2=${box.right} y1=${y(value)} y2=${y(value)} />`)}
      </g>
      ${axis.ticks.map(({ value, text }) => svg`<text class="tick" x=${box.left - 8} y=${y(value)} dy="0.34em" text-anchor="end">${text}</text>`)}
      ${speeds.map(
        (rpm) =>
          svg`<text class="tick" x=${x(fromUnit(rpm, 'rpm'))} y=${box.bottom + row + 2} text-anchor="middle">${grouped(rpm, 0)}</text>`,
      )}
      <text class="tick" x=${box.right} y=${box.bottom + 2 * row + 2} text-anchor="end">spindle speed, rpm</text>
      <g clip-path="url(#clip-torque)">
        ${now ? svg`<path class="under A" d=${under(pixels[picture.allDay.findIndex(({ curve }) => curve === now)])} />` : ''}
        ${lines.map(({ look }, n) => svg`<path class="line ${look}" d=${linePath(pixels[n])} />`)}
      </g>
      <line class="base" x1=${box.left} x2=${box.right} y1=${box.bottom} y2=${box.bottom} />
      ${asked.map(({ speed, torque }) => svg`<circle class="point" cx=${x(speed)} cy=${y(torque)} r="5.5" />`)}
      ${[...asked.map(({ name }) => name), ...lines.map(({ name }) => name)].map((text, n) => {
        const place = places[n]
        return place
          ? svg`<text class="label ${looks[n]}" x=${place.x} y=${place.y + place.height / 2} dy="0.34em">${text}</text>`
          : svg``
      })}`,
  }
}
