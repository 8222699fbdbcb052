// Zone J: how to measure the motor, step by step, each with its fields and what the reading is worth.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Known } from '../../sim/identify/known.ts'
import { inputAt } from '../../sim/scenario.ts'
import type { Logged } from '../change/warmUp.ts'
import { type FormState, field } from '../edit/field.ts'
import { formStyle } from '../edit/formStyle.ts'
import { isKnown, knownOf, without } from '../edit/known.ts'
import '../edit/readingRows.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { bandBars, bandStyle } from './bandBars.ts'
import { BENCH_STEPS, type BenchStep, isDone } from './benchSteps.ts'
import { stepStyle } from './stepStyle.ts'
import './warmUpStep.ts'

@customElement('bench-zone')
export class BenchZone extends LitElement {
  static styles = [
    base,
    buttons,
    formStyle,
    bandStyle,
    stepStyle,
    css`
      .worth {
        display: flex;
        flex-wrap: wrap;
        gap: 2px 12px;
        align-items: baseline;
        padding: 10px 0;
        border-top: 1px solid var(--rule);
      }
      .worth strong {
        flex: none;
        min-width: 56px;
        font: var(--type-note-strong);
      }
      .worth span {
        flex: 1 1 40ch;
        max-width: 92ch;
      }
    `,
  ]

  @property({ attribute: false }) form!: FormState
  @property({ attribute: false }) logged: Logged | null = null
  /** The log's heat numbers are the job's. */
  @property({ type: Boolean }) inUse = false
  /** The motor is another one than the log was fitted to. */
  @property({ type: Boolean }) stale = false

  private timer: ReturnType<typeof setTimeout> | undefined

  disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.timer)
  }

  protected updated(): void {
    clearTimeout(this.timer)
    // What was known before each reading is worked out one by one, when nothing else is to be done.
    const { motor } = this.form
    const next = motor && this.done(motor).find(({ leave }) => !isKnown(without(motor, leave)))
    if (!motor || !next) return
    this.timer = setTimeout(() => {
      knownOf(without(motor, next.leave))
      this.requestUpdate()
    }, 30)
  }

  private done(motor: NonNullable<FormState['motor']>): readonly BenchStep[] {
    return BENCH_STEPS.filter((step) => isDone(step, motor))
  }

  private bands(step: BenchStep) {
    const { motor, units } = this.form
    const knowledge = motor && knownOf(motor)
    if (!motor || !knowledge) return nothing
    const now = knowledge.known[step.tells]
    let before: Known | null = null
    if (isDone(step, motor) && now.from === 'measured') {
      const bare = without(motor, step.leave)
      before = (isKnown(bare) && knownOf(bare)?.known[step.tells]) || null
    }
    return bandBars(step.tells, now, before, units)
  }

  private step(step: BenchStep, index: number) {
    const { form } = this
    const singles = step.inputs.flatMap((path) => inputAt(form.asked, path) ?? [])
    return html`<li class="step">
      <span class="nth" aria-hidden="true">${index + 1}</span>
      <div class="how">
        <h3>${step.title}</h3>
        <p class="note">${step.how}</p>
      </div>
      <div class="entry">
        ${
          step.reading
            ? html`<reading-rows bare data-path=${step.reading} .path=${step.reading} .form=${form}></reading-rows>`
            : nothing
        }
        ${singles.length > 0 ? html`<div class="fields">${singles.map((input) => field(input, form))}</div>` : nothing}
      </div>
      <div class="gain">${this.bands(step)}</div>
    </li>`
  }

  private worth() {
    const notes = this.form.notes.filter(({ path }) => /^(plate|bench)\b/.test(path))
    if (notes.length === 0) return nothing
    return html`<ul class="looks" aria-label="Worth a look">
      ${notes.map(
        ({ path, wrong, wouldDo }) => html`<li class="worth">
          <strong>${path.startsWith('plate') ? 'Plate' : 'Bench'}</strong>
          <span>${wrong} ${wouldDo}</span>
          <button class="link" @click=${() => wish(this, { kind: 'go to field', path })}>Go to the field</button>
        </li>`,
      )}
    </ul>`
  }

  render() {
    const { form, logged } = this
    return html`${this.worth()}
      <ol class="steps">
        ${BENCH_STEPS.map((step, index) => this.step(step, index))}
        <li class="step wide">
          <span class="nth" aria-hidden="true">${BENCH_STEPS.length + 1}</span>
          <warm-up-step .logged=${logged} .form=${form} ?inUse=${this.inUse} ?stale=${this.stale}></warm-up-step>
        </li>
      </ol>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-zone': BenchZone
  }
}
