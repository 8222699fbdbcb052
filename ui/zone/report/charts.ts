// The charts of the report: the whole job over time and the drive line at its hottest, drawn for paper.
import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit'
import { identify } from '../../../sim/identify/motor.ts'
import { USUAL } from '../../../sim/identify/assume.ts'
import { phaseAt } from '../../../sim/judge.ts'
import { told } from '../../../sim/say/number.ts'
import { type Channel, valueAt } from '../../../sim/trace.ts'
import { annotate } from '../../drawing/annotations.ts'
import { type Moment, readings, still, tints } from '../../drawing/drawing.ts'
import { driveOf } from '../../drawing/drive.ts'
import { insetLabels } from '../../drawing/insetLabels.ts'
import { sheetOf } from '../../drawing/sheet.ts'
import { driveSentence } from '../../drawing/words.ts'
import { currentChart } from '../../plot/currentChart.ts'
import { dutyChart } from '../../plot/dutyChart.ts'
import { ribbons } from '../../plot/ribbons.ts'
import { speedChart } from '../../plot/speedChart.ts'
import { temperatureChart } from '../../plot/temperatureChart.ts'
import { exactClock, exactWords } from '../../plot/time.ts'
import { jobEnd, viewOf } from '../../plot/view.ts'
import type { Report } from './facts.ts'

/** A picture as it stands on paper and as it is saved. */
export interface Picture {
  readonly id: string
  readonly title: string
  /** After the title, in plain weight. */
  readonly about: string
  readonly words: string
  readonly width: number
  readonly height: number
  readonly drawn: SVGTemplateResult
  /** Of the svg: colours of a moment. */
  readonly style: string
}

/** Widths the charts and the drawing are drawn at, px: paper shows them a little smaller. */
const CHARTS = 1000
const DRAWING = 600
/** Mass of a motor nothing is known of, kg. */
const USUAL_MASS = 4

/** The charts over the whole job, or over a part of it (s). */
export function charts(
  { lines, units }: Report,
  part: readonly [number, number] | null = null,
): readonly Picture[] {
  const [from, to] = part ?? [0, jobEnd(lines)]
  const view = viewOf({ shown: lines, units, from, to, width: CHARTS, k: 1 })
  if (!view) return []
  const bars = ribbons(view)
  const whole: Picture = {
    ...{
      id: 'ribbons',
      title: 'Whole job',
      words: bars.words,
      width: CHARTS,
      height: bars.height,
      style: '',
    },
    about: `${exactWords(view.end)}; colour: cutoff switch, hatched: stopped`,
    drawn: bars.still,
  }
  const timed = [speedChart, currentChart, temperatureChart, dutyChart].map((chart): Picture => {
    const { id, title, unit, hint, words, height, still: under, over } = chart(view)
    return {
      ...{ id, title, words, height, width: CHARTS, style: '' },
      about: [unit, hint].filter((each) => each !== '').join(' · '),
      drawn: svg`${under}${over}`,
    }
  })
  return [whole, ...timed]
}

/** The drive line at the moment its winding is hottest. */
export function drivePicture({ scenario, reading, shown, units }: Report): Picture {
  const { result } = shown
  const { t } = result.figures.hottestWindingC
  const drive = driveOf(scenario, identify(reading.motor, USUAL)?.mass ?? USUAL_MASS)
  const sheet = sheetOf(drive, { width: DRAWING, k: 1, narrow: false })
  const drawing = {
    drive,
    sheet,
    annotations: annotate(drive, sheet, units),
    labels: insetLabels(drive, sheet),
  }
  const at = (channel: Channel) => valueAt(result.trace, channel, t)
  const now: Moment = {
    windingC: at('windingC'),
    frameC: at('frameC'),
    switchC: at('switchC'),
    motor: at('speed'),
    spindle: at('spindle'),
    gives:
      at('asked') > 0
        ? `${told(at('volts'), 'voltage', units)}, ${told(Math.max(0, at('current')), 'current', units)}`
        : 'off',
  }
  const phase = result.job.duty.phases[phaseAt(result.job, t)]?.name.trim()
  return {
    ...{ id: 'drive', title: 'Drive line', width: sheet.width, height: sheet.height },
    about: `at ${exactClock(t)}${phase ? `, ${phase}` : ''}, when the winding is hottest`,
    words: driveSentence(drive, units),
    drawn: svg`${still(drawing, units)}${readings(drawing, now, units)}`,
    style: tints(now),
  }
}

/** A picture on the sheet, as wide as there is room. */
export const figure = ({ id, title, about, words, width, height, drawn, style }: Picture): TemplateResult =>
  html`<figure class=${id === 'drive' ? 'drive' : 'timed'}>
    <figcaption><h3>${title}</h3> <span>${about}</span></figcaption>
    <svg role="img" aria-label=${words} data-picture=${id} width="100%" viewBox="0 0 ${width} ${height}" style=${style}>${drawn}</svg>
  </figure>`
