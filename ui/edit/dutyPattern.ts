// A choice of ready-made duties for the steps: continuous, short-time, intermittent, as plates print them.
import { css, html, LitElement } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { DUTY_TYPES } from '../../sim/handbook/dutyTypes.ts'
import { wish } from '../events.ts'
import { base, buttons, selects } from '../style/base.ts'

@customElement('duty-pattern')
export class DutyPattern extends LitElement {
  static styles = [
    base,
    buttons,
    selects,
    css`
      div {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px 12px;
        font: var(--type-label);
      }
    `,
  ]

  @state() private name = DUTY_TYPES[0].name

  render() {
    return html`<div>
        <label for="pattern">Ready-made duty</label>
        <select id="pattern" @change=${(event: Event) => {
          this.name = (event.currentTarget as HTMLSelectElement).value
        }}>
          ${DUTY_TYPES.map(({ name, about }) => html`<option value=${name}>${name}: ${about}</option>`)}
        </select>
        <button @click=${() => wish(this, { kind: 'duty pattern', type: this.name })}>Put the hardest cut into it</button>
      </div>
      <p class="note">Takes the place of the steps above, for the job and every variant; undo brings them back.</p>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'duty-pattern': DutyPattern
  }
}
