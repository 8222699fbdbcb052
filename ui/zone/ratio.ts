// Zone F: which belt ratio. Worked out when asked; any ratio becomes a variant, and pulleys to buy are offered.
import { html, nothing, svg } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { presentSentence, whyWords, windowSentence } from '../../sim/say/ratio.ts'
import { percent, ratioText, show, told } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { RatioStudy } from '../../sim/studies/ratio.ts'
import type { Try } from '../change/tries.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import { drag } from '../plot/drag.ts'
import { handle } from '../plot/handle.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { markStyles } from '../plot/markStyles.ts'
import { Measured } from '../plot/measured.ts'
import { heading, tableOf } from '../plot/parts.ts'
import { type RatioDrawing, ratioDrawing } from '../plot/ratioChart.ts'
import { atRatio, ratioKey } from '../plot/ratioCurves.ts'
import type { Series } from '../plot/shown.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { pairs } from './ratioPairs.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

/** Half the width of the cross-hair's handle, px before enlarging. */
const HALF = 36

@customElement('ratio-zone')
export class RatioZone extends InTurn {
  static styles = [base, buttons, secondStyle, markStyles, frameStyles, studyStyle]

  @property({ attribute: false }) work!: Work<RatioStudy>
  /** The study is of another job than the one asked now. */
  @property({ type: Boolean }) stale = false
  /** The job the study is of, or would be of; null while it does not read. */
  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) units!: Units
  @property() series: Series = 'A'
  /** What trying a machine pulley would be: its text, and its diameter in m. */
  @property({ attribute: false }) makePulley: ((text: string, diameter: number) => Try) | null = null
  /** The ratio looked at; null: the present one. */
  @state() private at: number | null = null
  @state() private open = false

  private readonly measured = new Measured(this)
  private drawing: RatioDrawing | null = null

  protected willUpdate(changed: Map<PropertyKey, unknown>): void {
    const study = this.work.result
    const before = changed.get('work') as Work<RatioStudy> | undefined
    if (before && study !== before.result) this.at = null
    if (changed.size === 1 && (changed.has('at') || changed.has('open'))) return
    const { job, units, series } = this
    const { width, k } = this.measured
    this.drawing = study && job && width > 0 ? ratioDrawing(study, job, units, width, k, series) : null
  }

  // Not sooner: an element that was there before its module has no properties until then.
  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'ratio' })
  }

  private tryOf(study: RatioStudy, ratio: number): Try | null {
    const { present } = study
    const diameter = (present.machinePulley * ratio) / present.ratio
    const inches = Math.round((diameter / 0.0254) * 20) / 20
    return this.units.system === 'us'
      ? (this.makePulley?.(`${inches} in`, inches * 0.0254) ?? null)
      : (this.makePulley?.(`${Math.round(diameter * 1000)} mm`, Math.round(diameter * 1000) / 1000) ?? null)
  }

  private words(study: RatioStudy, ratio: number): string {
    const { units, job } = this
    const { topSpeed, sag, switchC, windingC, burnt } = atRatio(study, ratio)
    const heat = (value: number) => told(value, 'temperature', units)
    return [
      `${ratioText(ratio)}, machine pulley ${told((study.present.machinePulley * ratio) / study.present.ratio, 'length', units)}`,
      `top speed ${told(topSpeed, 'angular speed', units)}`,
      sag === null ? 'it stands still' : `${percent(sag)} lost in the cut`,
      ...(burnt
        ? ['the winding burns out']
        : [
            ...(job?.parts.cutoff.fitted === 'none' ? [] : [`switch ${heat(switchC)}`]),
            `winding ${heat(windingC)}`,
          ]),
    ].join(', ')
  }

  private key(event: KeyboardEvent, study: RatioStudy, ratio: number, { scale }: RatioDrawing): void {
    const use = this.tryOf(study, ratio)
    if (event.key === 'Enter' && use) {
      event.preventDefault()
      wish(this, use.wish)
    }
    const window = study.window ?? study.duty
    const edges = window ? [window.low.ratio, window.high.ratio] : []
    const to = ratioKey(event.key, event.shiftKey, ratio, [scale.low, scale.high], edges)
    if (to === undefined) return
    event.preventDefault()
    this.at = to
  }

  private follow(event: PointerEvent, { scale }: RatioDrawing): void {
    this.renderRoot.querySelector<HTMLElement>('.handle')?.focus({ preventScroll: true })
    drag(event, (x) => {
      this.at = scale.ratioAt(x)
    })
  }

  private chart(study: RatioStudy, drawing: RatioDrawing) {
    const { width, k } = this.measured
    const ratio = Math.min(drawing.scale.high, Math.max(drawing.scale.low, this.at ?? study.present.ratio))
    const use = this.at === null ? null : this.tryOf(study, ratio)
    const said = this.words(study, ratio)
    return html`<div class="chart" @pointerdown=${(event: PointerEvent) => this.follow(event, drawing)}
        @mousedown=${(event: Event) => event.preventDefault()}>
        <svg role="img" aria-label="${windowSentence(study, this.units)} ${presentSentence(study, this.units)}" width=${width}
          height=${drawing.height + 30 * k}>${drawing.drawn}<g class="cross">${this.at === null ? svg`` : drawing.cross(ratio)}</g></svg>
        ${handle({
          ...{ label: 'Ratio looked at', text: said, shown: ratioText(ratio) },
          ...{ low: drawing.scale.low, high: drawing.scale.high, now: ratio },
          ...{ x: drawing.scale.x(ratio), top: drawing.height + 2, half: HALF * k, width },
          onKey: (event) => this.key(event, study, ratio, drawing),
        })}
      </div>
      <div class="row"><span>${said}</span>
        ${use ? html`<button class="act" @click=${() => wish(this, use.wish)}>${use.label}</button>` : nothing}</div>`
  }

  private table(study: RatioStudy) {
    const { units } = this
    const { present } = study
    const number = (value: number, dimension: 'angular speed' | 'temperature' | 'length') =>
      show(value, dimension, units).number
    return {
      head: [
        'Ratio',
        `Machine pulley, ${unitFor('length', units)}`,
        'Top speed, rpm',
        'Speed lost',
        `Switch, ${units.temperature}`,
        `Winding, ${units.temperature}`,
        'What is against it',
      ],
      rows: study.points.map((point) => [
        ratioText(point.ratio) + (point === present ? ' (now)' : ''),
        number(point.machinePulley, 'length'),
        number(point.topSpeed, 'angular speed'),
        point.sag === null ? '–' : percent(point.sag),
        number(point.hottestSwitchC, 'temperature'),
        number(point.hottestWindingC, 'temperature'),
        point.faults.map((fault) => whyWords(fault, study, units)).join('; ') || 'nothing',
      ]),
    }
  }

  render() {
    const study = this.work.result
    const { drawing, units, open } = this
    return html`<div class="ruler"></div>${studyLine(this, 'ratio', this.work, this.stale, 'Ratio study', 'Trying ratio after ratio on the whole job')}
      ${
        study && drawing
          ? html`${heading(
              {
                title: 'Every ratio, had no cutoff stopped it',
                unit: '',
                hint: 'drag across, or arrow keys: Enter makes that ratio a variant',
                left: 0,
              },
              open,
              () => {
                this.open = !open
              },
            )}
              ${this.chart(study, drawing)} ${open ? tableOf('Which belt ratio', this.table(study), 0) : nothing}
              <p class="said">${windowSentence(study, units)} ${presentSentence(study, units)}</p>
              ${pairs(this, study, units)}`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ratio-zone': RatioZone
  }
}
