// The ratio study drawn: top speed, speed lost and heat over one logarithmic axis, the window that works through all three.
import { type SVGTemplateResult, svg } from 'lit'
import type { Job } from '../../sim/job.ts'
import { toUnit } from '../../sim/quantity.ts'
import { brief } from '../../sim/say/number.ts'
import { inward } from '../../sim/say/ratio.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { RatioPoint, RatioStudy } from '../../sim/studies/ratio.ts'
import { linePath } from './path.ts'
import { isBurnt } from './ratioCurves.ts'
import { HEAD, type Plot, plotsOf } from './ratioPlots.ts'
import { type RatioScale, ratioScale } from './ratioScale.ts'
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

const NARROW = 760
const TICK_ROOM = 58

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

  const burnt = points.filter(isBurnt).map(({ ratio }) => scale.x(ratio))
  /** Where the heat lines are broken off, why. */
  const burntMark = (n: number) =>
    n === 2 && burnt.length > 0
      ? svg`<text class="label bad" x=${Math.max(left + 60 * k, (burnt[0] + burnt[burnt.length - 1]) / 2)} y=${plots[2].top + row}
          text-anchor="middle">the winding burns out</text>`
      : svg``

  const draw = (plot: Plot, n: number) => {
    const { axis, y, lines, limits, title } = plot
    const shape = (of: (point: RatioPoint) => number | null) =>
      linePath(
        points.map((point) => {
          const value = of(point)
          return value === null ? null : [scale.x(point.ratio), y(value)]
        }),
      )
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
      <text class="label title" x=${narrow ? 0 : left} y=${plot.top - 11 * k}>${title} <tspan class="unit">${plot.unit}</tspan></text>
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
      ${burntMark(n)}
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
      ? svg`<text class="tick" x=${left} y=${bottom + 3 * row + 2}>belt ratio, and machine pulley (${unit})</text>`
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
