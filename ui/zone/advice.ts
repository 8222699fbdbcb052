// Zone D: what to do about it. Findings in order, each with its number and a change to try; and what a symptom means.
import { html, LitElement, nothing, type TemplateResult } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Advice } from '../../sim/advise.ts'
import { SYMPTOMS, type Symptom } from '../../sim/advise/symptoms/names.ts'
import { adviceWords, ALL_WELL, type Button, type Told } from '../../sim/say/advice.ts'
import { SYMPTOM_WORDS, suspectWords, verdictWords, worthALine } from '../../sim/say/symptoms.ts'
import type { Units } from '../../sim/say/units.ts'
import { wish } from '../events.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { adviceStyle } from './adviceStyle.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

@customElement('advice-zone')
export class AdviceZone extends LitElement {
  static styles = [base, buttons, secondStyle, studyStyle, adviceStyle]

  @property({ attribute: false }) work!: Work<Advice>
  /** The advice is on another job than the one asked now. */
  @property({ type: Boolean }) stale = false
  @property({ attribute: false }) units!: Units
  @state() private symptom: Symptom | null = null

  // Not sooner: an element that was there before its module has no properties until then.
  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'advice' })
  }

  private tries(told: Told, first: boolean): readonly TemplateResult[] {
    const { leads } = told
    return [
      ...told.buttons.map(
        ({ label, name, changes }: Button, index) =>
          html`<button class=${first && index === 0 ? 'main' : 'act'}
            @click=${() => wish(this, { kind: 'try', name, changes })}>${label}</button>`,
      ),
      ...(leads === null
        ? []
        : 'zone' in leads
          ? [html`<a class="button act" href="#${leads.zone}">${leads.label}</a>`]
          : [
              html`<button class="act"
                @click=${() => wish(this, { kind: 'go to field', path: leads.path })}>${leads.label}</button>`,
            ]),
    ]
  }

  private row(told: Told, first: boolean): TemplateResult {
    return html`<li class=${told.severity}>
      <p class="kind">${told.kind}</p>
      <div class="what"><h3>${told.headline}</h3><p>${told.text}</p></div>
      <p class="figure">${told.figure === '' ? nothing : html`<strong>${told.figure}</strong> <span>${told.note}</span>`}</p>
      <div class="tries">${this.tries(told, first)}</div>
    </li>`
  }

  private symptoms(advice: Advice): TemplateResult {
    const { symptom, units } = this
    const diagnosis = symptom && advice.diagnoses[symptom]
    return html`<div class="symptoms">
      <label for="symptom">It does this:</label>
      <select id="symptom" @change=${(event: Event) => {
        const { value } = event.currentTarget as HTMLSelectElement
        this.symptom = SYMPTOMS.find((each) => each === value) ?? null
      }}>
        <option value="" ?selected=${symptom === null}>choose</option>
        ${SYMPTOMS.map(
          (each) => html`<option value=${each} ?selected=${each === symptom}>${SYMPTOM_WORDS[each]}</option>`,
        )}
      </select>
      <div role="status">${
        diagnosis
          ? html`<p class="verdict">${verdictWords(diagnosis, units)}</p>
            <ol>${worthALine(diagnosis).map((suspect) => {
              const { what, test, standing } = suspectWords(suspect)
              return html`<li><strong>${what}</strong> <span class="note">${standing}</span><br />${test}</li>`
            })}</ol>`
          : nothing
      }</div>
    </div>`
  }

  render() {
    const advice = this.work.result
    const told = advice ? adviceWords(advice, this.units) : []
    return html`${studyLine(this, 'advice', this.work, this.stale, 'Advice', 'Trying cures on the whole job')}
      ${
        advice
          ? html`<ol class="findings">${told.map((each, index) => this.row(each, index === 0))}</ol>
            ${told.length === 0 ? html`<p class="said">${ALL_WELL}</p>` : nothing} ${this.symptoms(advice)}`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'advice-zone': AdviceZone
  }
}
