// The ratio study drawn: top speed, speed lost and heat over one logarithmic axis, the window that works through all three.
import { line as path } from 'd3'
import { type SVGTemplateResult, svg } from 'lit'
import type { Job } from '../../sim/job.ts'
import { classLimitC } from '../../sim/handbook/insulation.ts'
import { toUnit } from '../../sim/quantity.ts'
import { brief, grouped, percent, show } from '../../sim/say/number.ts'
import { inward } from '../../sim/say/ratio.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { RatioPoint, RatioStudy } from '../../sim/studies/ratio.ts'
import { atRatio, isBurnt } from './ratioCurves.ts'
import { type RatioScale, ratioScale } from './ratioScale.ts'
import { type Axis, roundStep, temperatureFloor, valueAxis } from './scales.ts'
import type { Series } from './shown.ts'

export interface RatioDrawing {
  readonly scale: RatioScale
  readonly height: number
  /** Top and bottom of the plots, px. */
  readonly top: number
  readonly bottom: number
  readonly drawn: SVGTemplateResult
  /** The cross-hair at a ratio. */
  readonly cross: (ratio: number) => SVGTemplateResult
}

interface Plot {
  readonly title: string
  readonly unit: string
  readonly top: number
  readonly bottom: number
  readonly axis: Axis
  /** SI → px. */
  readonly y: (value: number) => number
  readonly lines: readonly { readonly look: string; readonly of: (point: RatioPoint) => number | null }[]
  readonly limits: readonly {
    readonly value: number
    readonly text: string
    readonly look: string
    readonly label: string
  }[]
  /** The value drawn heavy, and its text. */
  readonly read: (ratio: number) => { readonly value: number | null; readonly text: string }
}

const NARROW = 760
const TITLE = 26
const HEIGHT = 104
const HEAD = 46
const TICK_ROOM = 58
/** The most loss of speed that is drawn, a share: what is beyond has stopped. */
const MOST_LOSS = 0.6
/** Heat is drawn up to so much over its limit, K. */
const OVER = 45

const linear =
  (low: number, high: number, bottom: number, top: number) =>
  (value: number): number =>
    bottom + ((value - low) / (high - low)) * (top - bottom)

/** Loss of speed: nothing at the top, down is worse. */
function lossAxis(most: number): Axis {
  const high = Math.max(0.1, Math.min(MOST_LOSS, Math.ceil(most * 10) / 10))
  const step = roundStep(0, high * 100, 4) / 100
  const count = Math.floor(high / step + 1e-9)
  return {
    low: 0,
    high,
    ticks: Array.from({ length: count + 1 }, (_, n) => ({
      value: n * step,
      text: grouped(n * step * 100, 0),
    })),
  }
}

