// The duty in a row of numbers under its strip: how long each step lasts, a step more, and how long all of it repeats.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { givenAt, inputAt } from '../../sim/scenario.ts'
import { type FormState, field } from '../edit/field.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'

/** More steps than this are edited in the machine's panel. */
const MOST = 12

@customElement('duty-row')
export class DutyRow extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        align-items: flex-start;
        gap: 12px 16px;
        padding: 12px 0 0 calc(48px * var(--k));
      }
      :host > * {
        flex: 0 1 150px;
      }
      button {
        flex: none;
        margin-top: calc(24px * var(--k));
        min-height: 44px;
      }
      @media (max-width: 759.98px) {
        :host {
          padding-left: 0;
        }
        :host > * {
          flex: 1 1 40%;
        }
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) form!: FormState

  private one(path: string, label: string) {
    const input = inputAt(this.form.asked, path)
    return input ? field(input, this.form, { label }) : nothing
  }

  render() {
    const { asked } = this.form
    const phases = givenAt(asked, 'duty.phases')
    const count = Array.isArray(phases) ? phases.length : 0
    if (count === 0) return nothing
    return html`${
      count > MOST
        ? html`<p class="note">${count} steps: change them in the machine’s panel, or in the file.</p>`
        : Array.from({ length: count }, (_, index) =>
            this.one(
              `duty.phases.${index}.lasts`,
              inputAt(asked, `duty.phases.${index}.name`)?.text || `Step ${index + 1}`,
            ),
          )
    }
    <button @click=${() => wish(this, { kind: 'add step' })}>Add a step</button>
    ${this.one('duty.repeatFor', 'Repeat for')}`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'duty-row': DutyRow
  }
}
