// Zone B: the whole job as ribbons, speed, current and temperature over one time axis, the duty, and the scrubber.
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { guard } from 'lit/directives/guard.js'
import { cycleSeconds, type Duty } from '../../sim/duty.ts'
import { told } from '../../sim/say/number.ts'
import type { Log } from '../../sim/identify/log.ts'
import type { Units } from '../../sim/say/units.ts'
import { valueAt } from '../../sim/trace.ts'
import { InTurn, turn } from '../inTurn.ts'
import type { Chart } from '../plot/chart.ts'
import { currentChart } from '../plot/currentChart.ts'
import { drag } from '../plot/drag.ts'
import { dutyChart } from '../plot/dutyChart.ts'
import { edgesOf } from '../plot/dutyEdges.ts'
import { tell } from '../plot/events.ts'
import { scrubKey, windowHolding } from '../plot/keys.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { handle } from '../plot/handle.ts'
import { readoutMark } from '../plot/layers/readout.ts'
import { scrubberMark } from '../plot/layers/scrubber.ts'
import { markStyles } from '../plot/markStyles.ts'
import { Measured } from '../plot/measured.ts'
import { heading, readingsLine, tableOf } from '../plot/parts.ts'
import { type Ribbons, ribbons } from '../plot/ribbons.ts'
import type { Shown } from '../plot/shown.ts'
import { speedChart } from '../plot/speedChart.ts'
import { stepEdges } from '../plot/stepEdges.ts'
import { temperatureChart } from '../plot/temperatureChart.ts'
import { exactClock, exactWords } from '../plot/time.ts'
import { type View, viewOf } from '../plot/view.ts'
import { wholeJob } from '../plot/wholeJob.ts'

export type { Moment, Part } from '../plot/events.ts'
export type { Shown } from '../plot/shown.ts'

declare global {
  interface HTMLElementTagNameMap {
    'over-time': OverTime
  }
}

/** Pressing a chart leaves the focus where the press put it: on the scrubber's handle. */
const keepFocus = (event: Event): void => event.preventDefault()
/** Half the width of the scrubber's handle, px before enlarging. */
const HALF_HANDLE = 36
/** Changes that need no chart drawn anew; and those that leave the ribbons as they are. */
const LIGHT: readonly PropertyKey[] = ['at', 'tables', 'charts']
const MOVES: readonly PropertyKey[] = [...LIGHT, 'windowFrom', 'windowTo']
/** The charts, from the top: each takes some ten milliseconds. */
const CHARTS = [speedChart, currentChart, temperatureChart, dutyChart]

/**
 * The charts of a job over time.
 * Tells `moment` (the scrubber moved) and `window` (another part of the job is wanted); changes neither itself.
 */
@customElement('over-time')
export class OverTime extends InTurn {
  static override styles = [markStyles, frameStyles]

  /** Variants, in their order; three are drawn, two on a phone. */
  @property({ attribute: false }) shown: readonly Shown[] = []
  /** A logged run to lay over the prediction. */
  @property({ attribute: false }) log: Log | null = null
  /** The duty asked, whose first cycle can be dragged; it may be ahead of the answer on show. */
  @property({ attribute: false }) duty: Duty | null = null
  @property({ attribute: false }) units: Units = { system: 'metric', temperature: '°C' }
  /** The moment looked at, s. */
  @property({ type: Number }) at = 0
  /** The part of the job shown under the ribbons, s. */
  @property({ type: Number }) windowFrom = 0
  @property({ type: Number }) windowTo = 3600

  @state() private tables: ReadonlySet<string> = new Set()
  @state() private charts: readonly Chart[] = []

  private readonly measured = new Measured(this)
  private view: View | undefined
  /** Charts that are of an older view, by their place: they stand until their turn comes. */
  private readonly old = new Set<number>()
  private bars: Ribbons | undefined
  protected override willUpdate(changed: PropertyValues): void {
    // Nothing changed but the room there is: all is drawn anew.
    const keys = [...changed.keys()]
    const isRoom = keys.length === 0
    if (!isRoom && keys.every((key) => LIGHT.includes(key))) return
    const { shown, units, log, windowFrom: from, windowTo: to } = this
    const { width, k } = this.measured
    this.view = viewOf({ shown, units, from, to, width, k, log })
    if (!this.view || this.charts.length === 0 || isRoom) this.drawAll()
    else this.drawInTurn()
    // The ribbons show the whole job: another window leaves them as they are.
    if (!this.bars || isRoom || keys.some((key) => !MOVES.includes(key)))
      this.bars = this.view && ribbons(this.view)
  }

