// Zone D: what to do about it. Findings in order, each with its number and a change to try; and what a symptom means.
import { html, nothing, type TemplateResult } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Advice } from '../../sim/advise.ts'
import { SYMPTOMS, type Symptom } from '../../sim/advise/symptoms/names.ts'
import { adviceWords, ALL_WELL } from '../../sim/say/advice.ts'
import { HANDS_OFF, SYMPTOM_WORDS, suspectWords, verdictWords, worthALine } from '../../sim/say/symptoms.ts'
import type { Units } from '../../sim/say/units.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { adviceStyle } from './adviceStyle.ts'
import { findingList } from './findings.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

@customElement('advice-zone')
export class AdviceZone extends InTurn {
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
          ? html`<p class="verdict">${verdictWords(diagnosis, units)}</p><p class="note">${HANDS_OFF}</p>
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
          ? html`<div ?inert=${this.stale}>${findingList(this, told)}</div>
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
