// The answer strip at the foot of a phone: the answer's own sentence, two numbers, one button.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { answerOf } from '../../sim/say/answer.ts'
import { told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Try } from '../change/tries.ts'
import type { Sure } from '../../sim/studies/sure.ts'
import { wish } from '../events.ts'
import type { Result } from '../store.ts'
import { base, buttons } from '../style/base.ts'

@customElement('answer-strip')
export class AnswerStrip extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      .strip {
        position: fixed;
        inset: auto 0 0;
        z-index: 3;
        display: none;
        align-items: center;
        justify-content: space-between;
        gap: 12px;
        min-height: 64px;
        padding: 8px 16px calc(8px + env(safe-area-inset-bottom));
        background: var(--ink);
        color: var(--paper);
      }
      p {
        font: var(--type-label);
      }
      strong {
        display: block;
        min-height: 4lh; /* as in the answer: either wording */
        font-weight: 600;
      }
      button,
      button:hover {
        flex: none;
        max-width: 45%;
        border-color: var(--paper);
        background: var(--paper);
        color: var(--ink);
        font-weight: 600;
      }
      button:focus-visible {
        outline-color: var(--paper);
      }
      @media (max-width: 759.98px) {
        .strip {
          display: flex;
        }
      }
      @media print {
        .strip {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) result: Result | null = null
  @property({ attribute: false }) units!: Units
  @property({ attribute: false }) sure: Sure | null = null
  @property({ attribute: false }) next: Try | null = null

  render() {
    const { result, units, next } = this
    if (!result) return nothing
    const { job, figures } = result
    const { hottestWindingC, slowest } = figures
    const { sentence } = answerOf(job, figures, units, this.sure)
    const slow = slowest ? ` · slowest ${told(slowest.value, 'angular speed', units)}` : ''
    return html`<aside class="strip" aria-label="The answer in short">
      <p><strong>${sentence}</strong>winding ${told(hottestWindingC.value, 'temperature', units)}${slow}</p>
      ${next ? html`<button @click=${() => wish(this, next.wish)}>${next.label}</button>` : nothing}
    </aside>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'answer-strip': AnswerStrip
  }
}
