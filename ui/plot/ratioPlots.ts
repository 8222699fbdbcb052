// The three plots of the ratio study: what each draws, on which axis, against which limits.
import type { Job } from '../../sim/job.ts'
import { classLimitC } from '../../sim/handbook/insulation.ts'
import { grouped, percent, show } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { RatioPoint, RatioStudy } from '../../sim/studies/ratio.ts'
import { atRatio, isBurnt } from './ratioCurves.ts'
import { type Axis, roundStep, temperatureFloor, valueAxis } from './scales.ts'

/** One of the plots. Values are SI; places px. */
export interface Plot {
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

/** Rows of the drawing, px before enlarging: over all plots, a title, a plot. */
export const HEAD = 46
const TITLE = 26
const HEIGHT = 104
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

/** The plots from top to bottom; `k`: how much text is enlarged. */
export function plotsOf(
  study: RatioStudy,
  job: Job,
  units: Units,
  k: number,
  narrow: boolean,
): readonly Plot[] {
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
        unit: fitted
          ? `${units.temperature}, heavy: ${narrow ? '' : 'cutoff '}switch, thin: winding`
          : units.temperature,
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