  private drawAll(): void {
    const { view } = this
    this.old.clear()
    this.charts = view ? CHARTS.map((chart) => chart(view)) : []
  }

  /** Draws one chart after the other, each in a task of its own: between them the page hears its reader. */
  private drawInTurn(): void {
    const isGoing = this.old.size > 0
    for (const index of CHARTS.keys()) {
      // Those that waited longest stay in front.
      if (!this.old.has(index)) this.old.add(index)
    }
    if (!isGoing) void turn().then(this.drawNext)
  }

  private drawNext = (): void => {
    const [index] = this.old
    const { view } = this
    if (index === undefined || !view) return
    this.old.delete(index)
    this.charts = this.charts.map((chart, n) => (n === index ? CHARTS[n](view) : chart))
    if (this.old.size > 0) void turn().then(this.drawNext)
  }

  private turn(id: string): void {
    const tables = new Set(this.tables)
    if (!tables.delete(id)) tables.add(id)
    this.tables = tables
  }

  private moveTo(t: number): void {
    tell(this, 'moment', { t })
    const { windowFrom: from, windowTo: to } = this
    const holding = windowHolding(t, { from, to }, this.view?.end ?? to)
    if (holding.from !== from || holding.to !== to) tell(this, 'window', holding)
  }

  private scrub(event: PointerEvent, { left, right, from, to }: View): void {
    this.renderRoot.querySelector<HTMLElement>('.handle')?.focus({ preventScroll: true })
    drag(event, (x) => {
      const share = Math.min(1, Math.max(0, (x - left) / (right - left)))
      tell(this, 'moment', { t: Math.round(from + share * (to - from)) })
    })
  }

  private scrubByKey(event: KeyboardEvent, { active, end }: View): void {
    const events = active.trace.marks
      .filter(({ kind }) => kind === 'opens' || kind === 'recloses')
      .map(({ t }) => t)
    const cycle = cycleSeconds(active.job.duty)
    const t = scrubKey(event.key, event.shiftKey, { at: this.at, end, cycle, events })
    if (t === undefined) return
    event.preventDefault()
    this.moveTo(t)
  }

  protected override render(): TemplateResult {
    const { view, bars } = this
    return html`<div class="ruler"></div>
      ${view && bars ? html`${wholeJob(this, view, bars, this.tables.has('ribbons'), () => this.turn('ribbons'))}${this.charts.map((chart) => this.renderChart(view, chart))}` : nothing}`
  }

  private renderChart(view: View, chart: Chart): TemplateResult {
    const { narrow, right, row, k } = view
    const { title, unit, hint, scales, height, reads } = chart
    const { at } = this
    const left = narrow ? 0 : view.left
    const open = this.tables.has(chart.id)
    const timed = chart.id === 'temperature'
    const readings = chart.readings(at)
    const place = { x: right + 10, right: right + 86 * k, row, bottom: scales.box.bottom + 4 }
    return html`
      ${heading({ title, unit, hint, left }, open, () => this.turn(chart.id))}
      ${narrow ? readingsLine(reads, at, readings, left) : nothing}
      <div class="chart" @pointerdown=${(event: PointerEvent) => this.scrub(event, view)} @mousedown=${keepFocus}>
        <svg role="img" aria-label=${chart.words} width=${view.width} height=${height}>
          ${guard([chart], () => chart.still)}
          ${scrubberMark(at, scales, timed ? 8 : 0)}
          ${guard([chart], () => chart.over)}
          ${narrow || readings.length === 0 ? nothing : readoutMark(`${reads}at ${exactClock(at)}`, readings, place)}
        </svg>
        ${timed ? this.renderHandle(view, chart) : nothing}
        ${chart.id === 'duty' ? stepEdges(this, edgesOf(this.duty ?? view.active.job.duty), view, chart) : nothing}
      </div>
      ${open ? tableOf(title, chart.table(), left) : nothing}`
  }

  private renderHandle(view: View, { scales: { x, box } }: Chart): TemplateResult {
    const { active, units, end, k, width } = view
    const { at } = this
    const speed = told(Math.max(0, valueAt(active.trace, 'spindle', at)), 'angular speed', units)
    const heat = told(valueAt(active.trace, 'switchC', at), 'temperature', units)
    return handle({
      ...{
        label: 'Moment of the job',
        text: `${exactWords(at)}, spindle ${speed}, switch ${heat}`,
        shown: exactClock(at),
      },
      ...{ low: 0, high: Math.round(end), now: Math.round(at) },
      ...{
        x: Math.min(box.right, Math.max(box.left, x(at))),
        top: box.bottom + 6,
        half: HALF_HANDLE * k,
        width,
      },
      onKey: (event) => this.scrubByKey(event, view),
    })
  }
}
