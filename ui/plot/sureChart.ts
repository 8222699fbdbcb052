// How sure: forty dots, each an equally likely outcome, over the stretches of work; and the doubt left after each measurement.
import { type SVGTemplateResult, svg } from 'lit'
import { cycleSeconds, phaseSeconds } from '../../sim/duty.ts'
import type { Job } from '../../sim/job.ts'
import { hardestPhase } from '../../sim/judge.ts'
import { percent } from '../../sim/say/number.ts'
import { heatBand, timeBand } from '../../sim/say/sure/bands.ts'
import { measureWords } from '../../sim/say/sure/measuring.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { Sure, SureBand } from '../../sim/studies/sure.ts'
import type { Table } from './chart.ts'
import { even } from './scale.ts'
import { timeTicks } from './time.ts'

export interface SureDrawing {
  readonly height: number
  readonly drawn: SVGTemplateResult
  table(): Table
}

/** Under this width (px) bars carry their names above them. */
const NARROW = 640
/** Radius of a dot, and distance of two, px before enlarging. */
const DOT = 6
const PITCH = 13
/** Room for the dots that never come, px before enlarging: so many beside each other. */
const BESIDE = 5
/** More measurements are left out: they tell least. */
const MOST_BARS = 6
/** More stretches of work than this are no longer marked. */
const MOST_RUNS = 60
const ROW = 26

interface Bar {
  readonly name: string
  readonly words: string
  readonly band: Pick<SureBand, 'low' | 'high'>
  readonly look: 'now' | 'best' | 'other'
}

/** The doubt as known now, then what each measurement would leave of it. */
export function barsOf(sure: Sure, job: Job, units: Units): readonly Bar[] {
  const words = (band: Bar['band']) => (sure.of === 'time' ? timeBand(band) : heatBand(band, units))
  const now = sure.of === 'time' ? sure.t : sure.windingC
  const open = sure.settling.filter(({ known }) => !known).slice(0, MOST_BARS)
  return [
    { name: 'as known now', words: words(now), band: now, look: 'now' },
    ...open.map(
      (each, index): Bar => ({
        name: measureWords(each, job, units).title,
        words: words(each),
        band: each,
        look: index === 0 ? 'best' : 'other',
      }),
    ),
  ]
}

/** Stretches of the hardest step within the first `end` s of the job, s. */
function runsOf({ duty }: Job, end: number): readonly (readonly [number, number])[] {
  const cycle = cycleSeconds(duty)
  const phase = hardestPhase(duty.phases)
  if (!(cycle > 0) || duty.phases.length < 2 || end / cycle > MOST_RUNS) return []
  const from = duty.phases.slice(0, phase).reduce((sum, each) => sum + phaseSeconds(each), 0)
  const length = phaseSeconds(duty.phases[phase])
  const runs: [number, number][] = []
  for (let t = from; t < end; t += cycle) runs.push([t, Math.min(end, t + length)])
  return runs
}

