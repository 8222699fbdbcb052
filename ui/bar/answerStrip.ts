// The answer strip at the foot of a phone: the answer in short, what it rests on, one button.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { answerOf } from '../../sim/say/answer.ts'
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
        padding: 6px 16px calc(6px + env(safe-area-inset-bottom));
        background: var(--ink);
        color: var(--paper);
      }
      p {
        font: var(--type-note);
        line-height: calc(16px * var(--k));
        text-wrap: balance;
      }
      strong {
        display: block;
        font: var(--type-label);
        line-height: calc(18px * var(--k));
        font-weight: 600;
      }
      button,
      button:hover {
        flex: none;
        max-width: 42%;
        min-height: 44px;
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
    const { short } = answerOf(result.job, result.figures, units, this.sure)
    return html`<aside class="strip" aria-label="The answer in short">
      <p><strong>${short.words}</strong>${short.doubt}</p>
      ${next ? html`<button @click=${() => wish(this, next.wish)}>${next.label}</button>` : nothing}
    </aside>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'answer-strip': AnswerStrip
  }
}
