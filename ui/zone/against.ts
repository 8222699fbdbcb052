// Zone G: against the old motor. A few words of its plate, both torques at the spindle, and a sentence.
import { css, html, nothing, type PropertyValues, svg } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import type { Problem } from '../../sim/problem.ts'
import {
  compareSentence,
  dutyWords,
  nearestMet,
  platesWords,
  stepWords,
  verdictWords,
} from '../../sim/say/compare.ts'
import { told } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { Input } from '../../sim/scenario.ts'
import { type OldMotor, oldInput, oldProblem, oldPulley, readOld, takesStep } from '../change/oldMotor.ts'
import '../edit/choiceField.ts'
import { formStyle } from '../edit/formStyle.ts'
import '../edit/quantityField.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import { drag } from '../plot/drag.ts'
import { handle } from '../plot/handle.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { markStyles } from '../plot/markStyles.ts'
import { Measured } from '../plot/measured.ts'
import { heading, tableOf } from '../plot/parts.ts'
import { type TorqueDrawing, torqueDrawing } from '../plot/torqueChart.ts'
import { askedPoints, torqueKey } from '../plot/torqueLines.ts'
import { toUnit } from '../../sim/quantity.ts'
import type { AgainstOld } from '../../sim/rival/picture.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

/** Half the width of the cross-hair's handle, px before enlarging. */
const HALF = 48

const PLATE = ['kind', 'power', 'speed'] as const
const PULLEYS = ['motorPulley', 'machinePulley'] as const

@customElement('against-zone')
export class AgainstZone extends InTurn {
  static styles = [
    base,
    buttons,
    markStyles,
    frameStyles,
    formStyle,
    studyStyle,
    css`
      .steps {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 12px;
        margin: -8px 0 16px;
      }
      ul.said li {
        margin-top: 4px;
      }
      @media print {
        .steps {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) work!: Work<AgainstOld>
  @property({ attribute: false }) old!: OldMotor
  /** The job the picture is drawn for; null while it does not read. */
  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) units!: Units
  /** Spindle speed looked at, rad/s; null: the slowest the job asks. */
  @state() private at: number | null = null
  @state() private open = false

  private readonly measured = new Measured(this)
  private drawing: TorqueDrawing | null = null

  // Not sooner: an element that was there before its module has no properties until then.
  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'against' })
  }

  protected willUpdate(changed: PropertyValues): void {
    if (changed.size === 1 && (changed.has('open') || changed.has('at'))) return
    const { work, job, units } = this
    const { width, k } = this.measured
    this.drawing = work.result && job && width > 0 ? torqueDrawing(work.result, job, units, width, k) : null
  }

  private field(input: Input | null, problems: readonly Problem[]) {
    if (!input) return nothing
    const problem = oldProblem(problems, input)
    return input.field.kind === 'choice'
      ? html`<choice-field .input=${input} .problem=${problem}></choice-field>`
      : html`<quantity-field .input=${input} .units=${this.units} .problem=${problem}></quantity-field>`
  }

  private form(old: OldMotor, problems: readonly Problem[]) {
    const several = old.steps.length > 1
    const [first, ...more] = old.steps.map((_, step) =>
      PULLEYS.map((name) => this.field(oldPulley(old, step, name), problems)),
    )
    return html`<div role="group" aria-label="The old motor">
        <div class="fields">${PLATE.map((name) => this.field(oldInput(old, name), problems))} ${first}</div>
        ${more.map((fields) => html`<div class="fields">${fields}</div>`)}
      </div>
      <div class="steps">
        ${takesStep(old) ? html`<button class="plain" @click=${() => wish(this, { kind: 'add old step' })}>Add a step</button>` : nothing}
        ${
          several
            ? html`<button class="plain" @click=${() => wish(this, { kind: 'remove old step', index: old.steps.length - 1 })}>
                Remove step ${old.steps.length}</button>`
            : nothing
        }
      </div>`
  }

  private chart(drawing: TorqueDrawing, job: Job, fastest: number) {
    const { units, at } = this
    const { width, k } = this.measured
    const asked = askedPoints(job).map(({ speed }) => speed)
    const speed = Math.min(fastest, at ?? (asked.length > 0 ? Math.min(...asked) : 0))
    const rpm = told(speed, 'angular speed', units)
    const read = drawing.read(speed)
    const key = (event: KeyboardEvent) => {
      const to = torqueKey(event.key, event.shiftKey, speed, fastest, asked)
      if (to === undefined) return
      event.preventDefault()
      this.at = to
    }
    const follow = (event: PointerEvent) => {
      this.renderRoot.querySelector<HTMLElement>('.handle')?.focus({ preventScroll: true })
      drag(event, (x) => {
        this.at = drawing.speedAt(x)
      })
    }
    return html`<div class="chart" @pointerdown=${follow} @mousedown=${(event: Event) => event.preventDefault()}>
        <svg role="img" aria-label=${drawing.words} width=${width} height=${drawing.height + 30 * k}>${drawing.drawn}<g class="cross">${at === null ? svg`` : drawing.cross(speed)}</g></svg>
        ${handle({
          ...{ label: 'Spindle speed looked at', text: `${rpm}. ${read}`, shown: rpm },
          ...{ low: 0, high: toUnit(fastest, 'rpm'), now: toUnit(speed, 'rpm') },
          ...{ x: drawing.x(speed), top: drawing.height + 2, half: HALF * k, width },
          onKey: key,
        })}
      </div>
      <p class="read">At ${rpm}: ${read}.</p>`
  }

  private said(job: Job) {
    const { work, old, units } = this
    const comparison = work.result?.comparison
    if (!comparison)
      return html`<p class="said">${
        old.power === '' || old.speed === ''
          ? 'Copy power and speed from the old motor’s plate, and its pulleys: its curve is drawn beside these, and the two are compared at the spindle. Horsepower alone does not compare them.'
          : ''
      }</p>`
    const plates = platesWords(comparison, job, units)
    return html`<p class="said"><strong>${compareSentence(comparison, units)}</strong> ${dutyWords(comparison, units)}</p>
      <p class="said">${verdictWords(nearestMet(comparison), job, comparison.top, units)} ${plates}</p>
      ${
        comparison.met.length > 1
          ? html`<ul class="said">${comparison.met.map((_, n) => html`<li>${stepWords(comparison, n, units)}</li>`)}</ul>`
          : nothing
      }`
  }

  render() {
    const { work, old, drawing, units, job, open } = this
    const reading = readOld(old)
    const problems = reading?.ok === false ? reading.problems : []
    return html`<div class="ruler"></div>
      ${this.form(old, problems)}
      ${work.why === null ? nothing : studyLine(this, 'against', work, false, 'Torque curves', 'Working out its torque')}
      ${
        drawing && job
          ? html`${heading(
              {
                title: 'Torque at the spindle',
                unit: unitFor('torque', units),
                hint: 'of the cut, the machine’s own drag taken off; drag across, or arrow keys',
                left: 0,
              },
              open,
              () => {
                this.open = !open
              },
            )}
              ${work.result ? this.chart(drawing, job, work.result.fastest) : nothing} ${open ? tableOf('Against the old motor', drawing.table(), 0) : nothing} ${this.said(job)}`
          : html`<p class="note" role="status">Working out its torque …</p>`
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'against-zone': AgainstZone
  }
}