/** Draws dots and bars; in a job that nearly always lasts, the bars are of the hottest winding. */
export function sureDrawing(sure: Sure, job: Job, units: Units, width: number, k: number): SureDrawing {
  const narrow = width < NARROW
  const left = narrow ? 8 : 200 * k
  const never = sure.dots.filter(({ t }) => t === null).length
  const right = width - (never > 0 ? (BESIDE * PITCH + 24) * k : narrow ? 12 : 24 * k)
  const times = sure.dots.flatMap(({ t }) => (t === null ? [] : [t]))
  const seconds = job.duty.seconds
  const reach = Math.min(seconds, 1.12 * Math.max(600, ...times, sure.of === 'time' ? (sure.t.high ?? 0) : 0))
  const end = times.length > 0 ? reach : seconds
  const x = even([0, end], [left, right])

  // Columns of dots, a dot wide: what lies closer together is stacked.
  const columns = new Map<number, number>()
  const placed = times.map((t) => {
    const column = Math.round((x(t) - left) / (PITCH * k))
    const height = columns.get(column) ?? 0
    columns.set(column, height + 1)
    return { column, height }
  })
  const tallest = Math.max(3, ...columns.values(), Math.ceil(never / BESIDE))
  const top = 14 * k
  const base = top + tallest * PITCH * k + 6 * k
  const dot = (cx: number, cy: number, look: string) =>
    svg`<circle class="dot ${look}" cx=${cx.toFixed(1)} cy=${cy.toFixed(1)} r=${DOT * k - 0.75} />`
  const row = (height: number) => base - 6 * k - (height + 0.5) * PITCH * k
  const dots = placed.map(({ column, height }) => dot(left + column * PITCH * k, row(height), 'fails'))
  const aside = Array.from({ length: never }, (_, n) =>
    dot(right + (20 + (n % BESIDE) * PITCH) * k, row(Math.floor(n / BESIDE)), 'lasts'),
  )
  const runs = runsOf(job, end).map(
    ([from, until]) =>
      svg`<rect class="run" x=${x(from)} y=${base - 5 * k} width=${Math.max(1, x(until) - x(from))} height=${5 * k} />`,
  )
  const ticks = timeTicks(0, end, Math.max(2, (right - left) / (90 * k))).map(
    ({ t, text }) =>
      svg`<text class="tick" x=${x(t)} y=${base + 19 * k} text-anchor=${t === 0 ? 'start' : 'middle'}>${text}</text>`,
  )
  const name = job.duty.phases[hardestPhase(job.duty.phases)].name.trim()
  const marks = svg`
    <path class="base" d="M${left},${base}H${right}" />${runs}${ticks}${dots}${aside}
    ${never > 0 ? svg`<text class="tick" x=${right + 20 * k - DOT * k} y=${base + 19 * k}>never</text>` : ''}
    ${runs.length > 0 && name !== '' ? svg`<text class="tick" x=${right} y=${base + 36 * k} text-anchor="end">dark bars: ${name}</text>` : ''}`

  const bars = barsOf(sure, job, units)
  const start = base + (runs.length > 0 ? 64 : 48) * k
  const step = (narrow ? ROW + 18 : ROW) * k
  const heats = bars.flatMap(({ band }) => [band.low ?? 20, band.high ?? 20])
  const heat = even([20, Math.max(60, ...heats)], [left, right - 90 * k])
  const along = (value: number | null): number =>
    sure.of === 'winding' ? heat(value ?? 20) : value === null ? right : Math.min(right, x(value))
  const drawn = bars.map(({ name: title, words, band, look }, index) => {
    const y = start + index * step + (narrow ? 18 * k : 0)
    const from = band.low === null ? right - 4 : along(band.low)
    const to = Math.max(from + 3, along(band.high))
    const roomy = to + 8 + words.length * 7 * k < width
    return svg`
      ${
        narrow
          ? svg`<text class=${look === 'other' ? 'tick' : 'named'} x=${left} y=${y - 6 * k}>${title}</text>`
          : svg`<text class=${look === 'other' ? 'tick' : 'named'} x=${left - 12 * k} y=${y + 9 * k} text-anchor="end">${title}</text>`
      }
      <rect class="doubt ${look === 'now' ? 'whole' : look}" x=${from} y=${y} width=${to - from} height=${9 * k} rx="2" />
      <text class=${look === 'other' ? '' : 'named'} x=${narrow ? width : roomy ? to + 8 : from - 8} y=${narrow ? y - 6 * k : y + 9 * k}
        text-anchor=${roomy && !narrow ? 'start' : 'end'}>${words}</text>`
  })
  const title =
    sure.of === 'time'
      ? '8 in 10, if you measured'
      : `Hottest winding, 8 in 10, if you measured, ${unitFor('temperature', units)}`
  return {
    height: start + bars.length * step + 6 * k,
    drawn: svg`${marks}<text class="named" x="0" y=${start - 16 * k}>${title}</text>${drawn}`,
    table: () => ({
      head: [
        'If measured',
        sure.of === 'time' ? 'It fails, 8 in 10' : 'Hottest winding, 8 in 10',
        'Takes away of the doubt',
      ],
      rows: [
        [bars[0].name, bars[0].words, '–'],
        ...sure.settling
          .filter(({ known }) => !known)
          .map((each) => [
            measureWords(each, job, units).title,
            sure.of === 'time' ? timeBand(each) : heatBand(each, units),
            percent(each.gain),
          ]),
      ],
    }),
  }
}