function plotsOf(study: RatioStudy, job: Job, units: Units, k: number, narrow: boolean): readonly Plot[] {
  const { points, asked } = study
  const { machine, cutoff, winding } = job.parts
  const place = (n: number) => {
    const top = (HEAD + n * (TITLE + HEIGHT + 10) + TITLE) * k
    return { top, bottom: top + HEIGHT * k }
  }
  const rpm = (value: number) => show(value, 'angular speed', units).number
  const degrees = (value: number) => show(value, 'temperature', units).number

  const speeds = valueAxis(
    0,
    Math.max(asked.fastest, ...points.map(({ topSpeed }) => topSpeed)),
    unitFor('angular speed', units),
  )
  const losses = lossAxis(Math.max(machine.acceptedSag * 1.6, ...points.map(({ sag }) => sag ?? 1)))
  const limitC = classLimitC(winding.insulation)
  const fitted = cutoff.fitted !== 'none'
  const highest = Math.max(limitC, fitted ? cutoff.opensAt : 0) + OVER
  const coolest = Math.min(...points.map((point) => point.hottestSwitchC), job.parts.heat.air)
  const hottest = Math.max(...points.map((point) => point.hottestWindingC), limitC)
  const heat = valueAxis(temperatureFloor(coolest), Math.min(highest, hottest), unitFor('temperature', units))
  const at = [place(0), place(1), place(2)] as const
  return [
    {
      ...at[0],
      ...{ title: narrow ? 'Top speed' : 'Top speed of the spindle', unit: 'rpm', axis: speeds },
      y: linear(speeds.low, speeds.high, at[0].bottom, at[0].top),
      lines: [{ look: 'heavy', of: ({ topSpeed }) => topSpeed }],
      limits: [{ value: asked.fastest, text: `wanted ${rpm(asked.fastest)}`, look: 'asked', label: 'quiet' }],
      read: (ratio) => {
        const value = atRatio(study, ratio).topSpeed
        return { value, text: rpm(value) }
      },
    },
    {
      ...at[1],
      ...{ title: 'Speed lost in the cut', unit: '%, down is worse', axis: losses },
      y: linear(0, losses.high, at[1].top, at[1].bottom),
      lines: [{ look: 'heavy', of: ({ sag }) => sag }],
      limits: [
        {
          value: machine.acceptedSag,
          text: `you accept ${grouped(machine.acceptedSag * 100, 0)}`,
          look: 'limit warning',
          label: 'bad',
        },
      ],
      read: (ratio) => {
        const { sag } = atRatio(study, ratio)
        return { value: sag, text: sag === null ? 'stands still' : percent(sag) }
      },
    },
    {
      ...at[2],
      ...{
        title: 'Hottest',
        unit: fitted ? `${units.temperature}, heavy: cutoff switch, thin: winding` : units.temperature,
        axis: heat,
      },
      y: linear(heat.low, heat.high, at[2].bottom, at[2].top),
      lines: [
        { look: 'thin', of: (point) => (isBurnt(point) ? null : point.hottestWindingC) },
        ...(fitted
          ? [{ look: 'heavy', of: (point: RatioPoint) => (isBurnt(point) ? null : point.hottestSwitchC) }]
          : []),
      ],
      limits: [
        ...(fitted
          ? [
              {
                value: cutoff.opensAt,
                text: `cutoff opens ${degrees(cutoff.opensAt)}`,
                look: 'limit hard',
                label: 'bad strong',
              },
            ]
          : []),
        { value: limitC, text: `winding limit ${degrees(limitC)}`, look: 'limit warning', label: 'bad' },
      ],
      read: (ratio) => {
        const { switchC, windingC, burnt } = atRatio(study, ratio)
        if (burnt) return { value: null, text: 'the winding burns out' }
        const value = fitted ? switchC : windingC
        return { value, text: degrees(value) }
      },
    },
  ]
}

/** Heights of texts pushed a row apart, downwards. */
function apart(wishes: readonly number[], row: number): number[] {
  const order = wishes.map((_, n) => n).sort((a, b) => wishes[a] - wishes[b])
  const placed = [...wishes]
  let least = Number.NEGATIVE_INFINITY
  for (const n of order) {
    placed[n] = Math.max(least, wishes[n])
    least = placed[n] + row
  }
  return placed
}

/** "6", "6.3": a ratio on its axis. */
export const ratioNumber = (ratio: number): string => brief(Number(ratio.toPrecision(2)))

