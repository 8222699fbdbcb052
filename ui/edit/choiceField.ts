// One of a few words: a list to open, or cards where the choice decides the most.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { classMap } from 'lit/directives/class-map.js'
import type { Problem } from '../../sim/problem.ts'
import type { Input } from '../../sim/scenario.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { fieldStyle, helperLine } from './fieldStyle.ts'
import { settle } from './settle.ts'

@customElement('choice-field')
export class ChoiceFieldElement extends LitElement {
  static styles = [
    base,
    buttons,
    fieldStyle,
    css`
      :host([cards]),
      :host([cards]) .whole {
        display: block;
      }
      .card {
        display: flex;
        gap: 12px;
        margin: 0 0 8px;
        padding: 10px 14px;
        border: 1px solid var(--rule);
        border-radius: var(--round-panel);
        background: var(--paper);
        cursor: pointer;
      }
      .card:hover {
        border-color: var(--ink3);
      }
      .card:has(:checked) {
        outline: 2px solid var(--act);
        outline-offset: -2px;
      }
      .card:has(:focus-visible) {
        outline: var(--focus-ring);
        outline-offset: var(--focus-offset);
      }
      input[type='radio'] {
        flex: none;
        width: 20px;
        height: 20px;
        min-height: 0;
        margin: 1px 0 0;
        padding: 0;
        border: 1.25px solid var(--ink3);
        border-radius: 50%;
        background: var(--raise);
        appearance: none;
      }
      input[type='radio']:checked {
        border: 6px solid var(--act);
      }
      .card .note {
        display: block;
      }
      /* Where a narrow box cuts its choice short, the rest of it stands beneath. */
      .rest {
        display: none;
        margin-top: 4px;
      }
      @media (max-width: 759.98px) {
        .rest {
          display: block;
        }
      }
    `,
  ]
  static shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true }

  @property({ attribute: false }) input!: Input
  @property({ attribute: false }) problem: Problem | null = null
  /** What the job as found has here, where the chosen variant differs. */
  @property({ attribute: false }) asFound: string | null = null
  @property({ attribute: false }) worth: readonly Problem[] = []
  /** Shown as cards. */
  @property({ type: Boolean }) cards = false

  protected updated(): void {
    settle(this.renderRoot)
  }

  private choose = (text: string) => wish(this, { kind: 'edit', path: this.input.path, text })

  render() {
    const { field, text } = this.input
    if (field.kind !== 'choice') return html``
    const options = Object.entries(field.options)
    const state = classMap({ whole: true, wrong: this.problem !== null, changed: this.asFound !== null })
    const found = this.asFound === null ? null : (field.options[this.asFound]?.split(':')[0] ?? this.asFound)
    const helper = helperLine(this.input, this.problem, found, this.choose, { worth: this.worth })
    const rest = field.options[text]?.split(': ').slice(1).join(': ')
    if (!this.cards)
      return html`<div class=${state}>
        <label for="box">${field.label}</label>
        <div class="frame">
          <select id="box" data-now=${text} aria-describedby="helper" aria-invalid=${this.problem ? 'true' : 'false'}
            @change=${(event: Event) => this.choose((event.currentTarget as HTMLSelectElement).value)}>
            ${Object.hasOwn(field.options, text) ? '' : html`<option selected disabled>${text}</option>`}
            ${options.map(
              ([value, words]) => html`<option value=${value} ?selected=${value === text}>${words}</option>`,
            )}
          </select>
        </div>
        <div>${rest ? html`<p class="rest note">${rest}</p>` : nothing}${helper}</div>
      </div>`
    return html`<fieldset class=${state} aria-describedby="helper">
      <legend class="unseen">${field.label}</legend>
      ${options.map(([value, words]) => {
        const [name, ...more] = words.split(': ')
        return html`<label class="card">
          <input type="radio" name="box" value=${value} ?checked=${value === text} data-now=${value === text}
            @change=${() => this.choose(value)} />
          <span>${name}<span class="note">${more.join(': ')}</span></span>
        </label>`
      })}
      ${helper}
    </fieldset>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'choice-field': ChoiceFieldElement
  }
}
