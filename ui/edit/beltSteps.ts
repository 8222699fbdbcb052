// The steps of the pulleys: a row of two diameters each, which one is in use, and one more or fewer.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { MOST_STEPS } from '../../sim/parts/belt.ts'
import { givenAt, inputAt } from '../../sim/scenario.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { type FormState, field } from './field.ts'
import { formStyle } from './formStyle.ts'
import { settle } from './settle.ts'

@customElement('belt-steps')
export class BeltSteps extends LitElement {
  static styles = [
    base,
    buttons,
    formStyle,
    css`
      :host {
        display: block;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 16px;
      }
      li .fields {
        flex: 0 1 calc(400px * var(--k));
        grid-template-columns: repeat(2, minmax(0, calc(190px * var(--k))));
      }
      li button {
        margin-bottom: 16px;
      }
      .use {
        max-width: calc(190px * var(--k));
      }
      @media print {
        button {
          display: none;
        }
      }
    `,
  ]
  static shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true }

  @property({ attribute: false }) form!: FormState

  protected updated(): void {
    settle(this.renderRoot)
  }

  private field(path: string, label?: string) {
    const { form } = this
    const input = inputAt(form.asked, path)
    return input ? field(input, form, label === undefined ? {} : { label, helper: '' }) : nothing
  }

  render() {
    const { form } = this
    const list = givenAt(form.asked, 'belt.steps')
    const count = Array.isArray(list) ? list.length : 0
    const worth = [...form.problems, ...form.notes].filter(({ path }) => path === 'belt.steps')
    const using = count > 0 || inputAt(form.asked, 'belt.step')?.text !== ''
    return html`
      ${using ? html`<div class="use">${this.field('belt.step')}</div>` : nothing}
      <ol>${Array.from({ length: count }, (_, index) => {
        const step = index + 2
        return html`<li>
          <div class="fields">
            ${this.field(`belt.steps.${index}.driving`, `Step ${step}, driving`)}
            ${this.field(`belt.steps.${index}.driven`, `Step ${step}, driven`)}
          </div>
          <button aria-label="Remove step ${step} of the pulleys"
            @click=${() => wish(this, { kind: 'remove belt step', index })}>Remove</button>
        </li>`
      })}</ol>
      ${worth.map(({ wrong, wouldDo }) => html`<p class="note about">${wrong} ${wouldDo}</p>`)}
      ${
        count < MOST_STEPS - 1
          ? html`<button @click=${() => wish(this, { kind: 'add belt step' })}>Add a step</button>`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'belt-steps': BeltSteps
  }
}