/** The drawing. `k`: how much text is enlarged. */
export function ratioDrawing(
  study: RatioStudy,
  job: Job,
  units: Units,
  width: number,
  k: number,
  series: Series,
): RatioDrawing | null {
  const narrow = width < NARROW
  const left = Math.round((narrow ? 40 : 48) * k)
  const right = Math.round(width - (narrow ? 12 : 150 * k))
  const { points, present } = study
  const low = points[0].ratio
  const high = points[points.length - 1].ratio
  if (right - left < 80 || !(high > low)) return null
  const row = 18 * k
  const scale = ratioScale(low, high, left, right, TICK_ROOM * k)
  const plots = plotsOf(study, job, units, k, narrow)
  const top = HEAD * k
  const { bottom } = plots[2]
  const unit = unitFor('length', units)
  const pulley = (ratio: number) => brief(toUnit((present.machinePulley * ratio) / present.ratio, unit))

  const window = study.window ?? study.duty
  const [from, until] = window ? [scale.x(window.low.ratio), scale.x(window.high.ratio)] : [0, 0]
  const middle = Math.min(right - 90 * k, Math.max(left + 90 * k, (from + until) / 2))
  const ends = window ? `${inward(window.low.ratio, 'low')} to ${inward(window.high.ratio, 'high')} : 1` : ''
  const behind = window
    ? svg`<rect class="works" x=${from} y=${top} width=${Math.max(1, until - from)} height=${bottom - top} />
        <path class="edges" d="M${from},${bottom}V${top}H${until}V${bottom}" />
        <path class="bar" d="M${from},${top}H${until}" />
        <text class="label works-name" x=${middle} y=${top - 26 * k} text-anchor="middle">${study.window ? 'works' : 'works, but not with this belt'}</text>
        <text class="label works-range" x=${middle} y=${top - 9 * k} text-anchor="middle">${ends}</text>`
    : svg``

  const draw = (plot: Plot, n: number) => {
    const { axis, y, lines, limits, title } = plot
    const shape = (of: (point: RatioPoint) => number | null) =>
      path<RatioPoint>(
        (point) => scale.x(point.ratio),
        (point) => y(of(point) ?? 0),
      )
        .defined((point) => of(point) !== null)
        .digits(1)(points) ?? ''
    const inside = limits.filter(({ value }) => y(value) >= plot.top - 1 && y(value) <= plot.bottom + 1)
    const heights = apart(
      inside.map(({ value }) => y(value)),
      row,
    )
    const off = lines.every(({ of }) =>
      points.every((point) => (of(point) ?? Number.POSITIVE_INFINITY) > axis.high),
    )
    const here = plot.read(present.ratio)
    const at = here.value === null ? null : y(here.value)
    const seen = at !== null && at >= plot.top - 1 && at <= plot.bottom + 1
    return svg`
      <clipPath id="clip-ratio-${n}"><rect x=${left} y=${plot.top} width=${right - left} height=${plot.bottom - plot.top} /></clipPath>
      <text class="label title" x=${narrow ? 0 : left} y=${plot.top - 9 * k}>${title} <tspan class="unit">${plot.unit}</tspan></text>
      <g class="grid">${axis.ticks.map(({ value }) => svg`<line x1=${left} x2=${right} y1=${y(value)} y2=${y(value)} />`)}</g>
      ${axis.ticks.map(({ value, text }) => svg`<text class="tick" x=${left - 8} y=${y(value)} dy="0.34em" text-anchor="end">${text}</text>`)}
      <line class="base" x1=${left} x2=${right} y1=${plot.bottom} y2=${plot.bottom} />
      <g clip-path="url(#clip-ratio-${n})">
        ${inside.map(({ value, look }) =>
          look === 'asked'
            ? svg`<path class="line asked A" d="M${left},${y(value)}H${right}" />`
            : svg`<line class=${look} x1=${left} x2=${right} y1=${y(value)} y2=${y(value)} />`,
        )}
        ${lines.map(({ look, of }) => svg`<path class="line ${series} ${look}" d=${shape(of)} />`)}
      </g>
      ${inside.map(({ text, label }, index) =>
        narrow
          ? svg`<text class="label ${label}" x=${right - 4} y=${heights[index] - 5 * k} text-anchor="end">${text}</text>`
          : svg`<text class="label ${label}" x=${right + 10} y=${heights[index]} dy="0.34em">${text}</text>`,
      )}
      ${off ? svg`<text class="label strong" x=${(left + right) / 2} y=${plot.top + row} text-anchor="middle">↑ off the scale at every ratio</text>` : svg``}
      ${
        seen
          ? svg`<circle class="now ${series}" cx=${scale.x(present.ratio)} cy=${at} r="5.5" />
              <text class="label strong" x=${scale.x(present.ratio) + 10} y=${(at ?? 0) - 9 * k}>${here.text}</text>`
          : svg``
      }`
  }

  const ticks = svg`${scale.ticks.map(
    (
      ratio,
    ) => svg`<line class="base" x1=${scale.x(ratio)} x2=${scale.x(ratio)} y1=${bottom} y2=${bottom + 5} />
      <text class="tick" x=${scale.x(ratio)} y=${bottom + row + 4} text-anchor="middle">${brief(ratio)} : 1</text>
      <text class="tick" x=${scale.x(ratio)} y=${bottom + 2 * row + 3} text-anchor="middle">${pulley(ratio)}</text>`,
  )}
  ${
    narrow
      ? svg`<text class="tick" x=${left} y=${bottom + 3 * row + 2}>belt ratio, and machine pulley in ${unit}</text>`
      : svg`<text class="tick" x=${right + 26 * k} y=${bottom + row + 4}>belt ratio</text>
          <text class="tick" x=${right + 26 * k} y=${bottom + 2 * row + 3}>machine pulley, ${unit}</text>`
  }`
  return {
    ...{ scale, top, bottom },
    height: bottom + (narrow ? 3 : 2) * row + 10,
    drawn: svg`${behind}${plots.map(draw)}${ticks}`,
    cross: (
      ratio,
    ) => svg`<line class="scrubber" x1=${scale.x(ratio)} x2=${scale.x(ratio)} y1=${top} y2=${bottom + 6} />
      ${plots.map(({ read, y, top: over, bottom: under }) => {
        const { value } = read(ratio)
        const at = value === null ? Number.NaN : y(value)
        return at >= over && at <= under
          ? svg`<circle class="crossing" cx=${scale.x(ratio)} cy=${at} r="4" />`
          : svg``
      })}`,
  }
}
