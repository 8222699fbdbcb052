// The duty: its steps in order, each with its cut and surges, and how long they repeat.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { givenAt, inputAt, inputsOf } from '../../sim/scenario.ts'
import { type CutKind, wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { cutHelper, cutHelperStyle, namedCut, stepSpeed } from './cutHelper.ts'
import { type FormState, field } from './field.ts'
import { fieldStyle } from './fieldStyle.ts'
import { formStyle } from './formStyle.ts'
import { settle } from './settle.ts'

const CUTS: Readonly<Record<CutKind, string>> = {
  none: 'Nothing: it idles',
  cut: 'From the work itself',
  torque: 'A torque',
  power: 'A power, at any speed',
  fanTorque: 'A fan or pump: grows with speed',
}
/** Steps shown at once; a longer duty is edited in its file. */
const MOST_SHOWN = 24

@customElement('duty-steps')
export class DutySteps extends LitElement {
  static styles = [
    base,
    buttons,
    fieldStyle,
    formStyle,
    cutHelperStyle,
    css`
      :host {
        display: block;
        margin: 0;
      }
      .step {
        padding: 14px 0 0;
        border-top: 1px solid var(--rule);
      }
      .step > header {
        display: flex;
        align-items: center;
        justify-content: space-between;
        min-height: var(--control);
        margin-bottom: 8px;
      }
      h4 {
        font: var(--type-chart-title);
      }
      .below {
        display: flex;
        flex-wrap: wrap;
        gap: 12px;
        padding-top: 14px;
        border-top: 1px solid var(--rule);
      }
    `,
  ]

  @property({ attribute: false }) form!: FormState

  protected updated(): void {
    settle(this.renderRoot)
  }

  private fields(paths: readonly string[]) {
    const { form } = this
    return paths.flatMap((path) => {
      const input = inputAt(form.asked, path)
      return input ? [field(input, form)] : []
    })
  }

  private step(index: number, count: number) {
    const { form } = this
    const { asked } = form
    const path = `duty.phases.${index}`
    const cut = (['cut', 'torque', 'power', 'fanTorque'] as const).find(
      (kind) => givenAt(asked, `${path}.${kind}`) !== undefined,
    )
    const speed = inputAt(asked, `${path}.speed`)
    const surge = givenAt(asked, `${path}.surge`) !== undefined
    const name = inputAt(asked, `${path}.name`)?.text || `Step ${index + 1}`
    return html`<li class="step">
      <header>
        <h4>${index + 1}. ${name}</h4>
        ${
          count > 1
            ? html`<button aria-label="Remove step ${index + 1}: ${name}"
                @click=${() => wish(this, { kind: 'remove step', index })}>Remove step</button>`
            : nothing
        }
      </header>
      <div class="fields">
        ${this.fields([`${path}.name`, `${path}.lasts`])}
        ${speed ? (cut === 'cut' ? stepSpeed(speed, form, namedCut(form, index)) : field(speed, form)) : nothing}
        <div class="cut">
          <label for="cut${index}">The work takes</label>
          <div class="frame">
            <select id="cut${index}" data-now=${cut ?? 'none'}
              @change=${(event: Event) =>
                wish(this, {
                  kind: 'cut kind',
                  index,
                  cut: (event.currentTarget as HTMLSelectElement).value as CutKind,
                })}>
              ${Object.entries(CUTS).map(
                ([kind, words]) =>
                  html`<option value=${kind} ?selected=${kind === (cut ?? 'none')}>${words}</option>`,
              )}
            </select>
          </div>
        </div>
        ${cut === 'cut' ? cutHelper(this, form, index) : cut ? this.fields([`${path}.${cut}`]) : nothing}
        <div class="tick">
          <label><input type="checkbox" ?checked=${surge} data-now=${surge}
            @change=${(event: Event) =>
              wish(this, { kind: 'surge', index, on: (event.currentTarget as HTMLInputElement).checked })} />
            With surges</label>
        </div>
        ${surge ? this.fields(['torque', 'every', 'lasts'].map((key) => `${path}.surge.${key}`)) : nothing}
      </div>
    </li>`
  }

  render() {
    const { form } = this
    const phases = givenAt(form.asked, 'duty.phases')
    const count = Array.isArray(phases) ? phases.length : 0
    const whole = form.problems.filter(({ path }) => path === 'duty.phases' || path === 'duty')
    return html`<h3>Duty</h3>
      <p class="note about">The steps of one cycle, in order. They repeat until the time is up.
        ${form.variant === null ? nothing : 'Steps are added and removed for every variant.'}</p>
      ${whole.map(({ wrong, wouldDo }) => html`<p class="bad">${wrong} ${wouldDo}</p>`)}
      <ol>${Array.from({ length: Math.min(count, MOST_SHOWN) }, (_, index) => this.step(index, count))}</ol>
      ${
        count > MOST_SHOWN
          ? html`<p class="note about">${count - MOST_SHOWN} more steps are in the file and are run; edit them there.</p>`
          : nothing
      }
      <div class="below">
        <button @click=${() => wish(this, { kind: 'add step' })}>Add a step</button>
      </div>
      <div class="fields last">
        ${inputsOf(form.asked, 'duty')
          .filter(({ path }) => !path.startsWith('duty.phases'))
          .map((input) => field(input, form))}
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'duty-steps': DutySteps
  }
}
